/**
 * Separation of oil and water against worked examples and tables. Marked "from memory" where the textbook was recalled
 * rather than re-read. The dissolved loss and the partial pressures of steam distillation are checked with the oils.
 */
import { describe, expect, it } from 'vitest';
import { checkPublished, look } from '../sim/transfer/published-rows.ts';

const g = 9.81;
const rise = (d: number, drho: number, mu: number): number => look('stokes-velocity', { d, drho, mu, g });
const cut = (v: number, drho: number, mu: number): number => look('cut-diameter', { v, drho, mu, g });

const sinnott = 'Towler and Sinnott, Chemical Engineering Design, decanter example (from memory, re-run)';
const oilFlow = 1000 / 900 / 3600;
const decanter = (): readonly number[] => {
  const v = rise(150e-6, 100, 1e-3);
  const area = 5 / 3600 / 1.2e-3;
  const height = 2 * 1.2;
  return [
    v,
    5 / 3600,
    area,
    (0.1 * height) / 1.2e-3,
    oilFlow / area,
    cut(0.27e-3, 100, 3e-3),
    look('heavy-leg-height', { z_1: 2.16, z_3: 1.2, rho_light: 900, rho_heavy: 1000 }),
  ];
};

const api = 'API Publication 421 as in a public calculation sheet';
const channel = (): readonly number[] => {
  const v_t = rise(150e-6, 120, 1e-3);
  const v_H = look('api-horizontal-limit', { v_t });
  const section = 224.79 / 3600 / v_H;
  return [
    v_t * 3600,
    15 * v_t * 3600,
    v_H * 3600,
    section,
    v_H / v_t,
    look('api-length-factor', { ratio: v_H / v_t }),
    look('api-channel-length', { v_H, v_t, depth: 1.13 }),
  ];
};
const silla = (): readonly number[] => [
  look('dispersion-number', { Q_L: 1.26 / 897, Q_H: 5.04 / 1000, rho_L: 897, rho_H: 1000, mu_L: 0.01, mu_H: 0.7e-3 }),
  rise(150e-6, 103, 0.7e-3),
];
const basin = (): readonly number[] => {
  const v_c = look('overflow-rate', { Q: 0.6, A: 125 });
  return [v_c, look('hazen-capture', { v: 0.002, v_c })];
};
const smallBasin = (): readonly number[] => {
  const v_c = look('overflow-rate', { Q: 8, A: 144 });
  return [look('residence-time', { V: 18 * 8 * 3, Q: 8 }), v_c, look('hazen-capture', { v: 0.2, v_c })];
};

const own = 'independent evaluation';
const florentine = (): readonly number[] => {
  const A = 0.25 * Math.PI * 0.08 * 0.08;
  const Q = 60e-6 / 60;
  const v_c = look('overflow-rate', { Q, A });
  return [
    v_c * 1e3,
    cut(v_c, 120.1, 0.797e-3) * 1e6,
    cut(1.5 * v_c, 120.1, 0.797e-3) * 1e6,
    look('residence-time', { V: A * 0.2, Q }) / 60,
    look('hazen-capture', { v: rise(20e-6, 120.1, 0.797e-3), v_c }),
  ];
};
const offset = (drho: number) => () => 1000 * look('leg-offset', { layer: 0.1, drho, rho_heavy: 995.7 });

