/** Numbers as text: true minus, a narrow space that does not break between thousands from 10 000 up. */
import { formatLocale } from 'd3-format';

export const THIN_SPACE = '\u202f';
export const MINUS = '\u2212';
/** Stands for a number that is missing or never reached. */
export const NO_NUMBER = '–';

const locale = formatLocale({ decimal: '.', thousands: '\u202f', grouping: [3], currency: ['', ''], minus: MINUS });
const FIXED = Array.from({ length: 13 }, (_, decimals) => ({
  plain: locale.format(`.${decimals}f`),
  grouped: locale.format(`,.${decimals}f`),
}));

const MOST_DECIMALS = FIXED.length - 1;
const GROUP_FROM = 10_000;

/** Lifts a half that conversion left a last bit short, so that 9.525 mm is printed 9.53 like in any table. */
const HALF_UP = 1 + 1e-12;

/** A number with a fixed count of decimals. */
export function formatNumber(value: number, decimals: number): string {
  if (!Number.isFinite(value)) return NO_NUMBER;
  const forms = FIXED[Math.max(0, Math.min(MOST_DECIMALS, Math.round(decimals)))] as (typeof FIXED)[number];
  return (Math.abs(value) >= GROUP_FROM ? forms.grouped : forms.plain)(value * HALF_UP);
}

/** Decimals that leave a number with so many significant digits, whole digits never dropped. */
export function decimalsFor(value: number, significant: number): number {
  if (value === 0 || !Number.isFinite(value)) return 0;
  const rounded = Number(Math.abs(value).toPrecision(significant));
  return Math.max(0, significant - 1 - Math.floor(Math.log10(rounded)));
}

/** Digits shown of a number that people typed, and of one that came out of a conversion or a library. */
const TYPED_DIGITS = 6;
const RECKONED_DIGITS = 4;
const LEAST_PLAIN = 1e-9;
const SAME_NUMBER = 1e-10;

/**
 * A number to be edited, without grouping or trailing zeros: all its digits when six hold them, else four, for
 * 12.5984 in is 12.6 in to anyone but a computer. Whole digits are never dropped.
 */
export function editableNumber(value: number): string {
  if (!Number.isFinite(value)) return '';
  const six = Number(value.toPrecision(TYPED_DIGITS));
  const digits = Math.abs(six - value) <= SAME_NUMBER * Math.abs(value) ? TYPED_DIGITS : RECKONED_DIGITS;
  const size = Math.abs(value);
  if (size === 0) return '0';
  if (size < LEAST_PLAIN || size >= 1e15) return String(Number(value.toPrecision(digits))).replace('-', MINUS);
  const decimals = Math.min(20, Math.max(0, digits - 1 - Math.floor(Math.log10(size))));
  const fixed = value.toFixed(decimals);
  return (fixed.includes('.') ? fixed.replace(/\.?0+$/u, '') : fixed).replace('-', MINUS);
}

/** The same text with its whole digits in groups of three from five digits up. */
export const groupedDigits = (number: string): string =>
  number.replace(
    /^(\D?)(\d{5,})/u,
    (_, sign: string, whole: string) => sign + whole.replace(/\B(?=(?:\d{3})+$)/gu, '\u202f'),
  );
