import { describe, expect, test } from 'vitest';
import { coilFit, NO_EVENTS, tubVolume, type Scenario } from '../../../sim/index.ts';
import {
  changesOf,
  escapeLine,
  failureWords,
  FINEST,
  isConstant,
  longestTube,
  mapBounds,
  meanFlow,
  nodeAt,
  ownX,
  placeOf,
  placesOf,
  STRIDES,
  usualAxis,
  type MapField,
} from '../../../src/pages/size/map-grid.ts';
import { mapShapes, pixelsOf, type MapFrame } from '../../../src/pages/size/map-shapes.ts';
import { ownLabel, withClearNames } from '../../../src/pages/size/own-label.ts';
import { mapTable } from '../../../src/pages/size/map-picture.ts';
import { mapAxes } from '../../../src/pages/size/map-axes.ts';
import { changesAt, stillAt } from '../../../src/workers/map-axis.ts';
import type { OutletReading } from '../../../src/workers/condenser-map.ts';
import { outletsAt } from '../../../src/workers/condenser-map.ts';
import { scenarioWith } from '../bench/made-up-run.ts';

const FRAME: MapFrame = { width: 700, height: 400, left: 50, right: 10, top: 20, bottom: 40, textScale: 1 };
const NO_RUN = { times: NO_EVENTS, heat_W: null };
const coil = (): Scenario =>
  scenarioWith({ condenser: { length_m: 2 }, cooling: { flow_kg_s: [{ at_s: 0, value: 0.01 }] } });

/** A made-up condenser: 300 K plus what length and flow take off, escaping below a line. */
function madeUp(stride: number): MapField {
  const bounds = mapBounds(coil(), 'flow', NO_RUN, null, null);
  const readings = new Map<number, OutletReading>();
  for (const [column, row] of placesOf(stride, readings)) {
    const node = nodeAt(bounds, column, row);
    const escapes = node.length_m < 1.2 - 30 * node.x;
    readings.set(placeOf(column, row), {
      ...node,
      outlet_K: escapes ? 372 : 350 - 12 * node.length_m - 500 * node.x,
      fails: escapes,
      pressure: false,
    });
  }
  return { bounds, stride, readings, edges: new Map() };
}

