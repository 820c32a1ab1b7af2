/** Drawings to build from, in metres: lines as they lie in the still, and dimensions between points of it. */
import { JOINT_OVER_WATER, SPOUT, type TubeEnds } from '../../geometry/tube-ends.ts';
import type { CoilMeasures, JacketMeasures, NeckMeasures, SeparatorMeasures } from './measures.ts';

/** Right and down. */
export type Place = readonly [x_m: number, y_m: number];

export type Stroke = 'wall' | 'tube' | 'hidden' | 'water' | 'centre';

export type DimensionName =
  | 'tub-diameter'
  | 'water-height'
  | 'coil-diameter'
  | 'pitch'
  | 'coil-height'
  | 'top-depth'
  | 'joint-height'
  | 'outlet-height'
  | 'spout'
  | 'jacket-bore'
  | 'cooled-length'
  | 'jacket-end'
  | 'neck-rising'
  | 'neck-falling'
  | 'lid-hole'
  | 'separator-bore'
  | 'upper-outlet'
  | 'leg-crest'
  | 'interface'
  | 'inlet-depth';

export interface Dimension {
  readonly name: DimensionName;
  readonly from: Place;
  readonly to: Place;
  /** How far beside the two points it is written, mm on paper: to the right of the way from one to the other. */
  readonly beside_mm: number;
  /** Where its words stand. */
  readonly words: 'left' | 'right' | 'above' | 'below';
}

export type LabelName = 'overflow' | 'hose' | 'lid' | 'oil' | 'water' | 'inlet';

export interface Figure {
  readonly id: 'coil' | 'jacket' | 'neck' | 'separator';
  readonly lines: readonly { readonly stroke: Stroke; readonly points: readonly Place[]; readonly closed?: boolean }[];
  readonly circles: readonly { readonly centre: Place; readonly diameter_m: number }[];
  readonly dimensions: readonly Dimension[];
  readonly labels: readonly {
    readonly name: LabelName;
    readonly at: Place;
    readonly side: 'left' | 'right' | 'middle';
  }[];
}

type Line = Figure['lines'][number];

/** Both edges of a straight tube of a thickness. */
function tube([x0, y0]: Place, [x1, y1]: Place, thick: number, stroke: Stroke = 'tube'): readonly Line[] {
  const length = Math.hypot(x1 - x0, y1 - y0) || 1;
  const [dx, dy] = [((y1 - y0) / length) * (thick / 2), ((x0 - x1) / length) * (thick / 2)];
  return [1, -1].map((side) => ({
    stroke,
    points: [
      [x0 + side * dx, y0 + side * dy],
      [x1 + side * dx, y1 + side * dy],
    ],
  }));
}

/** Rim of a tub above its overflow, m. */
const FREEBOARD = 0.03;

/** Coil and tub cut through their middle: y counts down from the overflow. */
export function coilFigure(
  {
    tubDiameter_m: W,
    waterHeight_m: H,
    tube_m,
    coilDiameter_m: D,
    pitch_m,
    turns,
    coilHeight_m,
    topDepth_m,
  }: CoilMeasures,
  inlet: 'bottom' | 'top',
): Figure {
  const [left, right] = [(W - D) / 2, (W + D) / 2];
  const first = topDepth_m + tube_m / 2;
  const last = first + turns * pitch_m;
  const lefts = Array.from({ length: Math.floor(turns) + 1 }, (_, k) => first + k * pitch_m);
  const rights = Array.from({ length: Math.floor(turns + 0.5) }, (_, k) => first + (k + 0.5) * pitch_m);
  const pitched = rights.length > 1 ? [rights[0], rights[1]] : null;
  return {
    id: 'coil',
    lines: [
      {
        stroke: 'wall',
        points: [
          [0, -FREEBOARD],
          [0, H],
          [W, H],
          [W, -FREEBOARD],
        ],
      },
      {
        stroke: 'water',
        points: [
          [0, 0],
          [W, 0],
        ],
      },
      ...tube([left, -JOINT_OVER_WATER], [left, first], tube_m),
      ...tube([right, last], [W + SPOUT, last], tube_m),
      ...rights.flatMap((y, k) => tube([left, lefts[k] as number], [right, y], tube_m, 'hidden')),
      {
        stroke: 'centre',
        points: [
          [W / 2, topDepth_m],
          [W / 2, topDepth_m + coilHeight_m],
        ],
      },
      {
        stroke: 'hidden',
        points:
          inlet === 'top'
            ? [
                [W - 0.03, -0.1],
                [W - 0.03, -0.01],
              ]
            : [
                [W - 0.03, -0.1],
                [W - 0.03, H - 0.015],
                [W - 0.09, H - 0.015],
              ],
      },
    ],
    circles: [
      ...lefts.map((y) => ({ centre: [left, y] as const, diameter_m: tube_m })),
      ...rights.map((y) => ({ centre: [right, y] as const, diameter_m: tube_m })),
    ],
    dimensions: [
      { name: 'coil-diameter', from: [left, H], to: [right, H], beside_mm: 7, words: 'below' },
      { name: 'tub-diameter', from: [0, H], to: [W, H], beside_mm: 15, words: 'below' },
      { name: 'water-height', from: [W + SPOUT, 0], to: [W + SPOUT, H], beside_mm: -38, words: 'right' },
      { name: 'outlet-height', from: [W + SPOUT, last], to: [W + SPOUT, H], beside_mm: -4, words: 'right' },
      { name: 'joint-height', from: [0, -JOINT_OVER_WATER], to: [0, 0], beside_mm: 8, words: 'left' },
      ...(topDepth_m > 0
        ? [{ name: 'top-depth', from: [0, 0], to: [0, topDepth_m], beside_mm: 8, words: 'left' } as const]
        : []),
      { name: 'coil-height', from: [0, topDepth_m], to: [0, topDepth_m + coilHeight_m], beside_mm: 8, words: 'left' },
      ...(pitched
        ? [
            {
              name: 'pitch',
              from: [W, pitched[0] as number],
              to: [W, pitched[1] as number],
              beside_mm: -4,
              words: 'right',
            } as const,
          ]
        : []),
      { name: 'spout', from: [W, H], to: [W + SPOUT, H], beside_mm: 15, words: 'below' },
    ],
    labels: [
      { name: 'overflow', at: [W * 0.5, -0.005], side: 'middle' },
      { name: 'hose', at: [W - 0.03, -0.1], side: 'right' },
    ],
  };
}

