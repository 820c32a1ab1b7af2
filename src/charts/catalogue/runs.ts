/** Lines from the columns of one or several runs. */
import { columnMessages, englishReader, type ColumnName, type GridName, type RunResult } from '../../../sim/index.ts';
import type { Series } from '../model/chart.ts';
import type { Measure } from '../model/measure.ts';
import type { Ink } from '../model/palette.ts';

/** A run to draw; the first of a list is the run at hand, the others stand behind it. */
export interface NamedRun {
  readonly name: string;
  readonly result: RunResult;
}

export const SOLID: readonly number[] = [];
export const LONG_DASH: readonly number[] = [7, 4];
export const DOTS: readonly number[] = [1.5, 3.5];
export const THICK = 1.75;
export const THIN = 0.8;

/** Dash of the lines of the second, third and fourth run. */
const RUN_DASHES: readonly (readonly number[])[] = [SOLID, [3, 3], [9, 3, 2, 3], [1.5, 4]];

export interface LineWords {
  readonly key: string;
  readonly label: string;
  readonly says: string;
  readonly measure: Measure;
  readonly ink: Ink;
  readonly weight?: number;
  readonly dash?: readonly number[];
  readonly labelled?: Series['labelled'];
}

export const timesOf = ({ record }: RunResult): Float64Array => record.columns.time_s.subarray(0, record.rows);

export const columnOf = ({ record }: RunResult, name: ColumnName): Float64Array =>
  record.columns[name].subarray(0, record.rows);

/** Masses or rates of oil as volumes, m³ or m³/s, by the density of all that the run collected. */
export const asOilVolume = ({ summary }: RunResult, masses: Float64Array): Float64Array =>
  masses.map((mass) => mass / (summary.oilDensity_kg_m3 ?? Infinity));

/** Volume of the oil collected, m³; `null` where none was. */
export const oilVolumeOf = (result: RunResult): Float64Array | null =>
  result.summary.oilDensity_kg_m3 === null ? null : asOilVolume(result, columnOf(result, 'oilCollected_kg'));

/** The same line in every run. `valuesOf` may answer `null` where a run has no such line. */
export function lineInRuns(
  runs: readonly NamedRun[],
  words: LineWords,
  valuesOf: (result: RunResult) => Float64Array | null,
): readonly Series[] {
  return runs.flatMap(({ name, result }, run) => {
    const values = valuesOf(result);
    if (values === null) return [];
    const isBehind = run > 0;
    return [
      {
        key: words.key,
        label: words.label,
        says: isBehind ? `${words.says} (${name})` : words.says,
        measure: words.measure,
        run,
        runName: name,
        xs: timesOf(result),
        values,
        ink: words.ink,
        weight: isBehind ? THIN : (words.weight ?? THICK),
        dash: isBehind ? (RUN_DASHES[run] ?? SOLID) : (words.dash ?? SOLID),
        labelled: isBehind ? 'none' : (words.labelled ?? 'end'),
      } satisfies Series,
    ];
  });
}

/** What a column or grid holds; the same in any units. */
export const columnSays = (name: ColumnName | GridName): string => columnMessages(englishReader('metric'))[name];

export interface ColumnLine extends Omit<LineWords, 'key' | 'says'> {
  readonly column: ColumnName;
}

export const columnInRuns = (runs: readonly NamedRun[], { column, ...words }: ColumnLine): readonly Series[] =>
  lineInRuns(runs, { ...words, key: column, says: columnSays(column) }, (result) => columnOf(result, column));

/** Whether a column has something to show; a line that stays at zero says nothing. */
export const hasAny = (values: Float64Array): boolean => values.some((value) => value > 0);