describe('the grid behind the picture', () => {
  test('grows from a few points to all of them without asking for one twice', () => {
    const known = new Map<number, OutletReading>();
    const counts = STRIDES.map((stride) => {
      const places = placesOf(stride, known);
      for (const [column, row] of places)
        known.set(placeOf(column, row), { x: 0, length_m: 0, outlet_K: 300, fails: false, pressure: false });
      return places.length;
    });
    expect(counts).toEqual([25, 56, 208]);
    expect(known.size).toBe(FINEST * FINEST);
  });

  test('has the reader’s own still well inside', () => {
    const scenario = coil();
    const { x, length_m } = mapBounds(scenario, 'flow', NO_RUN, null, null);
    expect(x[0]).toBe(0);
    expect(x[1]).toBeGreaterThanOrEqual(0.02);
    expect(length_m[1]).toBeGreaterThanOrEqual(4);
    expect(length_m[0]).toBeGreaterThan(0);
  });

  test('keeps its axes while a dragged still stays within them, and takes new ones when it leaves', () => {
    const first = mapBounds(coil(), 'flow', NO_RUN, null, null);
    const nudged = scenarioWith({ condenser: { length_m: 2.6 }, cooling: { flow_kg_s: [{ at_s: 0, value: 0.013 }] } });
    expect(mapBounds(nudged, 'flow', NO_RUN, null, first)).toEqual(first);
    const far = scenarioWith({ condenser: { length_m: 9 }, cooling: { flow_kg_s: [{ at_s: 0, value: 0.013 }] } });
    expect(mapBounds(far, 'flow', NO_RUN, null, first).length_m[1]).toBeGreaterThanOrEqual(18);
  });

  test('shows the length that would hold, where that is longer than the reader’s own', () => {
    expect(mapBounds(coil(), 'flow', NO_RUN, 11, null).length_m[1]).toBeGreaterThan(11);
  });

  test('is against the volume of a tub without running water, and the tub always goes round the coil', () => {
    const still = scenarioWith({ cooling: { flow_kg_s: [{ at_s: 0, value: 0 }] } });
    expect(usualAxis(still)).toBe('tub-volume');
    expect(usualAxis(coil())).toBe('flow');
    expect(
      usualAxis(
        scenarioWith({ condenser: { kind: 'jacketed-tube' }, cooling: { flow_kg_s: [{ at_s: 0, value: 0 }] } }),
      ),
    ).toBe('flow');
    const { x } = mapBounds(still, 'tub-volume', NO_RUN, null, null);
    const narrowest = stillAt(still, 'tub-volume', x[0]).cooling;
    expect(narrowest.tubDiameter_m).toBeGreaterThan(still.condenser.coilDiameter_m);
    expect(ownX(still, 'tub-volume', NO_RUN)).toBeCloseTo(tubVolume(still.cooling), 9);
    expect(stillAt(still, 'tub-volume', tubVolume(still.cooling)).cooling.tubDiameter_m).toBeCloseTo(
      still.cooling.tubDiameter_m,
      9,
    );
  });

  test('is against the heat from little to all that the source has, whatever the still has now', () => {
    const still = scenarioWith({ heat: { ratedPower_W: 4000 } });
    expect(mapBounds(still, 'heat', { times: NO_EVENTS, heat_W: 3000 }, null, null).x).toEqual([800, 4000]);
    const gentle = mapBounds(still, 'heat', { times: NO_EVENTS, heat_W: 600 }, null, null);
    expect(gentle.x[0]).toBeCloseTo(420, 9);
    // A still that is moved up again keeps its picture.
    expect(mapBounds(still, 'heat', { times: NO_EVENTS, heat_W: 3000 }, null, gentle)).toEqual(gentle);
    expect(ownX(still, 'heat', { times: NO_EVENTS, heat_W: 3000 })).toBe(3000);
    expect(changesAt(still, 'heat', 3000)).toEqual({
      'heat.control': 'schedule',
      'heat.setting': [{ at_s: 0, value: 0.75, shape: 'step' }],
    });
    expect(stillAt(still, 'heat', 3000).cooling).toBe(still.cooling);
  });

  test('takes a tap that changes as its mean over the run', () => {
    const scenario = scenarioWith({
      run: { duration_s: 4000 },
      cooling: {
        flow_kg_s: [
          { at_s: 0, value: 0.01 },
          { at_s: 1000, value: 0.02 },
          { at_s: 5000, value: 1 },
        ],
      },
    });
    expect(meanFlow(scenario, NO_EVENTS)).toBeCloseTo(0.0175, 9);
    const waiting = scenarioWith({
      run: { duration_s: 4000 },
      cooling: {
        flow_kg_s: [
          { at_s: 0, value: 0.01 },
          { at_s: 0, after: 'first-drop', value: 0.02 },
        ],
      },
    });
    expect(meanFlow(waiting, NO_EVENTS)).toBeCloseTo(0.01, 9);
    expect(meanFlow(waiting, { firstBoil: 900, firstDrop: 1000 })).toBeCloseTo(0.0175, 9);
    expect(isConstant(scenario.cooling.flow_kg_s)).toBe(false);
    expect(isConstant(coil().cooling.flow_kg_s)).toBe(true);
  });

  test('finds between which lengths vapour stops escaping, column by column', () => {
    const field = madeUp(1);
    for (const { column, fails_m, holds_m } of changesOf(field)) {
      const edge = 1.2 - 30 * nodeAt(field.bounds, column, 0).x;
      expect(fails_m).toBeLessThan(edge);
      expect(holds_m).toBeGreaterThanOrEqual(edge);
    }
    expect(changesOf(field).length).toBeGreaterThan(10);
  });

  test('draws the edge where it was found, else halfway, else at the ends of the axis', () => {
    const field = madeUp(1);
    const [first] = changesOf(field);
    const edges = new Map([[first?.column ?? 0, 1.05]]);
    expect(escapeLine({ ...field, edges })[first?.column ?? 0]?.[1]).toBe(1.05);
    const line = escapeLine(field);
    expect(line).toHaveLength(FINEST);
    const all = (fails: boolean) =>
      escapeLine({
        ...field,
        readings: new Map([...field.readings].map(([place, reading]) => [place, { ...reading, fails }])),
      });
    expect(all(true).every(([, length]) => length === field.bounds.length_m[1])).toBe(true);
    expect(all(false).every(([, length]) => length === 0)).toBe(true);
  });
});

