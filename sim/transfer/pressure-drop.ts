import { correlation, type Argument, type Correlation } from '../correlation.ts';
import { LAMINAR_RE } from './tube-flow.ts';

/** Friction of one phase in a tube, and of steam with its condensate. */

/** Darcy friction factor of a straight tube: entry `friction-factor`. */
export const frictionFactor = (Re: number, roughness: number): number => {
  if (!(Re > 0)) return 0;
  if (Re < LAMINAR_RE) return Math.min(Number.MAX_VALUE, 64 / Re);
  const rough = roughness / 3.7;
  const A = -2 * Math.log10(rough + 12 / Re);
  const B = -2 * Math.log10(rough + (2.51 * A) / Re);
  const C = -2 * Math.log10(rough + (2.51 * B) / Re);
  const root = A - ((B - A) * (B - A)) / (C - 2 * B + A);
  return 1 / (root * root);
};

/** Friction gradient at a known friction factor: entry `darcy-gradient`. */
export const darcyGradient = (f: number, G: number, D: number, rho: number): number =>
  (f * G * Math.abs(G)) / (2 * rho * D);

/**
 * Friction gradient of one phase in a tube: entry `friction-gradient`. Laminar flow is written out, so that it runs
 * smoothly through no flow.
 */
export const frictionGradient = (G: number, D: number, rho: number, mu: number, roughness: number): number => {
  const Re = (Math.abs(G) * D) / mu;
  return Re < LAMINAR_RE ? (32 * mu * G) / (rho * D * D) : darcyGradient(frictionFactor(Re, roughness), G, D, rho);
};

/** Friction gradient of steam and water together: entry `two-phase-gradient`. */
export const twoPhaseGradient = (A: number, B: number, x: number): number =>
  (A + 2 * (B - A) * x) * Math.cbrt(1 - x) + B * x * x * x;

/**
 * Its mean over a length: entry `mean-two-phase-gradient`. Differences of powers are divided out by hand, so that it stays
 * exact as the ends draw together and equals the local gradient when they meet.
 */
export const meanTwoPhaseGradient = (A: number, B: number, x_in: number, x_out: number): number => {
  // With u = 1 − x the integrand is [A′ − C u] u^⅓ + B x³, A′ = A + C and C = 2 (B − A).
  const a = Math.cbrt(1 - x_in);
  const b = Math.cbrt(1 - x_out);
  const C = 2 * (B - A);
  const squares = a * a + a * b + b * b;
  const vapour = (B * (x_in + x_out) * (x_in * x_in + x_out * x_out)) / 4;
  if (squares === 0) return vapour;
  const fourth = ((a + b) * (a * a + b * b)) / squares;
  const a3 = a * a * a;
  const b3 = b * b * b;
  const seventh = (a3 * a3 + b3 * b3 + a * b * (a * a3 + b * b3) + a * a * b * b * (a * a + a * b + b * b)) / squares;
  return (A + C) * 0.75 * fourth - (C * 3 * seventh) / 7 + vapour;
};

const massFlux: Argument = { unit: 'kg/(m² s)', says: 'mass flux over the whole bore' };
const bore: Argument = { unit: 'm', says: 'bore' };
const density: Argument = { unit: 'kg/m³', says: 'density' };
const relativeRoughness: Argument = { unit: '1', says: 'roughness over bore, 0 for smooth copper', range: [0, 0.05] };
const ends: Readonly<Record<string, Argument>> = {
  A: { unit: 'Pa/m', says: 'gradient with all of the flow liquid' },
  B: { unit: 'Pa/m', says: 'gradient with all of the flow vapour' },
};
const share = (says: string): Argument => ({ unit: '1', says, range: [0, 1] });
const gradient = { symbol: 'dp/dz', unit: 'Pa/m' };
const muller = 'Müller-Steinhagen and Heck, Chem. Eng. Process. 20 (1986) 297–308';

export const pressureDropCorrelations: readonly Correlation[] = [
  correlation({
    name: 'friction-factor',
    says: 'Darcy friction factor of one phase in a straight tube.',
    arguments: {
      Re: { unit: '1', says: 'Reynolds number on the bore', range: [0, 1e8] },
      roughness: relativeRoughness,
    },
    result: { symbol: 'f', unit: '1' },
    tex: 'f=\\frac{64}{Re}\\ (Re<2300),\\qquad \\frac{1}{\\sqrt f}=-2\\log_{10}\\left(\\frac{\\varepsilon/D}{3.7}+\\frac{2.51}{Re\\sqrt f}\\right)',
    source:
      'Colebrook 1939, solved in closed form after Serghides, Chem. Eng. 91(5) (1984) 63, within 3·10⁻⁵ of the exact solution',
    outside: 'evaluated; steps up at Re 2300 as flow turns turbulent; zero without flow',
    compute: frictionFactor,
  }),
  correlation({
    name: 'friction-gradient',
    says: 'Pressure lost to friction per length by one phase in a straight tube.',
    arguments: {
      G: massFlux,
      D: bore,
      rho: density,
      mu: { unit: 'Pa s', says: 'viscosity' },
      roughness: relativeRoughness,
    },
    result: gradient,
    tex: '\\frac{dp}{dz} = f\\,\\frac{G^2}{2\\rho D}',
    source: 'Darcy–Weisbach with the friction factor of Colebrook',
    outside: 'evaluated; the sign follows the flow',
    compute: frictionGradient,
  }),
  correlation({
    name: 'darcy-gradient',
    says: 'Pressure lost to friction per length for a known Darcy friction factor.',
    arguments: { f: { unit: '1', says: 'Darcy friction factor' }, G: massFlux, D: bore, rho: density },
    result: gradient,
    tex: '\\frac{dp}{dz} = f\\,\\frac{G^2}{2\\rho D}',
    source: 'Darcy–Weisbach',
    outside: 'exact definition; no limits',
    compute: darcyGradient,
  }),
  correlation({
    name: 'two-phase-gradient',
    says: 'Pressure lost to friction per length by vapour and liquid flowing together, at one place.',
    arguments: { ...ends, x: share('vapour share of the flow') },
    result: gradient,
    tex: '\\frac{dp}{dz} = \\left[A+2(B-A)x\\right](1-x)^{1/3}+Bx^3',
    source: muller,
    outside: 'evaluated; meant for 0 ≤ x ≤ 1 and tubes of 4–392 mm; a spread of ±40 % and more is normal',
    role: 'other-form',
    compute: twoPhaseGradient,
  }),
  correlation({
    name: 'mean-two-phase-gradient',
    says: 'Pressure lost to friction per length, averaged over a length in which the vapour share changes evenly.',
    arguments: { ...ends, x_in: share('vapour share entering'), x_out: share('vapour share leaving') },
    result: gradient,
    tex: '\\overline{\\frac{dp}{dz}} = \\frac{1}{x_{in}-x_{out}}\\int_{x_{out}}^{x_{in}}\\left\\{\\left[A+2(B-A)x\\right](1-x)^{1/3}+Bx^3\\right\\}dx',
    source: `${muller}, integrated`,
    outside: 'evaluated; meant for 0 ≤ x ≤ 1 and tubes of 4–392 mm; a spread of ±40 % and more is normal',
    compute: meanTwoPhaseGradient,
  }),
];
