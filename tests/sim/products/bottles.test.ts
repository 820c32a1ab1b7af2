/** Drops, bottles, standing and quantities against values worked out by a second program (C15, C17 to C20). */
import { describe, expect, it } from 'vitest';
import { peroxideAtFill, planBottles, warmingToBrim } from '../../../sim/products/bottles.ts';
import { amountsOf, dropsFromWeighing, shareOfDrops } from '../../../sim/products/drops.ts';
import { countAfter, hydrosolLife, keeping, timeToGrow } from '../../../sim/products/keeping.ts';
import {
  costs,
  massAfterDrying,
  moistureFromWeighings,
  oilFrom,
  plantFor,
  type QuantityQuestion,
} from '../../../sim/products/quantities.ts';
import { drying, standing, timeToFall, waterHolder } from '../../../sim/products/standing.ts';
import { findBotanical } from '../../../sim/library/index.ts';
import { look } from '../transfer/look.ts';

const ROOM = 298.15;
const DAY = 86400;
const within = (value: number, wanted: number, share: number): void =>
  expect(Math.abs(value / wanted - 1), `${value} for ${wanted}`).toBeLessThanOrEqual(share);
const compositionOf = (id: string) =>
  findBotanical(id).composition.value.map(({ constituent, massFraction }) => ({ constituent, share: massFraction }));

describe('drops', () => {
  it.each([
    [0.67, 0.0735, 999, 13.532],
    [1.39, 0.0735, 999, 25.393],
    [3.07, 0.0735, 999, 49.03],
    [4.17, 0.0735, 999, 63.361],
    [6.56, 0.0735, 999, 93.395],
    [3, 0.0728, 998, 47.605],
    [3, 0.029, 880, 17.781],
    [3, 0.036, 1050, 22.142],
  ])('C15: a tip of %d mm with %d N/m drops %d kg/m³ by its mass', (across_mm, sigma, rho, milligrams) =>
    within(1e6 * look('drop-mass-from-tip', { r: across_mm / 2000, sigma, rho, g: 9.81 }), milligrams, 0.02),
  );

  it('C15: twenty drops of 0.66 g are 27, 32 and 26 drops a millilitre', () => {
    within(dropsFromWeighing(20, 0.66e-3, 880), 26.667, 1e-4);
    within(dropsFromWeighing(20, 0.66e-3, 1050), 31.818, 1e-4);
    within(dropsFromWeighing(20, 0.66e-3, 845), 25.606, 1e-4);
  });

  it('C19: a drop of sage oil holds 11 mg of thujone, more than a day’s limit by mouth in half a drop', () => {
    const thujone_kg = 0.34 * 33e-6;
    within(1e6 * thujone_kg, 11.2, 0.01);
    within(6e-6 / thujone_kg, 0.53, 0.01);
    within(5e-6 / thujone_kg, 0.45, 0.01);
  });

  it('C20: two per cent in 30 mL are 0.6 mL, 16 drops, half a gram; and back', () => {
    const { oil_m3, oil_kg, drops } = amountsOf(0.02, 30e-6, 27, 883);
    within(oil_m3, 0.6e-6, 1e-9);
    within(drops, 16.2, 0.01);
    within(1000 * oil_kg, 0.53, 0.01);
    within(shareOfDrops(drops, 30e-6, 27), 0.02, 1e-9);
  });
});

describe('bottles', () => {
  it.each([
    [0.98, 0.17],
    [0.95, 0.45],
    [0.9, 0.95],
    [0.8, 2.14],
    [0.67, 4.22],
    [0.5, 8.56],
    [0.25, 25.69],
  ])('C17: filled to %d can make %d mmol/L of peroxide', (fill, printed) =>
    expect(Math.abs(peroxideAtFill(fill, ROOM) - printed)).toBeLessThanOrEqual(0.005 * printed + 0.005),
  );

  it('are counted at their fill, the rest in a last one', () => {
    const plan = planBottles(47.5e-6, 10e-6, 0.95, ROOM);
    expect(plan.full).toBe(5);
    expect(plan.last_m3).toBe(0);
    const other = planBottles(25e-6, 10e-6, 0.95, ROOM);
    expect(other.full).toBe(2);
    within(other.last_m3, 6e-6, 1e-9);
    expect(other.lastPeroxide_mol_m3).toBeGreaterThan(10 * other.peroxide_mol_m3);
    expect(warmingToBrim(0.95)).toBeGreaterThan(30);
  });
});

