/** Grid, numbers and staffs of flags, under the traces. */
import { For, Index, Show } from 'solid-js';
import { formatNumber } from '../../../sim/index.ts';
import type { Flag } from '../model/event-words.ts';
import { pixelOf, type PreparedChart } from '../model/prepare.ts';

export interface AxesProps {
  readonly prepared: PreparedChart;
  readonly flags: readonly Flag[];
}

export function Axes(props: AxesProps) {
  const layout = () => props.prepared.layout;
  const across = (x: number) => layout().left + pixelOf(props.prepared, x);
  const inside = () => props.flags.filter(({ x }) => x >= props.prepared.xDomain[0] && x <= props.prepared.xDomain[1]);

  return (
    <svg class="chart-axes" width={layout().width} height={layout().height} aria-hidden="true">
      <Index each={props.prepared.ticks}>
        {(tick) => (
          <>
            <line
              class="chart-grid"
              x1={across(tick().at)}
              x2={across(tick().at)}
              y1={layout().lanes[0]?.top ?? 0}
              y2={layout().axisTop}
            />
            <text class="chart-tick" x={across(tick().at)} y={layout().axisTop + layout().line} text-anchor="middle">
              {tick().words}
            </text>
          </>
        )}
      </Index>
      <Index each={props.prepared.lanes}>
        {(lane, index) => (
          <>
            <For each={lane().ticks}>
              {(tick) => {
                const y = () => lane().y.offset + lane().y.slope * tick;
                return (
                  <>
                    <line class="chart-grid" x1={layout().left} x2={layout().right} y1={y()} y2={y()} />
                    <text class="chart-tick" x={layout().left - 8} y={y()} dy="0.32em" text-anchor="end">
                      {formatNumber(tick, lane().tickDecimals)}
                    </text>
                  </>
                );
              }}
            </For>
            <text
              class="chart-tick"
              x={layout().left - 8}
              y={(layout().lanes[index]?.top ?? 0) - layout().line * 0.65}
              text-anchor="end"
            >
              {lane().unit.label}
            </text>
            <Show when={props.prepared.lanes.length > 1 || lane().lane.kind === 'strip'}>
              <text class="chart-tick" x={layout().left} y={(layout().lanes[index]?.top ?? 0) - layout().line * 0.65}>
                {lane().lane.title}
              </text>
            </Show>
          </>
        )}
      </Index>
      <Index each={inside()}>
        {(flag) => (
          <line
            class={`chart-staff is-${flag().severity}`}
            x1={across(flag().x)}
            x2={across(flag().x)}
            y1={layout().lanes[0]?.top ?? 0}
            y2={layout().axisTop}
          />
        )}
      </Index>
    </svg>
  );
}
