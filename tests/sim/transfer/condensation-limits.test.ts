import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  cavalliniTransition,
  condensationFluxChato,
  dimensionlessVapourVelocity,
  filmCoefficientCavallini,
  filmCoefficientChato,
} from '../../../sim/transfer/film-condensation.ts';
import {
  filmCoefficientHorizontalTier,
  filmCoefficientNusseltVertical,
  filmCoefficientWavyVertical,
} from '../../../sim/transfer/film-condensation-on-surfaces.ts';
import { fallingFilmDepth } from '../../../sim/transfer/falling-film.ts';
import { celsius, look, perHour, STANDARD_G } from './look.ts';

const flux = (dT: number, D_i = 0.01): number =>
  condensationFluxChato(D_i, dT, 2256.5e3, 965, 0.598, 0.67, 315e-6, 4205, STANDARD_G);
const coefficient = (dT: number, D_i = 0.01): number =>
  filmCoefficientChato(D_i, dT, 2256.5e3, 965, 0.598, 0.67, 315e-6, 4205, STANDARD_G);
const local = (G: number, x: number, dT = 20): number =>
  filmCoefficientCavallini(G, x, 0.01, dT, 2256.5e3, 958.35, 0.5981, 0.6772, 281.6e-6, 12.23e-6, 4217, STANDARD_G);
const vapourSpeed = (G: number, x: number): number =>
  dimensionlessVapourVelocity(G, x, 0.01, 958.35, 0.5981, STANDARD_G);
const transition = (x: number): number => cavalliniTransition(x, 958.35, 0.5981, 281.6e-6, 12.23e-6);

describe('the stratified film in a tube', () => {
  it('condenses nothing on a wall that is not colder than the steam', () => {
    expect([flux(0), flux(-10), coefficient(0), coefficient(-10)]).toEqual([0, 0, 0, 0]);
  });

  it('brings heat that grows smoothly from nothing as the wall cools', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 80, noNaN: true }),
        fc.double({ min: 1.001, max: 2, noNaN: true }),
        (dT, more) => {
          expect(flux(dT * more)).toBeGreaterThan(flux(dT));
          expect(coefficient(dT * more)).toBeLessThan(coefficient(dT));
          expect(coefficient(dT) * dT).toBeCloseTo(flux(dT), 6);
        },
      ),
    );
    expect(flux(1e-9)).toBeLessThan(1e-2);
  });

  it('is thicker, hence poorer, in a wider tube', () => {
    expect(coefficient(20, 0.02)).toBeLessThan(coefficient(20, 0.006));
  });
});

/** Mean coefficient for steam at 100 °C, W/m²K, bore in mm, walls at 40, 60, 80 and 90 °C (independent evaluation). */
const CHATO: readonly (readonly [bore: number, h: readonly number[]])[] = [
  [6, [8017, 9183, 11249, 13554]],
  [8, [7460, 8546, 10469, 12614]],
  [10, [7056, 8082, 9901, 11929]],
  [12, [6741, 7722, 9459, 11398]],
  [15, [6376, 7303, 8946, 10779]],
  [20, [5933, 6796, 8325, 10031]],
];

describe('the stratified film of steam', () => {
  it.each(CHATO)('has the evaluated coefficients in a %d mm tube', (bore, h) => {
    const found = [40, 60, 80, 90].map((t) =>
      look('film-coefficient-chato-steam', { T_sat: celsius(100), T_wall: celsius(t), D_i: bore / 1000 }),
    );
    h.forEach((value, index) => expect(Math.abs((found[index] ?? 0) / value - 1)).toBeLessThan(0.001));
  });
});

describe('the film with vapour shear', () => {
  it('becomes the all-liquid coefficient as the vapour goes', () => {
    const allLiquid =
      ((0.023 * 0.6772) / 0.01) * Math.pow((10 * 0.01) / 281.6e-6, 0.8) * Math.pow((281.6e-6 * 4217) / 0.6772, 0.4);
    expect(local(10, 0)).toBeCloseTo(allLiquid, 8);
    expect(local(10, -1)).toBe(local(10, 0));
    expect(transition(0)).toBe(0);
  });

  it('is finite in dry vapour and on a wall that condenses nothing', () => {
    expect(local(10, 1)).toBeGreaterThan(local(10, 0.99) * 0.9);
    expect(local(10, 0.5, 0)).toBeLessThan(local(10, 0.5, 20));
    expect(local(100, 0.9, 0)).toBe(local(100, 0.9, 20));
  });

  it('passes without a jump from gravity to shear', () => {
    const critical = transition(0.7) / vapourSpeed(1, 0.7);
    expect(vapourSpeed(critical, 0.7)).toBeCloseTo(transition(0.7), 10);
    expect(local(critical * (1 - 1e-9), 0.7) / local(critical * (1 + 1e-9), 0.7)).toBeCloseTo(1, 6);
  });

  it('depends on the wall only while gravity rules', () => {
    expect(local(20, 0.5, 10)).not.toBe(local(20, 0.5, 40));
    expect(local(150, 0.5, 10)).toBe(local(150, 0.5, 40));
  });

  /** Bore in mm, kg/h, mean over x = 0.05–0.95 at ΔT = 20 K in kW/m²K (independent evaluation, printed to 0.1). */
  it.each([
    [10, 0.2, 7.6],
    [10, 1, 7.9],
    [10, 5, 9.1],
    [10, 10, 11.8],
    [6, 0.2, 8.7],
    [6, 1, 8.9],
    [6, 5, 15.9],
    [6, 10, 26.8],
  ])('averages over a %d mm tube at %d kg/h to %d kW/m²K', (bore, rate, mean) => {
    let sum = 0;
    for (let i = 0; i < 19; i += 1) {
      sum += look('film-coefficient-cavallini-steam', {
        m: perHour(rate),
        x: 0.05 + 0.05 * i,
        D_i: bore / 1000,
        T_sat: celsius(100),
        dT: 20,
      });
    }
    expect(sum / 19 / 1000).toBeCloseTo(mean, 0);
    expect(Math.abs(sum / 19000 / mean - 1)).toBeLessThan(0.02);
  });
});

