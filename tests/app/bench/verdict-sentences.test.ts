import { describe, expect, test } from 'vitest';
import { englishReader, eventMessage, type EventKind } from '../../../sim/index.ts';
import { verdictOf, type Verdict, type VerdictSentence } from '../../../src/state/verdict-sentences.ts';
import { eventOf, madeUpRun, scenarioWith, type MadeUp } from './made-up-run.ts';

/** Thin and narrow spaces read as spaces, so that the sentences can be read here too. */
const read = (text: string): string => text.replace(/[\u202f\u00a0]/g, ' ');
const all = (verdict: Verdict): readonly VerdictSentence[] => [
  verdict.lead,
  ...verdict.paragraphs.flat(),
  ...verdict.warnings,
];
const said = (parts: MadeUp, units: 'metric' | 'us' = 'metric'): string =>
  all(verdictOf(madeUpRun(parts), units))
    .map(({ text }) => read(text))
    .join(' ');
const find = (verdict: Verdict, id: string): VerdictSentence => {
  const found = all(verdict).find((sentence) => sentence.id === id);
  if (!found) throw new Error(`no sentence ${id}`);
  return found;
};

const adviceFor = (kind: EventKind): string => eventMessage(eventOf(kind, 0), englishReader('metric')).advice;

describe('the verdict of a run that goes well', () => {
  const verdict = verdictOf(madeUpRun(), 'metric');

  test('leads with the coil and how much of it condenses, and points to the moment when most does', () => {
    expect(read(verdict.lead.text)).toBe(
      'The coil condenses everything in the first 3.2 m of its 5.0 m; the rest cools the distillate.',
    );
    expect(verdict.lead).toMatchObject({ part: 'condenser', time_s: 6000, severity: 'good' });
  });

  test('says when the first drops come, when nine tenths are over, and what is had in the end', () => {
    expect(verdict.paragraphs[0]?.map(({ text }) => read(text))).toEqual([
      'The first drops come at 31 min.',
      '9 of the 10 mL of oil are in the receiver by 1 h 52 min.',
      'In the end you have 8.9 g of oil, 80 % of what the plant holds, and 2.4 L of hydrosol.',
    ]);
  });

  test('says what cooling takes and that the separator keeps up', () => {
    expect(verdict.paragraphs[1]?.map(({ text }) => read(text))).toEqual([
      'Cooling takes 34 L of tap water, which leaves at up to 44 °C.',
      'The distillate leaves no warmer than 27 °C.',
      'The separator keeps up and catches 98 % of the oil drops; 600 mg of oil stays dissolved in the hydrosol.',
    ]);
    expect(find(verdict, 'cooling-water').time_s).toBe(8000);
  });

  test('says how long it takes, what it costs and what is left in the pot', () => {
    expect(verdict.paragraphs[2]?.map(({ text }) => read(text))).toEqual([
      'The run ends after 2 h 30 min.',
      'It takes 4.2 kWh, 1.36 with the water at the prices you set.',
      '4.1 L of water is left in the pot.',
    ]);
  });

  test('has the next few things to know in few words', () => {
    expect(verdict.facts.map(({ text }) => read(text))).toEqual([
      'first drops at 31 min',
      '9 of the 10 mL of oil by 1 h 52 min',
      '34 L of cooling water',
    ]);
  });

  test('warns of nothing, and every sentence leads to a part and to a minute inside the run', () => {
    expect(verdict.warnings).toEqual([]);
    for (const { part, time_s } of all(verdict)) {
      expect(part.length).toBeGreaterThan(2);
      if (time_s !== null) expect(time_s).toBeLessThanOrEqual(9000);
    }
  });

  test('speaks US units when asked', () => {
    const words = said({}, 'us');
    expect(words).toContain('the first 10 ft of its 16 ft;');
    expect(words).toContain('9 of the 10 mL of oil');
    expect(words).toContain('at up to 111 °F');
  });
});

describe('a coil that is too short', () => {
  const events = [eventOf('first-drop', 1860), eventOf('vapour-escapes', 2820, { severity: 'alarm' })];

  test('leads with the failure, the minute and the advice', () => {
    const { lead } = verdictOf(madeUpRun({ events }), 'metric');
    expect(read(lead.text)).toBe('The coil is not enough: from 47 min on, vapour leaves the outlet.');
    expect(lead).toMatchObject({ severity: 'alarm', time_s: 2820, advice: adviceFor('vapour-escapes') });
  });

  test('says by how much, once the length that would hold is known', () => {
    const { lead } = verdictOf(madeUpRun({ events }), 'metric', { length_m: 6.4, because: null });
    expect(read(lead.text)).toBe(
      'The coil is too short by 1.40 m: from 47 min on, vapour leaves the outlet. 6.40 m would hold.',
    );
  });

  test('says that no length would, where cooling lacks', () => {
    const { lead } = verdictOf(madeUpRun({ events }), 'metric', { length_m: null, because: 'coolant-warm' });
    expect(read(lead.text)).toBe(
      'The coil is not enough: from 47 min on, vapour leaves the outlet. No length would hold; it needs more cooling water.',
    );
  });

  test('is not told of a second time among the warnings', () => {
    expect(verdictOf(madeUpRun({ events }), 'metric').warnings).toEqual([]);
  });
});

