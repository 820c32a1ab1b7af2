/** What matters most: for one number, each uncertain value alone from its low to its high, the widest first. */
import { createMemo, For, Show } from 'solid-js';
import {
  englishReader,
  formatNumber,
  HEADLINE_UNITS,
  runLengthMessages,
  type EnsembleSummary,
  type HeadlineName,
  type Influence,
  type UnitSystem,
} from '../../../sim/index.ts';
import type { DataTable } from '../../charts/export/data-table.ts';
import { SaveBar } from '../parts/SaveBar.tsx';
import { influencePicture, reach, type Reach } from './influence-picture.ts';
import { TOLD } from './told-headlines.ts';
import { readPalette } from '../../charts/model/palette.ts';

export interface InfluencesProps {
  readonly summary: EnsembleSummary;
  readonly of: HeadlineName;
  readonly onOf: (name: HeadlineName) => void;
  readonly units: UnitSystem;
  readonly runName: string;
}

/** A swing smaller than this part of the widest is not worth a row. */
const WORTH_A_ROW = 0.01;

const rank = (spearman: number | null): string => (spearman === null ? '–' : formatNumber(spearman, 2));

export function Influences(props: InfluencesProps) {
  const moved = createMemo<readonly Influence[]>(() => {
    const all = props.summary.influences[props.of].filter(({ swing }) => swing !== null);
    const widest = Math.abs(all[0]?.swing ?? 0);
    return all.filter(({ swing }) => Math.abs(swing ?? 0) > WORTH_A_ROW * widest);
  });
  const bounds = createMemo<Reach>(() => reach(moved(), props.summary.asPlanned?.[props.of] ?? null));
  const messages = () => runLengthMessages(englishReader(props.units));
  const written = (value: number | null) => messages().headlineValue(props.of, value);
  const title = () => messages().headline(props.of);
  const table = (): DataTable => {
    const rows = props.summary.influences[props.of];
    const numbers = (read: (row: Influence) => number | null) => rows.map((row) => read(row) ?? Number.NaN);
    return {
      caption: `What matters most: ${title()}`,
      rows: rows.length,
      columns: [
        {
          title: 'Uncertain value',
          unit: '',
          says: 'what is not known for sure',
          decimals: 0,
          values: rows.map(({ id }) => messages().uncertain(id)),
        },
        {
          title: `${title()}, value low`,
          unit: HEADLINE_UNITS[props.of],
          says: 'with this value alone at its 10th percentile',
          decimals: 4,
          values: numbers(({ atLow }) => atLow),
        },
        {
          title: `${title()}, value high`,
          unit: HEADLINE_UNITS[props.of],
          says: 'with this value alone at its 90th percentile',
          decimals: 4,
          values: numbers(({ atHigh }) => atHigh),
        },
        {
          title: 'Rank correlation',
          unit: '',
          says: 'over all random runs',
          decimals: 3,
          values: numbers(({ spearman }) => spearman),
        },
      ],
    };
  };
  let list: HTMLElement | undefined;
  const svg = () =>
    influencePicture({
      title: `What matters most: ${title()}`,
      subtitle: props.runName,
      rows: moved(),
      bounds: bounds(),
      name: ({ id }) => messages().uncertain(id),
      words: written,
      palette: readPalette(list ?? document.documentElement),
    });
  const place = (value: number | null) => `${(100 * bounds().at(value)).toFixed(2)}%`;

  return (
    <section class="influences" aria-labelledby="influences-title" ref={list}>
      <h3 id="influences-title">What matters most</h3>
      <p class="answer-quiet">
        Each uncertain value alone, from low to high. The number at the end is its rank correlation over all runs: ±1
        when it alone decides, 0 when it makes no difference.
      </p>
      <label class="answer-choice">
        <span>For</span>
        <select value={props.of} onChange={(event) => props.onOf(TOLD[event.currentTarget.selectedIndex] ?? 'oil_mL')}>
          <For each={TOLD}>{(name) => <option value={name}>{messages().headline(name)}</option>}</For>
        </select>
      </label>
      <Show
        when={moved().length > 0}
        fallback={
          <p class="answer-quiet">None of the uncertain values changes this number, or too few runs are finished.</p>
        }
      >
        <ul class="influence-list">
          <For each={moved()}>
            {(row) => (
              <li class="influence">
                <span class="influence-title">{messages().uncertain(row.id)}</span>
                <span class="influence-track" aria-hidden="true">
                  <span
                    class="influence-bar"
                    style={{
                      left: place(Math.min(row.atLow ?? 0, row.atHigh ?? 0)),
                      right: `calc(100% - ${place(Math.max(row.atLow ?? 0, row.atHigh ?? 0))})`,
                    }}
                  />
                  <span class="influence-planned" style={{ left: place(bounds().planned) }} />
                </span>
                <span class="influence-ends">
                  <span class="visually-hidden">from </span>
                  {written(row.atLow)} to {written(row.atHigh)}
                </span>
                <span class="influence-rank">
                  <span class="visually-hidden">rank correlation </span>
                  {rank(row.spearman)}
                </span>
              </li>
            )}
          </For>
        </ul>
      </Show>
      <SaveBar of="what matters most" runName={props.runName} table={table} svg={svg} />
    </section>
  );
}