describe('films on the outside of surfaces', () => {
  it('condense nothing on a wall that is not colder than the steam', () => {
    expect(filmCoefficientNusseltVertical(0.3, 0, 2256e3, 960, 0.6, 0.68, 282e-6, 4200, 0.68, STANDARD_G)).toBe(0);
    expect(filmCoefficientWavyVertical(0.3, -5, 2256e3, 960, 0.68, 282e-6, 4200, STANDARD_G)).toBe(0);
  });

  it('grow thicker down a tier of tubes as N to the power −1/4', () => {
    const tier = (N: number): number =>
      filmCoefficientHorizontalTier(0.012, N, 20, 2256e3, 960, 0.6, 0.68, 282e-6, 4200, 0.68, STANDARD_G);
    expect(tier(16) / tier(1)).toBeCloseTo(0.5, 12);
  });
});

/** Coefficient over k/δ, far down a laminar film that cools on a wall of one temperature, by finite volumes across its depth. */
function developedFilmNusselt(): number {
  const n = 120;
  const y = Array.from({ length: n }, (_, i) => (i + 0.5) / n);
  const speed = y.map((at) => 1.5 * (2 * at - at * at));
  let T = y.map(() => 1);
  let Nu = 0;
  const dx = 0.002;
  for (let step = 0; step < 2000; step += 1) {
    // Backward Euler down the film, solved by Thomas' rule: wall at 0, no flux through the free surface.
    const [c, d] = [new Float64Array(n), new Float64Array(n)];
    for (let i = 0; i < n; i += 1) {
      const below = (i === 0 ? 2 : 1) * n * n;
      const above = i === n - 1 ? 0 : n * n;
      const keep = (speed[i] as number) / dx;
      const lower = i === 0 ? 0 : below;
      const pivot = keep + below + above - lower * (i === 0 ? 0 : (c[i - 1] as number));
      c[i] = above / pivot;
      d[i] = (keep * (T[i] as number) + lower * (i === 0 ? 0 : (d[i - 1] as number))) / pivot;
    }
    const next = new Array<number>(n);
    for (let i = n - 1; i >= 0; i -= 1)
      next[i] = (d[i] as number) + (i === n - 1 ? 0 : (c[i] as number) * (next[i + 1] as number));
    T = next;
    const bulk = T.reduce((sum, value, i) => sum + (value * (speed[i] as number)) / n, 0);
    Nu = (2 * n * (T[0] as number)) / bulk;
    T = T.map((value) => value / bulk);
  }
  return Nu;
}

describe('the film after the last steam in an upright tube', () => {
  const at60 = { rho_l: 983.2, mu_l: 466e-6, k_l: 0.651, g: STANDARD_G };
  const conductance = (rate: number, D_i: number): number =>
    look('falling-film-conductance', { m: perHour(rate), D_i, ...at60 });

  it('cools as a laminar film does far from its inlet, solved across its depth', () => {
    const depth = fallingFilmDepth(perHour(1), 0.016, 983.2, 466e-6, STANDARD_G);
    expect((conductance(1, 0.016) * depth) / (0.651 * Math.PI * 0.016) / developedFilmNusselt()).toBeCloseTo(1, 2);
  });

  it('carries its flow: ρ² g δ³/3 μ on the perimeter', () => {
    const depth = fallingFilmDepth(perHour(2), 0.013, 983.2, 466e-6, STANDARD_G);
    expect((Math.PI * 0.013 * 983.2 ** 2 * STANDARD_G * depth ** 3) / (3 * 466e-6) / perHour(2)).toBeCloseTo(1, 12);
  });

  it('gives the wall far more than a rivulet that wets a fifth of it, and nothing without flow', () => {
    expect(conductance(2, 0.01)).toBeGreaterThan(
      5 * look('rivulet-conductance-water', { m: perHour(2), D_i: 0.01, slope: 0.1, T: celsius(60) }),
    );
    expect(conductance(0, 0.01)).toBe(0);
  });
});
