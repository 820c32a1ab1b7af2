/** Working of what oil loses, holds, keeps and costs after the still, and of plant and garden. */
import {
  drying,
  DRYING_SALT,
  WATER_HELD,
  waterHolder,
  WATER_HELD_FACTOR,
  FILTERS,
  type FilterKind,
} from '../products/standing.ts';
import { planBottles } from '../products/bottles.ts';
import { keeping, keepsAtRoom, KEEPING_DOUBT, OPENED_OFTEN, MOST_GAIN, KEPT_AT_K } from '../products/keeping.ts';
import { oilDensity, type OilShare } from '../products/oil.ts';
import { COST_KINDS, YIELD_DOUBT, type BatchCosts, type CostAnswer } from '../products/quantities.ts';
import type { QuantityAnswer, QuantityQuestion } from '../products/quantities.ts';
import { entryStep, sheetOf, STEP, writtenStep, type Row, type WorkingSheet } from './sheet.ts';

const PAGE = 'chosen on the page';

/** Water that an oil holds, and the salt that binds it. */
export function dryingSheet(composition: readonly OilShare[], oil_m3: number, T: number): WorkingSheet {
  const found = drying(composition, oil_m3, T);
  const density = oilDensity(composition, T);
  const held = WATER_HELD[waterHolder(composition)];
  return sheetOf(
    ['drying', 'Water held by clear oil', null],
    `Group contribution, good to a factor of ${WATER_HELD_FACTOR} either way; never measured. Laboratories take far more salt than the last step needs.`,
    'the oil on the page',
    writtenStep(
      'Mass of the oil',
      'm = V\\rho',
      [oil_m3 * density, 'kg'],
      ['V', oil_m3, 'm³', 'oil', 'the run, or typed'],
      ['\\rho', density, 'kg/m³', 'density at this temperature', 'constituents, volumes added'],
    ),
    writtenStep(
      'Water in it',
      'm_w = m\\,w',
      [found.water_kg, 'kg'],
      ['m', oil_m3 * density, 'kg', 'mass of the oil', STEP],
      ['w', held, '1', 'share of water in clear oil', 'group contribution at 25 °C, by the family that rules the oil'],
    ),
    writtenStep(
      'Salt that binds it',
      'm_s = m_w\\,r',
      [found.needed_kg, 'kg'],
      ['m_w', found.water_kg, 'kg', 'water', STEP],
      ['r', DRYING_SALT.needed_kg_kg, '1', 'sodium sulfate for its ten waters', 'molar masses'],
    ),
  );
}

/** What is left to bottle, and how many bottles it fills. */
export function bottlesSheet(
  oil_m3: number,
  filter: FilterKind,
  salt_m3: readonly [number, number],
  size_m3: number,
  fill: number,
): WorkingSheet {
  const [least, most] = FILTERS[filter].kept_m3;
  const lost = (least + most + salt_m3[0] + salt_m3[1]) / 2;
  const left = Math.max(0, oil_m3 - lost);
  const plan = planBottles(left, size_m3, fill, KEPT_AT_K);
  return sheetOf(
    ['bottles', 'Full bottles', null],
    'What filter and salt keep is the middle of their ranges.',
    'the bottles on the page',
    writtenStep(
      'Oil left to bottle',
      'V = V_0 - V_f - V_s',
      [left, 'm³'],
      ['V_0', oil_m3, 'm³', 'oil', 'the run, or typed'],
      ['V_f', (least + most) / 2, 'm³', 'kept by the filter', 'estimate: paper keeps one to two times its weight'],
      ['V_s', (salt_m3[0] + salt_m3[1]) / 2, 'm³', 'kept by the salt', 'estimate: 0.3 to 0.5 mL a gram'],
    ),
    writtenStep(
      'Full bottles',
      'n = \\lfloor V/(V_b\\,f) \\rfloor',
      [plan.full, '1', 'rounded down', 'n'],
      ['V', left, 'm³', 'oil left', STEP],
      ['V_b', size_m3, 'm³', 'size of a bottle', PAGE],
      ['f', fill, '1', 'filled to', PAGE],
    ),
  );
}

