import { describe, expect, test } from 'vitest';
import { layoutStill } from '../../../src/drawing/geometry/still-layout.ts';
import { drawMarks, drawPlume, type DrawMarks, type Ink, type Painter } from '../../../src/drawing/marks/draw-marks.ts';
import { markSites } from '../../../src/drawing/marks/mark-sites.ts';
import { advancePhases, stillPhases } from '../../../src/drawing/marks/phases.ts';
import { stillStateAt, type StillState } from '../../../src/drawing/still-state.ts';
import { exampleScenario, examples, simulate } from '../../../sim/index.ts';
import { escapingRun, quickRun } from './runs.ts';

interface Mark {
  readonly ink: Ink;
  readonly shape: 'dot' | 'ring' | 'line';
  readonly x: number;
  readonly y: number;
}

const drawAll: DrawMarks = (...given) => {
  drawPlume(...given);
  drawMarks(...given);
};

function marksOf(run: typeof quickRun, state: StillState, phases = stillPhases(), width = 1440): Mark[] {
  const marks: Mark[] = [];
  let ink: Ink = 'steam';
  const painter: Painter = {
    begin: (next) => void (ink = next),
    dot: (x, y) => void marks.push({ ink, shape: 'dot', x, y }),
    ring: (x, y) => void marks.push({ ink, shape: 'ring', x, y }),
    line: (x1, y1, x2, y2) =>
      void marks.push({ ink, shape: 'line', x: x1, y: y1 }, { ink, shape: 'line', x: x2, y: y2 }),
    end: () => undefined,
  };
  drawAll(painter, markSites(layoutStill(run().scenario, { width, textScale: 1 })), state, phases);
  return marks;
}

const count = (marks: readonly Mark[], ink: Ink, shape?: Mark['shape']) =>
  marks.filter((mark) => mark.ink === ink && (shape === undefined || mark.shape === shape)).length;

describe('marks', () => {
  const late = () => stillStateAt(quickRun(), 2300);

  test('there is no steam, bubble, drop or vapour while nothing boils; cooling water runs', () => {
    const marks = marksOf(quickRun, stillStateAt(quickRun(), 1));
    expect([
      count(marks, 'steam'),
      count(marks, 'heat'),
      count(marks, 'water', 'ring'),
      count(marks, 'water', 'dot'),
      count(marks, 'oil'),
    ]).toEqual([0, 0, 0, 0, 0]);
    expect(count(marks, 'water', 'line')).toBeGreaterThan(4);
  });

  test('a harder boil has more bubbles', () => {
    const gentle = count(marksOf(quickRun, { ...late(), steam_kg_s: 0.0002 }), 'water', 'ring');
    const hard = count(marksOf(quickRun, { ...late(), steam_kg_s: 0.0006 }), 'water', 'ring');
    expect(gentle).toBeGreaterThan(0);
    expect(hard).toBeGreaterThan(gentle);
  });

  test('drops run together to a stream above ten a second', () => {
    const still = { ...late(), coolantFlow_kg_s: 0, steam_kg_s: 0, vapour_kg_s: 0, hydrosol_kg: 0 };
    const dripping = marksOf(quickRun, { ...still, dropsPerSecond: 4 });
    const streaming = marksOf(quickRun, { ...still, dropsPerSecond: 12 });
    expect([count(dripping, 'water', 'line'), count(dripping, 'water', 'dot') > 0]).toEqual([0, true]);
    expect([count(streaming, 'water', 'line'), count(streaming, 'water', 'dot')]).toEqual([2, 0]);
  });

  test('as many drops are let go as the rate and the time give', () => {
    const phases = stillPhases();
    const before = phases.drops;
    for (let frame = 0; frame < 300; frame++)
      advancePhases(phases, { ...late(), dropsPerSecond: 3 }, 1 / 60, 500, 0.025, 0.32);
    expect(phases.drops - before).toBeCloseTo(15, 6);
  });

  test('nothing advances that does not flow', () => {
    const phases = stillPhases();
    advancePhases(phases, { ...stillStateAt(quickRun(), 1), coolantFlow_kg_s: 0 }, 0.05, 500, 0.025, 0.32);
    expect(phases).toEqual(stillPhases());
  });

  test('escaping vapour has marks of its own', () => {
    const end = escapingRun().summary.end_s - 60;
    expect(count(marksOf(escapingRun, stillStateAt(escapingRun(), end)), 'alarm')).toBeGreaterThan(20);
    expect(count(marksOf(quickRun, late()), 'alarm')).toBe(0);
  });

  test('vapour dots in the tube lie before the place where it has condensed', () => {
    const state = late();
    const layout = layoutStill(quickRun().scenario, { width: 1440, textScale: 1 });
    const tubeTop = layout.shapes.condenser.box.y;
    const share = state.condensingLength_m / quickRun().scenario.condenser.length_m;
    const lowest = Math.max(
      ...marksOf(quickRun, state)
        .filter(({ ink }) => ink === 'heat')
        .map(({ y }) => y),
    );
    expect(lowest).toBeLessThan(tubeTop + layout.shapes.condenser.box.height * (share + 0.25));
  });

  test.each(examples.map(({ id }) => id))('%s: all marks are finite and on the sheet, and few enough', (id) => {
    const result = simulate(exampleScenario(id));
    for (const width of [390, 1440]) {
      const { height } = layoutStill(result.scenario, { width, textScale: 1 });
      const marks = marksOf(
        () => result,
        stillStateAt(result, result.summary.end_s * 0.6),
        { neck: 1234.5, bed: 987.6, bubbles: 555.5, drops: 77.7, coolant: 345.6, oil: 66.6, escape: 44.4 },
        width,
      );
      expect(marks.filter(({ x, y }) => !(x >= -1 && x <= width + 1 && y >= -1 && y <= height + 1))).toEqual([]);
      expect(marks.length).toBeLessThan(2500);
    }
  });
});
