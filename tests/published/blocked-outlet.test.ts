/**
 * Pressure in a pot whose outlet is closed, and the force on its lid, against independent evaluations with IAPWS-IF97.
 * Rows print heat to 1 kJ and time to 1 s; the metal is steel at 0.48 kJ/kgK; the water
 * named is what is liquid when the outlet closes.
 */
import { describe, expect, it } from 'vitest';
import { blockedOutletGauge, blockedOutletHeat, blockedOutletTime } from '../../sim/still/blocked-outlet.ts';
import { lidForce } from '../../sim/transfer/venting.ts';

const STEEL = 480;
const AIR = 101_325;

/** Litres, kg of water, kg of steel, bar over the air; kJ, seconds at 1.5, 3 and 6 kW. */
const RISE: readonly (readonly [
  litres: number,
  water: number,
  steel: number,
  bar: number,
  kJ: number,
  seconds: readonly number[],
])[] = [
  [20, 8, 4, 0.5, 422, [281, 141, 70]],
  [20, 8, 4, 1, 744, [496, 248, 124]],
  [20, 8, 4, 2, 1232, [821, 411, 205]],
  [20, 1, 4, 0.5, 82, [55, 27, 14]],
  [20, 1, 4, 1, 147, [98, 49, 24]],
  [20, 1, 4, 2, 248, [165, 83, 41]],
  [50, 20, 8, 0.5, 1044, [696, 348, 174]],
  [50, 20, 8, 1, 1839, [1226, 613, 307]],
  [50, 20, 8, 2, 3047, [2031, 1016, 508]],
  [50, 5, 8, 0.5, 316, [211, 105, 53]],
  [50, 5, 8, 1, 560, [373, 187, 93]],
  [50, 5, 8, 2, 939, [626, 313, 156]],
  [50, 1.5, 8, 0.5, 146, [97, 49, 24]],
  [50, 1.5, 8, 1, 262, [174, 87, 44]],
  [50, 1.5, 8, 2, 447, [298, 149, 74]],
  [200, 60, 25, 0.5, 3166, [2111, 1055, 528]],
  [200, 60, 25, 1, 5583, [3722, 1861, 931]],
  [200, 60, 25, 2, 9264, [6176, 3088, 1544]],
  [200, 5, 25, 0.5, 496, [331, 165, 83]],
  [200, 5, 25, 1, 893, [595, 298, 149]],
  [200, 5, 25, 2, 1533, [1022, 511, 255]],
];

describe('a pot whose outlet is closed', () => {
  it.each(RISE)(
    'takes the heat and time of an independent evaluation: %d L, %d kg water, %d kg steel, %d bar',
    (litres, water, steel, bar, kJ, seconds) => {
      const place = [water, litres / 1000, steel * STEEL, AIR, bar * 1e5] as const;
      expect(Math.abs(blockedOutletHeat(...place) / 1000 - kJ)).toBeLessThanOrEqual(0.51);
      [1500, 3000, 6000].forEach((power, index) => {
        expect(Math.abs(blockedOutletTime(power, ...place) - (seconds[index] as number))).toBeLessThanOrEqual(0.51);
      });
    },
  );

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

/** Lid diameter in mm, bar over the air, force in kN; computed from the area, printed to 10 N. */
const LID: readonly (readonly [mm: number, bar: number, kN: number])[] = [
  [280, 0.05, 0.31],
  [280, 0.1, 0.62],
  [280, 0.5, 3.08],
  [280, 1, 6.16],
  [360, 0.05, 0.51],
  [360, 0.1, 1.02],
  [360, 0.5, 5.09],
  [360, 1, 10.18],
  [450, 0.05, 0.8],
  [450, 0.1, 1.59],
  [450, 0.5, 7.95],
  [450, 1, 15.9],
  [570, 0.05, 1.28],
  [570, 0.1, 2.55],
  [570, 0.5, 12.76],
  [570, 1, 25.52],
];

describe('the force on the lid of such a pot', () => {
  it.each(LID)('agrees with area times pressure as tabulated: %d mm at %d bar', (mm, bar, kN) => {
    expect(Math.abs(lidForce(mm / 1000, bar * 1e5) / 1000 - kN)).toBeLessThanOrEqual(0.0051);
  });
});
