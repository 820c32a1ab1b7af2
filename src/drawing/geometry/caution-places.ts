/**
 * A place of its own for every caution, kept whether there is something to say or not: in free paper by its hazard, off
 * every shape and all other words, or else in the rows under the floor. Where there is little room it is kept for a few
 * words, and the whole sentence is one press away.
 */
import {
  rowsUnder,
  type Align,
  type HazardId,
  type LabelId,
  type Place,
  type UnderFloor,
  type Wish,
} from './labels.ts';
import { bottom, boxesAlong, boxesOverlap, grown, right, subdivide, type Box, type Point } from './shapes.ts';
import type { StillShapes } from './still-shapes.ts';

export interface Hazard {
  readonly id: HazardId;
  /** Where the sign stands. */
  readonly at: Point;
}

/** Room for words: letters in a line, and lines. */
export interface CautionForm {
  readonly letters: number;
  readonly lines: number;
  readonly isBrief: boolean;
}

export interface CautionPlace {
  readonly id: HazardId;
  readonly box: Box;
  readonly form: CautionForm;
  /** The sign at the hazard. */
  readonly at: Point;
  readonly align: Align;
  /** Where the lines stand in their room: at the end that is nearer to the hazard. */
  readonly stands: 'top' | 'middle' | 'bottom';
  /** To the sign; without one the words carry a sign of their own. */
  readonly leader: { readonly from: Point; readonly to: Point } | null;
}

export const SIGN_HALF = 7;
/** Words of an alarm are as large as the name of their part, px. */
export const CAUTION_LINE_HEIGHT = 19;
/** Mean width of a letter of an alarm, px. */
const LETTER = 6.8;
/** What a brief caution takes: its sign, at most 14 letters of an alarm or 16 of smaller type, and room for a finger. */
const BRIEF_WIDTH = 121;
const BRIEF_HEIGHT = 24;
/** A sign before words, and the air after it. */
export const SIGN_WIDTH = 17;

export const CAUTION_FORMS: readonly CautionForm[] = [
  { letters: 44, lines: 2, isBrief: false },
  { letters: 29, lines: 3, isBrief: false },
  { letters: 24, lines: 4, isBrief: false },
];
export const BRIEF: CautionForm = { letters: 16, lines: 1, isBrief: true };

const sizeOf = ({ letters, lines, isBrief }: CautionForm, textScale: number) =>
  isBrief
    ? { width: BRIEF_WIDTH * textScale, height: BRIEF_HEIGHT * textScale }
    : { width: letters * LETTER * textScale, height: (lines * CAUTION_LINE_HEIGHT + 2) * textScale };

export function hazardsOf({ pot, boiler, heat, cooling, separator }: StillShapes): readonly Hazard[] {
  const hot = boiler ?? pot;
  const tub = cooling.tub;
  return [
    { id: 'outlet', at: { x: separator.centreX + 14, y: separator.funnel.topY - 8 } },
    { id: 'lid', at: { x: pot.centreX - 0.3 * pot.inner.width, y: pot.lidTop + 0.3 * (pot.inner.y - pot.lidTop) } },
    {
      id: 'flame',
      at: { x: Math.max(SIGN_HALF + 2, Math.min(hot.outer.x, heat.body.x) - SIGN_HALF - 4), y: bottom(hot.outer) },
    },
    ...(tub ? [{ id: 'tub' as const, at: { x: right(tub.water) - 10, y: tub.rimY + 4 } }] : []),
  ];
}

/** Where vapour that escapes curls up from the outlet. */
export function plumeBox({ condenser }: StillShapes): Box {
  const tip = condenser.tail[condenser.tail.length - 1] as Point;
  return { x: tip.x - 22, y: tip.y - 52, width: 56, height: 56 };
}

const signBox = ({ x, y }: Point): Box => grown({ x, y, width: 0, height: 0 }, SIGN_HALF + 3);

const STEP = 8;
const AIR = 5;
/** Farther from the hazard than this, words no longer belong to it, px. */
const REACH = 130;
/** A pixel of leader across a part counts as so many over paper. */
const ACROSS_PARTS = 2.5;
const PIECE = 10;

type Stance = Pick<CautionPlace, 'align' | 'stands'> & { readonly leader: NonNullable<CautionPlace['leader']> };

/** How words in a box stand to their sign: the leader leaves them at the end that is nearer to it. */
function stanceOf(box: Box, at: Point): Stance {
  const isRight = box.x + box.width / 2 > at.x;
  const align = isRight ? 'start' : 'end';
  const above = bottom(box) < at.y - SIGN_HALF;
  if (above || box.y > at.y + SIGN_HALF) {
    const near = isRight ? [box.x + 4, box.x + 24] : [right(box) - 24, right(box) - 4];
    const x = Math.min(near[1] as number, Math.max(near[0] as number, at.x));
    return {
      align,
      stands: above ? 'bottom' : 'top',
      leader: {
        from: { x, y: above ? bottom(box) + 1 : box.y - 1 },
        to: { x: at.x, y: above ? at.y - SIGN_HALF : at.y + 5 },
      },
    };
  }
  return {
    align,
    stands: 'middle',
    leader: {
      from: { x: isRight ? box.x - 4 : right(box) + 4, y: box.y + box.height / 2 },
      to: { x: at.x + (isRight ? SIGN_HALF : -SIGN_HALF), y: at.y },
    },
  };
}

