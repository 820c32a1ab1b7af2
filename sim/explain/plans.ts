/** Working of a plan of plant, batches, days and garden, of a plant's own figures, and of what is in the last bottle. */
import { tableLiquidDensity, tableLiquidViscosity } from '../fluids/water-table.ts';
import type { Botanical, ChargeState } from '../library/index.ts';
import { CARRIER } from '../products/blend.ts';
import { planBottles } from '../products/bottles.ts';
import { oilDensity, type OilShare } from '../products/oil.ts';
import {
  YIELD_DOUBT,
  type BatchCosts,
  type CostAnswer,
  type QuantityAnswer,
  type QuantityQuestion,
} from '../products/quantities.ts';
import { yieldOf } from '../products/plan-question.ts';
import { HAZE, hazeTime } from '../products/haze.ts';
import { entryStep, sheetOf, STEP, writtenStep, type WorkingSheet } from './sheet.ts';

const PAGE = 'chosen on the page';
const PLAN = 'the plan on the page';

/** Oil of a kilogram of plant as charged. */
export function yieldSheet(plant: Botanical, state: ChargeState): WorkingSheet {
  const data = plant.states[state];
  const found = yieldOf(plant, state);
  if (!data || !found) throw new RangeError(`${plant.id} has no data for the state ${state}`);
  return sheetOf(
    ['yield', 'Oil of a kilogram as charged', null],
    'With the usual content and moisture. The range on the page goes from the least to the most oil in the dry plant.',
    'the plant’s page',
    writtenStep(
      'Oil of a kilogram',
      'y = \\frac{w\\,(1-u)}{\\rho}',
      [found.typical, 'm³/kg'],
      ['w', data.oilContent.value.typical, 'kg/kg', 'oil in the dry plant', data.oilContent.source],
      ['u', data.moisture.value.typical, '1', 'share of water', data.moisture.source],
      ['\\rho', plant.oilDensity_kg_m3.value, 'kg/m³', 'density of the oil', plant.oilDensity_kg_m3.source],
    ),
  );
}

/** Plant for wanted oil, or oil from a harvest. */
export function amountSheet(from: 'oil' | 'harvest', question: QuantityQuestion, answer: QuantityAnswer): WorkingSheet {
  const y = question.yield_m3_kg.typical;
  const l = question.loss;
  const rows = [
    ['y', y, 'm³/kg', 'oil from a kilogram as charged', 'the plant’s page'],
    ['l', l, '1', 'share lost in settling and filling', PAGE],
  ] as const;
  return sheetOf(
    from === 'oil' ? ['plant-amount', 'Plant', null] : ['oil-amount', 'Oil', null],
    'With the usual yield; the range on the page goes from the low to the high one.',
    PLAN,
    from === 'oil'
      ? writtenStep(
          'Plant',
          'm = \\frac{V}{y\\,(1-l)}',
          [answer.plant_kg.typical, 'kg'],
          ['V', answer.oil_m3.typical, 'm³', 'oil', 'wanted'],
          ...rows,
        )
      : writtenStep(
          'Oil',
          'V = m\\,y\\,(1-l)',
          [answer.oil_m3.typical, 'm³'],
          ['m', answer.plant_kg.typical, 'kg', 'plant', 'what there is'],
          ...rows,
        ),
  );
}

const chargeStep = (question: QuantityQuestion, answer: QuantityAnswer) =>
  writtenStep(
    'Plant that goes in at once',
    'm_b = \\rho\\,V_c\\,f',
    [answer.perBatch_kg, 'kg'],
    ['\\rho', question.packing_kg_m3, 'kg/m³', 'packing', 'the plant’s page'],
    ['V_c', question.chamber_m3, 'm³', 'room for the charge', 'still on the bench'],
    ['f', question.fill, '1', 'share of it that is filled', PAGE],
  );

/** Plant that goes in at once. */
export const chargeSheet = (question: QuantityQuestion, answer: QuantityAnswer): WorkingSheet =>
  sheetOf(
    ['charge', 'Plant that goes in at once', null],
    'Pressed down or shaken in loosely, a plant packs differently: weigh what your still takes.',
    PLAN,
    chargeStep(question, answer),
  );

/** Batches of the plant. */
export const plantSheet = (question: QuantityQuestion, answer: QuantityAnswer): WorkingSheet =>
  sheetOf(
    ['plant', 'Batches', null],
    'With the usual yield; the range on the page goes from the low to the high one. A rest counts as a batch.',
    PLAN,
    chargeStep(question, answer),
    writtenStep(
      'Batches',
      'n = \\lceil m/m_b \\rceil',
      [answer.batches.typical, '1', 'rounded up', 'n'],
      ['m', answer.plant_kg.typical, 'kg', 'plant', 'its own working'],
      ['m_b', answer.perBatch_kg, 'kg', 'in one batch', STEP],
    ),
  );

