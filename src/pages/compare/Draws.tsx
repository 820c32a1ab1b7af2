/** How far the paired draws have come, the way to stop them, and what a draw is; they start when the runs are left alone. */
import { debounce } from '@solid-primitives/scheduled';
import { createEffect, on, onCleanup, Show } from 'solid-js';
import {
  englishReader,
  recommendationMessages,
  USUAL_DRAWS,
  USUAL_SEED,
  type Recommendation,
  type RunResult,
  type UnitSystem,
} from '../../../sim/index.ts';
import { keptBandsFor } from '../../state/logbook-store.ts';
import { Progress } from '../parts/Progress.tsx';
import type { DrawsSession } from './draws-session.ts';

export interface DrawsProps {
  readonly session: DrawsSession;
  readonly results: readonly RunResult[];
  readonly recommendation: Recommendation | null;
  /** A run is still to come, or is worked out anew. */
  readonly waiting: boolean;
  readonly units: UnitSystem;
}

/** The draws start when the runs have been left alone for so long. */
const QUIET_MS = 700;

export function Draws(props: DrawsProps) {
  const isCurrent = () => props.session.isOf(props.results);
  const done = () => (isCurrent() ? props.session.found().length : 0);
  const total = () => USUAL_DRAWS * props.results.length;
  const isWhole = () => done() >= total();
  const start = () => {
    if (props.waiting) return;
    const own = props.results.map(({ scenario }) => keptBandsFor(scenario)?.bands ?? {});
    props.session.start(props.results, USUAL_DRAWS, USUAL_SEED, own);
  };
  const startSoon = debounce(start, QUIET_MS);
  createEffect(
    on([() => props.results, () => props.waiting], ([, waiting]) => {
      startSoon.clear();
      if (waiting || !isCurrent()) props.session.stop();
      if (!waiting && !isWhole()) startSoon();
    }),
  );
  onCleanup(() => {
    startSoon.clear();
    props.session.stop();
  });
  return (
    <div class="compare-draws">
      <Show when={!isWhole()}>
        <Progress
          words="runs of the draws"
          done={done()}
          of={total()}
          running={isCurrent() && props.session.running()}
          onCancel={() => props.session.stop()}
        />
        <Show when={isCurrent() && !props.session.running()}>
          <button type="button" onClick={start}>
            Try again
          </button>
        </Show>
      </Show>
      <Show when={props.recommendation}>
        {(found) => <p class="answer-quiet">{recommendationMessages(englishReader(props.units)).note(found())}</p>}
      </Show>
      <Show when={props.session.problem()}>
        {(told) => (
          <p class="answer-problem" role="alert">
            The draws stopped: {told()}
          </p>
        )}
      </Show>
    </div>
  );
}
