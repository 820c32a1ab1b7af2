/** The verdict on the run at hand, and the one thing worth trying, for whatever part of the page says them. */
import { createMemo, type Accessor } from 'solid-js';
import {
  suggestionFor,
  suggestionMessage,
  verdictMessages,
  verdictOf,
  type SaidVerdict,
  type ScenarioPart,
} from '../../sim/index.ts';
import { useBench } from './bench.ts';
import { fieldValue, liveControls, type LiveControl, type LiveReach } from './live-controls.ts';

export interface BenchVerdict {
  readonly verdict: Accessor<SaidVerdict>;
  readonly suggestion: Accessor<{ readonly words: string; readonly act: () => void } | null>;
  /** Opens the part a sentence speaks of, at the minute it speaks of. */
  visit(part: ScenarioPart, time_s: number | null): void;
}

export function createBenchVerdict(live: LiveReach): BenchVerdict {
  const bench = useBench();
  const verdict = createMemo(() => verdictOf(bench.result(), bench.holds()));
  const said = createMemo(() => verdictMessages(verdict(), bench.reader()));
  const controls = createMemo(() => liveControls(bench.scenario(), bench.loaded(), live.reach(), live.toldMoment_s()));
  const turn = (control: LiveControl, value: number) =>
    bench.change(control.path, fieldValue(control, value, live.reach(), live.moment_s()));

  const suggestion = createMemo(() => {
    const [heat, tap] = controls();
    if (!heat || !tap) return null;
    const now = { heat: heat.value, tap_kg_s: tap.value };
    const wish = suggestionFor(bench.result(), verdict(), now, bench.holds());
    if (!wish) return null;
    const act = () => {
      if (wish.kind === 'lengthen') bench.change('condenser.length_m', wish.length_m);
      else if (wish.kind === 'tap-down') turn(tap, wish.flow_kg_s);
      else turn(heat, wish.setting);
    };
    return { words: suggestionMessage(wish, bench.reader()), act };
  });

  return {
    verdict: said,
    suggestion,
    visit: (part, time_s) => {
      bench.select(part);
      if (time_s === null) return;
      bench.pause();
      bench.setTime(time_s);
    },
  };
}
