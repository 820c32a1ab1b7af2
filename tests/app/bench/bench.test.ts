import { createRoot } from 'solid-js';
import { describe, expect, test } from 'vitest';
import { createBench, type Bench } from '../../../src/state/bench.ts';
import type { Progress } from '../../../src/workers/progress.ts';
import type { RunClient, RunReply } from '../../../src/workers/run-client.ts';
import type { Scenario } from '../../../sim/index.ts';
import { eventOf, madeUpRun, scenarioWith } from './made-up-run.ts';

const still = { now: () => 0, nextFrame: () => 0, cancelFrame: () => undefined };
const onIt = { id: 'a', touched: false, visit: null };
const saved = {
  time_s: 0,
  speed: 60,
  units: 'metric',
  currency: null,
  theme: 'auto',
  foldedCharts: [],
  chart: 'oil',
  hintsDismissed: false,
  keysOn: true,
} as const;

const paper = { onPaper: () => false, readyBefore: () => undefined, print: () => Promise.resolve() };

/** A client whose answers the test gives, in the order of the questions. */
function askedClient() {
  const asked: {
    scenario: unknown;
    reply: (reply: RunReply) => void;
    tell: ((progress: Progress) => void) | undefined;
    signal: AbortSignal | undefined;
  }[] = [];
  const client: RunClient = {
    run: (scenario, tell, signal) => new Promise((reply) => asked.push({ scenario, reply, tell, signal })),
    openingExample: () => Promise.resolve(null),
    examples: () => Promise.resolve([]),
  };
  const answer = async (index: number, reply: RunReply) => {
    asked[index]?.reply(reply);
    for (let turn = 0; turn < 6; turn++) await Promise.resolve();
  };
  const ran = (index: number, scenario: Scenario) => answer(index, { kind: 'ran', result: madeUpRun({ scenario }) });
  return { client, asked, answer, ran };
}

const onBench = (
  check: (parts: { bench: Bench } & ReturnType<typeof askedClient>) => Promise<void> | void,
  awaited?: Scenario,
) =>
  createRoot(async (dispose) => {
    const asked = askedClient();
    const bench = createBench({
      client: asked.client,
      lengthThatHolds: () => Promise.resolve(null),
      clock: still,
      first: madeUpRun(),
      awaited,
      still: onIt,
      saved,
      paper,
    });
    await check({ bench, ...asked });
    dispose();
  });

const invalid: RunReply = {
  kind: 'invalid',
  problems: [
    {
      kind: 'water-above-grid',
      path: 'pot.water_kg',
      part: 'pot',
      title: 'Water in the pot',
      unit: 'kg',
      value: 99,
      values: { most_kg: 9 },
    },
  ],
};

