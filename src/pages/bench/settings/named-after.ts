/** A still is called after its plant and how it is charged until the reader names it, and drops an example's note with it. */
import { botanicals, examples, ownPlantName, type Scenario } from '../../../../sim/index.ts';
import { withValueAtPath } from '../../../state/field-path.ts';

type Values = Readonly<Record<string, unknown>>;

const NAMING = ['charge.botanical', 'charge.state', 'pot.layout'] as const;

const CHARGED: Readonly<Record<Scenario['pot']['layout'], string>> = {
  water: 'in water',
  'water-and-steam': 'over water',
  steam: 'by steam from a boiler',
};

const sentenceCase = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** What a still is called that nobody has named; `null` for a plant without a name. */
export function nameAfter({ charge, pot }: Scenario): string | null {
  const name = botanicals.find(({ id }) => id === charge.botanical)?.name.value ?? ownPlantName(charge.botanical);
  return name === '' ? null : sentenceCase(`${name} ${CHARGED[pot.layout]}`);
}

/** A change with the name that goes with it, where it is of the plant or its place and the reader has given none. */
export function withName(values: Values, scenario: Scenario): Values {
  if (!NAMING.some((path) => path in values) || 'name' in values) return values;
  const example = examples.find(({ scenario: { name } }) => name === scenario.name);
  if (!example && scenario.name !== nameAfter(scenario)) return values;
  const next = Object.entries(values).reduce((whole, [path, value]) => withValueAtPath(whole, path, value), scenario);
  const name = nameAfter(next);
  if (name === null || name === nameAfter(scenario)) return values;
  const isTheirNote = example !== undefined && scenario.note === example.scenario.note;
  return { ...values, name, ...(isTheirNote ? { note: '' } : {}) };
}
