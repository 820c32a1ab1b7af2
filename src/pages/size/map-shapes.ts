/** The picture of a condenser as shapes: contours of the outlet temperature, the regions that fail, and their labels. */
import { contours } from 'd3-contour';
import { scaleLinear } from 'd3-scale';
import { curveMonotoneX, line } from 'd3-shape';
import { displayUnit, type UnitSystem } from '../../../sim/index.ts';
import { escapeLine, FINEST, placeOf, type MapBounds, type MapField } from './map-grid.ts';

export interface MapFrame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly textScale: number;
}

export interface Isotherm {
  readonly temperature_K: number;
  readonly path: string;
  readonly words: string;
  readonly label: { readonly x: number; readonly y: number } | null;
}

export interface MapShapes {
  readonly isotherms: readonly Isotherm[];
  /** Where the distillate leaves warmer than the limit; vapour escapes in a part of it. */
  readonly warm: string;
  readonly warmLabel: { readonly x: number; readonly y: number } | null;
  readonly escapes: string;
  readonly escapesLabel: { readonly x: number; readonly y: number } | null;
  /** Where the run that decides for nine runs of ten leaves warmer than the limit, and the name of its edge. */
  readonly doubtful: string;
  readonly doubtLabel: { readonly x: number; readonly y: number } | null;
  /** Where everything holds. */
  readonly holdsLabel: { readonly x: number; readonly y: number } | null;
  /** Where the coil is too tall for its tub: above this height in pixels; `null` where that is not in the picture. */
  readonly tooTallBelow_px: number | null;
  readonly tooTallLabel: { readonly x: number; readonly y: number } | null;
}

/** Each grid cell is drawn by so many, so that contours bend rather than break. */
const FINER = 4;
/** Contours every so many degrees shown. */
const STEPS = { metric: 5, us: 10 } as const;
const HOTTEST_C = 90;
const ZERO_CELSIUS = 273.15;

export const plotWidth = ({ width, left, right }: MapFrame): number => Math.max(40, width - left - right);
export const plotHeight = ({ height, top, bottom }: MapFrame): number => Math.max(40, height - top - bottom);

/** Pixels of a point of the picture. */
export const pixelsOf = (frame: MapFrame, { x: [x0, x1], length_m: [y0, y1] }: MapBounds) => ({
  x: (x: number): number => frame.left + (plotWidth(frame) * (x - x0)) / (x1 - x0),
  y: (length_m: number): number => frame.top + plotHeight(frame) * (1 - (length_m - y0) / (y1 - y0)),
});

/** Catmull–Rom between four values, kept within the middle two so that no bump is made up. */
function between(before: number, from: number, to: number, after: number, share: number): number {
  const curve =
    from +
    0.5 *
      share *
      (to - before + share * (2 * before - 5 * from + 4 * to - after + share * (3 * (from - to) + after - before)));
  return Math.min(Math.max(from, to), Math.max(Math.min(from, to), curve));
}

interface Lattice {
  readonly size: number;
  readonly values: Float64Array;
}

/** The known points as a square lattice, rows from the top as on the screen. */
function latticeOf({ readings, stride }: MapField): Lattice {
  const size = (FINEST - 1) / stride + 1;
  const values = new Float64Array(size * size);
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size; column++) {
      const reading = readings.get(placeOf(column * stride, (size - 1 - row) * stride));
      values[row * size + column] = reading?.outlet_K ?? Number.NaN;
    }
  }
  return { size, values };
}

function finer({ size, values }: Lattice, by: number): Lattice {
  const fine = (size - 1) * by + 1;
  const at = (row: number, column: number): number =>
    values[Math.min(size - 1, Math.max(0, row)) * size + Math.min(size - 1, Math.max(0, column))] as number;
  const out = new Float64Array(fine * fine);
  for (let i = 0; i < fine; i++) {
    const row = Math.min(size - 2, Math.floor(i / by));
    const down = i / by - row;
    for (let k = 0; k < fine; k++) {
      const column = Math.min(size - 2, Math.floor(k / by));
      const across = k / by - column;
      const along = (r: number) =>
        between(at(r, column - 1), at(r, column), at(r, column + 1), at(r, column + 2), across);
      out[i * fine + k] = between(along(row - 1), along(row), along(row + 1), along(row + 2), down);
    }
  }
  return { size: fine, values: out };
}

