/** What the run comes to, in one line at the top, and the one thing worth trying. */
import { Index, Show } from 'solid-js';
import type { SaidFact, ScenarioPart } from '../../../sim/index.ts';
import { SentenceLink } from './SentenceLink.tsx';

export interface HeadlineProps {
  readonly lead: SaidFact;
  /** The next few things to know, in few words each. */
  readonly briefs: readonly SaidFact[];
  readonly suggestion: { readonly words: string; readonly act: () => void } | null;
  readonly stale: boolean;
  readonly onVisit: (part: ScenarioPart, time_s: number | null) => void;
}

export function Headline(props: HeadlineProps) {
  return (
    <section class="headline" classList={{ 'is-stale': props.stale }} aria-label="In one line">
      <p class={`headline-lead is-${props.lead.severity}`}>
        <SentenceLink fact={props.lead} onVisit={props.onVisit} />
      </p>
      <div class="headline-beside">
        <p class="headline-facts">
          <Index each={props.briefs}>
            {(fact, index) => (
              <>
                <Show when={index > 0}> · </Show>
                <SentenceLink fact={fact()} onVisit={props.onVisit} />
              </>
            )}
          </Index>
        </p>
        <Show when={props.suggestion}>
          {(suggestion) => (
            <p class="headline-try screen-only">
              <span>Try this: </span>
              <button type="button" onClick={() => suggestion().act()}>
                {suggestion().words}
              </button>
            </p>
          )}
        </Show>
      </div>
    </section>
  );
}
