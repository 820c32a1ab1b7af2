/** Numbers and units of a working as plain text, in the SI units in which the model reckons. */
import { MINUS, NO_NUMBER } from '../../../sim/index.ts';

const DIGITS = 5;
const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹';

const superscript = (power: number): string =>
  (power < 0 ? '⁻' : '') + [...String(Math.abs(power))].map((digit) => SUPERSCRIPTS[Number(digit)] ?? '').join('');

/** Five digits; powers of ten where plain digits would be hard to read. */
export function plainNumber(value: number): string {
  if (!Number.isFinite(value)) return NO_NUMBER;
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size < 1e-3 || size >= 1e7) {
    const [mantissa = '0', power = '0'] = value.toExponential(DIGITS - 1).split('e');
    return `${String(Number(mantissa)).replace('-', MINUS)} × 10${superscript(Number(power))}`;
  }
  const plain = String(Number(value.toPrecision(DIGITS)));
  const [whole = '0', decimals] = plain.replace('-', MINUS).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/gu, '\u202f');
  return decimals === undefined ? grouped : `${grouped}.${decimals}`;
}

export const unitWords = (unit: string): string => (unit === '1' ? '' : unit);
