/** A chart's numbers as a table, thinned to what one can read. */
import { For } from 'solid-js';
import { formatNumber } from '../../../sim/index.ts';
import { headerOf } from '../export/csv.ts';
import { thinnedRows, type DataTable, type TableColumn } from '../export/data-table.ts';

export interface ChartTableProps {
  readonly table: DataTable;
}

const MOST_ROWS = 25;

const cellWords = ({ values, decimals }: TableColumn, row: number): string => {
  const value = values[row];
  return typeof value === 'string' ? value : formatNumber(value ?? NaN, decimals);
};

export function ChartTable(props: ChartTableProps) {
  const rows = () => thinnedRows(props.table.rows, MOST_ROWS);
  const others = () => props.table.columns.slice(1);
  return (
    // A region that scrolls must be reachable by keyboard.
    <div class="chart-table" role="region" aria-label={`Table: ${props.table.caption}`} tabindex="0">
      <table>
        <caption>
          {props.table.caption}
          {rows().length < props.table.rows
            ? `, ${rows().length} of ${props.table.rows} rows; the CSV file has them all`
            : ''}
        </caption>
        <thead>
          <tr>
            <For each={props.table.columns}>
              {(column) => (
                <th scope="col" title={column.says}>
                  {headerOf(column)}
                </th>
              )}
            </For>
          </tr>
        </thead>
        <tbody>
          <For each={rows()}>
            {(row) => (
              <tr>
                <th scope="row">{props.table.columns[0] ? cellWords(props.table.columns[0], row) : ''}</th>
                <For each={others()}>{(column) => <td>{cellWords(column, row)}</td>}</For>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </div>
  );
}
