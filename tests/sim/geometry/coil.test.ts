import { describe, expect, it } from 'vitest';
import { coilBendRadius, coilHeight, coilTurns, tubeMass, turnLength } from '../../../sim/geometry/coil.ts';
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

describe('the mass of a tube', () => {
  it('agrees with the library’s own figures for smooth copper', () => {
    for (const tube of tubes.filter(({ material }) => material === 'copper'))
      expect(
        tubeMass(tube.insideDiameter_m, tube.outsideDiameter_m, 1, 8940) / tube.massPerLength_kg_m,
        tube.id,
      ).toBeCloseTo(1, 9);
  });
});
