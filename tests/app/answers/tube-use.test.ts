/** A tube of the table goes on the still with the length that it needs for itself, asked for as its own place asks. */
import { createRoot } from 'solid-js';
import { afterEach, expect, test, vi } from 'vitest';
import { findTube, type OwnTubeSize, type Scenario } from '../../../sim/index.ts';
import { createTubeUse, type TubeUse } from '../../../src/pages/size/tube-use.ts';
import { sizeQuestion } from '../../../src/state/length-that-holds.ts';
import type { JobOptions, WorkerPool } from '../../../src/workers/pool.ts';
import { givenUp } from '../../../src/workers/errors.ts';
import { scenarioWith } from '../bench/made-up-run.ts';

interface Asked {
  readonly name: string;
  readonly given: readonly unknown[];
  readonly options: JobOptions;
  answer(size: Pick<OwnTubeSize, 'lengthWithMargin_m' | 'verdict'>): void;
  fail(reason: Error): void;
}

const cleared: (() => void)[] = [];
afterEach(() => {
  for (const clear of cleared.splice(0)) clear();
});

/** A table over a pool that waits for the test to answer. */
function table(first: Scenario, margin = 0.1) {
  const questions: Asked[] = [];
  const changed = vi.fn();
  let scenario = first;
  const ask = (name: string, given: readonly unknown[], options: JobOptions = {}) =>
    new Promise((resolve, reject) => {
      options.signal?.addEventListener('abort', () => reject(givenUp()));
      questions.push({ name, given, options, answer: resolve, fail: reject });
    });
  const use = createRoot<TubeUse>((clear) => {
    cleared.push(clear);
    return createTubeUse({ ask: ask as WorkerPool['ask'] }, () => ({ scenario, margin }), changed);
  });
  const last = (): Asked => {
    const question = questions.at(-1);
    if (!question) throw new Error('nothing was asked');
    return question;
  };
  return { use, questions, changed, last, change: (next: Scenario) => (scenario = next) };
}

const settled = () => new Promise((then) => setTimeout(then, 0));
const still = sizeQuestion(scenarioWith({}));
const thick = findTube('en-1057-22x1');

test('the tube is sized for itself, and goes on the still with that length, never shorter', async () => {
  const { use, last, changed } = table(still);
  use.use(thick);
  expect(use.sizing()).toBe(thick);
  expect(changed).not.toHaveBeenCalled();
  const { name, given, options } = last();
  expect(name).toBe('sizeOwnTube');
  expect(options).toMatchObject({ priority: 'high', remember: true });
  last().answer({ lengthWithMargin_m: 2.311, verdict: 'holds' });
  await settled();
  const values = changed.mock.lastCall?.[0] as Record<string, unknown>;
  expect(values).toEqual({
    'condenser.insideDiameter_m': thick.insideDiameter_m,
    'condenser.outsideDiameter_m': 0.022,
    'condenser.material': 'copper',
    'condenser.length_m': 2.32,
    'condenser.coilPitch_m': Math.max(still.condenser.coilPitch_m, 0.022),
  });
  // What is asked once it is on the still is the same question to the letter, so that its answer is known at once.
  const condenser = { ...still.condenser };
  for (const [path, value] of Object.entries(values))
    Object.assign(condenser, { [path.split('.')[1] as string]: value });
  expect(JSON.stringify(given)).toBe(JSON.stringify([sizeQuestion({ ...still, condenser }), 0.1]));
  expect(use.sizing()).toBe(null);
  expect(use.notUsed()).toBe(null);
});

test('of two tubes asked for in turn only the second counts', async () => {
  const { use, questions, changed, last } = table(still);
  use.use(thick);
  use.use(findTube('en-1057-15x1'));
  expect(questions[0]?.options.signal?.aborted).toBe(true);
  await settled();
  expect(use.sizing()?.id).toBe('en-1057-15x1');
  last().answer({ lengthWithMargin_m: 3, verdict: 'holds' });
  await settled();
  expect(changed).toHaveBeenCalledOnce();
  expect(changed.mock.lastCall?.[0]).toMatchObject({ 'condenser.outsideDiameter_m': 0.015 });
});

test('a still that changes meanwhile is asked about anew', async () => {
  const { use, questions, changed, last, change } = table(still);
  use.use(thick);
  change({ ...still, heat: { ...still.heat, ratedPower_W: 1.5 * still.heat.ratedPower_W } });
  last().answer({ lengthWithMargin_m: 2, verdict: 'holds' });
  await settled();
  expect(questions).toHaveLength(2);
  expect(changed).not.toHaveBeenCalled();
  last().answer({ lengthWithMargin_m: 3, verdict: 'holds' });
  await settled();
  expect(changed.mock.lastCall?.[0]).toMatchObject({ 'condenser.length_m': 3 });
});

test('a tube that no length makes enough stays off the still, with the reason', async () => {
  const { use, changed, last } = table(still);
  use.use(thick);
  last().answer({ lengthWithMargin_m: null, verdict: 'pressure' });
  await settled();
  expect(use.notUsed()).toEqual({ tube: thick, verdict: 'pressure' });
  use.use(findTube('glass-10x1'));
  await settled();
  expect(use.notUsed()).toMatchObject({ verdict: 'cannot-be-coiled' });
  use.use(thick);
  expect(use.notUsed()).toBe(null);
  last().fail(new Error('The model stopped twice over this question.'));
  await settled();
  expect(use.notUsed()).toMatchObject({ problem: 'The model stopped twice over this question.' });
  expect(use.sizing()).toBe(null);
  expect(changed).not.toHaveBeenCalled();
});
