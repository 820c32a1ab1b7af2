/** The charts, wired to the bench. */
import { createDeferred, createMemo } from 'solid-js';
import { ChartColumn } from '../../charts/ChartColumn.tsx';
import { useBench } from '../../state/bench.ts';

const LONGEST_WAIT_MS = 100;

export function BenchCharts() {
  const bench = useBench();
  /** The charts follow a change a moment after the drawing and the verdict, so that those can follow the hand. */
  const runs = createDeferred(() => ({ now: bench.result(), before: bench.runBefore() }), {
    timeoutMs: LONGEST_WAIT_MS,
  });
  const open = createMemo(() => Object.fromEntries(bench.foldedCharts().map((id) => [id, false])));
  return (
    <ChartColumn
      result={runs().now}
      ghost={runs().before ?? undefined}
      end_s={bench.axisEnd_s()}
      time_s={bench.time_s}
      onScrub={(time_s) => bench.setTime(time_s)}
      units={bench.units()}
      theme={bench.shownTheme()}
      stale={bench.stale()}
      onBringUp={(id) => {
        bench.setChart(id);
        scrollTo({ top: 0 });
      }}
      open={open()}
      onToggle={(id, isOpen) => {
        const others = bench.foldedCharts().filter((folded) => folded !== id);
        bench.setFoldedCharts(isOpen ? others : [...others, id]);
      }}
    />
  );
}
