/** The settings of the selected part, wired to the bench. */
import { onCleanup, onMount, Show } from 'solid-js';
import type { ScenarioPart } from '../../../sim/index.ts';
import type { ShownChart } from '../../state/kept-bench.ts';
import { useBench } from '../../state/bench.ts';
import { SettingsPanel } from './settings/SettingsPanel.tsx';

/** Parts that have a picture of their own among the charts. */
const CLOSE_UP: Partial<Record<ScenarioPart, ShownChart>> = { condenser: 'tube', separator: 'separator' };

export interface BenchSettingsProps {
  readonly part: ScenarioPart;
  readonly onEditSchedule: (path: string) => void;
}

export function BenchSettings(props: BenchSettingsProps) {
  const bench = useBench();
  let title: HTMLHeadingElement | undefined;
  const cameFrom = document.activeElement;
  onMount(() => title?.focus({ preventScroll: true }));
  onCleanup(() => {
    if (cameFrom instanceof HTMLElement || cameFrom instanceof SVGElement) cameFrom.focus({ preventScroll: true });
  });
  /** The settings give way to the picture that they stand over. */
  const lookCloser = (picture: ShownChart) => {
    bench.setChart(picture);
    bench.select(null);
  };
  return (
    <div
      onKeyDown={(event) => {
        if (event.key === 'Escape') bench.select(null);
      }}
    >
      <div class="bench-settings-head">
        <h2 ref={title} tabindex="-1">
          Settings
        </h2>
        <Show when={CLOSE_UP[props.part]}>
          {(picture) => (
            <button type="button" onClick={() => lookCloser(picture())}>
              See it close up
            </button>
          )}
        </Show>
        <button type="button" onClick={() => bench.select(null)}>
          Close<span class="visually-hidden"> settings</span>
        </button>
      </div>
      <SettingsPanel
        part={props.part}
        onPart={(part) => bench.select(part)}
        scenario={bench.scenario()}
        loaded={bench.loaded()}
        units={bench.units()}
        currency={bench.currency()}
        problems={bench.problems()}
        changeMany={bench.changeMany}
        onEditSchedule={(path) => props.onEditSchedule(path)}
      />
    </div>
  );
}
