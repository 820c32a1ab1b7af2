/**
 * Viscosity, thermal conductivity and surface tension of water and steam by the IAPWS formulations.
 *
 * Sources: IAPWS R12-08 (viscosity, μ₂ = 1 as recommended for industrial use), IAPWS R15-11 (conductivity),
 * IAPWS R1-76(2014) (surface tension).
 */
import { correlation, forReaders, type Correlation } from '../correlation.ts';
import { REGION_1_MAX_TEMPERATURE, region1State } from './if97-region1.ts';
import { region2State } from './if97-region2.ts';
import { saturationPressureUnchecked } from './if97-region4.ts';
import { requireWithin } from './range.ts';

const CRITICAL_TEMPERATURE = 647.096;
const CRITICAL_DENSITY = 322;
const CRITICAL_PRESSURE = 22.064e6;

const MIN_TEMPERATURE = 273.15;
const MAX_TEMPERATURE = 1173.15;
/** The releases give limits in T and p; liquid water at their highest pressures stays below this density. */
const MAX_DENSITY = 1250;

const DILUTE_VISCOSITY = [1.67752, 2.20462, 0.6366564, -0.241605] as const;

/** H_ij of R12-08 Table 2, row i in powers of 1/T̄ − 1, column j in powers of ρ̄ − 1. */
const VISCOSITY = [
  [0.520094, 0.222531, -0.281378, 0.161913, -0.0325372, 0, 0],
  [0.0850895, 0.999115, -0.906851, 0.257399, 0, 0, 0],
  [-1.08374, 1.88797, -0.772479, 0, 0, 0, 0],
  [-0.289555, 1.26613, -0.489837, 0, 0.0698452, 0, -0.00435673],
  [0, 0, -0.25704, 0, 0, 0.00872102, 0],
  [0, 0.120573, 0, 0, 0, 0, -0.000593264],
] as const;

const DILUTE_CONDUCTIVITY = [2.443221e-3, 1.323095e-2, 6.770357e-3, -3.454586e-3, 4.096266e-4] as const;

/** L_ij of R15-11 Table 2, row i in powers of 1/T̄ − 1, column j in powers of ρ̄ − 1. */
const CONDUCTIVITY = [
  [1.60397357, -0.646013523, 0.111443906, 0.102997357, -0.0504123634, 0.00609859258],
  [2.33771842, -2.78843778, 1.53616167, -0.463045512, 0.0832827019, -0.00719201245],
  [2.19650529, -4.54580785, 3.55777244, -1.40944978, 0.275418278, -0.0205938816],
  [-1.21051378, 1.60812989, -0.621178141, 0.0716373224, 0, 0],
  [-2.720337, 4.57586331, -3.18369245, 1.1168348, -0.19268305, 0.012913842],
] as const;

/** A_ij of R15-11 Table 6 by density band: upper ρ̄ of the band, then the powers of ρ̄. */
const REFERENCE_COMPRESSIBILITY = [
  [
    0.310559006, 6.53786807199516, -5.61149954923348, 3.39624167361325, -2.27492629730878, 10.2631854662709,
    1.97815050331519,
  ],
  [
    0.776397516, 6.52717759281799, -6.30816983387575, 8.08379285492595, -9.82240510197603, 12.1358413791395,
    -5.54349664571295,
  ],
  [
    1.242236025, 5.35500529896124, -3.96415689925446, 8.91990208918795, -12.033872950579, 9.19494865194302,
    -2.16866274479712,
  ],
  [
    1.863354037, 1.55225959906681, 0.464621290821181, 8.93237374861479, -11.0321960061126, 6.1678099993336,
    -0.965458722086812,
  ],
  [
    Number.POSITIVE_INFINITY,
    1.11999926419994,
    0.595748562571649,
    9.8895256507892,
    -10.325505114704,
    4.66861294457414,
    -0.503243546373828,
  ],
] as const;

