/**
 * Losses of the pot and the tub to the air from temperatures alone, for the desk reference: vapour pressures by IAPWS,
 * dry air at 101 325 Pa and film temperature, standard gravity.
 */
import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from '../constants.ts';
import { entryNamed, forReaders, withProperties, type Argument, type Correlation } from '../correlation.ts';
import { airConductivity, airDensity, airExpansivity, airHeatCapacity, airViscosity } from '../fluids/air.ts';
import { latentHeat, saturationPressure, whereWaterEnds as outside } from '../fluids/water.ts';
import { evaporationCorrelations, evaporationFluxCarrier, evaporationRateCarrier } from './evaporation.ts';
import { nusseltHotSideDown, nusseltHotSideUp, nusseltVerticalPlate, rayleighNumber } from './natural-convection.ts';
import { radiantFlux } from './radiation.ts';

/** Coefficient of natural convection in air at the film temperature, W/m²K, for a Nusselt number of Ra and Pr. */
const convectionInAir = (
  T_s: number,
  T_air: number,
  length: number,
  nusselt: (Ra: number, Pr: number) => number,
): number => {
  const film = 0.5 * (T_s + T_air);
  const k = airConductivity(film);
  const rho = airDensity(film, STANDARD_ATMOSPHERE);
  const nu = airViscosity(film) / rho;
  const alpha = k / (rho * airHeatCapacity(film));
  const Ra = rayleighNumber(airExpansivity(film), T_s - T_air, length, nu, alpha, STANDARD_GRAVITY);
  return (nusselt(Ra, nu / alpha) * k) / length;
};

/** Convection from the bare side of a pot: entry `pot-side-convection`. */
export const potSideConvection = (T_s: number, T_air: number, L: number): number =>
  convectionInAir(T_s, T_air, L, nusseltVerticalPlate);

/** Heat lost by the bare side of a pot: entry `pot-side-loss-flux`. */
export const potSideLossFlux = (T_s: number, T_air: number, L: number, emissivity: number): number =>
  potSideConvection(T_s, T_air, L) * (T_s - T_air) + radiantFlux(emissivity, T_s, T_air);

/** Convection from a round lid: entry `pot-lid-convection`. */
export const potLidConvection = (T_s: number, T_air: number, D: number): number =>
  convectionInAir(T_s, T_air, 0.25 * D, T_s >= T_air ? nusseltHotSideUp : nusseltHotSideDown);

/** Heat lost by a bare round lid: entry `pot-lid-loss-flux`. */
export const potLidLossFlux = (T_s: number, T_air: number, D: number, emissivity: number): number =>
  potLidConvection(T_s, T_air, D) * (T_s - T_air) + radiantFlux(emissivity, T_s, T_air);

/** Heat carried off open water by evaporation: entry `open-water-evaporation`. */
export const openWaterEvaporation = (T_water: number, T_air: number, RH: number, V: number): number =>
  evaporationFluxCarrier(saturationPressure(T_water), RH * saturationPressure(T_air), V);

/** Water evaporated from an open surface: entry `open-water-evaporation-rate`. */
export const openWaterEvaporationRate = (T_water: number, T_air: number, RH: number, V: number): number =>
  evaporationRateCarrier(saturationPressure(T_water), RH * saturationPressure(T_air), V, latentHeat(T_water));

const surface: Argument = { unit: 'K', says: 'temperature of the surface' };
const air: Argument = { unit: 'K', says: 'temperature of the air and surroundings' };
const grey: Argument = { unit: '1', says: 'emissivity of the surface', range: [0, 1] };
const side: Readonly<Record<string, Argument>> = { T_s: surface, T_air: air, L: { unit: 'm', says: 'height' } };
const lid: Readonly<Record<string, Argument>> = {
  T_s: surface,
  T_air: air,
  D: { unit: 'm', says: 'diameter of the lid' },
};
const tubTop: Readonly<Record<string, Argument>> = {
  T_water: { unit: 'K', says: 'temperature of the water', range: [273.15, 403.15] },
  T_air: { unit: 'K', says: 'temperature of the air', range: [273.15, 403.15] },
  RH: { unit: '1', says: 'relative humidity of the air', range: [0, 1] },
  V: { unit: 'm/s', says: 'speed of the air', range: [0, 1] },
};
const coefficient = { symbol: 'h', unit: 'W/(m² K)' };
const flux = { symbol: 'q', unit: 'W/m²' };
const iapws = 'properties by IAPWS';
const dryAir = 'dry air at 101 325 Pa and film temperature';
const airOutside = 'evaluated; gives no value where the properties of air end';
const sideSource = `Churchill and Chu 1975; ${dryAir}`;
const lidSource = `McAdams, Lloyd and Moran, on area over perimeter; ${dryAir}`;

export const lossAtConditions: readonly Correlation[] = [
  forReaders({
    name: 'pot-side-convection',
    says: 'Convection from the bare side of a pot to still air.',
    arguments: side,
    result: coefficient,
    tex: 'h = \\frac{k}{L}Nu(Ra,Pr)',
    source: sideSource,
    outside: airOutside,
    compute: potSideConvection,
  }),
  forReaders({
    name: 'pot-side-loss-flux',
    says: 'Heat lost by the bare side of a pot to still air and surroundings.',
    arguments: { ...side, emissivity: grey },
    result: flux,
    tex: 'q = h(T_s-T_a)+\\varepsilon\\sigma(T_s^4-T_a^4)',
    source: `${sideSource}; Stefan–Boltzmann`,
    outside: airOutside,
    compute: potSideLossFlux,
  }),
  forReaders({
    name: 'pot-lid-convection',
    says: 'Convection from a bare round lid to still air.',
    arguments: lid,
    result: coefficient,
    tex: 'h = \\frac{4k}{D}Nu(Ra_{D/4})',
    source: lidSource,
    outside: airOutside,
    compute: potLidConvection,
  }),
  forReaders({
    name: 'pot-lid-loss-flux',
    says: 'Heat lost by a bare round lid to still air and surroundings.',
    arguments: { ...lid, emissivity: grey },
    result: flux,
    tex: 'q = h(T_s-T_a)+\\varepsilon\\sigma(T_s^4-T_a^4)',
    source: `${lidSource}; Stefan–Boltzmann`,
    outside: airOutside,
    compute: potLidLossFlux,
  }),
  withProperties(entryNamed(evaporationCorrelations, 'evaporation-flux-carrier'), iapws, {
    name: 'open-water-evaporation',
    says: 'Heat carried off an open tub by evaporation.',
    arguments: tubTop,
    outside,
    compute: openWaterEvaporation,
  }),
  withProperties(entryNamed(evaporationCorrelations, 'evaporation-rate-carrier'), iapws, {
    name: 'open-water-evaporation-rate',
    says: 'Water evaporated from an open tub.',
    arguments: tubTop,
    outside,
    compute: openWaterEvaporationRate,
  }),
];
