/** Typed texts as a field reads or refuses them. */
import { englishReader } from '../../../sim/messages/language.ts';
import { readEntry } from '../../../sim/messages/read-entry.ts';
import { THIN_SPACE, type AskedQuantity, type UnitSystem } from '../../../sim/units/index.ts';

export const entry = (typed: string, asked: AskedQuantity, system: UnitSystem = 'metric') =>
  readEntry(typed, asked, englishReader(system));

export async function read(typed: string, asked: AskedQuantity, system: UnitSystem = 'metric') {
  const read = await entry(typed, asked, system);
  if (!read.ok) throw new Error(read.message);
  return read;
}

export async function refusal(typed: string, asked: AskedQuantity, system: UnitSystem = 'metric'): Promise<string> {
  const read = await entry(typed, asked, system);
  if (read.ok) throw new Error(`“${typed}” was read as ${read.value}`);
  return read.message.replaceAll(THIN_SPACE, ' ');
}
