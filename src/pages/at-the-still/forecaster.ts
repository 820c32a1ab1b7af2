/** The forecast of the run under way, made anew after each entry by the workers. */
import { createSignal, type Accessor } from 'solid-js';
import {
  RunForecaster,
  type Course,
  type Forecast,
  type OwnBands,
  type RunSoFar,
  type Scenario,
  type StopRule,
} from '../../../sim/index.ts';
import { errorMessage, wasGivenUp } from '../../workers/errors.ts';
import type { WorkerPool } from '../../workers/pool.ts';

export interface ForecastSession {
  readonly forecast: Accessor<Forecast | null>;
  /** Whether more likely runs are being made; what is shown meanwhile rests on fewer. */
  readonly working: Accessor<boolean>;
  readonly problem: Accessor<string | null>;
  ask(now: RunSoFar): void;
  stop(): void;
}

/** Runs handed to a worker at a time. */
const RUNS_A_TASK = 10;

export function createForecastSession(
  pool: WorkerPool,
  plan: Scenario,
  rule: StopRule,
  own: OwnBands,
): ForecastSession {
  const forecaster = new RunForecaster(plan, { rule, own });
  const [forecast, setForecast] = createSignal<Forecast | null>(null);
  const [working, setWorking] = createSignal(false);
  const [problem, setProblem] = createSignal<string | null>(null);
  let next: RunSoFar | null = null;
  let controller: AbortController | null = null;
  let isOver = false;

  const carryOut = async (now: RunSoFar, signal: AbortSignal): Promise<void> => {
    const work = forecaster.forecast(now);
    try {
      let step = work.next();
      while (step.done !== true) {
        const { asked, soFar } = step.value;
        if (soFar) setForecast(soFar);
        const batches = Array.from({ length: Math.ceil(asked.draws.length / RUNS_A_TASK) }, (_, index) =>
          asked.draws.slice(index * RUNS_A_TASK, (index + 1) * RUNS_A_TASK),
        );
        const found = await Promise.all(batches.map((draws) => pool.ask('courses', [{ ...asked, draws }], { signal })));
        const courses: readonly (Course | null)[] = found.flat();
        step = work.next(courses);
      }
      const done = step.value;
      setForecast(() => done);
    } finally {
      work.return(undefined as never);
    }
  };

  const run = async (): Promise<void> => {
    setWorking(true);
    while (next && !isOver) {
      const now = next;
      next = null;
      controller = new AbortController();
      try {
        await carryOut(now, controller.signal);
        setProblem(null);
      } catch (error) {
        if (!wasGivenUp(error)) setProblem(errorMessage(error));
      }
    }
    setWorking(false);
  };

  return {
    forecast,
    working,
    problem,
    ask: (now) => {
      next = now;
      if (!working()) void run();
      // The first likely runs serve every later forecast; what is made from them can be begun again.
      else if (forecaster.begun) controller?.abort();
    },
    stop: () => {
      isOver = true;
      controller?.abort();
    },
  };
}
