/** Where the name of the reader's own still stands beside its point, clear of the picture's other words. */
import type { MapFrame, MapShapes } from './map-shapes.ts';

export interface OwnLabel {
  readonly x: number;
  readonly y: number;
  readonly 'text-anchor': 'start' | 'middle' | 'end';
}

/** From the point to its name, and the room that a name takes beside others. */
const BESIDE = 14;
const ABOVE = 20;
const ROOM = { width: 110, height: 18 } as const;
/** Half a name, about. */
const HALF_NAME = 34;
const DROP = 4;

type At = { readonly x: number; readonly y: number };

/** The first place, of right, left, above and below, that is free and within the picture. */
export function ownLabel(
  own: At,
  frame: Pick<MapFrame, 'left' | 'right' | 'width' | 'textScale'>,
  shapes: MapShapes | null,
): OwnLabel {
  const scale = frame.textScale;
  const said = shapes
    ? [
        shapes.warmLabel,
        shapes.escapesLabel,
        shapes.holdsLabel,
        shapes.tooTallLabel,
        shapes.doubtLabel,
        ...shapes.isotherms.map(({ label }) => label),
      ].filter((at) => at !== null)
    : [];
  const right: OwnLabel = { x: own.x + BESIDE, y: own.y + DROP, 'text-anchor': 'start' };
  const places: readonly (OwnLabel & { readonly middle: number })[] = [
    { ...right, middle: own.x + BESIDE + HALF_NAME * scale },
    { x: own.x - BESIDE, y: own.y + DROP, 'text-anchor': 'end', middle: own.x - BESIDE - HALF_NAME * scale },
    { x: own.x, y: own.y - ABOVE + DROP, 'text-anchor': 'middle', middle: own.x },
    { x: own.x, y: own.y + ABOVE + DROP, 'text-anchor': 'middle', middle: own.x },
  ];
  const free = places.find(({ middle, y }) => {
    const inside = middle - HALF_NAME * scale >= frame.left && middle + HALF_NAME * scale <= frame.width - frame.right;
    return (
      inside &&
      said.every(
        (other) =>
          Math.abs(other.x - middle) > ROOM.width * scale || Math.abs(other.y - (y - DROP)) > ROOM.height * scale,
      )
    );
  });
  if (!free) return right;
  return { x: free.x, y: free.y, 'text-anchor': free['text-anchor'] };
}

/** Half the name of a region, and its height beside a point. */
const HALF_REGION = 84;
const REGION_HEIGHT = 18;

/** The name of a region, moved aside where the reader's own point would stand on it. */
function clearOf(
  at: At | null,
  own: At,
  { left, right, width, textScale }: Pick<MapFrame, 'left' | 'right' | 'width' | 'textScale'>,
): At | null {
  const half = HALF_REGION * textScale;
  if (at === null || Math.abs(at.x - own.x) > half || Math.abs(at.y - own.y) > REGION_HEIGHT * textScale) return at;
  const toRight = own.x + 1.4 * half;
  return { x: toRight + half < width - right ? toRight : Math.max(left + half, own.x - 1.4 * half), y: at.y };
}

/** The shapes with every region's name clear of the reader's own point. */
export function withClearNames<
  T extends Pick<MapShapes, 'warmLabel' | 'escapesLabel' | 'holdsLabel' | 'tooTallLabel'> | null,
>(shapes: T, own: At, frame: Pick<MapFrame, 'left' | 'right' | 'width' | 'textScale'>): T {
  if (shapes === null) return shapes;
  const clear = (at: At | null) => clearOf(at, own, frame);
  return {
    ...shapes,
    warmLabel: clear(shapes.warmLabel),
    escapesLabel: clear(shapes.escapesLabel),
    holdsLabel: clear(shapes.holdsLabel),
    tooTallLabel: clear(shapes.tooTallLabel),
  };
}
