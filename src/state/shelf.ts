/** The shelf: every still of one's own on this device, and its versions. What stands on the bench follows other windows. */
import { debounce } from '@solid-primitives/scheduled';
import { createEffect, createSignal, untrack, type Accessor } from 'solid-js';
import { isObject, readScenario, type Scenario } from '../../sim/index.ts';
import { anyShape } from './any-shape.ts';
import type { Bench } from './bench.ts';
import type { Kept, Shape } from './kept-shape.ts';
import type { KeptStore } from './kept-store.ts';
import { newStill, SHELF, stillShape, type Desk, type KeptStill, type Still } from './kept-still.ts';
import { newId } from './new-id.ts';
import { patchBetween } from './scenario-patch.ts';
import { isPartedFrom } from './shelf-both.ts';
import { namedAfter, nameOfStill } from './still-names.ts';

export interface ShelfStill extends KeptStill {
  readonly id: string;
}

export interface Version {
  readonly key: string;
  readonly scenario: unknown;
  readonly made_ms: number;
}

/** What this build cannot read, as it was kept. */
export interface Unread {
  readonly key: string;
  readonly value: unknown;
}

export interface Shelf {
  /** Everything that is or was on a bench and has not been cleared away, the latest change first. */
  readonly stills: Accessor<readonly ShelfStill[]>;
  readonly unread: Accessor<readonly Unread[]>;
  /** Looks for what was put aside because this build could not read it. */
  lookAside(): Promise<void>;
  versionsOf(id: string): Promise<readonly Version[]>;
  /** Resolves with why it cannot be opened, in words, or null. */
  open(id: string): Promise<string | null>;
  /** Opens an earlier version; what stood there until now becomes one. */
  goBack(id: string, version: Version): Promise<string | null>;
  rename(id: string, name: string): void;
  copy(id: string): void;
  setDeleted(id: string, deleted: boolean): void;
  /** Makes a still that came by a link or a file the reader's own: the one on the bench, or one that was left. */
  keepVisitor(id?: string): void;
  /** Leaves the visitor for the still beside which it stands. */
  goHome(): Promise<string | null>;
  /** Makes a version of what has been changed: the page may be left at any moment. */
  leave(): void;
}

export const MOST_VERSIONS = 20;
export const DELETED_KEPT_DAYS = 30;
const DAY_MS = 86_400_000;
/** A pause of editing after which a version is made. */
const PAUSE_MS = 60_000;
/** Steps that another window made are one step back in this one. */
const ELSEWHERE = 'in another window';

const GONE = 'It is no longer kept on this device.';
const VERSIONS = 'shelf-version/';
const ASIDE = 'aside/';

/** A bench that an older build put aside: its still is kept on the shelf. */
const isViewAlone = (key: string, value: unknown): boolean =>
  key.startsWith(`${ASIDE}bench/`) && isObject(value) && !('scenario' in value);

const idOfVersion = (key: string): string => key.slice(VERSIONS.length).replace(/\/[^/]*$/u, '');

export const versionShape: Shape<Omit<Version, 'key'>> = {
  version: 1,
  read: (value) =>
    isObject(value) && isObject(value['scenario']) && typeof value['made_ms'] === 'number'
      ? { scenario: value['scenario'], made_ms: value['made_ms'] }
      : null,
};

const isSame = (one: unknown, other: unknown): boolean => {
  if (!isObject(one) || !isObject(other)) return false;
  const { set, gone } = patchBetween(one, other);
  return Object.keys(set).length === 0 && gone.length === 0;
};

/** Versions, newest first, of which the list can do without: equal ones, and those beyond the last twenty. */
export function superfluous(versions: readonly Version[]): readonly Version[] {
  const kept: Version[] = [];
  const thinned: Version[] = [];
  for (const version of versions) {
    const last = kept.at(-1);
    // Of equal ones in a row the first counts, of others the last.
    if (last && isSame(last.scenario, version.scenario)) {
      thinned.push(last);
      kept[kept.length - 1] = version;
    } else if (kept.some(({ scenario }) => isSame(scenario, version.scenario))) thinned.push(version);
    else kept.push(version);
  }
  return [...thinned, ...kept.slice(MOST_VERSIONS)];
}

/** What of the shelf has had its time: long deleted, or only looked at and not a still beside which a visitor stands. */
export function outlived(stills: readonly ShelfStill[], onBench: string, now_ms: number): readonly ShelfStill[] {
  const old = (since_ms: number | null) => since_ms !== null && since_ms < now_ms - DELETED_KEPT_DAYS * DAY_MS;
  const homes = new Set(stills.flatMap(({ visit, deleted_ms }) => (visit && deleted_ms === null ? [visit.home] : [])));
  return stills.filter(
    ({ id, deleted_ms, touched, changed_ms }) =>
      id !== onBench && !homes.has(id) && (old(deleted_ms) || (!touched && old(changed_ms))),
  );
}