describe('worked examples of separation', () => {
  checkPublished([
    [
      'W1',
      'a decanter: rise, flow, area, time in the band, oil speed, water drop, heavy leg',
      decanter,
      [1.226e-3, 1.389e-3, 1.16, 200, 0.27e-3, 122e-6, 2.06],
      0.015,
      sinnott,
    ],
    [
      'W2',
      'a channel: v_t, 15 v_t, cap, section, ratio, F, length',
      channel,
      [5.297, 79.46, 54.86, 4.1, 10.36, 1.53, 17.91],
      0.002,
      api,
    ],
    [
      'W3',
      'which liquid is in drops, and its rise',
      silla,
      [0.1215, 1.8e-3],
      0.003,
      'Silla, Chemical Process Engineering, Example 6.4',
    ],
    ['W4', 'a basin of 25 m by 5 m', basin, [0.0048, 0.417], 0.001, 'a public course question on Hazen'],
    [
      'W5',
      'a basin of 18 m by 8 m, min and m/min',
      smallBasin,
      [54, 0.0556, 1],
      0.001,
      'a public course question on Hazen',
    ],
    [
      'W6',
      'a home Florentine at 30 °C: overflow, cut, cut at F 1.5, minutes, share of 20 µm',
      florentine,
      [0.1989, 49.2, 60.3, 16.8, 0.165],
      0.003,
      own,
    ],
    [
      'W7',
      'the water leg of a floating oil',
      () => look('heavy-leg-height', { z_1: 0.22, z_3: 0.12, rho_light: 875.6, rho_heavy: 995.7 }),
      0.2079,
      0.001,
      'Towler and Sinnott, decanters',
    ],
    [
      'W8',
      'the oil leg of a sinking oil',
      () => look('heavy-leg-height', { z_1: 0.22, z_3: 0.06, rho_light: 995.7, rho_heavy: 1039.5 }),
      0.2132,
      0.001,
      own,
    ],
    ['W9', 'the offset at Δρ 150', offset(150), 15.1, 0.005, own],
    ['W9', 'the offset at Δρ 115', offset(115), 11.5, 0.005, own],
    ['W9', 'the offset at Δρ 80', offset(80), 8.0, 0.005, own],
    ['W9', 'the offset at Δρ 40', offset(40), 4.0, 0.005, own],
    ['W9', 'the offset at Δρ 20', offset(20), 2.0, 0.005, own],
    ['W9', 'the offset at Δρ 10', offset(10), 1.0, 0.005, own],
    [
      'W10',
      'the standing time of a decanter, h',
      () => look('settling-time-rule', { mu: 1.1e-3, drho: 288 }) / 3600,
      0.38,
      0.006,
      'McCabe, Smith and Harriott (from memory)',
    ],
    [
      'W10',
      'the standing time of lavender at 30 °C, min',
      () => look('settling-time-rule', { mu: 0.797e-3, drho: 120.1 }) / 60,
      40,
      0.006,
      own,
    ],
  ]);
});

/** Oil, °C, Δρ, water viscosity in mPa s, then the rise in mm/s of 60, 150 and 300 µm drops, plain and with drag. */
const RISE: readonly (readonly [
  oil: string,
  t: number,
  drho: number,
  mu: number,
  rho: number,
  plain: readonly number[],
  withDrag: readonly number[],
  tolerance: number,
])[] = [
  ['lavender', 20, 114.8, 1.0016, 998.21, [0.2249, 1.4054, 5.6215], [0.2231, 1.3389, 4.7234], 0.001],
  ['lavender', 30, 120.0, 0.7972, 995.65, [0.2954, 1.8463, 7.3854], [0.2922, 1.727, 5.8715], 0.001],
  ['lavender', 40, 124.4, 0.6527, 992.22, [0.374, 2.3372, 9.3488], [0.3686, 2.141, 7.0115], 0.001],
  ['orange', 20, 155.7, 1.0016, 998.21, [0.305, 1.9064, 7.6257], [0.3022, 1.7972, 6.2033], 0.001],
  ['orange', 50, 169.3, 0.5465, 988.05, [0.6076, 3.7977, 15.1908], [0.5941, 3.3316, 10.2196], 0.001],
  ['anise', 40, 25.8, 0.6527, 992.22, [0.0775, 0.4845, 1.9378], [0.0771, 0.4693, 1.7196], 0.003],
  ['clove', 30, -43.9, 0.7972, 995.65, [-0.108, -0.6748, -2.6991], [-0.1074, -0.6517, -2.3712], 0.002],
];
const SIZES = [60e-6, 150e-6, 300e-6];

describe('rise and fall of oil drops', () => {
  checkPublished(
    RISE.flatMap(([oil, t, drho, mu, rho, plain, withDrag, tolerance]) => [
      [
        'table',
        `drops of ${oil} at ${t} °C`,
        () => SIZES.map((d) => 1e3 * rise(d, drho, mu * 1e-3)),
        plain,
        tolerance,
        `${own}, printed to 0.1 µm/s`,
      ],
      [
        'table',
        `drops of ${oil} at ${t} °C with drag`,
        () => SIZES.map((d) => 1e3 * look('settling-velocity-with-drag', { d, drho, rho, mu: mu * 1e-3, g })),
        withDrag,
        tolerance,
        `${own} of Schiller and Naumann`,
      ],
    ]),
  );
});

