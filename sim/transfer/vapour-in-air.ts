import { GAS_CONSTANT } from '../constants.ts';
import { forReaders, type Argument, type Correlation } from '../correlation.ts';

/** How fast the vapour of a thin film of oil gets away into the air of a room. */

/** Mean molar mass of dry air in g/mol and its diffusion volume, as Fuller's relation takes them. */
const AIR = { molarMass: 28.96, volume: 19.7 };

/** Diffusivity of a vapour in air: entry `diffusivity-in-air-fuller`. */
export const diffusivityInAirFuller = (T: number, p: number, M: number, V: number): number => {
  const mean = 2 / (1 / (1000 * M) + 1 / AIR.molarMass);
  const reach = Math.cbrt(V) + Math.cbrt(AIR.volume);
  return (1e-4 * 0.00143 * Math.pow(T, 1.75)) / (p * 1e-5 * Math.sqrt(mean) * reach * reach);
};

/** Vapour pressure within some degrees of 25 °C: entry `vapour-pressure-near-room`. */
export const vapourPressureNearRoom = (p_25: number, H: number, T: number): number =>
  p_25 * Math.exp((-H / GAS_CONSTANT) * (1 / T - 1 / 298.15));

/** Transfer coefficient of one vapour from that of another: entry `film-coefficient-from-diffusivity`. */
export const filmCoefficientFromDiffusivity = (k_ref: number, D: number, D_ref: number): number =>
  k_ref * Math.pow(D / D_ref, 2 / 3);

/** Evaporation of a pure film into clean air: entry `film-evaporation`. */
export const filmEvaporation = (k: number, p_v: number, M: number, T: number): number =>
  (k * p_v * M) / (GAS_CONSTANT * T);

/** Activity over volume share of a trace in a fixed oil: entry `activity-in-fixed-oil`. */
export const activityInFixedOil = (V: number, V_c: number, phi_c: number, chi: number): number =>
  Math.exp((1 - V / V_c) * phi_c + chi * phi_c * phi_c);

/** What an even source has brought a mixed room to: entry `room-concentration`. */
export const roomConcentration = (E: number, n: number, V_r: number, t: number): number =>
  n === 0 ? (E * t) / V_r : (-E * Math.expm1(-n * t)) / (n * V_r);

const volume: Argument = { unit: 'm³/mol', says: 'molar volume of the constituent' };

export const vapourInAirCorrelations: readonly Correlation[] = [
  forReaders({
    name: 'diffusivity-in-air-fuller',
    says: 'Diffusivity of the vapour of an oil constituent in air.',
    arguments: {
      T: { unit: 'K', says: 'temperature', range: [273.15, 323.15] },
      p: { unit: 'Pa', says: 'air pressure' },
      M: { unit: 'kg/mol', says: 'molar mass of the vapour' },
      V: { unit: '1', says: 'sum of its diffusion volumes: C 15.9, H 2.31, O 6.11, aromatic ring −18.3' },
    },
    result: { symbol: 'D', unit: 'm²/s' },
    tex: 'D = \\frac{1.43\\cdot10^{-7}\\,T^{1.75}}{(p/10^5)\\sqrt{M_m}\\,(V^{1/3}+19.7^{1/3})^2},\\quad M_m = \\frac{2}{1/(1000M)+1/28.96}',
    source: 'Fuller, Schettler and Giddings 1966, as Poling, Prausnitz and O’Connell 5e give it (from memory, ±7 %)',
    outside: 'evaluated',
    compute: diffusivityInAirFuller,
  }),
  forReaders({
    name: 'vapour-pressure-near-room',
    says: 'Vapour pressure of a constituent at the temperatures of rooms and skin.',
    arguments: {
      p_25: { unit: 'Pa', says: 'vapour pressure at 25 °C' },
      H: { unit: 'J/mol', says: 'heat of vaporisation about 25 °C' },
      T: { unit: 'K', says: 'temperature', range: [278.15, 313.15] },
    },
    result: { symbol: 'p_v', unit: 'Pa' },
    tex: 'p_v = p_{25}\\exp\\left[-\\frac{H}{R}\\left(\\frac{1}{T}-\\frac{1}{298.15}\\right)\\right]',
    source: 'Clausius and Clapeyron, with the pressure and heat that each constituent’s data give at 25 °C',
    outside: 'evaluated; the curve of the still takes over above 40 °C',
    compute: vapourPressureNearRoom,
  }),
  forReaders({
    name: 'film-coefficient-from-diffusivity',
    says: 'Transfer coefficient of a vapour from a film to the room, from that of limonene.',
    arguments: {
      k_ref: { unit: 'm/s', says: 'coefficient of limonene', range: [0.7e-3, 3e-3] },
      D: { unit: 'm²/s', says: 'diffusivity of the vapour in air' },
      D_ref: { unit: 'm²/s', says: 'diffusivity of limonene in air' },
    },
    result: { symbol: 'k', unit: 'm/s' },
    tex: 'k = k_{ref}\\left(\\frac{D}{D_{ref}}\\right)^{2/3}',
    source: 'laminar boundary layer, any textbook of heat and mass transfer',
    outside: 'evaluated; the coefficient of limonene is judged between 0.7 and 3 mm/s in a calm room',
    compute: filmCoefficientFromDiffusivity,
  }),
  forReaders({
    name: 'film-evaporation',
    says: 'Evaporation from a film of a pure liquid into a room whose air holds none of it.',
    arguments: {
      k: { unit: 'm/s', says: 'transfer coefficient of the vapour' },
      p_v: { unit: 'Pa', says: 'vapour pressure of the liquid' },
      M: { unit: 'kg/mol', says: 'molar mass' },
      T: { unit: 'K', says: 'temperature of the film' },
    },
    result: { symbol: 'j', unit: 'kg/(m² s)' },
    tex: 'j = k\\,\\frac{p_v M}{R T},\\quad R = 8.314\\ \\mathrm{J/(mol\\,K)}',
    source: 'ideal gas; the flow of the vapour itself adds at most 0.3 % and is left out',
    outside: 'evaluated',
    compute: filmEvaporation,
  }),
  forReaders({
    name: 'activity-in-fixed-oil',
    says: 'How many times more strongly a trace presses out of a fixed oil than its share by volume says.',
    arguments: {
      V: volume,
      V_c: { unit: 'm³/mol', says: 'molar volume of the fixed oil' },
      phi_c: { unit: '1', says: 'share of the fixed oil by volume', range: [0, 1] },
      chi: { unit: '1', says: 'interaction parameter' },
    },
    result: { symbol: '\\Gamma', unit: '1' },
    tex: '\\Gamma = \\exp\\left[\\left(1-\\frac{V}{V_c}\\right)\\varphi_c+\\chi\\varphi_c^2\\right]',
    source: 'Flory 1942 and Huggins 1942; interaction parameter 0.3 and 960 cm³/mol of a fixed oil are estimates',
    outside: 'evaluated',
    compute: activityInFixedOil,
  }),
  forReaders({
    name: 'room-concentration',
    says: 'Concentration in a well-mixed room after an even source has run for a time.',
    arguments: {
      E: { unit: 'kg/s', says: 'strength of the source' },
      n: { unit: '1/s', says: 'air changes' },
      V_r: { unit: 'm³', says: 'volume of the room' },
      t: { unit: 's', says: 'time since the source began' },
    },
    result: { symbol: 'C', unit: 'kg/m³' },
    tex: 'C = \\frac{E}{nV_r}\\left(1-e^{-nt}\\right)',
    source: 'balance of a well-mixed room',
    outside: 'evaluated',
    compute: roomConcentration,
  }),
];
