/** Where a figure comes from: in a word, opened to the whole line. */
import type { Provenance } from '../../../sim/index.ts';
import { provenanceLine, provenanceShort } from '../bench/pickers/provenance-words.ts';
import './source.css';

export function Source(props: { readonly of: Provenance }) {
  return (
    <details class="source">
      <summary>
        {provenanceShort(props.of.kind)}
        <span class="visually-hidden">: where this comes from</span>
      </summary>
      <span data-as-printed>{provenanceLine(props.of)}.</span>
    </details>
  );
}