/** Polygons of a contour in pixels, as a path. */
function pathOf(
  polygons: readonly (readonly (readonly (readonly number[])[])[])[],
  { size }: Lattice,
  frame: MapFrame,
): string {
  const point = ([x = 0, y = 0]: readonly number[]): string => {
    const px = frame.left + (plotWidth(frame) * (x - 0.5)) / (size - 1);
    const py = frame.top + (plotHeight(frame) * (y - 0.5)) / (size - 1);
    return `${px.toFixed(1)},${py.toFixed(1)}`;
  };
  return polygons.map((rings) => rings.map((ring) => `M${ring.map(point).join('L')}Z`).join('')).join('');
}

/** Height in pixels at which a column of the lattice passes a temperature, from below; `null` when it never does. */
function crossing({ size, values }: Lattice, frame: MapFrame, column: number, temperature: number): number | null {
  for (let row = size - 1; row > 0; row--) {
    const below = values[row * size + column] as number;
    const above = values[(row - 1) * size + column] as number;
    if ((below - temperature) * (above - temperature) > 0 || below === above) continue;
    const share = (below - temperature) / (below - above);
    return frame.top + (plotHeight(frame) * (row - share)) / (size - 1);
  }
  return null;
}

/** Widths kept free about the label of a line and of a region. */
const LABEL_ROOM = 84;
const REGION_ROOM = 132;
/** Least height of the band of coils too tall, for its words. */
const TALL_ROOM = 22;
const DOUBT_PLACES = [0.72, 0.58, 0.44, 0.3];
const LABEL_PLACES = [0.93, 0.8, 0.66, 0.52, 0.38, 0.24];

function temperaturesToDraw(lattice: Lattice, units: UnitSystem): readonly number[] {
  const unit = displayUnit('K', units, 'temperature');
  const known = lattice.values.filter(Number.isFinite);
  if (known.length === 0) return [];
  const low = unit.fromSI(Math.min(...known));
  const high = Math.min(unit.fromSI(Math.max(...known)), unit.fromSI(ZERO_CELSIUS + HOTTEST_C));
  const step = STEPS[units] * (high - low > 12 * STEPS[units] ? 2 : 1);
  const temperatures: number[] = [];
  for (let shown = Math.ceil(low / step) * step; shown < high; shown += step) temperatures.push(unit.toSI(shown));
  return temperatures;
}

/** The middle of the tallest free stretch of a region in the lattice, near the middle of the picture; `null` when it is slim. */
function roomIn(
  lattice: Lattice,
  frame: MapFrame,
  inside: (row: number, column: number) => boolean,
  least_px: number,
): { x: number; y: number } | null {
  const { size } = lattice;
  const rowHeight = plotHeight(frame) / (size - 1);
  let best: { x: number; y: number; room: number } | null = null;
  for (let column = Math.round(size * 0.12); column < size * 0.88; column++) {
    let from = -1;
    for (let row = 0; row <= size; row++) {
      const isIn = row < size && inside(row, column);
      if (isIn && from < 0) from = row;
      if (!isIn && from >= 0) {
        const room = (row - from) * rowHeight * (1 - Math.abs(column / size - 0.5) * 0.6);
        if (room > (best?.room ?? least_px))
          best = {
            x: frame.left + (plotWidth(frame) * column) / (size - 1),
            y: frame.top + ((from + row - 1) / 2) * rowHeight,
            room,
          };
        from = -1;
      }
    }
  }
  const inset = (REGION_ROOM / 2) * frame.textScale;
  return (
    best && { x: Math.min(frame.left + plotWidth(frame) - inset, Math.max(frame.left + inset, best.x)), y: best.y }
  );
}

/**
 * @param limit_K warmest distillate wanted
 * @param longest_m longest coil that goes into the tub, `null` without one
 * @param doubt the field of the run that decides for nine runs of ten, where it is known
 */
