/** Plants that never go into a still. */
import { For } from 'solid-js';
import type { PlantTexts } from './plant-texts.ts';
import { Source } from '../parts/Source.tsx';

export function NeverDistil(props: { readonly texts: PlantTexts }) {
  return (
    <section class="never-distil" aria-labelledby="never-distil-title">
      <h3 id="never-distil-title">Never distil these</h3>
      <ul>
        <For each={props.texts.neverDistil}>
          {({ plants, why }) => (
            <li>
              <strong class="is-bad">{plants}</strong> <span>{why}</span>
            </li>
          )}
        </For>
      </ul>
      <p>
        The list is not complete. Distil no plant that you cannot name for certain, and none that is not known to be
        safe.
      </p>
      <Source of={props.texts.neverDistilProvenance} />
      <p>
        Before you gather: ask the owner of the land, and check your local rules for protected plants, sprayed crops and
        quarantine. Owning a still may need a licence: ask your authority. What you sell falls under rules of its own.
      </p>
    </section>
  );
}
