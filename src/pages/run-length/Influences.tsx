/** Which doubt matters most: for one number, each doubt alone from its low to its high, the widest first. */
import { createMemo, For, Show } from 'solid-js';
import {
  type EnsembleSummary,
  type HeadlineName,
  type Influence,
  type UnitSystem,
  formatNumber,
} from '../../../sim/index.ts';
import type { DataTable } from '../../charts/export/data-table.ts';
import { SaveBar } from '../parts/SaveBar.tsx';
import { influencePicture, reach, type Reach } from './influence-picture.ts';
import { headlineWords, TOLD } from './length-words.ts';
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

/** Of the numbers in a saved table, as the model has them. */
const UNITS: Readonly<Record<HeadlineName, string>> = {
  oil_mL: 'mL',
  recovery: '1',
  oilLost_kg: 'kg',
  firstDrop_s: 's',
  t50_s: 's',
  t90_s: 's',
  end_s: 's',
  hydrosol_kg: 'kg',
  coolantUsed_kg: 'kg',
  escaped_kg: 'kg',
  condensingLength_m: 'm',
  distillateWarmest_K: 'K',
  coolantWarmest_K: 'K',
  energyFuel_J: 'J',
  cost: '',
};

const rank = (spearman: number | null): string => (spearman === null ? '–' : formatNumber(spearman, 2));

export function Influences(props: InfluencesProps) {
  const moved = createMemo<readonly Influence[]>(() => {
    const all = props.summary.influences[props.of].filter(({ swing }) => swing !== null);
    const widest = Math.abs(all[0]?.swing ?? 0);
    return all.filter(({ swing }) => Math.abs(swing ?? 0) > WORTH_A_ROW * widest);
  });
  const bounds = createMemo<Reach>(() => reach(moved(), props.summary.asPlanned?.[props.of] ?? null));
  const said = (value: number | null) => headlineWords(props.of, value, props.units);
  const title = () => TOLD.find(({ name }) => name === props.of)?.title ?? props.of;
  const table = (): DataTable => {
    const rows = props.summary.influences[props.of];
    const numbers = (read: (row: Influence) => number | null) => rows.map((row) => read(row) ?? Number.NaN);
    return {
      caption: `What moves it: ${title()}`,
      rows: rows.length,
      columns: [
        {
          title: 'Doubt',
          unit: '',
          says: 'what is not known for sure',
          decimals: 0,
          values: rows.map(({ title }) => title),
        },
        {
          title: `${title()}, doubt at its low`,
          unit: UNITS[props.of],
          says: 'with this doubt alone at its 10th percentile',
          decimals: 4,
          values: numbers(({ atLow }) => atLow),
        },
        {
          title: `${title()}, doubt at its high`,
          unit: UNITS[props.of],
          says: 'with this doubt alone at its 90th percentile',
          decimals: 4,
          values: numbers(({ atHigh }) => atHigh),
        },
        {
          title: 'Rank correlation',
          unit: '',
          says: 'over all draws',
          decimals: 3,
          values: numbers(({ spearman }) => spearman),
        },
      ],
    };
  };
  let list: HTMLElement | undefined;
  const svg = () =>
    influencePicture({
      title: `What moves it: ${title()}`,
      subtitle: props.runName,
      rows: moved(),
      bounds: bounds(),
      words: said,
      palette: readPalette(list ?? document.documentElement),
    });
  const place = (value: number | null) => `${(100 * bounds().at(value)).toFixed(2)}%`;

  return (
    <section class="influences" aria-labelledby="influences-title" ref={list}>
      <h3 id="influences-title">Which doubt matters most</h3>
      <p class="answer-quiet">
        Each doubt alone, from its low to its high, all else as planned. The number at the end is its rank correlation
        over all draws: ±1 when it alone decides, 0 when it does not show.
      </p>
      <label class="answer-choice">
        <span>For</span>
        <select
          value={props.of}
          onChange={(event) => props.onOf(TOLD[event.currentTarget.selectedIndex]?.name ?? 'oil_mL')}
        >
          <For each={TOLD}>{({ name, title }) => <option value={name}>{title}</option>}</For>
        </select>
      </label>
      <Show
        when={moved().length > 0}
        fallback={<p class="answer-quiet">None of the doubts moves this number, or too few runs are in yet.</p>}
      >
        <ul class="influence-list">
          <For each={moved()}>
            {(row) => (
              <li class="influence">
                <span class="influence-title">{row.title}</span>
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
                  {said(row.atLow)} to {said(row.atHigh)}
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
      <SaveBar of="what moves it" runName={props.runName} table={table} svg={svg} />
    </section>
  );
}
