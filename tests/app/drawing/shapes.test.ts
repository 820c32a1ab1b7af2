import { describe, expect, test } from 'vitest';
import {
  coilShape,
  cutRuns,
  pointAlong,
  straightShape,
  tubesInSection,
} from '../../../src/drawing/geometry/condenser-shape.ts';
import { layoutStill } from '../../../src/drawing/geometry/still-layout.ts';
import { bottom, boxesAlong, cutPath, pathLength, right, roundCorners } from '../../../src/drawing/geometry/shapes.ts';
import { flowLine } from '../../../src/drawing/marks/flow-lines.ts';
import { breakLines } from '../../../src/drawing/line-breaks.ts';
import { scenarioOf } from './scenario-of.ts';

describe('lines', () => {
  const bent = [
    { x: 0, y: 0 },
    { x: 30, y: 0 },
    { x: 30, y: 40 },
  ];

  test('a cut from a third to all of a 70 px line is two thirds as long and ends where the line ends', () => {
    const cut = cutPath(bent, 1 / 3, 1);
    expect(pathLength(cut)).toBeCloseTo(70 * (2 / 3), 9);
    expect(cut.at(-1)).toEqual({ x: 30, y: 40 });
  });

  test('an empty cut has no points', () => {
    expect(cutPath(bent, 0.6, 0.6)).toEqual([]);
  });

  test('rounding keeps the ends and shortens the way round the corner', () => {
    const round = roundCorners(bent, 10);
    expect(round[0]).toEqual(bent[0]);
    expect(round.at(-1)).toEqual(bent[2]);
    expect(pathLength(round)).toBeLessThan(70);
    expect(pathLength(round)).toBeGreaterThan(50);
  });

  test('a flow line measured once gives the point at every pixel', () => {
    const line = flowLine(bent);
    expect(line.length).toBe(70);
    expect([line.xs[30], line.ys[30]]).toEqual([30, 0]);
    expect([line.xs[50], line.ys[50]]).toEqual([30, 20]);
  });

  test('boxes along a level tube cover its width and nothing beyond its ends', () => {
    expect(
      boxesAlong(
        [
          { x: 10, y: 5 },
          { x: 30, y: 5 },
        ],
        8,
      ),
    ).toEqual([{ x: 10, y: 1, width: 20, height: 8 }]);
  });

  test('words break into lines no longer than asked', () => {
    expect(breakLines('Steam scalds: open the lid only when the pot has cooled.', 20)).toEqual([
      'Steam scalds: open',
      'the lid only when',
      'the pot has cooled.',
    ]);
  });
});

const frame = { pxPerMetre: 500, floorY: 400 };
const tub = { diameter_m: 0.42, height_m: 0.5, freeboard_m: 0.03 };
const place = { centreX: 300, overflowY: 100, tubBaseY: 350, inletTop: { x: 240, y: 80 }, tip: { x: 480, y: 330 } };

describe('the coil', () => {
  const coil = {
    kind: 'coil' as const,
    tube_m: 0.012,
    coil_m: 0.25,
    pitch_m: 0.045,
    turns: 6.4,
    height_m: 0.288,
    topDepth_m: 0.05,
    length_m: 6.4 * Math.PI * 0.25,
  };
  const shape = coilShape(coil, tub, frame, place);

  test('shows a front half for each of 6.4 turns, begun or whole', () => {
    expect(shape.runs).toHaveLength(7);
    expect(shape.behind.length).toBeGreaterThanOrEqual(6);
  });

  test('is as wide and as high as the scale makes it, and begins at its depth', () => {
    expect(shape.box.width - shape.tubeWidth).toBeCloseTo(0.25 * 500, 6);
    const tops = shape.runs.map((run) => run.points[0]?.y ?? NaN);
    expect(tops[0]).toBeCloseTo(100 + 0.05 * 500, 6);
    expect((tops[1] ?? 0) - (tops[0] ?? 0)).toBeCloseTo(0.045 * 500, 6);
  });

  test('covers its cooled length from 0 to 1 in front halves of half a turn each', () => {
    expect(shape.runs[0]?.from).toBe(0);
    expect((shape.runs[0]?.to ?? 0) - (shape.runs[0]?.from ?? 0)).toBeCloseTo(0.5 / 6.4, 6);
    expect(shape.runs.at(-1)?.to).toBeLessThanOrEqual(1);
  });

  test('liquid from the middle on is drawn on the lower turns only', () => {
    const half = pointAlong(shape.runs, 0.5);
    const ys = [...cutRuns(shape.runs, 0.5, 1).matchAll(/ ([\d.]+)/gu)].map((match) => Number(match[1]));
    expect(Math.min(...ys)).toBeGreaterThan((half?.y ?? 0) - shape.tubeWidth);
    expect(cutRuns(shape.runs, 1, 1)).toBe('');
  });

  test('a coil taller than its tub is squeezed into it', () => {
    const tall = coilShape({ ...coil, turns: 20, height_m: 0.9 }, tub, frame, place);
    expect(bottom(tall.box)).toBeLessThanOrEqual(place.tubBaseY + tall.tubeWidth);
    expect(bottom(tall.box)).toBeGreaterThan(bottom(shape.box));
  });
});

