/** Quantities as text, in the unit system the reader chose. */
import { displayScale, displayUnit, everydayToSI, kindOf, scaleFor, type DisplayUnit } from './display.ts';
import { formatDuration } from './duration.ts';
import { feetAndInches, tradeFraction } from './feet-and-inches.ts';
import { decimalsFor, formatNumber, MINUS, NO_NUMBER, THIN_SPACE } from './numbers.ts';
import { KINDS, type KindName, type Scale, type UnitSystem } from './scales.ts';

export interface FormatOptions {
  /** Path of a scenario field, name of a record column or summary key, or a kind such as `coolantFlow`. */
  readonly hint?: string;
  /** Decimals, instead of what the size of the number suggests. */
  readonly decimals?: number;
  /** Significant digits, instead of the usual two or three. */
  readonly significant?: number;
  /** A number of the same unit whose size chooses the scale, so that two numbers stand in one unit. */
  readonly near?: number;
  /** Density by which a mass of oil is said as a volume. */
  readonly density_kg_m3?: number | null;
  /** A plus before positive numbers, for differences. */
  readonly signed?: boolean;
  /** The number alone. */
  readonly bare?: boolean;
}

/** Value and unit joined by a thin space; an angle's degree sign and a pure number stand without one. */
export const withUnit = (number: string, label: string): string =>
  label === '' ? number : label === '°' ? `${number}°` : `${number}${THIN_SPACE}${label}`;

const trimmed = (number: string): string => (number.includes('.') ? number.replace(/\.?0+$/u, '') : number);

/** How near to a whole number counts as one after conversion. */
const WHOLE = 1e-9;

const decimalsOf = (shown: number, scale: Scale, options: FormatOptions): number => {
  if (options.decimals !== undefined) return options.decimals;
  if (options.significant !== undefined) return decimalsFor(shown, options.significant);
  if (scale.significant !== null) return decimalsFor(shown, scale.significant);
  // A fixed count of decimals must not round most of a small number away; a temperature near zero is not small.
  const size = Math.abs(shown);
  const keepsColumn = scale.zero !== 0 || size >= 10 || Math.abs(size - Math.round(size)) < WHOLE;
  return keepsColumn ? scale.decimals : Math.max(scale.decimals, decimalsFor(shown, 2));
};

export interface QuantityParts {
  readonly number: string;
  /** Unit that stands after the number; empty for a pure number. */
  readonly label: string;
  /** Set for a span of time, which is said in hours and minutes. */
  readonly time_s: number | null;
  /** What stands before it, as feet before inches. */
  readonly lead: { readonly number: string; readonly label: string } | null;
}

/** What the tape measure and the tube trade say otherwise than in decimals; `null` for all else, and where decimals are asked for. */
function inInches(
  value_m: number,
  kind: KindName | null,
  system: UnitSystem,
  { bare, decimals }: FormatOptions,
): Pick<QuantityParts, 'number' | 'label' | 'lead'> | null {
  if (system !== 'us' || bare === true || decimals !== undefined) return null;
  if (kind === 'tubeOutside') {
    const fraction = tradeFraction(value_m);
    return fraction === null ? null : { number: fraction, label: 'in', lead: null };
  }
  if (kind !== 'run' || value_m === 0) return null;
  const { feet, inches } = feetAndInches(value_m);
  if (feet === null) return { number: inches ?? '0', label: 'in', lead: null };
  return inches === null
    ? { number: feet, label: 'ft', lead: null }
    : { number: inches, label: 'in', lead: { number: feet, label: 'ft' } };
}

