/** What is wrong with a typed quantity that is more than a number, in English. */
import {
  displayUnit,
  type AskedQuantity,
  type ReadingFault,
  type StoredUnit,
  type Unreadable,
} from '../../units/index.ts';
import type { Quantities } from '../quantities.ts';

const CALLED: Readonly<Record<StoredUnit, string>> = {
  m: 'a length',
  K: 'a temperature',
  kg: 'a weight',
  'm³': 'a volume',
  'kg/s': 'a flow',
  Pa: 'a pressure',
  W: 'a power',
  J: 'an energy',
  s: 'a time',
  'kg/kg': 'a share by weight',
  'mol/kg': 'an amount by weight',
  'kg/m³': 'a weight by volume',
  'kg/m': 'a weight by length',
  'm/s': 'a speed',
  'W/m': 'a heat by length',
  'W/m²': 'a heat by area',
  'W/(m K)': 'a conductivity',
  'm² K/W': 'a thermal resistance',
  'J/(kg K)': 'a heat capacity',
  'W/(m² K)': 'a heat transfer coefficient',
  'm K/W': 'a thermal resistance by length',
  'Pa s': 'a viscosity',
  'm²/s': 'a kinematic viscosity or diffusivity',
  'N/m': 'a surface tension',
  N: 'a force',
  'kg/(m² s)': 'a flow by area',
  'm³/s': 'a flow by volume',
  'm²': 'an area',
  'm/s²': 'an acceleration',
  'Pa/m': 'a pressure by length',
  'Pa/K': 'a pressure by temperature',
  'J/kg': 'an energy by weight',
  'm³/kg': 'a volume by weight',
  'W/K': 'a heat by temperature',
  'J/K': 'a heat capacity of the whole',
  '1/K': 'an expansion by temperature',
  'J/mol': 'an energy by amount',
  '1/s': 'a rate',
  V: 'a voltage',
  A: 'a current',
  rad: 'an angle',
  '1/J': 'a price by energy',
  '1/kg': 'a price by weight',
  '1/m': 'a price by length',
  '1/m³': 'a price by volume',
};

const UNREADABLE: Readonly<
  Record<Exclude<Unreadable['kind'], 'unit-needed' | 'not-addable' | 'other-quantity'>, string>
> = {
  'no-number': 'no number could be read',
  'number-missing': 'a number is missing',
  'not-finite': 'the number is not finite',
  'too-long': 'it is too long',
  'comma-unclear': 'the comma could mark decimals or thousands; leave it out or use a point',
  'opening-bracket-missing': 'an opening bracket is missing',
  'closing-bracket-missing': 'a closing bracket is missing',
  'sign-missing': 'a sign is missing between two of its numbers',
  'sign-before-bracket-missing': 'a sign is missing before a bracket',
  'unit-missing': 'one of its numbers has no unit',
  'several-temperatures': 'one temperature is needed',
  'division-by-zero': 'it divides by zero',
};

export function typedReading(q: Quantities) {
  function unreadable(because: Unreadable, { unit, path }: AskedQuantity): string {
    switch (because.kind) {
      case 'unit-needed': {
        const { label } = displayUnit(unit, q.units, path);
        return `“${because.part}” needs a unit${label === '' ? '' : `, such as ${label}`}`;
      }
      case 'not-addable':
        return `“${because.left}” and “${because.right}” can't be added up`;
      case 'other-quantity':
        return otherQuantity(because);
      default:
        return UNREADABLE[because.kind];
    }
  }

  const otherQuantity = ({ part, asked }: { readonly part: string; readonly asked: StoredUnit | null }): string =>
    `“${part}” is not ${asked === null ? 'a plain number' : CALLED[asked]}`;

  return {
    because(fault: ReadingFault, asked: AskedQuantity): string {
      switch (fault.kind) {
        case 'unit-unknown':
          return `the unit “${fault.unit}” is not known here`;
        case 'other-quantity':
          return otherQuantity(fault);
        case 'unreadable':
          return `“${fault.typed}” can't be read: ${unreadable(fault.because, asked)}`;
      }
    },

    /** A volume that was taken as a weight. */
    asWater: `Taken as water, ${q.units === 'us' ? '8.35 lb to the gallon' : '1 kg to the litre'}.`,
  };
}