describe('a change', () => {
  test('asks for a run, and its result takes the place of the one before', () =>
    onBench(async ({ bench, asked, ran }) => {
      bench.change('condenser.length_m', 3);
      expect(asked.map(({ scenario }) => (scenario as Scenario).condenser.length_m)).toEqual([3]);
      expect([bench.running(), bench.result().scenario.condenser.length_m]).toEqual([true, 5]);
      await ran(0, bench.scenario());
      expect([bench.running(), bench.result().scenario.condenser.length_m]).toEqual([false, 3]);
    }));

  test('that changes nothing asks for nothing and leaves nothing to undo', () =>
    onBench(({ bench, asked }) => {
      bench.change('condenser.length_m', 5);
      expect(asked).toHaveLength(0);
      expect(bench.canUndo()).toBe(false);
    }));

  test('of several fields is one run and one step back', () =>
    onBench(({ bench, asked }) => {
      bench.changeMany({ 'condenser.length_m': 3, 'pot.diameter_m': 0.4 });
      expect(asked).toHaveLength(1);
      bench.undo();
      expect([bench.scenario().condenser.length_m, bench.scenario().pot.diameter_m, bench.canUndo()]).toEqual([
        5,
        0.32,
        false,
      ]);
    }));

  test('by dragging is one step back, however many runs it took', () =>
    onBench(({ bench }) => {
      for (const length of [4.5, 4, 3.5]) bench.change('condenser.length_m', length, 'drag-1');
      bench.undo();
      expect(bench.scenario().condenser.length_m).toBe(5);
      bench.redo();
      expect(bench.scenario().condenser.length_m).toBe(3.5);
    }));

  test('that cannot be run leaves the last good run, and says so until it is taken back', () =>
    onBench(async ({ bench, answer, ran }) => {
      bench.change('pot.water_kg', 99);
      await answer(0, invalid);
      expect(bench.stale()).toBe(true);
      await expect
        .poll(bench.staleBecause)
        .toMatch(/^Water in the pot: 99.L is not possible; at most 9.L fits under the grid\.$/u);
      expect(bench.result().scenario.pot.water_kg).toBe(8);
      expect(bench.scenario().pot.water_kg).toBe(99);
      bench.undo();
      await ran(1, bench.scenario());
      expect([bench.stale(), bench.problems().length]).toEqual([false, 0]);
    }));

  test('on which the model fails keeps the last good run and tells the reason', () =>
    onBench(async ({ bench, answer }) => {
      bench.change('pot.water_kg', 7);
      await answer(0, { kind: 'failed', message: 'out of memory' });
      await expect.poll(bench.staleBecause).toBe('The model could not run it: out of memory');
      expect([bench.running(), bench.result().scenario.pot.water_kg]).toEqual([false, 8]);
    }));

  test('on which the calculation fails keeps the last good run, and says when and in what it failed', () =>
    onBench(async ({ bench, answer }) => {
      bench.change('pot.water_kg', 7);
      await answer(0, { kind: 'broke-off', failure: { variable: 'pot-water', time_s: 720 } });
      await expect
        .poll(bench.staleBecause)
        .toMatch(/^The calculation failed at 12.min \(.+\)\. No result is shown\. Undo the last change/u);
      expect([bench.running(), bench.result().scenario.pot.water_kg]).toEqual([false, 8]);
    }));

  test('that a newer one overtook waits for the answer to the newer one', () =>
    onBench(async ({ bench, answer, ran }) => {
      bench.change('pot.water_kg', 7);
      bench.change('pot.water_kg', 6);
      await answer(0, { kind: 'superseded' });
      expect(bench.running()).toBe(true);
      await ran(1, bench.scenario());
      expect([bench.running(), bench.result().scenario.pot.water_kg]).toEqual([false, 6]);
    }));
});

describe('a moving hand', () => {
  test('is followed, run by run, and the bench rests with the last', () =>
    onBench(async ({ bench, ran }) => {
      bench.change('condenser.length_m', 3, 'drag');
      const first = bench.scenario();
      bench.change('condenser.length_m', 3.1, 'drag');
      await ran(0, first);
      expect([bench.result().scenario.condenser.length_m, bench.running()]).toEqual([3, true]);
      await ran(1, bench.scenario());
      expect([bench.result().scenario.condenser.length_m, bench.running()]).toEqual([3.1, false]);
    }));
});

describe('another scenario', () => {
  test('takes its place once it has run: time mark at the start, nothing selected, the work before one step back', () =>
    onBench(async ({ bench, ran }) => {
      bench.select('pot');
      bench.setTime(500);
      const loading = bench.load({ name: 'Another' });
      expect(bench.scenario().name).toBe('Untitled still');
      await ran(0, scenarioWith({ name: 'Another' }));
      expect(await loading).toBeNull();
      expect([bench.scenario().name, bench.loaded().name, bench.time_s(), bench.selected()]).toEqual([
        'Another',
        'Another',
        0,
        null,
      ]);
      bench.undo();
      expect(bench.scenario().name).toBe('Untitled still');
    }));

  test('that cannot be read is refused with the reason, and the work on the bench is as it was', () =>
    onBench(async ({ bench, answer }) => {
      const before = bench.scenario();
      const loading = bench.load({ pot: 3 });
      await answer(0, invalid);
      expect(await loading).toMatch(/^Water in the pot: /u);
      expect(bench.scenario()).toBe(before);
      expect([bench.stale(), bench.canUndo()]).toEqual([false, false]);
    }));
});

