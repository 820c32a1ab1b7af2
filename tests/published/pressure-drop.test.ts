/**
 * Pressure drop in tubes and beds against independent evaluations and textbook examples. Every check of it handed to
 * the project is here; those of vents are in venting.test.ts.
 */
import { describe } from 'vitest';
import { celsius, checkPublished, look, perHour } from '../sim/transfer/published-rows.ts';

const fluids = 'python fluids 1.1.0';
const steam = { rho: 0.5981359925, mu: 1.223215812e-5 };
const mixture = { rho_l: 958.3542773, rho_v: 0.5981359925, mu_l: 2.815850194e-4, mu_v: 1.223215812e-5 };
const massFlux = (m: number, D: number): number => m / (0.25 * Math.PI * D * D);
const dry = (m: number, D: number) => () =>
  look('friction-gradient', { G: massFlux(perHour(m), D), D, ...steam, roughness: 0 });

const muller = (m: number, x: number, D: number) => () => {
  const flow = { G: massFlux(perHour(m), D), D, roughness: 0 };
  return look('two-phase-gradient', {
    A: look('friction-gradient', { ...flow, rho: mixture.rho_l, mu: mixture.mu_l }),
    B: look('friction-gradient', { ...flow, ...steam }),
    x,
  });
};
const friedel = (m: number, x: number, D: number) => () =>
  look('two-phase-gradient-friedel', {
    G: massFlux(perHour(m), D),
    x,
    D,
    ...mixture,
    sigma: 0.05891186859,
    g: 9.80665,
  });
const lockhart = (m: number, x: number, D: number) => () =>
  look('two-phase-gradient-lockhart-martinelli', { G: massFlux(perHour(m), D), x, D, ...mixture });

/** Steam and water in a 75 mm pipe: the gas gradient times the square of the chart's 3.95; kPa/m. */
const coulson51 = (): number => {
  const rho = (120e3 * 0.018) / (8.314 * 330);
  const gas = look('darcy-gradient', { f: 8 * 0.0022, G: massFlux(0.05, 0.075), D: 0.075, rho });
  return (3.95 * 3.95 * gas) / 1000;
};

describe('friction of one phase in a tube', () => {
  checkPublished([
    ['dp 001', 'dry steam, 1 kg/h in 10 mm', dry(1, 0.01), 46.024799, 0.01, fluids],
    ['dp 002', 'dry steam, 5 kg/h in 10 mm', dry(5, 0.01), 733.70647, 0.01, fluids],
    ['dp 003', 'dry steam, 5 kg/h in 6 mm', dry(5, 0.006), 8316.5858, 0.01, fluids],
    [
      'dp 006',
      'the friction factor of a smooth tube',
      () => look('friction-factor', { Re: 5000, roughness: 0 }),
      0.037392728,
      1e-4,
      fluids,
    ],
    [
      'dp 007',
      'the friction factor of a rough tube',
      () => look('friction-factor', { Re: 20000, roughness: 1e-4 }),
      0.026101466,
      1e-4,
      fluids,
    ],
    [
      'table',
      'dry steam by the name of the desk reference, 10 kg/h in 6 mm',
      () => look('friction-gradient-steam', { m: perHour(10), D_i: 0.006, T_sat: celsius(100) }),
      28325,
      0.01,
      fluids,
    ],
  ]);
});

describe('friction of steam with its condensate', () => {
  checkPublished([
    ['dp 010', 'Müller-Steinhagen and Heck, 2 kg/h', muller(2, 0.5, 0.01), 137.84795, 0.01, fluids],
    ['dp 011', 'Friedel, 2 kg/h', friedel(2, 0.5, 0.01), 376.12307, 0.01, fluids],
    ['dp 012', 'Lockhart and Martinelli, 2 kg/h', lockhart(2, 0.5, 0.01), 82.675662, 0.01, fluids],
    ['dp 013', 'Müller-Steinhagen and Heck, 5 kg/h', muller(5, 0.8, 0.01), 1061.5929, 0.01, fluids],
    ['dp 014', 'Friedel, 5 kg/h', friedel(5, 0.8, 0.01), 1278.4772, 0.01, fluids],
    ['dp 015', 'Lockhart and Martinelli, 5 kg/h', lockhart(5, 0.8, 0.01), 624.87863, 0.01, fluids],
    ['dp 016', 'Müller-Steinhagen and Heck, 5 kg/h in 6 mm', muller(5, 0.3, 0.006), 4659.7022, 0.01, fluids],
    ['dp 017', 'Friedel, 5 kg/h in 6 mm', friedel(5, 0.3, 0.006), 4425.3579, 0.01, fluids],
    ['dp 018', 'Lockhart and Martinelli, 5 kg/h in 6 mm', lockhart(5, 0.3, 0.006), 2053.9077, 0.01, fluids],
    [
      'dp 025',
      'a worked example of Friedel',
      () =>
        look('two-phase-gradient-friedel', {
          G: massFlux(0.6, 0.05),
          x: 0.1,
          D: 0.05,
          rho_l: 915,
          rho_v: 2.67,
          mu_l: 180e-6,
          mu_v: 14e-6,
          sigma: 0.0487,
          g: 9.80665,
        }),
      738.65005,
      0.005,
      `a worked example quoted by ${fluids}`,
    ],
    [
      'dp 027',
      'steam and water in a 75 mm pipe',
      coulson51,
      0.29777333,
      0.02,
      'Coulson and Richardson vol. 1 Example 5.1 p. 190, which prints 0.298 kPa/m',
    ],
    [
      'table',
      'steam and condensate by the name of the desk reference',
      () => look('two-phase-gradient-steam', { m: perHour(2), x: 0.5, D_i: 0.01, T_sat: celsius(100) }),
      137.84795,
      0.01,
      fluids,
    ],
  ]);
});

const bed = (d: number, voidage: number, v: number, L: number) => () =>
  L * look('ergun-gradient', { v, d, voidage, ...steam });

describe('flow through a packed bed', () => {
  checkPublished([
    ['dp 028', 'steam through 1 mm pieces', bed(0.001, 0.5, 0.02, 0.3), 22.520319, 0.005, fluids],
    ['dp 029', 'steam through 3 mm pieces', bed(0.003, 0.6, 0.05, 0.4), 3.6664205, 0.005, fluids],
    ['dp 030', 'steam through 0.5 mm pieces', bed(0.0005, 0.45, 0.01, 0.25), 61.224988, 0.005, fluids],
    [
      'dp 028',
      'steam through 1 mm pieces by the name of the desk reference',
      () => look('ergun-steam-bed', { v: 0.02, d: 0.001, voidage: 0.5, L: 0.3, T_sat: celsius(100) }),
      22.520319,
      0.005,
      fluids,
    ],
    [
      'dp 033',
      'water through 0.8 mm pieces',
      () => look('ergun-gradient', { v: 0.001, d: 0.0008, voidage: 0.4, rho: 1000, mu: 0.001 }),
      1338.8672,
      1e-4,
      fluids,
    ],
    [
      'dp 035',
      'water seeping through sand',
      () =>
        look('blake-kozeny-velocity', {
          gradient: (997.950058 * 9.80665 * 0.381) / 0.3048,
          d: 0.000762,
          voidage: 0.33,
          mu: 0.001002,
        }),
      0.0037862813,
      0.01,
      'de Nevers, Fluid Mechanics for Chemical Engineers Example 11.1 p. 401',
    ],
  ]);
});
