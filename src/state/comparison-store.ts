/** The runs that are compared: two to four scenarios with what they gave, kept on this device between visits. */
import { createSignal } from 'solid-js';
import { MOST_COMPARED, type RunResult, type Scenario } from '../../sim/index.ts';
import { keptStore } from './browser-store.ts';
import { withValueAtPath } from './field-path.ts';
import type { Shape } from './kept-store.ts';
import type { WorkerPool } from '../workers/pool.ts';
import type { NoRun } from '../workers/run-client.ts';
import { errorMessage, wasGivenUp } from '../workers/errors.ts';

export interface ComparedRun {
  readonly id: number;
  readonly scenario: Scenario;
  /** The last run that went through; `null` before the first. */
  readonly result: RunResult | null;
  readonly running: boolean;
  /** Why the run shown is not that of the scenario. */
  readonly problem: NoRun | null;
}

const KEY = 'compared';
const comparedShape: Shape<readonly unknown[]> = {
  version: 1,
  read: (value) => (Array.isArray(value) ? (value as readonly unknown[]) : null),
};

let given = 0;
const controllers = new Map<number, AbortController>();

const [compared, setRuns] = createSignal<readonly ComparedRun[]>([]);
const [opened, setOpened] = createSignal(false);
export { compared };

const patch = (id: number, changed: Partial<ComparedRun>) =>
  setRuns((before) => before.map((boil) => (boil.id === id ? { ...boil, ...changed } : boil)));

const keep = () =>
  keptStore().keep(
    KEY,
    comparedShape,
    compared().map(({ scenario }) => scenario),
  );

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

export function addCompared(pool: WorkerPool, scenarios: readonly Scenario[]): void {
  const added = scenarios
    .slice(0, MOST_COMPARED - compared().length)
    .map((scenario): ComparedRun => ({ id: (given += 1), scenario, result: null, running: true, problem: null }));
  setRuns((before) => [...before, ...added]);
  for (const { id, scenario } of added) void run(pool, id, scenario);
  keep();
}

export function setCompared(pool: WorkerPool, scenarios: readonly Scenario[]): void {
  for (const controller of controllers.values()) controller.abort();
  controllers.clear();
  setRuns([]);
  addCompared(pool, scenarios);
}

export function changeCompared(pool: WorkerPool, id: number, path: string, value: unknown): void {
  const boil = compared().find((each) => each.id === id);
  if (!boil) return;
  const scenario = withValueAtPath(boil.scenario, path, value);
  patch(id, { scenario });
  // A name is no part of the physics, but the run carries it into charts and conclusions.
  void run(pool, id, scenario);
  keep();
}

export function removeCompared(id: number): void {
  controllers.get(id)?.abort();
  controllers.delete(id);
  setRuns((before) => before.filter((boil) => boil.id !== id));
  keep();
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
  const readable: Scenario[] = [];
  for (const input of kept?.kind === 'read' ? kept.value.slice(0, MOST_COMPARED) : []) {
    const reply = await pool.ask('run', [input], { priority: 'high' }).catch(() => null);
    if (reply?.kind === 'ran') readable.push(reply.result.scenario);
    else keptStore().protect(KEY);
  }
  addCompared(pool, readable.length > 0 ? readable : [atHand]);
}

/** A name that no other boil has. */
export function freeName(name: string): string {
  const taken = new Set(compared().map(({ scenario }) => scenario.name));
  const stem = name.replace(/ \(\d+\)$/u, '').slice(0, 110);
  for (let count = 2; ; count++) {
    const next = `${stem} (${count})`;
    if (!taken.has(next)) return next;
  }
}
