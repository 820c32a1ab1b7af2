/** How the oil comes with time: each minute takes a share of what is left (first-order release, curves in sim/library). */
import { exampleScenario } from '../../run/examples.ts';
import { columnAt } from '../../run/record.ts';
import { timeToCollect } from '../../run/summary.ts';
import { completeScenario, curveOfRun, firstRun, turnedNumber, type Control, type Lesson } from './lesson.ts';

const UNTIL_S = 10_800;

const charge: Control = { kind: 'number', id: 'charge', quantity: 'mass', min: 2, max: 6, step: 0.5, start: 6 };

export const whenToStop: Lesson<'when-to-stop'> = {
  id: 'when-to-stop',
  choose: null,
  tryIt: charge,
  hazards: ['steam', 'neat-oil'],
  modelOnly: false,
  working: { kind: 'sheet', id: 'time-to-90' },
  questions: [
    { kind: 'curve', id: 'oil', column: 'oilCollected_kg', until_s: UNTIL_S, quantity: 'oilVolume', min: 0, max: 6e-5 },
    { kind: 'number', id: 'nine', quantity: 'duration', min: 0, max: UNTIL_S, step: 300 },
  ],
  stills: (turned) => {
    const rosemary = exampleScenario('rosemary-jacket');
    return [
      completeScenario({
        ...rosemary,
        name: 'Rosemary',
        separator: { ...rosemary.separator, bore_m: 0.2 },
        charge: { ...rosemary.charge, mass_kg: turnedNumber(turned, charge) },
        run: { ...rosemary.run, duration_s: UNTIL_S },
      }),
    ];
  },
  answer: (runs) => {
    const run = firstRun(runs);
    const { record, summary } = run;
    const all = summary.oilCollected_kg;
    const at = (share: number) => timeToCollect(record, share * all) ?? summary.end_s;
    const nine_s = at(0.9);
    const energyNine_J = columnAt(record, 'fuelEnergy_J', nine_s);
    return {
      facts: {
        firstDrop_s: summary.firstDrop_s ?? 0,
        half_s: at(0.5),
        nine_s,
        end_s: summary.end_s,
        all_mL: summary.oilCollected_mL,
        energyNine_J,
        energyRest_J: summary.energyFuel_J - energyNine_J,
      },
      truths: { oil: curveOfRun(run, 'oilCollected_kg', UNTIL_S), nine: { kind: 'number', value: nine_s } },
    };
  },
};
