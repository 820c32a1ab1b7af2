/** The next run planned from this one: its still with what was fitted, and what its readings say. */
import { createMemo, createSignal, For, Show } from 'solid-js';
import { nextRunMessages, readScenario, type LoggedPoint, type NextRun, type Scenario } from '../../../sim/index.ts';
import type { LoggedRun } from '../../state/logbook-schema.ts';
import { errorMessage } from '../../workers/errors.ts';
import { workerPool } from '../../workers/start-pool.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import type { DoneFit } from './FitPanel.tsx';

export interface NextPlanProps {
  readonly log: LoggedRun;
  readonly fit: DoneFit | null;
  readonly points: readonly LoggedPoint[];
  readonly context: AnalysisContext;
}

interface Planned {
  readonly of: string;
  readonly carried: string;
  readonly next: NextRun | null;
}

export function NextPlan(props: NextPlanProps) {
  const [planned, setPlanned] = createSignal<Planned | null>(null);
  const [problem, setProblem] = createSignal<string | null>(null);
  const messages = () => nextRunMessages(props.context.reader());
  const shown = createMemo(() => (planned()?.of === props.log.id ? planned() : null));
  const plan = async (log: LoggedRun, fit: DoneFit | null, points: readonly LoggedPoint[]) => {
    setProblem(null);
    const calibration = fit?.answer.calibration;
    const fitted = fit?.answer.fitted ?? null;
    const read = readScenario(log.scenario);
    const own = fitted?.scenario ?? (read.ok ? read.scenario : null);
    if (own === null) {
      setProblem(
        'This log was begun without a still, so there is nothing to plan from. Fit it to the still on the bench first.',
      );
      return;
    }
    const factors = calibration?.ok === true ? calibration.factors : [];
    const next: Scenario = { ...own, name: `${log.name}, next` };
    const refusal = await props.context.load(next);
    if (refusal !== null) {
      setProblem(refusal);
      return;
    }
    const carried = messages().carried(log.name, factors);
    setPlanned({ of: log.id, carried, next: null });
    try {
      const found = await workerPool().ask('nextRun', [next, points]);
      setPlanned({ of: log.id, carried, next: found });
    } catch (error) {
      setProblem(errorMessage(error));
    }
  };

  return (
    <section class="next-plan" aria-labelledby="next-plan-title">
      <h3 id="next-plan-title">The next run</h3>
      <div class="answer-tools">
        <button type="button" class="is-first" onClick={() => void plan(props.log, props.fit, props.points)}>
          Plan the next from this
        </button>
      </div>
      <Show when={problem()}>
        {(why) => (
          <p class="answer-problem" role="alert">
            {why()}
          </p>
        )}
      </Show>
      <div role="status">
        <Show when={shown()}>
          {(now) => (
            <>
              <p>
                {now().carried} Undo takes it back. <a href="#bench">See it on the bench</a>.
              </p>
              <Show when={now().next} fallback={<p class="answer-quiet">Looking at what the readings say…</p>}>
                {(next) => (
                  <Show
                    when={next().facts.length > 0}
                    fallback={
                      <p class="answer-quiet">
                        The readings ask for no change: stop time and outlet were as they should be.
                      </p>
                    }
                  >
                    <ul class="rules">
                      <For each={next().facts}>{(fact) => <li>{messages().fact(fact)}</li>}</For>
                    </ul>
                  </Show>
                )}
              </Show>
            </>
          )}
        </Show>
      </div>
    </section>
  );
}
