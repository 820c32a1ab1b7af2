/** From a typed text to a number: what the fields of the page ask. */
import { readBareNumber, type AskedQuantity } from '../units/index.ts';
import type { Reader } from './language.ts';
import { refusedNumber, type Entry } from './typed.ts';

/** `null` where a file that is needed does not come. */
async function readLate(text: string, asked: AskedQuantity, reader: Reader): Promise<Entry | null> {
  const late = await import('./typed-reading.ts').catch(() => null);
  const read = late?.readTyped(text, asked, reader);
  if (!late || read) return read ?? null;
  return late.fetchUnits().then(
    () => late.readTyped(text, asked, reader),
    () => null,
  );
}

/**
 * Reads what was typed into a field: a bare number at once, everything else by a file that is fetched late. Never throws
 * for any text; without a connection a unit may not be readable.
 */
export async function readEntry(text: string, asked: AskedQuantity, reader: Reader): Promise<Entry> {
  const bare = readBareNumber(text, asked, reader.units);
  if (bare?.ok) return { ok: true, value: bare.value, note: null };
  if (bare) return refusedNumber(bare.fault, asked, reader);
  return (await readLate(text, asked, reader)) ?? refusedNumber({ kind: 'units-missing' }, asked, reader);
}
