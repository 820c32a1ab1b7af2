/**
 * Pot, bed and vent from temperatures alone, for the desk reference: boiling, steam velocities, the bed's resistance,
 * steam through a vent. Water by IAPWS, outside at 101 325 Pa, standard gravity.
 */
import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from '../constants.ts';
import { type Argument, type Correlation, positionalCorrelation } from '../correlation.ts';
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
} from '../fluids/water.ts';
import {
  boilingFluxRohsenow,
  boilingSuperheatRohsenow,
  criticalHeatFlux,
  soudersBrownVelocity,
  superficialVelocity,
} from './boiling.ts';
import { ergunGradient } from './packed-bed.ts';
import { isentropicMassFlux, orificeSteamFlow, ventBore } from './venting.ts';

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

/** Heat flux of water boiling on a surface, W/m². dT_e K, C_sf, T_sat K. */
export const boilingFluxWater = rohsenowWater(boilingFluxRohsenow);

/** Superheat of a surface boiling water, K. q W/m², C_sf, T_sat K. */
export const boilingSuperheatWater = rohsenowWater(boilingSuperheatRohsenow);

/** Critical heat flux of boiling water, W/m². C 0.131 or 0.149, T_sat K. */
export const criticalHeatFluxWater = (C: number, T_sat: number): number =>
  criticalHeatFlux(
    C,
    latentHeat(T_sat),
    liquidDensity(T_sat),
    vapourDensity(T_sat),
    surfaceTension(T_sat),
    STANDARD_GRAVITY,
  );

/** `soudersBrownVelocity` for steam over water, m/s. K m/s, T_sat K. */
export const soudersBrownVelocitySteam = (K: number, T_sat: number): number =>
  soudersBrownVelocity(K, liquidDensity(T_sat), vapourDensity(T_sat));

/** Superficial velocity of steam in a vessel or neck, m/s. m kg/s, D m, T_sat K. */
export const steamVelocity = (m: number, D: number, T_sat: number): number =>
  superficialVelocity(m, D, vapourDensity(T_sat));

/** Pressure drop of steam through a bed, Pa. v m/s, d m, voidage, L m, T_sat K. */
export const ergunSteamBed = (v: number, d: number, voidage: number, L: number, T_sat: number): number =>
  L * ergunGradient(v, d, voidage, vapourDensity(T_sat), vapourViscosity(T_sat));

/** Saturated steam through a small sharp vent to 101 325 Pa, kg/s. d m, dp Pa. */
export const steamVentFlow = (d: number, dp: number): number =>
  orificeSteamFlow(
    d,
    dp,
    STANDARD_ATMOSPHERE,
    vapourDensity(saturationTemperature(STANDARD_ATMOSPHERE + Math.max(0, dp))),
    DISCHARGE,
    STEAM_EXPONENT,
  );

/** Mass flux of saturated steam through a sharp hole to 101 325 Pa, kg/m²s. dp Pa. */
export const steamVentFlux = (dp: number): number => {
  const p = STANDARD_ATMOSPHERE + Math.max(0, dp);
  return isentropicMassFlux(p, STANDARD_ATMOSPHERE, saturationTemperature(p), DISCHARGE, STEAM_EXPONENT);
};

/** Least bore of a vent that passes all the steam of a heat input at an allowed pressure, m. P W, dp Pa. */
export const steamVentBore = (P: number, dp: number): number =>
  ventBore(P / latentHeat(saturationTemperature(STANDARD_ATMOSPHERE + Math.max(0, dp))), steamVentFlux(dp));

const saturation: Argument = { unit: 'K', says: 'saturation temperature', range: [273.15, 403.15] };
const finish: Argument = { unit: '1', says: '0.013 stainless, 0.0128 polished copper', range: [0.005, 0.02] };
const excess: Argument = { unit: 'Pa', says: 'pressure over 101 325 Pa', range: [0, 75e3] };
const flux = { symbol: 'q', unit: 'W/m²' };
const iapws = 'properties by IAPWS';
const outside = 'throws a RangeError outside 273.15–403.15 K';

