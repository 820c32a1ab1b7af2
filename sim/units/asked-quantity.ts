/** A quantity that a field asks for, and whether a number is one. */
import { displayUnit, type DisplayUnit } from './display.ts';
import type { UnitSystem } from './scales.ts';
import type { NumberFault, TypedQuantity } from './typed-fault.ts';

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
 * A number in SI, taken where it is one that is asked for.
 * @param typed the sum or product that it was typed as, `null` for a number that stands as it was typed
 */
export function taken(
  number: number,
  asked: AskedQuantity,
  system: UnitSystem,
  typed: string | null = null,
  asWater = false,
): TypedQuantity<NumberFault> {
  const value = Number(number.toPrecision(TYPED_DIGITS));
  if (asked.kind === 'integer' && !Number.isInteger(value))
    return { ok: false, fault: { kind: 'not-whole', value, typed } };
  const kept = withinLimits(value, asked, displayUnit(asked.unit, system, asked.path));
  if (kept !== null) return { ok: true, value: kept, asWater };
  const kind = value < (asked.min ?? -Infinity) ? 'too-little' : 'too-much';
  return { ok: false, fault: { kind, value, typed } };
}
