/** What a field holds, what it would hold by default, and how either is said. */
import {
  botanicals,
  ownPlantName,
  chargeFromPlant,
  type FieldInfo,
  type Scenario,
  type Schedule,
  fieldText,
  formatQuantity,
  displayUnit,
  THIN_SPACE,
  type UnitSystem,
} from '../../../../sim/index.ts';
import { allPlants } from '../../../state/own-plants-store.ts';
import { valueAtPath } from '../../../state/field-path.ts';
import { constituentName } from './constituent-names.ts';
import { choiceWords } from './part-words.ts';
import { scheduleWords } from './schedule-words.ts';

export const LEFT_OPEN = 'left open';
const LONGEST_TEXT = 40;

type Composition = Scenario['charge']['composition'];
type Ice = Scenario['cooling']['ice'];

/** The default of a field; the figures of a plant are those of the chosen plant in its state. */
export function defaultOf(field: FieldInfo, scenario: Scenario): unknown {
  const { botanical, state } = scenario.charge;
  if (field.part !== 'charge' || field.path === 'charge.botanical') return field.default;
  const plant = allPlants().find(({ id }) => id === botanical);
  if (!plant) return field.default;
  const preset = { charge: chargeFromPlant(plant, state) };
  return valueAtPath(preset, field.path) ?? field.default;
}

/** Whether two values of a field are the same, looking into lists and schedules. */
export const isSame = (a: unknown, b: unknown): boolean => Object.is(a, b) || JSON.stringify(a) === JSON.stringify(b);

export function numberWords(value: number | null, field: FieldInfo, units: UnitSystem): string {
  if (value === null) return LEFT_OPEN;
  const { label } = displayUnit(field.unit, units, field.path);
  const number = fieldText(value, field, units);
  return label === '' ? number : label === '°' ? `${number}°` : `${number}${THIN_SPACE}${label}`;
}

const listWords = (value: unknown, field: FieldInfo, units: UnitSystem): string => {
  if (field.path === 'cooling.ice') {
    const ice = value as Ice;
    const sum = ice.reduce((total, entry) => total + entry.mass_kg, 0);
    return ice.length === 0
      ? 'none'
      : `${formatQuantity(sum, 'kg', units)} in ${ice.length} lot${ice.length === 1 ? '' : 's'}`;
  }
  const largest = [...(value as Composition)].sort((a, b) => b.share - a.share);
  const first = largest.slice(0, 2).map(({ constituent }) => constituentName(constituent));
  const rest = largest.length - first.length;
  return rest > 0 ? `${first.join(', ')} and ${rest} more` : first.join(' and ');
};

/** A field's value as one reads it; a text stands in quotation marks within a sentence, and without them alone. */
export function valueWords(
  value: unknown,
  field: FieldInfo,
  units: UnitSystem,
  where: 'in-a-sentence' | 'alone' = 'in-a-sentence',
): string {
  switch (field.kind) {
    case 'number':
    case 'integer':
      return numberWords(value as number | null, field, units);
    case 'choice':
      return choiceWords(field.path, value as string);
    case 'schedule':
      return scheduleWords(value as Schedule, field, units);
    case 'list':
      return listWords(value, field, units);
    case 'text': {
      const text = value as string;
      const named =
        field.path === 'charge.botanical'
          ? (botanicals.find(({ id }) => id === text)?.name.value ?? (ownPlantName(text) || text))
          : text;
      if (named === '') return 'empty';
      const short = named.length > LONGEST_TEXT ? `${named.slice(0, LONGEST_TEXT - 1)}…` : named;
      return where === 'alone' ? short : `“${short}”`;
    }
  }
}
