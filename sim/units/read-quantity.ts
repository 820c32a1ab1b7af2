/**
 * Typed quantities to SI: `3/8 in`, `1.2 kW`, `65 F`, `1 h 30`, `40 %`, `0,8 mm`, and sums and products of them. The page
 * fetches it when more than a bare number is typed.
 */
import { refused, taken, type AskedQuantity, type ParsedQuantity } from './asked-quantity.ts';
import { QuantityReader, Refusal, UnitsMissing, type Reading } from './quantity-reader.ts';
import type { UnitSystem } from './scales.ts';
import type * as UnitEngine from './unit-engine.ts';

const AS_WATER: Readonly<Record<UnitSystem, string>> = {
  metric: 'Taken as water, 1 kg to the litre.',
  us: 'Taken as water, 8.35 lb to the gallon.',
};
const LEFT_OPEN: ReadonlySet<string> = new Set(['', 'open', 'none', '–', '-']);

let engine: typeof UnitEngine | null = null;

/** Fetches what reads units that are not shown, and products of units; rejects where it does not come. */
export async function fetchUnits(): Promise<void> {
  engine = await import('./unit-engine.ts');
}

/**
 * Reads what was typed into a field; `null` where that needs the units, which are not fetched yet. Never throws for any
 * text; the message names field, value and allowed range.
 */
export function readQuantity(typed: string, asked: AskedQuantity, system: UnitSystem): ParsedQuantity | null {
  const text = typed.trim();
  if (asked.nullable === true && LEFT_OPEN.has(text.toLowerCase())) return { ok: true, value: null, note: null };
  if (text === '') return refused('a number is needed', asked, system);
  let read: Reading;
  try {
    read = new QuantityReader(text, asked, system, engine).read();
  } catch (error) {
    if (error instanceof UnitsMissing) return null;
    if (error instanceof Refusal) return refused(error.message, asked, system);
    throw error;
  }
  if (!Number.isFinite(read.value)) return refused(`“${text}” can't be read: the number is not finite`, asked, system);
  return taken(read.value, asked, system, read.asWater ? AS_WATER[system] : null);
}
