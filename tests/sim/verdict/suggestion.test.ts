import { describe, expect, test } from 'vitest';
import {
  englishReader,
  exampleScenario,
  judgeTrial,
  simulate,
  suggestionMessage,
  suggestionsFor,
  verdictOf,
  type Controls,
  type EnoughLength,
  type Scenario,
} from '../../../sim/index.ts';
import { eventOf, madeUpRun, type MadeUp } from '../../app/bench/made-up-run.ts';

const read = (text: string): string => text.replace(/[\u202f\u00a0]/g, ' ');
const NOW: Controls = { heat: 0.6, tap_kg_s: 0.02 };
const suggest = (parts: MadeUp, now = NOW, enough: EnoughLength | null = null, turn = 0) => {
  const run = madeUpRun(parts);
  return suggestionsFor(run, verdictOf(run, enough), now, enough, turn);
};
const fails: MadeUp = { events: [eventOf('vapour-escapes', 2820)] };

describe('what is tried', () => {
  test('where all is well is one question, a different one each time', () => {
    const asked = [0, 1, 2, 3, 4].map((turn) => suggest({}, NOW, null, turn));
    expect(asked.every(({ length }) => length === 1)).toBe(true);
    expect(new Set(asked.map((each) => JSON.stringify(each))).size).toBe(5);
    expect(suggest({}, NOW, null, 5)).toEqual(asked[0]);
  });

  test('against a condenser that fails is the length that is enough, then ever less heat, then more water', () => {
    const tried = suggest(fails, NOW, { length_m: 6.4, because: null });
    expect(tried[0]).toEqual({ kind: 'length', length_m: 6.4 });
    expect(tried.flatMap((wish) => (wish.kind === 'heat' ? [wish.setting] : []))).toEqual([
      0.54, 0.48, 0.42, 0.36, 0.3, 0.24,
    ]);
    expect(suggest(fails)[0]).toEqual({ kind: 'heat', setting: 0.54 });
  });

  test('leaves the heat alone where a controller turns it', () => {
    expect(suggest(fails, { ...NOW, heat: null }).map(({ kind }) => kind)).not.toContain('heat');
  });

  test('is nothing where the calculation failed', () => {
    expect(suggest({ failure: { variable: 'charge-oil', time_s: 720 } })).toEqual([]);
  });
});

describe('a trial on the model', () => {
  const gentle = exampleScenario('gentle-lavender');
  const atFullHeat: Scenario = { ...gentle, heat: { ...gentle.heat, setting: [{ at_s: 0, value: 1, shape: 'step' }] } };
  const failing = simulate(atFullHeat);
  /** With so much water that nobody can scald themselves at the overflow. */
  const cooler: Scenario = {
    ...gentle,
    cooling: { ...gentle.cooling, flow_kg_s: [{ at_s: 0, value: 0.009, shape: 'step' }] },
  };
  const run = (scenario: Scenario, setting: number) =>
    simulate({ ...scenario, heat: { ...scenario.heat, setting: [{ at_s: 0, value: setting, shape: 'step' }] } });

  test('that does not end the fault is not offered, one that ends it says what it comes to', () => {
    expect(verdictOf(failing).lead.kind).toBe('condenser-fails');
    expect(judgeTrial({ kind: 'heat', setting: 0.97 }, failing, run(atFullHeat, 0.97))).toBeNull();
    const offers = suggestionsFor(failing, verdictOf(failing), { heat: 1, tap_kg_s: 0.0055 }, null, 0)
      .filter(({ kind }) => kind === 'heat')
      .map((wish) => judgeTrial(wish, failing, run(atFullHeat, wish.kind === 'heat' ? wish.setting : 1)));
    const offered = offers.find((each) => each !== null);
    if (!offered) throw new Error('less heat ends it');
    expect(offered.after.events.map(({ kind }) => kind)).not.toContain('vapour-escapes');
    const said = suggestionMessage(offered, englishReader('metric'));
    expect(read(said.words)).toMatch(/^Set the heat to \d+ %$/);
    expect(read(said.sees)).toMatch(/^The model gets \d+ mL of oil \(now \d+ mL\), 90 % of it by \d+ (h|min)/);
  });

  test('of a question may end badly, and then says how', () => {
    const well = simulate(cooler);
    const tried = judgeTrial({ kind: 'heat', setting: 1 }, well, failing);
    if (!tried) throw new Error('a question is always offered');
    expect(tried.isQuestion).toBe(true);
    const said = suggestionMessage(tried, englishReader('metric'));
    expect(read(said.words)).toBe('What if the heat is at 100 %?');
    expect(read(said.sees)).toMatch(/But: The coil does not condense everything: steam escapes from the outlet from /);
  });

  test('is told in the units of the reader', () => {
    const tried = judgeTrial({ kind: 'length', length_m: 6.4 }, simulate(cooler), simulate(cooler));
    if (!tried) throw new Error('a question is always offered');
    expect(read(suggestionMessage(tried, englishReader('us')).words)).toBe('What if the tube is 21 ft long?');
  });
});