describe('the picture of a condenser', () => {
  /** Points of a path that lie inside the plot. */
  const inside = (path: string): (readonly [number, number])[] =>
    [...path.matchAll(/(-?[\d.]+),(-?[\d.]+)/gu)]
      .map(([, x, y]): readonly [number, number] => [Number(x), Number(y)])
      .filter(([x, y]) => x > 51 && x < 689 && y > 21 && y < 359);

  test('has its contours where the outlet has that temperature', () => {
    const field = madeUp(1);
    const shapes = mapShapes(field, FRAME, 330, null, 'metric');
    const pixels = pixelsOf(FRAME, field.bounds);
    const scale = (pixels.x(field.bounds.x[1]) - pixels.x(0)) / field.bounds.x[1];
    let checked = 0;
    for (const { temperature_K, path } of shapes.isotherms) {
      for (const [px, py] of inside(path)) {
        const x = (px - pixels.x(0)) / scale;
        const length =
          field.bounds.length_m[0] + ((360 - py) / 340) * (field.bounds.length_m[1] - field.bounds.length_m[0]);
        if (length < 1.6 - 30 * x) continue;
        checked += 1;
        expect(350 - 12 * length - 500 * x).toBeCloseTo(temperature_K, 0);
      }
    }
    expect(checked).toBeGreaterThan(100);
  });

  test('names round temperatures in the units shown, each label on its line and clear of the others', () => {
    const metric = mapShapes(madeUp(1), FRAME, 330, null, 'metric').isotherms;
    expect(metric.every(({ words }) => /^\d*[05]\u202f°C$/u.test(words))).toBe(true);
    const labels = metric.flatMap(({ label }) => (label ? [label] : []));
    expect(labels.length).toBeGreaterThan(3);
    for (const [place, a] of labels.entries())
      for (const b of labels.slice(place + 1))
        expect(Math.abs(a.x - b.x) >= 64 || Math.abs(a.y - b.y) >= 18).toBe(true);
    expect(
      mapShapes(madeUp(1), FRAME, 330, null, 'us').isotherms.every(({ words }) => /^\d*0\u202f°F$/u.test(words)),
    ).toBe(true);
  });

  test('labels the regions inside themselves', () => {
    const { escapesLabel, holdsLabel, warmLabel } = mapShapes(madeUp(1), FRAME, 330, null, 'metric');
    if (!escapesLabel || !holdsLabel || !warmLabel) throw new Error('a region has no label');
    expect(escapesLabel.y).toBeGreaterThan(warmLabel.y);
    expect(warmLabel.y).toBeGreaterThan(holdsLabel.y);
  });

  test('shades nothing where nothing fails, and all where all fails', () => {
    const field = madeUp(4);
    const all = (fails: boolean) =>
      new Map(
        [...field.readings].map(([place, reading]) => [place, { ...reading, fails, outlet_K: fails ? 372 : 300 }]),
      );
    const good = mapShapes({ ...field, readings: all(false) }, FRAME, 330, null, 'metric');
    expect(good.escapes).toBe('');
    expect(good.warm).toBe('');
    const bad = mapShapes({ ...field, readings: all(true) }, FRAME, 330, null, 'metric');
    expect(bad.holdsLabel).toBe(null);
    expect(bad.escapesLabel).toMatchObject({ x: expect.any(Number) as number });
  });

  test('veils the coils that are too tall for the tub, and keeps “holds” out of there', () => {
    const field = madeUp(1);
    const all = mapShapes(field, FRAME, 330, null, 'metric');
    expect([all.tooTallBelow_px, all.tooTallLabel]).toEqual([null, null]);
    const longest = 0.7 * field.bounds.length_m[1];
    const { tooTallBelow_px, tooTallLabel, holdsLabel } = mapShapes(field, FRAME, 330, longest, 'metric');
    expect(tooTallBelow_px).toBeCloseTo(pixelsOf(FRAME, field.bounds).y(longest), 6);
    expect(tooTallLabel?.y ?? Infinity).toBeLessThan(tooTallBelow_px ?? 0);
    expect(holdsLabel === null || holdsLabel.y > (tooTallBelow_px ?? Infinity)).toBe(true);
  });

  test('knows the longest coil as the height of that coil tells it', () => {
    const scenario = coil();
    const longest = longestTube(scenario) ?? 0;
    expect(coilFit({ ...scenario.condenser, length_m: longest }, scenario.cooling).depth_m).toBeCloseTo(
      scenario.cooling.tubHeight_m,
      9,
    );
    expect(longestTube(scenarioWith({ condenser: { kind: 'jacketed-tube' } }))).toBe(null);
  });

  test('says whether it is vapour or pressure that fails', () => {
    const { readings } = madeUp(4);
    const by = (pressure: (escapes: boolean) => boolean) =>
      failureWords({
        readings: new Map(
          [...readings].map(([place, reading]) => [
            place,
            { ...reading, pressure: pressure(reading.fails), fails: reading.fails || pressure(reading.fails) },
          ]),
        ),
      });
    expect(by(() => false)).toBe('steam escapes');
    expect(by(() => true)).toBe('pressure lifts the lid');
    expect(by((escapes) => !escapes)).toBe('steam escapes or lifts the lid');
  });

  test('names the reader’s own still clear of the other words and within the picture', () => {
    const shapes = mapShapes(madeUp(1), FRAME, 330, null, 'metric');
    const { escapesLabel } = shapes;
    if (!escapesLabel) throw new Error('no label');
    const beside = ownLabel({ x: escapesLabel.x - 40, y: escapesLabel.y }, FRAME, shapes);
    expect(beside['text-anchor'] !== 'start' || Math.abs(beside.y - escapesLabel.y) > 12).toBe(true);
    const moved = withClearNames(shapes, escapesLabel, FRAME).escapesLabel;
    expect(Math.abs((moved?.x ?? 0) - escapesLabel.x)).toBeGreaterThan(80);
    expect(withClearNames(shapes, { x: 60, y: 30 }, FRAME)).toEqual(shapes);
    expect(ownLabel({ x: 685, y: 60 }, FRAME, null)['text-anchor']).toBe('end');
    expect(ownLabel({ x: 300, y: 60 }, FRAME, null)['text-anchor']).toBe('start');
  });

  test('stands where nothing comes over at all', () => {
    const field = madeUp(4);
    const empty = new Map(
      [...field.readings].map(([place, reading]) => [place, { ...reading, fails: false, outlet_K: null }]),
    );
    expect(mapShapes({ ...field, readings: empty }, FRAME, 330, null, 'metric').isotherms).toEqual([]);
  });

  test('has round numbers along its axes and every point in its table', () => {
    const field = madeUp(4);
    const axes = mapAxes(field.bounds, FRAME, 'coil', 'metric');
    expect(axes.acrossTitle).toBe('Cooling-water flow, L/min');
    expect(axes.upTitle).toBe('Coil length, m');
    expect(axes.across.every(({ at_px }) => at_px >= FRAME.left - 1 && at_px <= 691)).toBe(true);
    expect(mapAxes(field.bounds, FRAME, 'coil', 'us').upTitle).toBe('Coil length, ft');
    const table = mapTable(field, 'metric');
    expect(table.rows).toBe(25);
    expect(table.columns.every(({ values }) => values.length === 25)).toBe(true);
  });
});

