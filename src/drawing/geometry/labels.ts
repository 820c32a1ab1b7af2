/**
 * Placing words beside what they name, off every shape and off each other. Each label tries its columns in order of
 * liking and slides along them; what finds no room becomes a caption under the floor line.
 */
import { boxesOverlap, contains, grown, type Box, type Point } from './shapes.ts';

export type LabelId = 'heat' | 'boiler' | 'pot' | 'charge' | 'neck' | 'condenser' | 'cooling' | 'separator' | 'receiver';
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
}

export interface Wish<Id extends string> {
  readonly id: Id;
  readonly width: number;
  readonly height: number;
  /** Where a leader would point. */
  readonly anchor: Point;
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

function leaderFor(wish: Wish<string>, box: Box, align: Align): Place<string>['leader'] {
  const y = clamp(wish.anchor.y, box.y + 8, box.y + box.height - 8);
  const from = align === 'end' ? { x: box.x + box.width + 4, y } : align === 'start' ? { x: box.x - 4, y } : { x: clamp(wish.anchor.x, box.x, box.x + box.width), y: wish.anchor.y < box.y ? box.y - 2 : box.y + box.height + 2 };
  return Math.hypot(from.x - wish.anchor.x, from.y - wish.anchor.y) < LEADER_FROM ? null : { from, to: wish.anchor };
}

/** Liking: the first columns, and in them the least shift. */
const COLUMN_COST = 26;

export interface Placed<Id extends string> {
  readonly places: readonly Place<Id>[];
  readonly left: readonly Wish<Id>[];
}

export function placeLabels<Id extends string>(wishes: readonly Wish<Id>[], obstacles: readonly Box[], bounds: Box): Placed<Id> {
  const places: Place<Id>[] = [];
  const left: Wish<Id>[] = [];
  const taken: Box[] = [...obstacles];
  for (const wish of wishes) {
    let best: { box: Box; align: Align; cost: number } | null = null;
    wish.candidates.forEach((candidate, rank) => {
      for (let shift = 0; shift <= candidate.slide; shift += STEP) {
        const cost = rank * COLUMN_COST + shift;
        if (best && cost >= best.cost) break;
        for (const signed of shift === 0 ? [0] : [shift, -shift]) {
          const box = boxFor(wish, candidate, signed);
          if (!contains(bounds, box) || taken.some((other) => boxesOverlap(grown(box, AIR), other))) continue;
          best = { box, align: candidate.align, cost };
          break;
        }
      }
    });
    const found = best as { box: Box; align: Align; cost: number } | null;
    if (!found) {
      left.push(wish);
      continue;
    }
    taken.push(found.box);
    places.push({ id: wish.id, box: found.box, align: found.align, leader: leaderFor(wish, found.box, found.align), caption: false });
  }
  return { places, left };
}

export interface Captions<Id extends string> {
  readonly places: readonly Place<Id>[];
  readonly height: number;
}

/** Lines captions up in rows from the left, in the order of their parts. */
export function captionRows<Id extends string>(wishes: readonly Wish<Id>[], bounds: Box): Captions<Id> {
  const ordered = [...wishes].sort((a, b) => a.anchor.x - b.anchor.x);
  const places: Place<Id>[] = [];
  const gap = 16;
  let x = bounds.x;
  let y = bounds.y;
  let row = 0;
  for (const wish of ordered) {
    if (x > bounds.x && x + wish.width > bounds.x + bounds.width) {
      x = bounds.x;
      y += row + 6;
      row = 0;
    }
    const width = Math.min(wish.width, bounds.width);
    places.push({ id: wish.id, box: { x, y, width, height: wish.height }, align: 'start', leader: null, caption: true });
    x += width + gap;
    row = Math.max(row, wish.height);
  }
  return { places, height: ordered.length === 0 ? 0 : y + row - bounds.y };
}
