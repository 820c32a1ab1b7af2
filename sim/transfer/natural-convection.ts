import { alternative, correlation, forReaders, type Argument, type Correlation } from '../correlation.ts';

/**
 * Natural convection: coil turns in a still tub, the pot's side, lid and base. Mean Nusselt numbers from Rayleigh
 * and Prandtl numbers, properties at the film temperature. Powers are taken by roots: the step loop calls these.
 */

/** Buoyancy against viscosity: entry `grashof-number`. Which way the plume runs is the caller’s to know. */
export const grashofNumber = (beta: number, dT: number, L: number, nu: number, g: number): number =>
  (g * Math.abs(beta * dT) * L * L * L) / (nu * nu);

/** Buoyancy against viscosity and conduction: entry `rayleigh-number`. */
export const rayleighNumber = (beta: number, dT: number, L: number, nu: number, alpha: number, g: number): number =>
  (g * Math.abs(beta * dT) * L * L * L) / (nu * alpha);

/** [1 + (c/Pr)^(9/16)]^(8/27): how the fluid's Prandtl number enters the Churchill–Chu relations. */
const prandtlFactor = (c: number, Pr: number): number => {
  const half = Math.sqrt(c / Pr);
  const sixteenth = Math.sqrt(Math.sqrt(Math.sqrt(half)));
  const z = 1 + half * sixteenth;
  return Math.cbrt(z / Math.cbrt(Math.cbrt(z)));
};

const sixthRoot = (x: number): number => Math.sqrt(Math.cbrt(x));

/** Mean Nusselt number of a horizontal cylinder: entry `nusselt-horizontal-cylinder`. */
export const nusseltHorizontalCylinder = (Ra: number, Pr: number): number => {
  const root = 0.6 + (0.387 * sixthRoot(Math.max(0, Ra))) / prandtlFactor(0.559, Pr);
  return root * root;
};

/** Mean Nusselt number of a vertical plate, laminar to turbulent: entry `nusselt-vertical-plate`. */
export const nusseltVerticalPlate = (Ra: number, Pr: number): number => {
  const root = 0.825 + (0.387 * sixthRoot(Math.max(0, Ra))) / prandtlFactor(0.492, Pr);
  return root * root;
};

/** Mean Nusselt number of a vertical plate, laminar only: entry `nusselt-vertical-plate-laminar`. */
export const nusseltVerticalPlateLaminar = (Ra: number, Pr: number): number => {
  const z = 1 + Math.pow(0.492 / Pr, 9 / 16);
  return 0.68 + (0.67 * Math.sqrt(Math.sqrt(Math.max(0, Ra)))) / Math.pow(z, 4 / 9);
};

/** Mean Nusselt number of a plate, hot side up: entry `nusselt-horizontal-plate-hot-side-up`. */
export const nusseltHotSideUp = (Ra: number): number => {
  const size = Math.max(0, Ra);
  return size < 1e7 ? 0.54 * Math.sqrt(Math.sqrt(size)) : 0.15 * Math.cbrt(size);
};

/** Mean Nusselt number of a plate, hot side down: entry `nusselt-horizontal-plate-hot-side-down`. */
export const nusseltHotSideDown = (Ra: number): number => 0.27 * Math.sqrt(Math.sqrt(Math.max(0, Ra)));

/** Forced and natural convection acting together: entry `combine-forced-and-natural`. */
export const combineForcedAndNatural = (forced: number, natural: number): number =>
  Math.cbrt(forced * forced * forced + natural * natural * natural);

const churchillChu = 'Churchill and Chu, Int. J. Heat Mass Transfer 18 (1975)';
const rayleigh = (low: number, high: number): Argument => ({ unit: '1', says: 'Rayleigh number', range: [low, high] });
const prandtl: Argument = { unit: '1', says: 'Prandtl number at the film temperature' };
const buoyancy: Readonly<Record<string, Argument>> = {
  beta: { unit: '1/K', says: 'volume expansion at the film temperature' },
  dT: { unit: 'K', says: 'wall temperature less bulk temperature', isDifference: true },
  L: { unit: 'm', says: 'height, diameter or area over perimeter' },
  nu: { unit: 'm²/s', says: 'kinematic viscosity' },
};
const gravity: Argument = { unit: 'm/s²', says: 'acceleration of gravity' };
const nusselt = { symbol: 'Nu', unit: '1' };

