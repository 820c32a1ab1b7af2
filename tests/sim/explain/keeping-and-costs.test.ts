/** Sheets of what comes after the still: each equation, put in with its values, gives the number on the page. */
import { describe, expect, it } from 'vitest';
import {
  amountSheet,
  batchesSheet,
  carrierSheet,
  chargeSheet,
  costRangeSheet,
  daysSheet,
  hazeSheet,
  hazeTime,
  lastBottleSheet,
  oilFrom,
  plantSheet,
  yieldOf,
  yieldSheet,
  bottlesSheet,
  coefficientSheet,
  costs,
  costSheet,
  drying,
  dryingSheet,
  findBotanical,
  gardenSheet,
  keeping,
  keepingSheet,
  moistureFromWeighings,
  moistureSheet,
  planBottles,
  plantFor,
  recipeCostSheet,
  type WorkingSheet,
} from '../../../sim/index.ts';
import { faults } from './soundness.ts';

const lavender = findBotanical('lavender-true').composition.value.map(({ constituent, massFraction }) => ({
  constituent,
  share: massFraction,
}));
const question = {
  yield_m3_kg: { low: 4e-6, typical: 9e-6, high: 16e-6 },
  loss: 0.03,
  packing_kg_m3: 170,
  chamber_m3: 0.02,
  fill: 0.9,
  batchesADay: 2,
  harvest_kg_m2: { low: 0.3, typical: 0.6, high: 0.9 },
  plantsPer_m2: { low: 2, typical: 2.5, high: 3 },
};
const plan = plantFor(50e-6, question);
const batch = { plant: 12, energy: 3, water: 1, work: 20, still: 4, bottles: 5, other: 0 };
const cost = costs(batch, 30, 0.03, null);
const priced = costs(batch, 30, 0.03, 2);

const rows: readonly (readonly [name: string, sheet: WorkingSheet, onPage: number])[] = [
  ['drying', dryingSheet(lavender, 1e-4, 298.15), drying(lavender, 1e-4, 298.15).needed_kg],
  ['bottles', bottlesSheet(25e-6, 'paper', [1e-6, 2e-6], 10e-6, 0.95), planBottles(22.85e-6, 10e-6, 0.95, 293.15).full],
  ['keeping', keepingSheet('lavender-true', 303.15, true), keeping('lavender-true', 303.15, true).life_s],
  ['keeping in the cold', keepingSheet('unknown', 277.15, false), keeping('unknown', 277.15, false).life_s],
  ['plants', gardenSheet(question, plan, 'plants'), plan.plants?.typical ?? 0],
  ['garden', gardenSheet(question, plan, 'bed'), plan.area_m2?.typical ?? 0],
  ['plant for oil', amountSheet('oil', question, plan), 50e-6 / (9e-6 * 0.97)],
  ['oil of a harvest', amountSheet('harvest', question, oilFrom(5, question)), 5 * 9e-6 * 0.97],
  ['charge', chargeSheet(question, plan), 170 * 0.02 * 0.9],
  ['batches', plantSheet(question, plan), 2],
  ['days', daysSheet(question, plan), 1],
  ['yield', yieldSheet(findBotanical('lavandin'), 'dry'), yieldOf(findBotanical('lavandin'), 'dry')?.typical ?? 0],
  ['cost with more oil', costRangeSheet(batch, 30, 0.03, null, cost), cost.yieldHigh],
  ['plant at a price', costRangeSheet(batch, 30, 0.03, 2, priced), priced.plantAtPrice ?? 0],
  ['last bottle', lastBottleSheet(25e-6, 10e-6, 0.95, 293.15), 0.6],
  ['fixed oil', carrierSheet(0.02, 30e-6), 29.4e-6 * 915],
  ['haze', hazeSheet(lavender), hazeTime(lavender)],
  ['energy', batchesSheet('energy', 5e6, plan), 5e6 * plan.batches.typical],
  ['water', batchesSheet('water', 40, plan), 40 * plan.batches.typical],
  ['moisture', moistureSheet(0.1, 0.032), moistureFromWeighings(0.1, 0.032)],
  ['cost', costSheet(batch, 30, 0.03, cost), cost.perMillilitre],
  ['coefficient', coefficientSheet(1.5e-3, 2400, 1800), 2e-3],
  [
    'recipe',
    recipeCostSheet([
      { name: 'oil', oil_m3: 0.6e-6, price: 2 },
      { name: 'fixed oil', oil_m3: 29.4e-6, price: 0.1 },
    ]),
    4.14,
  ],
];

const ROUNDED = new Set(['bottles', 'batches', 'days']);

describe('the working of', () => {
  it.each(rows)('%s ends in the number on the page', (_, sheet, onPage) => {
    expect(sheet.result.value / onPage).toBeCloseTo(1, 9);
  });

  // Rounding to whole bottles, batches and days is no equation that the reader of equations knows.
  it.each(rows.filter(([name]) => !ROUNDED.has(name)))('%s follows from the values shown', (_, sheet) =>
    expect(faults(sheet)).toEqual([]),
  );
});
