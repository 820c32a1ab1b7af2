/** Heading with fold, the chart, and its ways out: table, pictures, numbers. */
import { createSignal, createUniqueId, Show, type JSX } from 'solid-js';
import { csvOf } from '../export/csv.ts';
import type { DataTable } from '../export/data-table.ts';
import { pngOf } from '../export/png.ts';
import { fileName, saveBlob, saveCsv, saveSvg } from '../../state/downloads.ts';
import type { UnitSystem } from '../model/measure.ts';
import { ChartTable } from './ChartTable.tsx';

export interface ChartFrameProps {
  readonly title: string;
  /** Shown beside the title: the moment a chart is of. */
  readonly note?: string | undefined;
  readonly runName: string;
  readonly open: boolean;
  readonly onToggle: (open: boolean) => void;
  readonly units: UnitSystem;
  /** Made when asked for. */
  readonly table: () => DataTable;
  readonly svg: () => string;
  readonly children: JSX.Element;
  /** Stands in place of the head with its fold and its ways out. */
  readonly head?: JSX.Element;
  /** Brings the chart up to the first screen. */
  readonly bringUp?: (() => void) | undefined;
}

export function ChartFrame(props: ChartFrameProps) {
  const bodyId = createUniqueId();
  const savesId = createUniqueId();
  const [tabled, setTabled] = createSignal(false);
  const [saving, setSaving] = createSignal(false);
  const [problem, setProblem] = createSignal('');
  const name = (extension: string) => fileName(extension, props.runName, props.title);

  const savePng = async (): Promise<void> => {
    setProblem('');
    const file = name('png');
    try {
      saveBlob(await pngOf(props.svg()), file);
    } catch (error) {
      setProblem(`The picture could not be made: ${error instanceof Error ? error.message : String(error)}`);
    }
  };

  return (
    <figure class="chart" aria-label={props.head === undefined ? props.title : `${props.title}, beside the still`}>
      <Show when={props.head === undefined} fallback={props.head}>
        <div class="chart-head">
          <h3 class="chart-title">
            <button
              type="button"
              class="chart-fold prints"
              aria-expanded={props.open}
              aria-controls={bodyId}
              onClick={() => props.onToggle(!props.open)}
            >
              <span class="chart-fold-mark" aria-hidden="true" />
              {props.title}
            </button>
          </h3>
          <Show when={props.open && props.note}>
            <span class="chart-note">{props.note}</span>
          </Show>
          <Show when={props.open}>
            <div class="chart-actions">
              <Show when={props.bringUp}>
                {(bringUp) => (
                  <button
                    type="button"
                    class="chart-word"
                    aria-label={`Show ${props.title} beside the still`}
                    onClick={() => bringUp()()}
                  >
                    Beside the still
                  </button>
                )}
              </Show>
              <Show when={saving()}>
                <span class="chart-saves" id={savesId} role="group" aria-label={`Save ${props.title}`}>
                  <button type="button" class="chart-word" onClick={() => saveSvg(props.svg(), name('svg'))}>
                    SVG
                  </button>
                  <button type="button" class="chart-word" onClick={() => void savePng()}>
                    PNG
                  </button>
                  <button type="button" class="chart-word" onClick={() => saveCsv(csvOf(props.table()), name('csv'))}>
                    CSV
                  </button>
                </span>
              </Show>
              <button
                type="button"
                class="chart-word"
                aria-expanded={saving()}
                aria-controls={saving() ? savesId : undefined}
                aria-label={`Save ${props.title}`}
                onClick={() => setSaving(!saving())}
              >
                Save
              </button>
              <button
                type="button"
                class="chart-word"
                aria-pressed={tabled()}
                aria-label={`Table of ${props.title}`}
                onClick={() => setTabled(!tabled())}
              >
                Table
              </button>
            </div>
          </Show>
        </div>
      </Show>
      <div class="chart-body" id={bodyId}>
        <Show when={props.open}>
          {props.children}
          <p class="chart-problem" role="status">
            {problem()}
          </p>
          <Show when={tabled()}>
            <ChartTable table={props.table()} />
          </Show>
        </Show>
      </div>
    </figure>
  );
}
