/** The drawing, wired to the bench. It shows the still that was run, so that what moves in it fits its walls. */
import { createMediaQuery } from '@solid-primitives/media';
import { StillDrawing } from '../../drawing/StillDrawing.tsx';
import { useBench } from '../../state/bench.ts';
import { REDUCED_MOTION } from '../../ui/reduced-motion.ts';

export function BenchDrawing() {
  const bench = useBench();
  const reducedMotion = createMediaQuery(REDUCED_MOTION);
  return (
    <StillDrawing
      scenario={bench.result().scenario}
      result={bench.result()}
      time_s={bench.time_s}
      selected={bench.selected()}
      touched={bench.touched()}
      fills
      onSelect={(part) => bench.select(part)}
      units={bench.units()}
      reducedMotion={reducedMotion()}
      stale={bench.stale()}
    />
  );
}
