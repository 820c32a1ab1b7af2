import { describe, expect, test } from 'vitest';
import {
  englishReader,
  eventMessage,
  examples,
  exampleScenario,
  simulate,
  soFarMessage,
  suggestionsFor,
  verdictMessages,
  verdictOf,
  type EnoughLength,
  type EventKind,
  type SaidFact,
  type SaidVerdict,
  type Scenario,
} from '../../../sim/index.ts';
import { eventOf, madeUpRun, scenarioWith, type MadeUp } from '../../app/bench/made-up-run.ts';

/** Thin and narrow spaces read as spaces, so that the sentences can be read here too. */
const read = (text: string): string => text.replace(/[\u202f\u00a0]/g, ' ');
const judge = (parts: MadeUp = {}, enough: EnoughLength | null = null, units: 'metric' | 'us' = 'metric') =>
  verdictMessages(verdictOf(madeUpRun(parts), enough), englishReader(units));
const all = (verdict: SaidVerdict): readonly SaidFact[] => [
  verdict.lead,
  ...verdict.paragraphs.flat(),
  ...verdict.warnings,
];
const said = (parts: MadeUp, units: 'metric' | 'us' = 'metric'): string =>
  all(judge(parts, null, units))
    .map(({ sentence }) => read(sentence))
    .join(' ');
const find = (verdict: SaidVerdict, kind: SaidFact['kind']): SaidFact => {
  const found = all(verdict).find((fact) => fact.kind === kind);
  if (!found) throw new Error(`no fact ${kind}`);
  return found;
};
const adviceFor = (kind: EventKind): string => eventMessage(eventOf(kind, 0), englishReader('metric')).advice;

describe('the verdict of a run that goes well', () => {
  const verdict = judge();

  test('leads with the coil and how much of it condenses, and points to the moment when most does', () => {
    expect(read(verdict.lead.sentence)).toBe(
      'The coil condenses everything in the first 3.2 m of its 5.0 m, even in its busiest half minute. The rest cools the distillate.',
    );
    expect(verdict.lead).toMatchObject({ part: 'condenser', time_s: 6000, severity: 'good' });
  });

  test('says when the first drop falls, when nine tenths are over, and what there is in the end', () => {
    expect(verdict.paragraphs[0]?.map(({ sentence }) => read(sentence))).toEqual([
      'The first drop falls at 31 min.',
      '90 % of this run’s oil is collected by 1 h 52 min.',
      'In the end you have 10 mL of oil, 80 % of what the plant holds, and 2.4 L of hydrosol.',
    ]);
  });

  test('says what cooling takes and what the separator catches over the whole run', () => {
    expect(verdict.paragraphs[1]?.map(({ sentence }) => read(sentence))).toEqual([
      'Cooling takes 34 L of tap water. It leaves at up to 44 °C.',
      'The distillate comes out at 27 °C at most.',
      'Over the whole run the separator catches 98 % of the oil drops. 0.67 mL of oil stays dissolved in the hydrosol.',
      expect.stringMatching(/^Another 0\.22 mL hangs in it as fine drops and makes it cloudy \(haze\)\./),
    ]);
    expect(find(verdict, 'cooling-water').time_s).toBe(8000);
  });

  test('says how long it takes, what it costs and what is left in the pot', () => {
    expect(verdict.paragraphs[2]?.map(({ sentence }) => read(sentence))).toEqual([
      'The run ends at 2 h 30 min.',
      'The run takes 4.2 kWh of heat from the source. With the water that costs 1.36 at default prices.',
      '4.1 L of water is left in the pot.',
    ]);
  });

  test('has the next few things to know in few words', () => {
    expect(verdict.briefs.map(({ sentence }) => read(sentence))).toEqual([
      'first drop at 31 min',
      '90 % of 10 mL of oil by 1 h 52 min',
      '34 L of cooling water',
    ]);
  });

  test('warns of nothing, and every fact leads to a part and to a minute inside the run', () => {
    expect(verdict.warnings).toEqual([]);
    for (const { part, time_s } of all(verdict)) {
      expect(part.length).toBeGreaterThan(2);
      if (time_s !== null) expect(time_s).toBeLessThanOrEqual(9000);
    }
  });

  test('speaks US units when asked', () => {
    const words = said({}, 'us');
    expect(words).toContain('in the first 10 ft 6 in of its 16 ft 5 in, even in its busiest half minute.');
    expect(words).toContain('10 mL of oil');
    expect(words).toContain('2.5 qt of hydrosol');
    expect(words).toContain('at up to 111 °F');
  });
});

