/** Dimensions and masses of tubes against the tables of their standards. */
import { describe, expect, it } from 'vitest';
import { findTube, tubes } from '../../sim/library/index.ts';
import type { Tube } from '../../sim/library/types.ts';

const INCH = 0.0254;
const POUND_PER_FOOT = 0.45359237 / 0.3048;
const family = (standard: string): Tube[] => tubes.filter((tube) => tube.standard === standard);
const slug = (size: string): string => size.replace('/', '-');

describe('ASTM B88 water tube: Copper Development Association, Copper Tube Handbook (2006), tables 2a to 2c', () => {
  const sizes = ['1/4', '3/8', '1/2', '5/8', '3/4', '1', '1-1/4', '1-1/2'];
  // Weights in lb/ft as printed.
  const weights = {
    K: [0.145, 0.269, 0.344, 0.418, 0.641, 0.839, 1.04, 1.36],
    L: [0.126, 0.198, 0.285, 0.362, 0.455, 0.655, 0.884, 1.14],
    M: [null, 0.145, 0.204, null, 0.328, 0.465, 0.682, 0.94],
  } as const;

  it('measures nominal size plus an eighth of an inch outside, whatever the type', () => {
    const nominal: Record<string, number> = {
      '1/4': 0.25,
      '3/8': 0.375,
      '1/2': 0.5,
      '5/8': 0.625,
      '3/4': 0.75,
      '1': 1,
      '1-1/4': 1.25,
      '1-1/2': 1.5,
    };
    const rows = [...family('ASTM B88 type K'), ...family('ASTM B88 type L'), ...family('ASTM B88 type M')];
    expect(rows).toHaveLength(22);
    for (const tube of rows)
      expect(tube.outsideDiameter_m / INCH, tube.id).toBeCloseTo((nominal[tube.designation] as number) + 0.125, 9);
  });

  for (const type of ['K', 'L', 'M'] as const)
    it(`weighs what the table prints for type ${type}, to a unit of the last digit`, () => {
      const printed = sizes.flatMap((size, index): [string, number][] => {
        const weight = weights[type][index] ?? null;
        return weight === null ? [] : [[size, weight]];
      });
      expect(family(`ASTM B88 type ${type}`).map((tube) => tube.designation)).toEqual(printed.map(([size]) => size));
      for (const [size, weight] of printed) {
        const { massPerLength_kg_m } = findTube(`astm-b88-${type.toLowerCase()}-${slug(size)}`);
        expect(Math.abs(massPerLength_kg_m / POUND_PER_FOOT - weight), size).toBeLessThanOrEqual(
          weight > 1 ? 0.01 : 0.001,
        );
      }
    });

  it('has the walls and bores of table 2b, type L, in inches', () => {
    const rows: [string, number, number][] = [
      ['1/4', 0.03, 0.315],
      ['3/8', 0.035, 0.43],
      ['1/2', 0.04, 0.545],
      ['5/8', 0.042, 0.666],
      ['3/4', 0.045, 0.785],
      ['1', 0.05, 1.025],
      ['1-1/4', 0.055, 1.265],
      ['1-1/2', 0.06, 1.505],
    ];
    for (const [size, wall, bore] of rows) {
      const tube = findTube(`astm-b88-l-${slug(size)}`);
      expect(tube.wall_m / INCH, size).toBeCloseTo(wall, 9);
      expect(tube.insideDiameter_m / INCH, size).toBeCloseTo(bore, 9);
    }
  });

  it('bends with a tool to the least radii of the same handbook’s bending guide for annealed tube', () => {
    const rows: [string, number][] = [
      ['1/4', 0.75],
      ['3/8', 1.5],
      ['1/2', 2.25],
      ['3/4', 3],
      ['1', 4],
      ['1-1/4', 9],
    ];
    for (const [size, radius] of rows)
      expect((findTube(`astm-b88-l-${slug(size)}`).minimumBendRadius_m.withTool as number) / INCH, size).toBeCloseTo(
        radius,
        9,
      );
  });
});

