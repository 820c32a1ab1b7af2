import { describe, expect, test, vi } from 'vitest';
import { ensembleDesign, summariseEnsemble, runMember, type Scenario } from '../../../sim/index.ts';
import { createEnsembleSession, orderOfRows } from '../../../src/pages/run-length/ensemble-session.ts';
import { scenarioWith } from '../bench/made-up-run.ts';
import { herePool } from './here-pool.ts';

/** A short run of a small still, so that hundreds of them take no time. */
const still = (): Scenario =>
  scenarioWith({
    heat: { ratedPower_W: 2500, setting: [{ at_s: 0, value: 1 }] },
    pot: { water_kg: 1, waterTemperature_K: 365 },
    charge: { mass_kg: 0.3 },
    run: { duration_s: 1200 },
    advanced: { step_s: 4, segments: 12, bedLayers: 3 },
  });

describe('the likely runs', () => {
  test('come in an order that shows the spread early and leaves no run out', () => {
    const { rows } = ensembleDesign(still(), 40, 1);
    const order = orderOfRows({ rows });
    expect([...order].sort((a, b) => a - b)).toEqual(rows.map((_, index) => index));
    expect(order[0]).toBe(0);
    expect(order.slice(1, 25).every((index) => rows[index]?.kind === 'draw')).toBe(true);
  });

  test('are all run, and sum up to what the model itself makes of them', async () => {
    const session = createEnsembleSession(herePool());
    const scenario = still();
    session.start(scenario, 8, 3, {});
    expect(session.running()).toBe(true);
    await vi.waitFor(() => expect(session.running()).toBe(false), { timeout: 25_000 });
    expect(session.problem()).toBe(null);
    expect(session.finished()).toBe(session.total());
    const design = ensembleDesign(scenario, 8, 3);
    const whole = summariseEnsemble(
      design,
      design.rows.map((_, index) => runMember(design, index)),
    );
    expect(session.summary()?.headline).toEqual(whole.headline);
    expect(session.summary()?.influences.oil_mL).toEqual(whole.influences.oil_mL);
  });

  test('that are stopped keep what has run', async () => {
    const pool = herePool();
    const session = createEnsembleSession(pool);
    session.start(still(), 200, 3, {});
    await vi.waitFor(() => expect(session.finished()).toBeGreaterThan(5), { timeout: 25_000 });
    session.stop();
    const finished = session.finished();
    expect(session.running()).toBe(false);
    expect(finished).toBeLessThan(session.total());
    expect(session.summary()?.finished).toBeGreaterThan(0);
    await new Promise((then) => setTimeout(then, 50));
    expect(session.finished()).toBe(finished);
  });

  test('that cannot be run say why', async () => {
    const session = createEnsembleSession(herePool());
    session.start(still(), 0, 1, {});
    await vi.waitFor(() => expect(session.problem()).toContain('0 members'));
    expect(session.running()).toBe(false);
  });
});