describe('a coil that is too short', () => {
  const events = [eventOf('first-drop', 1860), eventOf('vapour-escapes', 2820)];

  test('leads with the failure, the minute and the advice', () => {
    const { lead } = judge({ events });
    expect(read(lead.sentence)).toBe(
      'The coil does not condense everything: steam escapes from the outlet from 47 min.',
    );
    expect(lead).toMatchObject({
      severity: 'alarm',
      time_s: 2820,
      advice: 'It scalds, and oil is lost. Use less heat, more cooling water or a longer tube.',
    });
  });

  test('says by how much, once the length that is enough is known', () => {
    const { lead } = judge({ events }, { length_m: 6.4, because: null });
    expect(read(lead.sentence)).toBe(
      'The coil is too short by 1.40 m: steam escapes from the outlet from 47 min. 6.40 m is enough.',
    );
  });

  test('says that no length is, where cooling lacks', () => {
    const { lead } = judge({ events }, { length_m: null, because: 'coolant-warm' });
    expect(read(lead.sentence)).toBe(
      'The coil does not condense everything: steam escapes from the outlet from 47 min. No length is enough: it needs more cooling water.',
    );
  });

  test('is not told of a second time among the warnings', () => {
    expect(judge({ events }).warnings).toEqual([]);
  });
});

test('a coil with hardly any reserve is held against it', () => {
  const { lead } = judge({ summary: { condensingLengthPeak_m: 4.8 } });
  expect(read(lead.sentence)).toBe('The coil condenses everything, with only 0.20 m in reserve.');
  expect(lead.severity).toBe('care');
  expect(judge({ summary: { condensingLengthPeak_m: 4.999 } }).lead.sentence).toBe(
    'The coil condenses everything, with no reserve.',
  );
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
    expect(words).toMatch(/^The pot does not boil in 2 h 30 min: nothing comes over\./);
    expect(words).not.toMatch(/first drop|collected|separator|distillate/);
  });

  test('a pot that runs dry is told at once, but after vapour that escapes, which can hurt somebody before', () => {
    const end = { endReason: 'pot-dry', end_s: 4320 } as const;
    const both = judge({ events: [eventOf('vapour-escapes', 2000), eventOf('pot-dry', 4320)], summary: end });
    expect(both.lead.kind).toBe('condenser-fails');
    expect(both.paragraphs[0]?.map(({ kind }) => kind)).toEqual(['ran-dry']);
    const verdict = judge({ events: [eventOf('pot-low', 4000), eventOf('pot-dry', 4320)], summary: end });
    expect(read(verdict.lead.sentence)).toBe('The pot runs dry at 1 h 12 min. The run stops there.');
    expect(verdict.lead.advice).toBe(adviceFor('pot-dry'));
    expect(verdict.warnings).toEqual([]);
    expect(read(find(verdict, 'run-length').sentence)).toBe('The run ends at 1 h 12 min, because the pot is dry.');
  });

  test('a pot that builds up pressure is told before the condenser, with what to do', () => {
    const events = [eventOf('over-pressure', 2400)];
    const { lead } = judge({ events, summary: { endReason: 'over-pressure', end_s: 2400 } });
    expect(read(lead.sentence)).toBe(
      'At 40 min the pressure in the pot passes 50 kPa above the air. The run stops there.',
    );
    expect(lead).toMatchObject({ severity: 'alarm', part: 'pot', advice: adviceFor('over-pressure') });
  });

  test('a run that could not be calculated says when and in what, and nothing of sums that it does not have', () => {
    const verdict = judge({ failure: { variable: 'charge-oil', time_s: 720 } });
    expect(read(verdict.lead.sentence)).toBe(
      'The calculation failed at 12 min (oil in the charge). There is no result.',
    );
    expect([verdict.paragraphs, verdict.briefs]).toEqual([[], []]);
  });
});

test('oil that is not collected is said plainly', () => {
  expect(said({ summary: { oilCollected_mL: 0, oilCollected_kg: 0, oilHaze_kg: 0, t90_s: null } })).toContain(
    'No oil comes over in this run.',
  );
});

test('what the separator catches at a moment and over the whole run stands in sentences of its own', () => {
  const events = [eventOf('separator-overrun', 3600)];
  const verdict = judge({ events, summary: { oilHaze_kg: 0.0001 } });
  expect(read(find(verdict, 'separator-catches').sentence)).toMatch(
    /^Over the whole run the separator catches 99 % of the oil drops\./,
  );
  expect([verdict.lead.kind, read(verdict.lead.sentence).split('.')[0]]).toEqual([
    'separator-overrun',
    'At 1 h the separator catches 89 % of the oil drops',
  ]);
});

