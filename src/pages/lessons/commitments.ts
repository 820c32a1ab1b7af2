/** What the groups of a class commit themselves to, lesson by lesson, for as long as the page stands open. */
import { createSignal, type Accessor } from 'solid-js';
import type { Question } from '../../../sim/index.ts';

export interface Group {
  readonly id: number;
  readonly name: string;
}

export type Commitment =
  | { readonly kind: 'choice'; readonly option: string }
  | { readonly kind: 'number'; readonly value: number }
  /** A value, or none, at each of `CURVE_PLACES` places along the axis. */
  | { readonly kind: 'curve'; readonly values: readonly (number | null)[] };

export const MOST_GROUPS = 4;
/** Places along the time axis at which a curve is drawn. */
export const CURVE_PLACES = 25;

export const placeTimes = (until_s: number): readonly number[] =>
  Array.from({ length: CURVE_PLACES }, (_, place) => (place * until_s) / (CURVE_PLACES - 1));

const [groups, setGroups] = createSignal<readonly Group[]>([{ id: 0, name: 'The class' }]);
const [active, setActive] = createSignal(0);
const [made, setMade] = createSignal<Readonly<Record<string, Commitment>>>({});
const [hands, setHands] = createSignal<Readonly<Record<string, number>>>({});
const [revealed, setRevealed] = createSignal<ReadonlySet<string>>(new Set());

const keyOf = (lesson: string, question: string, group: number): string => `${lesson} ${question} ${group}`;

export interface ClassRoom {
  readonly groups: Accessor<readonly Group[]>;
  readonly active: Accessor<number>;
  setActive(id: number): void;
  addGroup(): void;
  removeGroup(id: number): void;
  rename(id: number, name: string): void;
  commitment(lesson: string, question: string, group: number): Commitment | null;
  commit(lesson: string, question: string, commitment: Commitment | null): void;
  /** Hands counted for an option. */
  hands(lesson: string, question: string, option: string): number;
  countHands(lesson: string, question: string, option: string, count: number): void;
  readonly revealed: Accessor<ReadonlySet<string>>;
  reveal(lesson: string): void;
  /** Forgets what was committed to in a lesson, and hides its answer. */
  startAgain(lesson: string): void;
}

const without = <T>(record: Readonly<Record<string, T>>, prefix: string): Readonly<Record<string, T>> =>
  Object.fromEntries(Object.entries(record).filter(([key]) => !key.startsWith(prefix)));

/** The one class of this page. */
export const classRoom: ClassRoom = {
  groups,
  active,
  setActive,
  addGroup: () => {
    if (groups().length >= MOST_GROUPS) return;
    const id = [0, 1, 2, 3].find((free) => groups().every((group) => group.id !== free)) ?? 0;
    setGroups((before) => [...before, { id, name: `Group ${String.fromCharCode(65 + id)}` }]);
    setActive(id);
  },
  removeGroup: (id) => {
    if (groups().length < 2) return;
    setGroups((before) => before.filter((group) => group.id !== id));
    setMade((before) => Object.fromEntries(Object.entries(before).filter(([key]) => !key.endsWith(` ${id}`))));
    if (active() === id) setActive(groups()[0]?.id ?? 0);
  },
  rename: (id, name) => setGroups((before) => before.map((group) => (group.id === id ? { id, name } : group))),
  commitment: (lesson, question, group) => made()[keyOf(lesson, question, group)] ?? null,
  commit: (lesson, question, commitment) => {
    if (revealed().has(lesson)) return;
    const key = keyOf(lesson, question, active());
    setMade((before) => (commitment === null ? without(before, key) : { ...before, [key]: commitment }));
  },
  hands: (lesson, question, option) => hands()[`${lesson} ${question} ${option}`] ?? 0,
  countHands: (lesson, question, option, count) =>
    setHands((before) => ({ ...before, [`${lesson} ${question} ${option}`]: count })),
  revealed,
  reveal: (lesson) => setRevealed((before) => new Set([...before, lesson])),
  startAgain: (lesson) => {
    setMade((before) => without(before, `${lesson} `));
    setHands((before) => without(before, `${lesson} `));
    setRevealed((before) => new Set([...before].filter((id) => id !== lesson)));
  },
};

/** Draws on from one place to the next, evenly over those between. */
export function drawnOn(
  values: readonly (number | null)[],
  from: { readonly place: number; readonly value: number } | null,
  to: { readonly place: number; readonly value: number },
): readonly (number | null)[] {
  const next = [...values];
  const start = from ?? to;
  const steps = Math.abs(to.place - start.place);
  for (let step = 0; step <= steps; step++) {
    const share = steps === 0 ? 1 : step / steps;
    next[start.place + Math.sign(to.place - start.place) * step] = start.value + share * (to.value - start.value);
  }
  return next;
}

export const noCurve = (): readonly (number | null)[] => Array.from({ length: CURVE_PLACES }, () => null);

/** Whether anybody has committed himself, by a group or by a show of hands. */
export const anyoneCommitted = (lesson: string, question: Question): boolean =>
  groups().some(({ id }) => classRoom.commitment(lesson, question.id, id) !== null) ||
  (question.kind === 'choice' && question.options.some((option) => classRoom.hands(lesson, question.id, option) > 0));
