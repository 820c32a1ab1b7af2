import { forReaders, type Argument, type Correlation } from '../correlation.ts';

/** Rules for a vessel that parts oil from water: leg heights, speeds, lengths, times. */

/** Height of the heavy liquid’s overflow that balances the light one’s: entry `heavy-leg-height`. */
export const heavyLegHeight = (z_1: number, z_3: number, rho_light: number, rho_heavy: number): number =>
  z_3 + ((z_1 - z_3) * rho_light) / rho_heavy;

/** How far the heavy leg stands below the light overflow: entry `leg-offset`. */
export const legOffset = (layer: number, drho: number, rho_heavy: number): number => (layer * drho) / rho_heavy;

/** Interface between fixed overflows: entry `interface-height`. Runs away as the densities meet. */
export const interfaceHeight = (Z_leg: number, Z_T: number, rho_A: number, rho_B: number): number => {
  const spare = rho_A - rho_B;
  const drive = Z_leg * rho_A - Z_T * rho_B;
  if (spare === 0) return drive < 0 ? 0 : Z_T;
  return Math.min(Z_T, Math.max(0, drive / spare));
};

/** Highest horizontal speed in a channel separator: entry `api-horizontal-limit`. */
export const apiHorizontalLimit = (v_t: number): number => Math.min(15 * v_t, 0.01524);

const SPEED_RATIO = [3, 6, 10, 15, 20] as const;
const LENGTH_FACTOR = [1.28, 1.37, 1.52, 1.64, 1.74] as const;

/** Turbulence and short-circuit factor of a channel separator: entry `api-length-factor`. */
export const apiLengthFactor = (ratio: number): number => {
  let above = 1;
  while (above < SPEED_RATIO.length - 1 && (SPEED_RATIO[above] ?? 0) < ratio) above += 1;
  const low = SPEED_RATIO[above - 1] ?? 0;
  const high = SPEED_RATIO[above] ?? 0;
  const from = LENGTH_FACTOR[above - 1] ?? 0;
  const to = LENGTH_FACTOR[above] ?? 0;
  return from + (to - from) * Math.min(1, Math.max(0, (ratio - low) / (high - low)));
};

/** Length of a channel separator: entry `api-channel-length`. */
export const apiChannelLength = (v_H: number, v_t: number, depth: number): number =>
  (apiLengthFactor(v_H / v_t) * v_H * depth) / v_t;

/** Which liquid is in drops: entry `dispersion-number`. */
export const dispersionNumber = (
  Q_L: number,
  Q_H: number,
  rho_L: number,
  rho_H: number,
  mu_L: number,
  mu_H: number,
): number => (Q_L / Q_H) * Math.pow((rho_L * mu_H) / (rho_H * mu_L), 0.3);

/** Standing time for a decanter: entry `settling-time-rule`. Equal densities give the largest number. */
export const settlingTimeRule = (mu: number, drho: number): number =>
  drho === 0 ? Number.MAX_VALUE : (3.6e8 * mu) / Math.abs(drho);

/** Time a flow spends in a vessel: entry `residence-time`. No flow gives the largest number. */
export const residenceTime = (V: number, Q: number): number => (Q === 0 ? Number.MAX_VALUE : V / Q);

const height = (says: string): Argument => ({ unit: 'm', says });
const lightDensity: Argument = { unit: 'kg/m³', says: 'density of the light liquid' };
const heavyDensity: Argument = { unit: 'kg/m³', says: 'density of the heavy liquid' };
const speed = (says: string): Argument => ({ unit: 'm/s', says });
const api = 'API Publication 421 (1990), as in MIL-HDBK-1005/16';
const sinnott = 'Towler and Sinnott, Chemical Engineering Design, decanters';

