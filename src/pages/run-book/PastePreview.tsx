/** How pasted columns are understood, before any of them is taken: the first lines, and what each column is, to change. */
import { createUniqueId, For, Index, Show } from 'solid-js';
import {
  COLUMN_CHOICES,
  englishReader,
  fitMessages,
  type ColumnMeaning,
  type DecimalSign,
  type LogReading,
  type LogTable,
  type UnitSystem,
} from '../../../sim/index.ts';

export interface PastePreviewProps {
  readonly table: LogTable;
  readonly reading: LogReading;
  readonly units: UnitSystem;
  readonly onReading: (reading: LogReading) => void;
}

const FIRST_LINES = 5;
const LEFT_OUT = 'left-out';
const SIGNS: Readonly<Record<DecimalSign, string>> = { point: '1.5 (a point)', comma: '1,5 (a comma)' };

const sameMeaning = (one: ColumnMeaning | null, other: ColumnMeaning | null): boolean =>
  one?.column === other?.column && one?.unit === other?.unit;

export function PastePreview(props: PastePreviewProps) {
  const id = createUniqueId();
  const messages = () => fitMessages(englishReader(props.units));
  const columnAt = (place: number): ColumnMeaning | null => props.reading.columns[place] ?? null;
  /** The usual choices, and what the heading says where that is none of them. */
  const choicesAt = (place: number): readonly ColumnMeaning[] => {
    const now = columnAt(place);
    return now === null || COLUMN_CHOICES.some((choice) => sameMeaning(choice, now))
      ? COLUMN_CHOICES
      : [now, ...COLUMN_CHOICES];
  };
  const choose = (place: number, meaning: ColumnMeaning | null) =>
    props.onReading({
      ...props.reading,
      columns: props.reading.columns.map((column, other) => (other === place ? meaning : column)),
    });
  const places = () => Array.from({ length: props.table.width }, (_, place) => place);
  const hasCommas = () => props.reading.decimal !== 'point' || props.table.decimal !== 'point';
  return (
    <div class="paste-preview" role="group" aria-labelledby={`${id}-said`}>
      <p id={`${id}-said`} class="answer-quiet">
        {messages().understood(props.table, props.reading)}
      </p>
      <div class="answer-table" role="region" aria-label="First lines" tabindex="0">
        <table>
          <caption class="visually-hidden">The first lines as they are read, with what each column is</caption>
          <thead>
            <tr>
              <For each={places()}>
                {(place) => (
                  <th scope="col">
                    <select
                      aria-label={`Column ${place + 1} is`}
                      onChange={(event) =>
                        choose(place, choicesAt(place)[event.currentTarget.selectedIndex - 1] ?? null)
                      }
                    >
                      <option value={LEFT_OUT} selected={columnAt(place) === null}>
                        left out
                      </option>
                      <For each={choicesAt(place)}>
                        {(choice) => (
                          <option selected={sameMeaning(choice, columnAt(place))}>
                            {messages().columnMeaning(choice)}
                          </option>
                        )}
                      </For>
                    </select>
                  </th>
                )}
              </For>
            </tr>
          </thead>
          <tbody>
            <Index each={props.table.lines.slice(0, FIRST_LINES)}>
              {(line) => (
                <tr>
                  <For each={places()}>
                    {(place) => (
                      <td classList={{ 'is-left-out': columnAt(place) === null }}>{line().cells[place] ?? ''}</td>
                    )}
                  </For>
                </tr>
              )}
            </Index>
          </tbody>
        </table>
      </div>
      <Show when={hasCommas()}>
        <label class="answer-choice">
          <span>One and a half is written</span>
          <select
            onChange={(event) => {
              const sign = (['point', 'comma'] as const)[event.currentTarget.selectedIndex - 1] ?? null;
              props.onReading({ ...props.reading, decimal: sign });
            }}
          >
            <option selected={props.reading.decimal === null}>not known</option>
            <For each={['point', 'comma'] as const}>
              {(sign) => <option selected={props.reading.decimal === sign}>{SIGNS[sign]}</option>}
            </For>
          </select>
        </label>
      </Show>
    </div>
  );
}
