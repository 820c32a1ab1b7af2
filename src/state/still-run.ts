/** A run at the real still as it is kept: when it began, what was logged, and how two tabs' copies become one. */
import * as z from 'zod/mini';
import {
  stopRule,
  STOP_RULE_KINDS,
  type RunSoFar,
  type Seen,
  type SeenKind,
  type SheetState,
  type StopRule,
  type Turn,
} from '../../sim/index.ts';
import type { Shape } from './kept-shape.ts';

export const ENTRY_KINDS = [
  'first-drop',
  'oil',
  'distillate',
  'outlet',
  'tub',
  'lid',
  'drops',
  'pot-water',
  'heat',
  'tap',
  'heat-off',
  'opened',
  'note',
  'photo',
  'done',
  'silenced',
] as const;
export type EntryKind = (typeof ENTRY_KINDS)[number];

export interface StillEntry {
  readonly id: string;
  readonly kind: EntryKind;
  /** When it was seen or done, and when the entry was last changed, ms since 1970. */
  readonly at_ms: number;
  readonly changed_ms: number;
  /** SI but for oil, which is in mL, and drops a minute. */
  readonly value: number | null;
  /** A note; of `done` and `silenced` the step of the sheet, of a photo its id. */
  readonly text: string;
  /** Of heat and tap, the change of the plan that was carried out. */
  readonly place: number | null;
  /** Taken back; kept, so that another tab's copy does not bring it back. */
  readonly gone: boolean;
}

export interface StillRun {
  readonly id: string;
  /** When the heat went on, ms since 1970. */
  readonly started_ms: number;
  readonly changed_ms: number;
  /** Set when the run is over and stands in the run book. */
  readonly ended_ms: number | null;
  readonly name: string;
  /** The plan, as JSON. */
  readonly scenario: unknown;
  readonly rule: StopRule;
  /** What the receiver holds; `null` where nobody said. */
  readonly receiver_kg: number | null;
  readonly entries: readonly StillEntry[];
}

const text = z.catch(z.string(), '');
const number = z.catch(z.nullable(z.number()), null);

const entry = z.object({
  id: z.string(),
  kind: z.enum(ENTRY_KINDS),
  at_ms: z.number(),
  changed_ms: z.number(),
  value: number,
  text,
  place: number,
  gone: z.catch(z.boolean(), false),
});

const rule = z.pipe(
  z.catch(z.object({ kind: z.enum(STOP_RULE_KINDS), number }), { kind: 'share', number: null }),
  z.transform((read): StopRule => (read.number === null ? stopRule(read.kind) : stopRule(read.kind, read.number))),
);

const run = z.object({
  id: z.string(),
  started_ms: z.number(),
  changed_ms: z.number(),
  ended_ms: number,
  name: text,
  scenario: z.record(z.string(), z.unknown()),
  rule,
  receiver_kg: number,
  entries: z.array(entry),
});

const numberOf = (given: StopRule): number => {
  switch (given.kind) {
    case 'share':
      return given.share;
    case 'oil-in-ten-minutes':
      return given.below_mL;
    case 'cost-of-next':
      return given.above;
  }
};

/** As it is stored and handed to another tab. */
export const writtenRun = (kept: StillRun): unknown => ({
  ...kept,
  rule: { kind: kept.rule.kind, number: numberOf(kept.rule) },
});

const readRun = (value: unknown): StillRun | null => {
  const read = run.safeParse(value);
  return read.success ? read.data : null;
};

export const stillRunShape: Shape<StillRun> = {
  version: 2,
  read: readRun,
  both: (key, mine, theirs, base) => {
    const both = counted(readRun(mine), readRun(theirs), readRun(base));
    return { [key]: both ? writtenRun(both) : mine };
  },
};

/** One run of two copies of it: every entry once, as it was changed last; over where either is. */
export function joined(mine: StillRun, theirs: StillRun): StillRun {
  const entries = new Map(mine.entries.map((each) => [each.id, each]));
  for (const each of theirs.entries) {
    const own = entries.get(each.id);
    if (!own || each.changed_ms > own.changed_ms) entries.set(each.id, each);
  }
  const newer = theirs.changed_ms > mine.changed_ms ? theirs : mine;
  return {
    ...newer,
    ended_ms: mine.ended_ms ?? theirs.ended_ms,
    entries: [...entries.values()].sort((a, b) => a.at_ms - b.at_ms || (a.id < b.id ? -1 : 1)),
  };
}

