/**
 * Says to a screen reader what a playing run passes, no more often than one can listen to, and what a change of the still
 * has done to its worst fact: that an alarm is raised or cleared.
 */
import { createEffect, createMemo, createSignal, on } from 'solid-js';
import { eventMessage, verdictMessages, verdictOf } from '../../../sim/index.ts';
import { useBench } from '../../state/bench.ts';

const QUIET_MS = 2000;
/** A longer move of the time mark is a jump, not playing. */
const LONGEST_STRIDE_S = 400;

export function Announcer() {
  const bench = useBench();
  const [words, setWords] = createSignal('');
  let last_ms = -Infinity;

  createEffect(
    on(bench.time_s, (now_s, before_s) => {
      if (before_s === undefined || !bench.playing() || now_s <= before_s || now_s - before_s > LONGEST_STRIDE_S)
        return;
      const passed = bench.result().events.findLast(({ time_s }) => time_s > before_s && time_s <= now_s);
      if (!passed) return;
      const now_ms = performance.now();
      if (passed.severity !== 'alarm' && now_ms - last_ms < QUIET_MS) return;
      last_ms = now_ms;
      setWords(eventMessage(passed, bench.reader()).sentence);
    }),
  );

  /** Once a change has been run. */
  const settled = createMemo<ReturnType<typeof bench.result>>(
    (before) => (bench.running() ? before : bench.result()),
    bench.result(),
  );
  createEffect(
    on(settled, (now, before) => {
      if (before === undefined || now === before) return;
      const [is, was] = [verdictOf(now).lead, verdictOf(before).lead];
      const isRaised = is.severity === 'alarm' && is.kind !== was.kind;
      const isCleared = was.severity === 'alarm' && is.severity !== 'alarm';
      if (!isRaised && !isCleared) return;
      const { lead } = verdictMessages(verdictOf(now), bench.reader());
      setWords(lead.advice !== null && isRaised ? `${lead.sentence} ${lead.advice}` : lead.sentence);
    }),
  );

  // What was said is said; it must not stand there in the units of before.
  createEffect(on(bench.reader, () => setWords(''), { defer: true }));

  return (
    <p class="visually-hidden" role="status">
      {words()}
    </p>
  );
}
