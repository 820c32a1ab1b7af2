/** The table of a comparison: one row a number, one value a run, with the differences from the first. */
import { constituentById } from '../../fluids/constituents.ts';
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
  readonly title: string;
  readonly unit: string;
  /** Which way is the better one, where that can be said. */
  readonly better: 'more' | 'less' | 'neither';
  /** One value a run; `null` where the run never got that far. */
  readonly values: readonly (number | null)[];
  /** Value less that of the first run. */
  readonly differences: readonly (number | null)[];
}

export interface CompareRun {
  readonly name: string;
  /** Most serious thing that happened; `null` when nothing but milestones. */
  readonly worst: Severity | null;
  /** Alarms and cares, alarms first, in the order of their times. */
  readonly cautions: readonly RunEvent[];
}

const WATER_DENSITY = 998;

/** Names that tell the runs apart, even when two scenarios are called the same. */
function namesOf(results: readonly RunResult[]): string[] {
  const names = results.map(({ scenario }) => scenario.name.trim() || 'Untitled');
  return names.map((name, at) => (names.filter((other) => other === name).length > 1 ? `${name} (${at + 1})` : name));
}

function runOf({ events }: RunResult, name: string): CompareRun {
  const serious = (severity: Severity) => events.filter((event) => event.severity === severity);
  const cautions = [...serious('alarm'), ...serious('care')];
  return { name, worst: cautions[0]?.severity ?? null, cautions };
}

const rowOf = (
  results: readonly RunResult[],
  id: CompareRow['id'],
  title: string,
  unit: string,
  better: CompareRow['better'],
  read: (result: RunResult) => number | null,
): CompareRow => {
  const values = results.map(read);
  const first = values[0] ?? null;
  return {
    id,
    title,
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
    ...rest: [CompareRow['id'], string, string, CompareRow['better'], (result: RunResult) => number | null]
  ) => rowOf(results, ...rest);
  const constituents = [...new Set(results.flatMap(({ summary }) => Object.keys(summary.oilByConstituent_kg)))];
  const shares = constituents
    .map((id) =>
      row(`share-${id}`, `${constituentById(id).name} in the oil`, '1', 'neither', (result) => shareOf(result, id)),
    )
    .sort(
      (a, b) => Math.max(...b.values.map((value) => value ?? 0)) - Math.max(...a.values.map((value) => value ?? 0)),
    );
  const cost = ({ summary }: RunResult): number => summary.energyCost + summary.waterCost;
  const came = ({ record }: RunResult): number =>
    (record.columns.hydrosol_kg[record.rows - 1] as number) + (record.columns.returned_kg[record.rows - 1] as number);
  return [
    row('oil', 'Oil collected', 'mL', 'more', ({ summary }) => summary.oilCollected_mL),
    row('recovery', 'Share of the oil in the charge', '1', 'more', ({ summary }) => summary.recovery),
    row('firstDrop', 'First drop', 's', 'less', ({ summary }) => summary.firstDrop_s),
    row('timeTo90', 'To 90 % of its oil', 's', 'less', ({ summary }) => summary.t90_s),
    row('end', 'End of the run', 's', 'less', ({ summary }) => summary.end_s),
    row('distillate', 'Water distilled', 'kg', 'neither', came),
    row('oilPerSteam', 'Oil per water distilled', 'mL/kg', 'more', (result) =>
      ratio(result.summary.oilCollected_mL, came(result)),
    ),
    row('coolantUsed', 'Cooling water', 'L', 'less', ({ summary }) => (summary.coolantUsed_kg / WATER_DENSITY) * 1000),
    row('energy', 'Energy', 'J', 'less', ({ summary }) => summary.energyFuel_J),
    row('cost', 'Energy and water', '1', 'less', cost),
    row('costPerOil', 'Energy and water a millilitre', '1/mL', 'less', (result) =>
      ratio(cost(result), result.summary.oilCollected_mL),
    ),
    row('coilNeeded', 'Longest tube needed to condense', 'm', 'less', ({ summary }) => summary.condensingLengthPeak_m),
    row('distillateWarmest', 'Warmest distillate', '°C', 'less', ({ summary }) => summary.condensatePeak_C),
    row('dissolved', 'Oil lost in solution', 'kg', 'less', ({ summary }) => summary.oilDissolved_kg),
    row('haze', 'Oil lost as haze', 'kg', 'less', ({ summary }) => summary.oilHaze_kg),
    row('uncondensed', 'Oil lost as vapour', 'kg', 'less', ({ summary }) => summary.oilUncondensed_kg),
    row('leftInPlant', 'Oil left behind', 'kg', 'less', ({ summary }) => summary.oilLeft_kg),
    ...shares,
  ];
}

export function compareHeads(results: readonly RunResult[]): CompareRun[] {
  const names = namesOf(results);
  return results.map((result, at) => runOf(result, names[at] as string));
}
