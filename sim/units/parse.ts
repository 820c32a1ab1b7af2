/** Bare numbers to SI, and stored values to the text of a field. */
import { taken, type AskedQuantity } from './asked-quantity.ts';
import { displayUnit } from './display.ts';
import { editableNumber } from './numbers.ts';
import type { UnitSystem } from './scales.ts';
import type { NumberFault, TypedQuantity } from './typed-fault.ts';

const BARE_NUMBER = /^-?\d+(?:\.\d+)?$/u;

/** A bare number in the unit that is shown; `null` for any other text, which `read-quantity.ts` reads. */
export function readBareNumber(
  typed: string,
  asked: AskedQuantity,
  system: UnitSystem,
): TypedQuantity<NumberFault> | null {
  const text = typed.trim();
  if (!BARE_NUMBER.test(text) || asked.bareNumbers === 'SI') return null;
  return taken(displayUnit(asked.unit, system, asked.path).toSI(Number(text)), asked, system);
}

/** The text to put into a field for a stored value: the number in the shown unit, or nothing when left open. */
export const fieldText = (
  value: number | null,
  asked: Pick<AskedQuantity, 'unit' | 'path'>,
  system: UnitSystem,
): string => (value === null ? '' : editableNumber(displayUnit(asked.unit, system, asked.path).fromSI(value)));
