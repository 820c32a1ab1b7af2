/** Constituents of the oil and their shares. They are handed on only when they add up; until then they wait here. */
import { createEffect, createMemo, createSignal, For, Index, Show } from 'solid-js';
import { QuantityField } from '../../../ui/QuantityField.tsx';
import { formatQuantity, type UnitSystem } from '../../../../sim/index.ts';
import {
  addsUp,
  MOST_CONSTITUENTS,
  normalised,
  shareSum,
  withAnother,
  withConstituent,
  without,
  withShare,
  type Composition,
} from './composition-draft.ts';
import { constituentIds, constituentName } from './constituent-names.ts';

export interface CompositionEditorProps {
  readonly rows: Composition;
  readonly units: UnitSystem;
  readonly onChange: (rows: Composition) => void;
}

export function CompositionEditor(props: CompositionEditorProps) {
  // A draft belongs to the composition it was begun from; when that changes from outside, the draft is gone.
  const [draft, setDraft] = createSignal<{ readonly of: Composition; readonly rows: Composition } | null>(null);
  const rows = createMemo(() => {
    const waiting = draft();
    return waiting !== null && waiting.of === props.rows ? waiting.rows : props.rows;
  });
  const waiting = () => rows() !== props.rows;
  const put = (next: Composition) => {
    if (addsUp(next)) {
      setDraft(null);
      props.onChange(normalised(next));
    } else setDraft({ of: props.rows, rows: next });
  };
  const sum = () => formatQuantity(shareSum(rows()), '1', props.units, { hint: 'share', decimals: 2 });
  return (
    <div class="list-editor">
      <ul class="list-rows">
        <Index each={rows()}>
          {(row, index) => {
            let select!: HTMLSelectElement;
            const choices = createMemo(() =>
              constituentIds.filter(
                (id) => id === row().constituent || !rows().some(({ constituent }) => constituent === id),
              ),
            );
            // A list that loses the option it stood on stands on another, after that option was chosen.
            createEffect(() => {
              choices();
              select.value = row().constituent;
            });
            return (
              <li class="list-row">
                <select
                  ref={select}
                  class="list-what"
                  aria-label={`Constituent ${index + 1}`}
                  onChange={(event) => put(withConstituent(rows(), index, event.currentTarget.value))}
                >
                  <For each={choices()}>{(id) => <option value={id}>{constituentName(id)}</option>}</For>
                </select>
                <QuantityField
                  label={`Share of ${constituentName(row().constituent)}`}
                  labelHidden
                  value={row().share}
                  unit="1"
                  hint="share"
                  system={props.units}
                  min={0}
                  max={1}
                  onCommit={(share) => put(withShare(rows(), index, share))}
                />
                <button
                  type="button"
                  class="word"
                  disabled={rows().length === 1}
                  onClick={() => put(without(rows(), index))}
                >
                  remove<span class="visually-hidden"> {constituentName(row().constituent)}</span>
                </button>
              </li>
            );
          }}
        </Index>
      </ul>
      <div class="list-foot">
        <span class="list-sum" role="status">
          Together {sum()}
          <Show when={waiting()}>, not yet taken over: shares must add up to 100 %.</Show>
        </span>
        <Show when={waiting()}>
          <button type="button" onClick={() => put(normalised(rows()))}>
            Scale to 100 %
          </button>
          <button type="button" class="word" onClick={() => setDraft(null)}>
            leave it as it was
          </button>
        </Show>
        <button
          type="button"
          class="word"
          disabled={rows().length >= MOST_CONSTITUENTS}
          onClick={() => put(withAnother(rows(), constituentIds))}
        >
          add a constituent
        </button>
      </div>
    </div>
  );
}