export function mapShapes(
  field: MapField,
  frame: MapFrame,
  limit_K: number,
  longest_m: number | null,
  units: UnitSystem,
  doubt: MapField | null = null,
): MapShapes {
  const lattice = finer(latticeOf(field), FINER);
  const pixels = pixelsOf(frame, field.bounds);
  const unit = displayUnit('K', units, 'temperature');
  const contoursOf = (of: Lattice) => {
    const isotherm = contours().size([of.size, of.size]);
    const values = [...of.values].map((value) => (Number.isFinite(value) ? value : 0));
    return (temperature: number): string => pathOf(isotherm.contour(values, temperature).coordinates, of, frame);
  };
  const shape = contoursOf(lattice);
  const doubted = doubt && finer(latticeOf(doubt), FINER);

  const edge = escapeLine(field).map(([x, length_m]): [number, number] => [
    pixels.x(x),
    Math.max(frame.top - 2, pixels.y(length_m)),
  ]);
  const bottom = frame.top + plotHeight(frame);
  const first = edge[0];
  const last = edge.at(-1);
  const anyEscapes = edge.some(([, y]) => y < bottom);
  const escapes =
    first && last && anyEscapes
      ? `${line().curve(curveMonotoneX)(edge) ?? ''}L${last[0]},${bottom + 2}L${first[0]},${bottom + 2}Z`
      : '';
  const edgeY = scaleLinear()
    .domain(edge.map(([x]) => x))
    .range(edge.map(([, y]) => y))
    .clamp(true);
  const columnX = (column: number) => frame.left + (plotWidth(frame) * column) / (lattice.size - 1);
  const rowY = (row: number) => frame.top + (plotHeight(frame) * row) / (lattice.size - 1);
  const isEscaping = (row: number, column: number) => rowY(row) > edgeY(columnX(column));
  const isWarm = (row: number, column: number) => (lattice.values[row * lattice.size + column] as number) >= limit_K;

  const tallest_px = longest_m === null ? frame.top : Math.min(bottom, Math.max(frame.top, pixels.y(longest_m)));
  const isTooTall = (row: number) => rowY(row) < tallest_px;

  const room = 34 * frame.textScale;
  /** Rather below the coils that are too tall than among them. */
  const within = (inside: (row: number, column: number) => boolean) =>
    roomIn(lattice, frame, (row, column) => inside(row, column) && !isTooTall(row), room) ??
    roomIn(lattice, frame, inside, room);
  const regions = {
    tooTallLabel:
      tallest_px - frame.top > TALL_ROOM * frame.textScale
        ? { x: frame.left + plotWidth(frame) / 2, y: (frame.top + tallest_px) / 2 }
        : null,
    warmLabel: within((row, column) => isWarm(row, column) && !isEscaping(row, column)),
    escapesLabel: within(isEscaping),
    holdsLabel: roomIn(
      lattice,
      frame,
      (row, column) => !isWarm(row, column) && !isEscaping(row, column) && !isTooTall(row),
      room,
    ),
  };
  const taken = Object.values(regions).filter((at) => at !== null);
  const place = (temperature: number): { x: number; y: number } | null => {
    for (const share of LABEL_PLACES) {
      const column = Math.round(share * (lattice.size - 1));
      const y = crossing(lattice, frame, column, temperature);
      const x = columnX(column);
      if (y === null || y > edgeY(x) - 8 || y < frame.top + 8 || y > bottom - 8) continue;
      if (
        taken.some(
          (other) =>
            Math.abs(other.x - x) < LABEL_ROOM * frame.textScale && Math.abs(other.y - y) < 18 * frame.textScale,
        )
      )
        continue;
      taken.push({ x, y });
      return { x, y };
    }
    return null;
  };
  /** On the edge of the band, where it is free. */
  const doubtLabel = (): { x: number; y: number } | null => {
    if (doubted === null) return null;
    for (const share of DOUBT_PLACES) {
      const column = Math.round(share * (doubted.size - 1));
      const y = crossing(doubted, frame, column, limit_K);
      const x = frame.left + plotWidth(frame) * share;
      if (y === null || y < frame.top + 8 || y > bottom - 8) continue;
      const isTaken = taken.some(
        (other) =>
          Math.abs(other.x - x) < REGION_ROOM * frame.textScale && Math.abs(other.y - y) < 18 * frame.textScale,
      );
      if (isTaken) continue;
      taken.push({ x, y });
      return { x, y };
    }
    return null;
  };
  const doubtAt = doubtLabel();
  const isotherms = [...temperaturesToDraw(lattice, units)]
    .reverse()
    .map((temperature_K): Isotherm => ({
      temperature_K,
      path: shape(temperature_K),
      words: `${Math.round(unit.fromSI(temperature_K))}\u202f${unit.label}`,
      label: place(temperature_K),
    }));
  return {
    isotherms,
    warm: shape(limit_K),
    escapes,
    doubtful: doubted === null ? '' : contoursOf(doubted)(limit_K),
    doubtLabel: doubtAt,
    tooTallBelow_px: tallest_px > frame.top ? tallest_px : null,
    ...regions,
  };
}
