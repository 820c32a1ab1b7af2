/** Vents, closed pots, co-boiling and drops against the same questions calculated by hand. */
import { describe, expect, it } from 'vitest';
import { constituents, constituentById, vapourPressure } from '../../../sim/fluids/constituents.ts';
import { coBoilingOilShare, coBoilingTemperature, saturationOilPerSteam } from '../../../sim/fluids/immiscible.ts';
import { latentHeat, saturationTemperature } from '../../../sim/fluids/water.ts';
import { blockedOutletGauge, blockedOutletHeat, blockedOutletTime } from '../../../sim/still/blocked-outlet.ts';
import { look } from '../transfer/look.ts';
import { boilTogether } from './co-boiling.ts';
import { keptBySlices, riseWithDrag } from './drops.ts';
import { closedPotHeat, isentropicFlux, orifice } from './steam-shut-in.ts';

const SAME = 1e-9;
const expectSame = (ours: number, byHand: number, within = SAME): void =>
  expect(Math.abs(ours / byHand - 1), `${ours} against ${byHand} by hand`).toBeLessThanOrEqual(within);

describe('steam at a vent', () => {
  it.each([
    [0.006, 2000],
    [0.01, 5000],
    [0.008, 10000],
  ])('leaves a hole of %d m under %d Pa', (d, dp) => {
    expectSame(look('steam-vent-flow', { d, dp }), orifice(d, dp));
  });

  it.each([500, 1000, 2000, 5000, 10_000, 50_000])('has the flux of isentropic expansion under %d Pa', (dp) => {
    expectSame(look('steam-vent-flux', { dp }), isentropicFlux(dp));
    for (const P of [1000, 2000, 3000, 5000, 8000, 12_000, 20_000]) {
      const steam = P / latentHeat(saturationTemperature(101_325 + dp));
      expectSame(look('steam-vent-bore', { P, dp }), Math.sqrt((4 * steam) / (Math.PI * isentropicFlux(dp))));
    }
  });

  it('is held back by a seal and a lid as statics says', () => {
    expectSame(look('water-seal-pressure', { depth: 0.3, rho: 1000, g: 9.81 }), 2943);
    expectSame(look('water-seal-depth', { p: 1000, rho: 1000, g: 9.80665 }), 1000 / 9806.65);
    expectSame(look('lid-force', { D: 0.36, dp: 0.5e5 }), 0.25 * Math.PI * 0.36 ** 2 * 0.5e5);
    expectSame(look('lid-lift-pressure', { m: 1.5, D: 0.36, g: 9.81 }), (1.5 * 9.81) / (0.25 * Math.PI * 0.36 ** 2));
  });
});

const STEEL = 480;
const AIR = 101_325;

describe('a pot whose outlet is closed', () => {
  it.each([
    [20, 8, 4],
    [20, 1, 4],
    [50, 20, 8],
    [50, 5, 8],
    [50, 1.5, 8],
    [200, 60, 25],
    [200, 5, 25],
  ])('of %d L with %d kg of water and %d kg of steel takes the heat that its contents gain', (litres, water, steel) => {
    for (const bar of [0.5, 1, 2]) {
      const place = [water, litres / 1000, steel * STEEL, AIR, bar * 1e5] as const;
      const heat = closedPotHeat(...place);
      expectSame(blockedOutletHeat(...place), heat, 1e-8);
      for (const power of [1500, 3000, 6000]) expectSame(blockedOutletTime(power, ...place), heat / power, 1e-8);
    }
  });

  it('is faster the less water is left', () => {
    const seconds = [20, 5, 1.5].map((water) => blockedOutletTime(3000, water, 0.05, 8 * STEEL, AIR, 50e3));
    expect(seconds).toEqual([...seconds].sort((a, b) => b - a));
  });

  it('gives back the pressure from the time', () => {
    const time = blockedOutletTime(3000, 5, 0.05, 8 * STEEL, AIR, 50e3);
    expect(blockedOutletGauge(time, 3000, 5, 0.05, 8 * STEEL, AIR)).toBeCloseTo(50e3, 1);
    expect(blockedOutletGauge(0, 3000, 5, 0.05, 8 * STEEL, AIR)).toBeCloseTo(0, 3);
  });

  it('is held at 2 MPa, where every pot has burst', () => {
    expect(blockedOutletGauge(1e6, 3000, 5, 0.05, 8 * STEEL, AIR)).toBeCloseTo(2e6 - AIR, 0);
  });

  it('refuses more pressure than it knows and more water than the pot holds', () => {
    expect(() => blockedOutletHeat(5, 0.05, 4000, AIR, 3e6)).toThrow(RangeError);
    expect(() => blockedOutletHeat(60, 0.05, 4000, AIR, 5e4)).toThrow(
      /60 kg of water is outside what a pot of 0.05 m³ holds/,
    );
  });
});

