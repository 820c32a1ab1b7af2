/** The ways out of an answer: its numbers and pictures as files. */
import { createSignal, For, Show } from 'solid-js';
import { csvOf } from '../../charts/export/csv.ts';
import type { DataTable } from '../../charts/export/data-table.ts';
import { pngOf } from '../../charts/export/png.ts';
import { fileName, saveBlob, saveCsv, saveJson, saveSvg } from '../../state/downloads.ts';
import { errorMessage } from '../../workers/errors.ts';

export interface SaveBarProps {
  /** What is saved, read after each word: `Save CSV of the tubes`. */
  readonly of: string;
  readonly runName: string;
  readonly table?: (() => DataTable) | undefined;
  readonly svg?: (() => string) | undefined;
  readonly json?: (() => unknown) | undefined;
}

interface WayOut {
  readonly kind: string;
  readonly save: () => void | Promise<void>;
}

export function SaveBar(props: SaveBarProps) {
  const [problem, setProblem] = createSignal('');
  const name = (extension: string) => fileName(extension, props.runName, props.of);
  const ways = (): readonly WayOut[] => {
    const svg = props.svg;
    const table = props.table;
    const json = props.json;
    return [
      ...(svg
        ? [
            { kind: 'SVG', save: () => saveSvg(svg(), name('svg')) },
            { kind: 'PNG', save: async () => saveBlob(await pngOf(svg()), name('png')) },
          ]
        : []),
      ...(table ? [{ kind: 'CSV', save: () => saveCsv(csvOf(table()), name('csv')) }] : []),
      ...(json ? [{ kind: 'JSON', save: async () => saveJson(await json(), name('json')) }] : []),
    ];
  };
  const save = async (way: WayOut): Promise<void> => {
    setProblem('');
    try {
      await way.save();
    } catch (error) {
      setProblem(`It could not be saved: ${errorMessage(error)}`);
    }
  };
  return (
    <div class="answer-saves" role="group" aria-label={`Save ${props.of}`}>
      <span aria-hidden="true">Save</span>
      <For each={ways()}>
        {(way) => (
          <button type="button" class="word" onClick={() => void save(way)}>
            <span class="visually-hidden">Save </span>
            {way.kind}
            <span class="visually-hidden"> of {props.of}</span>
          </button>
        )}
      </For>
      <Show when={problem()}>
        {(told) => (
          <span class="answer-problem" role="alert">
            {told()}
          </span>
        )}
      </Show>
    </div>
  );
}
