import { describe, expect, test } from 'vitest';
import {
  compareRuns,
  OIL_SHARES,
  type CompareRow,
  type FittedFactor,
  type Spent,
  type TubeSize,
} from '../../../sim/index.ts';
import { bestOf, compareWords, differenceWords } from '../../../src/pages/compare/compare-words.ts';
import { boilFields } from '../../../src/pages/compare/compare-fields.ts';
import {
  adviceWords,
  bandWords,
  headlineWords,
  lengthLead,
  planWords,
  spreadLead,
} from '../../../src/pages/run-length/length-words.ts';
import { factorMeaning, fitLead, uncertaintyWords } from '../../../src/pages/run-book/fit-words.ts';
import {
  bendRadius,
  coilWords,
  condensingWords,
  hardestWords,
  leastWaterWords,
  ownLengthWords,
  packsWords,
  sizeLead,
} from '../../../src/pages/size/size-words.ts';
import {
  BORES,
  boreWords,
  standards,
  tubesInOrder,
  wanted,
  type TubeFilter,
} from '../../../src/pages/size/tube-rows.ts';
import { placeOf, PLACES } from '../../../src/state/places.ts';
import { plainNumber } from '../../../src/pages/working/working-words.ts';
import type { LengthAnswer } from '../../../src/workers/analysis-tasks.ts';
import { simulate, tubes } from '../../../sim/index.ts';
import { scenarioWith } from '../bench/made-up-run.ts';

const plain = (text: string | null): string => (text ?? '').replace(/[\u202f\u00a0]/gu, ' ');

const spent = (time_s: number, oil_mL: number): Spent => ({
  time_s,
  oil_kg: oil_mL * 9e-4,
  oil_mL,
  distillate_L: 1,
  coolantUsed_L: 20,
  potWaterLeft_kg: 4,
  energy_J: 3.6e6,
  energyCost: 0.3,
  waterCost: 0.1,
  cost: 0.4,
});
const length = (times: readonly (number | null)[]): LengthAnswer => ({
  end_s: 9000,
  length: {
    obtainable_kg: 0.009,
    obtainable_mL: 10,
    stillToCome_kg: 0,
    ranOut: true,
    shares: OIL_SHARES.map((share, place) => ({
      share,
      at: times[place] === null || times[place] === undefined ? null : spent(times[place], 10 * share),
    })),
  },
  advice: {
    rule: { kind: 'share', share: 0.9 },
    stop: spent(6720, 9),
    minute: 112,
    share: 0.9,
    lastTenMinutes_mL: 0.4,
    costOfNext: 0.35,
    potLasts: true,
    potLow_s: null,
    coolingLasts: true,
    escapes_s: null,
    coolantThen_K: 317,
  },
});

