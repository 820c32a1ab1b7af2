/**
 * The whole still in one piece on a sheet: along the floor from fire to receiver, or upright on a narrow sheet; the
 * greatest scale that fits, and where everything then stands. The floor follows from what is drawn above it, so it is
 * settled in a second look.
 */
import { greatestScale, isTucked, joinedAlong, tubeDrawn, type Arrangement } from './along.ts';
import { heightsOf, topOf, type Heights } from './heights.ts';
import { right, type Box } from './shapes.ts';
import { obstaclesOf, stillShapes, type Settled, type StillShapes } from './still-shapes.ts';
import type { TrueSizes } from './true-sizes.ts';

/** Room kept for words, px at a text scale of one. */
export interface Margins {
  readonly left: number;
  readonly right: number;
  readonly besidePot: number;
}

export interface Sheet {
  /** CSS pixels available. */
  readonly width: number;
  /** Height above the floor; null where the sheet grows with the drawing. */
  readonly height: number | null;
  /** Size of the type against 13/15 px. */
  readonly textScale: number;
  /** No greater scale than this, px a metre. */
  readonly scaleAtMost: number;
}

export interface Arranged {
  readonly settled: Settled;
  readonly shapes: StillShapes;
  readonly obstacles: readonly Box[];
  readonly floorY: number;
}

const TAIL_ROOM = 150;
const GREATEST_SCALE = 1800;
const SHEET_EDGE = 1;
const MOST_ROUNDS = 24;
/** Free height above the drawing, where words over the neck may stand. */
const OVERHEAD = 40;
const UPRIGHT_OVERHEAD = 14;

const usualHeight = (width: number): number => Math.min(900, Math.max(300, 0.335 * width));

interface Drawn {
  readonly settled: Settled;
  readonly shapes: StillShapes;
  readonly obstacles: readonly Box[];
}

const drawn = (settled: Settled): Drawn => {
  const shapes = stillShapes(settled);
  return { settled, shapes, obstacles: obstaclesOf(shapes) };
};

const topEdge = (boxes: readonly Box[]): number => boxes.reduce((top, box) => Math.min(top, box.y), Infinity);

/** How far boxes must move sideways to stand within the sheet; null when they are wider than it. */
function sidewaysBy(boxes: readonly Box[], width: number): number | null {
  const left = boxes.reduce((edge, box) => Math.min(edge, box.x), Infinity) - SHEET_EDGE;
  const over = boxes.reduce((edge, box) => Math.max(edge, right(box)), -Infinity) - (width - SHEET_EDGE);
  if (left >= 0 && over <= 0) return 0;
  return left < 0 ? (over - left <= 0 ? -left : null) : left - over >= 0 ? -over : null;
}

/**
 * The drawing at the greatest scale, or a smaller one, at which everything is within the sheet: necks and hoses of odd
 * proportions can reach beyond the parts they join.
 */
function within({ width, height }: Sheet, greatest: number, settle: (scale: number) => Settled): Drawn {
  let scale = greatest;
  let tried = drawn(settle(scale));
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const by = sidewaysBy(tried.obstacles, width);
    const isTooTall = height !== null && -topEdge(tried.obstacles) > height - 2;
    if (by === 0 && !isTooTall) break;
    if (by === null || isTooTall) {
      scale *= 0.9;
      tried = drawn(settle(scale));
      continue;
    }
    const { along } = tried.settled;
    tried = drawn({ ...tried.settled, along: { ...along, potX: along.potX + by, condenserX: along.condenserX + by } });
  }
  return tried;
}

const topWith = (sizes: TrueSizes, heights: Heights): number => {
  const barrel = sizes.condenser.kind === 'straight' && sizes.tub ? sizes.tub.height_m + sizes.tub.freeboard_m : 0;
  const boiler = sizes.boiler ? sizes.heat.height_m + sizes.boiler.height_m + sizes.boiler.lid_m : 0;
  return Math.max(topOf(heights), barrel, boiler);
};

/** The greatest scale at which the still and the room for its words fit a sheet, before any odd hose is looked at. */
export const greatestOn = (sizes: TrueSizes, sheet: Sheet, arrangement: Arrangement, margins: Margins): number =>
  fitted(sizes, sheet, arrangement, margins).greatest;

function fitted(sizes: TrueSizes, sheet: Sheet, arrangement: Arrangement, margins: Margins) {
  const { width, height, textScale, scaleAtMost } = sheet;
  const tube = tubeDrawn(sizes, arrangement);
  const heights = heightsOf(sizes, tube, isTucked(sizes, arrangement));
  const overhead = (arrangement === 'upright' ? UPRIGHT_OVERHEAD : OVERHEAD) * textScale;
  const room = width - (margins.left + margins.right) * textScale;
  const budget = height === null ? usualHeight(width) : Math.max(60, height - overhead);
  const tallest = Math.min(GREATEST_SCALE, scaleAtMost, budget / topWith(sizes, heights));
  const besidePot = margins.besidePot * textScale;
  const joined = (scale: number, tail: number) =>
    joinedAlong(sizes, heights, tube, scale, { tail, besidePot }, arrangement);
  const widthAt = (scale: number) => joined(scale, 0).width;
  return { tube, heights, overhead, room, joined, widthAt, greatest: greatestScale(widthAt, room, tallest) };
}

export function arrange(
  sizes: TrueSizes,
  minimumDepth_m: number,
  sheet: Sheet,
  arrangement: Arrangement,
  margins: Margins,
): Arranged {
  const { height, textScale } = sheet;
  const { tube, heights, overhead, room, joined, widthAt, greatest } = fitted(sizes, sheet, arrangement, margins);
  const first = within(sheet, greatest, (s) => {
    const spare = room - widthAt(s);
    const tail = sizes.condenser.kind === 'coil' ? Math.max(0, Math.min(TAIL_ROOM * textScale, 0.55 * spare)) : 0;
    const along = joined(s, arrangement === 'upright' ? 0 : tail);
    const x0 = margins.left * textScale + Math.max(0, room - along.width) / 2;
    return {
      sizes,
      heights,
      arrangement,
      tubeDrawn: tube,
      minimumDepth_m,
      frame: { pxPerMetre: s, floorY: 0 },
      along: { ...along, potX: x0, condenserX: x0 + along.condenserX },
    };
  });
  const floorY = height === null ? Math.ceil(overhead - topEdge(first.obstacles)) : Math.floor(height);
  return { ...drawn({ ...first.settled, frame: { ...first.settled.frame, floorY } }), floorY };
}
