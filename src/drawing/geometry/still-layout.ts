/**
 * The whole drawing for a sheet, in one piece, with every label and caution placed. A pure function of the scenario,
 * the sheet and the size of the type.
 */
import type { Scenario } from '../../../sim/index.ts';
import { arrange, greatestOn, type Arranged, type Margins } from './arrangement.ts';
import { hazardWishes, labelWishes } from './label-wishes.ts';
import {
  captionRows,
  placeLabels,
  placeOver,
  type Captions,
  type HazardId,
  type LabelId,
  type Place,
  type Wish,
} from './labels.ts';
import type { Box } from './shapes.ts';
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
  readonly hazards: readonly Place<HazardId>[];
  readonly ground: Ground;
  /** Right end of the scale bar. */
  readonly scaleBar: { readonly x: number; readonly y: number };
  readonly obstacles: readonly Box[];
}

export const LEAST_WIDTH = 240;
/** Narrower than this the still is drawn upright. */
const ALONG_FROM = 560;
const MARGIN = 10;
const GROUND_DEPTH = 14;
const BAR_ROOM = 34;
const BAR_WORDS = 150;
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
  readonly captions: Captions<LabelId>;
  readonly hazards: readonly Place<HazardId>[];
  /** From the floor to the lower edge. */
  readonly below: number;
  readonly liking: number;
}

/** From the floor to the lower edge where no caption stands. */
const usualBelow = (textScale: number): number => GROUND_DEPTH + 6 + BAR_ROOM * textScale;

const noCaptions: Captions<LabelId> = { places: [], height: 0 };

function candidate(
  sizes: TrueSizes,
  scenario: Scenario,
  { width, height, textScale, scaleAtMost = Infinity }: LayoutOptions,
  isUpright: boolean,
  margins: Margins,
): Candidate {
  const bar = BAR_ROOM * textScale;
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
    const { places, left } = placeLabels(
      [...wishes.pot, ...wishes.condenser],
      obstacles,
      bounds,
      isUpright ? LONGEST_LEADER : Infinity,
    );
    const captions = isUpright ? noCaptions : captionsFor(left, floorY, width, textScale);
    const taken = [...places, ...captions.places].map(({ box }) => box);
    const dangers = hazardWishes(shapes, textScale);
    const beside = placeLabels([...dangers.pot, ...dangers.condenser], [...obstacles, ...taken], bounds);
    const over = placeOver(beside.left, [...taken, ...beside.places.map(({ box }) => box)], bounds);
    return {
      arranged,
      labels: [...places, ...captions.places],
      captions,
      hazards: [...beside.places, ...over],
      below: GROUND_DEPTH + 6 + Math.max(bar, captions.height > 0 ? captions.height + 8 : 0),
      liking: arranged.settled.frame.pxPerMetre * (1 - CAPTION_COST * captions.places.length),
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

const captionsFor = (left: readonly Wish<LabelId>[], floorY: number, width: number, textScale: number) =>
  captionRows(left, {
    x: MARGIN + 4,
    y: floorY + GROUND_DEPTH + 6,
    width: width - 2 * MARGIN - 8 - BAR_WORDS * textScale,
    height: 0,
  });

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
    hazards: best.hazards,
    ground: { x: MARGIN, y: floorY, width: width - 2 * MARGIN },
    scaleBar: { x: width - MARGIN - 6, y: floorY + GROUND_DEPTH + 10 },
    obstacles,
  };
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

/** How often the scale is brought down to that of the smallest drawing. */
const MOST_SCALES = 6;

/** Stills beside each other: one scale, one floor, sheets of one height. */
export function layoutAlike(scenarios: readonly Scenario[], options: LayoutOptions): readonly PlacedLayout[] {
  const scaleOf = (all: readonly StillLayout[]): number => Math.min(...all.map(({ pxPerMetre }) => pxPerMetre));
  let layouts = scenarios.map((scenario) => layoutStill(scenario, options));
  for (let round = 0; round < MOST_SCALES; round++) {
    const scaleAtMost = scaleOf(layouts);
    if (layouts.every(({ pxPerMetre }) => pxPerMetre <= scaleAtMost)) break;
    layouts = layouts.map((layout, index) =>
      layout.pxPerMetre <= scaleAtMost
        ? layout
        : layoutStill(scenarios[index] as Scenario, { ...options, scaleAtMost }),
    );
  }
  const over = ({ ground }: StillLayout): number => ground.y;
  const under = ({ height, ground }: StillLayout): number => height - ground.y;
  const [above, below] = [Math.max(...layouts.map(over)), Math.max(...layouts.map(under))];
  return layouts.map((layout) => ({ layout, above: above - over(layout), below: below - under(layout) }));
}
