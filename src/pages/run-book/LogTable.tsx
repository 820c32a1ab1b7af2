/** The log as a table to type in: a line a reading, what is wrong beside its line, pasted columns taken apart. */
import { createVirtualizer } from '@tanstack/solid-virtual';
import { createMemo, createSignal, Index, Show } from 'solid-js';
import { englishReader, fitMessages, type PointsProblem, type UnitSystem } from '../../../sim/index.ts';
import { EMPTY_ROW, isBlank, LOG_COLUMNS, withBlankRows, type LogColumn, type LogRow } from '../../state/logbook.ts';
import type { LoggedRun } from '../../state/logbook-schema.ts';

export interface LogTableProps {
  readonly log: LoggedRun;
  readonly units: UnitSystem;
  /** By place of the row: what is wrong with it. */
  readonly problems: ReadonlyMap<number, PointsProblem>;
  readonly onRows: (rows: readonly LogRow[]) => void;
  /** Several lines at once: from a spreadsheet or a note. */
  readonly onPaste: (text: string) => void;
}

/** Longer logs scroll in a window of their own, of which only what is seen is drawn. */
const LONG_LOG = 200;
const ROW_PX = 40;
const DRAWN_BEYOND = 30;

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
  const problemOf = (index: number): string | null => {
    const problem = at() === index ? undefined : props.problems.get(index);
    return problem === undefined ? null : fitMessages(englishReader(props.units)).lineProblem(problem);
  };
  const unitOf = (column: LogColumn): string => {
    const { oil, temperature, distillate } = props.log.units;
    return { time: 'min, h:mm or 1h45', oil, outlet: temperature, tub: temperature, distillate }[column];
  };
  let body: HTMLTableSectionElement | undefined;
  const type = (index: number, column: LogColumn, text: string) =>
    props.onRows(rows().map((row, other) => (other === index ? { ...row, [column]: text } : row)));
  let region: HTMLDivElement | undefined;
  const isLong = () => rows().length > LONG_LOG;
  const virtual = createVirtualizer<HTMLDivElement, HTMLTableRowElement>({
    get count() {
      return rows().length;
    },
    getScrollElement: () => region ?? null,
    estimateSize: () => ROW_PX,
    overscan: DRAWN_BEYOND,
  });
  const shown = createMemo((): readonly number[] =>
    isLong() ? virtual.getVirtualItems().map(({ index }) => index) : rows().map((_, index) => index),
  );
  /** Room for the lines above and below those that are drawn, px. */
  const roomAbove = () => (isLong() ? (virtual.getVirtualItems()[0]?.start ?? 0) : 0);
  const roomBelow = () => (isLong() ? virtual.getTotalSize() - (virtual.getVirtualItems().at(-1)?.end ?? 0) : 0);
  const cellAt = (index: number, column: LogColumn) =>
    body?.querySelector<HTMLInputElement>(`[data-cell="${index} ${column}"]`);
  const go = (index: number, column: LogColumn) => {
    const cell = cellAt(index, column);
    if (cell || !isLong()) return cell?.focus();
    virtual.scrollToIndex(index);
    requestAnimationFrame(() => cellAt(index, column)?.focus());
  };
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
    <div
      ref={region}
      class="answer-table log-table"
      classList={{ 'is-long': isLong() }}
      role="region"
      aria-label="Readings"
      tabindex="0"
    >
      <table aria-rowcount={rows().length + 1}>
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
          <Show when={roomAbove() > 0}>
            <tr class="log-room" style={{ height: `${roomAbove()}px` }} />
          </Show>
          <Index each={shown()}>
            {(place) => (
              <>
                <tr aria-rowindex={place() + 2} classList={{ 'has-problem': problemOf(place()) !== null }}>
                  <th scope="row" class="log-line">
                    {place() + 1}
                  </th>
                  <Index each={LOG_COLUMNS}>
                    {(column) => (
                      <td>
                        <input
                          class="log-cell"
                          type="text"
                          inputmode={column() === 'time' ? 'text' : 'decimal'}
                          autocomplete="off"
                          data-cell={`${place()} ${column()}`}
                          aria-label={`${TITLES[column()]} in ${unitOf(column())}, line ${place() + 1}`}
                          aria-invalid={problemOf(place()) === null ? undefined : 'true'}
                          aria-describedby={problemOf(place()) === null ? undefined : `log-problem-${place()}`}
                          value={(rows()[place()] ?? EMPTY_ROW)[column()]}
                          onInput={(event) => type(place(), column(), event.currentTarget.value)}
                          onFocus={() => setAt(place())}
                          onBlur={() => setAt((now) => (now === place() ? null : now))}
                          onKeyDown={(event) => key(event, place(), column())}
                        />
                      </td>
                    )}
                  </Index>
                  <td>
                    <Show when={!isBlank(rows()[place()] ?? EMPTY_ROW)}>
                      <button type="button" class="word" onClick={() => remove(place())}>
                        <span aria-hidden="true">×</span>
                        <span class="visually-hidden">Delete line {place() + 1}</span>
                      </button>
                    </Show>
                  </td>
                </tr>
                <Show when={problemOf(place())}>
                  {(told) => (
                    <tr class="log-problem">
                      <td />
                      <td colspan={LOG_COLUMNS.length + 1} class="is-words">
                        <span id={`log-problem-${place()}`} class="field-error">
                          {told()}
                        </span>
                      </td>
                    </tr>
                  )}
                </Show>
              </>
            )}
          </Index>
          <Show when={roomBelow() > 0}>
            <tr class="log-room" style={{ height: `${roomBelow()}px` }} />
          </Show>
        </tbody>
      </table>
    </div>
  );
}
