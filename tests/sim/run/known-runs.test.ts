/**
 * Whole runs that distillers know, from memory: the assays of the European Pharmacopoeia (2.8.12) and run lengths at
 * home as handbooks give them. Both with the plant's typical parameters.
 */
import { describe, expect, it } from 'vitest';
import { chargeFromBotanical, columnAt, findBotanical, simulate } from '../../../sim/index.ts';
import { scenarioOf } from '../still/ideal-still.ts';

const MINUTE = 60;
/** Lots of one drug differ by about a half in their oil, so that a typical lot may fall short of what is asked by that. */
const LOTS = 1.5;
/** Handbooks differ by a half in how long a run at home takes. */
const HANDBOOKS = 1.5;

describe('the pharmacopoeia’s assay', () => {
  // The plant boiled in its flask, the distillate running back; kg, kg, m, mL/min, minutes, mL/kg that it asks for.
  it.each([
    ['clove-bud', 0.005, 0.1, 0.06, 3, 120, 150],
    ['fennel-bitter', 0.01, 0.2, 0.075, 2.5, 120, 40],
    ['caraway', 0.01, 0.2, 0.075, 2.5, 90, 30],
    ['juniper-berry', 0.02, 0.2, 0.075, 3.5, 90, 10],
    ['lavender-true', 0.02, 0.5, 0.1, 2.5, 120, 13],
    ['oregano', 0.03, 0.4, 0.09, 2.5, 120, 25],
  ] as const)(
    'yields what it asks of %s, or a lot’s difference less',
    (plant, mass_kg, water_kg, diameter_m, mL_min, minutes, asked_mL_kg) => {
      const { record, summary } = simulate(
        scenarioOf({
          heat: { ratedPower_W: (mL_min / 60e3) * 2.2565e6, shareToPot: 1, lag_s: 10 },
          factors: { heatLoss: 0 },
          pot: {
            layout: 'water',
            diameter_m,
            height_m: 0.15,
            wallThickness_m: 0.002,
            material: 'borosilicate-glass',
            water_kg,
            waterTemperature_K: 365,
            minimumDepth_m: 0,
          },
          charge: { ...chargeFromBotanical(plant, 'dry'), mass_kg },
          neck: { length_m: 0.1, risingLength_m: 0.02, bore_m: 0.02 },
          condenser: { length_m: 2 },
          separator: { bore_m: 0.02, height_m: 0.1, inletDepth_m: 0.02, returnShare: 1, dropMedian_m: 0.003 },
          run: { duration_s: (minutes + 30) * MINUTE },
          advanced: { step_s: 2, segments: 30 },
        }),
      );
      const time = (summary.firstDrop_s as number) + minutes * MINUTE;
      const over = columnAt(record, 'oilCollected_kg', time) + columnAt(record, 'oilHaze_kg', time);
      const asked = asked_mL_kg * 1e-6 * findBotanical(plant).oilDensity_kg_m3.value * mass_kg;
      expect(over, `${over} of ${asked} kg`).toBeGreaterThan(asked / LOTS);
    },
    60_000,
  );
});

describe('a run at home', () => {
  it.each(['clove-bud', 'fennel-bitter', 'caraway'])(
    'takes nine tenths of the oil of %s in the hours that the library gives',
    (plant) => {
      const { defaultCharge, distillationMinutes } = findBotanical(plant);
      const [least, most] = distillationMinutes.home.value;
      const { layout, state, mass_kg } = defaultCharge;
      const immersed = layout === 'water';
      const { record, summary } = simulate(
        scenarioOf({
          heat: { ratedPower_W: 2500, shareToPot: 0.9 },
          cooling: { flow_kg_s: [{ at_s: 0, value: 0.05 }] },
          condenser: { length_m: 8 },
          pot: {
            layout: immersed ? 'water' : 'water-and-steam',
            diameter_m: 0.36,
            height_m: 0.7,
            gridHeight_m: 0.3,
            water_kg: immersed ? 18 : 29,
            waterTemperature_K: 365,
            insulationThickness_m: 0.02,
          },
          charge: { ...chargeFromBotanical(plant, state), mass_kg },
          separator: { returnShare: immersed ? 0.9 : 0 },
          run: { duration_s: HANDBOOKS * most * MINUTE + 3600 },
          advanced: { step_s: 2, segments: 30 },
        }),
      );
      const left = (time: number): number =>
        columnAt(record, 'oilReady_kg', time) + columnAt(record, 'oilHeld_kg', time);
      const row = record.columns.time_s.findIndex((time) => left(time) < 0.1 * summary.oilInCharge_kg);
      const minutes = ((record.columns.time_s[row] ?? Infinity) - (summary.firstDrop_s as number)) / MINUTE;
      expect(minutes).toBeGreaterThan(least / HANDBOOKS);
      expect(minutes).toBeLessThan(most * HANDBOOKS);
    },
    60_000,
  );

  it('takes two kilograms of fresh lavender in the half hour to hour and a half that handbooks give', () => {
    const [least, most] = findBotanical('lavender-true').distillationMinutes.home.value;
    const { summary } = simulate(
      scenarioOf({
        pot: { waterTemperature_K: 365 },
        charge: { botanical: 'lavender-true', state: 'fresh', mass_kg: 2 },
        heat: { ratedPower_W: 2000 },
        run: { duration_s: 14_400 },
      }),
    );
    const home = ((summary.t95_s as number) - (summary.firstDrop_s as number)) / MINUTE;
    expect(home).toBeGreaterThan(least);
    expect(home).toBeLessThan(most);
  });
});
