/** The drawing, wired to the bench. It shows the still that was run, so that what moves in it fits its walls. */
import { createSignal, onCleanup } from 'solid-js';
import { StillDrawing } from '../../drawing/StillDrawing.tsx';
import { useBench } from '../../state/bench.ts';

const CALM = '(prefers-reduced-motion: reduce)';

export function BenchDrawing() {
  const bench = useBench();
  const query = matchMedia(CALM);
  const [calm, setCalm] = createSignal(query.matches);
  const follow = () => setCalm(query.matches);
  query.addEventListener('change', follow);
  onCleanup(() => query.removeEventListener('change', follow));
  return (
    <StillDrawing
      scenario={bench.result().scenario}
      result={bench.result()}
      time_s={bench.time_s}
      selected={bench.selected()}
      onSelect={(part) => bench.select(part)}
      units={bench.units()}
      reducedMotion={calm()}
      stale={bench.stale()}
    />
  );
}
