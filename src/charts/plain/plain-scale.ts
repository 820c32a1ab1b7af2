/** Axes of a plain chart that are laid down before anything is known of the run: time across, one quantity up. */
import { displayUnit, kindUnit, type KindName, type UnitSystem } from '../../../sim/index.ts';
import { tickDecimals, valueTicks } from '../model/domain.ts';
import { tickWords, timeTicks } from '../model/time-axis.ts';

export interface PlainAxes {
  readonly until_s: number;
  /** SI. */
  readonly min: number;
  readonly max: number;
  readonly quantity: KindName;
}

export interface PlainSize {
  readonly width: number;
  readonly height: number;
  /** Size of the text, px. */
  readonly text: number;
}

export interface PlainScale {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly unit: string;
  readonly timeTicks: readonly { readonly x: number; readonly words: string }[];
  /** In the unit shown. */
  readonly valueTicks: readonly { readonly y: number; readonly value: number }[];
  readonly decimals: number;
  x(time_s: number): number;
  y(value: number): number;
  timeAt(x: number): number;
  valueAt(y: number): number;
}

const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

export function plainScale(axes: PlainAxes, { width, height, text }: PlainSize, system: UnitSystem): PlainScale {
  const unit = displayUnit(kindUnit(axes.quantity), system, axes.quantity);
  const left = Math.round(3.2 * text);
  const right = width - Math.round(1.6 * text);
  const top = Math.round(1.9 * text);
  const bottom = height - Math.round(1.8 * text);
  const [low, high] = [unit.fromSI(axes.min), unit.fromSI(axes.max)];
  const x = (time_s: number) => left + (time_s / axes.until_s) * (right - left);
  const yShown = (shown: number) => bottom - ((shown - low) / (high - low)) * (bottom - top);
  const values = valueTicks([low, high], ((bottom - top) / text) * 16);
  const most = Math.max(2, Math.floor((right - left) / (text * 4.6)));
  return {
    left,
    right,
    top,
    bottom,
    unit: unit.label,
    timeTicks: timeTicks(axes.until_s, most).map((at) => ({ x: x(at), words: tickWords(at) })),
    valueTicks: values.map((value) => ({ y: yShown(value), value })),
    decimals: tickDecimals(values),
    x,
    y: (value) => yShown(unit.fromSI(value)),
    timeAt: (at) => clamp(((at - left) / (right - left)) * axes.until_s, 0, axes.until_s),
    valueAt: (at) => clamp(unit.toSI(low + ((bottom - at) / (bottom - top)) * (high - low)), axes.min, axes.max),
  };
}

/** A curve as a path; it breaks where a value is missing. */
export function plainPath(
  scale: PlainScale,
  at_s: readonly number[],
  values: readonly (number | null)[],
  until_s = Infinity,
): string {
  let path = '';
  /** Points of the piece that is being drawn. */
  let points = 0;
  const end = () => {
    // A point alone is a dot.
    if (points === 1) path += 'h0';
    points = 0;
  };
  at_s.forEach((time_s, index) => {
    const value = values[index] ?? null;
    if (value === null || !Number.isFinite(value) || time_s > until_s) {
      end();
      return;
    }
    path += `${points > 0 ? 'L' : 'M'}${scale.x(time_s).toFixed(1)},${scale.y(value).toFixed(1)}`;
    points += 1;
  });
  end();
  return path;
}
