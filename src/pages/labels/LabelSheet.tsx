/** Labels to print on plain paper, cut out and glued on. */
import { For, Show } from 'solid-js';
import type { LabelSize, LabelText } from './label-sizes.ts';
import './labels.css';

export interface LabelSheetProps {
  readonly of: LabelText;
  readonly size: LabelSize;
  readonly count: number;
}

/** More than a sheet of paper takes of the smallest. */
export const MOST_LABELS = 40;

/** Prints the labels of the page and nothing else. */
export function printLabels(): void {
  const { dataset } = document.documentElement;
  dataset['printing'] = 'labels';
  print();
  delete dataset['printing'];
}

export function LabelSheet(props: LabelSheetProps) {
  return (
    <section class="label-sheet" aria-label="Labels to print">
      <For each={Array.from({ length: Math.min(MOST_LABELS, props.count) }, (_, k) => k)}>
        {(k) => (
          <div
            class="label"
            data-size={props.size.id}
            style={{ width: `${props.size.width_m * 1000}mm`, 'min-height': `${props.size.height_m * 1000}mm` }}
            aria-hidden={k > 0 ? 'true' : undefined}
          >
            <p class="label-name">{props.of.name}</p>
            <Show when={props.of.under}>
              <p class="label-under">{props.of.under}</p>
            </Show>
            <For each={props.of.lines}>{(line) => <p>{line}</p>}</For>
            <p class="label-cautions">{props.of.cautions.join(' ')}</p>
          </div>
        )}
      </For>
    </section>
  );
}