/** Days for the batches. */
export const daysSheet = (question: QuantityQuestion, answer: QuantityAnswer): WorkingSheet =>
  sheetOf(
    ['days', 'Days', null],
    'With the usual yield. A day that is begun counts as one.',
    PLAN,
    writtenStep(
      'Days',
      'd = \\lceil n/b \\rceil',
      [answer.days.typical, '1', 'rounded up', 'd'],
      ['n', answer.batches.typical, '1', 'batches', PLAN],
      ['b', question.batchesADay, '1', 'batches a day', PAGE],
    ),
  );

/** What a millilitre costs where the plant gives less or more, and what plant may cost at a price. */
export function costRangeSheet(
  batch: BatchCosts,
  oil_mL: number,
  loss: number,
  price: number | null,
  answer: CostAnswer,
): WorkingSheet {
  const sold = oil_mL * (1 - loss);
  const c = ['c', answer.perMillilitre, '1', 'a millilitre with the usual yield', 'its own working'] as const;
  const less = ['q', YIELD_DOUBT, '1', 'less or more oil', 'judgement: seasons and stands differ so much'] as const;
  return sheetOf(
    ['cost-range', price === null ? 'With more oil' : 'What the plant may cost', null],
    'All prices are the reader’s own.',
    'the costs on the page',
    writtenStep('A millilitre with less oil', 'c_- = \\frac{c}{1-q}', [answer.yieldLow, '1'], c, less),
    writtenStep('A millilitre with more oil', 'c_+ = \\frac{c}{1+q}', [answer.yieldHigh, '1'], c, less),
    price !== null &&
      writtenStep(
        'Plant of a batch, so that a millilitre costs no more than its price',
        'P = p\\,V - C + c_1',
        [answer.plantAtPrice ?? 0, '1'],
        ['p', price, '1', 'price of a millilitre', PAGE],
        ['V', sold, '1', 'millilitres of a batch that are left to sell', 'working of the cost'],
        ['C', answer.batch, '1', 'a batch', 'working of the cost'],
        ['c_1', batch.plant, '1', 'its plant', PAGE],
      ),
  );
}

/** How full the last bottle is. */
export function lastBottleSheet(left_m3: number, size_m3: number, fill: number, T: number): WorkingSheet {
  const { full, last_m3, lastFill } = planBottles(left_m3, size_m3, fill, T);
  return sheetOf(
    ['last-bottle', 'The last bottle', null],
    'What the full bottles leave over.',
    'the bottles on the page',
    writtenStep(
      'Oil in it',
      'V_l = V - n\\,V_b\\,f',
      [last_m3, 'm³'],
      ['V', left_m3, 'm³', 'oil left to bottle', 'working of the full bottles'],
      ['n', full, '1', 'full bottles', 'working of the full bottles'],
      ['V_b', size_m3, 'm³', 'size of a bottle', PAGE],
      ['f', fill, '1', 'filled to', PAGE],
    ),
    writtenStep(
      'How full it is',
      'f_l = \\frac{V_l}{V_b}',
      [lastFill, '1'],
      ['V_l', last_m3, 'm³', 'oil in it', STEP],
      ['V_b', size_m3, 'm³', 'size of a bottle', PAGE],
    ),
  );
}

/** Fixed oil that fills up a product. */
export function carrierSheet(strength: number, product_m3: number): WorkingSheet {
  const volume = product_m3 * (1 - strength);
  return sheetOf(
    ['carrier', 'Fixed oil, to fill up', null],
    'Shares are by volume.',
    'the dilution on the page',
    writtenStep(
      'Volume',
      'V = V_p\\,(1-x)',
      [volume, 'm³'],
      ['V_p', product_m3, 'm³', 'volume of the product', PAGE],
      ['x', strength, '1', 'share of oils', PAGE],
    ),
    writtenStep(
      'Its mass',
      'm = V\\rho',
      [volume * CARRIER.density_kg_m3, 'kg'],
      ['V', volume, 'm³', 'volume', STEP],
      ['\\rho', CARRIER.density_kg_m3, 'kg/m³', 'density of a fixed oil', 'usual of olive, almond and rape oil'],
    ),
  );
}

/** Time in which a fine drop of an oil crosses a little hydrosol. */
export function hazeSheet(composition: readonly OilShare[]): WorkingSheet {
  const T = HAZE.hydrosol_K;
  const difference = tableLiquidDensity(T) - oilDensity(composition, T);
  const step = entryStep('stokes-velocity', {
    d: [HAZE.drop_m, 'size of a fine drop of oil'],
    drho: [Math.abs(difference), 'water less oil, either way, at the temperature of a receiver'],
    mu: [tableLiquidViscosity(T), 'viscosity of water, IAPWS R12-08'],
  });
  return sheetOf(
    ['haze', 'Haze', null],
    'Drops half as large take four times as long. The separator on the bench is judged by its own working.',
    'the plant’s page',
    step,
    writtenStep(
      'Time across a little hydrosol',
      't = \\frac{h}{v}',
      [hazeTime(composition), 's'],
      ['h', HAZE.way_m, 'm', 'way', 'chosen to compare oils'],
      ['v', step.result.value, 'm/s', 'velocity', STEP],
    ),
  );
}