describe('how long to run, in words', () => {
  test('says when half and nine tenths of the oil are in', () => {
    expect(plain(lengthLead(length([2700, 4000, 6720, 7500, 9000]), 'metric'))).toBe(
      'Half of the 10 mL of oil is in by 45 min, nine tenths by 1 h 52 min.',
    );
    expect(plain(lengthLead(length([2700, 4000, null, null, null]), 'metric'))).toContain(
      'carried on to 2 h 30 min, the run still does not bring nine tenths',
    );
    expect(lengthLead(length([null, null, null, null, null]), 'metric')).toContain('less than half');
    const none = length([null]);
    expect(lengthLead({ ...none, length: { ...none.length, obtainable_mL: 0 } }, 'metric')).toContain('No oil');
  });

  test('says where the run really ends, why, and what is in by then', () => {
    const ends = (more: Partial<Parameters<typeof planWords>[1]>) =>
      plain(
        planWords(length([2700]), { end_s: 7000, endReason: 'duration', oilCollected_mL: 9.97, ...more }, 'metric'),
      );
    expect(ends({})).toBe(
      'The run on the bench ends after 1 h 57 min, with 10 mL of it in the receiver, 99 % of what can be had.',
    );
    expect(ends({ endReason: 'pot-dry', end_s: 3300, oilCollected_mL: 8 })).toBe(
      'The run on the bench ends after 55 min, because the pot runs dry, with 8.0 mL of it in the receiver, 80 % of what can be had.',
    );
    expect(ends({ oilCollected_mL: 0 })).toContain('before any of it is in');
    const none = length([]);
    expect(
      planWords(
        { ...none, length: { ...none.length, obtainable_mL: 0 } },
        { end_s: 600, endReason: 'duration', oilCollected_mL: 0 },
        'metric',
      ),
    ).toBe('');
  });

  test('says when to stop, what going on would cost, and whether water lasts', () => {
    const { advice } = length([]);
    const said = adviceWords(advice, 'metric');
    expect(said.says.map(plain)).toEqual([
      'Stop at 1 h 52 min: 9.0 mL are in, 90 % of what can be had.',
      'The ten minutes before bring 0.40 mL.',
      'The next millilitre would cost 0.35 in energy and water.',
      'The pot’s water lasts until then.',
      'The cooling holds until then.',
    ]);
    expect(said.dangers).toEqual([]);
    const dry = adviceWords(
      { ...advice, stop: null, minute: null, potLasts: false, potLow_s: 5400, coolingLasts: false, escapes_s: 3000 },
      'metric',
    );
    expect(dry.says.join(' ')).toContain('never reached');
    expect(dry.dangers.map(plain).join(' ')).toMatch(
      /low at 1 h 30 min\..*vapour escapes from 50 min on\. Do not run it so/,
    );
  });

  test('says so where the full minute is not the one that the table rounds to, and keeps quiet of money that is none', () => {
    const { advice } = length([]);
    const { says } = adviceWords({ ...advice, stop: spent(6670, 9), minute: 112, costOfNext: 0 }, 'metric');
    expect(plain(says[0] ?? '')).toContain('Stop at 1 h 52 min, just after the rule is met:');
    expect(says.join(' ')).not.toContain('cost');
    expect(adviceWords({ ...advice, stop: null, minute: null, share: 0 }, 'metric').says[0]).toContain('No oil comes');
  });

  test('says a spread as a range, what nearly all runs share as one number, and a tube that is too short as too short', () => {
    const band = (p10: number, p50: number, p90: number) => ({ p10, p50, p90 });
    expect(plain(bandWords('oil_mL', band(19, 33, 51), 1.5, 'metric').range)).toBe('19 mL to 51 mL');
    expect(bandWords('coolantUsed_kg', band(43, 43, 43), 1.5, 'metric').range).toBe('in nearly all');
    expect(bandWords('coolantUsed_kg', band(0, 0, 0), 1.5, 'metric')).toEqual({ middle: 'none', range: null });
    expect(plain(bandWords('condensingLength_m', band(0.9, 1.5, 1.5), 1.5, 'metric').range)).toBe(
      '0.90 m to over 1.50 m',
    );
  });

  test('tells no time to nine tenths of a run that ends before', () => {
    const number = (p10: number, p90: number) => ({ p10, p50: p10, p90, counted: 20, of: 20 });
    const summary = {
      finished: 20,
      headline: { oil_mL: number(2, 7), t90_s: number(3600, 5400) },
    } as unknown as Parameters<typeof spreadLead>[0];
    expect(plain(spreadLead(summary, 'metric', true))).toBe(
      'In eight runs of ten this still gives 2.0 mL to 7.0 mL of oil, nine tenths of it by 1 h to 1 h 30 min.',
    );
    expect(plain(spreadLead(summary, 'metric', false))).toBe(
      'In eight runs of ten this still gives 2.0 mL to 7.0 mL of oil by its end.',
    );
  });

  test('has every headline number in the reader’s units, and a dash for what never came', () => {
    expect(plain(headlineWords('oil_mL', 10, 'metric'))).toBe('10 mL');
    expect(plain(headlineWords('oil_mL', 29.5735, 'us'))).toBe('30 mL');
    expect(plain(headlineWords('distillateWarmest_K', 303.15, 'us'))).toBe('86 °F');
    expect(headlineWords('t90_s', null, 'metric')).toBe('–');
    expect(headlineWords('cost', null, 'metric')).toBe('–');
  });
});

const size = (more: Partial<TubeSize> = {}): TubeSize => ({
  id: null,
  name: 'tube',
  material: 'copper',
  insideDiameter_m: 0.01,
  outsideDiameter_m: 0.012,
  verdict: 'holds',
  says: '',
  length_m: 1.4,
  lengthWithMargin_m: 1.68,
  tubes: 1,
  turns: 2,
  coilHeight_m: 0.1,
  fitsTub: true,
  bend: 'by hand',
  bendOk: true,
  mass_kg: 0.5,
  peakDrop_Pa: 70,
  price: 1.68,
  packs: { count: 1, length_m: 10, joined: false },
  warmestOutlet_K: 307,
  ...more,
});

