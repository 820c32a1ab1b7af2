import { expect, test } from 'vitest';
import { suggestionFor } from '../../../src/state/suggestion.ts';
import { verdictOf, type LengthThatHolds } from '../../../src/state/verdict-sentences.ts';
import { eventOf, madeUpRun, scenarioWith, type MadeUp } from './made-up-run.ts';

const length = (length_m: number) => `${length_m} m`;
const suggest = (parts: MadeUp, now = { heat: 0.6, tap_kg_s: 0.02 }, holds: LengthThatHolds | null = null) => {
  const run = madeUpRun(parts);
  return suggestionFor(run, verdictOf(run, 'metric', holds), now, holds, length);
};
const fails: MadeUp = { events: [eventOf('vapour-escapes', 2820, { severity: 'alarm' })] };

test('a coil that holds invites more heat', () => {
  expect(suggest({})).toEqual({ kind: 'heat', words: 'Turn up the heat', setting: 1 });
});

test('at full heat it invites less water, and without water less heat', () => {
  expect(suggest({}, { heat: 1, tap_kg_s: 0.02 })).toEqual({
    kind: 'tap',
    words: 'Turn the tap down by half',
    flow_kg_s: 0.01,
  });
  expect(suggest({}, { heat: 1, tap_kg_s: 0 })).toEqual({ kind: 'heat', words: 'Turn the heat down', setting: 0.6 });
});

test('a coil that fails invites less heat, or the length that would hold once it is known', () => {
  expect(suggest(fails, undefined, { length_m: null, because: 'coolant-warm' })).toEqual({
    kind: 'heat',
    words: 'Turn the heat down',
    setting: 0.36,
  });
  expect(suggest(fails)).toEqual({ kind: 'heat', words: 'Turn the heat down', setting: 0.36 });
  expect(suggest(fails, undefined, { length_m: 6.4, because: null })).toEqual({
    kind: 'coil',
    words: 'Give it 6.4 m',
    length_m: 6.4,
  });
});

test('where a controller holds the rate there is no heat to turn', () => {
  expect(suggest({ scenario: scenarioWith({ heat: { control: 'hold-rate' } }) })).toBeNull();
});
