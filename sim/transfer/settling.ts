import { alternative, correlation, forReaders, type Argument, type Correlation } from '../correlation.ts';

/** Rise or fall of oil drops in water, and what a separator of given plan area keeps of drops of one size. */

/** Velocity of a small drop: entry `stokes-velocity`. */
export const stokesVelocity = (d: number, drho: number, mu: number, g: number): number =>
  (g * d * d * drho) / (18 * mu);

/** Factor for a drop with a free-moving skin: entry `hadamard-factor`. */
export const hadamardFactor = (mu_w: number, mu_o: number): number => (3 * (mu_w + mu_o)) / (2 * mu_w + 3 * mu_o);

/** Reynolds number of a drop: entry `drop-reynolds`. */
export const dropReynolds = (v: number, d: number, rho: number, mu: number): number => (rho * Math.abs(v) * d) / mu;

/**
 * Velocity of a larger drop: entry `settling-velocity-with-drag`. Newton’s rule from the Stokes side closes in from one
 * side.
 */
export const settlingVelocityWithDrag = (d: number, drho: number, rho: number, mu: number, g: number): number => {
  const stokes = Math.abs(stokesVelocity(d, drho, mu, g));
  const perSpeed = (rho * d) / mu;
  let v = stokes;
  for (let step = 0; step < 60; step += 1) {
    const drag = 0.15 * Math.pow(perSpeed * v, 0.687);
    const next = v - (v * (1 + drag) - stokes) / (1 + 1.687 * drag);
    if (!(next < v)) break;
    v = next;
  }
  return Math.sign(drho) * v;
};

/** Flow of a separator over its plan area: entry `overflow-rate`. */
export const overflowRate = (Q: number, A: number): number => Q / A;

/** Diameter of the drop that just moves at a velocity: entry `cut-diameter`; the largest number at equal densities. */
export const cutDiameter = (v: number, drho: number, mu: number, g: number): number =>
  drho === 0 ? Number.MAX_VALUE : Math.sqrt((18 * mu * Math.max(0, v)) / (g * Math.abs(drho)));

/** Share of drops of one velocity that an ideal separator keeps: entry `hazen-capture`. */
export const hazenCapture = (v: number, v_c: number): number => (v > 0 ? (v >= v_c ? 1 : v / v_c) : 0);

/** The same for a separator that mixes: entry `hazen-capture-non-ideal`. */
export const hazenCaptureNonIdeal = (v: number, v_c: number, n: number): number => {
  if (!(v > 0)) return 0;
  return v_c > 0 ? -Math.expm1(-n * Math.log1p(v / (n * v_c))) : 1;
};

const size: Argument = { unit: 'm', says: 'diameter of the drop' };
const difference: Argument = { unit: 'kg/m³', says: 'density of the water less that of the oil' };
const viscosity: Argument = { unit: 'Pa s', says: 'viscosity of the water' };
const waterDensity: Argument = { unit: 'kg/m³', says: 'density of the water' };
const gravity: Argument = { unit: 'm/s²', says: 'acceleration of gravity' };
const velocity: Argument = { unit: 'm/s', says: 'velocity of the drop towards the oil layer' };
const overflow: Argument = { unit: 'm/s', says: 'overflow rate, flow over plan area' };
const share = { symbol: '\\eta', unit: '1' };
const stokes = 'Stokes 1851; Towler and Sinnott, Chemical Engineering Design, liquid–liquid separation';
const hazen = 'Hazen 1904, Camp 1946; any water engineering text';
const stokesCheck = {
  symbol: 'Re',
  says: 'Reynolds number of the drop, in water of 1000 kg/m³',
  range: [0, 1] as const,
  value: (values: Readonly<Record<string, number>>): number => {
    const { d = 0, drho = 0, mu = 1, g = 0 } = values;
    return dropReynolds(stokesVelocity(d, drho, mu, g), d, 1000, mu);
  },
};

