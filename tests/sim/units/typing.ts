/** Typed texts as a field reads or refuses them. */
import { parseQuantity, THIN_SPACE, type AskedQuantity, type UnitSystem } from '../../../sim/units/index.ts';

export async function read(typed: string, asked: AskedQuantity, system: UnitSystem = 'metric') {
  const parsed = await parseQuantity(typed, asked, system);
  if (!parsed.ok) throw new Error(parsed.message);
  return parsed;
}

export async function refusal(typed: string, asked: AskedQuantity, system: UnitSystem = 'metric'): Promise<string> {
  const parsed = await parseQuantity(typed, asked, system);
  if (parsed.ok) throw new Error(`“${typed}” was read as ${parsed.value}`);
  return parsed.message.replaceAll(THIN_SPACE, ' ');
}
