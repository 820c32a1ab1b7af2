import { describe, expect, test } from 'vitest';
import { constituents, curveOf, vapourPressure } from '../../../sim/fluids/constituents.ts';
import { antoinePressure, curveLogSlope, curvePressure } from '../../../sim/fluids/vapour-curve.ts';

const R = 8.314462618;

describe('the vapour pressure from a cold room to the boil', () => {
  test.each(constituents)('of $name joins the room to the published equation', (constituent) => {
    const curve = curveOf(constituent);
    const { pressure, range, heat } = constituent.roomVapour;
    const { A, B, C } = constituent.vapourPressure;
    expect(pressure).toBeGreaterThanOrEqual(range[0]);
    expect(pressure).toBeLessThanOrEqual(range[1]);
    expect(vapourPressure(constituent, 298.15) / pressure).toBeCloseTo(1, 12);
    expect((R * 298.15 ** 2 * curveLogSlope(curve, 298.15)) / heat).toBeCloseTo(1, 9);
    // Value and slope go on through the join; from there the equation stands as published.
    const below = curve.join * (1 - 1e-9);
    expect(curvePressure(curve, below) / antoinePressure(A, B, C, curve.join)).toBeCloseTo(1, 6);
    expect(curveLogSlope(curve, below) / curveLogSlope(curve, curve.join)).toBeCloseTo(1, 5);
    for (const T of [353.15, 363.15, 373.15, 393.15])
      expect(vapourPressure(constituent, T)).toBe(antoinePressure(A, B, C, T));
  });

  test.each(constituents)(
    'of $name rises with temperature, with a heat of vaporisation that a liquid may have',
    (entry) => {
      const curve = curveOf(entry);
      for (let T = 283.15; T < 393.15; T += 0.5) {
        const rise = Math.log(curvePressure(curve, T + 0.05) / curvePressure(curve, T - 0.05)) / 0.1;
        expect(Math.abs(rise / curveLogSlope(curve, T) - 1)).toBeLessThan(2e-3);
        const heat = R * T * T * rise;
        expect(heat).toBeGreaterThan(35_000);
        expect(heat).toBeLessThan(110_000);
      }
    },
  );
});