/** c₀ + c₁x + c₂x² + … by Horner's rule. */
const polynomial = (coefficients: readonly number[], x: number): number => {
  let sum = 0;
  for (let k = coefficients.length - 1; k >= 0; k--) sum = sum * x + (coefficients[k] as number);
  return sum;
};

/** Σ_i x^i Σ_j c_ij y^j. */
const doublePolynomial = (rows: readonly (readonly number[])[], x: number, y: number): number => {
  let sum = 0;
  for (let i = rows.length - 1; i >= 0; i--) sum = sum * x + polynomial(rows[i] as readonly number[], y);
  return sum;
};

function requireState(quantity: string, T: number, rho: number): void {
  requireWithin(quantity, 'temperature', T, 'K', MIN_TEMPERATURE, MAX_TEMPERATURE);
  requireWithin(quantity, 'density', rho, 'kg/m³', 0, MAX_DENSITY);
}

/** Viscosity of water or steam: entry `water-viscosity`. */
export function waterViscosity(T: number, rho: number): number {
  requireState('water viscosity', T, rho);
  const reduced = T / CRITICAL_TEMPERATURE;
  const density = rho / CRITICAL_DENSITY;
  const dilute = (100 * Math.sqrt(reduced)) / polynomial(DILUTE_VISCOSITY, 1 / reduced);
  return 1e-6 * dilute * Math.exp(density * doublePolynomial(VISCOSITY, 1 / reduced - 1, density - 1));
}

/** Conductivity of water or steam without critical enhancement: entry `water-conductivity`. */
export function waterConductivity(T: number, rho: number): number {
  requireState('water conductivity', T, rho);
  const reduced = T / CRITICAL_TEMPERATURE;
  const density = rho / CRITICAL_DENSITY;
  const dilute = Math.sqrt(reduced) / polynomial(DILUTE_CONDUCTIVITY, 1 / reduced);
  return 1e-3 * dilute * Math.exp(density * doublePolynomial(CONDUCTIVITY, 1 / reduced - 1, density - 1));
}

/** ζ(T̄_R, ρ̄) of R15-11 equation 25. */
function referenceCompressibility(density: number): number {
  for (const [upTo, ...coefficients] of REFERENCE_COMPRESSIBILITY) {
    if (density <= upTo) return 1 / polynomial(coefficients, density);
  }
  return Number.NaN;
}

/** Critical enhancement λ₂ of R15-11 equations 18 to 24, W/(m K). */
function conductivityEnhancement(T: number, rho: number, cp: number, cv: number, densityByPressure: number): number {
  const reduced = T / CRITICAL_TEMPERATURE;
  const density = rho / CRITICAL_DENSITY;
  const compressibility = densityByPressure * (CRITICAL_PRESSURE / CRITICAL_DENSITY);
  const excess = density * (compressibility - (referenceCompressibility(density) * 1.5) / reduced);
  if (!(excess > 0)) return 0;
  const y = (0.13 / 0.4) * (excess / 0.06) ** (0.63 / 1.239);
  if (y < 1.2e-7) return 0;
  const inverseKappa = cv / cp;
  const z =
    (2 / (Math.PI * y)) *
    ((1 - inverseKappa) * Math.atan(y) +
      inverseKappa * y -
      (1 - Math.exp(-1 / (1 / y + (y * y) / (3 * density * density)))));
  return (1e-3 * 177.8514 * density * (cp / 461.51805) * reduced * z) / (waterViscosity(T, rho) / 1e-6);
}

/** Conductivity with critical enhancement: entry `water-conductivity-industrial`. */
export function waterConductivityIndustrial(T: number, p: number): number {
  const liquid = T <= REGION_1_MAX_TEMPERATURE && p > saturationPressureUnchecked(T);
  const { volume, heatCapacity, isochoricHeatCapacity, compressibility } = liquid
    ? region1State(T, p)
    : region2State(T, p);
  const rho = 1 / volume;
  const enhancement = conductivityEnhancement(T, rho, heatCapacity, isochoricHeatCapacity, rho * compressibility);
  return waterConductivity(T, rho) + enhancement;
}

