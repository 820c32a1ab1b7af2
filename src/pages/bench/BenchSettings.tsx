/** The settings of the selected part, wired to the bench. */
import { lazy, onCleanup, onMount, Suspense } from 'solid-js';
import type { ScenarioPart } from '../../../sim/index.ts';
import { useBench } from '../../state/bench.ts';

/** The forms and the schema behind them are fetched when first needed, or when the page has nothing else to do. */
const loadSettings = () => import('./settings/SettingsPanel.tsx');
const SettingsPanel = lazy(async () => ({ default: (await loadSettings()).SettingsPanel }));
export const fetchSettingsAhead = (): void => void loadSettings();

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
        <button type="button" onClick={() => bench.select(null)}>
          Close<span class="visually-hidden"> settings</span>
        </button>
      </div>
      <Suspense fallback={<p class="quiet">Fetching the settings…</p>}>
        <SettingsPanel
          part={props.part}
          onPart={(part) => bench.select(part)}
          scenario={bench.scenario()}
          loaded={bench.loaded()}
          units={bench.units()}
          problems={bench.problems()}
          change={bench.change}
          changeMany={bench.changeMany}
          onEditSchedule={(path) => props.onEditSchedule(path)}
        />
      </Suspense>
    </div>
  );
}
