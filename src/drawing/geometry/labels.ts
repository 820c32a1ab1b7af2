/**
 * Placing words beside what they name, off every shape and off each other. Each label tries its columns in order of
 * liking and slides along them; what finds no room becomes a caption under the floor line.
 */
import { bottom, boxesOverlap, contains, grown, right, type Box, type Point } from './shapes.ts';

export type LabelId =
  'heat' | 'boiler' | 'pot' | 'charge' | 'neck' | 'condenser' | 'cooling' | 'separator' | 'receiver';
export type HazardId = 'lid' | 'flame' | 'tub' | 'outlet';

export type Align = 'start' | 'middle' | 'end';

/** A column (or, sliding sideways, a row) in which a label may stand: the aligned edge and the middle of its height. */
export interface Candidate {
  readonly x: number;
  readonly y: number;
  readonly align: Align;
  /** How far it may slide, px, and which way. */
  readonly slide: number;
  readonly sideways?: boolean;
  /** Slides this way only. */
  readonly towards?: -1 | 1;
  /** What a leader from here would point at, where that is not the part as a whole. */
  readonly anchor?: Box;
}

export interface Wish<Id extends string> {
  readonly id: Id;
  readonly width: number;
  readonly height: number;
  /** The part itself: a leader ends just inside it, on the side of the words. */
  readonly anchor: Box;
  readonly candidates: readonly Candidate[];
}

export interface Place<Id extends string> {
  readonly id: Id;
  readonly box: Box;
  readonly align: Align;
  readonly leader: { readonly from: Point; readonly to: Point } | null;
  readonly caption: boolean;
}

const STEP = 4;
const AIR = 5;
/** A leader is drawn when words and part are this far apart. */
const LEADER_FROM = 8;

const boxFor = (wish: Wish<string>, candidate: Candidate, shift: number): Box => {
  const x = candidate.x + (candidate.sideways ? shift : 0);
  const y = candidate.y + (candidate.sideways ? 0 : shift);
  const left = candidate.align === 'start' ? x : candidate.align === 'end' ? x - wish.width : x - wish.width / 2;
  return { x: left, y: y - wish.height / 2, width: wish.width, height: wish.height };
};

const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

const INTO = 5;

/** From the words to the nearest side of the part, level where the two stand at one height. */
function leaderFor(anchor: Box, box: Box, align: Align): Place<string>['leader'] {
  const inX = Math.min(INTO, anchor.width / 2);
  const inY = Math.min(INTO, anchor.height / 2);
  if (align === 'middle') {
    const above = box.y + box.height / 2 < anchor.y + anchor.height / 2;
    const x = clamp(box.x + box.width / 2, anchor.x + inX, right(anchor) - inX);
    const from = { x: clamp(x, box.x + 4, right(box) - 4), y: above ? bottom(box) + 2 : box.y - 2 };
    const to = { x, y: above ? anchor.y + inY : bottom(anchor) - inY };
    return Math.abs(from.y - to.y) < LEADER_FROM ? null : { from, to };
  }
  const y = clamp(box.y + box.height / 2, anchor.y + inY, bottom(anchor) - inY);
  const from = { x: align === 'end' ? right(box) + 4 : box.x - 4, y: clamp(y, box.y + 8, bottom(box) - 8) };
  const to = { x: align === 'end' ? anchor.x + inX : right(anchor) - inX, y };
  return Math.hypot(from.x - to.x, from.y - to.y) < LEADER_FROM ? null : { from, to };
}

/** Liking: the first columns, and in them the least shift. */
const COLUMN_COST = 56;

interface Found {
  readonly box: Box;
  readonly align: Align;
  readonly anchor: Box;
  readonly cost: number;
}

export interface Placed<Id extends string> {
  readonly places: readonly Place<Id>[];
  readonly left: readonly Wish<Id>[];
}

/** @param longestLeader words farther from what they name than this are left out, px */
export function placeLabels<Id extends string>(
  wishes: readonly Wish<Id>[],
  obstacles: readonly Box[],
  bounds: Box,
  longestLeader = Infinity,
): Placed<Id> {
  const places: Place<Id>[] = [];
  const left: Wish<Id>[] = [];
  const taken: Box[] = [...obstacles];
  for (const wish of wishes) {
    let best: Found | null = null;
    wish.candidates.forEach((candidate, rank) => {
      for (let shift = 0; shift <= candidate.slide; shift += STEP) {
        const cost = rank * COLUMN_COST + shift;
        if (best && cost >= best.cost) break;
        for (const signed of shift === 0 ? [0] : candidate.towards ? [candidate.towards * shift] : [shift, -shift]) {
          const box = boxFor(wish, candidate, signed);
          const withAir = grown(box, AIR);
          if (!contains(bounds, box) || taken.some((other) => boxesOverlap(withAir, other))) continue;
          best = { box, align: candidate.align, anchor: candidate.anchor ?? wish.anchor, cost };
          break;
        }
      }
    });
    const found = best as Found | null;
    const leader = found && leaderFor(found.anchor, found.box, found.align);
    if (!found || (leader && Math.hypot(leader.from.x - leader.to.x, leader.from.y - leader.to.y) > longestLeader)) {
      left.push(wish);
      continue;
    }
    taken.push(found.box);
    places.push({ id: wish.id, box: found.box, align: found.align, leader, caption: false });
  }
  return { places, left };
}

/** Words under the floor line, as near below what they name as the others leave room. */
export interface UnderFloor<Id extends string> {
  readonly id: Id;
  readonly width: number;
  readonly height: number;
  /** Above the middle of the words, where there is room. */
  readonly under: number;
}

export interface Rows<Id extends string> {
  readonly boxes: ReadonlyMap<Id, Box>;
  readonly count: number;
  readonly height: number;
}

const ROW_LEADING = 6;

/** Sets words in rows from the left to the right of what they name, no row wider than its bounds. */
export function rowsUnder<Id extends string>(wishes: readonly UnderFloor<Id>[], bounds: Box, gap: number): Rows<Id> {
  const rows: { readonly items: UnderFloor<Id>[]; width: number }[] = [];
  for (const wish of [...wishes].sort((a, b) => a.under - b.under)) {
    const row = rows.at(-1);
    if (row && row.width + gap + wish.width <= bounds.width) {
      row.items.push(wish);
      row.width += gap + wish.width;
    } else rows.push({ items: [wish], width: wish.width });
  }
  const boxes = new Map<Id, Box>();
  let y = bounds.y;
  for (const { items } of rows) {
    const xs: number[] = [];
    items.forEach(({ under, width }, index) => {
      const before = items[index - 1];
      xs.push(Math.max(under - width / 2, before ? (xs[index - 1] as number) + before.width + gap : bounds.x));
    });
    let end = right(bounds);
    items.toReversed().forEach(({ id, width, height }, fromEnd) => {
      const wide = Math.min(width, bounds.width);
      const x = Math.max(bounds.x, Math.min(xs[items.length - 1 - fromEnd] as number, end - wide));
      boxes.set(id, { x, y, width: wide, height });
      end = x - gap;
    });
    y += Math.max(...items.map(({ height }) => height)) + ROW_LEADING;
  }
  return { boxes, count: rows.length, height: Math.max(0, y - ROW_LEADING - bounds.y) };
}
