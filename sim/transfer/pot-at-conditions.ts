/**
 * Pot, bed and vent from temperatures alone, for the desk reference: boiling, steam velocities, the bed's resistance,
 * steam through a vent. Water by IAPWS, outside at 101 325 Pa, standard gravity.
 */
import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from '../constants.ts';
import { entryNamed, forReaders, withProperties, type Argument, type Correlation } from '../correlation.ts';
import {
  latentHeat,
  liquidConductivity,
  liquidDensity,
  liquidHeatCapacity,
  liquidViscosity,
  saturationTemperature,
  surfaceTension,
  vapourDensity,
  vapourViscosity,
  whereWaterEnds as outside,
} from '../fluids/water.ts';
import {
  boilingCorrelations,
  boilingFluxRohsenow,
  boilingSuperheatRohsenow,
  criticalHeatFlux,
  soudersBrownVelocity,
  superficialVelocity,
} from './boiling.ts';
import { ergunGradient } from './packed-bed.ts';
import { isentropicMassFlux, orificeSteamFlow, ventBore, ventingCorrelations } from './venting.ts';

const DISCHARGE = 0.62;
const STEAM_EXPONENT = 1.32;

const rohsenowWater =
  (relation: typeof boilingFluxRohsenow) =>
  (driving: number, C_sf: number, T_sat: number): number => {
    const mu = liquidViscosity(T_sat);
    const cp = liquidHeatCapacity(T_sat);
    return relation(
      driving,
      C_sf,
      1,
      latentHeat(T_sat),
      liquidDensity(T_sat),
      vapourDensity(T_sat),
      mu,
      cp,
      (mu * cp) / liquidConductivity(T_sat),
      surfaceTension(T_sat),
      STANDARD_GRAVITY,
    );
  };

/** Heat flux of water boiling on a surface: entry `boiling-flux`. */
export const boilingFluxWater = rohsenowWater(boilingFluxRohsenow);

/** Superheat of a surface boiling water: entry `boiling-superheat`. */
export const boilingSuperheatWater = rohsenowWater(boilingSuperheatRohsenow);

/** Critical heat flux of boiling water: entry `critical-heat-flux`. */
export const criticalHeatFluxWater = (C: number, T_sat: number): number =>
  criticalHeatFlux(
    C,
    latentHeat(T_sat),
    liquidDensity(T_sat),
    vapourDensity(T_sat),
    surfaceTension(T_sat),
    STANDARD_GRAVITY,
  );

/** Greatest steam velocity that lets drops fall back: entry `souders-brown-velocity`. */
export const soudersBrownVelocitySteam = (K: number, T_sat: number): number =>
  soudersBrownVelocity(K, liquidDensity(T_sat), vapourDensity(T_sat));

/** Velocity of steam in a vessel or neck: entry `steam-velocity`. */
export const steamVelocity = (m: number, D: number, T_sat: number): number =>
  superficialVelocity(m, D, vapourDensity(T_sat));

/** Pressure drop of steam through a bed: entry `ergun-steam-bed`. */
export const ergunSteamBed = (v: number, d: number, voidage: number, L: number, T_sat: number): number =>
  L * ergunGradient(v, d, voidage, vapourDensity(T_sat), vapourViscosity(T_sat));

/** Saturated steam through a small sharp vent: entry `steam-vent-flow`. */
export const steamVentFlow = (d: number, dp: number): number =>
  orificeSteamFlow(
    d,
    dp,
    STANDARD_ATMOSPHERE,
    vapourDensity(saturationTemperature(STANDARD_ATMOSPHERE + Math.max(0, dp))),
    DISCHARGE,
    STEAM_EXPONENT,
  );

/** Mass flux of saturated steam through a sharp hole: entry `steam-vent-flux`. */
export const steamVentFlux = (dp: number): number => {
  const p = STANDARD_ATMOSPHERE + Math.max(0, dp);
  return isentropicMassFlux(p, STANDARD_ATMOSPHERE, saturationTemperature(p), DISCHARGE, STEAM_EXPONENT);
};

/** Least bore of a vent that passes all the steam: entry `steam-vent-bore`. */
export const steamVentBore = (P: number, dp: number): number =>
  ventBore(P / latentHeat(saturationTemperature(STANDARD_ATMOSPHERE + Math.max(0, dp))), steamVentFlux(dp));

const saturation: Argument = { unit: 'K', says: 'saturation temperature', range: [273.15, 403.15] };
const finish: Argument = { unit: '1', says: '0.013 stainless, 0.0128 polished copper', range: [0.005, 0.02] };
const excess: Argument = { unit: 'Pa', says: 'pressure over 101 325 Pa', range: [0, 75e3] };
const iapws = 'properties by IAPWS';
const vent = `C_d = ${DISCHARGE}, k = ${STEAM_EXPONENT}, ${iapws}`;