describe('a straight condenser', () => {
  const tube = {
    kind: 'straight' as const,
    tube_m: 0.012,
    tubes: 1,
    jacket_m: 0.03,
    length_m: 1,
    upright: false,
    slope_rad: 0.1,
    counterflow: true,
  };

  test('is drawn at its length and slope', () => {
    const shape = straightShape(tube, 1, frame, {
      inlet: { x: 100, y: 100 },
      tip: { x: 620, y: 200 },
      hosesAbove: false,
    });
    const [start, end] = shape.runs[0]?.points ?? [];
    expect(Math.hypot((end?.x ?? 0) - (start?.x ?? 0), (end?.y ?? 0) - (start?.y ?? 0))).toBeCloseTo(500, 6);
    expect(((end?.y ?? 0) - (start?.y ?? 0)) / 500).toBeCloseTo(Math.sin(0.1), 6);
    expect(shape.breakAt).toBeNull();
  });

  test('bears a break where it is drawn shorter than it is', () => {
    const shape = straightShape({ ...tube, length_m: 9 }, 3, frame, {
      inlet: { x: 100, y: 100 },
      tip: { x: 1700, y: 300 },
      hosesAbove: false,
    });
    expect(shape.breakAt).not.toBeNull();
  });

  test('lets the water out on its upper side', () => {
    const shape = straightShape(tube, 1, frame, {
      inlet: { x: 100, y: 100 },
      tip: { x: 620, y: 200 },
      hosesAbove: false,
    });
    const [vapourEnd, outletEnd] = shape.nozzles;
    expect(vapourEnd?.away.y).toBeLessThan(vapourEnd?.at.y ?? 0);
    expect(outletEnd?.away.y).toBeGreaterThan(outletEnd?.at.y ?? 0);
  });

  test('a cut through 1, 7 and 19 tubes shows 1, 3 and 5', () => {
    expect([1, 7, 19].map(tubesInSection)).toEqual([1, 3, 5]);
  });
});

describe('the neck between pot and condenser', () => {
  const neckOf = (neck: { length_m: number; risingLength_m: number }, width: number) =>
    layoutStill(scenarioOf({ neck }), { width, textScale: 1 }).shapes.neck;

  test('has no break at an ordinary length', () => {
    expect(neckOf({ length_m: 0.8, risingLength_m: 0.25 }, 1440).breaks).toHaveLength(0);
  });

  test('has one where a neck of 5 m is shortened or one of 120 mm is stretched', () => {
    expect(neckOf({ length_m: 5, risingLength_m: 0.5 }, 1440).breaks).toHaveLength(1);
    expect(neckOf({ length_m: 0.12, risingLength_m: 0.05 }, 1440).breaks).toHaveLength(1);
  });

  test.each([288, 358, 800, 1440])('leads from the lid to the condenser in one piece on a sheet of %i px', (width) => {
    const scenario = scenarioOf({ neck: { length_m: 0.8, risingLength_m: 0.25 } });
    const { pot, neck, condenser } = layoutStill(scenario, { width, height: 330, textScale: 1 }).shapes;
    expect(neck.run[0]?.x).toBeCloseTo(pot.centreX, 6);
    expect(neck.run.at(-1)).toEqual(condenser.feed[0]);
  });

  test('leads to a tub with the jug under it on a narrow sheet', () => {
    const { cooling, jug, separator } = layoutStill(scenarioOf(), { width: 358, height: 330, textScale: 1 }).shapes;
    const tub = cooling.tub?.outer;
    if (!tub) throw new Error('this still has a tub');
    expect(jug.glass.y).toBeGreaterThan(bottom(tub));
    expect(right(jug.glass)).toBeLessThan(separator.glass.x);
    expect(separator.glass.x).toBeGreaterThan(right(tub));
  });
});

describe('levels and separator', () => {
  test('the separator stands at its true height and its surface just below the oil spout', () => {
    const { shapes, pxPerMetre } = layoutStill(scenarioOf({ separator: { height_m: 0.22, bore_m: 0.08 } }), {
      width: 1440,
      textScale: 1,
    });
    const { glass, surfaceY } = shapes.separator;
    expect(glass.width / pxPerMetre).toBeCloseTo(0.08, 6);
    expect((bottom(glass) - surfaceY) / pxPerMetre).toBeCloseTo(0.96 * 0.22, 6);
  });

  test('the jug fills by a kilogram of water as its area says', () => {
    const { shapes, pxPerMetre } = layoutStill(scenarioOf(), { width: 1440, textScale: 1 });
    const { glass, pxPerKg } = shapes.jug;
    const area = (Math.PI / 4) * (glass.width / pxPerMetre) ** 2;
    expect(pxPerKg / pxPerMetre).toBeCloseTo(0.001 / area, 6);
  });

  test('the parts of the default still stand side by side and do not overlap', () => {
    const { shapes } = layoutStill(scenarioOf(), { width: 1440, textScale: 1 });
    const tubOuter = shapes.cooling.tub?.outer;
    expect(right(shapes.pot.outer)).toBeLessThan(tubOuter?.x ?? 0);
    expect(tubOuter ? right(tubOuter) : 0).toBeLessThan(shapes.separator.box.x);
    expect(right(shapes.separator.glass)).toBeLessThan(shapes.jug.glass.x);
  });
});
