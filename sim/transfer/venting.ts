import { forReaders, type Argument, type Correlation } from '../correlation.ts';

/** Steam leaving by an open hole, and what holds a lid down: the reasons why an outlet must never be closed. */

/** Factor by which expansion lowers the flow through a sharp orifice: entry `expansibility`. */
export const expansibility = (r: number, k: number): number => 1 - 0.351 * (1 - Math.pow(r, 1 / k));

/** Steam through a sharp-edged vent: entry `orifice-steam-flow`. */
export const orificeSteamFlow = (d: number, dp: number, p_b: number, rho_1: number, C_d: number, k: number): number =>
  dp > 0 ? C_d * 0.25 * Math.PI * d * d * expansibility(p_b / (p_b + dp), k) * Math.sqrt(2 * rho_1 * dp) : 0;

/** Pressure ratio below which flow chokes: entry `critical-pressure-ratio`. */
export const criticalPressureRatio = (k: number): number =>
  k === 1 ? Math.exp(-0.5) : Math.exp((-k / (k - 1)) * Math.log1p((k - 1) / 2));

/** Specific gas constant of steam, J/kgK. */
const STEAM_GAS_CONSTANT = 461.5;

/** Mass flux of steam through a sharp hole: entry `isentropic-mass-flux`. */
export const isentropicMassFlux = (p_0: number, p_b: number, T_0: number, C_d: number, k: number): number => {
  if (!(p_0 > p_b)) return 0;
  const r = Math.max(p_b / p_0, criticalPressureRatio(k));
  const expansion = Math.pow(r, 2 / k) - Math.pow(r, (k + 1) / k);
  return C_d * p_0 * Math.sqrt(((2 * k) / ((k - 1) * STEAM_GAS_CONSTANT * T_0)) * expansion);
};

/** Bore of a hole that passes a flow: entry `vent-bore`. */
export const ventBore = (m: number, G: number): number =>
  Math.sqrt((4 * Math.max(0, m)) / Math.PI) / Math.sqrt(Math.max(Number.MIN_VALUE, G));

/** Relief area for choked steam: entry `relief-area-api-520-steam`. A still that could need it must not be built. */
export const reliefAreaApi520 = (
  m: number,
  p_1: number,
  K_d: number,
  K_b: number,
  K_c: number,
  K_SH: number,
): number => {
  const kPa = p_1 / 1000;
  const K_N = kPa <= 10339 ? 1 : (0.02764 * kPa - 1000) / (0.03324 * kPa - 1061);
  return (190.5e-6 * m * 3600) / (kPa * K_d * K_b * K_c * K_N * K_SH);
};

/** Pressure at which a water seal lets go: entry `water-seal-pressure`. */
export const waterSealPressure = (depth: number, rho: number, g: number): number => rho * g * depth;

/** Depth of water that holds a pressure: entry `water-seal-depth`. */
export const waterSealDepth = (p: number, rho: number, g: number): number => p / (rho * g);

/** Force on a round lid: entry `lid-force`. */
export const lidForce = (D: number, dp: number): number => 0.25 * Math.PI * D * D * dp;

/** Pressure that lifts a loose lid: entry `lid-lift-pressure`. */
export const lidLiftPressure = (m: number, D: number, g: number): number => (4 * m * g) / (Math.PI * D * D);

const discharge: Argument = { unit: '1', says: 'discharge coefficient', range: [0.6, 0.65] };
const exponent: Argument = { unit: '1', says: 'isentropic exponent, 1.32 for steam', range: [1.01, 1.67] };
const gravity: Argument = { unit: 'm/s²', says: 'acceleration of gravity' };
const density: Argument = { unit: 'kg/m³', says: 'density of the water' };
const over: Argument = { unit: 'Pa', says: 'pressure over the outside', range: [0, 75e3] };
const hydrostatics = 'hydrostatics';
const exact = 'exact; no limits';

