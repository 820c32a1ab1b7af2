/** Numbers and units of a working as plain text, in the SI units in which the model reckons. */
import { MINUS, NO_NUMBER } from '../../../sim/index.ts';

const DIGITS = 5;
const withMinus = (digits: string): string => digits.replace('-', MINUS);

/** Five digits, with the power of ten where plain digits would be hard to read. */
export function digitsAndPower(value: number): readonly [digits: string, power: string | null] {
  if (!Number.isFinite(value)) return [NO_NUMBER, null];
  if (value === 0) return ['0', null];
  const size = Math.abs(value);
  if (size < 1e-3 || size >= 1e7) {
    const [mantissa = '0', power = '0'] = value.toExponential(DIGITS - 1).split('e');
    return [withMinus(String(Number(mantissa))), withMinus(String(Number(power)))];
  }
  const [whole = '0', decimals] = withMinus(String(Number(value.toPrecision(DIGITS)))).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/gu, '\u202f');
  return [decimals === undefined ? grouped : `${grouped}.${decimals}`, null];
}

export const unitWords = (unit: string): string => (unit === '1' ? '' : unit);