export const potAtConditions: readonly Correlation[] = [
  withProperties(entryNamed(boilingCorrelations, 'boiling-superheat-rohsenow'), iapws, {
    name: 'boiling-superheat',
    says: 'Superheat of a surface that boils water at a known heat flux.',
    arguments: { q: { unit: 'W/m²', says: 'heat flux', range: [0, 1.1e6] }, C_sf: finish, T_sat: saturation },
    outside,
    compute: boilingSuperheatWater,
  }),
  withProperties(entryNamed(boilingCorrelations, 'boiling-flux-rohsenow'), iapws, {
    name: 'boiling-flux',
    says: 'Heat flux of water boiling on a surface of known superheat.',
    arguments: {
      dT_e: { unit: 'K', says: 'superheat of the surface', range: [0, 30], isDifference: true },
      C_sf: finish,
      T_sat: saturation,
    },
    outside: `${outside}; zero without excess temperature`,
    compute: boilingFluxWater,
  }),
  withProperties(entryNamed(boilingCorrelations, 'critical-heat-flux-pool'), iapws, {
    name: 'critical-heat-flux',
    says: 'Heat flux at which a surface boiling water is blanketed by steam.',
    arguments: {
      C: { unit: '1', says: '0.131 (Zuber) or 0.149 (large flat plates)', range: [0.119, 0.18] },
      T_sat: saturation,
    },
    outside,
    compute: criticalHeatFluxWater,
  }),
  withProperties(entryNamed(boilingCorrelations, 'souders-brown'), iapws, {
    name: 'souders-brown-velocity',
    says: 'Greatest steam velocity that lets drops of water fall back.',
    arguments: {
      K: { unit: 'm/s', says: '0.107 with wire mesh, 0.03–0.06 without', range: [0.01, 0.12] },
      T_sat: saturation,
    },
    outside,
    compute: soudersBrownVelocitySteam,
  }),
  withProperties(entryNamed(boilingCorrelations, 'superficial-velocity'), iapws, {
    name: 'steam-velocity',
    says: 'Velocity of steam averaged over a round vessel or neck.',
    arguments: {
      m: { unit: 'kg/s', says: 'flow of steam' },
      D: { unit: 'm', says: 'inside diameter' },
      T_sat: saturation,
    },
    outside,
    compute: steamVelocity,
  }),
  forReaders({
    name: 'ergun-steam-bed',
    says: 'Pressure that steam loses in passing a bed of plant matter.',
    arguments: {
      v: { unit: 'm/s', says: 'superficial velocity' },
      d: { unit: 'm', says: 'particle size, six times volume over surface' },
      voidage: { unit: '1', says: 'void share of the bed', range: [0.35, 0.75] },
      L: { unit: 'm', says: 'depth of the bed' },
      T_sat: saturation,
    },
    result: { symbol: '\\Delta p', unit: 'Pa' },
    tex: '\\Delta p = L\\left[150\\frac{\\mu_v(1-\\varepsilon)^2v}{d^2\\varepsilon^3}+1.75\\frac{\\rho_vv^2(1-\\varepsilon)}{d\\,\\varepsilon^3}\\right]',
    source: `Ergun 1952; ${iapws}`,
    outside,
    compute: ergunSteamBed,
  }),
  withProperties(entryNamed(ventingCorrelations, 'orifice-steam-flow'), vent, {
    name: 'steam-vent-flow',
    says: 'Saturated steam that leaves by a small sharp vent to the open air.',
    arguments: { d: { unit: 'm', says: 'bore of the vent' }, dp: excess },
    outside: `${outside}; zero without excess pressure`,
    compute: steamVentFlow,
  }),
  withProperties(entryNamed(ventingCorrelations, 'isentropic-mass-flux'), vent, {
    name: 'steam-vent-flux',
    says: 'Mass flux of saturated steam through a sharp hole to the open air.',
    arguments: { dp: excess },
    outside: `${outside}; zero without excess pressure`,
    compute: steamVentFlux,
  }),
  forReaders({
    name: 'steam-vent-bore',
    says: 'Least bore of a vent that passes all the steam of a heat input; give two to four times the area.',
    arguments: { P: { unit: 'W', says: 'heat reaching the water' }, dp: excess },
    result: { symbol: 'd', unit: 'm' },
    tex: 'd = \\sqrt{\\frac{4P}{\\pi G\\,h_{fg}}}',
    source: `isentropic flow; ${iapws}`,
    outside: `${outside}; beyond all measure without excess pressure`,
    compute: steamVentBore,
  }),
];
