/**
 * All charts of a run in one column: common gutters, one time axis, one time mark, one reading line. Drag in a chart to
 * move the time mark.
 */
import { createMemo, createSignal, Index, Show, type Accessor } from 'solid-js';
import { bedHeight, captureByDropSize, englishReader, rowAt, type RunResult } from '../../sim/index.ts';
import { bedChart } from './catalogue/bed.ts';
import { condenserChart, condenserExtents, condensingEnd, tubeLength } from './catalogue/condenser.ts';
import { coolingChart } from './catalogue/cooling.ts';
import { captureWords, cutSizeFlag, dropDomain, dropsChart } from './catalogue/drops.ts';
import { heatChart } from './catalogue/heat.ts';
import { oilChart } from './catalogue/oil.ts';
import { oilNames } from './catalogue/oil-names.ts';
import { recoveryChart, type RecoveryBand, type RecoveryPoint } from './catalogue/recovery.ts';
import type { NamedRun } from './catalogue/runs.ts';
import { steamChart } from './catalogue/steam.ts';
import { temperaturesChart } from './catalogue/temperatures.ts';
import type { ChartId } from './model/chart.ts';
import { flagsOf } from './model/event-words.ts';
import { gutters, type Gutters } from './model/layout.ts';
import type { UnitSystem } from './model/measure.ts';
import { EnergyChart } from './plot/EnergyChart.tsx';
import { FlagRow } from './plot/FlagRow.tsx';
import { createLook, createWidth } from './plot/look.ts';
import { MomentChart } from './plot/MomentChart.tsx';
import type { Scene } from './plot/scene.ts';
import { TimeChart } from './plot/TimeChart.tsx';
import { createDeferred } from '../ui/visibility.ts';
import { createVoice } from '../ui/voice.ts';
import './charts.css';

export interface ChartColumnProps {
  readonly result: RunResult;
  /** The run before the last change, drawn finely behind the run at hand. */
  readonly ghost?: RunResult | undefined;
  /** Several runs on shared axes, instead of `result` and `ghost`; the first is the one at hand. */
  readonly runs?: readonly NamedRun[] | undefined;
  readonly time_s: Accessor<number>;
  readonly onScrub: (time_s: number) => void;
  readonly units: UnitSystem;
  /** Whatever the page's colours depend on; a change makes the charts read them again. */
  readonly theme?: unknown;
  /** Whether a newer run is being computed. */
  readonly stale?: boolean | undefined;
  /** End of the time axis; else that of the longest run. */
  readonly end_s?: number | undefined;
  /** Distance of the time axis from the left and right edge, to line up with what stands above. */
  readonly timeInset?: Gutters | undefined;
  /** Charts folded away are `false`; one that is not named is open. */
  readonly open?: Readonly<Partial<Record<ChartId, boolean>>> | undefined;
  readonly onToggle?: ((id: ChartId, open: boolean) => void) | undefined;
  readonly recoveryBand?: RecoveryBand | undefined;
  readonly recoveryPoints?: readonly RecoveryPoint[] | undefined;
}

const endOf = ({ record }: RunResult): number => record.columns.time_s[record.rows - 1] ?? 0;

