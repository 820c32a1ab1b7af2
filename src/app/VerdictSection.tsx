/** The verdict, wired to the bench. */
import { createMemo } from 'solid-js';
import { ALWAYS } from '../panels/cautions.ts';
import { suggestionFor } from '../panels/suggestion.ts';
import { verdictOf } from '../panels/verdict-sentences.ts';
import { VerdictPanel } from '../panels/verdict.tsx';
import { formatQuantity } from '../units/index.ts';
import { useBench } from './bench.ts';
import { fieldValue, liveControls } from './live-controls.ts';
import type { LiveReach } from './LivePanel.tsx';

export function VerdictSection(props: { readonly live: LiveReach; readonly onVisit: () => void }) {
  const bench = useBench();
  const verdict = createMemo(() => verdictOf(bench.result(), bench.units()));
  const controls = () => liveControls(bench.scenario(), bench.loaded(), props.live.reach(), props.live.moment_s());
  const suggestion = createMemo(() => {
    const [heat, tap] = controls();
    if (!heat || !tap) return null;
    const length = (length_m: number) => formatQuantity(length_m, 'm', bench.units(), { hint: 'run' });
    return suggestionFor(bench.result(), verdict(), { heat: heat.value, tap_kg_s: tap.value }, null, length);
  });
  const act = () => {
    const wish = suggestion();
    if (!wish) return;
    const [heat, tap] = controls();
    const write = (control: typeof heat, value: number) => {
      if (control) bench.change(control.path, fieldValue(control, value, props.live.reach(), props.live.moment_s()));
    };
    if (wish.kind === 'heat') write(heat, wish.setting);
    else if (wish.kind === 'tap') write(tap, wish.flow_kg_s);
    else bench.change('condenser.length_m', wish.length_m);
  };
  return (
    <VerdictPanel
      verdict={verdict()}
      staleBecause={bench.staleBecause()}
      running={bench.running()}
      suggestion={suggestion() ? { words: suggestion()?.words ?? '', act } : null}
      cautions={ALWAYS}
      onUndo={() => bench.undo()}
      onVisit={(part, time_s) => {
        bench.select(part);
        if (time_s !== null) {
          bench.pause();
          bench.setTime(time_s);
        }
        props.onVisit();
      }}
    />
  );
}