/** A straight tube, or a bundle seen from the side, in its jacket. */
export function jacketFigure(
  { tube_m, jacketBore_m, cooled_m }: JacketMeasures,
  { inlet_m, outlet_m }: TubeEnds,
): Figure {
  const half = jacketBore_m / 2;
  return {
    id: 'jacket',
    lines: [
      {
        stroke: 'wall',
        closed: true,
        points: [
          [0, -half],
          [cooled_m, -half],
          [cooled_m, half],
          [0, half],
        ],
      },
      ...tube([-inlet_m, 0], [cooled_m + outlet_m, 0], tube_m),
    ],
    circles: [],
    dimensions: [
      { name: 'cooled-length', from: [0, half], to: [cooled_m, half], beside_mm: 8, words: 'below' },
      { name: 'jacket-end', from: [-inlet_m, half], to: [0, half], beside_mm: 16, words: 'below' },
      { name: 'jacket-bore', from: [cooled_m, -half], to: [cooled_m, half], beside_mm: -14, words: 'right' },
    ],
    labels: [],
  };
}

/** Slope at which the falling part is drawn: a workshop bends it to where the tub stands. */
const FALL = Math.PI / 9;
const LID_SHOWN = 0.12;

export function neckFigure({ outside_m, rising_m, falling_m }: NeckMeasures): Figure {
  const apex: Place = [0, -rising_m];
  const end: Place = [falling_m * Math.cos(FALL), -rising_m + falling_m * Math.sin(FALL)];
  return {
    id: 'neck',
    lines: [
      {
        stroke: 'wall',
        points: [
          [-LID_SHOWN, 0],
          [-outside_m / 2, 0],
        ],
      },
      {
        stroke: 'wall',
        points: [
          [outside_m / 2, 0],
          [LID_SHOWN, 0],
        ],
      },
      ...tube([0, 0], apex, outside_m),
      ...tube(apex, end, outside_m),
      { stroke: 'centre', points: [[0, 0], apex, end] },
    ],
    circles: [],
    dimensions: [
      { name: 'neck-rising', from: [0, -rising_m], to: [0, 0], beside_mm: 10, words: 'left' },
      { name: 'neck-falling', from: apex, to: end, beside_mm: -8, words: 'above' },
      { name: 'lid-hole', from: [-outside_m / 2, 0], to: [outside_m / 2, 0], beside_mm: 8, words: 'below' },
    ],
    labels: [{ name: 'lid', at: [LID_SHOWN, 0], side: 'right' }],
  };
}

/** Room of a leg beside the vessel, m. */
const LEG_GAP = 0.03;

/** y counts down from the base, so that heights are negative. */
export function separatorFigure({
  bore_m,
  upper_m,
  crest_m,
  interface_m,
  legStart_m,
  inletDepth_m,
  sinks,
}: SeparatorMeasures): Figure {
  const half = bore_m / 2;
  const leg = half + LEG_GAP;
  const rim = upper_m * 1.12;
  return {
    id: 'separator',
    lines: [
      {
        stroke: 'wall',
        points: [
          [-half, -rim],
          [-half, 0],
          [half, 0],
          [half, -rim],
        ],
      },
      // The leg, from low down up to its crest and over.
      {
        stroke: 'tube',
        points: [
          [half, -legStart_m],
          [leg, -legStart_m],
          [leg, -crest_m],
          [leg + LEG_GAP, -crest_m],
          [leg + LEG_GAP, -crest_m + 0.02],
        ],
      },
      {
        stroke: 'tube',
        points: [
          [-half, -upper_m],
          [-half - LEG_GAP, -upper_m],
          [-half - LEG_GAP, -upper_m + 0.02],
        ],
      },
      {
        stroke: 'water',
        points: [
          [-half, -interface_m],
          [half, -interface_m],
        ],
      },
      {
        stroke: 'centre',
        points: [
          [0, -rim],
          [0, -upper_m + inletDepth_m],
        ],
      },
    ],
    circles: [],
    dimensions: [
      { name: 'separator-bore', from: [-half, 0], to: [half, 0], beside_mm: 7, words: 'below' },
      {
        name: 'upper-outlet',
        from: [-half - LEG_GAP, -upper_m],
        to: [-half - LEG_GAP, 0],
        beside_mm: 5,
        words: 'left',
      },
      { name: 'leg-crest', from: [leg + LEG_GAP, -crest_m], to: [leg + LEG_GAP, 0], beside_mm: -5, words: 'right' },
      {
        name: 'interface',
        from: [leg + LEG_GAP, -interface_m],
        to: [leg + LEG_GAP, 0],
        beside_mm: -34,
        words: 'right',
      },
    ],
    labels: [
      { name: sinks ? 'water' : 'oil', at: [-half - LEG_GAP, -upper_m - 0.008], side: 'left' },
      { name: sinks ? 'oil' : 'water', at: [leg + LEG_GAP, -crest_m - 0.008], side: 'right' },
      { name: 'inlet', at: [0, -rim - 0.006], side: 'middle' },
    ],
  };
}