export function ChartColumn(props: ChartColumnProps) {
  const [column, setColumn] = createSignal<HTMLDivElement>();
  const width = createWidth(column);
  const look = createLook(column, () => props.theme);
  const [reading_s, setReading] = createSignal<number | null>(null);
  const [folded, setFolded] = createSignal<ReadonlySet<ChartId>>(new Set());
  const { spoken, speak } = createVoice();

  const runs = createMemo<readonly NamedRun[]>(() => {
    if (props.runs && props.runs.length > 0) return props.runs;
    const atHand = { name: props.result.scenario.name, result: props.result };
    return props.ghost ? [atHand, { name: 'before the change', result: props.ghost }] : [atHand];
  });
  const result = createMemo(() => runs()[0]?.result ?? props.result);
  const end_s = createMemo(() => props.end_s ?? Math.max(...runs().map((run) => endOf(run.result))));
  const timeDomain = createMemo(() => [0, end_s()] as const);
  const flags = createMemo(() => flagsOf(result().events, englishReader(props.units)));
  const inset = createMemo(() => props.timeInset ?? gutters(width(), look()?.textScale ?? 1));

  const isOpen = (id: ChartId): boolean => props.open?.[id] ?? !folded().has(id);
  const toggle = (id: ChartId, open: boolean): void => {
    setFolded((before) => new Set(open ? [...before].filter((other) => other !== id) : [...before, id]));
    props.onToggle?.(id, open);
  };

  const timeCharts = createMemo(() => [
    temperaturesChart(runs()),
    heatChart(runs()),
    steamChart(runs()),
    coolingChart(runs()),
    oilChart(runs(), oilNames(result().record.constituents)),
    recoveryChart(runs(), props.recoveryBand, props.recoveryPoints),
    bedChart(runs(), bedHeight(result().scenario)),
  ]);
  const rowTime_s = createMemo(() => {
    const { record } = result();
    return record.columns.time_s[rowAt(record, props.time_s())] ?? 0;
  });
  const restedTime_s = createDeferred(
    () => props.time_s(),
    () => false,
  );
  const extents = createMemo(() => condenserExtents(result()));
  const captureNow = createMemo(() => captureByDropSize(result().scenario, result().record, rowTime_s()));
  const captureAt = (time_s: number) =>
    time_s === rowTime_s() ? captureNow() : captureByDropSize(result().scenario, result().record, time_s);
  const dropAxis = createMemo(() => dropDomain(captureAt(end_s())));

  return (
    <div class="charts" ref={setColumn} data-stale={props.stale ? '' : undefined}>
      <Show when={width() > 0 && look()}>
        {(seen) => {
          const scene: Scene = {
            look: seen,
            width,
            inset,
            units: () => props.units,
            runName: () => runs()[0]?.name ?? '',
            time_s: () => props.time_s(),
            rowTime_s,
            restedTime_s,
            timeDomain,
            flags,
            reading_s,
            setReading,
            scrub: (time_s) => props.onScrub(time_s),
            speak,
          };
          const plotWidth = () => Math.max(40, width() - inset().left - inset().right);
          return (
            <>
              <div class="charts-flags">
                <FlagRow
                  flags={flags()}
                  left={inset().left}
                  width={plotWidth()}
                  right={inset().right}
                  pixelOf={(x) => (x / end_s()) * plotWidth()}
                  font={seen().font}
                  timed
                  onPick={(time_s) => props.onScrub(time_s)}
                />
              </div>
              <Index each={timeCharts()}>
                {(chart) => (
                  <TimeChart
                    chart={chart()}
                    scene={scene}
                    open={isOpen(chart().id)}
                    onToggle={(open) => toggle(chart().id, open)}
                  />
                )}
              </Index>
              <MomentChart
                scene={scene}
                chartAt={(time_s) => condenserChart(runs(), extents(), time_s)}
                flagsAt={(time_s) => condensingEnd(result(), time_s, props.units)}
                xDomain={[0, tubeLength(result())]}
                open={isOpen('condenser')}
                onToggle={(open) => toggle('condenser', open)}
              />
              <MomentChart
                scene={scene}
                chartAt={(time_s) => dropsChart(captureAt(time_s))}
                flagsAt={(time_s) => cutSizeFlag(captureAt(time_s), props.units)}
                xDomain={dropAxis()}
                restingWords={(label, time_s) => captureWords(captureAt(time_s), label.key)}
                open={isOpen('drops')}
                onToggle={(open) => toggle('drops', open)}
              />
              <EnergyChart
                record={result().record}
                scene={scene}
                open={isOpen('energy')}
                onToggle={(open) => toggle('energy', open)}
              />
            </>
          );
        }}
      </Show>
      <p class="visually-hidden" role="status">
        {spoken()}
      </p>
    </div>
  );
}
