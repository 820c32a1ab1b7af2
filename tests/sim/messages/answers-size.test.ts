/** The size of a condenser in words, for both systems of units. */
import { describe, expect, test } from 'vitest';
import {
  englishReader,
  exampleScenario,
  sizingMessages,
  wholeMessage,
  type CondenserFailure,
  type HardestBoil,
  type LeastWater,
  type Scenario,
  type TubeCost,
  type TubeSize,
} from '../../../sim/index.ts';
import { plain } from './plain.ts';

const metric = sizingMessages(englishReader('metric'));
const us = sizingMessages(englishReader('us'));
const base = exampleScenario('gentle-lavender');
const stillWith = (condenser: Partial<Scenario['condenser']>): Scenario => ({
  ...base,
  condenser: { ...base.condenser, length_m: 1.5, tubePrice_m: 0, ...condenser },
});
const still = stillWith({});

const failure = (more: Partial<CondenserFailure> = {}): CondenserFailure => ({
  kind: 'outlet-warm',
  time_s: 5400,
  coolant_K: 307.45,
  dew_K: 372,
  ...more,
});
const size = (more: Partial<TubeSize> = {}): TubeSize => ({
  id: null,
  name: '12 × 1 mm copper',
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
const none = (more: Partial<TubeSize>): TubeSize =>
  size({ typical_m: null, length_m: null, lengthWithMargin_m: null, decidedBy: null, ...more });
const told = (found: TubeSize, messages = metric) => plain(wholeMessage(messages.size(found, still)));

describe('how much tube', () => {
  test('names what nine runs in ten need, what the plan takes, and what to buy with a margin', () => {
    expect(told(size())).toBe(
      'For up to 3.2 kW (1.8 kg/h of steam) into a 37 L tub at 15 °C with 0.33 L/min of tap water: 1.40 m of 12 × 1 mm copper is enough in nine runs of ten; 1.68 m with your margin of 20 %, 2.18 m with ends and cutting.',
    );
    expect(told(size(), us)).toBe(
      'For up to 3.2 kW (4.0 lb/h of steam) into a 9.7 gal tub at 59 °F with 0.087 gal/min of tap water: 4 ft 7 in of 12 × 1 mm copper is enough in nine runs of ten; 5 ft 6 in with your margin of 20 %, 7 ft 2 in with ends and cutting.',
    );
    expect(told(size({ lengthWithMargin_m: 1.4, toBuy_m: 1.87, confidence: 0.8 }))).toMatch(
      /: 1\.40 m of 12 × 1 mm copper is enough in 80 % of runs; 1\.87 m with ends and cutting\.$/,
    );
    expect(told(size({ name: '3/8 in nominal, type L', outsideDiameter_m: 0.0127 }))).toContain(
      '1.40 m of 3/8 in nominal, type L (copper, 12.70 mm outside) is enough',
    );
    expect(told(size({ tubes: 7, lengthWithMargin_m: 1.4, toBuy_m: 1.5 }))).toMatch(
      /7 tubes, each 1\.40 m of 12 × 1 mm copper, are enough in nine runs of ten; 10\.50 m in all with ends and cutting\.$/,
    );
    expect(told(size({ computedAsPlain: true }))).toContain('computed as a plain tube');
  });

  test.each<[TubeSize['verdict'], Partial<CondenserFailure>, string, string]>([
    [
      'pressure',
      { kind: 'pressure' },
      'This tube is too narrow for this boil: it holds back more than 5.0 kPa at 1 h 30 min. A lid can lift or spray. Use a wider tube, several tubes side by side, or less heat.',
      '20 in H₂O',
    ],
    [
      'coolant-boils',
      {},
      'The cooling water boils at 1 h 30 min, so no length is enough. Use more or colder water, or less heat.',
      'boils at 1 h 30 min',
    ],
    [
      'coolant-warm',
      {},
      'The cooling water round the outlet reaches 34 °C at 1 h 30 min: too warm to keep the distillate below 35 °C. No length is enough. Use more or colder water, or less heat.',
      '94 °F at 1 h 30 min: too warm to keep the distillate below 95 °F',
    ],
    [
      'never',
      { kind: 'vapour-escapes' },
      'Even 100 m does not condense everything at 1 h 30 min. Use more or colder water, or less heat.',
      'Even 328 ft',
    ],
    [
      'never',
      {},
      'Even 100 m does not keep the distillate below 35 °C at 1 h 30 min. Use more or colder water, or less heat.',
      '95 °F',
    ],
    [
      'calculation-failed',
      { kind: 'calculation' },
      'The calculation failed at 1 h 30 min, so no length can be given. Undo the last change.',
      'calculation failed',
    ],
  ])('tells why no length is enough: %s', (verdict, more, inMetric, inUS) => {
    const found = none({ verdict, failure: failure(more) });
    expect(told(found)).toBe(inMetric);
    expect(told(found, us)).toContain(inUS);
    expect(told(found, us)).not.toMatch(/°C|\bm\b|kPa/);
  });

  test('tells a plan that works from runs that no length helps', () => {
    expect(told(none({ verdict: 'coolant-boils', typical_m: 1.1, failure: failure() }))).toBe(
      'As planned 1.10 m is enough. But in more than one run of ten no length is: The cooling water boils at 1 h 30 min, so no length is enough. Use more or colder water, or less heat.',
    );
  });

  test('names heat and cooling water, whatever they are', () => {
    const told = (still: Scenario, messages = metric) => plain(messages.conditions(size(), still));
    const full = { ...base, heat: { ...base.heat, setting: [{ at_s: 0, value: 1, shape: 'step' as const }] } };
    expect(told(full)).toMatch(/^3\.5 kW full out \(1\.8 kg\/h of steam\) into a 37 L tub/);
    expect(told({ ...full, heat: { ...full.heat, control: 'hold-rate' } })).toMatch(/^24 mL\/min of distillate/);
    const dry = { ...full, cooling: { ...full.cooling, flow_kg_s: [{ at_s: 0, value: 0, shape: 'step' as const }] } };
    expect(told(dry)).toMatch(/tub at 15 °C without running water$/);
    const jacket = stillWith({ kind: 'jacketed-tube' });
    expect(told(jacket)).toMatch(/with 0\.33 L\/min of water at 15 °C$/);
    expect(told({ ...jacket, cooling: { ...jacket.cooling, jacketSupply: 'barrel' } })).toMatch(
      /with a 37 L barrel at/,
    );
  });

  test('tells what full heat needs, and what the length hangs on', () => {
    const full = (more: Partial<TubeSize>, messages = metric) =>
      plain(messages.fullHeat(size({ length_m: 2.3, ...more }), still) ?? '');
    expect(full({})).toBe('At full heat, nine runs of ten need 2.30 m.');
    expect(full({}, us)).toBe('At full heat, nine runs of ten need 7 ft 7 in.');
    expect(full({ verdict: 'pressure', length_m: null, failure: failure({ kind: 'pressure' }) })).toMatch(
      /^At full heat: This tube is too narrow/,
    );
    expect(full({ verdict: 'no-vapour' })).toBe('');
    expect(metric.fullHeat(null, still)).toBe(null);
    expect(metric.decides(size())).toBe('Of what is not known for sure, this counts most: cooling of the condensate.');
    expect(metric.decides(none({}))).toBe(null);
  });

  test('tells why a tube cannot be used at all', () => {
    expect(told(none({ verdict: 'cannot-be-coiled' }))).toContain('hard, straight lengths');
    expect(told(none({ verdict: 'too-thick-for-turns' }))).toBe(
      'This tube is too thick to be wound into turns 250 mm across.',
    );
    expect(told(none({ verdict: 'too-thick-for-jacket' }), us)).toMatch(/too thick for a jacket of [\d.]+ in\.$/);
    expect(told(size({ verdict: 'no-vapour' }))).toBe(
      'Almost nothing comes over in this run, so any length is enough.',
    );
  });

  test('remarks only what a row of numbers cannot show', () => {
    expect(metric.remark(size(), still)).toBe('');
    expect(metric.remark(size({ computedAsPlain: true }), still)).toContain('safe side');
    expect(metric.remark(none({ verdict: 'cannot-be-coiled' }), still)).toContain('hard');
  });

  test('compares the reader’s own length: short, scant or ample', () => {
    const own = (length_m: number, messages = metric) => plain(messages.ownLength(size(), stillWith({ length_m })));
    expect(own(1)).toBe('Your coil has 1.00 m: 0.40 m too short.');
    expect(own(1.2)).toBe(
      'Your coil has 1.20 m: enough in a typical run, but 0.20 m short of what nine runs of ten need.',
    );
    expect(own(1.4000000001)).toBe('Your coil has 1.40 m: just enough, with no reserve.');
    expect(own(1.5)).toBe('Your coil has 1.50 m: 0.10 m in reserve, less than you asked for.');
    expect(own(2)).toBe('Your coil has 2.00 m: 0.60 m in reserve.');
    expect(own(2, us)).toBe('Your coil has 6 ft 7 in: 2 ft in reserve.');
    expect(metric.ownLength(size({ verdict: 'no-vapour' }), still)).toBe(null);
  });

  test('tells what the length comes to as a coil, in metal and in money', () => {
    const cost: TubeCost = {
      amount: 92.4,
      basis: 'default',
      packs: { count: 1, length_m: 10, joined: false },
      bought_m: 10,
      left_m: 7.82,
    };
    expect(plain(metric.coil(size(), still, cost))).toBe(
      'As a coil it has 2.0 turns and is 100 mm tall. It fits the tub. That is 500 g of copper. Bought as 1 × 10 m (7.82 m is left over), it costs 92.40 at the default price of its metal.',
    );
    const cut: TubeCost = { amount: 15.1, basis: 'own', packs: null, bought_m: 2.18, left_m: 0 };
    expect(plain(us.coil(size(), still, cut))).toMatch(
      /is 3\.9\d? in tall.* That is 1\.1 lb of copper\. Cut to length, it costs 15\.10 at your price\.$/,
    );
    const tall = size({ fitsTub: false, lengthWithMargin_m: 6, bend: 'too-tight' });
    expect(plain(metric.coil(tall, still, null))).toMatch(
      /does not fit the tub\. Wound [^]* it fits\. These turns are too tight for this tube: it would kink/,
    );
    expect(plain(metric.coil(size({ turns: null, coilHeight_m: null }), still, null))).toBe('That is 500 g of copper.');
    expect(metric.coil(none({ verdict: 'never' }), still, cost)).toBe(null);
  });

  test('tells the length that condenses from the one that also cools', () => {
    const summary = { condensingLengthPeak_m: 0.5, waterUncondensed_kg: 0 };
    expect(plain(metric.condensing(still, summary))).toBe(
      'The first 0.50 m condenses everything; the rest cools the distillate.',
    );
    expect(plain(us.condensing(stillWith({ kind: 'bundle' }), summary))).toContain('The first 1 ft 8 in of each tube');
    expect(metric.condensing(still, { ...summary, waterUncondensed_kg: 0.1 })).toBe(null);
    expect(metric.condensing(still, { ...summary, condensingLengthPeak_m: 0 })).toBe(null);
    expect(metric.condensing(still, { ...summary, condensingLengthPeak_m: 1.5 })).toBe(null);
  });

  test('counts packs, names bends and tubes', () => {
    expect(plain(metric.packs(size()))).toBe('1 × 10 m');
    expect(plain(metric.packs(size({ packs: { count: 3, length_m: 6.1, joined: true } })))).toBe('3 × 6.1 m, joined');
    expect(plain(us.packs(size({ packs: { count: 1, length_m: 15.24, joined: false } })))).toBe('1 × 50 ft');
    expect(metric.packs(size({ packs: null }))).toBe('–');
    expect(metric.bend('with-bender')).toBe('with a bender');
    expect(plain(metric.tubeName(size({ name: null })))).toBe('12.0 mm tube');
    expect(plain(metric.verdict('never'))).toBe('over 100 m');
    expect(plain(us.verdict('never'))).toBe('over 328 ft');
  });
});

describe('the hardest boil', () => {
  const found = (more: Partial<HardestBoil>): HardestBoil => ({
    kind: 'up-to',
    setting: 0.5,
    power_W: 1100,
    potPower_W: 900,
    peakVapour_kg_s: 0.0004,
    limitedBy: failure(),
    ...more,
  });
  const said = (more: Partial<HardestBoil>, messages = metric) =>
    plain(wholeMessage(messages.hardestBoil(found(more), still)));

  test('is told with what fails above it, and when', () => {
    expect(said({})).toBe(
      'Your coil can handle up to 1.1 kW for the whole run, 50 % of full heat. Above that, the distillate gets warmer than 35 °C at 1 h 30 min.',
    );
    expect(said({}, us)).toContain('warmer than 95 °F');
    expect(said({ kind: 'full-heat', setting: 1, limitedBy: null })).toBe(
      'Your coil can handle full heat, 3.5 kW, for the whole run.',
    );
    expect(said({ kind: 'none', setting: null, power_W: null, limitedBy: failure({ kind: 'vapour-escapes' }) })).toBe(
      'Your coil cannot handle even the gentlest boil: steam leaves the outlet at 1 h 30 min. Use a longer tube, or more or colder water.',
    );
    expect(said({ kind: 'no-boil', limitedBy: failure({ kind: 'pressure' }) }, us)).toMatch(
      /^Up to 1\.1 kW almost nothing comes over in this run\. Above that, .* holds back more than 20 in H₂O/,
    );
    expect(said({ kind: 'no-vapour', limitedBy: null })).toBe(
      'Almost nothing comes over in this run, even at full heat.',
    );
  });
});

describe('the least water', () => {
  const found = (more: Partial<LeastWater>): LeastWater => ({
    kind: 'at-least',
    flow_kg_s: 0.005,
    used_kg: 39,
    limitedBy: failure({ kind: 'vapour-escapes' }),
    ...more,
  });
  const said = (more: Partial<LeastWater>, of: Scenario = still, messages = metric) =>
    plain(wholeMessage(messages.leastWater(found(more), of)));

  test('is told with what fails below it', () => {
    expect(said({})).toBe(
      'It needs at least 0.30 L/min of water, 39 L in all. With less, steam leaves the outlet at 1 h 30 min.',
    );
    expect(said({}, still, us)).toMatch(/^It needs at least 0\.07\d gal\/min of water, 10 gal in all\./);
    expect(said({ used_kg: 0 })).toContain('of water, pumped round.');
    expect(said({ kind: 'none-needed', flow_kg_s: 0 })).toBe('The tub is big enough: no tap water needed.');
    expect(said({ kind: 'none-needed', flow_kg_s: 0 }, stillWith({ kind: 'jacketed-tube' }))).toBe(
      'No cooling water needs to flow.',
    );
    expect(said({ kind: 'no-vapour', flow_kg_s: 0, limitedBy: null })).toMatch(/^Almost nothing comes over/);
    expect(said({ kind: 'none-enough', flow_kg_s: null, used_kg: null })).toBe(
      'No flow is enough: even at 120 L/min, steam leaves the outlet at 1 h 30 min, with cooling water at 34 °C. Use a longer tube or less heat.',
    );
    expect(said({ kind: 'none-enough', flow_kg_s: null, used_kg: null }, still, us)).not.toMatch(/L\/min|°C/);
  });
});