export const settlingCorrelations: readonly Correlation[] = [
  correlation({
    name: 'stokes-velocity',
    says: 'Velocity at which a small drop of oil rises, or sinks when negative.',
    arguments: { d: size, drho: difference, mu: viscosity, g: gravity },
    result: { symbol: 'v', unit: 'm/s' },
    tex: 'v = \\frac{g\\,d^2\\,\\Delta\\rho}{18\\mu}',
    source: stokes,
    outside: 'evaluated; high once the Reynolds number passes about 1',
    checks: [stokesCheck],
    role: 'other-form',
    compute: stokesVelocity,
  }),
  correlation({
    name: 'hadamard-factor',
    says: 'Factor by which a drop with a free-moving skin outruns a rigid one.',
    arguments: { mu_w: viscosity, mu_o: { unit: 'Pa s', says: 'viscosity of the oil' } },
    result: { symbol: 'f', unit: '1' },
    tex: 'f = \\frac{3(\\mu_w+\\mu_o)}{2\\mu_w+3\\mu_o}',
    source: 'Hadamard and Rybczynski 1911; Clift, Grace and Weber (from memory)',
    outside: 'between 1 (stiff or dirty skin, which plant waxes usually make) and 1.5 (bubble)',
    compute: hadamardFactor,
  }),
  forReaders({
    name: 'drop-reynolds',
    says: 'Reynolds number of a moving drop.',
    arguments: { v: velocity, d: size, rho: waterDensity, mu: viscosity },
    result: { symbol: 'Re', unit: '1' },
    tex: 'Re = \\frac{\\rho\\,v\\,d}{\\mu}',
    source: 'definition',
    outside: 'exact definition; no limits',
    compute: dropReynolds,
  }),
  alternative({
    name: 'settling-velocity-with-drag',
    says: 'Velocity of a drop too large for Stokes: rises, or sinks when negative.',
    arguments: { d: size, drho: difference, rho: waterDensity, mu: viscosity, g: gravity },
    result: { symbol: 'v', unit: 'm/s' },
    tex: 'v\\left(1+0.15Re^{0.687}\\right) = \\frac{g\\,d^2\\,\\Delta\\rho}{18\\mu}',
    source: 'Schiller and Naumann 1933 (from memory)',
    outside: 'evaluated; meant for Re below 800',
    compute: settlingVelocityWithDrag,
  }),
  correlation({
    name: 'overflow-rate',
    says: 'Flow through a separator over its plan area.',
    arguments: { Q: { unit: 'm³/s', says: 'flow' }, A: { unit: 'm²', says: 'plan area' } },
    result: { symbol: 'v_c', unit: 'm/s' },
    tex: 'v_c = \\frac{Q}{A}',
    source: hazen,
    outside: 'exact definition; no limits; depth does not enter',
    compute: overflowRate,
  }),
  correlation({
    name: 'cut-diameter',
    says: 'Diameter of the smallest drop that is kept whole at a given overflow rate.',
    arguments: { v: overflow, drho: difference, mu: viscosity, g: gravity },
    result: { symbol: 'd_c', unit: 'm' },
    tex: 'd_c = \\sqrt{\\frac{18\\mu v}{g\\,|\\Delta\\rho|}}',
    source: stokes,
    outside: 'evaluated; beyond all measure without a density difference',
    compute: cutDiameter,
  }),
  correlation({
    name: 'hazen-capture',
    says: 'Share of drops of one velocity that an ideal separator keeps.',
    arguments: { v: velocity, v_c: overflow },
    result: share,
    tex: '\\eta = \\min\\left(1,\\frac{v}{v_c}\\right)',
    source: hazen,
    outside: 'between 0 and 1 for any velocities; still water keeps all drops that move',
    compute: hazenCapture,
  }),
  alternative({
    name: 'hazen-capture-non-ideal',
    says: 'Share of drops of one velocity that a separator with mixing keeps.',
    arguments: { v: velocity, v_c: overflow, n: { unit: '1', says: '1 poor, 3 good, 8 excellent', range: [1, 8] } },
    result: share,
    tex: '\\eta = 1-\\left(1+\\frac{v}{n\\,v_c}\\right)^{-n}',
    source: 'Fair, Geyer and Okun (from memory)',
    outside: 'between 0 and 1 for any velocities; still water keeps all drops that move',
    compute: hazenCaptureNonIdeal,
  }),
];
