/** The log as a table to type in: a line a reading, what is wrong beside its line, pasted columns taken apart. */
import { createMemo, createSignal, Index, Show } from 'solid-js';
import { englishReader, fitMessages, type UnitSystem } from '../../../sim/index.ts';
import {
  EMPTY_ROW,
  isBlank,
  LOG_COLUMNS,
  readRows,
  withBlankRows,
  type LogColumn,
  type LogRow,
} from '../../state/logbook.ts';
import type { LoggedRun } from '../../state/logbook-schema.ts';

export interface LogTableProps {
  readonly log: LoggedRun;
  readonly units: UnitSystem;
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
  const problemOf = (index: number): string | null => {
    const problem = at() === index ? undefined : problems().get(index);
    return problem === undefined ? null : fitMessages(englishReader(props.units)).lineProblem(problem);
  };
  const unitOf = (column: LogColumn): string => {
    const { oil, temperature, distillate } = props.log.units;
    return { time: 'min, h:mm or 1h45', oil, outlet: temperature, tub: temperature, distillate }[column];
  };
  let body: HTMLTableSectionElement | undefined;
  const type = (index: number, column: LogColumn, text: string) =>
    props.onRows(rows().map((row, other) => (other === index ? { ...row, [column]: text } : row)));
  const go = (index: number, column: LogColumn) =>
    body?.querySelector<HTMLInputElement>(`[data-cell="${index} ${column}"]`)?.focus();
  const key = (event: KeyboardEvent, index: number, column: LogColumn) => {
    if (event.key === 'Enter') go(index + 1, event.shiftKey ? column : 'time');
    else if (event.key === 'ArrowDown') go(index + 1, column);
    else if (event.key === 'ArrowUp') go(index - 1, column);
    else return;
    event.preventDefault();
  };
  const paste = (event: ClipboardEvent) => {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (!isTable(text)) return;
    event.preventDefault();
    props.onPaste(text);
  };
  const remove = (index: number) => {
    const column = LOG_COLUMNS[0];
    props.onRows(rows().filter((_, other) => other !== index));
    go(index, column);
  };

  return (
    <div class="answer-table log-table" role="region" aria-label="Readings" tabindex="0">
      <table>
        <caption class="visually-hidden">Readings of this run, one line each; Enter goes to the next line</caption>
        <thead>
          <tr>
            <th scope="col" class="log-line">
              <span class="visually-hidden">Line</span>
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
              <span class="visually-hidden">Delete</span>
            </th>
          </tr>
        </thead>
        <tbody ref={body} onPaste={paste}>
          <Index each={rows()}>
            {(row, index) => (
              <>
                <tr classList={{ 'has-problem': problemOf(index) !== null }}>
                  <th scope="row" class="log-line">
                    {index + 1}
                  </th>
                  <Index each={LOG_COLUMNS}>
                    {(column) => (
                      <td>
                        <input
                          class="log-cell"
                          type="text"
                          inputmode={column() === 'time' ? 'text' : 'decimal'}
                          autocomplete="off"
                          data-cell={`${index} ${column()}`}
                          aria-label={`${TITLES[column()]} in ${unitOf(column())}, line ${index + 1}`}
                          aria-invalid={problemOf(index) === null ? undefined : 'true'}
                          aria-describedby={problemOf(index) === null ? undefined : `log-problem-${index}`}
                          value={row()[column()]}
                          onInput={(event) => type(index, column(), event.currentTarget.value)}
                          onFocus={() => setAt(index)}
                          onBlur={() => setAt((now) => (now === index ? null : now))}
                          onKeyDown={(event) => key(event, index, column())}
                        />
                      </td>
                    )}
                  </Index>
                  <td>
                    <Show when={!isBlank(row() ?? EMPTY_ROW)}>
                      <button type="button" class="word" onClick={() => remove(index)}>
                        <span aria-hidden="true">×</span>
                        <span class="visually-hidden">Delete line {index + 1}</span>
                      </button>
                    </Show>
                  </td>
                </tr>
                <Show when={problemOf(index)}>
                  {(told) => (
                    <tr class="log-problem">
                      <td />
                      <td colspan={LOG_COLUMNS.length + 1} class="is-words">
                        <span id={`log-problem-${index}`} class="field-error">
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
