/** Lengths as an American tape measure and the tube trade say them: feet with inches, and fractions of an inch. */
import { formatNumber } from './numbers.ts';
import { INCH } from './scales.ts';

const INCHES_A_FOOT = 12;
/** Divisions of an inch by which tubes are sold. */
const SIXTEENTHS = 16;
/** Farther from a fraction than this, inches, a size is none of the trade: standards print three decimals. */
const TRADE_ROUNDING = 0.000_6;

export interface FeetAndInches {
  /** `null` below a foot. */
  readonly feet: string | null;
  /** `null` for whole feet. */
  readonly inches: string | null;
}

/** A length, m, in feet and whole inches; below a foot in inches with a decimal. */
export function feetAndInches(length_m: number): FeetAndInches {
  const total = length_m / INCH;
  const whole = Math.round(Math.abs(total));
  if (whole < INCHES_A_FOOT) return { feet: null, inches: formatNumber(total, 1) };
  const sign = total < 0 ? -1 : 1;
  const inches = whole % INCHES_A_FOOT;
  return {
    feet: formatNumber((sign * (whole - inches)) / INCHES_A_FOOT, 0),
    inches: inches === 0 ? null : formatNumber(inches, 0),
  };
}

/** A size in inches as a fraction, `3/8` or `1 1/8`; `null` where the trade has none so large. */
export function tradeFraction(size_m: number): string | null {
  const inches = size_m / INCH;
  let [over, under] = [Math.round(inches * SIXTEENTHS), SIXTEENTHS];
  if (over <= 0 || Math.abs(over / under - inches) > TRADE_ROUNDING) return null;
  while (over % 2 === 0 && under > 1) [over, under] = [over / 2, under / 2];
  const whole = Math.floor(over / under);
  const rest = over % under;
  if (rest === 0) return String(whole);
  return `${whole > 0 ? `${whole} ` : ''}${rest}/${under}`;
}
