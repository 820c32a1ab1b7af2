import { describe, expect, it } from 'vitest';
import {
  coilBendRadius,
  coilFall,
  coilFit,
  coilHeight,
  coilTurns,
  longestCoil,
  tubeMass,
  turnLength,
} from '../../../sim/geometry/coil.ts';
import { tubes } from '../../../sim/library/index.ts';

describe('a coil', () => {
  it('of no pitch is a ring', () => {
    expect(turnLength(0.25, 0)).toBeCloseTo(Math.PI * 0.25, 12);
    expect(coilBendRadius(0.25, 0)).toBe(0.125);
  });

  it('has the turns that its length makes, and rises by the pitch with each', () => {
    const length = 6 * turnLength(0.25, 0.05);
    expect(coilTurns(length, 0.25, 0.05)).toBeCloseTo(6, 12);
    expect(coilHeight(length, 0.25, 0.05, 0.012)).toBeCloseTo(6 * 0.05 + 0.012, 12);
  });

  it('of steep turns has fewer than a flat one: 5 m on 100 mm at a pitch of 60 mm make 15.63, not 15.92', () => {
    expect(coilTurns(5, 0.1, 0.06)).toBeCloseTo(5 / Math.sqrt(Math.PI ** 2 * 0.01 + 0.0036), 12);
    expect(coilTurns(5, 0.1, 0.06)).toBeCloseTo(15.633, 3);
    expect(coilTurns(5, 0.1, 0)).toBeCloseTo(15.915, 3);
  });

  it('falls by its pitch over the length of a turn', () => {
    expect(coilFall(0.1, 0.06) * turnLength(0.1, 0.06)).toBeCloseTo(0.06, 15);
  });

  it('is measured along the helix, as adding up short straight pieces shows', () => {
    const pieces = 20_000;
    let sum = 0;
    for (let k = 0; k < pieces; k++) {
      const angle = (2 * Math.PI) / pieces;
      sum += Math.hypot(0.25 * Math.sin(angle / 2), 0.05 / pieces);
    }
    expect(turnLength(0.25, 0.05)).toBeCloseTo(sum, 8);
  });
});

describe('a coil in its tub', () => {
  const coil = { coilDiameter_m: 0.25, coilPitch_m: 0.05, coilTopDepth_m: 0.04, outsideDiameter_m: 0.012 };
  const tub = { tubDiameter_m: 0.262, tubHeight_m: 0.352 };
  const sixTurns = { ...coil, length_m: 6 * turnLength(0.25, 0.05) };

  it('needs its turns, one tube and the depth of the first below the overflow, and may touch base and wall', () => {
    const fit = coilFit(sixTurns, tub);
    expect(fit.turns).toBeCloseTo(6, 12);
    expect([fit.depth_m, fit.width_m]).toEqual([expect.closeTo(0.352, 12), expect.closeTo(0.262, 12)]);
    expect([fit.isTooDeep, fit.isTooWide]).toEqual([false, false]);
  });

  it('does not go in where a tenth of a millimetre is missing', () => {
    expect(coilFit(sixTurns, { ...tub, tubHeight_m: 0.3519 })).toMatchObject({ isTooDeep: true, isTooWide: false });
    expect(coilFit(sixTurns, { ...tub, tubDiameter_m: 0.2619 })).toMatchObject({ isTooDeep: false, isTooWide: true });
  });

  it('is at its longest when it reaches the base; a tub lower than its first turn takes none', () => {
    expect(longestCoil(coil, tub)).toBeCloseTo(sixTurns.length_m, 9);
    expect(coilFit({ ...coil, length_m: longestCoil(coil, tub) }, tub).isTooDeep).toBe(false);
    expect(longestCoil(coil, { tubHeight_m: 0.05 })).toBe(0);
  });
});

describe('the mass of a tube', () => {
  it('agrees with the library’s own figures for smooth copper', () => {
    for (const tube of tubes.filter(({ material }) => material === 'copper'))
      expect(
        tubeMass(tube.insideDiameter_m, tube.outsideDiameter_m, 1, 8940) / tube.massPerLength_kg_m,
        tube.id,
      ).toBeCloseTo(1, 9);
  });
});
