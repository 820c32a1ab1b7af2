/** The runs that are compared: two to four scenarios with what they gave, kept on this device between visits. */
import { createSignal, untrack } from 'solid-js';
import { isObject, MOST_COMPARED, type RunResult, type Scenario } from '../../sim/index.ts';
import { keptStore } from './browser-store.ts';
import { changedBy, madeAnew, originOf, readOrigin, type Origin } from './compared-origin.ts';
import { withValueAtPath } from './field-path.ts';
import type { Kept, Shape } from './kept-shape.ts';
import { newId } from './new-id.ts';
import { CONFLICT, threeWay } from './three-way.ts';
import type { WorkerPool } from '../workers/pool.ts';
import type { NoRun } from '../workers/run-client.ts';
import { errorMessage, wasGivenUp } from '../workers/errors.ts';

export interface ComparedRun {
  readonly id: number;
  readonly scenario: Scenario;
  /** `null` where it is not known, as of what an older build kept. */
  readonly origin: Origin | null;
  /** The last run that went through; `null` before the first. */
  readonly result: RunResult | null;
  readonly running: boolean;
  /** Why the run shown is not that of the scenario. */
  readonly problem: NoRun | null;
}

const KEY = 'compared';
/** Comparisons that another window had made while this one made its own, and for which this one has no room. */
export const COMPARED_BESIDE = 'compared-beside/';

export interface KeptRun {
  readonly scenario: unknown;
  readonly origin: Origin | null;
}

const sameScenario = (one: unknown, other: unknown): boolean =>
  isObject(one) && isObject(other) && JSON.stringify(one['scenario']) === JSON.stringify(other['scenario']);

/** The first version was a list of scenarios. */
export const comparedShape: Shape<readonly KeptRun[]> = {
  version: 2,
  both(key, mine, theirs, base) {
    const joined = threeWay(base, mine, theirs);
    if (joined !== CONFLICT) return { [key]: joined };
    const own = mine as readonly unknown[];
    const others = (Array.isArray(theirs) ? (theirs as readonly unknown[]) : []).filter(
      (other) => !own.some((each) => sameScenario(each, other)),
    );
    const all = [...own, ...others];
    return all.length <= MOST_COMPARED ? { [key]: all } : { [key]: mine, [COMPARED_BESIDE + newId()]: theirs };
  },
  read(value, version) {
    if (!Array.isArray(value)) return null;
    return (value as readonly unknown[]).map((each) =>
      version >= 2 && isObject(each)
        ? { scenario: each['scenario'], origin: readOrigin(each['origin']) }
        : { scenario: each, origin: null },
    );
  },
};

let given = 0;
const controllers = new Map<number, AbortController>();

const [compared, setRuns] = createSignal<readonly ComparedRun[]>([]);
const [opened, setOpened] = createSignal(false);
/** What other windows compared, by the key under which it is kept. */
const [beside, setBeside] = createSignal<ReadonlyMap<string, readonly KeptRun[]>>(new Map());
export { compared, beside as comparedBeside };

const patch = (id: number, changed: Partial<ComparedRun>) =>
  setRuns((before) => before.map((each) => (each.id === id ? { ...each, ...changed } : each)));

const asKept = (): readonly KeptRun[] => compared().map(({ scenario, origin }) => ({ scenario, origin }));

const keep = () => keptStore().keep(KEY, comparedShape, asKept());

function noteBeside(key: string, kept: Kept<readonly KeptRun[]>): void {
  setBeside((before) => {
    const after = new Map(before);
    if (kept.kind === 'read') after.set(key, kept.value);
    else after.delete(key);
    return after;
  });
}

async function run(pool: WorkerPool, id: number, scenario: Scenario): Promise<void> {
  controllers.get(id)?.abort();
  const controller = new AbortController();
  controllers.set(id, controller);
  patch(id, { running: true });
  try {
    const reply = await pool.ask('run', [scenario], { signal: controller.signal, priority: 'high' });
    patch(
      id,
      reply.kind === 'ran'
        ? { result: reply.result, running: false, problem: null }
        : { running: false, problem: reply },
    );
  } catch (error) {
    if (!wasGivenUp(error)) patch(id, { running: false, problem: { kind: 'failed', message: errorMessage(error) } });
  }
}

type NewRun = Pick<ComparedRun, 'scenario' | 'origin'>;

function add(pool: WorkerPool, runs: readonly NewRun[]): void {
  const added = runs
    .slice(0, MOST_COMPARED - compared().length)
    .map((each): ComparedRun => ({ ...each, id: (given += 1), result: null, running: true, problem: null }));
  setRuns((before) => [...before, ...added]);
  for (const { id, scenario } of added) void run(pool, id, scenario);
}

export function addCompared(pool: WorkerPool, runs: readonly NewRun[]): void {
  add(pool, runs);
  keep();
}

