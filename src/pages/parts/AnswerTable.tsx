/** A table of an answer: named rows, numbers to the right, and, where it makes sense, sorted by a click on a heading. */
import { createComputed, createEffect, createMemo, createSignal, For, on, Show, type JSX } from 'solid-js';
import { SortMark } from './marks.tsx';

export interface TableColumn<Row> {
  readonly id: string;
  readonly title: string;
  /** Stands under the title. */
  readonly unit?: string;
  readonly cell: (row: Row) => JSX.Element;
  /** What the rows are sorted by; `null` goes last. A column without it cannot be sorted by. */
  readonly sortBy?: (row: Row) => number | string | null;
  /** Words stand to the left. */
  readonly isWords?: boolean;
}

export interface AnswerTableProps<Row> {
  readonly caption: string;
  readonly columns: readonly TableColumn<Row>[];
  readonly rows: readonly Row[];
  readonly rowClass?: (row: Row) => string;
  readonly firstSort?: { readonly id: string; readonly down: boolean };
  /** Highest the table gets before it scrolls. */
  readonly class?: string;
}

function inOrder(a: number | string | null, b: number | string | null, down: boolean): number {
  if (a === null || b === null) return a === b ? 0 : a === null ? 1 : -1;
  const order =
    typeof a === 'number' && typeof b === 'number'
      ? a - b
      : String(a).localeCompare(String(b), 'en', { numeric: true });
  return down ? -order : order;
}

export function AnswerTable<Row>(props: AnswerTableProps<Row>) {
  // eslint-disable-next-line solid/reactivity -- where the table starts from; afterwards the reader sorts it
  const [sort, setSort] = createSignal(props.firstSort ?? null);
  const sorted = createMemo(() => {
    const by = sort();
    const column = by && props.columns.find(({ id }) => id === by.id);
    const key = column?.sortBy;
    if (!by || !key) return props.rows;
    return [...props.rows].sort((a, b) => inOrder(key(a), key(b), by.down));
  });
  // Rows that arrive may move the one that holds the keyboard, which would lose it.
  let body: HTMLTableSectionElement | undefined;
  let held: HTMLElement | null = null;
  createComputed(
    on(sorted, () => {
      const focused = document.activeElement;
      held = focused instanceof HTMLElement && body?.contains(focused) === true ? focused : null;
    }),
  );
  createEffect(
    on(sorted, () => {
      if (held?.isConnected === true && document.activeElement !== held) held.focus({ preventScroll: true });
    }),
  );
  const press = (id: string) => setSort((now) => ({ id, down: now?.id === id ? !now.down : false }));
  const state = (id: string) => (sort()?.id === id ? (sort()?.down === true ? 'descending' : 'ascending') : undefined);
  return (
    <div class={`answer-table ${props.class ?? ''}`} role="region" aria-label={props.caption} tabindex="0">
      <table>
        <caption class="visually-hidden">{props.caption}</caption>
        <thead>
          <tr>
            <For each={props.columns}>
              {(column) => (
                <th scope="col" classList={{ 'is-words': column.isWords === true }} aria-sort={state(column.id)}>
                  <Show when={column.sortBy} fallback={<span class="answer-table-title">{column.title}</span>}>
                    <button type="button" class="answer-sort prints" onClick={() => press(column.id)}>
                      {column.title}
                      <Show when={state(column.id)}>
                        {' '}
                        <SortMark down={sort()?.down === true} />
                      </Show>
                    </button>
                  </Show>
                  <Show when={column.unit}>{(unit) => <span class="answer-table-unit">{unit()}</span>}</Show>
                </th>
              )}
            </For>
          </tr>
        </thead>
        <tbody ref={body}>
          <For each={sorted()}>
            {(row) => (
              <tr class={props.rowClass?.(row)}>
                <For each={props.columns}>
                  {(column, index) => (
                    <Show
                      when={index() === 0}
                      fallback={
                        <td
                          classList={{ 'is-words': column.isWords === true }}
                          data-title={column.unit === undefined ? column.title : `${column.title}, ${column.unit}`}
                        >
                          {column.cell(row)}
                        </td>
                      }
                    >
                      <th scope="row" classList={{ 'is-words': column.isWords === true }}>
                        {column.cell(row)}
                      </th>
                    </Show>
                  )}
                </For>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </div>
  );
}
