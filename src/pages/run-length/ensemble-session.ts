/** The likely runs: the same still run many times with what is uncertain drawn anew, shared out among the workers. */
import { batch, createSignal, type Accessor } from 'solid-js';
import {
  summariseEnsemble,
  type Design,
  type EnsembleSummary,
  type MemberResult,
  type OwnBands,
  type Scenario,
} from '../../../sim/index.ts';
import type { WorkerPool } from '../../workers/pool.ts';
import { errorMessage, wasGivenUp } from '../../workers/errors.ts';

export interface EnsembleSession {
  /** The still that the likely runs are of; `null` before the first start. */
  readonly scenario: Accessor<Scenario | null>;
  readonly design: Accessor<Design | null>;
  /** Of what has run so far. */
  readonly summary: Accessor<EnsembleSummary | null>;
  readonly finished: Accessor<number>;
  readonly total: Accessor<number>;
  readonly running: Accessor<boolean>;
  readonly problem: Accessor<string | null>;
  start(scenario: Scenario, members: number, seed: number, own: OwnBands): void;
  /** Ends the work; what has run stays. */
  stop(): void;
}

/** Runs handed to a worker at a time: few enough to stop soon, many enough to be worth the way. */
const RUNS_A_TASK = 3;
/** Draws before the runs that try one doubt at a time, so that the spread shows early. */
const FIRST_DRAWS = 24;
const SUM_UP_EVERY_MS = 300;

/** As planned, some draws, each doubt alone, then the other draws. */
export function orderOfRows({ rows }: Pick<Design, 'rows'>): readonly number[] {
  const places = rows.map((_, index) => index);
  const draws = places.filter((index) => rows[index]?.kind === 'draw');
  const others = places.filter((index) => rows[index]?.kind !== 'draw');
  return [...others.slice(0, 1), ...draws.slice(0, FIRST_DRAWS), ...others.slice(1), ...draws.slice(FIRST_DRAWS)];
}

export function createEnsembleSession(pool: WorkerPool): EnsembleSession {
  const [scenario, setScenario] = createSignal<Scenario | null>(null);
  const [design, setDesign] = createSignal<Design | null>(null);
  const [summary, setSummary] = createSignal<EnsembleSummary | null>(null);
  const [finished, setFinished] = createSignal(0);
  const [running, setRunning] = createSignal(false);
  const [problem, setProblem] = createSignal<string | null>(null);
  let found: MemberResult[] = [];
  let plan: Design | null = null;
  let latest: AbortController | null = null;
  let timer: ReturnType<typeof setTimeout> | null = null;

  const sumUp = () => {
    if (timer !== null) clearTimeout(timer);
    timer = null;
    if (plan && found.length > 0) setSummary(summariseEnsemble(plan, found));
  };

  const stop = () => {
    latest?.abort();
    latest = null;
    setRunning(false);
    sumUp();
  };

  const fail = (controller: AbortController, reason: unknown) => {
    if (wasGivenUp(reason) || latest !== controller) return;
    setProblem(errorMessage(reason));
    stop();
  };

  const work = async (whole: Design, controller: AbortController): Promise<void> => {
    const order = orderOfRows(whole);
    const tasks: Promise<void>[] = [];
    for (let from = 0; from < order.length; from += RUNS_A_TASK) {
      const rows = order.slice(from, from + RUNS_A_TASK);
      tasks.push(
        pool.ask('members', [whole, rows], { signal: controller.signal }).then((members) => {
          if (latest !== controller) return;
          found.push(...members);
          setFinished(found.length);
          timer ??= setTimeout(sumUp, SUM_UP_EVERY_MS);
        }),
      );
    }
    await Promise.all(tasks);
    if (latest === controller) stop();
  };

  return {
    scenario,
    design,
    summary,
    finished,
    total: () => design()?.rows.length ?? 0,
    running,
    problem,
    stop,
    start: (still, members, seed, own) => {
      stop();
      const controller = new AbortController();
      latest = controller;
      found = [];
      plan = null;
      batch(() => {
        setScenario(() => still);
        setDesign(null);
        setSummary(null);
        setFinished(0);
        setProblem(null);
        setRunning(true);
      });
      pool
        .ask('design', [still, members, seed, own], { signal: controller.signal })
        .then((whole) => {
          if (latest !== controller) return;
          plan = whole;
          setDesign(() => whole);
          return work(whole, controller);
        })
        .catch((reason: unknown) => fail(controller, reason));
    },
  };
}