describe('a point of the picture', () => {
  test('is what the model makes of that length and flow: colder with more of either, failing with little of both', () => {
    const scenario = scenarioWith({
      heat: { ratedPower_W: 2000 },
      pot: { water_kg: 2, waterTemperature_K: 368 },
      charge: { mass_kg: 0.5 },
      // Slow enough that the flow does not mix the tub, which can warm the outlet.
      cooling: { inlet: 'perforated' },
      run: { duration_s: 1800 },
    });
    const nodes = [
      { x: 0.02, length_m: 5 },
      { x: 0.02, length_m: 2 },
      { x: 0.004, length_m: 2 },
      { x: 0.001, length_m: 0.1 },
    ];
    const [best, shorter, drier, worst] = outletsAt(scenario, 'flow', nodes, 'fine');
    expect(best?.fails).toBe(false);
    expect(best?.outlet_K ?? 0).toBeLessThan(shorter?.outlet_K ?? 0);
    expect(shorter?.outlet_K ?? 0).toBeLessThanOrEqual(drier?.outlet_K ?? 0);
    expect(worst?.fails).toBe(true);
    const narrow = {
      ...scenario,
      condenser: { ...scenario.condenser, insideDiameter_m: 0.003, outsideDiameter_m: 0.005 },
    };
    expect(outletsAt(narrow, 'flow', [{ x: 0.02, length_m: 5 }], 'fine')[0]).toMatchObject({
      fails: true,
      pressure: true,
    });
    const [rough] = outletsAt(scenario, 'flow', nodes.slice(0, 1), 'rough');
    expect(Math.abs((rough?.outlet_K ?? 0) - (best?.outlet_K ?? 0))).toBeLessThan(3);
  });
});
