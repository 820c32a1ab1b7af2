/** The log as a table to type in: a line a reading, what is wrong beside its line, pasted columns taken apart. */
import { createMemo, createSignal, Index, Show } from 'solid-js';
import {
  EMPTY_ROW,
  isBlank,
  LOG_COLUMNS,
  readRows,
  withBlankRows,
  type LogColumn,
  type LoggedRun,
  type LogRow,
} from '../../state/logbook.ts';

export interface LogTableProps {
  readonly log: LoggedRun;
  readonly onRows: (rows: readonly LogRow[]) => void;
  /** Several lines at once: from a spreadsheet or a note. */
  readonly onPaste: (text: string) => void;
}

/** Blank lines kept ready below the last one typed. */
const BLANK_LINES = 4;

const TITLES: Readonly<Record<LogColumn, string>> = {
  time: 'Time',
  oil: 'Oil so far',
  outlet: 'Outlet',
  tub: 'Tub',
  distillate: 'Distillate so far',
};

const isTable = (text: string): boolean => /[\t\n]/u.test(text.trim());

export function LogTable(props: LogTableProps) {
  const [at, setAt] = createSignal<number | null>(null);
  const rows = createMemo(() => withBlankRows(props.log.rows, BLANK_LINES));
  const problems = createMemo(() => readRows(props.log).problems);
  const problemOf = (place: number): string | null => (at() === place ? null : (problems().get(place) ?? null));
  const unitOf = (column: LogColumn): string => {
    const { oil, temperature, distillate } = props.log.units;
    return { time: 'min or h:mm', oil, outlet: temperature, tub: temperature, distillate }[column];
  };
  let body: HTMLTableSectionElement | undefined;
  const type = (place: number, column: LogColumn, text: string) =>
    props.onRows(rows().map((row, other) => (other === place ? { ...row, [column]: text } : row)));
  const go = (place: number, column: LogColumn) =>
    body?.querySelector<HTMLInputElement>(`[data-cell="${place} ${column}"]`)?.focus();
  const key = (event: KeyboardEvent, place: number, column: LogColumn) => {
    if (event.key === 'Enter') go(place + 1, event.shiftKey ? column : 'time');
    else if (event.key === 'ArrowDown') go(place + 1, column);
    else if (event.key === 'ArrowUp') go(place - 1, column);
    else return;
    event.preventDefault();
  };
  const paste = (event: ClipboardEvent) => {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (!isTable(text)) return;
    event.preventDefault();
    props.onPaste(text);
  };
  const remove = (place: number) => {
    const column = LOG_COLUMNS[0];
    props.onRows(rows().filter((_, other) => other !== place));
    go(place, column);
  };

  return (
    <div class="answer-table log-table" role="region" aria-label="Readings" tabindex="0">
      <table>
        <caption class="heard">Readings of this run, one line each; Enter goes to the next line</caption>
        <thead>
          <tr>
            <th scope="col" class="log-line">
              <span class="heard">Line</span>
            </th>
            <Index each={LOG_COLUMNS}>
              {(column) => (
                <th scope="col">
                  <span class="answer-table-title">{TITLES[column()]}</span>
                  <span class="answer-table-unit">{unitOf(column())}</span>
                </th>
              )}
            </Index>
            <th scope="col">
              <span class="heard">Take out</span>
            </th>
          </tr>
        </thead>
        <tbody ref={body} onPaste={paste}>
          <Index each={rows()}>
            {(row, place) => (
              <>
                <tr classList={{ 'has-problem': problemOf(place) !== null }}>
                  <th scope="row" class="log-line">
                    {place + 1}
                  </th>
                  <Index each={LOG_COLUMNS}>
                    {(column) => (
                      <td>
                        <input
                          class="log-cell"
                          type="text"
                          inputmode={column() === 'time' ? 'text' : 'decimal'}
                          autocomplete="off"
                          data-cell={`${place} ${column()}`}
                          aria-label={`${TITLES[column()]} in ${unitOf(column())}, line ${place + 1}`}
                          aria-invalid={problemOf(place) === null ? undefined : 'true'}
                          aria-describedby={problemOf(place) === null ? undefined : `log-problem-${place}`}
                          value={row()[column()]}
                          onInput={(event) => type(place, column(), event.currentTarget.value)}
                          onFocus={() => setAt(place)}
                          onBlur={() => setAt((now) => (now === place ? null : now))}
                          onKeyDown={(event) => key(event, place, column())}
                        />
                      </td>
                    )}
                  </Index>
                  <td>
                    <Show when={!isBlank(row() ?? EMPTY_ROW)}>
                      <button type="button" class="word" onClick={() => remove(place)}>
                        <span aria-hidden="true">×</span>
                        <span class="heard">Take out line {place + 1}</span>
                      </button>
                    </Show>
                  </td>
                </tr>
                <Show when={problemOf(place)}>
                  {(told) => (
                    <tr class="log-problem">
                      <td />
                      <td colspan={LOG_COLUMNS.length + 1} class="is-words">
                        <span id={`log-problem-${place}`} class="field-error">
                          {told()}
                        </span>
                      </td>
                    </tr>
                  )}
                </Show>
              </>
            )}
          </Index>
        </tbody>
      </table>
    </div>
  );
}