describe('water drops in oil', () => {
  it.each([
    ['lavender', 117, 2.5e-3, [0.054, 0.218, 1.361, 5.445, 21.781]],
    ['orange', 155, 1e-3, [0.016, 0.066, 0.411, 1.644, 6.577]],
    ['clove', 53, 8e-3, [0.385, 1.539, 9.617, 38.467, 153.867]],
    ['fennel', 32, 3e-3, [0.239, 0.956, 5.973, 23.891, 95.566]],
    ['chamomile', 62, 60e-3, [2.466, 9.865, 61.655, 246.621, 986.485]],
  ])('C18: leave 50 mm of %s oil', (_, difference, viscosity, hours) => {
    [100e-6, 50e-6, 20e-6, 10e-6, 5e-6].forEach((drop, at) =>
      expect(
        Math.abs(timeToFall(drop, difference, viscosity, 0.05) / 3600 - (hours[at] as number)),
      ).toBeLessThanOrEqual(0.01 * (hours[at] as number) + 5e-4),
    );
  });

  it('fall in oils that float and rise in clove, by the oil’s own density and viscosity', () => {
    expect(standing(compositionOf('lavender-true'), ROOM, 0.05).waterSinks).toBe(true);
    const clove = standing(compositionOf('clove-bud'), ROOM, 0.05);
    expect(clove.waterSinks).toBe(false);
    expect(clove.times_s[1]).toBeGreaterThan(3600);
    const warm = standing(compositionOf('clove-bud'), 310.15, 0.05);
    expect(warm.viscosity_Pa_s).toBeLessThan(clove.viscosity_Pa_s);
  });

  it('leave dissolved water behind, most in alcohols', () => {
    expect(
      ['orange-peel', 'caraway', 'lavender-true', 'clove-bud'].map((id) => waterHolder(compositionOf(id))),
    ).toEqual(['hydrocarbons', 'estersAndKetones', 'alcoholsAndPhenols', 'alcoholsAndPhenols']);
    const { water_kg, needed_kg, dose_kg, lost_m3 } = drying(compositionOf('lavender-true'), 100e-6, ROOM);
    within(water_kg, 1.1e-3, 0.03);
    within(needed_kg / water_kg, 0.79, 0.01);
    expect(dose_kg).toEqual([2e-3, 5e-3].map((each) => expect.closeTo(each, 9) as number));
    expect(lost_m3[1]).toBeCloseTo(2.5e-6, 12);
  });
});

describe('keeping', () => {
  it('halves for ten degrees and for a bottle that is opened often', () => {
    const cool = keeping('lavender-true', 293.15, false);
    within(cool.life_s / (365.25 * DAY), 2, 1e-9);
    within(keeping('lavender-true', 303.15, false).life_s / cool.life_s, 0.5, 1e-9);
    within(keeping('lavender-true', 293.15, true).life_s / cool.life_s, 0.5, 1e-9);
    // A refrigerator at most doubles it.
    within(keeping('lavender-true', 277.15, false).life_s / cool.life_s, 2, 1e-9);
    expect(keeping('something-else', 293.15, false).isKnown).toBe(false);
  });

  it.each([
    [25, 1, 1.9],
    [5, 1, 13.6],
    [25, 0.01, 3.8],
    [5, 0.01, 27],
  ])('of hydrosol at %d °C from %d per mL to a hundred takes %d days', (celsius, from, days) =>
    within(timeToGrow(from, 100, celsius + 273.15) / DAY, days, 0.02),
  );

  it('of hydrosol from a kitchen is a day at room temperature, and the count says so', () => {
    const life = hydrosolLife('kitchen', ROOM);
    within(life / DAY, 0.96, 0.02);
    within(countAfter('kitchen', ROOM, life), 100, 1e-6);
    expect(countAfter('kitchen', ROOM, 60 * DAY)).toBeLessThanOrEqual(1e6);
  });
});

describe('quantities', () => {
  const question: QuantityQuestion = {
    yield_m3_kg: { low: 4e-6, typical: 9e-6, high: 16e-6 },
    loss: 0.03,
    packing_kg_m3: 170,
    chamber_m3: 0.02,
    fill: 0.9,
    batchesADay: 2,
    harvest_kg_m2: { low: 0.3, typical: 0.6, high: 0.9 },
    plantsPer_m2: { low: 2, typical: 2.5, high: 3 },
  };

  it('for 50 mL of lavender: 5.73 kg in two batches of at most 3.06 kg, 9.5 m², 24 plants', () => {
    const { plant_kg, perBatch_kg, batches, days, area_m2, plants } = plantFor(50e-6, question);
    within(plant_kg.typical, 5.73, 0.001);
    within(perBatch_kg, 3.06, 1e-9);
    expect(batches.typical).toBe(2);
    expect(days.typical).toBe(1);
    within(area_m2?.typical ?? 0, 9.5, 0.01);
    within(plants?.typical ?? 0, 24, 0.01);
    expect(plant_kg.low).toBeLessThan(plant_kg.typical);
    expect(area_m2?.high).toBeGreaterThan(area_m2?.typical ?? 0);
  });

  it('go back from a harvest to the oil', () => {
    const there = plantFor(50e-6, question);
    within(oilFrom(there.plant_kg.typical, question).oil_m3.typical, 50e-6, 1e-9);
  });

  it('take moisture from two weighings and mass from moisture', () => {
    within(moistureFromWeighings(0.1, 0.032), 0.68, 1e-9);
    within(massAfterDrying(10, 0.68, 0.1), 3.556, 1e-3);
  });

  it('lay the costs of a batch to their causes', () => {
    const batch = { plant: 12, energy: 3, water: 1, work: 20, still: 4, bottles: 5, other: 0 };
    const { perMillilitre, shares, plantAtPrice, yieldLow, yieldHigh } = costs(batch, 30, 0.03, 2);
    within(perMillilitre, 45 / 29.1, 1e-9);
    expect(Object.values(shares).reduce((sum, each) => sum + each, 0)).toBeCloseTo(1, 12);
    within(plantAtPrice ?? 0, 2 * 29.1 - 33, 1e-9);
    expect(yieldLow).toBeGreaterThan(yieldHigh);
  });
});
