/** Time as people at a still read it: minutes, then hours and minutes. */

const MINUTE = 60;
const HOUR = 3600;
const STEPS_S = [
  10, 30, 60, 120, 300, 600, 900, 1200, 1800, 3600, 7200, 10_800, 14_400, 21_600, 43_200, 86_400, 172_800,
];

/** Round times from zero to the end, at most as many as `most`. */
export function timeTicks(end_s: number, most: number): readonly number[] {
  const step = STEPS_S.find((candidate) => end_s / candidate <= Math.max(1, most)) ?? STEPS_S[STEPS_S.length - 1]!;
  const ticks: number[] = [];
  for (let index = 0; index * step <= end_s + 1e-6; index += 1) ticks.push(index * step);
  return ticks;
}

/** `0`, `30 s`, `20 min`, `1 h`, `1 h 20`. */
export function tickWords(time_s: number): string {
  if (time_s === 0) return '0';
  if (time_s < HOUR) return time_s % MINUTE === 0 ? `${time_s / MINUTE}\u202fmin` : secondsWords(time_s);
  const hours = Math.floor(time_s / HOUR);
  const minutes = Math.round((time_s - hours * HOUR) / MINUTE);
  return minutes === 0 ? `${hours}\u202fh` : `${hours}\u202fh\u202f${String(minutes).padStart(2, '0')}`;
}

const secondsWords = (time_s: number): string => {
  const minutes = Math.floor(time_s / MINUTE);
  const seconds = Math.round(time_s - minutes * MINUTE);
  return minutes === 0 ? `${seconds}\u202fs` : `${minutes}\u202fmin\u202f${String(seconds).padStart(2, '0')}`;
};

/** Step of the reading line under the arrow keys, and the larger one with Shift: about 1/150 and 1/15 of the run. */
export function readingSteps(end_s: number): { readonly small: number; readonly large: number } {
  const small = STEPS_S.findLast((step) => step <= end_s / 120) ?? 1;
  return { small, large: small * 10 };
}