export function setCompared(pool: WorkerPool, runs: readonly NewRun[]): void {
  for (const controller of controllers.values()) controller.abort();
  controllers.clear();
  setRuns([]);
  addCompared(pool, runs);
}

/** Makes every run anew from the still that is on the bench now, with what the reader has set in each. */
export async function renewCompared(pool: WorkerPool, bench: Scenario): Promise<void> {
  const isBoiled = compared().some(({ origin }) => origin !== null && origin.made !== 'copy');
  const boiled = isBoiled ? await pool.ask('gentleAgainstHard', [bench], { priority: 'high' }) : null;
  const renewed = compared().flatMap(({ id, origin }) => (origin ? [{ id, ...madeAnew(origin, bench, boiled) }] : []));
  const names = new Set<string>();
  for (const { id, ...made } of renewed) {
    const scenario = names.has(made.scenario.name)
      ? { ...made.scenario, name: freeName(made.scenario.name, names) }
      : made.scenario;
    names.add(scenario.name);
    patch(id, { scenario, origin: made.origin });
    void run(pool, id, scenario);
  }
  keep();
}

export function changeCompared(pool: WorkerPool, id: number, path: string, value: unknown): void {
  const wanted = compared().find((each) => each.id === id);
  if (!wanted) return;
  const scenario = withValueAtPath(wanted.scenario, path, value);
  patch(id, { scenario, origin: wanted.origin && changedBy(wanted.origin, path, value) });
  // A name is no part of the physics, but the run carries it into charts and conclusions.
  void run(pool, id, scenario);
  keep();
}

export function removeCompared(id: number): void {
  controllers.get(id)?.abort();
  controllers.delete(id);
  setRuns((before) => before.filter((each) => each.id !== id));
  keep();
}

/** Runs that go through, of those that were kept. */
async function readableOf(pool: WorkerPool, kept: readonly KeptRun[]): Promise<readonly NewRun[]> {
  const readable: NewRun[] = [];
  for (const { scenario, origin } of kept.slice(0, MOST_COMPARED)) {
    const reply = await pool.ask('run', [scenario], { priority: 'high' }).catch(() => null);
    if (reply?.kind === 'ran') readable.push({ scenario: reply.result.scenario, origin });
    else keptStore().protect(KEY);
  }
  return readable;
}

/** Shows what another window compares now. */
async function follow(pool: WorkerPool, kept: readonly KeptRun[]): Promise<void> {
  const readable = await readableOf(pool, kept);
  const before = untrack(compared);
  const known = readable.map((each) => before.find((run) => sameScenario(run, each)));
  setRuns(before.filter((run) => known.includes(run)));
  add(
    pool,
    readable.filter((_, index) => known[index] === undefined),
  );
}

/** Shows what another window compared; what stood here until now is kept in its place. */
export async function exchangeCompared(pool: WorkerPool, key: string): Promise<void> {
  const wanted = beside().get(key);
  if (!wanted) return;
  const readable = await readableOf(pool, wanted);
  if (readable.length === 0) return;
  const own = asKept();
  keptStore().keep(key, comparedShape, own);
  noteBeside(key, { kind: 'read', value: own });
  setCompared(pool, readable);
}

export function deleteCompared(key: string): void {
  keptStore().keep(key, comparedShape, undefined);
  noteBeside(key, { kind: 'nothing' });
}

/** Opens what was compared at the last visit, else the still at hand. */
export async function openCompared(pool: WorkerPool, atHand: Scenario): Promise<void> {
  if (opened()) return;
  setOpened(true);
  // Where nothing can be kept the comparison is still there until the page is left, and can be saved as a file.
  const kept = await keptStore()
    .read(KEY, comparedShape)
    .catch(() => null);
  if (compared().length > 0) return;
  const readable = await readableOf(pool, kept?.kind === 'read' ? kept.value : []);
  keptStore().follow(KEY, comparedShape, (key, each) => {
    if (key === KEY && each.kind === 'read') void untrack(() => follow(pool, each.value));
  });
  keptStore().follow(COMPARED_BESIDE, comparedShape, noteBeside);
  add(pool, readable.length > 0 ? readable : [{ scenario: atHand, origin: originOf(atHand) }]);
  const others = await keptStore()
    .readAll(COMPARED_BESIDE, comparedShape)
    .catch(() => null);
  for (const [key, each] of others ?? []) noteBeside(key, each);
}

const namesTaken = (): ReadonlySet<string> => new Set(compared().map(({ scenario }) => scenario.name));

/** A name that no other run has. */
export function freeName(name: string, taken = namesTaken()): string {
  const stem = name.replace(/ \(\d+\)$/u, '').slice(0, 110);
  for (let count = 2; ; count++) {
    const next = `${stem} (${count})`;
    if (!taken.has(next)) return next;
  }
}
