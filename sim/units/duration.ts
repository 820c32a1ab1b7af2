/** Spans of time as people say them: `45 s`, `2 min 30 s`, `52 min`, `1 h 52 min`. */
import { decimalsFor, formatNumber, MINUS, NO_NUMBER, THIN_SPACE } from './numbers.ts';

/** `1 h 52` without its last unit must not be torn apart. */
const NO_BREAK = '\u00a0';

const MINUTE = 60;
const HOUR = 3600;
/** From here on seconds are not said. */
const WHOLE_MINUTES_FROM = 10 * MINUTE;

const joined = (value: number, unit: string, decimals = 0): string =>
  `${formatNumber(value, decimals)}${THIN_SPACE}${unit}`;

/** A span in seconds; `short` leaves out the last unit word after hours (`1 h 52`). */
export function formatDuration(seconds: number | null, options: { readonly short?: boolean } = {}): string {
  if (seconds === null || !Number.isFinite(seconds)) return NO_NUMBER;
  const size = Math.abs(seconds);
  const sign = seconds < 0 && size >= 0.5 ? MINUS : '';
  if (size < MINUTE - 0.5)
    return sign + joined(size, 's', size < 10 && size % 1 !== 0 ? Math.min(2, decimalsFor(size, 2)) : 0);
  if (size < WHOLE_MINUTES_FROM - 0.5) {
    const whole = Math.round(size);
    const minutes = Math.floor(whole / MINUTE);
    const rest = whole % MINUTE;
    return sign + joined(minutes, 'min') + (rest === 0 ? '' : ` ${joined(rest, 's')}`);
  }
  const minutes = Math.round(size / MINUTE);
  if (minutes < 60) return sign + joined(minutes, 'min');
  const hours = Math.floor(minutes / 60);
  const rest = minutes - hours * (HOUR / MINUTE);
  if (rest === 0) return sign + joined(hours, 'h');
  return `${sign}${joined(hours, 'h')}${options.short === true ? NO_BREAK : ' '}${options.short === true ? String(rest).padStart(2, '0') : joined(rest, 'min')}`;
}