export const potChains: readonly Correlation[] = [
  positionalCorrelation(
    {
      name: 'boiling-superheat',
      says: 'Superheat of a surface that boils water at a known heat flux.',
      arguments: { q: { unit: 'W/m²', says: 'heat flux', range: [0, 1.1e6] }, C_sf: finish, T_sat: saturation },
      result: { symbol: '\\Delta T_e', unit: 'K' },
      tex: '\\Delta T_e = \\frac{C_{sf}h_{fg}Pr_l}{c_{p,l}}\\left\\{\\frac{q}{\\mu_lh_{fg}}\\left[\\frac{\\sigma}{g(\\rho_l-\\rho_v)}\\right]^{1/2}\\right\\}^{1/3}',
      source: `Rohsenow 1952, n = 1; ${iapws}`,
      outside,
    },
    boilingSuperheatWater,
  ),
  positionalCorrelation(
    {
      name: 'boiling-flux',
      says: 'Heat flux of water boiling on a surface of known superheat.',
      arguments: {
        dT_e: { unit: 'K', says: 'superheat of the surface', range: [0, 30] },
        C_sf: finish,
        T_sat: saturation,
      },
      result: flux,
      tex: 'q = \\mu_lh_{fg}\\left[\\frac{g(\\rho_l-\\rho_v)}{\\sigma}\\right]^{1/2}\\left[\\frac{c_{p,l}\\Delta T_e}{C_{sf}h_{fg}Pr_l}\\right]^3',
      source: `Rohsenow 1952, n = 1; ${iapws}`,
      outside,
    },
    boilingFluxWater,
  ),
  positionalCorrelation(
    {
      name: 'critical-heat-flux',
      says: 'Heat flux at which a surface boiling water is blanketed by steam.',
      arguments: {
        C: { unit: '1', says: '0.131 (Zuber) or 0.149 (large flat plates)', range: [0.119, 0.18] },
        T_sat: saturation,
      },
      result: { symbol: 'q_{max}', unit: 'W/m²' },
      tex: 'q_{max} = C\\,h_{fg}\\rho_v^{1/2}\\left[\\sigma g(\\rho_l-\\rho_v)\\right]^{1/4}',
      source: `Zuber 1958, Lienhard and Dhir 1973; ${iapws}`,
      outside,
    },
    criticalHeatFluxWater,
  ),
  positionalCorrelation(
    {
      name: 'souders-brown-velocity',
      says: 'Greatest steam velocity that lets drops of water fall back.',
      arguments: {
        K: { unit: 'm/s', says: '0.107 with wire mesh, 0.03–0.06 without', range: [0.01, 0.12] },
        T_sat: saturation,
      },
      result: { symbol: 'v_{max}', unit: 'm/s' },
      tex: 'v_{max} = K\\sqrt{\\frac{\\rho_l-\\rho_v}{\\rho_v}}',
      source: `Souders and Brown 1934; ${iapws}`,
      outside,
    },
    soudersBrownVelocitySteam,
  ),
  positionalCorrelation(
    {
      name: 'steam-velocity',
      says: 'Velocity of steam averaged over a round vessel or neck.',
      arguments: { m: { unit: 'kg/s', says: 'steam' }, D: { unit: 'm', says: 'inside diameter' }, T_sat: saturation },
      result: { symbol: 'v', unit: 'm/s' },
      tex: 'v = \\frac{4\\dot m}{\\pi D^2\\rho_v}',
      source: `continuity; ${iapws}`,
      outside,
    },
    steamVelocity,
  ),
  positionalCorrelation(
    {
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
    },
    ergunSteamBed,
  ),
  positionalCorrelation(
    {
      name: 'steam-vent-flow',
      says: 'Saturated steam that leaves by a small sharp vent to the open air.',
      arguments: { d: { unit: 'm', says: 'bore of the vent' }, dp: excess },
      result: { symbol: '\\dot m', unit: 'kg/s' },
      tex: '\\dot m = C_d\\frac{\\pi d^2}{4}Y\\sqrt{2\\rho_1\\Delta p},\\quad C_d=0.62',
      source: `ISO 5167-2, diameter ratio tending to zero, k = 1.32; ${iapws}`,
      outside,
    },
    steamVentFlow,
  ),
  positionalCorrelation(
    {
      name: 'steam-vent-flux',
      says: 'Mass flux of saturated steam through a sharp hole to the open air.',
      arguments: { dp: excess },
      result: { symbol: 'G', unit: 'kg/(m² s)' },
      tex: 'G = C_dp_0\\sqrt{\\frac{2k}{(k-1)RT_0}\\left[r^{2/k}-r^{(k+1)/k}\\right]},\\quad C_d=0.62,\\ k=1.32',
      source: `isentropic flow; ${iapws}`,
      outside,
    },
    steamVentFlux,
  ),
  positionalCorrelation(
    {
      name: 'steam-vent-bore',
      says: 'Least bore of a vent that passes all the steam of a heat input; give two to four times the area.',
      arguments: { P: { unit: 'W', says: 'heat reaching the water' }, dp: excess },
      result: { symbol: 'd', unit: 'm' },
      tex: 'd = \\sqrt{\\frac{4P}{\\pi G\\,h_{fg}}}',
      source: `isentropic flow; ${iapws}`,
      outside: `${outside}; beyond all measure without excess pressure`,
    },
    steamVentBore,
  ),
];