/** How long an oil keeps. */
export function keepingSheet(botanical: string, T: number, openedOften: boolean): WorkingSheet {
  const usual = keepsAtRoom(botanical);
  const warm = entryStep('ageing-rate', { T: [T, 'temperature of the store'] });
  const room = entryStep('ageing-rate', { T: [KEPT_AT_K, 'temperature at which the years of the trade hold'] });
  const gain = Math.min(MOST_GAIN, room.result.value / warm.result.value);
  const opened = openedOften ? OPENED_OFTEN : 1;
  return sheetOf(
    ['keeping', 'How long it keeps', null],
    `Half or ${KEEPING_DOUBT} times as long is as likely. Cold is counted as at most ${MOST_GAIN} times as long.`,
    'the bottle on the page',
    warm,
    room,
    writtenStep(
      'Time',
      't = t_{20}\\,g\\,o',
      [keeping(botanical, T, openedOften).life_s, 's'],
      ['t_{20}', usual, 's', 'full, dark, at 20 °C', 'years of the trade; an unknown oil as the quickest to spoil'],
      ['g', gain, '1', `second rate over the first, at most ${MOST_GAIN}`, 'the two steps above'],
      ['o', opened, '1', 'opened often', openedOften ? 'halved: estimate' : PAGE],
    ),
  );
}

/** Garden bed and days for an amount of plant. */
export function gardenSheet(question: QuantityQuestion, answer: QuantityAnswer, of: 'bed' | 'plants'): WorkingSheet {
  const { harvest_kg_m2: harvest } = question;
  const density = of === 'plants' ? question.plantsPer_m2 : null;
  const area = answer.area_m2?.typical ?? 0;
  return sheetOf(
    ['garden', density ? 'Plants in the bed' : 'Garden bed', null],
    'With the usual yields. The range on the page takes low against high.',
    'the plan on the page',
    writtenStep(
      'Garden bed',
      'A = \\frac{m}{h}',
      [area, 'm²'],
      ['m', answer.plant_kg.typical, 'kg', 'plant', 'yield of the plant, or what there is'],
      ['h', harvest?.typical ?? 0, 'kg/m²', 'harvest of a year', 'middle of the plant’s range'],
    ),
    density !== null &&
      writtenStep(
        'Plants',
        'n = A\\,d',
        [answer.plants?.typical ?? 0, '1'],
        ['A', area, 'm²', 'bed', STEP],
        ['d', density.typical, '1/m²', 'plants on an area', 'middle of the plant’s range'],
      ),
  );
}

/** Energy and cooling water of all batches. */
export const batchesSheet = (
  of: 'energy' | 'water',
  oneBatch: number,
  answer: Pick<QuantityAnswer, 'batches'>,
): WorkingSheet =>
  sheetOf(
    ['batches', of === 'energy' ? 'Energy' : 'Cooling water', null],
    'Every batch is taken to need what the run on the bench needs.',
    'the plan on the page',
    writtenStep(
      'All batches',
      of === 'energy' ? 'E = n\\,E_1' : 'm = n\\,m_1',
      [oneBatch * answer.batches.typical, of === 'energy' ? 'J' : 'kg'],
      ['n', answer.batches.typical, '1', 'batches', 'the plan on the page'],
      [of === 'energy' ? 'E_1' : 'm_1', oneBatch, of === 'energy' ? 'J' : 'kg', 'one batch', 'run on the bench'],
    ),
  );

