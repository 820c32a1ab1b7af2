/** Spans of time as people say them: `45 s`, `2 min 30 s`, `52 min`, `1 h 05 min`. */
import { decimalsFor, formatNumber, MINUS, NO_NUMBER, THIN_SPACE } from './numbers.ts';

const MINUTE = 60;
/** From here on seconds are not said. */
const WHOLE_MINUTES_FROM = 10 * MINUTE;

export interface DurationPart {
  readonly value: number;
  readonly decimals: number;
  readonly unit: 'h' | 'min' | 's';
}

/** The size of a span in hours and minutes, minutes and seconds, or seconds; the sign is the caller's. */
export function durationParts(seconds: number): readonly DurationPart[] {
  const size = Math.abs(seconds);
  if (size < MINUTE - 0.5) {
    const decimals = size < 10 && size % 1 !== 0 ? Math.min(2, decimalsFor(size, 2)) : 0;
    return [{ value: size, decimals, unit: 's' }];
  }
  const small = size < WHOLE_MINUTES_FROM - 0.5;
  const whole = Math.round(small ? size : size / MINUTE);
  const larger = Math.floor(whole / 60);
  const rest = whole - larger * 60;
  const parts: readonly DurationPart[] = [
    { value: larger, decimals: 0, unit: small ? 'min' : 'h' },
    { value: rest, decimals: 0, unit: small ? 's' : 'min' },
  ];
  return parts.filter(({ value }) => value > 0);
}

/** Whether a span is to be written with a minus. */
export const isBefore = (seconds: number): boolean => seconds <= -0.5;

const written = ({ value, decimals, unit }: DurationPart, index: number): string => {
  const number = formatNumber(value, decimals);
  return `${index > 0 && unit === 'min' ? number.padStart(2, '0') : number}${THIN_SPACE}${unit}`;
};

/** A span in seconds. */
export function formatDuration(seconds: number | null): string {
  if (seconds === null || !Number.isFinite(seconds)) return NO_NUMBER;
  return (isBefore(seconds) ? MINUS : '') + durationParts(seconds).map(written).join(' ');
}