/** Number and unit of a finite value stored in `unit`, in the scale that fits its size. */
export function quantityParts(
  value: number,
  unit: string,
  system: UnitSystem,
  options: FormatOptions = {},
): QuantityParts {
  const density = options.density_kg_m3 ?? null;
  const asVolume = unit === 'kg' && density !== null && density > 0;
  const scale = asVolume
    ? scaleFor(KINDS.oilVolume, system, value / density)
    : displayScale(unit, system, options.hint, options.near ?? value);
  const stored = asVolume ? value / density : everydayToSI(value, unit);
  const kind = kindOf(unit, options.hint);
  const said = inInches(stored, kind, system, options);
  if (said) return { ...said, time_s: null };
  const shown = (stored - scale.zero) / scale.size;
  const full = formatNumber(shown, decimalsOf(shown, scale, options));
  return {
    number: scale.label === '' && options.decimals === undefined ? trimmed(full) : full,
    label: scale.label,
    time_s: kind === 'duration' ? stored : null,
    lead: null,
  };
}

/**
 * A number stored in `unit` as people say it: `1.8 kW`, `34 L`, `99.1 °C`, `1 h 52 min`. `null` and non-finite
 * numbers give a dash.
 */
export function formatQuantity(
  value: number | null | undefined,
  unit: string,
  system: UnitSystem,
  options: FormatOptions = {},
): string {
  if (value === null || value === undefined || !Number.isFinite(value)) return NO_NUMBER;
  const plus = options.signed === true && value > 0 ? '+' : '';
  const { number, label, time_s, lead } = quantityParts(value, unit, system, options);
  if (options.bare === true) return plus + number;
  if (time_s !== null) return plus + formatDuration(time_s);
  return `${plus}${lead ? `${withUnit(lead.number, lead.label)} ` : ''}${withUnit(number, label)}`;
}

/** A difference of temperatures, which has no zero to shift: a rise of 10 K is 18 °F. */
export const formatTemperatureDifference = (value_K: number, system: UnitSystem, options: FormatOptions = {}): string =>
  formatQuantity(value_K, 'K', system, { ...options, hint: 'temperatureDifference' });

const RANGE_DIGITS = 4;
/** Keeps an end that is exact in the display unit from being rounded inward by the last bit of a conversion. */
const LAST_BITS = 1e-9;

/** An end of a range, rounded inward so that what is printed is allowed. */
function rangeEnd(value: number, which: 'least' | 'most', { fromSI }: Pick<DisplayUnit, 'fromSI'>): string {
  const shown = fromSI(value);
  const decimals = Math.min(12, decimalsFor(shown, RANGE_DIGITS));
  const step = 10 ** -decimals;
  const lastBits = LAST_BITS * Math.abs(shown / step);
  const steps = which === 'least' ? Math.ceil(shown / step - lastBits) : Math.floor(shown / step + lastBits);
  return trimmed(formatNumber(steps * step, decimals));
}

/** A limit in the unit of its field, rounded to the allowed side. */
export function limitParts(
  value: number,
  which: 'least' | 'most',
  unit: string,
  system: UnitSystem,
  hint?: string,
): Pick<QuantityParts, 'number' | 'label'> {
  const shownAs = displayUnit(unit, system, hint);
  return { number: rangeEnd(value, which, shownAs), label: shownAs.label };
}

/** Number and unit of a closed range, each end rounded inward so that what is printed is allowed. */
export function rangeParts(
  min: number,
  max: number,
  unit: string,
  system: UnitSystem,
  hint?: string,
): Pick<QuantityParts, 'number' | 'label'> {
  const shownAs = displayUnit(unit, system, hint);
  const low = rangeEnd(min, 'least', shownAs);
  const high = rangeEnd(max, 'most', shownAs);
  const joint = low.startsWith(MINUS) || high.startsWith(MINUS) ? ' to ' : '–';
  return { number: `${low}${joint}${high}`, label: shownAs.label };
}

/** A closed range in one unit, `50–1500 mm`. */
export function formatRange(min: number, max: number, unit: string, system: UnitSystem, hint?: string): string {
  const { number, label } = rangeParts(min, max, unit, system, hint);
  return withUnit(number, label);
}