describe('how much tube, in words', () => {
  const still = scenarioWith({ condenser: { length_m: 1.5 } });

  test('says the shortest that holds and what to take', () => {
    expect(plain(sizeLead(size(), still, 'metric'))).toBe(
      '1.40 m of this tube hold the whole run; take 1.68 m, 20 % more.',
    );
    expect(plain(sizeLead(size({ tubes: 7 }), still, 'metric'))).toContain('7 tubes of 1.40 m each');
    expect(plain(sizeLead(size(), still, 'us'))).toContain('4.6 ft');
  });

  test.each([
    ['pressure', /narrow/],
    ['coolant-warm', /cooling water itself/],
    ['never', /hundred metres/],
  ] as const)('says why no length helps: %s', (verdict, told) => {
    expect(sizeLead(size({ verdict, length_m: null, lengthWithMargin_m: null }), still, 'metric')).toMatch(told);
  });

  test('compares the reader’s own length: short, scant or ample', () => {
    const own = (length_m: number) =>
      plain(ownLengthWords(size(), scenarioWith({ condenser: { length_m } }), 'metric'));
    expect(own(1)).toBe('Your coil has 1.00 m: 0.40 m too short.');
    expect(own(1.4000000001)).toBe('Your coil has 1.40 m: just enough, with nothing to spare.');
    expect(own(1.5)).toBe('Your coil has 1.50 m: 0.10 m more than the least, but less than you want to spare.');
    expect(own(2)).toBe('Your coil has 2.00 m: 0.60 m more than the least.');
    expect(ownLengthWords(size({ verdict: 'no-vapour' }), still, 'metric')).toBe(null);
  });

  test('says what the length comes to as a coil, in metal and in money', () => {
    const priced = scenarioWith({ condenser: { tubePrice_m: 9 } });
    expect(plain(coilWords(size(), priced, 'metric'))).toBe(
      'As a coil that is 2.0 turns, 100 mm tall, which goes into the tub; 500 g of copper, 15.1 at your price.',
    );
    expect(coilWords(size({ fitsTub: false, bend: 'too tight' }), priced, 'metric')).toMatch(
      /too tall for the tub.*tighter than this tube bends/,
    );
    expect(
      plain(
        coilWords(
          size({ turns: null, coilHeight_m: null, tubes: 7 }),
          scenarioWith({ condenser: { tubePrice_m: 0 } }),
          'metric',
        ),
      ),
    ).toBe('That is 500 g of copper.');
    expect(coilWords(size({ length_m: null, lengthWithMargin_m: null, verdict: 'never' }), priced, 'metric')).toBe(
      null,
    );
  });

  test('tells the length that condenses from the one that also cools, as the bench tells it', () => {
    const summary = { condensingLengthPeak_m: 0.5, waterUncondensed_kg: 0 };
    expect(plain(condensingWords(still, summary, 'metric'))).toBe(
      '0.50 m of it condenses everything; the rest cools the distillate, which you want no warmer than 35 °C.',
    );
    expect(condensingWords(still, { ...summary, waterUncondensed_kg: 0.1 }, 'metric')).toBe(null);
    expect(condensingWords(still, { ...summary, condensingLengthPeak_m: 0 }, 'metric')).toBe(null);
    expect(condensingWords(still, { ...summary, condensingLengthPeak_m: 1.5 }, 'metric')).toBe(null);
  });

  test('shows the radius of the way in which a tube is bent', () => {
    const tube = tubes.find(({ minimumBendRadius_m: { byHand, withTool } }) => byHand !== null && withTool !== null);
    if (!tube) throw new Error('no tube with both radii');
    const { byHand, withTool } = tube.minimumBendRadius_m;
    const radius = (bend: TubeSize['bend']) => bendRadius({ tube, size: size({ bend }) });
    expect([radius('by hand'), radius('with a bender'), radius('too tight'), bendRadius({ tube, size: null })]).toEqual(
      [byHand, withTool, withTool, byHand],
    );
  });

  test('says what the one at hand can take', () => {
    const hardest = {
      setting: 0.5,
      power_W: 1100,
      potPower_W: 900,
      peakVapour_kg_s: 0.0004,
      boils: true,
      limitedBy: 'outlet-warm' as const,
      says: '',
    };
    expect(plain(hardestWords(hardest, still, 'metric'))).toBe(
      'This coil takes up to 1.1 kW throughout, 50 % of full heat; above that the distillate leaves too warm.',
    );
    expect(hardestWords({ ...hardest, setting: 1, limitedBy: null }, still, 'metric')).toContain('full heat');
    expect(hardestWords({ ...hardest, setting: null, power_W: null }, still, 'metric')).toContain('gentlest');
    const least = { flow_kg_s: 0.005, used_kg: 39, limitedBy: 'vapour-escapes' as const, says: '' };
    expect(plain(leastWaterWords(least, still, 'metric'))).toBe(
      'It wants at least 0.30 L/min of water, 39 L in all; with less, vapour leaves the outlet.',
    );
    expect(leastWaterWords({ ...least, flow_kg_s: 0 }, still, 'metric')).toContain('No water');
    expect(leastWaterWords({ ...least, flow_kg_s: null }, still, 'metric')).toContain('No flow is enough');
  });

  test('counts packs', () => {
    expect(plain(packsWords(size(), 'metric'))).toBe('1 × 10 m');
    expect(plain(packsWords(size({ packs: { count: 3, length_m: 6.1, joined: true } }), 'metric'))).toBe(
      '3 × 6.1 m, joined',
    );
    expect(packsWords(size({ packs: null }), 'metric')).toBe('–');
  });
});

