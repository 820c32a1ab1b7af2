/**
 * Evaporation from open water against independent evaluations and a textbook bath. Every check of it handed to the
 * project is here.
 */
import { describe, expect, it } from 'vitest';
import { celsius, checkPublished, look } from '../sim/transfer/published-rows.ts';

const tub = (t_water: number, V: number) => (): readonly number[] => {
  const top = { T_water: celsius(t_water), T_air: celsius(20), RH: 0.5, V };
  return [look('open-water-evaporation', top), look('open-water-evaporation-rate', top) * 3600];
};
const carrier = 'Carrier 1918, ASHRAE Handbook, with IF97 properties, independent evaluation';

/** A bath of 3.5 m² and 9 m round at 50 °C in air at 25 °C, 52 % and 92 kPa; the book divides ν by the pressure. */
const bathTop = { L: 3.5 / 9, nu: 1.849e-5 / (92 / 101.325) };
const overBath = { p_v: 12.35e3, p: 92e3, T: celsius(50) };
const inRoom = { p_v: 0.52 * 3.17e3, p: 92e3, T: celsius(25) };
const bathGrashof = (): number =>
  look('moist-air-grashof', {
    rho_s: look('moist-air-density', overBath),
    rho_inf: look('moist-air-density', inRoom),
    ...bathTop,
    g: 9.81,
  });
const bath = (): readonly number[] => [
  3.5 * look('radiant-flux', { emissivity: 0.95, T_s: celsius(50), T_a: celsius(20) }),
  3.5 * 25 * ((look('sherwood-hot-side-up', { Gr: bathGrashof(), Sc: 0.7262 }) * 0.02644) / bathTop.L),
];

describe('evaporation from open water', () => {
  checkPublished([
    ['losses 023', 'heat and water from a tub at 40 °C', tub(40, 0), [553.11899, 0.82760899], 0.01, carrier],
    [
      'losses 024',
      'heat and water from a tub at 60 °C in a draught',
      tub(60, 0.1),
      [1817.9112, 2.7758006],
      0.01,
      carrier,
    ],
    ['losses 025', 'heat and water from a tub at 80 °C', tub(80, 0), [4115.815, 6.4196328], 0.01, carrier],
    [
      'losses 028',
      'radiation and convection from a hot bath',
      bath,
      [662.57791, 448.52655],
      0.02,
      'Cengel 3e Example 14-13',
    ],
  ]);

  it('agrees within one per cent with the heat and mass analogy over a bath at 50 °C (Cengel 3e Example 14-13)', () => {
    const D = look('vapour-diffusivity-in-air', { T: celsius(37.5), p: 92e3 });
    const Sh = look('sherwood-hot-side-up', { Gr: bathGrashof(), Sc: bathTop.nu / D });
    const vapour = (p: number, T: number): number => p / (461.5 * T);
    const analogy = ((Sh * D) / bathTop.L) * (vapour(12.35e3, celsius(50)) - vapour(0.52 * 3.17e3, celsius(25)));
    const fitted = look('evaporation-rate-carrier', { p_w: 12.35e3, p_a: 0.52 * 3.17e3, V: 0, h_fg: 2382e3 });
    expect(Math.abs(fitted / analogy - 1)).toBeLessThan(0.012);
  });
});
