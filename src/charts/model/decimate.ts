/**
 * Thins a trace to what the pixels can show. Each pixel column keeps the points by which the line enters and
 * leaves it and its lowest and highest point, so that no spike is lost.
 */

/** Points of a polyline, x and y in turn; a gap is a pair of `NaN`. */
export type Polyline = Float64Array;

export interface LinearMap {
  readonly offset: number;
  readonly slope: number;
}

/** The straight map that takes a domain to a range. */
export function linearMap(domain: readonly [number, number], range: readonly [number, number]): LinearMap {
  const width = domain[1] - domain[0];
  const slope = width === 0 ? 0 : (range[1] - range[0]) / width;
  return { slope, offset: range[0] - slope * domain[0] };
}

/** Columns with fewer points than this are kept whole. */
const KEPT_WHOLE = 4;

/** A trace in pixels. `times` rise; values that are not finite make a gap. */
export function tracePoints(
  times: ArrayLike<number>,
  values: ArrayLike<number>,
  x: LinearMap,
  y: LinearMap,
  convert: (value: number) => number = (value) => value,
): Polyline {
  const count = Math.min(times.length, values.length);
  const points: number[] = [];
  let start = 0;
  while (start < count) {
    const column = Math.floor(x.offset + x.slope * (times[start] as number));
    let end = start + 1;
    while (end < count && Math.floor(x.offset + x.slope * (times[end] as number)) === column) end += 1;
    if (end - start <= KEPT_WHOLE) {
      for (let index = start; index < end; index += 1) push(index);
    } else {
      pushEnvelope(start, end);
    }
    start = end;
  }
  return Float64Array.from(points);

  function push(index: number): void {
    const value = values[index] as number;
    if (Number.isFinite(value)) {
      points.push(x.offset + x.slope * (times[index] as number), y.offset + y.slope * convert(value));
    } else if (points.length > 0 && !Number.isNaN(points[points.length - 1])) {
      points.push(NaN, NaN);
    }
  }

  function pushEnvelope(from: number, to: number): void {
    let lowest = from;
    let highest = from;
    for (let index = from + 1; index < to; index += 1) {
      const value = values[index] as number;
      if (!Number.isFinite(value)) continue;
      if (!(value >= (values[lowest] as number))) lowest = index;
      if (!(value <= (values[highest] as number))) highest = index;
    }
    const kept = [from, Math.min(lowest, highest), Math.max(lowest, highest), to - 1];
    kept.forEach((index, position) => {
      if (position === 0 || index !== kept[position - 1]) push(index);
    });
  }
}

/**
 * Leaves out points that lie on the straight line between their neighbours, to within a distance in pixels. For
 * files; the eye sees no difference. Each kept piece is held by the cone of slopes that still pass all points left out.
 */
export function withoutStraights(points: Polyline, tolerance: number): Polyline {
  const kept: number[] = [];
  let anchorX = NaN;
  let anchorY = NaN;
  let low = -Infinity;
  let high = Infinity;
  let held = -1;
  const keep = (at: number): void => {
    anchorX = points[at] as number;
    anchorY = points[at + 1] as number;
    low = -Infinity;
    high = Infinity;
    held = -1;
    kept.push(anchorX, anchorY);
  };
  for (let at = 0; at + 1 < points.length; at += 2) {
    const x = points[at] as number;
    const y = points[at + 1] as number;
    const isStart = Number.isNaN(anchorX) || Number.isNaN(x);
    const run = x - anchorX;
    if (!isStart && run > 0) {
      const slope = (y - anchorY) / run;
      if (slope >= low && slope <= high) {
        low = Math.max(low, slope - tolerance / run);
        high = Math.min(high, slope + tolerance / run);
        held = at;
        continue;
      }
    }
    if (held >= 0) {
      // The point before this one ends the piece; this one starts from there.
      keep(held);
      at -= 2;
    } else {
      keep(at);
    }
  }
  if (held >= 0) keep(held);
  return Float64Array.from(kept);
}
