/** The boils that are compared: two to four scenarios with their runs, kept on this device between visits. */
import { createStore, get, set } from 'idb-keyval';
import { createSignal } from 'solid-js';
import { MOST_COMPARED, type RunResult, type Scenario } from '../../sim/index.ts';
import { withValueAtPath } from './field-path.ts';
import type { WorkerPool } from '../workers/pool.ts';
import { whyNoRun } from '../workers/run-client.ts';
import { errorMessage, wasGivenUp } from '../workers/errors.ts';

export interface Boil {
  readonly id: number;
  readonly scenario: Scenario;
  /** The last run that went through; `null` before the first. */
  readonly result: RunResult | null;
  readonly running: boolean;
  /** Why the run shown is not that of the scenario. */
  readonly problem: string | null;
}

const KEY = 'boils';

let given = 0;
let store: ReturnType<typeof createStore> | null = null;
const place = () => (store ??= createStore('limbeck-boils', 'boils'));
const doubts = new Map<number, AbortController>();

const [boils, setBoils] = createSignal<readonly Boil[]>([]);
const [opened, setOpened] = createSignal(false);
export { boils, opened as boilsOpened };

const patch = (id: number, changed: Partial<Boil>) =>
  setBoils((before) => before.map((boil) => (boil.id === id ? { ...boil, ...changed } : boil)));

function keep(): void {
  // What cannot be kept is still there until the page is left; the boils can be saved as a file.
  set(
    KEY,
    boils().map(({ scenario }) => scenario),
    place(),
  ).catch(() => undefined);
}

async function run(pool: WorkerPool, id: number, scenario: Scenario): Promise<void> {
  doubts.get(id)?.abort();
  const controller = new AbortController();
  doubts.set(id, controller);
  patch(id, { running: true });
  try {
    const reply = await pool.ask('run', [scenario], { signal: controller.signal, priority: 'high' });
    patch(
      id,
      reply.kind === 'ran'
        ? { result: reply.result, running: false, problem: null }
        : { running: false, problem: whyNoRun(reply) },
    );
  } catch (error) {
    if (!wasGivenUp(error)) patch(id, { running: false, problem: errorMessage(error) });
  }
}

export function addBoils(pool: WorkerPool, scenarios: readonly Scenario[]): void {
  const added = scenarios
    .slice(0, MOST_COMPARED - boils().length)
    .map((scenario): Boil => ({ id: (given += 1), scenario, result: null, running: true, problem: null }));
  setBoils((before) => [...before, ...added]);
  for (const { id, scenario } of added) void run(pool, id, scenario);
  keep();
}

export function setAllBoils(pool: WorkerPool, scenarios: readonly Scenario[]): void {
  for (const controller of doubts.values()) controller.abort();
  doubts.clear();
  setBoils([]);
  addBoils(pool, scenarios);
}

export function changeBoil(pool: WorkerPool, id: number, path: string, value: unknown): void {
  const boil = boils().find((each) => each.id === id);
  if (!boil) return;
  const scenario = withValueAtPath(boil.scenario, path, value);
  patch(id, { scenario });
  // A name is no part of the physics, but the run carries it into charts and conclusions.
  void run(pool, id, scenario);
  keep();
}

export function removeBoil(id: number): void {
  doubts.get(id)?.abort();
  doubts.delete(id);
  setBoils((before) => before.filter((boil) => boil.id !== id));
  keep();
}

/** Opens what was compared at the last visit, else the still at hand. */
export async function openBoils(pool: WorkerPool, atHand: Scenario): Promise<void> {
  if (opened()) return;
  setOpened(true);
  let kept: unknown;
  try {
    kept = await get<unknown>(KEY, place());
  } catch {
    kept = undefined;
  }
  if (boils().length > 0) return;
  if (!Array.isArray(kept) || kept.length === 0) return addBoils(pool, [atHand]);
  const readable: Scenario[] = [];
  for (const input of (kept as unknown[]).slice(0, MOST_COMPARED)) {
    // An older version may have kept what this one refuses; such a boil is left out.
    const reply = await pool.ask('run', [input], { priority: 'high' }).catch(() => null);
    if (reply?.kind === 'ran') readable.push(reply.result.scenario);
  }
  addBoils(pool, readable.length > 0 ? readable : [atHand]);
}

/** A name that no other boil has. */
export function freeName(name: string): string {
  const taken = new Set(boils().map(({ scenario }) => scenario.name));
  const stem = name.replace(/ \(\d+\)$/u, '').slice(0, 110);
  for (let count = 2; ; count++) {
    const next = `${stem} (${count})`;
    if (!taken.has(next)) return next;
  }
}
