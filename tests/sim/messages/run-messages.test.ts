/** What a run says, in the units of whoever reads it: every event, every conclusion, over every example and more. */
import { describe, expect, it } from 'vitest';
import {
  englishReader,
  eventFlag,
  eventMessage,
  EVENT_KINDS,
  exampleScenario,
  examples,
  failedVariable,
  simulate,
  verdictMessages,
  verdictOf,
  type EnoughLength,
  type RunResult,
  type SaidVerdict,
  type UnitSystem,
} from '../../../sim/index.ts';
import { eventOf, madeUpRun, scenarioWith } from '../../app/bench/made-up-run.ts';
import { provoked } from '../run/provoked-events.ts';
import { everyEvent } from './sample-events.ts';
import { expectWholeSentences, strayNumbers } from './whole-sentences.ts';

const SYSTEMS: readonly UnitSystem[] = ['metric', 'us'];

const everyText = ({ lead, paragraphs, warnings }: SaidVerdict): readonly string[] =>
  [lead, ...paragraphs.flat(), ...warnings].flatMap(({ kind, sentence, advice }) =>
    // A price has no unit until the reader chooses a currency.
    [kind === 'energy' ? sentence.replace(/costs \d+\.\d\d/u, 'costs money') : sentence, ...(advice ? [advice] : [])],
  );

function checkRun(result: RunResult, enough: EnoughLength | null = null): void {
  for (const system of SYSTEMS) {
    const reader = englishReader(system);
    for (const event of result.events) {
      const { sentence, advice } = eventMessage(event, reader);
      expectWholeSentences(sentence, system);
      expectWholeSentences(advice, system);
    }
    const said = verdictMessages(verdictOf(result, enough), reader);
    for (const text of everyText(said)) expectWholeSentences(text, system);
    for (const { sentence } of said.briefs) expect(strayNumbers(sentence, system), sentence).toEqual([]);
  }
}

describe('a number is known by the unit behind it', () => {
  it('and one without, or with a unit of the other system, is found', () => {
    expect(strayNumbers('At 27\u202fmin it is 60\u202f°C.', 'metric')).toEqual([]);
    expect(strayNumbers('At 1\u202fh 05\u202fmin it is 60\u202f°C.', 'us')).toEqual(['60\u202f°C.']);
    expect(strayNumbers('It holds back 20\u202fin H₂O and 3\u202fm.', 'us')).toEqual(['3\u202fm.']);
    expect(strayNumbers('It takes 5 of them.', 'metric')).toEqual(['5 of them']);
    expect(strayNumbers('Its 10.2 turns need 52\u202fcm.', 'us')).toEqual(['52\u202fcm.']);
    expect(strayNumbers('Oil: 12\u202fmL, water: 3\u202fL.', 'us')).toEqual(['3\u202fL.']);
    expect(strayNumbers('Oil: 12\u202fg.', 'us')).toEqual(['12\u202fg.']);
  });
});

describe('every kind of event', () => {
  it.each(everyEvent)('$kind is whole sentences in both systems', (event) => {
    for (const system of SYSTEMS) {
      const { sentence, advice } = eventMessage(event, englishReader(system));
      expectWholeSentences(sentence, system);
      expectWholeSentences(advice, system);
    }
  });

  it('has a flag of its own, of few words', () => {
    const flags = EVENT_KINDS.map((kind) => eventFlag(kind, englishReader('metric')));
    expect(new Set(flags).size).toBe(flags.length);
    for (const flag of flags) expect(flag).toMatch(/^[a-z]+( [a-z]+){0,2}$/u);
  });
});

describe('the sentences of a run hold no unit of the other system', () => {
  it.each(examples.map(({ id }) => id))('in the example %s', (id) => {
    checkRun(simulate(exampleScenario(id)));
  });

  it.each(provoked)('in the still that raises $kind', ({ scenario }) => {
    checkRun(simulate(scenario()));
  });
});

describe('every way in which a run can end', () => {
  const jacket = scenarioWith({ condenser: { kind: 'jacketed-tube', length_m: 5 } });
  it.each<[string, RunResult, EnoughLength | null]>([
    ['never boils', madeUpRun({ summary: { firstBoil_s: null, firstDrop_s: null, oilCollected_kg: 0 } }), null],
    ['never drips', madeUpRun({ summary: { firstDrop_s: null, oilCollected_kg: 0 } }), null],
    ['no oil', madeUpRun({ summary: { oilCollected_kg: 0, oilHaze_kg: 0 } }), null],
    ['unknown density', madeUpRun({ summary: { oilDensity_kg_m3: null } }), null],
    ['scant', madeUpRun({ summary: { condensingLengthPeak_m: 4.8 } }), null],
    ['warm', madeUpRun({ summary: { condensatePeak_C: 35.04 } }), null],
    ['dry', madeUpRun({ events: [eventOf('pot-dry', 4320)] }), null],
    ['burst', madeUpRun({ events: [eventOf('over-pressure', 4320)] }), null],
    ['too short', madeUpRun({ events: [eventOf('vapour-escapes', 4320)] }), { length_m: 6.4, because: null }],
    ['no length', madeUpRun({ events: [eventOf('vapour-escapes', 4320)] }), { length_m: null, because: 'pressure' }],
    ['no water', madeUpRun({ scenario: jacket, summary: { coolantUsed_kg: 0 } }), null],
    ['failed', madeUpRun({ failure: { variable: 'bed-temperature', time_s: 600 } }), null],
    ['stopped by share', madeUpRun({ summary: { endReason: 'stop-share' } }), null],
    ['stopped by distillate', madeUpRun({ summary: { endReason: 'stop-distillate' } }), null],
    ['stopped by oil rate', madeUpRun({ summary: { endReason: 'stop-oil-rate' } }), null],
  ])('%s', (_, result, enough) => {
    checkRun(result, enough);
  });

  it('names what failed in words', () => {
    expect(failedVariable({ variable: 'charge-oil', time_s: 0 }, englishReader('us'))).toBe('oil in the charge');
  });
});