export const naturalConvectionCorrelations: readonly Correlation[] = [
  forReaders({
    name: 'grashof-number',
    says: 'Buoyancy against viscosity beside a warm wall.',
    arguments: { ...buoyancy, g: gravity },
    result: { symbol: 'Gr', unit: '1' },
    tex: 'Gr = \\frac{g\\,\\beta\\,|\\Delta T|\\,L^3}{\\nu^2}',
    source: 'definition',
    outside: 'exact definition; no limits; the size of the difference counts, not its sign',
    compute: grashofNumber,
  }),
  correlation({
    name: 'rayleigh-number',
    says: 'Buoyancy against viscosity and conduction beside a warm wall.',
    arguments: { ...buoyancy, alpha: { unit: 'm²/s', says: 'thermal diffusivity' }, g: gravity },
    result: { symbol: 'Ra', unit: '1' },
    tex: 'Ra = \\frac{g\\,\\beta\\,|\\Delta T|\\,L^3}{\\nu\\,\\alpha}',
    source: 'definition',
    outside: 'exact definition; no limits; the size of the difference counts, not its sign',
    compute: rayleighNumber,
  }),
  correlation({
    name: 'nusselt-horizontal-cylinder',
    says: 'Mean natural convection round a horizontal tube, such as a coil turn in a still tub.',
    arguments: { Ra: rayleigh(0, 1e12), Pr: prandtl },
    result: nusselt,
    tex: 'Nu = \\left\\{0.60+\\frac{0.387Ra^{1/6}}{\\left[1+(0.559/Pr)^{9/16}\\right]^{8/27}}\\right\\}^2',
    source: `${churchillChu} 1049–1053`,
    outside: 'evaluated; 0.36 without buoyancy',
    compute: nusseltHorizontalCylinder,
  }),
  correlation({
    name: 'nusselt-vertical-plate',
    says: 'Mean natural convection on a vertical wall, such as the side of a pot.',
    arguments: { Ra: rayleigh(0, 1e12), Pr: prandtl },
    result: nusselt,
    tex: 'Nu = \\left\\{0.825+\\frac{0.387Ra^{1/6}}{\\left[1+(0.492/Pr)^{9/16}\\right]^{8/27}}\\right\\}^2',
    source: `${churchillChu} 1323–1329`,
    outside: 'evaluated; good for a cylinder with D/L ≥ 35/Gr^¼; 0.681 without buoyancy',
    compute: nusseltVerticalPlate,
  }),
  alternative({
    name: 'nusselt-vertical-plate-laminar',
    says: 'Mean natural convection on a vertical wall while the boundary layer is laminar, a little closer than the full form.',
    arguments: { Ra: rayleigh(0, 1e9), Pr: prandtl },
    result: nusselt,
    tex: 'Nu = 0.68+\\frac{0.670Ra^{1/4}}{\\left[1+(0.492/Pr)^{9/16}\\right]^{4/9}}',
    source: `${churchillChu} 1323–1329; Incropera et al. 6e eq. 9.27`,
    outside: 'evaluated; low above Ra = 10⁹; 0.68 without buoyancy',
    compute: nusseltVerticalPlateLaminar,
  }),
  correlation({
    name: 'nusselt-horizontal-plate-hot-side-up',
    says: 'Mean natural convection from a horizontal plate with its hot side up, such as a lid; L = area/perimeter.',
    arguments: { Ra: rayleigh(1e4, 1e11) },
    result: nusselt,
    tex: 'Nu = \\begin{cases}0.54Ra^{1/4} & Ra<10^7\\\\ 0.15Ra^{1/3} & Ra\\ge10^7\\end{cases}',
    source: 'McAdams 1954 with the length of Lloyd and Moran 1974; Incropera et al. 6e eqs 9.30–9.31',
    outside:
      'evaluated, with the published step of 6 % at 10⁷; tends to zero without buoyancy, where conduction would remain',
    compute: nusseltHotSideUp,
  }),
  forReaders({
    name: 'nusselt-horizontal-plate-hot-side-down',
    says: 'Mean natural convection from a horizontal plate with its hot side down, such as a base; L = area/perimeter.',
    arguments: { Ra: rayleigh(1e5, 1e10) },
    result: nusselt,
    tex: 'Nu = 0.27Ra^{1/4}',
    source: 'McAdams 1954; Incropera et al. 6e eq. 9.32 (newer books print 0.52 Ra^⅕)',
    outside: 'evaluated',
    compute: nusseltHotSideDown,
  }),
  correlation({
    name: 'combine-forced-and-natural',
    says: 'Nusselt number of forced and natural convection acting together.',
    arguments: {
      Nu_f: { unit: '1', says: 'Nusselt number of the forced flow alone' },
      Nu_n: { unit: '1', says: 'Nusselt number of natural convection alone' },
    },
    result: nusselt,
    tex: 'Nu = \\left(Nu_f^3+Nu_n^3\\right)^{1/3}',
    source: 'Churchill 1977, exponent 3; Incropera et al. 6e eq. 9.64',
    outside: 'evaluated; for assisting or transverse flows',
    compute: combineForcedAndNatural,
  }),
];
