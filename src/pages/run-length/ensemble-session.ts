/** The likely runs: the same still run many times with what is uncertain drawn anew, shared out among the workers. */
import { throttle } from '@solid-primitives/scheduled';
import { batch, createSignal, type Accessor } from 'solid-js';
import {
  summariseEnsemble,
  type Design,
  type EnsembleSummary,
  type MemberResult,
  type OwnBands,
  type Scenario,
} from '../../../sim/index.ts';
import { createBackgroundJob } from '../../state/background-job.ts';
import type { WorkerPool } from '../../workers/pool.ts';

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
/** Draws before the runs that try one uncertain value at a time, so that the spread shows early. */
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
  let found: MemberResult[] = [];
  let plan: Design | null = null;

  const sumUp = () => {
    if (plan && found.length > 0) setSummary(summariseEnsemble(plan, found));
  };
  const sumUpSoon = throttle(sumUp, SUM_UP_EVERY_MS);
  const job = createBackgroundJob(() => {
    sumUpSoon.clear();
    sumUp();
  });

  const runAll = async (whole: Design, signal: AbortSignal): Promise<void> => {
    const order = orderOfRows(whole);
    const batches = Array.from({ length: Math.ceil(order.length / RUNS_A_TASK) }, (_, index) =>
      order.slice(index * RUNS_A_TASK, (index + 1) * RUNS_A_TASK),
    );
    await Promise.all(
      batches.map(async (rows) => {
        found.push(...(await pool.ask('members', [whole, rows], { signal })));
        setFinished(found.length);
        sumUpSoon();
      }),
    );
  };

  return {
    scenario,
    design,
    summary,
    finished,
    total: () => design()?.rows.length ?? 0,
    running: job.running,
    problem: job.problem,
    stop: job.stop,
    start: (still, members, seed, own) =>
      job.start(async (signal) => {
        found = [];
        plan = null;
        batch(() => {
          setScenario(() => still);
          setDesign(null);
          setSummary(null);
          setFinished(0);
        });
        const whole = await pool.ask('design', [still, members, seed, own], { signal });
        plan = whole;
        setDesign(() => whole);
        await runAll(whole, signal);
      }),
  };
}
