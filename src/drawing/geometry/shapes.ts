/** Points, boxes and runs of the drawing, in CSS pixels with y downward, and the few sums done with them. */

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** How metres become pixels: one scale for everything, x from the left, y down from a floor line. */
export interface Frame {
  readonly pxPerMetre: number;
  readonly floorY: number;
}

/** Pixel height of something `metres` above the frame's floor. */
export const yAt = (frame: Frame, metres: number): number => frame.floorY - metres * frame.pxPerMetre;

export const boxAround = (centreX: number, top: number, width: number, height: number): Box => ({
  x: centreX - width / 2,
  y: top,
  width,
  height,
});

export const right = (box: Box): number => box.x + box.width;
export const bottom = (box: Box): number => box.y + box.height;
export const middle = (box: Box): Point => ({ x: box.x + box.width / 2, y: box.y + box.height / 2 });

export const grown = (box: Box, by: number): Box => ({
  x: box.x - by,
  y: box.y - by,
  width: box.width + 2 * by,
  height: box.height + 2 * by,
});

export const boxesOverlap = (a: Box, b: Box): boolean =>
  a.x < right(b) && b.x < right(a) && a.y < bottom(b) && b.y < bottom(a);

export const contains = (outer: Box, inner: Box): boolean =>
  inner.x >= outer.x && inner.y >= outer.y && right(inner) <= right(outer) && bottom(inner) <= bottom(outer);

/** The smallest box round some boxes. */
export function boxOf(boxes: readonly Box[]): Box {
  const x = Math.min(...boxes.map((box) => box.x));
  const y = Math.min(...boxes.map((box) => box.y));
  return { x, y, width: Math.max(...boxes.map(right)) - x, height: Math.max(...boxes.map(bottom)) - y };
}

/** At least this large, about the same centre, so that small parts can still be hit. */
export function atLeast(box: Box, width: number, height: number): Box {
  const wide = Math.max(width, box.width);
  const tall = Math.max(height, box.height);
  return { x: box.x - (wide - box.width) / 2, y: box.y - (tall - box.height) / 2, width: wide, height: tall };
}

const rounded = (value: number): string => (Math.round(value * 10) / 10).toString();

/** SVG path data through the points. */
export const pathThrough = (points: readonly Point[], closed = false): string =>
  points.map((point, index) => `${index === 0 ? 'M' : 'L'}${rounded(point.x)} ${rounded(point.y)}`).join('') +
  (closed ? 'Z' : '');

export const rectPath = (box: Box): string =>
  `M${rounded(box.x)} ${rounded(box.y)}h${rounded(box.width)}v${rounded(box.height)}h${rounded(-box.width)}Z`;

const between = (a: Point, b: Point, share: number): Point => ({
  x: a.x + (b.x - a.x) * share,
  y: a.y + (b.y - a.y) * share,
});
const distance = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y);

const ARC_STEPS = 8;

/** A polyline with its corners rounded to about `radius`, as points; corners shrink where legs are short. */
export function roundCorners(corners: readonly Point[], radius: number): Point[] {
  const points: Point[] = [];
  corners.forEach((corner, index) => {
    const before = corners[index - 1];
    const after = corners[index + 1];
    if (!before || !after) {
      points.push(corner);
      return;
    }
    const reach = Math.min(radius, distance(before, corner) / 2, distance(corner, after) / 2);
    if (reach < 0.5) {
      points.push(corner);
      return;
    }
    const start = between(corner, before, reach / distance(before, corner));
    const end = between(corner, after, reach / distance(corner, after));
    for (let step = 0; step <= ARC_STEPS; step++) {
      const share = step / ARC_STEPS;
      points.push(between(between(start, corner, share), between(corner, end, share), share));
    }
  });
  return points;
}

export const pathLength = (points: readonly Point[]): number =>
  points.reduce((sum, point, index) => (index === 0 ? 0 : sum + distance(points[index - 1] as Point, point)), 0);

/** The part of a polyline between two shares of its length. */
export function cutPath(points: readonly Point[], from: number, to: number): Point[] {
  const whole = pathLength(points);
  const start = Math.max(0, from) * whole;
  const end = Math.min(1, to) * whole;
  if (!(end > start)) return [];
  const cut: Point[] = [];
  let passed = 0;
  for (let index = 1; index < points.length; index++) {
    const a = points[index - 1] as Point;
    const b = points[index] as Point;
    const leg = distance(a, b);
    if (leg > 0 && passed + leg >= start && passed <= end) {
      if (cut.length === 0) cut.push(between(a, b, Math.max(0, start - passed) / leg));
      cut.push(between(a, b, Math.min(1, (end - passed) / leg)));
    }
    passed += leg;
  }
  return cut;
}

/** Boxes that cover a polyline drawn `width` wide, one per leg, for keeping labels off it. */
export const boxesAlong = (points: readonly Point[], width: number): Box[] =>
  points.slice(1).map((point, index) => {
    const before = points[index] as Point;
    const leg = distance(before, point) || 1;
    const acrossX = (Math.abs(point.y - before.y) / leg) * (width / 2);
    const acrossY = (Math.abs(point.x - before.x) / leg) * (width / 2);
    return {
      x: Math.min(before.x, point.x) - acrossX,
      y: Math.min(before.y, point.y) - acrossY,
      width: Math.abs(point.x - before.x) + 2 * acrossX,
      height: Math.abs(point.y - before.y) + 2 * acrossY,
    };
  });

/** A long slanting leg cut into short ones, so that its covering boxes stay close to it. */
export function subdivide(points: readonly Point[], longest: number): Point[] {
  const fine: Point[] = [];
  points.forEach((point, index) => {
    const before = points[index - 1];
    if (before) {
      const pieces = Math.ceil(distance(before, point) / longest);
      for (let piece = 1; piece < pieces; piece++) fine.push(between(before, point, piece / pieces));
    }
    fine.push(point);
  });
  return fine;
}
