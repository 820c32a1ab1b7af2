/** The chart beside the still, wired to the bench. */
import { createDeferred } from 'solid-js';
import { ChartOfChoice } from '../../charts/ChartOfChoice.tsx';
import { useBench } from '../../state/bench.ts';

const LONGEST_WAIT_MS = 100;

export function BenchChart() {
  const bench = useBench();
  /** It follows a change a moment after the drawing and the verdict, so that those can follow the hand. */
  const runs = createDeferred(() => ({ now: bench.result(), before: bench.runBefore() }), {
    timeoutMs: LONGEST_WAIT_MS,
  });
  return (
    <ChartOfChoice
      id={bench.chart()}
      onChoose={(id) => bench.setChart(id)}
      result={runs().now}
      ghost={runs().before ?? undefined}
      end_s={bench.axisEnd_s()}
      time_s={bench.time_s}
      onScrub={(time_s) => bench.setTime(time_s)}
      units={bench.units()}
      theme={bench.shownTheme()}
      stale={bench.stale()}
    />
  );
}
