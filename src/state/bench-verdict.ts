/** The verdict on the run at hand, and the one thing worth trying, for whatever part of the page says them. */
import { debounce } from '@solid-primitives/scheduled';
import { createEffect, createMemo, createSignal, on, untrack, type Accessor } from 'solid-js';
import {
  eventTimes,
  soFarMessage,
  suggestionMessage,
  verdictMessages,
  verdictOf,
  type SaidSoFar,
  type SaidSuggestion,
  type SaidVerdict,
  type ScenarioPart,
  type Suggestion,
} from '../../sim/index.ts';
import { useBench } from './bench.ts';
import { fieldValue, liveControls, type LiveReach } from './live-controls.ts';
import type { Offer, Writes } from './tried-suggestion.ts';

export interface BenchVerdict {
  readonly verdict: Accessor<SaidVerdict>;
  /** What the run has come to at the time mark, while it plays. */
  readonly soFar: Accessor<SaidSoFar | null>;
  /** Once the model has tried it. */
  readonly suggestion: Accessor<(SaidSuggestion & { readonly act: () => void }) | null>;
  /** Opens the part a sentence speaks of, at the minute it speaks of. */
  visit(part: ScenarioPart, time_s: number | null): void;
}

/** How long the bench must be quiet before the model tries something of its own. */
const QUIET_MS = 700;
/** Run time between two sentences of what has happened so far. */
const TOLD_EVERY_S = 60;

export function createBenchVerdict(live: LiveReach): BenchVerdict {
  const bench = useBench();
  const verdict = createMemo(() => verdictOf(bench.result(), bench.holds()));
  const said = createMemo(() => verdictMessages(verdict(), bench.reader()));

  /** No oftener than a sentence can be read. */
  const toldAt_s = createMemo(() => Math.floor(bench.time_s() / TOLD_EVERY_S) * TOLD_EVERY_S);
  const soFar = createMemo(() => (bench.playing() ? soFarMessage(bench.result(), toldAt_s(), bench.reader()) : null));

  const [offer, setOffer] = createSignal<Offer | null>(null);
  let round = 0;
  let turn = 0;

  const tryNow = async (mine: number) => {
    const scenario = bench.scenario();
    const [reach, moment_s] = [live.reach(), live.moment_s()];
    const controls = liveControls(scenario, bench.loaded(), reach, moment_s, eventTimes(bench.result().summary));
    const [heat, tap] = controls;
    if (!heat || !tap) return;
    const writesOf = (wish: Suggestion): Writes => {
      switch (wish.kind) {
        case 'heat':
          return { [heat.path]: fieldValue(heat, wish.setting, reach, moment_s) };
        case 'tap':
          return { [tap.path]: fieldValue(tap, wish.flow_kg_s, reach, moment_s) };
        case 'length':
          return { 'condenser.length_m': wish.length_m };
        case 'charge':
          return { 'charge.mass_kg': wish.mass_kg };
      }
    };
    const { findOffer } = await import('./tried-suggestion.ts');
    const found = await findOffer({
      result: bench.result(),
      verdict: verdict(),
      scenario,
      now: { heat: scenario.heat.control === 'schedule' ? heat.value : null, tap_kg_s: tap.value },
      enough: bench.holds(),
      turn,
      writesOf,
      isWanted: () => mine === round,
    });
    if (mine !== round) return;
    turn += 1;
    setOffer(found);
  };
  const trySoon = debounce((mine: number) => void untrack(() => tryNow(mine)), QUIET_MS);
  createEffect(
    on([bench.result, bench.running, bench.stale, bench.holds, live.reach], ([, running, stale]) => {
      round += 1;
      setOffer(null);
      trySoon.clear();
      if (!running && !stale) trySoon(round);
    }),
  );

  const suggestion = createMemo(() => {
    const found = offer();
    return found && { ...suggestionMessage(found.tried, bench.reader()), act: () => bench.changeMany(found.writes) };
  });

  return {
    verdict: said,
    soFar,
    suggestion,
    visit: (part, time_s) => {
      bench.select(part);
      if (time_s === null) return;
      bench.pause();
      bench.setTime(time_s);
    },
  };
}
