/** Typed numbers to SI: a bare number in the shown unit at once, everything else by a file that is fetched late. */
import { refused, taken, type AskedQuantity, type ParsedQuantity } from './asked-quantity.ts';
import { displayUnit } from './display.ts';
import { editableNumber } from './numbers.ts';
import type { UnitSystem } from './scales.ts';

const BARE_NUMBER = /^-?\d+(?:\.\d+)?$/u;

/** `null` where a file that is needed does not come. */
async function readLate(typed: string, asked: AskedQuantity, system: UnitSystem): Promise<ParsedQuantity | null> {
  const late = await import('./read-quantity.ts').catch(() => null);
  const read = late?.readQuantity(typed, asked, system);
  if (!late || read) return read ?? null;
  return late.fetchUnits().then(
    () => late.readQuantity(typed, asked, system),
    () => null,
  );
}

/** Reads what was typed into a field. Never throws for any text; without a connection a unit may not be readable. */
export async function parseQuantity(typed: string, asked: AskedQuantity, system: UnitSystem): Promise<ParsedQuantity> {
  const shownAs = displayUnit(asked.unit, system, asked.path);
  const text = typed.trim();
  if (BARE_NUMBER.test(text) && asked.bareNumbers !== 'SI') return taken(shownAs.toSI(Number(text)), asked, system);
  const read = await readLate(typed, asked, system);
  const inUnit = shownAs.label === '' ? '' : ` in ${shownAs.label}`;
  return read ?? refused(`other units can't be read just now; type the number${inUnit}`, asked, system);
}

/** The text to put into a field for a stored value: the number in the shown unit, or nothing when left open. */
export const fieldText = (
  value: number | null,
  asked: Pick<AskedQuantity, 'unit' | 'path'>,
  system: UnitSystem,
): string => (value === null ? '' : editableNumber(displayUnit(asked.unit, system, asked.path).fromSI(value)));
