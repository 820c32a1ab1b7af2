/** Labels to print on plain paper, cut out and glued on. */
import { For, Show } from 'solid-js';
import type { LabelSize, LabelText } from './label-sizes.ts';
import './labels.css';

export interface LabelSheetProps {
  /** One text a label. */
  readonly of: readonly LabelText[];
  readonly size: LabelSize;
}

/** Labels of a harvest; a page that lays out more would only be slow. */
export const MOST_LABELS = 500;

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
      <For each={props.of.slice(0, MOST_LABELS)}>
        {(text, k) => (
          <div
            class="label"
            data-size={props.size.id}
            style={{ width: `${props.size.width_m * 1000}mm`, 'min-height': `${props.size.height_m * 1000}mm` }}
            aria-hidden={k() > 0 && k() < props.of.length - 1 ? 'true' : undefined}
          >
            <p class="label-name">{text.name}</p>
            <Show when={text.under}>
              <p class="label-under">{text.under}</p>
            </Show>
            <For each={text.lines}>{(line) => <p>{line}</p>}</For>
            <p class="label-cautions">{text.cautions.join(' ')}</p>
          </div>
        )}
      </For>
      <Show when={props.of.length > MOST_LABELS}>
        <p class="screen-only">
          {MOST_LABELS} labels are laid out here, of {props.of.length}. Print them again for the others.
        </p>
      </Show>
    </section>
  );
}