export const ventingCorrelations: readonly Correlation[] = [
  forReaders({
    name: 'expansibility',
    says: 'Factor by which expansion lowers the flow of a gas through a sharp orifice.',
    arguments: { r: { unit: '1', says: 'pressure outside over inside', range: [0.75, 1] }, k: exponent },
    result: { symbol: 'Y', unit: '1' },
    tex: 'Y = 1-0.351\\left[1-r^{1/k}\\right]',
    source: 'ISO 5167-2, diameter ratio tending to zero',
    outside: 'evaluated',
    compute: expansibility,
  }),
  forReaders({
    name: 'orifice-steam-flow',
    says: 'Steam that leaves by a small sharp-edged vent.',
    arguments: {
      d: { unit: 'm', says: 'bore of the vent' },
      dp: over,
      p_b: { unit: 'Pa', says: 'pressure outside' },
      rho_1: { unit: 'kg/m³', says: 'density of the steam inside' },
      C_d: discharge,
      k: exponent,
    },
    result: { symbol: '\\dot m', unit: 'kg/s' },
    tex: '\\dot m = C_d\\frac{\\pi d^2}{4}Y\\sqrt{2\\rho_1\\Delta p}',
    source: 'ISO 5167-2, diameter ratio tending to zero',
    outside: 'evaluated; does not choke; zero without excess pressure',
    compute: orificeSteamFlow,
  }),
  forReaders({
    name: 'critical-pressure-ratio',
    says: 'Pressure ratio below which flow through a nozzle chokes.',
    arguments: { k: exponent },
    result: { symbol: 'r_c', unit: '1' },
    tex: 'r_c = \\left(\\frac{2}{k+1}\\right)^{k/(k-1)}',
    source: 'gas dynamics, ideal gas',
    outside: exact,
    compute: criticalPressureRatio,
  }),
  forReaders({
    name: 'isentropic-mass-flux',
    says: 'Mass flux of steam through a sharp hole.',
    arguments: {
      p_0: { unit: 'Pa', says: 'pressure inside' },
      p_b: { unit: 'Pa', says: 'pressure outside' },
      T_0: { unit: 'K', says: 'temperature inside' },
      C_d: discharge,
      k: exponent,
    },
    result: { symbol: 'G', unit: 'kg/(m² s)' },
    tex: 'G = C_dp_0\\sqrt{\\frac{2k}{(k-1)RT_0}\\left[r^{2/k}-r^{(k+1)/k}\\right]}',
    source: 'isentropic flow of an ideal gas, R = 461.5 J/kgK',
    outside: 'choked below the critical pressure ratio; zero without excess pressure',
    compute: isentropicMassFlux,
  }),
  forReaders({
    name: 'vent-bore',
    says: 'Bore of a hole that passes a flow at a known mass flux.',
    arguments: {
      m: { unit: 'kg/s', says: 'steam to be passed' },
      G: { unit: 'kg/(m² s)', says: 'mass flux through the hole' },
    },
    result: { symbol: 'd', unit: 'm' },
    tex: 'd = \\sqrt{\\frac{4\\dot m}{\\pi G}}',
    source: 'continuity',
    outside: 'beyond all measure when the flux is zero',
    compute: ventBore,
  }),
  forReaders({
    name: 'relief-area-api-520-steam',
    says: 'Relief area for choked steam; never for a vented still.',
    arguments: {
      m: { unit: 'kg/s', says: 'steam to be passed' },
      p_1: { unit: 'Pa', says: 'relieving pressure, absolute', range: [2e5, 22.057e6] },
      K_d: { unit: '1', says: 'discharge factor' },
      K_b: { unit: '1', says: 'back-pressure factor' },
      K_c: { unit: '1', says: 'rupture-disc factor' },
      K_SH: { unit: '1', says: 'superheat factor, 1 for saturated steam' },
    },
    result: { symbol: 'A', unit: 'm²' },
    tex: 'A = \\frac{190.5\\,\\dot m}{p_1K_dK_bK_cK_NK_{SH}}\\quad(\\mathrm{mm^2,\\ kg/h,\\ kPa})',
    source: 'API 520-1, 7e, section on steam',
    outside: 'meaningless below about 1 bar gauge, where flow is not choked',
    compute: reliefAreaApi520,
  }),
  forReaders({
    name: 'water-seal-pressure',
    says: 'Pressure at which a water seal or dipping safety tube lets go.',
    arguments: { depth: { unit: 'm', says: 'depth of water' }, rho: density, g: gravity },
    result: { symbol: 'p', unit: 'Pa' },
    tex: 'p = \\rho g\\,z',
    source: hydrostatics,
    outside: exact,
    compute: waterSealPressure,
  }),
  forReaders({
    name: 'water-seal-depth',
    says: 'Depth of water that holds a pressure.',
    arguments: { p: { unit: 'Pa', says: 'pressure to be held' }, rho: density, g: gravity },
    result: { symbol: 'z', unit: 'm' },
    tex: 'z = \\frac{p}{\\rho g}',
    source: hydrostatics,
    outside: exact,
    compute: waterSealDepth,
  }),
  forReaders({
    name: 'lid-force',
    says: 'Force on a round lid from the pressure under it.',
    arguments: { D: { unit: 'm', says: 'diameter of the lid' }, dp: over },
    result: { symbol: 'F', unit: 'N' },
    tex: 'F = \\Delta p\\,\\frac{\\pi D^2}{4}',
    source: 'statics',
    outside: exact,
    compute: lidForce,
  }),
  forReaders({
    name: 'lid-lift-pressure',
    says: 'Pressure that lifts a loose round lid.',
    arguments: {
      m: { unit: 'kg', says: 'mass of the lid' },
      D: { unit: 'm', says: 'diameter of the lid' },
      g: gravity,
    },
    result: { symbol: 'p', unit: 'Pa' },
    tex: 'p = \\frac{4mg}{\\pi D^2}',
    source: 'statics',
    outside: exact,
    compute: lidLiftPressure,
  }),
];