export interface Room {
  /** What words must keep off. */
  readonly taken: readonly Box[];
  /** Of these, other words: no leader may cross them. */
  readonly words: readonly Box[];
  readonly bounds: Box;
  readonly textScale: number;
}

const apart = (low: number, high: number, at: number): number => Math.max(low - at, 0, at - high);

/** Of boxes in one row, one that a box of this width would touch, with some air round it. */
const inTheWay = (row: readonly Box[], x: number, width: number): Box | undefined =>
  row.find((other) => x - AIR < other.x + other.width && other.x < x + width + AIR);

/** The nearest free room for a caution by its hazard, if there is any in reach. */
function nearest({ id, at }: Hazard, forms: readonly CautionForm[], room: Room): CautionPlace | null {
  const { bounds, textScale } = room;
  let least = REACH * textScale;
  let best: CautionPlace | null = null;
  for (const form of forms) {
    const { width, height } = sizeOf(form, textScale);
    const lowX = Math.max(bounds.x, at.x - least - width);
    const lowY = Math.max(bounds.y, at.y - least - height);
    const highX = Math.min(right(bounds) - width, at.x + least);
    const highY = Math.min(bottom(bounds) - height, at.y + least);
    const about = grown({ x: lowX, y: lowY, width: highX - lowX + width, height: highY - lowY + height }, AIR);
    const near = room.taken.filter((box) => boxesOverlap(box, about));
    const look = (x: number, y: number): void => {
      const box = { x, y, width, height };
      const stance = stanceOf(box, at);
      const { from, to } = stance.leader;
      const length = Math.hypot(from.x - to.x, from.y - to.y);
      if (length >= least) return;
      const pieces = leaderBoxes(stance.leader);
      if (pieces.some((piece) => room.words.some((other) => boxesOverlap(piece, other)))) return;
      const across = pieces.filter((piece) => near.some((other) => boxesOverlap(piece, other))).length;
      const cost = length * (1 + (ACROSS_PARTS - 1) * (across / Math.max(1, pieces.length)));
      if (cost >= least) return;
      least = cost;
      best = { id, at, box, form, ...stance };
    };
    // A coarse look first: what it finds spares most of the fine one.
    for (const step of [4 * STEP, STEP])
      for (let y = lowY; y <= highY; y += step) {
        const dy = apart(y, y + height, at.y);
        if (dy - SIGN_HALF >= least) continue;
        const row = near.filter((box) => y - AIR < bottom(box) && box.y < y + height + AIR);
        for (let index = 0, x = lowX; x <= highX; x = lowX + index * step) {
          const reach = least + SIGN_HALF;
          const dx = apart(x, x + width, at.x);
          const other = dx * dx + dy * dy < reach * reach ? inTheWay(row, x, width) : undefined;
          // What stands in the way is stepped over at once: thousands of places are looked at in a layout.
          index += other ? Math.max(1, Math.ceil((right(other) + AIR - x) / step)) : 1;
          if (!other && dx * dx + dy * dy < reach * reach) look(x, y);
        }
      }
  }
  return best;
}

/** A leader as boxes that other words keep off. */
export const leaderBoxes = ({ from, to }: { readonly from: Point; readonly to: Point }): Box[] =>
  boxesAlong(subdivide([from, to], PIECE), 3);

const underFloor = ({ id, at }: Hazard, form: CautionForm, textScale: number): UnderFloor<HazardId> => {
  const { width, height } = sizeOf(form, textScale);
  return { id, width: form.isBrief ? width : width + SIGN_WIDTH, height, under: at.x };
};

const inRow = ({ id, at }: Hazard, box: Box, form: CautionForm): CautionPlace => ({
  id,
  at,
  box,
  form,
  align: 'start',
  stands: form.isBrief ? 'middle' : 'top',
  leader: null,
});

interface ByHazard {
  readonly places: readonly CautionPlace[];
  readonly left: readonly Hazard[];
}

function placeByHazard(hazards: readonly Hazard[], forms: readonly CautionForm[], room: Room): ByHazard {
  const places: CautionPlace[] = [];
  const left: Hazard[] = [];
  const taken = [...room.taken];
  const words = [...room.words];
  for (const hazard of hazards) {
    const found = nearest(hazard, forms, { ...room, taken, words });
    if (!found) {
      left.push(hazard);
      continue;
    }
    places.push(found);
    words.push(found.box);
    taken.push(found.box);
    if (found.leader) taken.push(...leaderBoxes(found.leader));
  }
  return { places, left };
}

