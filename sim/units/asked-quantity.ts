/** A quantity that a field asks for: what may be typed, and what is said of a number that was. */
import { displayUnit, type DisplayUnit } from './display.ts';
import { formatRange, withUnit } from './format.ts';
import { editableNumber, groupedDigits } from './numbers.ts';
import type { UnitSystem } from './scales.ts';

/** What is asked for; a scenario's field information fits as it is. */
export interface AskedQuantity {
  readonly title: string;
  readonly unit: string;
  /** Path of the field or name of a kind; decides the unit a bare number has. */
  readonly path?: string;
  readonly min?: number;
  readonly max?: number;
  readonly nullable?: boolean;
  /** `integer` asks for a whole number. */
  readonly kind?: string;
  /** What a bare number is in: the unit that is shown when left out. */
  readonly bareNumbers?: 'shown' | 'SI';
}

export type ParsedQuantity =
  | { readonly ok: true; readonly value: number | null; readonly note: string | null }
  | { readonly ok: false; readonly message: string };

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

/** The message names the field, what is wrong with the value, and the allowed range. */
export function refused(because: string, asked: AskedQuantity, system: UnitSystem): ParsedQuantity {
  const allowed = allowedWords(asked, system);
  return { ok: false, message: `${asked.title}: ${because}${allowed === '' ? '' : `; ${allowed}`}.` };
}

/** A number in SI, taken where it is one that is asked for. */
export function taken(
  number: number,
  asked: AskedQuantity,
  system: UnitSystem,
  note: string | null = null,
): ParsedQuantity {
  const shownAs = displayUnit(asked.unit, system, asked.path);
  const value = Number(number.toPrecision(TYPED_DIGITS));
  const shown = withUnit(groupedDigits(editableNumber(shownAs.fromSI(value))), shownAs.label);
  if (asked.kind === 'integer' && !Number.isInteger(value))
    return refused(`${shown} is not a whole number`, asked, system);
  const kept = withinLimits(value, asked, shownAs);
  if (kept === null)
    return refused(`${shown} is too ${value < (asked.min ?? -Infinity) ? 'little' : 'much'}`, asked, system);
  return { ok: true, value: kept, note };
}
