/**
 * Typed quantities to SI: `3/8 in`, `1.2 kW`, `65 F`, `1 h 30`, `40 %`, `0,8 mm`, and sums and products of them. The page
 * fetches it when more than a bare number is typed.
 */
import { taken, type AskedQuantity } from './asked-quantity.ts';
import { QuantityReader, Refusal, UnitsMissing, type Reading } from './quantity-reader.ts';
import type { UnitSystem } from './scales.ts';
import type { TypedFault, TypedQuantity } from './typed-fault.ts';
import type * as UnitEngine from './unit-engine.ts';

const LEFT_OPEN: ReadonlySet<string> = new Set(['', 'open', 'none', '–', '-']);

const refused = (fault: TypedFault): TypedQuantity => ({ ok: false, fault });

let engine: typeof UnitEngine | null = null;

/** Fetches what reads units that are not shown, and products of units; rejects where it does not come. */
export async function fetchUnits(): Promise<void> {
  engine = await import('./unit-engine.ts');
}

/**
 * Reads what was typed into a field; `null` where that needs the units, which are not fetched yet. Never throws for any
 * text.
 */
export function readQuantity(typed: string, asked: AskedQuantity, system: UnitSystem): TypedQuantity | null {
  const text = typed.trim();
  if (asked.nullable === true && LEFT_OPEN.has(text.toLowerCase())) return { ok: true, value: null, asWater: false };
  if (text === '') return refused({ kind: 'number-needed' });
  let read: Reading;
  try {
    read = new QuantityReader(text, asked, system, engine).read();
  } catch (error) {
    if (error instanceof UnitsMissing) return null;
    if (error instanceof Refusal) return refused(error.fault);
    throw error;
  }
  if (!Number.isFinite(read.value))
    return refused({ kind: 'unreadable', typed: text, because: { kind: 'not-finite' } });
  return taken(read.value, asked, system, read.isWorkedOut ? text : null, read.asWater);
}
