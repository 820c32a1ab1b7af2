/** Separator and jug in pixels. */
import { CREST_SHARE, SEPARATOR_RIM, type Heights } from './heights.ts';
import { GLASS_WALL } from './line-weights.ts';
import { bottom, boxAround, right, roundCorners, yAt, type Box, type Frame, type Point } from './shapes.ts';
import type { TrueSizes } from './true-sizes.ts';

export interface SeparatorShape {
  /** Inside of the glass, from the rim down. */
  readonly glass: Box;
  readonly centreX: number;
  /** Surface of the liquid; the oil spout sits just above. */
  readonly surfaceY: number;
  readonly spout: readonly Point[];
  /** Funnel mouth and stem, down to where the condensate enters. */
  readonly funnel: {
    readonly topY: number;
    readonly half: number;
    readonly neckY: number;
    readonly stemHalf: number;
    readonly endY: number;
  };
  /** Water's way out when oil floats: from the foot up to the crest; when it sinks: over the top. */
  readonly waterLeg: readonly Point[];
  readonly overTop: readonly Point[];
  /** Bottom tap for oil that sinks. */
  readonly bottomTap: readonly Point[];
  readonly legWidth: number;
  readonly spill: Point;
  readonly box: Box;
  readonly pxPerMetre: number;
}

export function separatorShape(
  sizes: TrueSizes,
  heights: Heights,
  frame: Frame,
  centreX: number,
  jug: JugShape,
): SeparatorShape {
  const { separator } = sizes;
  const s = frame.pxPerMetre;
  const bore = Math.max(6, separator.bore_m * s);
  const foot = yAt(frame, heights.separator) - GLASS_WALL;
  const tall = SEPARATOR_RIM * separator.height_m * s;
  const glass = boxAround(centreX, foot - tall, bore, tall);
  const spoutY = foot - separator.height_m * s;
  const surfaceY = foot - CREST_SHARE * separator.height_m * s;
  const legWidth = Math.max(3, Math.min(6, 0.1 * bore));
  const wall = right(glass) + GLASS_WALL;
  const legX = wall + 9;
  const spill = {
    x: Math.max(legX + 6, jug.glass.x + Math.min(12, 0.3 * jug.glass.width)),
    y: Math.min(surfaceY + 6, jug.glass.y - 2),
  };
  const low = foot - Math.max(4, 0.06 * separator.height_m * s);
  const half = Math.min(separator.funnel_m * s, 0.9 * bore) / 2;
  const neckY = glass.y + Math.max(1, 0.02 * tall);
  const topY = Math.min(yAt(frame, heights.funnelTop), neckY - 6);
  const funnelHalf = Math.max(5, half);
  return {
    glass,
    centreX,
    surfaceY,
    spout: [
      { x: glass.x - GLASS_WALL + 1, y: spoutY },
      { x: glass.x - GLASS_WALL - 8, y: spoutY + 4 },
    ],
    funnel: {
      topY,
      half: funnelHalf,
      neckY,
      stemHalf: Math.max(1.5, Math.min(3, 0.1 * bore)),
      endY: Math.min(foot - 3, surfaceY + separator.inletDepth_m * s),
    },
    waterLeg: roundCorners(
      [{ x: wall - 2, y: low }, { x: legX, y: low }, { x: legX, y: surfaceY }, { x: spill.x, y: surfaceY }, spill],
      6,
    ),
    overTop: roundCorners([{ x: wall - 2, y: surfaceY }, { x: spill.x, y: surfaceY }, spill], 6),
    bottomTap: [
      { x: wall - 2, y: low },
      { x: wall + 10, y: low },
    ],
    legWidth,
    spill,
    box: {
      x: glass.x - GLASS_WALL - 9,
      y: topY,
      width: Math.max(spill.x, legX) + 3 - (glass.x - GLASS_WALL - 9),
      height: foot + GLASS_WALL - topY,
    },
    pxPerMetre: s,
  };
}

const mirrorPoint = ({ x, y }: Point, about: number): Point => ({ x: 2 * about - x, y });
const mirrorBox = (box: Box, about: number): Box => ({ ...box, x: 2 * about - right(box) });

/** The same with its legs on the left, where the jug stands. */
export function tuckedSeparator(
  sizes: TrueSizes,
  heights: Heights,
  frame: Frame,
  centreX: number,
  jug: JugShape,
): SeparatorShape {
  const shape = separatorShape(sizes, heights, frame, centreX, { ...jug, glass: mirrorBox(jug.glass, centreX) });
  const turned = (points: readonly Point[]) => points.map((point) => mirrorPoint(point, centreX));
  return {
    ...shape,
    spout: turned(shape.spout),
    waterLeg: turned(shape.waterLeg),
    overTop: turned(shape.overTop),
    bottomTap: turned(shape.bottomTap),
    spill: mirrorPoint(shape.spill, centreX),
    box: mirrorBox(shape.box, centreX),
  };
}

export interface JugShape {
  readonly glass: Box;
  /** Pixels of height that a kilogram of water fills. */
  readonly pxPerKg: number;
}

export function jugShape(sizes: TrueSizes, frame: Frame, centreX: number): JugShape {
  const s = frame.pxPerMetre;
  const { jug } = sizes;
  const tall = Math.max(10, jug.height_m * s);
  const glass = boxAround(centreX, frame.floorY - GLASS_WALL - tall, Math.max(8, jug.diameter_m * s), tall);
  return { glass, pxPerKg: tall / (jug.capacity_m3 * 1000) };
}

export const jugBox = (jug: JugShape): Box => ({
  x: jug.glass.x - GLASS_WALL,
  y: jug.glass.y,
  width: jug.glass.width + 2 * GLASS_WALL,
  height: bottom(jug.glass) + GLASS_WALL - jug.glass.y,
});