describe('the table of tubes', () => {
  const filter = (more: Partial<TubeFilter>): TubeFilter => ({ standard: '', bore: 'any', onlyGood: false, ...more });

  test('knows every standard once, and a bore range for every tube', () => {
    expect(new Set(standards).size).toBe(standards.length);
    for (const tube of tubes)
      expect(BORES.slice(1).filter(({ id }) => wanted({ tube, size: null }, filter({ bore: id })))).toHaveLength(1);
  });

  test('names bores in the reader’s units', () => {
    expect(BORES.map(({ from_m, to_m }) => plain(boreWords(from_m, to_m, 'metric')))).toEqual([
      'any bore',
      'up to 8 mm',
      '8 mm to 14 mm',
      '14 mm to 20 mm',
      'over 20 mm',
    ]);
    expect(plain(boreWords(0, 0.008, 'us'))).toBe('up to 0.31 in');
  });

  test('leaves out what does not hold, does not go in or cannot be bent, once it is known', () => {
    const [tube] = tubes;
    if (!tube) throw new Error('no tubes');
    const shown = (found: Partial<TubeSize>) => wanted({ tube, size: size(found) }, filter({ onlyGood: true }));
    expect([
      shown({}),
      shown({ length_m: null }),
      shown({ fitsTub: false }),
      shown({ bendOk: false }),
      shown({ fitsTub: null, bendOk: null }),
    ]).toEqual([true, false, false, false, true]);
    expect(wanted({ tube, size: null }, filter({ onlyGood: true }))).toBe(true);
  });

  test('tries first what the reader looks at, and every tube once', () => {
    const order = tubesInOrder(filter({ standard: 'EN 1057' }), size(), true, 100);
    expect(order).toHaveLength(tubes.length);
    const first = order.slice(0, 20).map(({ id }) => id);
    expect(first.every((id) => id.startsWith('en-1057'))).toBe(true);
    expect(order.every(({ start_m }) => start_m > 0 && start_m < 100)).toBe(true);
    expect(tubesInOrder(filter({}), size({ length_m: null }), true, 100).every(({ start_m }) => start_m === 100)).toBe(
      true,
    );
  });
});

