/** Returning the water: oil dissolves a little in the water that comes with it (solubilities: sim/fluids/constituents). */
import { chargeFromBotanical } from '../../scenario/presets.ts';
import { exampleScenario } from '../../run/examples.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { completeScenario, turnedOption, type Control, type Lesson } from './lesson.ts';

const RETURNED = 0.85;

const plant: Control = { kind: 'choice', id: 'plant', options: ['lemon-balm', 'lavender'], start: 'lemon-balm' };

function balm(returnShare: number, option: string): Scenario {
  const example = exampleScenario('lemon-balm-cohobation');
  const charge =
    option === 'lavender'
      ? { ...example.charge, ...chargeFromBotanical('lavender-true', 'fresh'), mass_kg: 3 }
      : example.charge;
  return completeScenario({
    ...example,
    name: returnShare > 0 ? 'Water returned' : 'Water kept',
    charge,
    separator: { ...example.separator, returnShare },
  });
}

export const waterBack: Lesson<'water-back'> = {
  id: 'water-back',
  choose: null,
  tryIt: plant,
  hazards: ['steam', 'dry-pot'],
  modelOnly: false,
  working: { kind: 'sheet', id: 'recovery' },
  questions: [{ kind: 'number', id: 'share', quantity: 'share', min: 0, max: 1, step: 0.05 }],
  stills: (turned) => {
    const option = turnedOption(turned, plant);
    return [balm(0, option), balm(RETURNED, option)];
  },
  answer: ([kept, returned]) => {
    if (!kept || !returned) throw new RangeError('lesson: two runs are needed');
    const { oilDissolved_kg, oilHaze_kg, oilCollected_kg } = kept.summary;
    const inWater_kg = oilDissolved_kg + oilHaze_kg;
    const inWater = inWater_kg / (inWater_kg + oilCollected_kg);
    return {
      facts: {
        inWater,
        oilWithout_mL: kept.summary.oilCollected_mL,
        oilWith_mL: returned.summary.oilCollected_mL,
        water_kg: kept.summary.hydrosol_kg,
        returnShare: RETURNED,
      },
      truths: { share: { kind: 'number', value: inWater } },
    };
  },
};
