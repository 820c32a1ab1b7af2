/** What the run comes to, in one line at the top, and the one thing worth trying. */
import { Index, Show } from 'solid-js';
import type { ScenarioPart } from '../../../sim/index.ts';
import { SentenceLink } from './SentenceLink.tsx';
import type { VerdictSentence } from '../../state/verdict-sentences.ts';

export interface HeadlineProps {
  readonly lead: VerdictSentence;
  /** A few more facts, in few words each. */
  readonly facts: readonly VerdictSentence[];
  readonly suggestion: { readonly words: string; readonly act: () => void } | null;
  readonly stale: boolean;
  readonly onVisit: (part: ScenarioPart, time_s: number | null) => void;
}

export function Headline(props: HeadlineProps) {
  return (
    <section class="headline" classList={{ 'is-stale': props.stale }} aria-label="In one line">
      <p class={`headline-lead is-${props.lead.severity}`}>
        <SentenceLink sentence={props.lead} onVisit={props.onVisit} />
      </p>
      <div class="headline-beside">
        <p class="headline-facts">
          <Index each={props.facts}>
            {(fact, index) => (
              <>
                <Show when={index > 0}> · </Show>
                <SentenceLink sentence={fact()} onVisit={props.onVisit} />
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
