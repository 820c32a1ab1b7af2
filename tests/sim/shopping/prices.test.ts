/** What tubes cost, by default and at the reader's own prices, and price lists as files. */
import { describe, expect, test } from 'vitest';
import {
  DEFAULT_METAL_PRICES,
  englishReader,
  exampleScenario,
  findTube,
  NO_PRICES,
  priceListCsv,
  priceListMessages,
  readPriceList,
  sizeTube,
  tubeCost,
  type PriceList,
} from '../../../sim/index.ts';

const whole = exampleScenario('gentle-lavender');
const still = { ...whole, run: { ...whole.run, duration_s: 3600 } };
const thin = sizeTube(still, findTube('en-1057-12x1'));
const thick = sizeTube(still, findTube('en-1057-18x1'));

describe('the cost of a tube', () => {
  test('goes by the weight of its metal where nobody gave a price, in whole pieces', () => {
    const cost = tubeCost(thin, NO_PRICES);
    // 10 m of 12 × 1 mm copper weigh 3.08 kg (EN 1057).
    expect(cost).toMatchObject({ basis: 'default', packs: { count: 1, length_m: 10 }, bought_m: 10 });
    expect(cost?.amount).toBeCloseTo((DEFAULT_METAL_PRICES['copper'] ?? 0) * 3.08, 0);
    expect(cost?.left_m).toBeCloseTo(10 - (thin.toBuy_m ?? 0), 12);
    expect(tubeCost(thick, NO_PRICES)?.amount).toBeGreaterThan(2 * (cost?.amount ?? Infinity));
  });

  test('goes by the reader’s price by metal, by the metre or by the piece', () => {
    const at = (list: Partial<PriceList>) => tubeCost(thin, { ...NO_PRICES, ...list });
    expect(at({ metals: { copper: 60 } })?.amount).toBeCloseTo(2 * (tubeCost(thin, NO_PRICES)?.amount ?? 0), 9);
    expect(at({ metals: { copper: 60 } })?.basis).toBe('own');
    expect(at({ tubes: { 'en-1057-12x1': { soldBy: 'metre', price: 6 } } })).toMatchObject({
      amount: 6 * (thin.toBuy_m ?? 0),
      basis: 'own',
      packs: null,
      left_m: 0,
    });
    expect(at({ tubes: { 'en-1057-12x1': { soldBy: 'piece', price: 9, length_m: 0.5 } } })?.amount).toBe(
      9 * Math.ceil((thin.toBuy_m ?? 0) / 0.5),
    );
  });

  test('takes the price that the scenario gives its own tube, unless it is the default there', () => {
    const priced = (tubePrice_m: number) => ({ condenser: { ...still.condenser, tubePrice_m } });
    expect(tubeCost(thin, NO_PRICES, priced(4))?.amount).toBeCloseTo(4 * (thin.toBuy_m ?? 0), 12);
    expect(tubeCost(thin, NO_PRICES, priced(9))?.basis).toBe('default');
  });

  test('is none where no length is enough', () => {
    expect(tubeCost(sizeTube(still, findTube('glass-10x1')), NO_PRICES)).toBe(null);
  });
});

describe('a price list', () => {
  const list: PriceList = {
    metals: { copper: 28.5 },
    tubes: {
      'en-1057-12x1': { soldBy: 'metre', price: 6.2 },
      'astm-b280-3-8': { soldBy: 'piece', price: 70, length_m: 15.24 },
    },
  };

  test('comes back from its file as it was', () => {
    expect(readPriceList(priceListCsv(list))).toEqual({ list, problems: [] });
    expect(readPriceList(`\uFEFF${priceListCsv(list)}`).problems).toEqual([]);
  });

  test('says line by line what it cannot take, and takes the rest', () => {
    const read = readPriceList(
      'Price,Tube,Sold by,Length (m)\n6,en-1057-12x1,metre,\n6,tin-can,metre,\n-1,en-1057-10x1,metre,\n5,en-1057-15x1,piece,\n5,copper,metre,\n',
    );
    expect(read.list.tubes).toEqual({ 'en-1057-12x1': { soldBy: 'metre', price: 6 } });
    expect(read.problems.map(({ line, kind }) => [line, kind])).toEqual([
      [3, 'unknown-tube'],
      [4, 'bad-price'],
      [5, 'bad-length'],
      [6, 'bad-unit'],
    ]);
    expect(readPriceList('a,b\n').problems).toEqual([
      { line: 1, kind: 'no-headings', missing: ['tube', 'price', 'sold by'] },
    ]);
    const said = read.problems.map((problem) => priceListMessages(englishReader('metric')).problem(problem));
    expect(said[0]).toBe('Line 3: “tin-can” is neither a tube nor a material of the library.');
    expect(said.every((sentence) => /^Line \d: .*\.$/u.test(sentence))).toBe(true);
  });
});