export interface Cautions {
  readonly cautions: readonly CautionPlace[];
  readonly captions: readonly Place<LabelId>[];
  /** From the top of the rows under the floor to their lower edge. */
  readonly height: number;
}

/** Room under the floor. */
export interface UnderRoom {
  /** Beside the scale bar, and across the whole sheet under it. */
  readonly beside: Box;
  readonly across: Box;
}

const GAP = 10;
const ROW_GAP = 6;

const captionPlaces = (captions: readonly Wish<LabelId>[], boxes: ReadonlyMap<string, Box>): Place<LabelId>[] =>
  captions.flatMap(({ id }) => {
    const box = boxes.get(id);
    return box ? [{ id, box, align: 'start' as const, leader: null, caption: true }] : [];
  });

const rowPlaces = (hazards: readonly Hazard[], form: CautionForm, boxes: ReadonlyMap<string, Box>): CautionPlace[] =>
  hazards.flatMap((hazard) => {
    const box = boxes.get(hazard.id);
    return box ? [inRow(hazard, box, form)] : [];
  });

/** Few words each, in columns from edge to edge. */
function inColumns(hazards: readonly Hazard[], { across }: UnderRoom, textScale: number): Cautions {
  const { width, height } = sizeOf(BRIEF, textScale);
  const columns = Math.max(1, Math.floor((across.width + ROW_GAP) / (width + ROW_GAP)));
  const pitch = across.width / columns;
  const ordered = [...hazards].sort((a, b) => a.at.x - b.at.x);
  return {
    cautions: ordered.map((hazard, index) =>
      inRow(
        hazard,
        {
          x: across.x + (index % columns) * pitch,
          y: across.y + Math.floor(index / columns) * height,
          width: Math.min(width, across.width),
          height,
        },
        BRIEF,
      ),
    ),
    captions: [],
    height: Math.ceil(ordered.length / columns) * height + across.y,
  };
}

/** @param captions words of parts that found no room either: they share the rows under the floor */
function inRows(
  hazards: readonly Hazard[],
  captions: readonly Wish<LabelId>[],
  under: UnderRoom,
  textScale: number,
  forms: readonly CautionForm[],
): Cautions | null {
  const named = captions.map(({ id, width, height, anchor }) => ({
    id,
    width,
    height,
    under: anchor.x + anchor.width / 2,
  }));
  for (const form of forms) {
    const wishes = hazards.map((hazard) => underFloor(hazard, form, textScale));
    const all = rowsUnder<LabelId | HazardId>([...named, ...wishes], under.beside, GAP);
    if (all.count <= 1 || hazards.length === 0)
      return {
        cautions: rowPlaces(hazards, form, all.boxes),
        captions: captionPlaces(captions, all.boxes),
        height: all.count > 0 ? under.beside.y + all.height : 0,
      };
  }
  const form = forms.at(-1);
  if (!form?.isBrief) return null;
  const first = rowsUnder(named, under.beside, GAP);
  const y = Math.max(under.across.y, under.beside.y + first.height + ROW_GAP);
  const second = rowsUnder(
    hazards.map((hazard) => underFloor(hazard, form, textScale)),
    { ...under.across, y },
    GAP,
  );
  return {
    cautions: rowPlaces(hazards, form, second.boxes),
    captions: captionPlaces(captions, first.boxes),
    height: y + second.height,
  };
}

/** @param isNarrow there is no free paper by the hazards: few words each, all under the floor */
export function placeCautions(
  hazards: readonly Hazard[],
  captions: readonly Wish<LabelId>[],
  room: Room,
  under: UnderRoom,
  isNarrow: boolean,
): Cautions {
  const { textScale } = room;
  if (isNarrow) return inColumns(hazards, under, textScale);
  const free = { ...room, taken: [...room.taken, ...hazards.map(({ at }) => signBox(at))] };
  const full = placeByHazard(hazards, CAUTION_FORMS, free);
  const whole = inRows(full.left, captions, under, textScale, CAUTION_FORMS);
  if (whole) return { ...whole, cautions: [...full.places, ...whole.cautions] };
  const words = full.places.map(({ box }) => box);
  const leaders = full.places.flatMap(({ leader }) => (leader ? leaderBoxes(leader) : []));
  const brief = placeByHazard(full.left, [BRIEF], {
    ...free,
    taken: [...free.taken, ...words, ...leaders],
    words: [...free.words, ...words],
  });
  const rest =
    inRows(brief.left, captions, under, textScale, CAUTION_FORMS) ??
    inRows(brief.left, captions, under, textScale, [BRIEF]);
  return { captions: [], height: 0, ...rest, cautions: [...full.places, ...brief.places, ...(rest?.cautions ?? [])] };
}