export interface ShelfParts {
  readonly bench: Pick<Bench, 'desk' | 'put' | 'load' | 'change'>;
  /** What stood on the bench when the page opened. */
  readonly opened: Desk;
  readonly store: KeptStore;
  /** What this window last wrote or read of each still, by id. */
  readonly known: Map<string, Desk>;
  /** Says something to the reader. */
  tell(message: string): void;
  now(): number;
}

export function createShelf({ bench, opened, store, known, tell, now }: ShelfParts): Shelf {
  const [stills, setStills] = createSignal<ReadonlyMap<string, KeptStill>>(new Map());
  const [unread, setUnread] = createSignal<ReadonlyMap<string, unknown>>(new Map());
  /** As what the reader chose to open something; undo brings stills back that nobody chose to have so. */
  const chosen = new WeakSet<Still>();
  /** What another window has made, and makes versions of. */
  const adopted = new WeakSet<Desk>();
  /** Stills whose last change is in no version yet. */
  const unversioned = new Set<string>();

  const without = <T>(all: ReadonlyMap<string, T>, key: string): ReadonlyMap<string, T> =>
    new Map([...all].filter(([other]) => other !== key));

  const note = (key: string, kept: Kept<KeptStill>) => {
    const id = key.slice(SHELF.length);
    setStills((all) => (kept.kind === 'read' ? new Map([...all, [id, kept.value]]) : without(all, id)));
    setUnread((all) => {
      if (kept.kind === 'unread') return new Map([...all, [key, kept.value]]);
      return all.has(key) ? without(all, key) : all;
    });
  };
  const keep = (id: string, still: KeptStill) => {
    store.keep(SHELF + id, stillShape, still);
    note(SHELF + id, { kind: 'read', value: still });
  };
  const change = (id: string, changed: Partial<KeptStill>) => {
    const still = untrack(stills).get(id);
    if (still) keep(id, { ...still, ...changed });
  };

  const versionsOf = async (id: string): Promise<readonly Version[]> =>
    [...(await store.readAll(`${VERSIONS}${id}/`, versionShape))]
      .flatMap(([key, kept]) => (kept.kind === 'read' ? [{ key, ...kept.value }] : []))
      .sort((a, b) => b.made_ms - a.made_ms || (a.key < b.key ? 1 : -1));
  const drop = (key: string) => store.keep(key, versionShape, undefined);
  const makeVersion = (id: string, scenario: unknown) => {
    unversioned.delete(id);
    store.keep(`${VERSIONS}${id}/${newId()}`, versionShape, { scenario, made_ms: now() });
    void versionsOf(id)
      .then((versions) => superfluous(versions).forEach(({ key }) => drop(key)))
      // Where nothing can be read nothing can be thinned, and the page says that it keeps nothing.
      .catch(() => undefined);
  };
  const makeVersionOfBench = () => {
    const { scenario, still } = untrack(bench.desk);
    if (unversioned.has(still.id)) makeVersion(still.id, scenario);
  };
  const afterPause = debounce(makeVersionOfBench, PAUSE_MS);

  /** A scenario of another window, where this build can show it: it may stand there with a fault that its window shows too. */
  const shown = (given: unknown): Scenario | null => {
    const read = readScenario(given);
    if (read.ok) return read.scenario;
    const { version } = untrack(bench.desk).scenario;
    return isObject(given) && given['version'] === version ? (given as unknown as Scenario) : null;
  };
  const isAsOn = ({ scenario, still: { touched, visit } }: Desk, kept: KeptStill): boolean =>
    kept.touched === touched &&
    JSON.stringify(kept.visit) === JSON.stringify(visit) &&
    (isSame(kept.scenario, scenario) || isSame(shown(kept.scenario), scenario));
  const adopt = (id: string, kept: KeptStill) => {
    const desk = untrack(bench.desk);
    const scenario = isSame(kept.scenario, desk.scenario) ? desk.scenario : shown(kept.scenario);
    // What cannot be shown here goes on in its own window, and this window goes on with a still of its own.
    const next = scenario
      ? { scenario, still: { id, touched: kept.touched, visit: kept.visit } }
      : { scenario: desk.scenario, still: newStill(true) };
    if (scenario) {
      known.set(id, next);
      adopted.add(next);
    }
    bench.put(next, ELSEWHERE);
  };

  const tellParted = (was: string, is: string) =>
    tell(`“${was}” was changed in two windows at once. Both are kept among your stills; this window’s is “${is}”.`);

  /** What another window has to say of a still. */
  const follow = (key: string, kept: Kept<KeptStill>) => {
    note(key, kept);
    if (kept.kind !== 'read') return;
    const id = key.slice(SHELF.length);
    const desk = untrack(bench.desk);
    if (id === desk.still.id && !isAsOn(desk, kept.value)) return adopt(id, kept.value);
    if (!isPartedFrom(kept.value, desk.still.id, desk.scenario)) return;
    const parted: Desk = {
      scenario: kept.value.scenario as Scenario,
      still: { id, touched: true, visit: kept.value.visit },
    };
    known.set(id, parted);
    bench.put(parted, ELSEWHERE);
    tellParted(desk.scenario.name, parted.scenario.name);
  };

  store.follow(SHELF, stillShape, (key, kept) => untrack(() => follow(key, kept)));

  const open = async (): Promise<void> => {
    const all = await store.readAll(SHELF, stillShape);
    for (const [key, kept] of all) note(key, kept);
    const desk = untrack(bench.desk);
    const there = untrack(stills).get(desk.still.id);
    if (there && !isAsOn(desk, there)) adopt(desk.still.id, there);
    for (const { id } of outlived(untrack(list), untrack(bench.desk).still.id, now())) {
      store.keep(SHELF + id, stillShape, undefined);
      note(SHELF + id, { kind: 'nothing' });
    }
    for (const key of (await store.readAll(VERSIONS, versionShape)).keys())
      if (!untrack(stills).has(idOfVersion(key))) drop(key);
  };
  // A browser that keeps nothing is told of elsewhere.
  const ready = open().catch(() => undefined);

  const changed = (desk: Desk, before: Desk) => {
    const { id, touched, visit } = desk.still;
    const isOther = before.still.id !== id;
    if (isOther && unversioned.has(before.still.id)) makeVersion(before.still.id, before.scenario);
    if (adopted.delete(desk)) return;
    const there = isOther ? stills().get(id) : undefined;
    if (there && !chosen.delete(desk.still) && !isAsOn(desk, there)) {
      // Undo brought a still back that has been changed since, by another window or on the shelf.
      adopt(id, there);
      return keep(id, there);
    }
    if (there && isAsOn(desk, there)) return;
    if (!isOther && !before.still.touched && touched) makeVersion(id, before.scenario);
    const value = { scenario: desk.scenario, touched, visit, changed_ms: now(), deleted_ms: null, split: null };
    note(SHELF + id, { kind: 'read', value });
    if (before.scenario !== desk.scenario && touched) unversioned.add(id);
    afterPause();
  };

  createEffect<Desk>((before) => {
    const desk = bench.desk();
    if (desk !== before) untrack(() => changed(desk, before));
    return desk;
  }, opened);

  const list = (): readonly ShelfStill[] =>
    [...stills()].map(([id, still]) => ({ id, ...still })).sort((a, b) => b.changed_ms - a.changed_ms);
  const openAs = ({ id, touched, visit }: Still, scenario: unknown) => {
    const still = { id, touched, visit };
    chosen.add(still);
    return bench.load(scenario, still);
  };
  const openKept = async (id: string): Promise<string | null> => {
    await ready;
    const kept = untrack(stills).get(id);
    if (!kept) return GONE;
    const { scenario, touched, visit } = kept;
    if (id !== untrack(bench.desk).still.id)
      known.set(id, { scenario: scenario as Scenario, still: { id, touched, visit } });
    return openAs({ id, touched, visit }, scenario);
  };

  return {
    stills: list,
    unread: () => [...unread()].map(([key, value]) => ({ key, value })),
    lookAside: async () => {
      for (const [key, kept] of await store.readAll(ASIDE, anyShape))
        if (kept.kind === 'read' && !isViewAlone(key, kept.value.value))
          setUnread((before) => new Map([...before, [key, kept.value.value]]));
    },
    versionsOf,
    leave: makeVersionOfBench,
    open: openKept,
    goBack: async (id, version) => {
      const kept = untrack(stills).get(id);
      if (!kept) return GONE;
      makeVersion(id, kept.scenario);
      return openAs({ id, touched: true, visit: kept.visit }, version.scenario);
    },
    rename: (id, name) => {
      if (id === untrack(bench.desk).still.id) return bench.change('name', name);
      const still = untrack(stills).get(id);
      if (still) change(id, { scenario: { ...(still.scenario as object), name }, changed_ms: now() });
    },
    copy: (id) => {
      const still = untrack(stills).get(id);
      if (!still) return;
      const names = new Set(list().map(({ scenario }) => nameOfStill(scenario)));
      const stem = nameOfStill(still.scenario).replace(/ \(\d+\)$/u, '');
      let count = 2;
      while (names.has(namedAfter(stem, String(count)))) count++;
      const scenario = { ...(still.scenario as object), name: namedAfter(stem, String(count)) };
      keep(newId(), {
        ...still,
        scenario,
        touched: true,
        visit: null,
        deleted_ms: null,
        split: null,
        changed_ms: now(),
      });
    },
    setDeleted: (id, deleted) => change(id, { deleted_ms: deleted ? now() : null }),
    keepVisitor: (id) => {
      const { scenario, still } = untrack(bench.desk);
      if (id === undefined || id === still.id) bench.put({ scenario, still: { ...still, touched: true, visit: null } });
      else change(id, { touched: true, visit: null });
    },
    goHome: async () => {
      const { visit } = untrack(bench.desk).still;
      return visit && openKept(visit.home);
    },
  };
}
