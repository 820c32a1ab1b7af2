/**
 * When a pot with too little water runs dry: water over steam rate, from the first boil. Model only. That plant on a dry
 * base scorches is common practice and no result of the model, which has no burnt notes.
 */
import { columnAt } from '../../run/record.ts';
import { AMPLE_COIL, gardenStill } from './class-still.ts';
import { completeScenario, turnedNumber, type Control, type Lesson } from './lesson.ts';

const UNTIL_S = 10_800;
const ENOUGH_KG = 8;
/** The steam is steady so long after the first boil. */
const STEADY_AFTER_S = 900;

const water: Control = { kind: 'number', id: 'water', quantity: 'water', min: 1.5, max: 8, step: 0.5, start: 2.5 };

const filled = (name: string, water_kg: number) =>
  completeScenario(
    gardenStill(name, {
      ...AMPLE_COIL,
      heat: {
        setting: [
          { at_s: 0, value: 1 },
          { at_s: 0, after: 'first-drop', value: 0.7 },
        ],
      },
      pot: { water_kg },
      run: { duration_s: UNTIL_S },
    }),
  );

export const dryPot: Lesson<'dry-pot'> = {
  id: 'dry-pot',
  choose: null,
  tryIt: water,
  hazards: ['dry-pot', 'flame'],
  modelOnly: true,
  working: { kind: 'sheet', id: 'steam-rate' },
  questions: [
    { kind: 'number', id: 'minute', quantity: 'duration', min: 0, max: UNTIL_S, step: 300 },
    { kind: 'choice', id: 'smell', options: ['nothing', 'stronger', 'burnt'] },
  ],
  stills: (turned) => [filled('Too little', turnedNumber(turned, water)), filled('Enough', ENOUGH_KG)],
  answer: ([little], turned) => {
    if (!little) throw new RangeError('lesson: a run is needed');
    const { summary, record } = little;
    const boil_s = summary.firstBoil_s ?? 0;
    const steam_kg_s = columnAt(record, 'steamRate_kg_s', Math.min(summary.end_s, boil_s + STEADY_AFTER_S));
    const water_kg = turnedNumber(turned, water);
    const dry_s = summary.endReason === 'pot-dry' ? summary.end_s : null;
    return {
      facts: { water_kg, boil_s, steam_kg_s, reckoned_s: boil_s + water_kg / steam_kg_s, dry_s, enough_kg: ENOUGH_KG },
      truths: { minute: { kind: 'number', value: dry_s ?? UNTIL_S }, smell: { kind: 'choice', option: 'burnt' } },
    };
  },
};
