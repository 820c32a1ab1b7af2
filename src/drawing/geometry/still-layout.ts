/**
 * The whole drawing for a width: one row from fire to receiver where there is room, two rows on narrow screens, with
 * every label placed. A pure function of the scenario, the width and the size of the type.
 */
import type { Scenario } from '../../../sim/index.ts';
import { condenserGroup, greatestScale, joinedAlong, potGroup, tubeDrawn, type Along } from './along.ts';
import { heightsOf, topOf, type Heights } from './heights.ts';
import { hazardWishes, labelWishes } from './label-wishes.ts';
import { captionColumns, captionRows, placeLabels, type HazardId, type LabelId, type Place, type Wish } from './labels.ts';
import { obstaclesOf, stillShapes, type Settled, type StillShapes } from './still-shapes.ts';
import type { Box } from './shapes.ts';
import { trueSizes, type TrueSizes } from './true-sizes.ts';

export interface LayoutOptions {
  /** CSS pixels available. */
  readonly width: number;
  /** Size of the type against 13/15 px. */
  readonly textScale: number;
}

export interface Ground {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

export interface StillLayout {
  readonly width: number;
  readonly height: number;
  readonly pxPerMetre: number;
  readonly compact: boolean;
  readonly textScale: number;
  readonly sizes: TrueSizes;
  readonly shapes: StillShapes;
  readonly labels: readonly Place<LabelId>[];
  readonly hazards: readonly Place<HazardId>[];
  readonly grounds: readonly Ground[];
  /** Right end of the scale bar. */
  readonly scaleBar: { readonly x: number; readonly y: number };
  readonly obstacles: readonly Box[];
}

export const LEAST_WIDTH = 320;
const ONE_ROW_FROM = 900;
const MARGIN = 10;
const LEFT_WORDS = 172;
const RIGHT_WORDS = 152;
const GROUND_DEPTH = 14;
const BAR_ROOM = 34;
const BAR_WORDS = 150;
const GREATEST_SCALE = 1800;
const TAIL_ROOM = 150;
const BESIDE_POT = 176;

const heightBudget = (width: number): number => Math.min(900, Math.max(300, 0.335 * width));

interface Rows {
  readonly settled: Settled;
  readonly grounds: readonly Ground[];
}

const topWith = (sizes: TrueSizes, heights: Heights): number => {
  const barrel = sizes.condenser.kind === 'straight' && sizes.tub ? sizes.tub.height_m + sizes.tub.freeboard_m : 0;
  const boiler = sizes.boiler ? sizes.heat.height_m + sizes.boiler.height_m + sizes.boiler.lid_m : 0;
  return Math.max(topOf(heights), barrel, boiler);
};

/** Fixed pixels above the highest part: half the neck, a barrel's hoses, words over the neck. */
const HEADROOM = 46;

function oneRow(sizes: TrueSizes, minimumDepth_m: number, { width, textScale }: LayoutOptions): Rows {
  const drawn = tubeDrawn(sizes);
  const heights = heightsOf(sizes, drawn);
  const room = width - (LEFT_WORDS + RIGHT_WORDS) * textScale;
  const tallest = Math.min(GREATEST_SCALE, heightBudget(width) / topWith(sizes, heights));
  const besidePot = BESIDE_POT * textScale;
  const widthAt = (scale: number) => joinedAlong(sizes, heights, drawn, scale, { tail: 0, besidePot }).width;
  const s = greatestScale(widthAt, room, tallest);
  const tail = sizes.condenser.kind === 'coil' ? Math.max(0, Math.min(TAIL_ROOM * textScale, 0.55 * (room - widthAt(s)))) : 0;
  const along = joinedAlong(sizes, heights, drawn, s, { tail, besidePot });
  const x0 = LEFT_WORDS * textScale + Math.max(0, room - along.width) / 2;
  const floorY = Math.ceil(topWith(sizes, heights) * s + HEADROOM);
  const frame = { pxPerMetre: s, floorY };
  return {
    settled: {
      sizes, heights, tubeDrawn: drawn, minimumDepth_m, potFrame: frame, endFrame: frame, rowEnd: null,
      along: { ...along, potX: x0, condenserX: x0 + along.condenserX },
    },
    grounds: [{ x: MARGIN, y: floorY, width: width - 2 * MARGIN }],
  };
}

/** Words beside the pot in the first of two rows, and the height four of them need. */
const WORDS_BESIDE = 160;
const LEAST_ROW = 196;

function twoRows(sizes: TrueSizes, minimumDepth_m: number, { width, textScale }: LayoutOptions): Rows {
  const drawn = tubeDrawn(sizes);
  const heights = heightsOf(sizes, drawn, false);
  const potTop = Math.max(heights.apex, sizes.boiler ? sizes.heat.height_m + sizes.boiler.height_m + sizes.boiler.lid_m : 0);
  const endTop = Math.max(heights.inlet, sizes.condenser.kind === 'straight' && sizes.tub ? sizes.tub.height_m : 0);
  const room = width - 2 * MARGIN;
  const besides = sizes.boiler ? 0.36 * width : Math.min(WORDS_BESIDE * textScale, 0.5 * width);
  const tallest = Math.min(GREATEST_SCALE, Math.max(360, 1.1 * width) / (potTop + endTop));
  const forPot = greatestScale((scale) => potGroup(sizes, scale).width, room - besides, tallest);
  const s = greatestScale((scale) => condenserGroup(sizes, drawn, scale, 0, true).width, room - 6, forPot);
  const pot = potGroup(sizes, s);
  const condenser = condenserGroup(sizes, drawn, s, 0, true);
  const potFloor = Math.ceil(Math.max(potTop * s + HEADROOM, LEAST_ROW * textScale));
  const endFloor = Math.ceil(potFloor + GROUND_DEPTH + endTop * s + HEADROOM + 10);
  const along: Along = { pot, condenser, potX: MARGIN + 4, condenserX: MARGIN + 4 + Math.max(0, (room - condenser.width) * 0.35), neck: 'continued' };
  return {
    settled: {
      sizes, heights, along, tubeDrawn: drawn, minimumDepth_m,
      potFrame: { pxPerMetre: s, floorY: potFloor },
      endFrame: { pxPerMetre: s, floorY: endFloor },
      rowEnd: width - MARGIN - 6,
    },
    grounds: [{ x: MARGIN, y: potFloor, width: room }, { x: MARGIN, y: endFloor, width: room }],
  };
}

interface Words {
  readonly labels: readonly Place<LabelId>[];
  readonly hazards: readonly Place<HazardId>[];
}

function placeWords(
  wishes: readonly Wish<LabelId>[],
  hazards: readonly Wish<HazardId>[],
  obstacles: readonly Box[],
  bounds: Box,
): Words & { readonly left: readonly Wish<LabelId>[] } {
  const labels = placeLabels(wishes, obstacles, bounds);
  const cautions = placeLabels(hazards, [...obstacles, ...labels.places.map((place) => place.box)], bounds);
  return { labels: labels.places, left: labels.left, hazards: cautions.places };
}

export function layoutStill(scenario: Scenario, options: LayoutOptions): StillLayout {
  const width = Math.max(LEAST_WIDTH, Math.round(options.width));
  const { textScale } = options;
  const sizes = trueSizes(scenario);
  const compact = width < ONE_ROW_FROM * textScale;
  const { settled, grounds } = (compact ? twoRows : oneRow)(sizes, scenario.pot.minimumDepth_m, { width, textScale });
  const shapes = stillShapes(settled);
  const obstacles = obstaclesOf(shapes);
  const wishes = labelWishes(shapes, textScale);
  const hazards = hazardWishes(shapes, textScale);
  const lowest = grounds[grounds.length - 1] as Ground;
  const within = (from: number, to: number): Box => ({ x: 4, y: from + 2, width: width - 8, height: to - from - 4 });
  const potFloor = (grounds[0] as Ground).y;
  const rows = compact
    ? [placeWords(wishes.pot, hazards.pot, obstacles, within(0, potFloor)), placeWords(wishes.condenser, hazards.condenser, obstacles, within(potFloor + GROUND_DEPTH, lowest.y))]
    : [placeWords([...wishes.pot, ...wishes.condenser], [...hazards.pot, ...hazards.condenser], obstacles, within(0, potFloor))];
  const below = lowest.y + GROUND_DEPTH + 6;
  const left = rows.flatMap((row) => row.left);
  const captions = compact
    ? captionColumns(left, { x: MARGIN + 4, y: below + BAR_ROOM - 4, width: width - 2 * MARGIN - 8, height: 0 })
    : captionRows(left, { x: MARGIN + 4, y: below, width: width - 2 * MARGIN - 8 - BAR_WORDS * textScale, height: 0 });
  return {
    width,
    height: Math.ceil(below + Math.max(BAR_ROOM, captions.height + (compact && captions.height > 0 ? BAR_ROOM : 8))),
    pxPerMetre: settled.potFrame.pxPerMetre,
    compact,
    textScale,
    sizes,
    shapes,
    labels: [...rows.flatMap((row) => row.labels), ...captions.places],
    hazards: rows.flatMap((row) => row.hazards),
    grounds,
    scaleBar: { x: width - MARGIN - 6, y: below + 4 },
    obstacles,
  };
}
