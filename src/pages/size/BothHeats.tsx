/** The length at the plan and at full heat, typical and for nine runs in ten; and for which of them tubes are sized. */
import { For, Show } from 'solid-js';
import { sizingMessages, type Reader, type TubeSize } from '../../../sim/index.ts';
import type { Basis } from '../../state/size-choices.ts';

export interface BothHeatsProps {
  readonly basis: Basis;
  readonly onBasis: (basis: Basis) => void;
  /** `null` while it is looked for. */
  readonly sizes: Readonly<Record<Basis, TubeSize | null>>;
  readonly reader: Reader;
}

const ROWS = [
  { basis: 'plan', words: 'Your heat plan' },
  { basis: 'full-heat', words: 'Full heat' },
] as const;

export function BothHeats(props: BothHeatsProps) {
  const messages = () => sizingMessages(props.reader);
  const known = () => props.sizes.plan ?? props.sizes['full-heat'];
  return (
    <table class="both-heats">
      <caption class="visually-hidden">Length of your tube, by heat and by how sure it must be</caption>
      <thead>
        <tr>
          <th scope="col">Size it for</th>
          <th scope="col">Typical run</th>
          <th scope="col">
            <Show when={known()} fallback="Nine runs of ten">
              {(size) => <>{messages().inRuns(size())}</>}
            </Show>
          </th>
        </tr>
      </thead>
      <tbody>
        <For each={ROWS}>
          {({ basis, words }) => (
            <tr classList={{ 'is-chosen': props.basis === basis }}>
              <th scope="row">
                <label class="choice-radio">
                  <input
                    type="radio"
                    name="size-basis"
                    checked={props.basis === basis}
                    onChange={() => props.onBasis(basis)}
                  />{' '}
                  {words}
                </label>
              </th>
              <Show
                when={props.sizes[basis]}
                fallback={
                  <>
                    <td>…</td>
                    <td>…</td>
                  </>
                }
              >
                {(size) => (
                  <>
                    <td>{messages().lengthInCell(size().typical_m, size())}</td>
                    <td>{messages().lengthInCell(size().length_m, size())}</td>
                  </>
                )}
              </Show>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}
