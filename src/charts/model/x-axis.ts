/** The three horizontal axes: time of the run, length along the condenser tube, size of drops (as log10 of metres). */
import { scaleLinear } from 'd3-scale';
import { formatDuration, formatNumber, THIN_SPACE } from '../../../sim/index.ts';
import { tickDecimals, type Domain } from './domain.ts';
import { shownUnit, shownWords, type UnitSystem } from './measure.ts';
import { tickWords, timeTicks } from './time-axis.ts';

export type XAxis = 'time' | 'tube' | 'drop';

export interface XTick {
  readonly at: number;
  readonly words: string;
}

/** Room a tick's words need, px at ordinary text size. */
const TICK_ROOM: Record<XAxis, number> = { time: 62, tube: 62, drop: 72 };
const LOG_MANTISSAS = [1, 2, 5];

/** Round places on the axis; the last one carries the unit where the words alone don't. */
export function xTicks(axis: XAxis, domain: Domain, width: number, system: UnitSystem): readonly XTick[] {
  const most = Math.max(2, Math.floor(width / TICK_ROOM[axis]));
  switch (axis) {
    case 'time':
      return timeTicks(domain[1], most).map((at) => ({ at, words: tickWords(at) }));
    case 'tube': {
      const unit = shownUnit('tubeLength', system);
      const shown = scaleLinear()
        .domain([unit.fromSI(domain[0]), unit.fromSI(domain[1])])
        .ticks(most);
      const decimals = tickDecimals(shown);
      return shown.map((value) => ({
        at: unit.toSI(value),
        words: value === 0 ? '0' : shownWords(value, decimals, unit.label),
      }));
    }
    case 'drop': {
      const unit = shownUnit('dropSize', system);
      return logTicks(10 ** domain[0], 10 ** domain[1], most).map((size) => {
        const shown = unit.fromSI(size);
        return { at: Math.log10(size), words: shownWords(shown, shown < 1 ? 1 : 0, unit.label) };
      });
    }
  }
}

/** 1, 2, 5, 10, 20 … within the bounds, thinned to whole decades where there are too many. */
function logTicks(low: number, high: number, most: number): readonly number[] {
  const first = Math.floor(Math.log10(low));
  const last = Math.ceil(Math.log10(high));
  const decades = Array.from({ length: last - first + 1 }, (_, step) => first + step);
  const inside = (value: number): boolean => value >= low * 0.999 && value <= high * 1.001;
  const fine = decades.flatMap((decade) => LOG_MANTISSAS.map((mantissa) => mantissa * 10 ** decade)).filter(inside);
  return fine.length <= most ? fine : decades.map((decade) => 10 ** decade).filter(inside);
}

/** A place on the axis in words: `47 min`, `1.92 m`, `49 µm`. */
export function xWords(axis: XAxis, x: number, system: UnitSystem): string {
  const { unit, decimals, shown } = xUnit(axis, system);
  return axis === 'time' ? formatDuration(x) : `${formatNumber(shown(x), decimals)}${THIN_SPACE}${unit}`;
}

export interface XUnit {
  readonly title: string;
  readonly says: string;
  readonly unit: string;
  readonly decimals: number;
  shown(x: number): number;
}

export function xUnit(axis: XAxis, system: UnitSystem): XUnit {
  switch (axis) {
    case 'time':
      return { title: 'Time', says: 'time since the heat went on', unit: 'min', decimals: 1, shown: (x) => x / 60 };
    case 'tube': {
      const unit = shownUnit('tubeLength', system);
      return {
        title: 'Along the tube',
        says: 'distance from the vapour end of the condenser',
        unit: unit.label,
        decimals: unit.decimals,
        shown: unit.fromSI,
      };
    }
    case 'drop': {
      const unit = shownUnit('dropSize', system);
      return {
        title: 'Drop size',
        says: 'diameter of the oil drops',
        unit: unit.label,
        decimals: 1,
        shown: (x) => unit.fromSI(10 ** x),
      };
    }
  }
}