test('a separator that catches too little over the whole run is held against it', () => {
  const fact = find(judge({ summary: { oilHaze_kg: 0.003 } }), 'separator-catches');
  expect(read(fact.sentence)).toContain('75 % of the oil drops');
  expect(fact.severity).toBe('care');
});

test('haze is told apart from what is dissolved, with the time in which it clears', () => {
  const fact = (haze: number, units: 'metric' | 'us' = 'metric') =>
    judge({ summary: { oilHaze_kg: haze } }, null, units)
      .paragraphs.flat()
      .find(({ kind }) => kind === 'cloudy-hydrosol');
  expect(read(fact(0.003)?.sentence ?? '')).toMatch(
    /^Another 3\.4 mL hangs in it as fine drops and makes it cloudy \(haze\)\. (Standing hardly clears it|Left to stand 200 mm deep, nine tenths of that rises out in about .+)\.$/,
  );
  expect(read(fact(0.003, 'us')?.sentence ?? '')).toMatch(/ in deep|hardly/);
  expect(fact(0)).toBe(undefined);
});

test('a share that rounds to the whole is not said to be the whole', () => {
  expect(said({ summary: { oilHaze_kg: 0.000_01 } })).toContain('catches more than 99 % of the oil drops');
  expect(said({ summary: { oilHaze_kg: 0 } })).toContain('catches 100 % of the oil drops');
});

test('a distillate warmer than wanted is held against the limit that was set, to the digit that differs', () => {
  expect(read(find(judge({ summary: { condensatePeak_C: 46 } }), 'distillate-warm').sentence)).toBe(
    'The distillate comes out at up to 46 °C. Your limit is 35 °C.',
  );
  expect(read(find(judge({ summary: { condensatePeak_C: 35.2 } }), 'distillate-warm').sentence)).toBe(
    'The distillate comes out at up to 35.2 °C. Your limit is 35.0 °C.',
  );
});

test('a tub without running water is said to warm, not to use water', () => {
  expect(said({ summary: { coolantUsed_kg: 0, coolantPeakOut_C: 61 } })).toContain(
    'No tap water runs. The tub warms to 61 °C.',
  );
});

test('warnings come once each, the dangerous ones first, with what to do', () => {
  const events = [
    eventOf('neck-fast', 1500),
    eventOf('neck-fast', 1700),
    eventOf('pressure-high', 4000),
    eventOf('first-boil', 1320),
  ];
  const { lead, warnings } = judge({ events });
  expect([lead.kind, lead.advice]).toEqual(['pressure-high', adviceFor('pressure-high')]);
  expect(warnings.map(({ kind, time_s, advice }) => [kind, time_s, advice])).toEqual([
    ['neck-fast', 1500, adviceFor('neck-fast')],
  ]);
});