describe('a run that takes long', () => {
  test('says how far it has come, and only of the scenario as it stands', () =>
    onBench(async ({ bench, asked, ran }) => {
      bench.change('condenser.length_m', 3);
      asked[0]?.tell?.({ share: 0.25, whole_s: 30 });
      expect(bench.longRun()).toEqual({ share: 0.25, whole_s: 30 });
      bench.change('condenser.length_m', 4);
      expect(bench.longRun()).toBeNull();
      asked[0]?.tell?.({ share: 0.5, whole_s: 20 });
      expect(bench.longRun()).toBeNull();
      asked[1]?.tell?.({ share: 0.1, whole_s: 40 });
      await ran(1, bench.scenario());
      expect([bench.longRun(), bench.running(), bench.stale()]).toEqual([null, false, false]);
    }));

  test('is stopped, and worked out after all when asked again', () =>
    onBench(async ({ bench, asked, answer, ran }) => {
      bench.change('condenser.length_m', 3);
      asked[0]?.tell?.({ share: 0.25, whole_s: 30 });
      bench.stopRun();
      expect(asked[0]?.signal?.aborted).toBe(true);
      await answer(0, { kind: 'stopped' });
      expect([bench.longRun(), bench.running(), bench.stale()]).toEqual(['stopped', false, true]);
      bench.runAgain();
      await ran(1, bench.scenario());
      expect([bench.longRun(), bench.stale(), bench.result().scenario.condenser.length_m]).toEqual([null, false, 3]);
    }));

  test('is asked for once the page stands on a rough run of the same still, which is the one that is kept', () => {
    const awaited = scenarioWith({ condenser: { length_m: 7 } });
    return onBench(async ({ bench, asked, ran }) => {
      expect(asked.map(({ scenario }) => scenario)).toEqual([awaited]);
      expect([bench.running(), bench.canUndo(), bench.scenario()]).toEqual([true, false, awaited]);
      await ran(0, awaited);
      expect([bench.running(), bench.result().scenario]).toEqual([false, awaited]);
    }, awaited);
  });
});

test('the events before and after the time mark are the ones to jump to', () =>
  createRoot((dispose) => {
    const first = madeUpRun({
      events: [eventOf('first-drop', 1860), eventOf('first-boil', 1320), eventOf('run-ends', 9000)],
    });
    const bench = createBench({
      client: askedClient().client,
      lengthThatHolds: () => Promise.resolve(null),
      clock: still,
      first,
      still: onIt,
      saved,
      paper,
    });
    bench.setTime(1320);
    expect([bench.previousEvent()?.kind, bench.nextEvent()?.kind]).toEqual([undefined, 'first-drop']);
    bench.setTime(9000);
    expect([bench.previousEvent()?.kind, bench.nextEvent()?.kind]).toEqual(['first-drop', undefined]);
    dispose();
  }));

test('a mark that moves by itself is kept at some of its places, and where it comes to rest', () =>
  createRoot((dispose) => {
    let now_ms = 0;
    let next = () => {};
    const clock = {
      now: () => now_ms,
      nextFrame: (paint: () => void) => {
        next = paint;
        return 1;
      },
      cancelFrame: () => undefined,
    };
    const { client } = askedClient();
    const lengthThatHolds = () => Promise.resolve(null);
    const bench = createBench({ client, lengthThatHolds, clock, first: madeUpRun(), still: onIt, saved, paper });
    bench.setTime(0);
    bench.play();
    const kept = new Set<number>();
    const frames = 300;
    for (let frame = 0; frame < frames; frame++) {
      now_ms += 16;
      next();
      kept.add(bench.snapshot().time_s);
    }
    expect(bench.time_s()).toBeGreaterThan(200);
    expect(kept.size).toBeLessThan(frames / 10);
    bench.pause();
    expect(bench.snapshot().time_s).toBe(bench.time_s());
    dispose();
  }));

test('what is kept between visits is the whole bench', () =>
  onBench(({ bench }) => {
    bench.setUnits('us');
    bench.setCurrency('SEK');
    bench.setTheme('projector');
    bench.setFoldedCharts(['oil']);
    bench.dismissHints();
    bench.setKeysOn(false);
    bench.setTime(1234);
    bench.setSpeed(300);
    expect(bench.snapshot()).toEqual({
      still: 'a',
      time_s: 1234,
      speed: 300,
      units: 'us',
      currency: 'SEK',
      theme: 'projector',
      foldedCharts: ['oil'],
      chart: 'oil',
      hintsDismissed: true,
      keysOn: false,
    });
  }));
