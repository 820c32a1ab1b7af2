import { describe, expect, test } from 'vitest';
import { cellAt, columnAt, LIMITS, positionAt } from '../../../sim/index.ts';
import { condensingShare, stillStateAt, vapourLeftAt } from '../../../src/drawing/still-state.ts';
import { dryRun, escapingRun, quickRun } from './runs.ts';

const everyNumber = (node: unknown): number[] => {
  if (typeof node === 'number') return [node];
  return typeof node === 'object' && node !== null ? Object.values(node).flatMap(everyNumber) : [];
};

const firstTime = (kind: string, run = quickRun()): number => {
  const event = run.events.find((found) => found.kind === kind);
  if (!event) throw new Error(`the run has no ${kind}`);
  return event.time_s;
};

describe('the state of the moving parts at a time', () => {
  test('is read between rows: the pot’s depth half way is half way between two rows', () => {
    const { record } = quickRun();
    const depth = (time_s: number) => stillStateAt(quickRun(), time_s).potDepth_m;
    const [t0, t1] = [record.columns.time_s[40] as number, record.columns.time_s[41] as number];
    expect(depth((t0 + t1) / 2)).toBeCloseTo((depth(t0) + depth(t1)) / 2, 12);
    expect(depth(t0)).toBe(columnAt(record, 'potDepth_m', t0));
  });

  test('has only finite numbers at any time, before the start and after the end too', () => {
    for (const time_s of [-10, 0, 1, 333.3, 1200, 2400, 1e6]) {
      expect(everyNumber(stillStateAt(quickRun(), time_s)).filter((value) => !Number.isFinite(value))).toEqual([]);
    }
  });

  test('nothing flows before the first boil', () => {
    const before = stillStateAt(quickRun(), firstTime('first-boil') - 15);
    expect([before.steam_kg_s, before.vapour_kg_s, before.dropsPerSecond, before.frontHeight_m > 0.2]).toEqual([
      0,
      0,
      0,
      false,
    ]);
    expect(condensingShare(before, 5)).toBe(0);
    expect(vapourLeftAt(before, 0.1)).toBe(0);
  });

  test('the front climbs, then oil collects and the water falls', () => {
    const boil = firstTime('first-boil');
    const through = firstTime('front-through');
    const climbing = stillStateAt(quickRun(), (boil + through) / 2);
    const late = stillStateAt(quickRun(), 2300);
    expect(climbing.frontHeight_m).toBeGreaterThan(0);
    expect(late.frontHeight_m).toBeGreaterThan(climbing.frontHeight_m);
    expect(late.potDepth_m).toBeLessThan(climbing.potDepth_m);
    expect(late.oilLayer_m).toBeGreaterThan(0);
    expect(late.hydrosol_kg).toBeGreaterThan(0);
  });

  test('after its end nothing boils, drips, runs or escapes, and what it gave stands', () => {
    for (const run of [quickRun(), escapingRun()]) {
      const { end_s } = run.summary;
      const [last, over] = [stillStateAt(run, end_s), stillStateAt(run, end_s + 1)];
      expect(last.power_W).toBeGreaterThan(0);
      expect(last.vapour_kg_s).toBeGreaterThan(0);
      expect([
        over.power_W,
        over.steam_kg_s,
        over.vapour_kg_s,
        over.condensate_kg_s,
        over.dropsPerSecond,
        over.escaping_kg_s,
        over.coolantFlow_kg_s,
        over.oilRate_kg_s,
        over.alarms.escaping,
        over.alarms.pressure,
      ]).toEqual([0, 0, 0, 0, 0, 0, 0, 0, false, false]);
      expect([over.oilCollected_kg, over.hydrosol_kg, over.potDepth_m, over.coolantOut_K]).toEqual([
        last.oilCollected_kg,
        last.hydrosol_kg,
        last.potDepth_m,
        last.coolantOut_K,
      ]);
    }
    expect(stillStateAt(escapingRun(), escapingRun().summary.end_s).alarms.escaping).toBe(true);
  });

  test('a drop is a twentieth of a gram: the count follows the distillate rate', () => {
    const state = stillStateAt(quickRun(), 2300);
    expect(state.dropsPerSecond).toBeCloseTo(
      columnAt(quickRun().record, 'condensateRate_kg_s', 2300) / LIMITS.firstDrop_kg,
      9,
    );
    expect(state.dropsPerSecond).toBeGreaterThan(1);
  });

  test('the bed’s layers come from the grid up and the tub’s from the top down, as recorded', () => {
    const state = stillStateAt(quickRun(), 2300);
    const { record } = quickRun();
    expect(state.bedTemperature_K).toHaveLength(record.grids.bedTemperature_K.cells);
    expect(state.bedTemperature_K[0]).toBe(
      cellAt(record.grids.bedTemperature_K.data, record.grids.bedTemperature_K.cells, 0, positionAt(record, 2300)),
    );
    expect(state.tubTemperature_K[0]).toBeGreaterThan(state.tubTemperature_K.at(-1) ?? Infinity);
  });

  test('vapour thins out along the tube and is gone where it is condensed', () => {
    const state = stillStateAt(quickRun(), 2300);
    const end = condensingShare(state, quickRun().scenario.condenser.length_m);
    expect(vapourLeftAt(state, 0)).toBeGreaterThan(vapourLeftAt(state, end * 0.8));
    expect(vapourLeftAt(state, Math.min(0.99, end + 0.05))).toBe(0);
  });
});

describe('alarms', () => {
  test('vapour escaping holds from its event until it is held again', () => {
    const at = firstTime('vapour-escapes', escapingRun());
    expect(stillStateAt(escapingRun(), at - 5).alarms.escaping).toBe(false);
    const during = stillStateAt(escapingRun(), at + 30);
    expect(during.alarms.escaping).toBe(true);
    expect(during.escaping_kg_s).toBeGreaterThan(0);
  });

  test('a run that keeps its vapour never shows it', () => {
    expect([600, 1200, 2400].map((time_s) => stillStateAt(quickRun(), time_s).alarms.escaping)).toEqual([
      false,
      false,
      false,
    ]);
  });

  test('low water comes before the dry pot, which ends the run', () => {
    const low = firstTime('pot-low', dryRun());
    const end = dryRun().summary.end_s;
    expect(dryRun().summary.endReason).toBe('pot-dry');
    expect(stillStateAt(dryRun(), low + 1).alarms).toMatchObject({ potLow: true, potDry: false });
    expect(stillStateAt(dryRun(), end).alarms).toMatchObject({ potLow: true, potDry: true });
  });
});
