/**
 * Twice the flame under a boiling pot. At a given pressure water boils at one temperature (Gibbs's phase rule; IAPWS
 * R7-97(2012), saturation line); a narrow way out holds back some pressure and lifts it a little.
 */
import { columnAt } from '../../run/record.ts';
import { AMPLE_COIL, gardenStill, WRAPPED } from './class-still.ts';
import { completeScenario, curveOfRun, firstRun, turnedNumber, type Control, type Lesson } from './lesson.ts';

const LOW_SETTING = 0.35;
const UNTIL_S = 6000;
/** The plate and the pot have followed the new setting after this time. */
const SETTLED_S = 1200;

/** Counted from the first drop. */
const minute: Control = {
  kind: 'number',
  id: 'minute',
  quantity: 'duration',
  min: 900,
  max: 2700,
  step: 300,
  start: 1800,
};
const altitude: Control = {
  kind: 'number',
  id: 'altitude',
  quantity: 'altitude',
  min: 0,
  max: 3000,
  step: 100,
  start: 120,
};

export const harderFlame: Lesson<'harder-flame'> = {
  id: 'harder-flame',
  choose: minute,
  tryIt: altitude,
  hazards: ['steam', 'flame'],
  modelOnly: false,
  working: { kind: 'sheet', id: 'steam-rate' },
  questions: [
    {
      kind: 'curve',
      id: 'pot',
      column: 'potTemperature_K',
      quantity: 'temperature',
      until_s: UNTIL_S,
      min: 283.15,
      max: 403.15,
    },
    { kind: 'choice', id: 'steam', options: ['same', 'half-more', 'twice', 'four-times'] },
  ],
  stills: (turned) => [
    completeScenario(
      gardenStill('Wrapped lavender', {
        ...AMPLE_COIL,
        site: { altitude_m: turnedNumber(turned, altitude) },
        heat: {
          setting: [
            { at_s: 0, value: 1 },
            { at_s: 0, after: 'first-drop', value: LOW_SETTING },
            { at_s: turnedNumber(turned, minute), after: 'first-drop', value: 2 * LOW_SETTING },
          ],
        },
        pot: WRAPPED,
        run: { duration_s: UNTIL_S },
      }),
    ),
  ],
  answer: (runs, turned) => {
    const run = firstRun(runs);
    const at_s = (run.summary.firstDrop_s ?? 0) + turnedNumber(turned, minute);
    const before_s = at_s - 30;
    const after_s = Math.min(at_s + SETTLED_S, run.summary.end_s);
    const steamBefore_kg_s = columnAt(run.record, 'steamRate_kg_s', before_s);
    const steamAfter_kg_s = columnAt(run.record, 'steamRate_kg_s', after_s);
    const ratio = steamAfter_kg_s / steamBefore_kg_s;
    return {
      facts: {
        at_s,
        before_K: columnAt(run.record, 'potTemperature_K', before_s),
        after_K: columnAt(run.record, 'potTemperature_K', after_s),
        steamBefore_kg_s,
        steamAfter_kg_s,
        gaugeAfter_Pa: columnAt(run.record, 'potGauge_Pa', after_s),
        altitude_m: turnedNumber(turned, altitude),
      },
      truths: {
        pot: curveOfRun(run, 'potTemperature_K', UNTIL_S),
        steam: {
          kind: 'choice',
          option: ratio < 1.25 ? 'same' : ratio < 1.7 ? 'half-more' : ratio < 2.8 ? 'twice' : 'four-times',
        },
      },
    };
  },
};