test('a coil with hardly anything to spare is held against it', () => {
  const { lead } = verdictOf(madeUpRun({ summary: { condensingLengthPeak_m: 4.8 } }), 'metric');
  expect(read(lead.text)).toBe('The coil only just condenses everything, with 0.20 m to spare.');
  expect(lead.severity).toBe('care');
});

test('a straight condenser is not called a coil', () => {
  const scenario = scenarioWith({ condenser: { kind: 'jacketed-tube', length_m: 5 } });
  expect(said({ scenario })).toContain('The condenser condenses everything');
});

describe('a run that does not get far', () => {
  test('a pot that never boils is the first thing to say, and drops and oil are passed over', () => {
    const words = said({
      summary: {
        firstBoil_s: null,
        firstDrop_s: null,
        oilCollected_mL: 0,
        oilCollected_kg: 0,
        oilHaze_kg: 0,
        t90_s: null,
        condensatePeak_C: null,
      },
      events: [],
    });
    expect(words).toMatch(/^The pot never boils in 2 h 30 min, so nothing comes over\./);
    expect(words).not.toMatch(/first drops|receiver|separator|distillate leaves/);
  });

  test('a pot that runs dry is told before the condenser', () => {
    const events = [
      eventOf('vapour-escapes', 2000, { severity: 'alarm' }),
      eventOf('pot-dry', 4320, { severity: 'alarm', part: 'pot' }),
    ];
    const verdict = verdictOf(madeUpRun({ events, summary: { endReason: 'pot-dry', end_s: 4320 } }), 'metric');
    expect(read(verdict.lead.text)).toBe('The pot runs dry at 1 h 12 min, and the run stops there.');
    expect(verdict.warnings.map(({ id }) => id)).toEqual(['vapour-escapes']);
    expect(read(find(verdict, 'run-length').text)).toBe('The run ends after 1 h 12 min, because the pot is dry.');
  });

  test('a pot that builds up pressure is told before the condenser, with what to do', () => {
    const events = [eventOf('over-pressure', 2400, { severity: 'alarm', part: 'condenser' })];
    const { lead } = verdictOf(madeUpRun({ events, summary: { endReason: 'over-pressure', end_s: 2400 } }), 'metric');
    expect(read(lead.text)).toBe('The pressure in the pot is too high at 40 min, and the run stops there.');
    expect(lead).toMatchObject({ severity: 'alarm', part: 'condenser', advice: adviceFor('over-pressure') });
  });

  test('a model that breaks off says where and in which number', () => {
    const { lead } = verdictOf(madeUpRun({ failure: { variable: 'bed-temperature', time_s: 600 } }), 'metric');
    expect(read(lead.text)).toBe('The model breaks off at 10 min: temperature of the charge is no longer a number.');
  });
});

test('oil that is not collected is said plainly', () => {
  expect(said({ summary: { oilCollected_mL: 0, oilCollected_kg: 0, oilHaze_kg: 0, t90_s: null } })).toContain(
    'No oil is collected.',
  );
});

test('a separator that is overrun is told with its minute and its share', () => {
  const events = [eventOf('separator-overrun', 3600, { severity: 'care', part: 'separator' })];
  const verdict = verdictOf(madeUpRun({ events, summary: { oilHaze_kg: 0.003 } }), 'metric');
  expect(read(find(verdict, 'separator').text)).toBe(
    'The separator is overrun from 1 h: it catches only 75 % of the oil drops.',
  );
  expect(verdict.warnings).toEqual([]);
});

test('a distillate warmer than wanted is held against the limit that was set', () => {
  const verdict = verdictOf(madeUpRun({ summary: { condensatePeak_C: 46 } }), 'metric');
  expect(read(find(verdict, 'outlet-temperature').text)).toBe(
    'The distillate leaves at up to 46 °C, warmer than the 35 °C you want.',
  );
});

test('a tub without running water is said to warm, not to use water', () => {
  expect(said({ summary: { coolantUsed_kg: 0, coolantPeakOut_C: 61 } })).toContain(
    'No tap water runs; the tub warms to 61 °C.',
  );
});

test('warnings come once each, the dangerous ones first, with what to do', () => {
  const events = [
    eventOf('neck-fast', 1500, { severity: 'care', part: 'neck' }),
    eventOf('neck-fast', 1700, { severity: 'care', part: 'neck' }),
    eventOf('pressure-high', 4000, { severity: 'alarm', part: 'pot' }),
    eventOf('first-boil', 1320),
  ];
  const { warnings } = verdictOf(madeUpRun({ events }), 'metric');
  expect(warnings.map(({ id, time_s, advice }) => [id, time_s, advice])).toEqual([
    ['pressure-high', 4000, adviceFor('pressure-high')],
    ['neck-fast', 1500, adviceFor('neck-fast')],
  ]);
});