/** Surface tension of water: entry `surface-tension`. */
export function waterSurfaceTension(T: number): number {
  requireWithin('surface tension', 'temperature', T, 'K', MIN_TEMPERATURE, CRITICAL_TEMPERATURE);
  const tau = 1 - T / CRITICAL_TEMPERATURE;
  return 0.2358 * tau ** 1.256 * (1 - 0.625 * tau);
}

const state = {
  T: { unit: 'K', says: 'temperature', range: [MIN_TEMPERATURE, MAX_TEMPERATURE] },
  rho: { unit: 'kg/m³', says: 'density', range: [0, MAX_DENSITY] },
} as const;

export const transportCorrelations: readonly Correlation[] = [
  correlation({
    name: 'water-viscosity',
    says: 'Dynamic viscosity of water or steam, critical enhancement left out.',
    arguments: state,
    result: { symbol: 'μ', unit: 'Pa s' },
    tex: '\\bar\\mu=\\frac{100\\sqrt{\\bar T}}{\\sum_i H_i/\\bar T^i}\\exp\\Big[\\bar\\rho\\sum_i\\big(\\tfrac1{\\bar T}-1\\big)^i\\sum_j H_{ij}(\\bar\\rho-1)^j\\Big]',
    source: 'IAPWS R12-08, equations 10 to 12, μ₂ = 1',
    outside: 'gives no value',
    compute: waterViscosity,
  }),
  correlation({
    name: 'water-conductivity',
    says: 'Thermal conductivity of water or steam, critical enhancement left out (below 0.006 % in an open still).',
    arguments: state,
    result: { symbol: 'λ', unit: 'W/(m K)' },
    tex: '\\bar\\lambda=\\frac{\\sqrt{\\bar T}}{\\sum_k L_k/\\bar T^k}\\exp\\Big[\\bar\\rho\\sum_i\\big(\\tfrac1{\\bar T}-1\\big)^i\\sum_j L_{ij}(\\bar\\rho-1)^j\\Big]',
    source: 'IAPWS R15-11, equations 15 to 17, λ₂ = 0',
    outside: 'gives no value',
    compute: waterConductivity,
  }),
  forReaders({
    name: 'water-conductivity-industrial',
    says: 'Thermal conductivity of water or steam with critical enhancement, industrial form.',
    arguments: {
      T: { unit: 'K', says: 'temperature', range: [MIN_TEMPERATURE, 1073.15] },
      p: { unit: 'Pa', says: 'pressure', range: [1e-3, 100e6] },
    },
    result: { symbol: 'λ', unit: 'W/(m K)' },
    tex: '\\bar\\lambda=\\bar\\lambda_0\\bar\\lambda_1+\\Lambda\\frac{\\bar\\rho\\bar c_p\\bar T}{\\bar\\mu}Z(y)',
    source: 'IAPWS R15-11, equations 15 to 26 with IF97 regions 1 and 2',
    outside: 'gives no value outside regions 1 and 2; above saturation the state is liquid, else steam',
    compute: waterConductivityIndustrial,
  }),
  forReaders({
    name: 'surface-tension',
    says: 'Surface tension of water against its vapour.',
    arguments: { T: { unit: 'K', says: 'temperature', range: [MIN_TEMPERATURE, CRITICAL_TEMPERATURE] } },
    result: { symbol: 'σ', unit: 'N/m' },
    tex: '\\sigma=B\\tau^{1.256}(1-0.625\\,\\tau),\\quad B=0.2358\\,\\mathrm{N/m},\\ \\tau=1-T/647.096\\,\\mathrm{K}',
    source: 'IAPWS R1-76(2014), equation 1',
    outside: 'gives no value',
    compute: waterSurfaceTension,
  }),
];
