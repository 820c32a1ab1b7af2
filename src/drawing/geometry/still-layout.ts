/**
 * The whole drawing for a sheet, in one piece, with every label and caution placed. A pure function of the scenario,
 * the sheet and the size of the type.
 */
import type { Scenario } from '../../../sim/index.ts';
import { arrange, greatestOn, type Arranged, type Margins } from './arrangement.ts';
import {
  hazardsOf,
  leaderBoxes,
  placeCautions,
  plumeBox,
  type CautionPlace,
  type UnderRoom,
} from './caution-places.ts';
import { labelWishes } from './label-wishes.ts';
import { placeLabels, type LabelId, type Place } from './labels.ts';
import { boxesOverlap, right, type Box } from './shapes.ts';
import type { StillShapes } from './still-shapes.ts';
import { trueSizes, type TrueSizes } from './true-sizes.ts';

export interface LayoutOptions {
  /** CSS pixels available. */
  readonly width: number;
  /** Height of a sheet that does not grow with the drawing. */
  readonly height?: number | undefined;
  /** Size of the type against 13/15 px. */
  readonly textScale: number;
  /** The greatest scale wanted, px a metre; else as great as the sheet allows. */
  readonly scaleAtMost?: number;
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
  readonly textScale: number;
  readonly sizes: TrueSizes;
  readonly shapes: StillShapes;
  /** Of every part, but on a narrow sheet only of those that find room. */
  readonly labels: readonly Place<LabelId>[];
  /** Of every hazard. */
  readonly cautions: readonly CautionPlace[];
  readonly ground: Ground;
  /** Right end of the scale bar. */
  readonly scaleBar: { readonly x: number; readonly y: number; readonly isInline: boolean };
  /** Where the shades of water are told; `null` where words stand or the scale bar leaves no room. */
  readonly waterKey: Box | null;
  readonly obstacles: readonly Box[];
}

export const LEAST_WIDTH = 240;
/** Narrower than this the still is drawn upright. */
const ALONG_FROM = 560;
const MARGIN = 10;
const GROUND_DEPTH = 14;
const BAR_ROOM = 34;
const BAR_WORDS = 120;
/** Scale bar with words beside it. */
const BAR_ACROSS = 156;
export const WATER_BAR = 48;
/** Words on both sides of that bar. */
const WATER_WORDS = 118;
/** Under the lowest row, px. */
const ROWS_END = 4;
/** Height of a scale bar whose words stand beside it. */
const LINE_BAR = 16;
const EDGE = 4;

/** Where words may stand: on both sides of the still, on one, or in the gap right of the pot. */
const ALONG: readonly Margins[] = [
  { left: 172, right: 152, besidePot: 0 },
  { left: 172, right: 16, besidePot: 0 },
  { left: 16, right: 152, besidePot: 176 },
  { left: 16, right: 16, besidePot: 176 },
];
const UPRIGHT: readonly Margins[] = [{ left: 8, right: 4, besidePot: 0 }];
/** Beside these the words of the pot find no room on the left. */
const NO_ROOM_LEFT: readonly Margins[] = [
  { left: 172, right: 152, besidePot: 176 },
  { left: 16, right: 152, besidePot: 176 },
];
/** On a narrow sheet words stand by their part or not at all, px. */
const LONGEST_LEADER = 56;
const MOST_ROUNDS = 6;
/** What a caption under the floor takes from the liking for a drawing, as a share of its scale. */
const CAPTION_COST = 0.08;

interface Candidate {
  readonly arranged: Arranged;
  readonly labels: readonly Place<LabelId>[];
  readonly cautions: readonly CautionPlace[];
  /** From the floor to the lower edge. */
  readonly below: number;
  readonly liking: number;
}

/** From the floor to the lower edge where no caption stands. */
const usualBelow = (textScale: number): number => GROUND_DEPTH + 6 + BAR_ROOM * textScale;

