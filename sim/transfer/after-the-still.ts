import { GAS_CONSTANT, STANDARD_ATMOSPHERE } from '../constants.ts';
import { forReaders, type Correlation } from '../correlation.ts';

/** What happens to oil and hydrosol in bottles, and how large a drop is. */

const OXYGEN_SHARE = 0.2095;
const ROOM = 298.15;

/** Peroxide that the air shut in with an oil can make: entry `headspace-peroxide`. */
export const headspacePeroxide = (V_a: number, V_o: number, T: number): number =>
  (OXYGEN_SHARE * STANDARD_ATMOSPHERE * V_a) / (GAS_CONSTANT * T * V_o);

/** How many times faster an oil ages than at 25 °C: entry `ageing-rate`. */
export const ageingRate = (T: number): number => Math.pow(2, (T - ROOM) / 10);

/** Growth rate of microbes in hydrosol: entry `microbe-growth-rate`. */
export const microbeGrowthRate = (mu_25: number, T: number, T_min: number): number =>
  mu_25 * Math.pow(Math.max(0, T - T_min) / (ROOM - T_min), 2);

/** Time in which a count grows to another below a ceiling: entry `microbe-growth-time`. */
export const microbeGrowthTime = (mu: number, N_0: number, N: number, N_max: number): number =>
  Math.log((N * (N_max - N_0)) / (N_0 * (N_max - N))) / mu;

/** Share of the liquid under a tip that falls as a drop; x is the tip’s radius over the cube root of the volume. */
const fallingShare = (x: number): number =>
  1 + x * (-0.9121 + x * (-2.109 + x * (13.38 + x * (-27.29 + x * (27.53 + x * (-13.58 + x * 2.593))))));

/** Mass of a drop that falls from a tip: entry `drop-mass-from-tip`. */
export const dropMassFromTip = (r: number, sigma: number, rho: number, g: number): number => {
  const held = (2 * Math.PI * r * sigma) / g;
  let m = 0.6 * held;
  for (let pass = 0; pass < 60; pass += 1) m = held * fallingShare(r / Math.cbrt(m / rho));
  return m;
};

/** Permeability of skin to a constituent: entry `skin-permeability`. */
export const skinPermeability = (logP: number, M: number): number =>
  Math.pow(10, 0.71 * logP - 6.1 * M - 2.74) / 360_000;

export const afterTheStillCorrelations: readonly Correlation[] = [
  forReaders({
    name: 'headspace-peroxide',
    says: 'Most peroxide that the air shut into a bottle can make in its oil, if all its oxygen is taken up.',
    arguments: {
      V_a: { unit: 'm³', says: 'air in the bottle' },
      V_o: { unit: 'm³', says: 'oil in the bottle' },
      T: { unit: 'K', says: 'temperature when it was closed', range: [253.15, 323.15] },
    },
    result: { symbol: 'c', unit: 'mol/m³' },
    tex: 'c = 0.2095\\,\\frac{p_0}{RT}\\,\\frac{V_a}{V_o},\\quad p_0 = 101\\,325\\ \\mathrm{Pa}',
    source: 'ideal gas with the oxygen of dry air, one peroxide a molecule; oxygen dissolved in the oil comes on top',
    outside: 'evaluated',
    compute: headspacePeroxide,
  }),
  forReaders({
    name: 'ageing-rate',
    says: 'How many times faster an oil ages than in a warm room.',
    arguments: { T: { unit: 'K', says: 'temperature of the store', range: [253.15, 318.15] } },
    result: { symbol: 'f', unit: '1' },
    tex: 'f = 2^{(T-298.15)/10}',
    source: 'common rule of twice the rate in ten degrees; published activation energies lie between 50 and 110 kJ/mol',
    outside: 'evaluated',
    compute: ageingRate,
  }),
  forReaders({
    name: 'microbe-growth-rate',
    says: 'Growth rate of microbes in hydrosol.',
    arguments: {
      mu_25: { unit: '1/s', says: 'growth rate at 25 °C' },
      T: { unit: 'K', says: 'temperature of the store', range: [273.15, 308.15] },
      T_min: { unit: 'K', says: 'temperature below which nothing grows', range: [266.15, 278.15] },
    },
    result: { symbol: '\\mu', unit: '1/s' },
    tex: '\\mu = \\mu_{25}\\left(\\frac{T-T_{min}}{298.15-T_{min}}\\right)^2',
    source: 'square-root law of Ratkowsky 1982; 0.1 per hour at 25 °C and −7 °C are estimates',
    outside: 'evaluated; zero below the lowest temperature',
    compute: microbeGrowthRate,
  }),
  forReaders({
    name: 'microbe-growth-time',
    says: 'Time in which a count of microbes grows to another, slowing towards a ceiling.',
    arguments: {
      mu: { unit: '1/s', says: 'growth rate' },
      N_0: { unit: '1', says: 'count at the start, per mL' },
      N: { unit: '1', says: 'count at the end, per mL' },
      N_max: { unit: '1', says: 'ceiling, per mL' },
    },
    result: { symbol: 't', unit: 's' },
    tex: 't = \\frac{1}{\\mu}\\ln\\frac{N\\,(N_{max}-N_0)}{N_0\\,(N_{max}-N)}',
    source: 'logistic growth; ceiling of a million per mL seen in stored hydrosols (Labadie et al. 2016, abstract)',
    outside: 'evaluated',
    compute: microbeGrowthTime,
  }),
  forReaders({
    name: 'drop-mass-from-tip',
    says: 'Mass of a drop that falls slowly from a wetted tip.',
    arguments: {
      r: { unit: 'm', says: 'outside radius of the tip', range: [0.0003, 0.004] },
      sigma: { unit: 'N/m', says: 'surface tension' },
      rho: { unit: 'kg/m³', says: 'density' },
      g: { unit: 'm/s²', says: 'acceleration of gravity' },
    },
    result: { symbol: 'm', unit: 'kg' },
    tex: 'm = \\frac{2\\pi r\\sigma}{g}\\,f\\!\\left(r\\,(\\rho/m)^{1/3}\\right)',
    source: 'Tate 1864, with the factor of Harkins and Brown 1919 as a polynomial (from memory)',
    outside: 'evaluated',
    compute: dropMassFromTip,
  }),
  forReaders({
    name: 'skin-permeability',
    says: 'Permeability of skin to a constituent that is offered in water.',
    arguments: {
      logP: { unit: '1', says: 'decimal logarithm of the octanol–water partition', range: [-3, 6] },
      M: { unit: 'kg/mol', says: 'molar mass', range: [0.018, 0.75] },
    },
    result: { symbol: 'k_p', unit: 'm/s' },
    tex: 'k_p = \\frac{10^{\\,0.71\\log P-6.1M-2.74}}{360\\,000}',
    source: 'Potts and Guy 1992 (from memory)',
    outside: 'evaluated',
    compute: skinPermeability,
  }),
];