export const decanterCorrelations: readonly Correlation[] = [
  forReaders({
    name: 'heavy-leg-height',
    says: 'Height of the heavy overflow that holds the interface: water leg of a floating oil, oil leg of a sinking one.',
    arguments: {
      z_1: height('light overflow'),
      z_3: height('interface'),
      rho_light: lightDensity,
      rho_heavy: heavyDensity,
    },
    result: { symbol: 'z_2', unit: 'm' },
    tex: 'z_2 = z_3+(z_1-z_3)\\frac{\\rho_{light}}{\\rho_{heavy}}',
    source: sinnott,
    outside: 'exact for still liquids with open overflows, all heights from one datum',
    compute: heavyLegHeight,
  }),
  forReaders({
    name: 'leg-offset',
    says: 'How far the heavy overflow stands below the light one.',
    arguments: {
      layer: height('depth of the light layer, overflow less interface'),
      drho: { unit: 'kg/m³', says: 'density difference' },
      rho_heavy: heavyDensity,
    },
    result: { symbol: 'z_1-z_2', unit: 'm' },
    tex: 'z_1-z_2 = (z_1-z_3)\\frac{\\Delta\\rho}{\\rho_{heavy}}',
    source: sinnott,
    outside: 'exact for still liquids',
    compute: legOffset,
  }),
  forReaders({
    name: 'interface-height',
    says: 'Where the interface stands between two fixed overflows.',
    arguments: {
      Z_leg: height('heavy overflow'),
      Z_T: height('total liquid depth'),
      rho_A: heavyDensity,
      rho_B: lightDensity,
    },
    result: { symbol: 'Z_{A1}', unit: 'm' },
    tex: 'Z_{A1} = \\frac{Z_{A2}-Z_T\\,\\rho_B/\\rho_A}{1-\\rho_B/\\rho_A}',
    source: 'McCabe, Smith and Harriott, Unit Operations of Chemical Engineering, continuous gravity decanter',
    outside: 'held between the floor and the surface',
    compute: interfaceHeight,
  }),
  forReaders({
    name: 'api-horizontal-limit',
    says: 'Highest horizontal speed in a channel separator.',
    arguments: { v_t: speed('rise velocity of the design drop') },
    result: { symbol: 'v_H', unit: 'm/s' },
    tex: 'v_H = \\min(15\\,v_t,\\ 0.01524\\ \\mathrm{m/s})',
    source: api,
    outside: 'evaluated',
    compute: apiHorizontalLimit,
  }),
  forReaders({
    name: 'api-length-factor',
    says: 'Allowance for turbulence and short-circuiting in a channel separator.',
    arguments: { ratio: { unit: '1', says: 'horizontal speed over rise velocity', range: [3, 20] } },
    result: { symbol: 'F', unit: '1' },
    tex: 'F = 1.28,\\ 1.37,\\ 1.52,\\ 1.64,\\ 1.74\\quad\\text{at}\\quad v_H/v_t = 3,\\ 6,\\ 10,\\ 15,\\ 20',
    source: api,
    outside: 'linear between the rows of the table, its end values beyond',
    compute: apiLengthFactor,
  }),
  forReaders({
    name: 'api-channel-length',
    says: 'Length of a channel separator.',
    arguments: {
      v_H: speed('horizontal speed'),
      v_t: speed('rise velocity of the design drop'),
      depth: height('depth of water'),
    },
    result: { symbol: 'L', unit: 'm' },
    tex: 'L = F\\,\\frac{v_H}{v_t}\\,d',
    source: api,
    outside: 'evaluated',
    compute: apiChannelLength,
  }),
  forReaders({
    name: 'dispersion-number',
    says: 'Tells which of two liquids is in drops: the light one below 0.3 (probably to 0.5), the heavy one above 3.3 (probably from 2); distillate has about 0.01.',
    arguments: {
      Q_L: { unit: 'm³/s', says: 'flow of the light liquid' },
      Q_H: { unit: 'm³/s', says: 'flow of the heavy liquid' },
      rho_L: lightDensity,
      rho_H: heavyDensity,
      mu_L: { unit: 'Pa s', says: 'viscosity of the light liquid' },
      mu_H: { unit: 'Pa s', says: 'viscosity of the heavy liquid' },
    },
    result: { symbol: '\\theta', unit: '1' },
    tex: '\\theta = \\frac{Q_L}{Q_H}\\left(\\frac{\\rho_L\\mu_H}{\\rho_H\\mu_L}\\right)^{0.3}',
    source: 'Selker and Sleicher, in Silla, Chemical Process Engineering, Example 6.4',
    outside: 'evaluated',
    compute: dispersionNumber,
  }),
  forReaders({
    name: 'settling-time-rule',
    says: 'Standing time that a decanter should give; very cautious for distillate.',
    arguments: {
      mu: { unit: 'Pa s', says: 'viscosity of the continuous liquid' },
      drho: { unit: 'kg/m³', says: 'density difference' },
    },
    result: { symbol: 't', unit: 's' },
    tex: 't_h = \\frac{100\\,\\mu_{cP}}{\\Delta\\rho}',
    source: 'McCabe, Smith and Harriott (from memory)',
    outside: 'evaluated; beyond all measure without a density difference',
    compute: settlingTimeRule,
  }),
  forReaders({
    name: 'residence-time',
    says: 'Time a flow spends in a vessel.',
    arguments: { V: { unit: 'm³', says: 'volume' }, Q: { unit: 'm³/s', says: 'flow' } },
    result: { symbol: 't', unit: 's' },
    tex: 't = \\frac{V}{Q}',
    source: 'continuity',
    outside: 'exact definition; beyond all measure without flow',
    compute: residenceTime,
  }),
];
