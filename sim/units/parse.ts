/**
 * Typed quantities to SI: `3/8 in`, `1.2 kW`, `65 F`, `1 h 30`, `40 %`, `0,8 mm`, a bare number in the shown unit, and
 * sums and products of them.
 */
import { displayUnit, type DisplayUnit } from './display.ts';
import { formatRange, withUnit } from './format.ts';
import { editableNumber, groupedDigits } from './numbers.ts';
import { QuantityReader, Refusal, UnitsMissing, type AskedQuantity, type Reading } from './quantity-reader.ts';
import type { UnitSystem } from './scales.ts';
import type * as UnitEngine from './unit-engine.ts';

export type { AskedQuantity };

export type ParsedQuantity =
  | { readonly ok: true; readonly value: number | null; readonly note: string | null }
  | { readonly ok: false; readonly message: string };

const AS_WATER = 'Taken as water, 1 kg to the litre.';
const LEFT_OPEN: ReadonlySet<string> = new Set(['', 'open', 'none', '–', '-']);

let engine: typeof UnitEngine | null = null;

/** Fetches what reads units that are not shown, and products of units; whether it came. */
export const fetchUnits = (): Promise<boolean> =>
  import('./unit-engine.ts').then(
    (fetched) => {
      engine = fetched;
      return true;
    },
    () => false,
  );

/** `allowed is 50–1500 mm`, or nothing when there are no limits. */
export function allowedWords(asked: AskedQuantity, system: UnitSystem): string {
  if (asked.min === undefined || asked.max === undefined) return '';
  const open = asked.nullable === true ? ', or leave it empty' : '';
  return `allowed is ${formatRange(asked.min, asked.max, asked.unit, system, asked.path)}${open}`;
}

/** Digits kept of a typed number, so that 3/8 in is stored as 0.009525 and not as 0.009524999999999999. */
const TYPED_DIGITS = 14;

/** A limit typed as a field shows it, rounded to four digits, is that limit. */
const LIMIT_SLACK = 5.01e-4;

const withinLimits = (value: number, asked: AskedQuantity, shownAs: DisplayUnit): number | null => {
  const { min = -Infinity, max = Infinity } = asked;
  if (value >= min && value <= max) return value;
  const limit = value < min ? min : max;
  const shownLimit = shownAs.fromSI(limit);
  return Math.abs(shownAs.fromSI(value) - shownLimit) <= LIMIT_SLACK * Math.abs(shownLimit) ? limit : null;
};

/**
 * Reads what was typed into a field; `null` where that needs the units, which are not fetched yet. Never throws for any
 * text; the message names field, value and allowed range.
 */
export function readQuantity(typed: string, asked: AskedQuantity, system: UnitSystem): ParsedQuantity | null {
  const text = typed.trim();
  const allowed = allowedWords(asked, system);
  const fail = (because: string): ParsedQuantity => ({
    ok: false,
    message: `${asked.title}: ${because}${allowed === '' ? '' : `; ${allowed}`}.`,
  });
  if (asked.nullable === true && LEFT_OPEN.has(text.toLowerCase())) return { ok: true, value: null, note: null };
  if (text === '') return fail('a number is needed');

  const reader = new QuantityReader(text, asked, system, engine);
  const { shownAs } = reader;
  let read: Reading;
  try {
    read = reader.read();
  } catch (error) {
    if (error instanceof UnitsMissing) return null;
    if (error instanceof Refusal) return fail(error.message);
    throw error;
  }
  if (!Number.isFinite(read.value)) return fail(`“${text}” can't be read: the number is not finite`);

  const value = Number(read.value.toPrecision(TYPED_DIGITS));
  const shown = withUnit(groupedDigits(editableNumber(shownAs.fromSI(value))), shownAs.label);
  if (asked.kind === 'integer' && !Number.isInteger(value)) return fail(`${shown} is not a whole number`);
  const kept = withinLimits(value, asked, shownAs);
  if (kept === null) return fail(`${shown} is too ${value < (asked.min ?? -Infinity) ? 'little' : 'much'}`);
  return { ok: true, value: kept, note: read.asWater ? AS_WATER : null };
}

/** Reads what was typed into a field, and fetches the units for it when they are needed. */
export async function parseQuantity(typed: string, asked: AskedQuantity, system: UnitSystem): Promise<ParsedQuantity> {
  const read = readQuantity(typed, asked, system);
  if (read) return read;
  const readAgain = (await fetchUnits()) ? readQuantity(typed, asked, system) : null;
  if (readAgain) return readAgain;
  const { label } = displayUnit(asked.unit, system, asked.path);
  const allowed = allowedWords(asked, system);
  return {
    ok: false,
    message: `${asked.title}: other units can't be read just now; type the number${label === '' ? '' : ` in ${label}`}${allowed === '' ? '' : `; ${allowed}`}.`,
  };
}

/** The text to put into a field for a stored value: the number in the shown unit, or nothing when left open. */
export const fieldText = (
  value: number | null,
  asked: Pick<AskedQuantity, 'unit' | 'path'>,
  system: UnitSystem,
): string => (value === null ? '' : editableNumber(displayUnit(asked.unit, system, asked.path).fromSI(value)));
