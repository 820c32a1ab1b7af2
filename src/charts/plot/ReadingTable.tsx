/** Names and values in fixed places under a chart too narrow to hold them beside it. */
import { Index, Show } from 'solid-js';
import type { EndLabel } from '../model/end-labels.ts';
import { colourOf, type Palette } from '../model/palette.ts';

export interface ReadingTableProps {
  readonly labels: readonly EndLabel[];
  readonly palette: Palette;
  readonly valueOf: (label: EndLabel) => string;
}

export function ReadingTable(props: ReadingTableProps) {
  return (
    <dl class="chart-readings">
      <Index each={props.labels}>
        {(label) => (
          <div class="chart-reading">
            <dt style={{ color: label().patch ? undefined : colourOf(props.palette, label().ink) }}>
              <Show when={label().patch}>
                <span class="chart-patch" style={{ background: colourOf(props.palette, label().ink) }} />
              </Show>
              {label().label}
            </dt>
            <dd>{props.valueOf(label())}</dd>
          </div>
        )}
      </Index>
    </dl>
  );
}