function candidate(
  sizes: TrueSizes,
  scenario: Scenario,
  { width, height, textScale, scaleAtMost = Infinity }: LayoutOptions,
  isUpright: boolean,
  margins: Margins,
): Candidate {
  const settle = (below: number): Candidate => {
    const arranged = arrange(
      sizes,
      scenario.pot.minimumDepth_m,
      { width, height: height === undefined ? null : height - below, textScale, scaleAtMost },
      isUpright ? 'upright' : 'along',
      margins,
    );
    const { shapes, obstacles, floorY } = arranged;
    const bounds: Box = { x: EDGE, y: 2, width: width - 2 * EDGE, height: floorY - 4 };
    const wishes = labelWishes(shapes, textScale);
    const drawn = [...obstacles, plumeBox(shapes)];
    const { places, left } = placeLabels(
      [...wishes.pot, ...wishes.condenser],
      drawn,
      bounds,
      isUpright ? LONGEST_LEADER : Infinity,
    );
    const words = places.map(({ box }) => box);
    const leaders = places.flatMap(({ leader }) => (leader ? leaderBoxes(leader) : []));
    const {
      cautions,
      captions,
      height: lowest,
    } = placeCautions(
      hazardsOf(shapes),
      isUpright ? [] : left,
      { taken: [...drawn, ...words, ...leaders], words, bounds, textScale },
      underRoom(floorY, width, textScale, isUpright),
      isUpright,
    );
    return {
      arranged,
      labels: [...places, ...captions],
      cautions,
      below: Math.max(isUpright ? 0 : usualBelow(textScale), lowest > 0 ? lowest - floorY + ROWS_END : 0),
      liking: arranged.settled.frame.pxPerMetre * (1 - CAPTION_COST * captions.length),
    };
  };
  let below = usualBelow(textScale);
  let settled = settle(below);
  // Captions take their height from the drawing, which may ask for more of them.
  for (let round = 0; height !== undefined && settled.below > below && round < MOST_ROUNDS; round++) {
    below = settled.below;
    settled = settle(below);
  }
  return settled;
}

function underRoom(floorY: number, width: number, textScale: number, isUpright: boolean): UnderRoom {
  const y = floorY + GROUND_DEPTH + 6;
  const edge = isUpright ? EDGE : MARGIN + 4;
  const across = { x: edge, y: y + (isUpright ? LINE_BAR : BAR_ROOM) * textScale, width: width - 2 * edge, height: 0 };
  return { beside: { ...across, y, width: across.width - BAR_WORDS * textScale }, across };
}

export function layoutStill(scenario: Scenario, options: LayoutOptions): StillLayout {
  const width = Math.max(LEAST_WIDTH, Math.round(options.width));
  const { textScale, scaleAtMost = Infinity } = options;
  const sizes = trueSizes(scenario);
  const isUpright = width < ALONG_FROM * textScale;
  const steamed = sizes.boiler !== null || sizes.heat.kind === 'steam-generator';
  const margins = isUpright ? UPRIGHT : steamed ? NO_ROOM_LEFT : ALONG;
  const sheet = {
    width,
    height: options.height === undefined ? null : options.height - usualBelow(textScale),
    textScale,
    scaleAtMost,
  };
  const byScale = margins
    .map((each) => ({ each, greatest: greatestOn(sizes, sheet, isUpright ? 'upright' : 'along', each) }))
    .sort((a, b) => b.greatest - a.greatest);
  let best: Candidate | null = null;
  for (const { each, greatest } of byScale) {
    if (best && best.liking >= greatest) break;
    const tried: Candidate = candidate(sizes, scenario, { ...options, width }, isUpright, each);
    if (!best || tried.liking > best.liking) best = tried;
  }
  if (!best) throw new Error('there is no way to arrange a still');
  const { shapes, obstacles, settled, floorY } = best.arranged;
  return {
    width,
    height: Math.ceil(options.height ?? floorY + best.below),
    pxPerMetre: settled.frame.pxPerMetre,
    textScale,
    sizes,
    shapes,
    labels: best.labels,
    cautions: best.cautions,
    ground: { x: MARGIN, y: floorY, width: width - 2 * MARGIN },
    scaleBar: { x: width - MARGIN - 6, y: floorY + GROUND_DEPTH + 10, isInline: isUpright },
    waterKey: waterKeyBox(width, floorY, textScale, [...best.labels, ...best.cautions]),
    obstacles,
  };
}

function waterKeyBox(
  width: number,
  floorY: number,
  textScale: number,
  words: readonly { readonly box: Box }[],
): Box | null {
  const key: Box = {
    x: MARGIN,
    y: floorY + GROUND_DEPTH + 2,
    width: WATER_BAR + WATER_WORDS * textScale,
    height: 16 * textScale,
  };
  const isFree =
    right(key) < width - MARGIN - BAR_ACROSS * textScale && !words.some(({ box }) => boxesOverlap(key, box));
  return isFree ? key : null;
}

/** A layout with the room above and below it that brings its floor to the floor of those beside it. */
export interface PlacedLayout {
  readonly layout: StillLayout;
  readonly above: number;
  readonly below: number;
}

export const placedStill = (scenario: Scenario, options: LayoutOptions): PlacedLayout => ({
  layout: layoutStill(scenario, options),
  above: 0,
  below: 0,
});
