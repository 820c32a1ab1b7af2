/** What is wrong with a typed number, in English. */
import { displayUnit, type AskedQuantity, type NumberFault } from '../../units/index.ts';
import type { Quantities } from '../quantities.ts';

export function typed(q: Quantities) {
  /** `allowed is 50–1500 mm`, or nothing when there are no limits. */
  const allowed = ({ min, max, unit, path, nullable }: AskedQuantity): string =>
    min === undefined || max === undefined
      ? ''
      : `; allowed is ${q.range(min, max, unit, path)}${nullable === true ? ', or leave it empty' : ''}`;

  const because = (fault: NumberFault, { unit, path }: AskedQuantity): string => {
    if (fault.kind === 'number-needed') return 'a number is needed';
    if (fault.kind === 'units-missing') {
      const { label } = displayUnit(unit, q.units, path);
      return `other units can't be read just now; type the number${label === '' ? '' : ` in ${label}`}`;
    }
    const shown = q.typed(fault.value, unit, path);
    const what = { 'too-little': 'too little', 'too-much': 'too much', 'not-whole': 'not a whole number' }[fault.kind];
    return fault.typed === null ? `${shown} is ${what}` : `“${fault.typed}” comes to ${shown}, which is ${what}`;
  };

  /** The field, what is wrong with the value, and what is allowed. */
  const sentence = (because: string, asked: AskedQuantity): string => `${asked.title}: ${because}${allowed(asked)}.`;

  return { because, sentence };
}