/** Condensate in mL/min, bore in mm, overflow in mm/s, cut of lavender at 30 °C in µm, minutes in 200 mm. */
const CUTS: readonly (readonly [number, number, number, number, number])[] = [
  [20, 40, 0.2653, 56.9, 12.6],
  [20, 80, 0.0663, 28.4, 50.3],
  [20, 150, 0.0189, 15.2, 176.7],
  [40, 60, 0.2358, 53.6, 14.1],
  [40, 100, 0.0849, 32.2, 39.3],
  [60, 40, 0.7958, 98.5, 4.2],
  [60, 100, 0.1273, 39.4, 26.2],
  [100, 40, 1.3263, 127.1, 2.5],
  [100, 80, 0.3316, 63.6, 10.1],
  [200, 40, 2.6526, 179.8, 1.3],
  [200, 100, 0.4244, 71.9, 7.9],
  [200, 150, 0.1886, 47.9, 17.7],
];

describe('what a Florentine vessel keeps', () => {
  checkPublished(
    CUTS.map(([flow, bore, overflow, size, minutes]) => [
      'table',
      `${flow} mL/min in a ${bore} mm vessel`,
      () => {
        const A = 0.25 * Math.PI * (bore * 1e-3) ** 2;
        const Q = (flow * 1e-6) / 60;
        const v = look('overflow-rate', { Q, A });
        return [1e3 * v, 1e6 * cut(v, 120.1, 0.797e-3), Math.round(look('residence-time', { V: 0.2 * A, Q }) / 6) / 10];
      },
      [overflow, size, minutes],
      0.003,
      own,
    ]),
  );
});

/** Share kept, by adding up four thousand slices of the drop sizes. */
const keptBySlices = (d_c: number, median: number, spread: number): number => {
  const sigma = Math.log(spread);
  const steps = 4000;
  let kept = 0;
  for (let i = 0; i < steps; i += 1) {
    const z = -9 + (18 * (i + 0.5)) / steps;
    const ratio = (median * Math.exp(sigma * z)) / d_c;
    kept += (Math.min(1, ratio * ratio) * Math.exp(-0.5 * z * z) * 18) / (steps * Math.sqrt(2 * Math.PI));
  }
  return kept;
};

describe('the share of log-normal drops that is kept', () => {
  it.each([
    [49.2e-6, 120e-6, 2.2],
    [120e-6, 120e-6, 2.2],
    [300e-6, 120e-6, 2.2],
    [60e-6, 60e-6, 3],
    [20e-6, 200e-6, 1.3],
  ])(
    'agrees with adding up thin slices for a cut of %d m, a median of %d m and a spread of %d',
    (d_c, median, spread) => {
      expect(look('captured-share', { cut: d_c, median, spread })).toBeCloseTo(keptBySlices(d_c, median, spread), 5);
    },
  );
});

describe('the error function', () => {
  checkPublished([
    ['Table 7.1', 'erf at 0.5', () => look('error-function', { x: 0.5 }), 0.5204998778, 1e-10, 'Abramowitz and Stegun'],
    ['Table 7.1', 'erf at 1', () => look('error-function', { x: 1 }), 0.8427007929, 1e-10, 'Abramowitz and Stegun'],
    ['Table 7.1', 'erf at 2', () => look('error-function', { x: 2 }), 0.995322265, 1e-10, 'Abramowitz and Stegun'],
    [
      'math',
      'erfc at 3',
      () => look('complementary-error-function', { x: 3 }),
      2.209049699858544e-5,
      1e-14,
      'the C library',
    ],
    [
      'math',
      'erfc at 5',
      () => look('complementary-error-function', { x: 5 }),
      1.5374597944280349e-12,
      1e-14,
      'the C library',
    ],
    [
      'math',
      'erfc at 10',
      () => look('complementary-error-function', { x: 10 }),
      2.088487583762545e-45,
      1e-14,
      'the C library',
    ],
    [
      'math',
      'erfc at −1.5',
      () => look('complementary-error-function', { x: -1.5 }),
      1.9661051464753108,
      1e-14,
      'the C library',
    ],
  ]);
});