describe('boils compared, in words', () => {
  const base = {
    pot: { water_kg: 1.2, waterTemperature_K: 368 },
    charge: { mass_kg: 0.4 },
    run: { duration_s: 1500 },
    advanced: { step_s: 4, segments: 12 },
  };
  const boil = (name: string, value: number) =>
    simulate(scenarioWith({ ...base, name, heat: { setting: [{ at_s: 0, value }] } }));

  test('have no row that cannot be said', () => {
    const { rows } = compareRuns([boil('gentle', 0.6), boil('hard', 1)]);
    for (const units of ['metric', 'us'] as const) {
      for (const row of rows) {
        const said = [
          ...row.values.map((value) => compareWords(row, value, units)),
          ...row.differences.map((value) => compareWords(row, value, units, { signed: true })),
        ];
        for (const words of said) expect(words).toMatch(/\d|–/u);
        expect(said.join(' ')).not.toContain('NaN');
      }
    }
  });

  test('tell no difference that rounding would hide', () => {
    const row = (first: number, second: number): CompareRow => ({
      id: 'distillate',
      title: '',
      unit: 'kg',
      better: 'neither',
      values: [first, second],
      differences: [0, second - first],
    });
    expect(differenceWords(row(7.7, 7.70047), 1, 'metric')).toBe('the same');
    expect(plain(differenceWords(row(7.7, 6.7), 1, 'metric'))).toBe('−1.0 L');
    expect(plain(compareWords({ id: 'oilPerSteam', unit: 'mL/kg' }, 10, 'us'))).toBe('37.85 mL/gal');
    expect(differenceWords({ ...row(1, 1), values: [null, 1], differences: [null, null] }, 1, 'metric')).toBe('–');
  });

  test('mark the better one only where there is one', () => {
    const row = (better: CompareRow['better'], values: readonly (number | null)[]): CompareRow => ({
      id: 'oil',
      title: '',
      unit: 'mL',
      better,
      values,
      differences: [],
    });
    expect(bestOf(row('more', [1, 2]))).toBe(1);
    expect(bestOf(row('less', [1, 2]))).toBe(0);
    expect(bestOf(row('neither', [1, 2]))).toBe(null);
    expect(bestOf(row('more', [2, 2.001]))).toBe(null);
    expect(bestOf(row('more', [null, 2]))).toBe(null);
  });

  test('offer heat, tap, tube and charge, each knot of a schedule under its time', () => {
    const scenario = scenarioWith({
      heat: {
        setting: [
          { at_s: 0, value: 0.9 },
          { at_s: 1560, value: 0.5 },
        ],
      },
    });
    expect(boilFields(scenario).map(({ path, label }) => [path, plain(label)])).toEqual([
      ['heat.setting.0.value', 'Heat'],
      ['heat.setting.1.value', 'Heat from 26 min'],
      ['cooling.flow_kg_s.0.value', 'Tap'],
      ['condenser.length_m', 'Coil'],
      ['charge.mass_kg', 'Charge'],
    ]);
    expect(boilFields(scenarioWith({ heat: { control: 'hold-rate' } }))[0]?.path).toBe('heat.targetRate_kg_s');
  });
});

describe('a fit, in words', () => {
  const factor = (more: Partial<FittedFactor>): FittedFactor => ({
    name: 'oilContent',
    title: 'Oil content factor',
    start: 1,
    value: 0.8,
    low: 0.7,
    high: 0.9,
    held: false,
    ...more,
  });
  const fit = (factors: readonly FittedFactor[], reducedChiSquare = 1) =>
    fitLead({
      ok: true,
      factors,
      residuals: [],
      chiSquare: 1,
      degreesOfFreedom: 5,
      reducedChiSquare,
      correlation: [],
      alike: [],
      converged: true,
      runs: 9,
      notes: [],
    });

  test('says what the readings settle and what they cannot tell', () => {
    expect(fit([factor({})])).toContain('the oil content factor is 0.80');
    expect(fit([factor({}), factor({ title: 'Release factor', low: 0.2, high: 4 })])).toContain(
      'cannot tell the release factor',
    );
    expect(fit([factor({ held: true })])).toContain('one cannot tell the oil content factor');
    expect(fit([factor({})], 9)).toContain('still misses');
  });

  test('says how sure readings are taken to be, by the numbers that weigh them', () => {
    const said = uncertaintyWords('metric').map(plain);
    expect(said).toHaveLength(5);
    expect(said[0]).toMatch(/^Oil by volume: 0\.2\d? mL and 3 % \(judgement: /);
    expect(said[2]).toMatch(/^Outlet: 2\.0 °C \(/);
    expect(uncertaintyWords('us').map(plain)[2]).toMatch(/^Outlet: 3\.6 °F \(/);
  });

  test('says what a factor means in the shed', () => {
    expect(plain(factorMeaning(factor({})))).toBe('80 % of the oil that was expected in the plant');
    expect(plain(factorMeaning(factor({ value: 1.5 })))).toContain('1.50 times');
    expect(factorMeaning(factor({ value: 1.01 }))).toContain('much as');
    expect(factorMeaning(factor({ held: true }))).toContain('do not show');
  });
});

test('each place of the page has one address', () => {
  expect(PLACES.map(({ id }) => placeOf(`#${id}`))).toEqual(PLACES.map(({ id }) => id));
  expect([placeOf(''), placeOf('#'), placeOf('#verdict'), placeOf('#size ')]).toEqual([null, null, null, null]);
});

test('numbers of a working are plain, grouped, or powers of ten', () => {
  expect([0, 0.42476, 2257600, 5.4321e-5, -3.2e9, Number.NaN].map((value) => plain(plainNumber(value)))).toEqual([
    '0',
    '0.42476',
    '2 257 600',
    '5.4321 × 10⁻⁵',
    '−3.2 × 10⁹',
    '–',
  ]);
});