describe('an oil constituent boiling with water at one atmosphere', () => {
  it.each(constituents.map(({ id }) => [id]))('%s: temperature, pressure and share of the oil', (id) => {
    const constituent = constituentById(id);
    const { A, B, C } = constituent.vapourPressure;
    const { T, oil, waterPerOil } = boilTogether({ A, B, C, molarMass: constituent.molarMass.value }, AIR);
    expect(Math.abs(coBoilingTemperature(AIR, [1], [constituent]) - T)).toBeLessThan(1e-4);
    expectSame(vapourPressure(constituent, T), oil);
    expectSame(coBoilingOilShare(AIR, [1], [constituent]), 1 / (1 + waterPerOil), 1e-5);
    expectSame(1 / saturationOilPerSteam(T, [1], [constituent]), waterPerOil, 1e-5);
  });
});

/** Oil, °C, Δρ, water viscosity in mPa s and density. */
const OILS = [
  ['lavender', 20, 114.8, 1.0016, 998.21],
  ['lavender', 40, 124.4, 0.6527, 992.22],
  ['orange', 50, 169.3, 0.5465, 988.05],
  ['anise', 40, 25.8, 0.6527, 992.22],
  ['clove', 30, -43.9, 0.7972, 995.65],
] as const;

describe('drops', () => {
  it.each(OILS)('of %s at %d °C rise or fall as their drag lets them', (_oil, _t, drho, mPas, rho) => {
    const [mu, g] = [mPas * 1e-3, 9.81];
    for (const d of [60e-6, 150e-6, 300e-6]) {
      expectSame(look('stokes-velocity', { d, drho, mu, g }), (9.81 * d * d * drho) / (18 * mu));
      expectSame(look('settling-velocity-with-drag', { d, drho, rho, mu, g }), riseWithDrag(d, drho, rho, mu, g));
    }
  });

  it.each([
    [20, 40],
    [60, 80],
    [100, 40],
    [200, 150],
  ])('of lavender at 30 °C in %d mL/min through %d mm are kept from the size that rises as fast', (flow, bore) => {
    const A = 0.25 * Math.PI * (bore * 1e-3) ** 2;
    const Q = (flow * 1e-6) / 60;
    const v = look('overflow-rate', { Q, A });
    expectSame(v, Q / A);
    const d = look('cut-diameter', { v, drho: 120.1, mu: 0.797e-3, g: 9.81 });
    expectSame(look('stokes-velocity', { d, drho: 120.1, mu: 0.797e-3, g: 9.81 }), v);
    expectSame(look('residence-time', { V: 0.2 * A, Q }), 0.2 / v);
    expectSame(look('hazen-capture', { v: 0.3 * v, v_c: v }), 0.3);
    expect(look('hazen-capture', { v: 2 * v, v_c: v })).toBe(1);
  });

  it.each([
    [49.2e-6, 120e-6, 2.2],
    [120e-6, 120e-6, 2.2],
    [300e-6, 120e-6, 2.2],
    [60e-6, 60e-6, 3],
    [20e-6, 200e-6, 1.3],
  ])('kept with a cut of %d m, a median of %d m and a spread of %d are those of thin slices', (cut, median, spread) => {
    expect(look('captured-share', { cut, median, spread })).toBeCloseTo(keptBySlices(cut, median, spread), 5);
  });

  it('part in a channel as API 421 reckons: 224.79 m³/h, 150 µm, Δρ 120', () => {
    const v_t = look('stokes-velocity', { d: 150e-6, drho: 120, mu: 1e-3, g: 9.81 });
    const v_H = look('api-horizontal-limit', { v_t });
    expectSame(v_H, 0.01524);
    const ratio = v_H / v_t;
    expect(ratio).toBeGreaterThan(10);
    const F = 1.52 + ((1.64 - 1.52) * (ratio - 10)) / 5;
    expectSame(look('api-length-factor', { ratio }), F);
    expectSame(look('api-channel-length', { v_H, v_t, depth: 1.13 }), F * ratio * 1.13);
  });

  it('leave oil over water by the balance of two legs', () => {
    // Both legs press alike on the bottom: ρ_h z_2 = ρ_h z_3 + ρ_l (z_1 − z_3).
    const legs = { z_1: 0.22, z_3: 0.12, rho_light: 875.6, rho_heavy: 995.7 };
    expectSame(look('heavy-leg-height', legs), 0.12 + (875.6 / 995.7) * 0.1);
    expectSame(look('leg-offset', { layer: 0.1, drho: 115, rho_heavy: 995.7 }), (0.1 * 115) / 995.7);
  });
});
