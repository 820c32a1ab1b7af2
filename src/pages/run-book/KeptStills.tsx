/** Stills that were fitted to a log and kept under a name. */
import { For, Show } from 'solid-js';
import type { KeptStill } from '../../state/logbook-schema.ts';

export interface KeptStillsProps {
  readonly stills: readonly KeptStill[];
  readonly onLoad: (still: KeptStill) => void;
  readonly onRemove: (still: KeptStill) => void;
}

export function KeptStills(props: KeptStillsProps) {
  return (
    <section class="kept-stills" aria-labelledby="kept-title">
      <h3 id="kept-title">Fitted stills</h3>
      <Show
        when={props.stills.length > 0}
        fallback={<p class="answer-quiet">A still that you save after a fit appears here, ready for the next plan.</p>}
      >
        <ul>
          <For each={props.stills}>
            {(still) => (
              <li class="kept-still">
                <span class="kept-name">{still.name}</span>
                <button type="button" onClick={() => props.onLoad(still)}>
                  Put on the bench<span class="visually-hidden"> {still.name}</span>
                </button>
                <button type="button" class="word" onClick={() => props.onRemove(still)}>
                  Delete<span class="visually-hidden"> {still.name}</span>
                </button>
              </li>
            )}
          </For>
        </ul>
      </Show>
    </section>
  );
}
