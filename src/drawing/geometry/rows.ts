/**
 * One row from fire to receiver, or two where the screen is narrow: the greatest scale that fits, and where each group
 * then stands. Floors follow from what is drawn above them, so they are settled in a second look.
 */
import { condenserGroup, greatestScale, joinedAlong, potGroup, tubeDrawn, type Along } from './along.ts';
import { heightsOf, topOf, type Heights } from './heights.ts';
import { right, type Box } from './shapes.ts';
import { obstaclesOf, stillShapes, type Obstacles, type Settled, type StillShapes } from './still-shapes.ts';
import type { TrueSizes } from './true-sizes.ts';

export interface LayoutOptions {
  /** CSS pixels available. */
  readonly width: number;
  /** Size of the type against 13/15 px. */
  readonly textScale: number;
}

export const MARGIN = 10;
export const GROUND_DEPTH = 14;
const LEFT_WORDS = 172;
const RIGHT_WORDS = 152;
const TAIL_ROOM = 150;
const BESIDE_POT = 176;
const GREATEST_SCALE = 1800;
const SHEET_EDGE = 1;
const MOST_ROUNDS = 24;

const heightBudget = (width: number): number => Math.min(900, Math.max(300, 0.335 * width));

interface Drawn {
  readonly settled: Settled;
  readonly shapes: StillShapes;
  readonly obstacles: Obstacles;
}

export interface Rows extends Drawn {
  /** Floors from the top, one for each row. */
  readonly floors: readonly number[];
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
function within(width: number, scale: number, apart: boolean, settle: (scale: number) => Settled): Drawn {
  let tried = drawn(settle(scale));
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const { pot, end } = tried.obstacles;
    const potBy = sidewaysBy(apart ? pot : [...pot, ...end], width);
    const endBy = apart ? sidewaysBy(end, width) : potBy;
    if (potBy === 0 && endBy === 0) break;
    if (potBy === null || endBy === null) {
      scale *= 0.88;
      tried = drawn(settle(scale));
      continue;
    }
    const { along } = tried.settled;
    tried = drawn({
      ...tried.settled,
      along: { ...along, potX: along.potX + potBy, condenserX: along.condenserX + endBy },
    });
  }
  return tried;
}

const withFloors = (settled: Settled, pot: number, end: number): Settled => ({
  ...settled,
  potFrame: { ...settled.potFrame, floorY: Math.ceil(pot) },
  endFrame: { ...settled.endFrame, floorY: Math.ceil(end) },
});

const topWith = (sizes: TrueSizes, heights: Heights): number => {
  const barrel = sizes.condenser.kind === 'straight' && sizes.tub ? sizes.tub.height_m + sizes.tub.freeboard_m : 0;
  const boiler = sizes.boiler ? sizes.heat.height_m + sizes.boiler.height_m + sizes.boiler.lid_m : 0;
  return Math.max(topOf(heights), barrel, boiler);
};

/** Free height above the drawing in one row, where words over the neck may stand. */
const OVERHEAD = 40;

export function oneRow(sizes: TrueSizes, minimumDepth_m: number, { width, textScale }: LayoutOptions): Rows {
  const tube = tubeDrawn(sizes);
  const heights = heightsOf(sizes, tube);
  const room = width - (LEFT_WORDS + RIGHT_WORDS) * textScale;
  const tallest = Math.min(GREATEST_SCALE, heightBudget(width) / topWith(sizes, heights));
  const besidePot = BESIDE_POT * textScale;
  const widthAt = (scale: number) => joinedAlong(sizes, heights, tube, scale, { tail: 0, besidePot }).width;
  const first = within(width, greatestScale(widthAt, room, tallest), false, (s) => {
    const spare = room - widthAt(s);
    const tail = sizes.condenser.kind === 'coil' ? Math.max(0, Math.min(TAIL_ROOM * textScale, 0.55 * spare)) : 0;
    const along = joinedAlong(sizes, heights, tube, s, { tail, besidePot });
    const x0 = LEFT_WORDS * textScale + Math.max(0, room - along.width) / 2;
    const frame = { pxPerMetre: s, floorY: 0 };
    return {
      sizes,
      heights,
      tubeDrawn: tube,
      minimumDepth_m,
      potFrame: frame,
      endFrame: frame,
      rowEnd: null,
      along: { ...along, potX: x0, condenserX: x0 + along.condenserX },
    };
  });
  const floor = Math.ceil(OVERHEAD * textScale - Math.min(topEdge(first.obstacles.pot), topEdge(first.obstacles.end)));
  return { ...drawn(withFloors(first.settled, floor, floor)), floors: [floor] };
}

/** Words beside the pot in the first of two rows, and the height four of them need. */
const WORDS_BESIDE = 160;
const LEAST_ROW = 196;
const ROW_OVERHEAD = 24;
/** Height of both rows' parts together, at most. */
const MOST_ROWS = 560;
/** Between the first floor and the highest part of the second row, where the condenser's words may stand. */
const ROW_GAP = 34;

export function twoRows(sizes: TrueSizes, minimumDepth_m: number, { width, textScale }: LayoutOptions): Rows {
  const tube = tubeDrawn(sizes);
  const heights = heightsOf(sizes, tube, false);
  const potTop = Math.max(
    heights.apex,
    sizes.boiler ? sizes.heat.height_m + sizes.boiler.height_m + sizes.boiler.lid_m : 0,
  );
  const endTop = Math.max(heights.inlet, sizes.condenser.kind === 'straight' && sizes.tub ? sizes.tub.height_m : 0);
  const room = width - 2 * MARGIN;
  const besides = sizes.boiler ? 0.36 * width : Math.min(WORDS_BESIDE * textScale, 0.5 * width);
  const tallest = Math.min(GREATEST_SCALE, Math.min(MOST_ROWS, Math.max(360, 1.1 * width)) / (potTop + endTop));
  const forPot = greatestScale((scale) => potGroup(sizes, scale).width, room - besides, tallest);
  const greatest = greatestScale((scale) => condenserGroup(sizes, tube, scale, 0, true).width, room - 6, forPot);
  const first = within(width, greatest, true, (s) => {
    const pot = potGroup(sizes, s);
    const condenser = condenserGroup(sizes, tube, s, 0, true);
    const along: Along = {
      pot,
      condenser,
      potX: MARGIN + 4,
      condenserX: MARGIN + 4 + Math.max(0, (room - condenser.width) * 0.35),
      neck: 'continued',
    };
    const frame = { pxPerMetre: s, floorY: 0 };
    return {
      sizes,
      heights,
      along,
      tubeDrawn: tube,
      minimumDepth_m,
      potFrame: frame,
      endFrame: frame,
      rowEnd: width - MARGIN - 6,
    };
  });
  const potFloor = Math.ceil(Math.max(ROW_OVERHEAD - topEdge(first.obstacles.pot), LEAST_ROW * textScale));
  const endFloor = Math.ceil(potFloor + GROUND_DEPTH + ROW_GAP * textScale - topEdge(first.obstacles.end));
  return { ...drawn(withFloors(first.settled, potFloor, endFloor)), floors: [potFloor, endFloor] };
}
