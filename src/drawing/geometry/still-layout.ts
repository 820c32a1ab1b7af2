/**
 * The whole drawing for a width: one row from fire to receiver where there is room, two rows on narrow screens, with
 * every label placed. A pure function of the scenario, the width and the size of the type.
 */
import type { Scenario } from '../../../sim/index.ts';
import { hazardWishes, labelWishes } from './label-wishes.ts';
import {
  captionColumns,
  captionRows,
  placeLabels,
  type HazardId,
  type LabelId,
  type Place,
  type Wish,
} from './labels.ts';
import { GROUND_DEPTH, MARGIN, oneRow, twoRows, type LayoutOptions } from './rows.ts';
import type { Box } from './shapes.ts';
import type { StillShapes } from './still-shapes.ts';
import { trueSizes, type TrueSizes } from './true-sizes.ts';

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
const BAR_ROOM = 34;
const BAR_WORDS = 150;
const EDGE = 4;

interface Words {
  readonly labels: readonly Place<LabelId>[];
  readonly hazards: readonly Place<HazardId>[];
  readonly left: readonly Wish<LabelId>[];
}

function placeWords(
  wishes: readonly Wish<LabelId>[],
  hazards: readonly Wish<HazardId>[],
  obstacles: readonly Box[],
  bounds: Box,
): Words {
  const labels = placeLabels(wishes, obstacles, bounds);
  const cautions = placeLabels(hazards, [...obstacles, ...labels.places.map((place) => place.box)], bounds);
  return { labels: labels.places, left: labels.left, hazards: cautions.places };
}

export function layoutStill(scenario: Scenario, options: LayoutOptions): StillLayout {
  const width = Math.max(LEAST_WIDTH, Math.round(options.width));
  const { textScale } = options;
  const sizes = trueSizes(scenario);
  const compact = width < ONE_ROW_FROM * textScale;
  const { settled, shapes, obstacles, floors } = (compact ? twoRows : oneRow)(sizes, scenario.pot.minimumDepth_m, {
    width,
    textScale,
  });
  const wishes = labelWishes(shapes, textScale);
  const hazards = hazardWishes(shapes, textScale);
  const everything = [...obstacles.pot, ...obstacles.end];
  const potFloor = floors[0] as number;
  const lowest = floors[floors.length - 1] as number;
  const within = (from: number, to: number): Box => ({
    x: EDGE,
    y: from + 2,
    width: width - 2 * EDGE,
    height: to - from - 4,
  });
  const rows = compact
    ? [
        placeWords(wishes.pot, hazards.pot, everything, within(0, potFloor)),
        placeWords(wishes.condenser, hazards.condenser, everything, within(potFloor + GROUND_DEPTH, lowest)),
      ]
    : [
        placeWords(
          [...wishes.pot, ...wishes.condenser],
          [...hazards.pot, ...hazards.condenser],
          everything,
          within(0, potFloor),
        ),
      ];
  const below = lowest + GROUND_DEPTH + 6;
  const left = rows.flatMap((row) => row.left);
  const captions = compact
    ? captionColumns(left, { x: MARGIN + 4, y: below + BAR_ROOM - 4, width: width - 2 * MARGIN - 8, height: 0 })
    : captionRows(left, { x: MARGIN + 4, y: below, width: width - 2 * MARGIN - 8 - BAR_WORDS * textScale, height: 0 });
  return {
    width,
    height: Math.ceil(
      below + Math.max(BAR_ROOM * textScale, captions.height + (compact && captions.height > 0 ? BAR_ROOM : 8)),
    ),
    pxPerMetre: settled.potFrame.pxPerMetre,
    compact,
    textScale,
    sizes,
    shapes,
    labels: [...rows.flatMap((row) => row.labels), ...captions.places],
    hazards: rows.flatMap((row) => row.hazards),
    grounds: floors.map((y) => ({ x: MARGIN, y, width: width - 2 * MARGIN })),
    scaleBar: { x: width - MARGIN - 6, y: below + 4 },
    obstacles: everything,
  };
}