/** Water in a plant from two weighings. */
export const moistureSheet = (before_kg: number, after_kg: number): WorkingSheet =>
  sheetOf(
    ['moisture', 'Water in the plant', null],
    'What is lost in drying counts as water; a little of it is oil.',
    'the weighings on the page',
    writtenStep(
      'Share of water',
      'w = 1 - \\frac{m_1}{m_0}',
      [1 - after_kg / before_kg, '1'],
      ['m_0', before_kg, 'kg', 'before drying', 'weighed'],
      ['m_1', after_kg, 'kg', 'after drying', 'weighed'],
    ),
  );

/** Transfer coefficient from a strip that was weighed. */
export const coefficientSheet = (tried_m_s: number, model_s: number, weighed_s: number): WorkingSheet =>
  sheetOf(
    ['coefficient', 'Air at the film', null],
    'All times go with the inverse of the coefficient, so that one weighing gives it.',
    'the weighing on the page',
    writtenStep(
      'Transfer coefficient of limonene',
      'k = k_0\\,\\frac{t_0}{t}',
      [(tried_m_s * model_s) / weighed_s, 'm/s'],
      ['k_0', tried_m_s, 'm/s', 'coefficient now', PAGE],
      ['t_0', model_s, 's', 'time in which the model loses this share', 'exact solution of the film'],
      ['t', weighed_s, 's', 'time until this share had left', 'weighed'],
    ),
  );

/** What a recipe costs. */
export const recipeCostSheet = (
  parts: readonly { readonly name: string; readonly oil_m3: number; readonly price: number }[],
): WorkingSheet =>
  sheetOf(
    ['recipe-cost', 'Cost of the recipe', null],
    'Prices of a millilitre are the reader’s own.',
    'the recipe on the page',
    writtenStep(
      'All together',
      `C = 10^6\\,(${parts.map((_, k) => `V_{${k + 1}}\\,c_{${k + 1}}`).join(' + ')})`,
      [parts.reduce((sum, { oil_m3, price }) => sum + 1e6 * oil_m3 * price, 0), '1'],
      ...parts.flatMap(({ name, oil_m3, price }, k): Row[] => [
        [`V_{${k + 1}}`, oil_m3, 'm³', name, PAGE],
        [`c_{${k + 1}}`, price, '1', `a millilitre of it`, PAGE],
      ]),
    ),
  );

const COST_SAYS: Readonly<Record<keyof BatchCosts, string>> = {
  plant: 'plant',
  energy: 'energy',
  water: 'cooling water',
  work: 'work',
  still: 'share of the still',
  bottles: 'bottles and labels',
  other: 'all else',
};

/** What a millilitre costs, and what plant may cost at a price. */
export function costSheet(batch: BatchCosts, oil_mL: number, loss: number, answer: CostAnswer): WorkingSheet {
  const sold = oil_mL * (1 - loss);
  return sheetOf(
    ['cost', 'Cost of a millilitre', null],
    `All prices are the reader’s own. The page tries ${100 * YIELD_DOUBT} % less oil and as much more.`,
    'the costs on the page',
    writtenStep(
      'A batch',
      `C = ${COST_KINDS.map((_, k) => `c_{${k + 1}}`).join(' + ')}`,
      [answer.batch, '1'],
      ...COST_KINDS.map((kind, k): Row => [
        `c_{${k + 1}}`,
        batch[kind],
        '1',
        COST_SAYS[kind],
        kind === 'energy' || kind === 'water' ? 'run on the bench' : PAGE,
      ]),
    ),
    writtenStep(
      'Oil of a batch that is left to sell, in millilitres',
      'V = V_1(1-l)',
      [sold, '1'],
      ['V_1', oil_mL, '1', 'oil of a batch in millilitres', 'usual yield of the plant'],
      ['l', loss, '1', 'lost in settling and filling', PAGE],
    ),
    writtenStep(
      'A millilitre',
      'c = \\frac{C}{V}',
      [answer.perMillilitre, '1'],
      ['C', answer.batch, '1', 'a batch', 'first step'],
      ['V', sold, '1', 'millilitres', STEP],
    ),
  );
}
