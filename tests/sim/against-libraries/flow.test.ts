/** Relations of flow against the same relations in an open library. */
import { describe } from 'vitest';
import { celsius, look, perHour } from '../transfer/look.ts';
import { checkAgainst, fluids, pythonMath } from './library-rows.ts';

const at =
  (name: string, values: Readonly<Record<string, number>>): (() => number) =>
  () =>
    look(name, values);
const ROUNDING = 1e-6;
/** The library solves Colebrook's equation by another form. */
const FRICTION = 1e-4;

const steam = { rho: 0.5981359925, mu: 1.223215812e-5 };
const mixture = { rho_l: 958.3542773, rho_v: 0.5981359925, mu_l: 2.815850194e-4, mu_v: 1.223215812e-5 };
const massFlux = (m: number, D: number): number => m / (0.25 * Math.PI * D * D);
const dry = (kg_h: number, D: number): (() => number) =>
  at('friction-gradient', { G: massFlux(perHour(kg_h), D), D, ...steam, roughness: 0 });

describe('friction of one phase', () => {
  checkAgainst(fluids, [
    ['dry steam, 1 kg/h in 10 mm', dry(1, 0.01), 46.024799, FRICTION],
    ['dry steam, 5 kg/h in 10 mm', dry(5, 0.01), 733.70647, FRICTION],
    ['dry steam, 5 kg/h in 6 mm', dry(5, 0.006), 8316.5858, FRICTION],
    ['a smooth tube', at('friction-factor', { Re: 5000, roughness: 0 }), 0.037392728, FRICTION],
    ['a rough tube', at('friction-factor', { Re: 20000, roughness: 1e-4 }), 0.026101466, FRICTION],
    [
      'dry steam with properties by IAPWS, 10 kg/h in 6 mm',
      at('friction-gradient-steam', { m: perHour(10), D_i: 0.006, T_sat: celsius(100) }),
      28325,
      FRICTION,
    ],
  ]);
});

const muller =
  (kg_h: number, x: number, D: number): (() => number) =>
  () => {
    const flow = { G: massFlux(perHour(kg_h), D), D, roughness: 0 };
    return look('two-phase-gradient', {
      A: look('friction-gradient', { ...flow, rho: mixture.rho_l, mu: mixture.mu_l }),
      B: look('friction-gradient', { ...flow, ...steam }),
      x,
    });
  };
const friedel = (kg_h: number, x: number, D: number): (() => number) =>
  at('two-phase-gradient-friedel', {
    G: massFlux(perHour(kg_h), D),
    x,
    D,
    ...mixture,
    sigma: 0.05891186859,
    g: 9.80665,
  });
const lockhart = (kg_h: number, x: number, D: number): (() => number) =>
  at('two-phase-gradient-lockhart-martinelli', { G: massFlux(perHour(kg_h), D), x, D, ...mixture });
/** Friedel's relation has a friction factor of its own, which the library replaces by its usual one. */
const OWN_FACTOR = 0.004;

