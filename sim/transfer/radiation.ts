import { correlation, type Argument, type Correlation } from '../correlation.ts';
import { STEFAN_BOLTZMANN } from '../constants.ts';

/** Net radiation to large surroundings: entry `radiant-flux`. In factors, so that near temperatures lose no figures. */
export const radiantFlux = (emissivity: number, T_s: number, T_a: number): number =>
  radiantCoefficient(emissivity, T_s, T_a) * (T_s - T_a);

/** Coefficient that stands for the same exchange: entry `radiant-coefficient`. */
export const radiantCoefficient = (emissivity: number, T_s: number, T_a: number): number =>
  emissivity * STEFAN_BOLTZMANN * (T_s * T_s + T_a * T_a) * (T_s + T_a);

const exchange: Readonly<Record<string, Argument>> = {
  emissivity: {
    unit: '1',
    says: 'emissivity of the surface; from memory bright metal 0.05–0.2, tarnished copper 0.6–0.8, enamel, paint, wood 0.9, water 0.95',
    range: [0, 1],
  },
  T_s: { unit: 'K', says: 'temperature of the surface' },
  T_a: { unit: 'K', says: 'temperature of the surroundings' },
};
const source = 'Stefan–Boltzmann; Incropera et al. 6e eqs 1.7–1.9';
const outside = 'exact for a small grey body in large surroundings';

export const radiationCorrelations: readonly Correlation[] = [
  correlation({
    name: 'radiant-flux',
    says: 'Net heat radiated by a grey surface to large surroundings.',
    arguments: exchange,
    result: { symbol: 'q', unit: 'W/m²' },
    tex: 'q = \\varepsilon\\sigma\\left(T_s^4-T_a^4\\right)',
    source,
    outside,
    compute: radiantFlux,
  }),
  correlation({
    name: 'radiant-coefficient',
    says: 'Heat transfer coefficient that stands for radiation.',
    arguments: exchange,
    result: { symbol: 'h_r', unit: 'W/(m² K)' },
    tex: 'h_r = \\varepsilon\\sigma\\left(T_s^2+T_a^2\\right)\\left(T_s+T_a\\right)',
    source,
    outside,
    compute: radiantCoefficient,
  }),
];