describe('the lead of a real run is its worst fact', () => {
  const gentle = exampleScenario('gentle-lavender');
  const leadOf = (change: (scenario: Scenario) => Scenario): SaidFact =>
    verdictMessages(verdictOf(simulate(change(gentle))), englishReader('metric')).lead;

  test.each<[string, (scenario: Scenario) => Scenario, RegExp]>([
    [
      'a coil too short to condense everything',
      (scenario) => ({ ...scenario, condenser: { ...scenario.condenser, length_m: 0.3 } }),
      /^The coil does not condense everything: steam escapes from the outlet from \d+ min\.$/,
    ],
    [
      'a coil that condenses everything and leaves the distillate hot',
      (scenario) => ({ ...scenario, condenser: { ...scenario.condenser, length_m: 0.7 } }),
      /^The distillate comes out at up to \d+ °C\. Your limit is 35 °C\.$/,
    ],
    [
      'a hob ring too small for the pot',
      (scenario) => ({ ...scenario, heat: { ...scenario.heat, ratedPower_W: 900 } }),
      /^Only \d+ % of the oil in the plant is collected: [\d.]+ mL\.$/,
    ],
    [
      'a coil of 20 m in a tub for a few turns',
      (scenario) => ({ ...scenario, condenser: { ...scenario.condenser, length_m: 20 } }),
      /^The coil does not fit the tub: it needs 1333 mm of water, and the tub has 360 mm\.$/,
    ],
    [
      'a tap closed at 45 min',
      (scenario) => ({
        ...scenario,
        cooling: {
          ...scenario.cooling,
          flow_kg_s: [
            { at_s: 0, value: 0.0055, shape: 'step' },
            { at_s: 2700, value: 0, shape: 'step' },
          ],
        },
      }),
      /^At 5\d min the water at the top of the tub reaches 60 °C\. It scalds\.$/,
    ],
    [
      'a tap turned down so far that the overflow scalds',
      (scenario) => ({
        ...scenario,
        cooling: { ...scenario.cooling, flow_kg_s: [{ at_s: 0, value: 0.003, shape: 'step' }] },
      }),
      /^The cooling water runs off at up to \d+ °C: it scalds\.$/,
    ],
    [
      'an overflow that scalds in minutes, where all else is well',
      (scenario) => scenario,
      /^The coil condenses everything in [\d.]+ m of its 1.5 m, but the cooling water runs off at up to 5\d °C: it scalds in minutes, a child sooner\.$/,
    ],
    [
      'a gas burner on a circuit too weak for an element of its power: no circuit carries it',
      (scenario) => ({
        ...scenario,
        heat: { ...scenario.heat, kind: 'gas-burner', ratedPower_W: 7200, supplyVolts_V: 230, supplyAmps_A: 16 },
      }),
      /^The coil does not condense everything: steam escapes/,
    ],
  ])('%s', (_what, change, words) => {
    const lead = leadOf(change);
    expect(read(lead.sentence)).toMatch(words);
    expect(lead.severity).not.toBe('good');
  });

  test('an overflow warmer than 50 °C is told behind a graver fault, once, and one below not at all', () => {
    const facts = (change: Partial<Scenario['condenser']>, flow = gentle.cooling.flow_kg_s) => {
      const { lead, paragraphs, warnings } = verdictOf(
        simulate({
          ...gentle,
          condenser: { ...gentle.condenser, ...change },
          cooling: { ...gentle.cooling, flow_kg_s: flow },
        }),
      );
      return [lead, ...paragraphs.flat(), ...warnings].filter(({ kind }) => /^overflow|^tub/.test(kind));
    };
    expect(facts({ length_m: 0.7 })).toMatchObject([{ kind: 'overflow-warm', values: { condenses: null } }]);
    expect(facts({}, [{ at_s: 0, value: 0.009, shape: 'step' }])).toEqual([]);
  });

  test('against a tap closed too soon no suggestion turns up the heat', () => {
    const closed = simulate({
      ...gentle,
      cooling: {
        ...gentle.cooling,
        flow_kg_s: [
          { at_s: 0, value: 0.0055, shape: 'step' },
          { at_s: 2700, value: 0, shape: 'step' },
        ],
      },
    });
    const wishes = suggestionsFor(closed, verdictOf(closed), { heat: 0.5, tap_kg_s: 0 }, null, 0);
    expect(wishes.length).toBeGreaterThan(3);
    for (const wish of wishes) if (wish.kind === 'heat') expect(wish.setting).toBeLessThan(0.5);
  });

  test('of oil every number is a volume, and of warm distillate nobody says that it loses oil', () => {
    const warm = simulate({ ...gentle, condenser: { ...gentle.condenser, length_m: 0.7 } });
    const words = [verdictMessages(verdictOf(warm), englishReader('metric'))].flatMap((verdict) =>
      all(verdict).map(({ sentence, advice }) => read(`${sentence} ${advice ?? ''}`)),
    );
    expect(words.filter((text) => /\d m?g of oil/.test(text))).toEqual([]);
    const ofWarm = words.filter((text) => /distillate comes out/.test(text));
    expect(ofWarm).toHaveLength(1);
    expect(ofWarm[0]).not.toMatch(/oil/);
  });

  test('all is said to be well only where the run warns of nothing', () => {
    for (const { id } of examples) {
      const result = simulate(exampleScenario(id));
      const { lead, warnings } = verdictOf(result);
      if (lead.severity === 'good') expect([id, warnings]).toEqual([id, []]);
      const worst = result.events.some(({ severity }) => severity === 'alarm');
      if (worst) expect([id, lead.severity]).toEqual([id, 'alarm']);
    }
  });
});

test('while a run plays nothing is said of what is still to come', () => {
  const result = simulate(exampleScenario('hard-boiled-lavender'));
  const told = (time_s: number) => soFarMessage(result, time_s, englishReader('metric'));
  const escape = result.events.find(({ kind }) => kind === 'vapour-escapes');
  if (!escape) throw new Error('steam escapes from this one');
  expect(read(told(60).sentence)).toBe('So far all is well. No oil has come over yet.');
  expect(read(told(escape.time_s - 1).sentence)).not.toMatch(/escapes/);
  expect(told(escape.time_s + 1)).toMatchObject({ severity: 'alarm' });
  expect(read(told(escape.time_s + 1).sentence)).toMatch(/^So far: .*escapes/);
  const well = simulate(exampleScenario('class-glass'));
  const { sentence } = soFarMessage(well, well.summary.end_s, englishReader('metric'));
  expect(read(sentence)).toMatch(/^So far all is well: [\d.]+ mL of oil in /);
});
