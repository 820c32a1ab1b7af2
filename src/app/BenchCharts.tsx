/** The charts and schedules, wired to the bench. */
import { ChartColumn } from '../charts/ChartColumn.tsx';
import { useBench } from './bench.ts';

export function BenchCharts() {
  const bench = useBench();
  return <ChartColumn result={bench.result()} time_s={bench.time_s()} units={bench.units()} onTime={bench.setTime} />;
}
