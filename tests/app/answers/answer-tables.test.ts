/** The tables of the answers' places: which rows and fields they have, and which value is the better one. */
import { describe, expect, test } from 'vitest';
import { englishReader, tubes, type CompareRow, type PriceList, type TubeSize } from '../../../sim/index.ts';
import { bestOf } from '../../../src/pages/compare/best-of.ts';
import { compareFields } from '../../../src/pages/compare/compare-fields.ts';
import {
  ALL_GOOD,
  answersSearch,
  bendRadius,
  BORES,
  boreWords,
  MATERIALS,
  standards,
  tubesInOrder,
  wanted,
  type TubeFilter,
} from '../../../src/pages/size/tube-rows.ts';
import { placeOf, PLACES } from '../../../src/state/places.ts';
import { digitsAndPower } from '../../../src/pages/working/working-words.ts';
import { scenarioWith } from '../bench/made-up-run.ts';

const METRIC = englishReader('metric');
const plain = (text: string): string => text.replace(/[\u202f\u00a0]/gu, ' ');

const size = (more: Partial<TubeSize> = {}): TubeSize => ({
  id: null,
  name: 'tube',
  material: 'copper',
  insideDiameter_m: 0.01,
  outsideDiameter_m: 0.012,
  verdict: 'holds',
  failure: null,
  computedAsPlain: false,
  typical_m: 1.1,
  length_m: 1.4,
  lengthWithMargin_m: 1.68,
  confidence: 0.9,
  ends: { inlet_m: 0.17, outlet_m: 0.2, cutting_m: 0.13 },
  toBuy_m: 2.18,
  peakVapour_kg_s: 0.0005,
  decidedBy: 'rivulet',
  tubes: 1,
  turns: 2,
  coilHeight_m: 0.1,
  fitsTub: true,
  bend: 'by-hand',
  bendOk: true,
  mass_kg: 0.5,
  peakDrop_Pa: 70,
  steamSpeed_m_s: 9,
  packs: { count: 1, length_m: 10, joined: false },
  warmestOutlet_K: 307,
  ...more,
});

describe('the table of tubes', () => {
  const filter = (more: Partial<TubeFilter>): TubeFilter => ({ ...ALL_GOOD, onlyGood: false, ...more });

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

  test('leaves out what does not work, does not fit or cannot be bent, once it is known', () => {
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

  test('finds tubes by outside or bore, by nominal size and by metal', () => {
    const found = (search: string) => tubes.filter((tube) => answersSearch(tube, search)).map(({ id }) => id);
    expect(found('12 mm')).toContain('en-1057-12x1');
    expect(found('10 mm')).toEqual(expect.arrayContaining(['en-1057-10x1', 'en-1057-12x1']));
    expect(found('10 mm')).not.toContain('en-1057-15x1');
    expect(found('10,0 mm copper').every((id) => tubes.find((tube) => tube.id === id)?.material === 'copper')).toBe(
      true,
    );
    expect(found('3/8').length).toBeGreaterThan(3);
    expect(found('3/8 in').every((id) => id.includes('3-8'))).toBe(true);
    expect(found('12 × 1')).toContain('en-1057-12x1');
    expect(found('')).toHaveLength(tubes.length);
    expect(found('no such tube')).toEqual([]);
  });

  test('knows every material once, and finds the tubes of one', () => {
    expect(new Set(MATERIALS.map(({ id }) => id))).toEqual(new Set(tubes.map(({ material }) => material)));
    const glass = tubes.filter((tube) => wanted({ tube, size: null }, filter({ material: 'borosilicate-glass' })));
    expect(glass.length).toBeGreaterThan(2);
    expect(glass.every(({ material }) => material === 'borosilicate-glass')).toBe(true);
  });

  test('finds what the reader has a price for', () => {
    const own: PriceList = { metals: { copper: 40 }, tubes: { 'en-1057-12x1': { soldBy: 'metre', price: 9 } } };
    const priced = tubes.filter((tube) => wanted({ tube, size: null }, filter({ onlyPriced: true }), own));
    expect(priced.map(({ id }) => id)).toEqual(['en-1057-12x1']);
  });

  test('tries first what the reader looks at, and every tube once', () => {
    const order = tubesInOrder(filter({ standard: 'EN 1057' }), size(), true, 100);
    expect(order).toHaveLength(tubes.length);
    const first = order.slice(0, 20).map(({ id }) => id);
    expect(first.every((id) => id.startsWith('en-1057'))).toBe(true);
    expect(tubesInOrder(filter({}), size({ id: 'en-1057-12x1' }), true, 100)[0]?.id).toBe('en-1057-12x1');
    expect(order.every(({ start_m }) => start_m > 0 && start_m < 100)).toBe(true);
    expect(tubesInOrder(filter({}), size({ length_m: null }), true, 100).every(({ start_m }) => start_m === 100)).toBe(
      true,
    );
  });

  test('shows the radius of the way in which a tube is bent', () => {
    const tube = tubes.find(({ minimumBendRadius_m: { byHand, withTool } }) => byHand !== null && withTool !== null);
    if (!tube) throw new Error('no tube with both radii');
    const { byHand, withTool } = tube.minimumBendRadius_m;
    const radius = (bend: TubeSize['bend']) => bendRadius({ tube, size: size({ bend }) });
    expect([radius('by-hand'), radius('with-bender'), radius('too-tight'), bendRadius({ tube, size: null })]).toEqual([
      byHand,
      withTool,
      withTool,
      byHand,
    ]);
  });
});

describe('stills compared', () => {
  test('mark the better one only where there is one', () => {
    const row = (better: CompareRow['better'], values: readonly (number | null)[]): CompareRow => ({
      id: 'oil',
      constituent: null,
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
          { at_s: 1560, value: 0.7 },
          { at_s: 0, after: 'first-drop', value: 0.5 },
          { at_s: 1200, after: 'first-drop', value: 0.4, shape: 'ramp' },
        ],
      },
    });
    expect(compareFields(scenario, METRIC).map(({ path, label }) => [path, plain(label)])).toEqual([
      ['heat.setting.0.value', 'Heat'],
      ['heat.setting.1.value', 'Heat from 26 min'],
      ['heat.setting.2.value', 'Heat from the first drop'],
      ['heat.setting.3.value', 'Heat by 20 min after the first drop'],
      ['cooling.flow_kg_s.0.value', 'Tap'],
      ['condenser.length_m', 'Coil'],
      ['charge.mass_kg', 'Charge'],
    ]);
    expect(compareFields(scenarioWith({ heat: { control: 'hold-rate' } }), METRIC)[0]?.path).toBe(
      'heat.targetRate_kg_s',
    );
  });
});

test('each place of the page has one address', () => {
  expect(PLACES.map((id) => placeOf(`#${id}`))).toEqual(PLACES);
  expect(placeOf('#reference/surface-tension')).toBe('reference');
  expect([placeOf(''), placeOf('#'), placeOf('#verdict'), placeOf('#size ')]).toEqual([null, null, null, null]);
  expect([placeOf('#boils'), placeOf('#my-runs')]).toEqual(['compare', 'run-book']);
});

test('numbers of a working are plain, grouped, or powers of ten', () => {
  const written = [0, 0.42476, 2257600, 5.4321e-5, -3.2e9, Number.NaN].map(digitsAndPower);
  expect(written.map(([digits, power]) => [plain(digits), power])).toEqual([
    ['0', null],
    ['0.42476', null],
    ['2 257 600', null],
    ['5.4321', '−5'],
    ['−3.2', '9'],
    ['–', null],
  ]);
});