describe('ASTM B280 air-conditioning tube dimension table', () => {
  // True outside diameter and wall in inches, mass in kg/m as printed.
  const annealed: [string, number, number, number][] = [
    ['1/4', 0.25, 0.03, 0.119],
    ['5/16', 0.312, 0.032, 0.162],
    ['3/8', 0.375, 0.032, 0.198],
    ['1/2', 0.5, 0.032, 0.27],
    ['5/8', 0.625, 0.035, 0.374],
    ['3/4', 0.75, 0.035, 0.453],
    ['7/8', 0.875, 0.045, 0.673],
  ];
  it.each(annealed)('%s in has its printed outside, wall and, within 1 %%, mass', (size, outside, wall, mass) => {
    const tube = findTube(`astm-b280-${slug(size)}`);
    expect(tube.outsideDiameter_m / INCH).toBeCloseTo(outside, 9);
    expect(tube.wall_m / INCH).toBeCloseTo(wall, 9);
    expect(Math.abs(tube.massPerLength_kg_m / mass - 1)).toBeLessThan(0.01);
  });
});

describe('EN 1057:2006, table 3, recommended sizes', () => {
  it('lists every size of the matrix from 6 to 28 mm', () => {
    expect(family('EN 1057').map((tube) => tube.designation)).toEqual([
      '6 x 0.6',
      '6 x 0.8',
      '6 x 1',
      '8 x 0.6',
      '8 x 0.8',
      '8 x 1',
      '10 x 0.6',
      '10 x 0.7',
      '10 x 0.8',
      '10 x 1',
      '12 x 0.6',
      '12 x 0.8',
      '12 x 1',
      '15 x 0.7',
      '15 x 0.8',
      '15 x 1',
      '18 x 0.8',
      '18 x 1',
      '22 x 0.9',
      '22 x 1',
      '22 x 1.2',
      '22 x 1.5',
      '28 x 0.9',
      '28 x 1',
      '28 x 1.2',
      '28 x 1.5',
    ]);
  });
});

describe('ASTM B88M dimension table', () => {
  // kg/m as printed, two decimals, some cut off rather than rounded.
  const masses = {
    A: [0.12, 0.18, 0.23, 0.36, 0.47, 0.57, 0.92, 1.19],
    B: [0.1, 0.16, 0.21, 0.28, 0.39, 0.48, 0.65, 0.9],
    C: [0.09, 0.13, 0.16, 0.19, 0.28, 0.34, 0.48, 0.69],
  } as const;
  it.each(['A', 'B', 'C'] as const)('type %s weighs what the table prints, to a unit of the last digit', (type) => {
    const rows = family(`ASTM B88M type ${type}`);
    expect(rows.map((tube) => Math.round(tube.outsideDiameter_m * 1000))).toEqual([6, 8, 10, 12, 15, 18, 22, 28]);
    rows.forEach((tube, index) =>
      expect(Math.abs(tube.massPerLength_kg_m - (masses[type][index] as number)), tube.id).toBeLessThanOrEqual(0.01),
    );
  });
});

describe('stainless tube', () => {
  it('has the walls of EN 10312 series 1 and 2 dimension tables', () => {
    expect(
      family('EN 10312 series 1').map((tube) =>
        [tube.outsideDiameter_m, tube.wall_m].map((length) => Number((length * 1000).toFixed(3))),
      ),
    ).toEqual([
      [6, 0.6],
      [8, 0.6],
      [10, 0.6],
      [12, 0.6],
      [15, 0.6],
      [18, 0.7],
      [22, 0.7],
      [28, 0.8],
      [35, 1],
    ]);
    expect(
      family('EN 10312 series 2').map((tube) =>
        [tube.outsideDiameter_m, tube.wall_m].map((length) => Number((length * 1000).toFixed(3))),
      ),
    ).toEqual([
      [12, 1],
      [15, 1],
      [18, 1],
      [22, 1.2],
      [28, 1.2],
      [35, 1.5],
    ]);
  });
});
