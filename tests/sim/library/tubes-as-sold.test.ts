/** Tubes as they are sold: common practice, no source. Masses and bends as makers give them in their sheets. */
import { describe, expect, it } from 'vitest';
import { findTube, tubes } from '../../../sim/library/index.ts';
import type { Tube } from '../../../sim/library/types.ts';

const INCH = 0.0254;
const POUND_PER_FOOT = 0.45359237 / 0.3048;
const family = (standard: string): Tube[] => tubes.filter((tube) => tube.standard === standard);

describe('inch copper tube', () => {
  it('sells types K and L as coils and type M only straight', () => {
    expect(family('ASTM B88 type K').every((tube) => tube.coilable)).toBe(true);
    expect(family('ASTM B88 type L').every((tube) => tube.coilable)).toBe(true);
    expect(family('ASTM B88 type M').some((tube) => tube.coilable)).toBe(false);
  });

  it('comes in coils of 50 ft', () => {
    for (const tube of family('ASTM B280 annealed')) expect(tube.coilLengths_m, tube.id).toEqual([50 * 0.3048]);
  });

  it('shows that half an inch means 12.7 mm here and 15.9 mm in B88', () => {
    expect(findTube('astm-b280-1-2').outsideDiameter_m).toBeCloseTo(0.0127, 6);
    expect(findTube('astm-b88-l-1-2').outsideDiameter_m).toBeCloseTo(0.015875, 6);
  });
});

describe('light 15 m coils', () => {
  const coils: [string, number][] = [
    ['1-4-0.56', 1.36],
    ['1-4-0.61', 1.47],
    ['3-8-0.56', 2.1],
    ['3-8-0.61', 2.28],
    ['1-2-0.61', 3.1],
    ['1-2-0.66', 3.34],
    ['5-8-0.61', 3.91],
    ['5-8-0.66', 4.22],
    ['3-4-0.66', 5.1],
    ['3-4-0.71', 5.48],
  ];
  it.each(coils)('coil %s weighs %f kg within 1 %%', (id, mass) => {
    expect(Math.abs((15 * findTube(`light-coil-${id}`).massPerLength_kg_m) / mass - 1)).toBeLessThan(0.01);
  });
});

describe('metric copper tube', () => {
  const rows: [string, number, number, number][] = [
    ['10x1', 10, 1, 0.252],
    ['12x1', 12, 1, 0.308],
    ['15x1', 15, 1, 0.391],
    ['18x1', 18, 1, 0.475],
    ['22x1', 22, 1, 0.587],
    ['22x1.5', 22, 1.5, 0.86],
    ['28x1.5', 28, 1.5, 1.111],
  ];
  it.each(rows)('%s has its printed size and, within 0.6 %%, mass', (id, outside, wall, mass) => {
    const tube = findTube(`en-1057-${id}`);
    expect(tube.outsideDiameter_m).toBeCloseTo(outside / 1000, 12);
    expect(tube.insideDiameter_m).toBeCloseTo((outside - 2 * wall) / 1000, 12);
    expect(Math.abs(tube.massPerLength_kg_m / mass - 1)).toBeLessThan(0.006);
  });

  it('bends with a tool to 40, 45, 55 and 70 mm at 10, 12, 15 and 18 mm', () => {
    for (const [id, radius] of [
      ['10x1', 0.04],
      ['12x1', 0.045],
      ['15x1', 0.055],
      ['18x1', 0.07],
    ] as const)
      expect(findTube(`en-1057-${id}`).minimumBendRadius_m.withTool, id).toBeCloseTo(radius, 12);
  });
});

describe('stainless tube', () => {
  it('weighs 10.78 (D − t) t lb/ft with D and t in inches', () => {
    for (const tube of family('ASTM A269')) {
      const outside = tube.outsideDiameter_m / INCH;
      const wall = tube.wall_m / INCH;
      expect(
        Math.abs(tube.massPerLength_kg_m / POUND_PER_FOOT / (10.78 * (outside - wall) * wall) - 1),
        tube.id,
      ).toBeLessThan(0.005);
    }
  });
});
