import { alternative, type Argument, type Correlation } from '../correlation.ts';
import { darcyGradient, frictionFactor, frictionGradient } from './pressure-drop.ts';

/**
 * Further two-phase friction correlations, for comparison. No run uses them. A spread of two between them is
 * normal at the low flows of a small still.
 */

/** Friction gradient from the all-liquid one: entry `two-phase-gradient-friedel`. */
export const frictionGradientFriedel = (
  G: number,
  x: number,
  D: number,
  rho_l: number,
  rho_v: number,
  mu_l: number,
  mu_v: number,
  sigma: number,
  g: number,
): number => {
  if (!(G > 0)) return 0;
  const f_l = frictionFactor((G * D) / mu_l, 0);
  const f_v = frictionFactor((G * D) / mu_v, 0);
  const E = (1 - x) * (1 - x) + (x * x * rho_l * f_v) / (rho_v * f_l);
  const F = Math.pow(x, 0.78) * Math.pow(1 - x, 0.224);
  const H = Math.pow(rho_l / rho_v, 0.91) * Math.pow(mu_v / mu_l, 0.19) * Math.pow(1 - mu_v / mu_l, 0.7);
  const rho_H = 1 / (x / rho_v + (1 - x) / rho_l);
  const Fr = (G * G) / (g * D * rho_H * rho_H);
  const We = (G * G * D) / (sigma * rho_H);
  const multiplier = E + (3.24 * F * H) / (Math.pow(Fr, 0.045) * Math.pow(We, 0.035));
  return multiplier * frictionGradient(G, D, rho_l, mu_l, 0);
};

/** Laminar below Re 2000, 0.184 Re^−0.2 above: the friction that belongs to Lockhart and Martinelli's data. */
const phaseAlone = (G: number, D: number, rho: number, mu: number): number => {
  const Re = (G * D) / mu;
  if (!(Re > 0)) return 0;
  return darcyGradient(Re < 2000 ? 64 / Re : 0.184 * Math.pow(Re, -0.2), G, D, rho);
};

/**
 * Friction gradient from each phase alone: entry `two-phase-gradient-lockhart-martinelli`. Written as a sum, so that it
 * holds at x = 0 and x = 1.
 */
export const frictionGradientLockhartMartinelli = (
  G: number,
  x: number,
  D: number,
  rho_l: number,
  rho_v: number,
  mu_l: number,
  mu_v: number,
): number => {
  const G_l = G * (1 - x);
  const G_v = G * x;
  const liquidTurbulent = (G_l * D) / mu_l >= 2000;
  const vapourTurbulent = (G_v * D) / mu_v >= 2000;
  const C = liquidTurbulent ? (vapourTurbulent ? 20 : 10) : vapourTurbulent ? 12 : 5;
  const liquid = phaseAlone(G_l, D, rho_l, mu_l);
  const vapour = phaseAlone(G_v, D, rho_v, mu_v);
  return liquid + C * Math.sqrt(Math.max(0, liquid * vapour)) + vapour;
};

const flow: Readonly<Record<string, Argument>> = {
  G: { unit: 'kg/(m² s)', says: 'mass flux over the whole bore' },
  x: { unit: '1', says: 'vapour share of the flow', range: [0, 1] },
  D: { unit: 'm', says: 'bore' },
  rho_l: { unit: 'kg/m³', says: 'density of the liquid' },
  rho_v: { unit: 'kg/m³', says: 'density of the vapour' },
  mu_l: { unit: 'Pa s', says: 'viscosity of the liquid' },
  mu_v: { unit: 'Pa s', says: 'viscosity of the vapour' },
};
const gradient = { symbol: 'dp/dz', unit: 'Pa/m' };

export const twoPhaseAlternatives: readonly Correlation[] = [
  alternative({
    name: 'two-phase-gradient-friedel',
    says: 'Pressure lost to friction per length by vapour and liquid flowing together.',
    arguments: {
      ...flow,
      sigma: { unit: 'N/m', says: 'surface tension' },
      g: { unit: 'm/s²', says: 'acceleration of gravity' },
    },
    result: gradient,
    tex: '\\frac{dp}{dz} = \\left(\\frac{dp}{dz}\\right)_{LO}\\left[E+\\frac{3.24FH}{Fr^{0.045}We^{0.035}}\\right],\\quad F=x^{0.78}(1-x)^{0.224},\\ H=\\left(\\frac{\\rho_l}{\\rho_v}\\right)^{0.91}\\left(\\frac{\\mu_v}{\\mu_l}\\right)^{0.19}\\left(1-\\frac{\\mu_v}{\\mu_l}\\right)^{0.7}',
    source: 'Friedel, European Two-Phase Flow Group Meeting, Ispra (1979) paper E2',
    outside: 'evaluated; meant for viscosities in a ratio below 1000; 2–3 times too high below about 10 kg/(m² s)',
    compute: frictionGradientFriedel,
  }),
  alternative({
    name: 'two-phase-gradient-lockhart-martinelli',
    says: 'Pressure lost to friction per length from each phase alone.',
    arguments: flow,
    result: gradient,
    tex: '\\frac{dp}{dz} = \\left(\\frac{dp}{dz}\\right)_l\\left[1+\\frac{C}{X}+\\frac{1}{X^2}\\right],\\quad C=5,\\,10,\\,12,\\,20\\ \\text{(both laminar, liquid, vapour, both turbulent)}',
    source: 'Lockhart and Martinelli, Chem. Eng. Prog. 45 (1949) 39; C after Chisholm 1967',
    outside: 'evaluated; a phase counts as turbulent from Re 2000',
    compute: frictionGradientLockhartMartinelli,
  }),
];
