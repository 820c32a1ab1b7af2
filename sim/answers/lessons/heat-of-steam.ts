/**
 * Heating water against boiling part of it away. The latent heat of water at its boiling point, 2.257 MJ/kg, is over
 * five times the 0.335 MJ/kg from 20 to 100 °C (IAPWS R7-97(2012), saturation properties).
 */
import { columnAt } from '../../run/record.ts';
import { AMPLE_COIL, gardenStill, WRAPPED } from './class-still.ts';
import { completeScenario, firstRun, reaches, turnedNumber, type Control, type Lesson } from './lesson.ts';

const BOILED_AWAY_KG = 2;
const START_K = 293.15;

const water: Control = { kind: 'number', id: 'water', quantity: 'water', min: 4, max: 16, step: 1, start: 8 };

export const heatOfSteam: Lesson<'heat-of-steam'> = {
  id: 'heat-of-steam',
  choose: null,
  tryIt: water,
  hazards: ['steam', 'hot-water'],
  modelOnly: false,
  working: { kind: 'sheet', id: 'steam-rate' },
  questions: [{ kind: 'choice', id: 'more', options: ['heating', 'boiling', 'same'] }],
  stills: (turned) => [
    completeScenario(
      gardenStill('Water alone', {
        ...AMPLE_COIL,
        heat: { setting: [{ at_s: 0, value: 1 }] },
        pot: {
          ...WRAPPED,
          gridHeight_m: 0.24,
          height_m: 0.42,
          waterTemperature_K: START_K,
          water_kg: turnedNumber(turned, water),
        },
        charge: { mass_kg: 0 },
        run: { duration_s: 10_800, stopAtDistillate_kg: BOILED_AWAY_KG * 1.02 },
      }),
    ),
  ],
  answer: (runs, turned) => {
    const run = firstRun(runs);
    const boil_s = run.summary.firstBoil_s ?? run.summary.end_s;
    const water_kg = turnedNumber(turned, water);
    const at = (name: Parameters<typeof columnAt>[1], time_s: number) => columnAt(run.record, name, time_s);
    const end_s = reaches(run, 'hydrosol_kg', BOILED_AWAY_KG, boil_s) ?? run.summary.end_s;
    /** What stayed in the water, or left it as steam: the heat of the pot less what it lost. */
    const net = (from_s: number, to_s: number) =>
      at('potEnergy_J', to_s) - at('potEnergy_J', from_s) - at('lossEnergy_J', to_s) + at('lossEnergy_J', from_s);
    const heatUp_J = net(0, boil_s);
    const boilAway_J = net(boil_s, end_s);
    const { time_s, potTemperature_K } = run.record.columns;
    let low = Infinity;
    let high = -Infinity;
    for (let row = 0; row < run.record.rows; row++) {
      if ((time_s[row] as number) < boil_s || (time_s[row] as number) > end_s) continue;
      low = Math.min(low, potTemperature_K[row] as number);
      high = Math.max(high, potTemperature_K[row] as number);
    }
    return {
      facts: {
        water_kg,
        boiledAway_kg: BOILED_AWAY_KG,
        heatUp_J,
        boilAway_J,
        heatUp_s: boil_s,
        boilAway_s: end_s - boil_s,
        boil_K: at('potTemperature_K', end_s),
        moved_K: high - low,
        lost_J: at('lossEnergy_J', end_s),
      },
      truths: {
        more: {
          kind: 'choice',
          option: boilAway_J > 1.05 * heatUp_J ? 'boiling' : heatUp_J > 1.05 * boilAway_J ? 'heating' : 'same',
        },
      },
    };
  },
};
