/** Names and values beside the ends of the lines. Names stand still; only the numbers change. */
import { Index, Show } from 'solid-js';
import type { EndLabel } from '../model/end-labels.ts';
import { leaderPath, type ChartLayout } from '../model/layout.ts';
import { colourOf, type Palette } from '../model/palette.ts';

export interface EndLabelsProps {
  readonly labels: readonly EndLabel[];
  readonly layout: ChartLayout;
  readonly palette: Palette;
  /** Whether there is room for values beside the names. */
  readonly withValues: boolean;
  readonly valueOf: (label: EndLabel) => string;
}

export function EndLabels(props: EndLabelsProps) {
  const placed = () => props.labels.filter((label) => label.y !== null);
  return (
    <>
      <svg class="chart-leaders" width={props.layout.width} height={props.layout.height} aria-hidden="true">
        <Index each={placed()}>
          {(label) => <path d={leaderPath(props.layout, label().endX, label().wantedY, label().y ?? 0)} />}
        </Index>
      </svg>
      <ul
        class="chart-names"
        aria-hidden={props.withValues ? undefined : 'true'}
        style={{ left: `${props.layout.right + 14}px` }}
      >
        <Index each={placed()}>
          {(label) => (
            <li
              class="chart-name"
              title={label().says}
              style={{
                top: `${(label().y ?? 0) - props.layout.line / 2}px`,
                height: `${props.layout.line}px`,
                color: label().patch ? undefined : colourOf(props.palette, label().ink),
              }}
            >
              {/* Where there is no room the patch stands in the table below; here the leader tells the layer. */}
              <Show when={label().patch && props.withValues}>
                <span class="chart-patch" style={{ background: colourOf(props.palette, label().ink) }} />
              </Show>
              <span class="chart-name-words">{label().label}</span>
              <Show when={props.withValues}>
                <span class="chart-value">{props.valueOf(label())}</span>
              </Show>
            </li>
          )}
        </Index>
      </ul>
    </>
  );
}
