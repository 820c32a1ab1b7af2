/** The drawing, wired to the bench. */
import { StillDrawing } from '../drawing/StillDrawing.tsx';
import { useBench } from './bench.ts';

export function BenchDrawing() {
  const bench = useBench();
  return <StillDrawing result={bench.result()} time_s={bench.time_s()} units={bench.units()} selected={bench.selected()} onSelect={bench.select} />;
}
