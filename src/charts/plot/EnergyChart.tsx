/** The energy flow up to the time mark. */
import { createMemo, Index, Show, type JSX } from 'solid-js';
import { type RunRecord, formatDuration, formatQuantity } from '../../../sim/index.ts';
import { energyPicture, energyTable } from '../export/energy-svg.ts';
import { CHART_NAMES } from '../model/chart.ts';
import { energyLedger } from '../model/energy-ledger.ts';
import { isWide, partHeight } from '../model/layout.ts';
import { energyDiagram, PLACE_WORDS } from '../sankey/energy-diagram.ts';
import { ChartFrame } from './ChartFrame.tsx';
import { createVisibility } from '../../ui/visibility.ts';
import type { Scene } from './scene.ts';

export interface EnergyChartProps {
  readonly record: RunRecord;
  readonly scene: Scene;
  readonly open: boolean;
  readonly onToggle: (open: boolean) => void;
  readonly head?: JSX.Element;
}

export const ENERGY_SAYS =
  'Where the energy has gone so far: what missed the pot, what the cooling water took, what was lost to the air, and what is still in the still.';

export function EnergyChart(props: EnergyChartProps) {
  const { near, watch } = createVisibility();
  const scene = () => props.scene;
  const time_s = createMemo<number>(
    (before) => (near() ? scene().rowTime_s() : (scene().restedTime_s?.() ?? before)),
    0,
  );
  const ledger = createMemo(() => energyLedger(props.record, time_s()));
  const scale = () => scene().look().textScale;
  const below = () => Math.round(20 * scale());
  const height = () => {
    const given = scene().height?.();
    return given === undefined
      ? Math.round(partHeight(scene().width(), scale()) * 1.5)
      : Math.max(40, given - top() - below());
  };
  const top = () => Math.round(40 * scale());
  const diagram = createMemo(() => {
    const room = isWide(scene().width(), scale()) ? 168 : 132;
    return energyDiagram(ledger(), {
      left: 0,
      right: scene().width() - Math.round(room * scale()),
      top: top(),
      height: height(),
      textScale: scale(),
    });
  });
  const amount = (energy_J: number) => {
    const share = ledger().fuel_J > 0 ? ` · ${Math.round((energy_J / ledger().fuel_J) * 100)}\u202f%` : '';
    return `${formatQuantity(energy_J, 'J', scene().units())}${share}`;
  };
  const note = () => `to ${formatDuration(time_s())}`;
  const summary = () =>
    diagram()
      .places.map(({ place, energy_J }) => `${PLACE_WORDS[place].label} ${amount(energy_J)}`)
      .join(', ');

  return (
    <ChartFrame
      title={CHART_NAMES.energy}
      note={note()}
      runName={scene().runName()}
      open={props.open}
      onToggle={(open) => props.onToggle(open)}
      head={props.head}
      bringUp={scene().bringUp}
      units={scene().units()}
      table={() => energyTable(ledger(), scene().units())}
      svg={() => energyPicture(ledger(), scene().look().palette, scene().units(), `${scene().runName()}, ${note()}`)}
    >
      <div ref={watch}>
        <Show when={diagram().places.length > 0} fallback={<p class="chart-empty">No energy has flowed yet.</p>}>
          <svg
            class="chart-energy"
            role="img"
            aria-label={`${ENERGY_SAYS} ${summary()}`}
            width={scene().width()}
            height={height() + top() + below()}
          >
            <Index each={diagram().flows}>
              {(flow) => (
                <path
                  d={flow().path}
                  stroke-width={flow().width}
                  style={{ stroke: `var(--${flow().tint})` }}
                  class="chart-energy-flow"
                />
              )}
            </Index>
            <Index each={diagram().places}>
              {(place) => (
                <>
                  <rect
                    x={place().x}
                    y={place().top}
                    width={place().width}
                    height={place().height}
                    style={{ fill: `var(--${PLACE_WORDS[place().place].ink})` }}
                  />
                  <Show when={place().label.y}>
                    {(y) => (
                      <text x={place().label.x} y={y()} text-anchor={place().label.anchor}>
                        <tspan x={place().label.x} dy="-0.2em">
                          {PLACE_WORDS[place().place].label}
                        </tspan>
                        <tspan x={place().label.x} dy="1.2em">
                          {amount(place().energy_J)}
                        </tspan>
                      </text>
                    )}
                  </Show>
                </>
              )}
            </Index>
          </svg>
        </Show>
      </div>
    </ChartFrame>
  );
}
