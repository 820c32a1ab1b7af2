/** A schedule as a line on the time axis, and the axis that suits it. */
import { tickStep } from 'd3-array';
import { lerp, type ClockSchedule, type Schedule } from '../../../sim/index.ts';
import { settleDomain, type Domain } from '../model/domain.ts';
import type { DisplayUnit } from '../model/measure.ts';

export interface LinePoint {
  readonly at_s: number;
  readonly value: number;
}

/** Corners of the line from the start to the end of the run. */
export function scheduleLine(schedule: ClockSchedule, end_s: number): readonly LinePoint[] {
  const corners: LinePoint[] = [];
  for (const { at_s, value, shape } of schedule) {
    const before = corners.at(-1);
    if (before && at_s > end_s) {
      const share = (end_s - before.at_s) / (at_s - before.at_s);
      corners.push({ at_s: end_s, value: shape === 'ramp' ? lerp(before.value, value, share) : before.value });
      return corners;
    }
    if (before && shape === 'step') corners.push({ at_s, value: before.value });
    corners.push({ at_s, value });
  }
  const last = corners.at(-1);
  if (last && last.at_s < end_s) corners.push({ at_s: end_s, value: last.value });
  return corners;
}

/** Ranges up to this many times the values are shown whole. */
const WHOLE_UP_TO = 4;
/** Room above the highest value to drag into, as a part of it. */
const HEADROOM = 0.3;

/** Bounds of the value axis in the unit shown: the whole range if the values fill it, else round bounds about them. */
export function scheduleDomain(
  earlier: Domain | undefined,
  schedule: Schedule,
  unit: DisplayUnit,
  min: number,
  max: number,
): Domain {
  const lowest = unit.fromSI(min);
  const highest = unit.fromSI(max);
  const values = schedule.map(({ value }) => unit.fromSI(value));
  const top = Math.max(...values);
  const bottom = Math.min(...values);
  const spread = Math.max(top - bottom, (HEADROOM * (top - lowest)) / (1 + HEADROOM));
  if (highest - lowest <= WHOLE_UP_TO * Math.max(spread, top - lowest)) return [lowest, highest];
  const wanted: Domain = [
    lowest === 0 ? 0 : Math.max(lowest, bottom - spread),
    Math.min(highest, top + HEADROOM * (top - lowest)),
  ];
  return settleDomain(earlier, wanted, { fromZero: lowest === 0, leastSpan: (highest - lowest) / 50 });
}

/** A round step of about a hundredth of the axis, in the unit shown. */
export const valueStep = ([low, high]: Domain): number => tickStep(low, high, 100);

/** Nearest multiple of a step in the unit shown, as SI. */
export function snapValue(value: number, unit: DisplayUnit, step: number): number {
  const shown = unit.fromSI(value);
  // Rounded once more, so that a tenth is stored as 0.1 and not as 0.1 and the last bit of the division.
  return Number(unit.toSI(Math.round(shown / step) * step).toPrecision(12));
}

/** Steps in time under drag and keys: a minute in a run of hours, less in a short one. */
export const timeStep = (duration_s: number): number => (duration_s >= 3600 ? 60 : duration_s >= 900 ? 10 : 1);
