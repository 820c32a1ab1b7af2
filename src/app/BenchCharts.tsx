/** The charts, wired to the bench. */
import { createMemo } from 'solid-js';
import { ChartColumn } from '../charts/ChartColumn.tsx';
import { useBench } from './bench.ts';

export function BenchCharts() {
  const bench = useBench();
  const open = createMemo(() => Object.fromEntries(bench.foldedCharts().map((id) => [id, false])));
  return (
    <ChartColumn
      result={bench.result()}
      ghost={bench.runBefore() ?? undefined}
      time_s={bench.time_s}
      onScrub={(time_s) => bench.setTime(time_s)}
      units={bench.units()}
      theme={bench.shownTheme()}
      stale={bench.stale()}
      open={open()}
      onToggle={(id, isOpen) => {
        const others = bench.foldedCharts().filter((folded) => folded !== id);
        bench.setFoldedCharts(isOpen ? others : [...others, id]);
      }}
    />
  );
}
