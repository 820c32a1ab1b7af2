/** Plants that are mistaken for the one that is meant, the deadly ones first, and what tells them apart. */
import { For, Show } from 'solid-js';
import { libraryText, type Reader } from '../../../sim/index.ts';
import type { LookAlike } from '../../../sim/library-texts.ts';
import { Source } from '../parts/Source.tsx';
import { bySeverity, SEVERITY_WORDS } from './plant-rows.ts';

export interface LookAlikesProps {
  readonly of: readonly LookAlike[];
  readonly name: string;
  readonly reader: Reader;
}

export function LookAlikes(props: LookAlikesProps) {
  return (
    <section class="look-alikes" aria-label={`Look-alikes of ${props.name}`}>
      <h3>Do not mistake it</h3>
      <Show
        when={props.of.length > 0}
        fallback={<p class="answer-quiet">No look-alike is known to us. That is no proof that there is none.</p>}
      >
        <ul>
          <For each={bySeverity(props.of)}>
            {(each) => (
              <li class="look-alike" data-severity={each.severity}>
                <p>
                  <strong
                    classList={{ 'alarm-mark': each.severity === 'deadly', 'is-bad': each.severity !== 'quality' }}
                  >
                    {SEVERITY_WORDS[each.severity]}
                  </strong>{' '}
                  <span class="look-alike-plant">{each.plant}</span>
                </p>
                <p>{libraryText(each.tellApart, props.reader)}</p>
                <Source of={each.provenance} />
              </li>
            )}
          </For>
        </ul>
      </Show>
    </section>
  );
}