/**
 * The one run that counts where two tabs have written at once. Of two that were started in the same moment the one that
 * was stored first goes on, with what was logged in both.
 * @param mine what is about to be stored
 * @param theirs what another tab has stored since
 * @param base what `mine` was made from
 */
export function counted(mine: StillRun | null, theirs: StillRun | null, base: StillRun | null): StillRun | null {
  if (!mine || !theirs) return mine ?? theirs;
  if (mine.id === theirs.id) return joined(mine, theirs);
  // One of them was ended and the other begun after it.
  if (theirs.ended_ms !== null || base?.id === theirs.id) return mine;
  if (mine.ended_ms !== null || base?.id === mine.id) return theirs;
  return joined(theirs, { ...theirs, entries: mine.entries });
}

export const sinceStart = ({ started_ms }: StillRun, at_ms: number): number => (at_ms - started_ms) / 1000;

/** Entries that stand, in the order of their times. */
export const standing = ({ entries }: StillRun): readonly StillEntry[] =>
  entries.filter(({ gone }) => !gone).toSorted((a, b) => a.at_ms - b.at_ms);

/** The reading that an entry is to the model; `null` for what it knows nothing of. */
export const SEEN_KINDS: Readonly<Record<EntryKind, SeenKind | null>> = {
  'first-drop': 'firstDrop_s',
  oil: 'oil_mL',
  distillate: 'distillate_kg',
  outlet: 'outlet_K',
  tub: 'tub_K',
  lid: null,
  drops: null,
  'pot-water': 'potWater_kg',
  heat: null,
  tap: null,
  'heat-off': null,
  opened: null,
  note: null,
  photo: null,
  done: null,
  silenced: null,
};

export function readingsOf(kept: StillRun): readonly Seen[] {
  return standing(kept).flatMap((each): readonly Seen[] => {
    const kind = SEEN_KINDS[each.kind];
    const time_s = sinceStart(kept, each.at_ms);
    if (kind === null || time_s < 0) return [];
    const value = kind === 'firstDrop_s' ? time_s : each.value;
    return value === null ? [] : [{ kind, time_s, value }];
  });
}

export function turnsOf(kept: StillRun): readonly Turn[] {
  return standing(kept).flatMap((each): readonly Turn[] => {
    const time_s = Math.max(0, sinceStart(kept, each.at_ms));
    const place = each.place === null ? {} : { place: each.place };
    if (each.kind === 'heat-off') return [{ control: 'heat', time_s, value: 0, isLast: true }];
    if ((each.kind !== 'heat' && each.kind !== 'tap') || each.value === null) return [];
    return [{ control: each.kind, time_s, value: each.value, ...place }];
  });
}

/** What the forecast is asked with, at the last thing that was read or turned. */
export function soFarOf(kept: StillRun): RunSoFar {
  const readings = readingsOf(kept);
  const turns = turnsOf(kept);
  return { at_s: Math.max(0, ...[...readings, ...turns].map(({ time_s }) => time_s)), readings, turns };
}

/** What the run sheet is asked with, but for the forecast. */
export function sheetStateOf(kept: StillRun): Omit<SheetState, 'forecast'> {
  const readings = readingsOf(kept);
  const hottest = readings.filter(({ kind }) => kind === 'tub_K').toSorted((a, b) => b.value - a.value)[0];
  return {
    firstDrop_s: readings.find(({ kind }) => kind === 'firstDrop_s')?.value ?? null,
    receiver_kg: kept.receiver_kg,
    lastReading_s: readings.at(-1)?.time_s ?? null,
    tub: hottest ? { value_K: hottest.value, time_s: hottest.time_s } : null,
  };
}

/** Steps of the sheet that are done, and alarms that were silenced. */
export function stepsOf(kept: StillRun, kind: 'done' | 'silenced'): ReadonlyMap<string, StillEntry> {
  return new Map(standing(kept).flatMap((each) => (each.kind === kind ? [[each.text, each] as const] : [])));
}
