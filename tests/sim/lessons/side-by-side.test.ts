import { expect, test } from 'vitest';
import { findPair, PAIR_IDS } from '../../../sim/answers/lessons/side-by-side.ts';
import { columnAt } from '../../../sim/run/record.ts';
import { simulate } from '../../../sim/run/simulate.ts';
import { englishReader } from '../../../sim/messages/language.ts';
import { sideBySideMessages } from '../../../sim/messages/side-by-side.ts';

const [gentle, hard] = findPair('gentle-hard').stills().map(simulate);
const [below, above] = findPair('hose').stills().map(simulate);
if (!gentle || !hard || !below || !above) throw new RangeError('two runs are needed');

test('the hard boil sends over more than one and a half times the water, and by no means so much more oil', () => {
  expect(hard.summary.hydrosol_kg / gentle.summary.hydrosol_kg).toBeGreaterThan(1.5);
  expect(hard.summary.oilCollected_kg / gentle.summary.oilCollected_kg).toBeLessThan(1.1);
});

test('with the hose at the top the distillate grows too warm, with the hose at the bottom it stays cool', () => {
  const limit_K = above.scenario.condenser.outletLimit_K;
  const warmest = ({ record }: typeof above) => Math.max(...record.columns.condensateTemperature_K);
  expect(columnAt(above.record, 'condensateTemperature_K', 7000)).toBeGreaterThan(limit_K);
  expect(columnAt(below.record, 'condensateTemperature_K', 7000)).toBeLessThan(limit_K - 8);
  expect(warmest(below)).toBeLessThan(limit_K);
});

test('the two of a pair differ in one thing, and nothing dangerous happens by itself', () => {
  for (const run of [gentle, hard, below, above])
    expect(run.events.every(({ severity }) => severity !== 'alarm')).toBe(true);
  const [a, b] = findPair('hose').stills();
  expect({ ...b, name: '', cooling: { ...b.cooling, inlet: 'laid' } }).toEqual({ ...a, name: '' });
});

test('each pair has its words', () => {
  const { pairs } = sideBySideMessages(englishReader('metric'));
  for (const id of PAIR_IDS) expect(pairs[id].says).toMatch(/\.$/u);
});
