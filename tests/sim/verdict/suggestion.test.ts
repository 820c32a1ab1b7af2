import { expect, test } from 'vitest';
import {
  englishReader,
  suggestionFor,
  suggestionMessage,
  verdictOf,
  type EnoughLength,
  type Suggestion,
} from '../../../sim/index.ts';
import { eventOf, madeUpRun, scenarioWith, type MadeUp } from '../../app/bench/made-up-run.ts';

const suggest = (parts: MadeUp, now = { heat: 0.6, tap_kg_s: 0.02 }, enough: EnoughLength | null = null) => {
  const run = madeUpRun(parts);
  return suggestionFor(run, verdictOf(run, enough), now, enough);
};
const fails: MadeUp = { events: [eventOf('vapour-escapes', 2820)] };

test('a coil that is enough invites more heat', () => {
  expect(suggest({})).toEqual({ kind: 'heat-up', setting: 1 });
});

test('at full heat it invites less water, and without water less heat', () => {
  expect(suggest({}, { heat: 1, tap_kg_s: 0.02 })).toEqual({ kind: 'tap-down', flow_kg_s: 0.01 });
  expect(suggest({}, { heat: 1, tap_kg_s: 0 })).toEqual({ kind: 'heat-down', setting: 0.6 });
});

test('a coil that fails invites less heat, or the length that is enough once it is known', () => {
  expect(suggest(fails, undefined, { length_m: null, because: 'coolant-warm' })).toEqual({
    kind: 'heat-down',
    setting: 0.36,
  });
  expect(suggest(fails)).toEqual({ kind: 'heat-down', setting: 0.36 });
  expect(suggest(fails, undefined, { length_m: 6.4, because: null })).toEqual({ kind: 'lengthen', length_m: 6.4 });
});

test('where a controller holds the rate there is no heat to turn', () => {
  expect(suggest({ scenario: scenarioWith({ heat: { control: 'hold-rate' } }) })).toBeNull();
});

test.each<[Suggestion, string, string]>([
  [{ kind: 'heat-up', setting: 1 }, 'Turn up the heat', 'Turn up the heat'],
  [{ kind: 'heat-down', setting: 0.4 }, 'Turn down the heat', 'Turn down the heat'],
  [{ kind: 'tap-down', flow_kg_s: 0.01 }, 'Turn the tap down by half', 'Turn the tap down by half'],
  [{ kind: 'lengthen', length_m: 6.4 }, 'Make it 6.40\u202fm long', 'Make it 21.0\u202fft long'],
])('$kind reads as a button', (wish, metric, us) => {
  expect(suggestionMessage(wish, englishReader('metric'))).toBe(metric);
  expect(suggestionMessage(wish, englishReader('us'))).toBe(us);
});