describe('friction of steam with its condensate', () => {
  checkAgainst(fluids, [
    ['Müller-Steinhagen and Heck, 2 kg/h', muller(2, 0.5, 0.01), 137.84795, FRICTION],
    ['Müller-Steinhagen and Heck, 5 kg/h', muller(5, 0.8, 0.01), 1061.5929, FRICTION],
    ['Müller-Steinhagen and Heck, 5 kg/h in 6 mm', muller(5, 0.3, 0.006), 4659.7022, FRICTION],
    [
      'the same with properties by IAPWS, 2 kg/h',
      at('two-phase-gradient-steam', { m: perHour(2), x: 0.5, D_i: 0.01, T_sat: celsius(100) }),
      137.84795,
      FRICTION,
    ],
    ['Friedel, 2 kg/h', friedel(2, 0.5, 0.01), 376.12307, OWN_FACTOR],
    ['Friedel, 5 kg/h', friedel(5, 0.8, 0.01), 1278.4772, OWN_FACTOR],
    ['Friedel, 5 kg/h in 6 mm', friedel(5, 0.3, 0.006), 4425.3579, OWN_FACTOR],
    [
      'Friedel, the example of the library',
      at('two-phase-gradient-friedel', {
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
      OWN_FACTOR,
    ],
    ['Lockhart and Martinelli, 2 kg/h', lockhart(2, 0.5, 0.01), 82.675662, ROUNDING],
    ['Lockhart and Martinelli, 5 kg/h', lockhart(5, 0.8, 0.01), 624.87863, ROUNDING],
    ['Lockhart and Martinelli, 5 kg/h in 6 mm', lockhart(5, 0.3, 0.006), 2053.9077, ROUNDING],
  ]);
});

const bed = (d: number, voidage: number, v: number, L: number) => (): number =>
  L * look('ergun-gradient', { v, d, voidage, ...steam });

describe('flow through a packed bed (Ergun)', () => {
  checkAgainst(fluids, [
    ['steam through 1 mm pieces', bed(0.001, 0.5, 0.02, 0.3), 22.520319, ROUNDING],
    ['steam through 3 mm pieces', bed(0.003, 0.6, 0.05, 0.4), 3.6664205, ROUNDING],
    ['steam through 0.5 mm pieces', bed(0.0005, 0.45, 0.01, 0.25), 61.224988, ROUNDING],
    [
      'the first with properties by IAPWS',
      at('ergun-steam-bed', { v: 0.02, d: 0.001, voidage: 0.5, L: 0.3, T_sat: celsius(100) }),
      22.520319,
      ROUNDING,
    ],
    [
      'water through 0.8 mm pieces',
      at('ergun-gradient', { v: 0.001, d: 0.0008, voidage: 0.4, rho: 1000, mu: 0.001 }),
      1338.8672,
      ROUNDING,
    ],
  ]);
});

const tight = { d: 0.01, D_coil: 0.2 };

describe('flow in a coiled tube', () => {
  checkAgainst(fluids, [
    ['critical Reynolds number, 10 mm on 200 mm', at('critical-reynolds-coil', tight), 7437.6296, ROUNDING],
    [
      'critical Reynolds number, 15 mm on 250 mm',
      at('critical-reynolds-coil', { d: 0.015, D_coil: 0.25 }),
      7876.9192,
      ROUNDING,
    ],
    ['critical Reynolds number, Ito', at('critical-reynolds-coil-ito', tight), 7668.323, ROUNDING],
    ['turbulent friction', at('friction-factor-coil', { Re: 25000, ...tight }), 0.029966517, FRICTION],
    ['laminar friction', at('friction-factor-coil', { Re: 2000, ...tight }), 0.1036883, ROUNDING],
  ]);
});

/** Superheat factors of API 520's 1750 psig row: 1 at 600 °F, 0.94 at 700 °F; the library reads it at 592.5 K. */
const superheat = 1 - (0.06 * (592.5 - 588.7056)) / 55.5556;

describe('steam at a vent and over water', () => {
  const T_sat = celsius(100);
  checkAgainst(fluids, [
    ['critical pressure ratio', at('critical-pressure-ratio', { k: 1.3 }), 0.54572773, ROUNDING],
    [
      'relief area for choked steam, API 520',
      at('relief-area-api-520-steam', { m: 69615 / 3600, p_1: 12.236e6, K_d: 0.975, K_b: 1, K_c: 1, K_SH: superheat }),
      0.0011034712,
      5e-5,
    ],
    ['Souders and Brown with wire mesh, IAPWS', at('souders-brown-velocity', { K: 0.107, T_sat }), 4.2816512, ROUNDING],
    ['Souders and Brown without, IAPWS', at('souders-brown-velocity', { K: 0.05, T_sat }), 2.0007716, ROUNDING],
    ['Souders and Brown', at('souders-brown', { K: 0.08, rho_l: 985.4, rho_v: 1.3 }), 2.2010906, ROUNDING],
  ]);
});

describe('the complementary error function', () => {
  const erfc = (x: number): (() => number) => at('complementary-error-function', { x });
  checkAgainst(pythonMath, [
    ['at 3', erfc(3), 2.209049699858544e-5, 1e-14],
    ['at 5', erfc(5), 1.5374597944280349e-12, 1e-14],
    ['at 10', erfc(10), 2.088487583762545e-45, 1e-14],
    ['at −1.5', erfc(-1.5), 1.9661051464753108, 1e-14],
  ]);
});
