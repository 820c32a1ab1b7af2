/** The numbers that matter, large enough for the last row. */
import { For } from 'solid-js';
import type { BigNumber } from '../../../sim/index.ts';

export function BigNumbersOf(props: { readonly numbers: readonly BigNumber[] }) {
  return (
    <dl class="big-numbers" classList={{ 'are-many': props.numbers.length > 2 }}>
      <For each={props.numbers}>
        {({ value, says }) => (
          <div>
            <dt>{says}</dt>
            <dd>{value}</dd>
          </div>
        )}
      </For>
    </dl>
  );
}
