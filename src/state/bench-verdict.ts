/** The verdict on the run at hand, and the one thing worth trying, for whatever part of the page says them. */
import { createMemo, type Accessor } from 'solid-js';
import { suggestionFor } from './suggestion.ts';
import { verdictOf, type Verdict } from './verdict-sentences.ts';
import { formatQuantity, type ScenarioPart } from '../../sim/index.ts';
import { useBench } from './bench.ts';
import { fieldValue, liveControls, type LiveControl, type LiveReach } from './live-controls.ts';

export interface BenchVerdict {
  readonly verdict: Accessor<Verdict>;
  readonly suggestion: Accessor<{ readonly words: string; readonly act: () => void } | null>;
  /** Opens the part a sentence speaks of, at the minute it speaks of. */
  visit(part: ScenarioPart, time_s: number | null): void;
}

export function createBenchVerdict(live: LiveReach): BenchVerdict {
  const bench = useBench();
  const verdict = createMemo(() => verdictOf(bench.result(), bench.units(), bench.holds()));
  const controls = createMemo(() => liveControls(bench.scenario(), bench.loaded(), live.reach(), live.toldMoment_s()));
  const turn = (control: LiveControl, value: number) =>
    bench.change(control.path, fieldValue(control, value, live.reach(), live.moment_s()));

  const suggestion = createMemo(() => {
    const [heat, tap] = controls();
    if (!heat || !tap) return null;
    const length = (length_m: number) => formatQuantity(length_m, 'm', bench.units(), { hint: 'run' });
    const wish = suggestionFor(
      bench.result(),
      verdict(),
      { heat: heat.value, tap_kg_s: tap.value },
      bench.holds(),
      length,
    );
    if (!wish) return null;
    const act = () => {
      if (wish.kind === 'heat') turn(heat, wish.setting);
      else if (wish.kind === 'tap') turn(tap, wish.flow_kg_s);
      else bench.change('condenser.length_m', wish.length_m);
    };
    return { words: wish.words, act };
  });

  return {
    verdict,
    suggestion,
    visit: (part, time_s) => {
      bench.select(part);
      if (time_s === null) return;
      bench.pause();
      bench.setTime(time_s);
    },
  };
}
