/** How far a run that takes long has come, how long it will still take, and the way to stop it. */
import { Show, untrack } from 'solid-js';
import { formatDuration } from '../../sim/index.ts';
import { useBench } from '../state/bench.ts';
import type { Progress } from '../workers/progress.ts';
import './long-run.css';

/** Share of a run after which the time it took is gone by. */
const TELLING_SHARE = 0.03;

/** Nobody wants to see seconds of a minute go by. */
const rounded = (left_s: number): number =>
  left_s > 90 ? 60 * Math.ceil(left_s / 60) : left_s > 10 ? 5 * Math.ceil(left_s / 5) : Math.max(1, Math.ceil(left_s));

export interface LongRunLineProps {
  readonly longRun: Progress | 'stopped';
}

export function LongRunLine(props: LongRunLineProps) {
  const bench = useBench();
  const progress = () => (props.longRun === 'stopped' ? null : props.longRun);
  const start = { ms: performance.now(), share: untrack(progress)?.share ?? 0 };
  /** What it has taken so far says more than the estimate, once it is a little way. */
  const left_s = ({ share, whole_s }: Progress): number => {
    const come = share - start.share;
    const all_s = come > TELLING_SHARE ? (performance.now() - start.ms) / (1000 * come) : whole_s;
    return rounded(all_s * (1 - share));
  };
  return (
    <section class="long-run screen-only" aria-label="The run that is being worked out">
      <Show
        when={progress()}
        fallback={
          <>
            <p role="status">You stopped the run: what stands here is not of it.</p>
            <button type="button" onClick={() => bench.runAgain()}>
              Work it out
            </button>
          </>
        }
      >
        {(now) => (
          <>
            <p>
              <span role="status">This run takes a while.</span> About {formatDuration(left_s(now()))} to go; until then{' '}
              {bench.isRough() ? 'a run in coarser steps' : 'the run before it'} stands here.
            </p>
            <progress max={1} value={now().share} aria-label="Worked out so far" />
            <button type="button" onClick={() => bench.stopRun()}>
              Stop
            </button>
          </>
        )}
      </Show>
    </section>
  );
}
