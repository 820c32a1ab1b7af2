/** The table of a comparison: one row a number, one value a run, with the differences from the first. */
import type { RunEvent, RunResult, Severity } from '../../run/result.ts';

export type CompareRowId =
  | 'oil'
  | 'recovery'
  | 'firstDrop'
  | 'timeTo90'
  | 'end'
  | 'distillate'
  | 'coolantUsed'
  | 'energy'
  | 'cost'
  | 'costPerOil'
  | 'oilPerSteam'
  | 'coilNeeded'
  | 'distillateWarmest'
  | 'dissolved'
  | 'haze'
  | 'uncondensed'
  | 'leftInPlant';

export interface CompareRow {
  readonly id: CompareRowId | `share-${string}`;
  /** Id of the constituent whose share in the oil it is; `null` in the other rows. */
  readonly constituent: string | null;
  readonly unit: string;
  /** Which way is the better one, where that can be said. */
  readonly better: 'more' | 'less' | 'neither';
  /** One value a run; `null` where the run never got that far. */
  readonly values: readonly (number | null)[];
  /** Value less that of the first run. */
  readonly differences: readonly (number | null)[];
}

export interface CompareRun {
  /** As in the scenario; may be empty. */
  readonly name: string;
  /** From 1, where several runs bear the name; else `null`. */
  readonly number: number | null;
  /** Most serious thing that happened; `null` when nothing but milestones. */
  readonly worst: Severity | null;
  /** Alarms and cares, alarms first, in the order of their times. */
  readonly cautions: readonly RunEvent[];
}

const WATER_DENSITY = 998;

/** Most serious severity and what is to be told of it, alarms first. */
function cautionsOf({ events }: RunResult): Pick<CompareRun, 'worst' | 'cautions'> {
  const serious = (severity: Severity) => events.filter((event) => event.severity === severity);
  const cautions = [...serious('alarm'), ...serious('care')];
  return { worst: cautions[0]?.severity ?? null, cautions };
}

const rowOf = (
  results: readonly RunResult[],
  id: CompareRow['id'],
  constituent: string | null,
  unit: string,
  better: CompareRow['better'],
  read: (result: RunResult) => number | null,
): CompareRow => {
  const values = results.map(read);
  const first = values[0] ?? null;
  return {
    id,
    constituent,
    unit,
    better,
    values,
    differences: values.map((value) => (value === null || first === null ? null : value - first)),
  };
};

const ratio = (over: number, under: number): number | null => (under > 0 ? over / under : null);

/** Share of a constituent in the oil a run collected; `null` without oil. */
const shareOf = ({ summary }: RunResult, id: string): number | null =>
  summary.oilCollected_kg > 0 ? (summary.oilByConstituent_kg[id] ?? 0) / summary.oilCollected_kg : null;

export function compareRows(results: readonly RunResult[]): CompareRow[] {
  const row = (
    id: CompareRowId,
    unit: string,
    better: CompareRow['better'],
    read: (result: RunResult) => number | null,
  ): CompareRow => rowOf(results, id, null, unit, better, read);
  const constituents = [...new Set(results.flatMap(({ summary }) => Object.keys(summary.oilByConstituent_kg)))];
  const shares = constituents
    .map((id) => rowOf(results, `share-${id}`, id, '1', 'neither', (result) => shareOf(result, id)))
    .sort(
      (a, b) => Math.max(...b.values.map((value) => value ?? 0)) - Math.max(...a.values.map((value) => value ?? 0)),
    );
  const cost = ({ summary }: RunResult): number => summary.energyCost + summary.waterCost;
  const came = ({ record }: RunResult): number =>
    (record.columns.hydrosol_kg[record.rows - 1] as number) + (record.columns.returned_kg[record.rows - 1] as number);
  return [
    row('oil', 'mL', 'more', ({ summary }) => summary.oilCollected_mL),
    row('recovery', '1', 'more', ({ summary }) => summary.recovery),
    row('firstDrop', 's', 'less', ({ summary }) => summary.firstDrop_s),
    row('timeTo90', 's', 'less', ({ summary }) => summary.t90_s),
    row('end', 's', 'less', ({ summary }) => summary.end_s),
    row('distillate', 'kg', 'neither', came),
    row('oilPerSteam', 'mL/kg', 'more', (result) => ratio(result.summary.oilCollected_mL, came(result))),
    row('coolantUsed', 'L', 'less', ({ summary }) => (summary.coolantUsed_kg / WATER_DENSITY) * 1000),
    row('energy', 'J', 'less', ({ summary }) => summary.energyFuel_J),
    row('cost', '1', 'less', cost),
    row('costPerOil', '1/mL', 'less', (result) => ratio(cost(result), result.summary.oilCollected_mL)),
    row('coilNeeded', 'm', 'less', ({ summary }) => summary.condensingLengthPeak_m),
    row('distillateWarmest', '°C', 'less', ({ summary }) => summary.condensatePeak_C),
    row('dissolved', 'kg', 'less', ({ summary }) => summary.oilDissolved_kg),
    row('haze', 'kg', 'less', ({ summary }) => summary.oilHaze_kg),
    row('uncondensed', 'kg', 'less', ({ summary }) => summary.oilUncondensed_kg),
    row('leftInPlant', 'kg', 'less', ({ summary }) => summary.oilLeft_kg),
    ...shares,
  ];
}

/** Every run by its name, told apart by a number where several are called the same. */
export function compareHeads(results: readonly RunResult[]): CompareRun[] {
  const names = results.map(({ scenario }) => scenario.name.trim());
  return results.map((result, at) => {
    const name = names[at] as string;
    const number = names.filter((other) => other === name).length > 1 ? at + 1 : null;
    return { name, number, ...cautionsOf(result) };
  });
}
