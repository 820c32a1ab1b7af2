/** Numbers as text: true minus, a narrow space between thousands from 10 000 up. */
import { formatLocale } from 'd3-format';

export const THIN_SPACE = '\u2009';
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

/** A number with a fixed count of decimals. */
export function formatNumber(value: number, decimals: number): string {
  if (!Number.isFinite(value)) return NO_NUMBER;
  const forms = FIXED[Math.max(0, Math.min(MOST_DECIMALS, Math.round(decimals)))] as (typeof FIXED)[number];
  return (Math.abs(value) >= GROUP_FROM ? forms.grouped : forms.plain)(value);
}

/** Decimals that leave a number with so many significant digits, whole digits never dropped. */
export function decimalsFor(value: number, significant: number): number {
  if (value === 0 || !Number.isFinite(value)) return 0;
  const rounded = Number(Math.abs(value).toPrecision(significant));
  return Math.max(0, significant - 1 - Math.floor(Math.log10(rounded)));
}

/** Digits kept in an editable field; more than any measurement, fewer than the noise of unit conversion. */
const EDIT_DIGITS = 6;
const LEAST_PLAIN = 1e-9;

/** A number to be edited: as many digits as it needs, up to six, no grouping, no trailing zeros. */
export function editableNumber(value: number): string {
  if (!Number.isFinite(value)) return '';
  const rounded = Number(value.toPrecision(EDIT_DIGITS));
  if (rounded === 0) return '0';
  const small = Math.abs(rounded);
  if (small < LEAST_PLAIN || small >= 1e15) return String(rounded).replace('-', MINUS);
  const decimals = Math.min(20, Math.max(0, EDIT_DIGITS - 1 - Math.floor(Math.log10(small))));
  const fixed = rounded.toFixed(decimals);
  return (fixed.includes('.') ? fixed.replace(/\.?0+$/u, '') : fixed).replace('-', MINUS);
}

/** The same text with its whole digits in groups of three from five digits up. */
export const groupedDigits = (number: string): string =>
  number.replace(/^(\D?)(\d{5,})/u, (_, sign: string, whole: string) => sign + whole.replace(/\B(?=(?:\d{3})+$)/gu, '\u202f'));
