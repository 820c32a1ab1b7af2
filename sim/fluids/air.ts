/**
 * Dry air as an ideal gas, for heat losses: density, heat capacity, viscosity, conductivity, expansivity.
 *
 * Transport is the zero-density part of Lemmon and Jacobsen's formulation: at 1 atm the part left out is below 0.2 %.
 * The coefficients are from memory; tests hold them to values of the full formulation within 0.4 %.
 */
import { DRY_AIR_MOLAR_MASS, GAS_CONSTANT } from '../constants.ts';
import { correlation, type Correlation, type CorrelationEntry } from '../correlation.ts';
import { requireWithin } from './range.ts';

/** Lowest temperature of the air functions, K. */
export const AIR_MIN_TEMPERATURE = 220;
/** Highest temperature of the air functions, K. */
export const AIR_MAX_TEMPERATURE = 1000;
const AIR_MAX_PRESSURE = 1e6;

/** Specific gas constant of dry air, J/(kg K). */
export const AIR_GAS_CONSTANT = GAS_CONSTANT / DRY_AIR_MOLAR_MASS;

const requireTemperature = (quantity: string, T: number): void =>
  requireWithin(quantity, 'temperature', T, 'K', AIR_MIN_TEMPERATURE, AIR_MAX_TEMPERATURE);

/** Density of dry air: entry `air-density`. */
export function airDensity(T: number, p: number): number {
  requireTemperature('air density', T);
  requireWithin('air density', 'pressure', p, 'Pa', 0, AIR_MAX_PRESSURE);
  return p / (AIR_GAS_CONSTANT * T);
}

/** Contribution of one molecular vibration of characteristic temperature theta to c_p/R. */
const vibration = (theta: number, T: number): number => {
  const u = theta / T;
  const decay = Math.exp(-u);
  return (u * u * decay) / ((1 - decay) * (1 - decay));
};

/** Isobaric heat capacity of dry air: entry `air-heat-capacity`. */
export function airHeatCapacity(T: number): number {
  requireTemperature('air heat capacity', T);
  const reduced =
    3.490888032 +
    T * (2.395525583e-6 + T * (7.172111248e-9 - T * 3.115413101e-13)) +
    0.223806688 / (T * Math.sqrt(T)) +
    0.791309509 * vibration(3364.011, T) +
    0.212236768 * vibration(2242.45, T);
  return reduced * AIR_GAS_CONSTANT;
}

/** Dynamic viscosity of dry air: entry `air-viscosity`. */
export function airViscosity(T: number): number {
  requireTemperature('air viscosity', T);
  const x = Math.log(T / 103.3);
  const collision = Math.exp(0.431 + x * (-0.4623 + x * (0.08406 + x * (0.005341 - x * 0.00331))));
  return (1e-6 * 0.0266958 * Math.sqrt(28.9586 * T)) / (0.36 * 0.36 * collision);
}

/** Thermal conductivity of dry air: entry `air-conductivity`. */
export function airConductivity(T: number): number {
  requireTemperature('air conductivity', T);
  const tau = 132.6312 / T;
  return 1e-3 * (1.308 * airViscosity(T) * 1e6 + 1.405 * tau ** -1.1 - 1.036 * tau ** -0.3);
}

/** Prandtl number of dry air: entry `air-prandtl`. */
export function airPrandtl(T: number): number {
  requireTemperature('air Prandtl number', T);
  return (airHeatCapacity(T) * airViscosity(T)) / airConductivity(T);
}

/** Expansivity of air: entry `air-expansivity`. */
export function airExpansivity(T: number): number {
  requireTemperature('air expansivity', T);
  return 1 / T;
}

const temperature = { unit: 'K', says: 'temperature', range: [AIR_MIN_TEMPERATURE, AIR_MAX_TEMPERATURE] } as const;
const TRANSPORT_SOURCE = 'Lemmon and Jacobsen, Int. J. Thermophys. 25 (2004) 21, dilute-gas part, from memory';

const ofTemperature = (entry: Omit<CorrelationEntry, 'arguments' | 'outside'>): Correlation =>
  correlation({ ...entry, arguments: { T: temperature }, outside: 'gives no value' });

export const airCorrelations: readonly Correlation[] = [
  correlation({
    name: 'air-density',
    says: 'Density of dry air.',
    arguments: { T: temperature, p: { unit: 'Pa', says: 'pressure', range: [0, AIR_MAX_PRESSURE] } },
    result: { symbol: 'ρ', unit: 'kg/m³' },
    tex: '\\rho=\\frac{pM}{RT}',
    source: 'ideal gas law, molar mass of ISO 2533:1975',
    outside: 'gives no value',
    compute: airDensity,
  }),
  ofTemperature({
    name: 'air-heat-capacity',
    says: 'Isobaric heat capacity of dry air as an ideal gas; real air at 1 atm is 0.1–0.2 % higher.',
    result: { symbol: 'c_p', unit: 'J/(kg K)' },
    tex: '\\frac{c_p}{R}=\\sum_{i=1}^{4}N_iT^{i-1}+\\frac{N_5}{T^{1.5}}+\\sum_k N_k\\frac{u_k^2e^{u_k}}{(e^{u_k}-1)^2},\\ u_k=\\theta_k/T',
    source:
      'Lemmon, Jacobsen, Penoncello and Friend, J. Phys. Chem. Ref. Data 29 (2000) 331, ideal-gas equation, from memory',
    compute: airHeatCapacity,
  }),
  ofTemperature({
    name: 'air-viscosity',
    says: 'Dynamic viscosity of dry air near atmospheric pressure.',
    result: { symbol: 'μ', unit: 'Pa s' },
    tex: '\\mu=\\frac{0.0266958\\sqrt{MT}}{\\sigma^2\\Omega(T/103.3)}\\ \\mathrm{\\mu Pa\\,s},\\quad \\ln\\Omega=\\sum_{i=0}^4b_i\\ln^i T^*',
    source: TRANSPORT_SOURCE,
    compute: airViscosity,
  }),
  ofTemperature({
    name: 'air-conductivity',
    says: 'Thermal conductivity of dry air near atmospheric pressure.',
    result: { symbol: 'k', unit: 'W/(m K)' },
    tex: 'k=1.308\\,\\mu+1.405\\,\\tau^{-1.1}-1.036\\,\\tau^{-0.3}\\ \\mathrm{mW/(m\\,K)},\\ \\tau=132.6312\\,\\mathrm{K}/T',
    source: TRANSPORT_SOURCE,
    compute: airConductivity,
  }),
  ofTemperature({
    name: 'air-prandtl',
    says: 'Prandtl number of dry air.',
    result: { symbol: 'Pr', unit: '1' },
    tex: 'Pr=\\frac{c_p\\mu}{k}',
    source: 'definition, with the properties above',
    role: 'look-up',
    compute: airPrandtl,
  }),
  ofTemperature({
    name: 'air-expansivity',
    says: 'Expansivity of air: share by which the volume grows per degree.',
    result: { symbol: 'β', unit: '1/K' },
    tex: '\\beta=1/T',
    source: 'ideal gas law',
    compute: airExpansivity,
  }),
];
