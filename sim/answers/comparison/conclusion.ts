/** What a comparison of runs comes to: two to five facts worked out from its numbers, what is dangerous first. */
import type { EventKind } from '../../run/result.ts';
import type { CompareRow, CompareRun } from './table.ts';

/** Place of a run among those compared, from 0, with its number. */
export interface RunValue {
  readonly run: number;
  readonly value: number;
}

/** What the runs have in common, so that their oil can be set side by side. */
export type Basis =
  /** As much water distilled. */
  | { readonly kind: 'water'; readonly water_kg: number }
  | { readonly kind: 'time'; readonly time_s: number }
  /** Neither: how long each runs has to be said. */
  | { readonly kind: 'none'; readonly times_s: readonly number[] };

/** Values are in the unit of their row: mL, s, the currency, mL/kg, shares. */
export type Conclusion =
  | { readonly kind: 'oil-none' }
  | { readonly kind: 'oil-alike'; readonly oil_mL: number; readonly basis: Basis }
  | { readonly kind: 'oil-differs'; readonly most: RunValue; readonly least: RunValue; readonly basis: Basis }
  /** Fewer than two of them collect oil. */
  | { readonly kind: 'time-unknown' }
  | { readonly kind: 'time-alike'; readonly time_s: number }
  | { readonly kind: 'time-differs'; readonly soonest: RunValue; readonly latest: RunValue }
  /** Energy and water for a millilitre: the dearest is so many times the cheapest. */
  | { readonly kind: 'cost-differs'; readonly cheapest: number; readonly dearest: number; readonly times: number }
  | { readonly kind: 'steam-differs'; readonly most: RunValue; readonly least: RunValue }
  | {
      readonly kind: 'make-up-differs';
      readonly constituent: string;
      readonly most: RunValue;
      readonly least: RunValue;
    }
  | {
      readonly kind: 'alarms';
      readonly severity: 'alarm';
      readonly runs: readonly { readonly run: number; readonly events: readonly EventKind[] }[];
      /** Whether every run raises an alarm. */
      readonly all: boolean;
    };

/** Differences smaller than these, relative or in shares of the oil, are not worth telling. */
export const WORTH_TELLING = 0.02;
const SHARE_WORTH_TELLING = 0.01;
const COST_WORTH_TELLING = 0.05;

interface Ends {
  readonly least: RunValue;
  readonly most: RunValue;
}

/** The smallest and the largest value; `null` with fewer than two values. */
function ends(row: CompareRow): Ends | null {
  const known = row.values.flatMap((value, run) => (value === null ? [] : [{ value, run }]));
  const sorted = known.sort((a, b) => a.value - b.value);
  const [least, most] = [sorted[0], sorted.at(-1)];
  return sorted.length < 2 || least === undefined || most === undefined ? null : { least, most };
}

const span = ({ least, most }: Ends): number => most.value - least.value;

const differ = (range: Ends, by: number): boolean =>
  span(range) > by * Math.max(Math.abs(range.most.value), Math.abs(range.least.value));

/** Equal time comes first, as it needs no explaining. */
function basisOf(end: CompareRow, distillate: CompareRow): Basis {
  const [times, water] = [ends(end), ends(distillate)];
  if (times !== null && !differ(times, WORTH_TELLING)) return { kind: 'time', time_s: times.most.value };
  if (water !== null && water.least.value > 0 && !differ(water, WORTH_TELLING))
    return { kind: 'water', water_kg: water.most.value };
  return { kind: 'none', times_s: end.values.map((time_s) => time_s ?? 0) };
}

function aboutOil(oil: CompareRow, basis: Basis): Conclusion {
  const range = ends(oil);
  if (range === null || range.most.value === 0) return { kind: 'oil-none' };
  return differ(range, WORTH_TELLING)
    ? { kind: 'oil-differs', ...range, basis }
    : { kind: 'oil-alike', oil_mL: range.most.value, basis };
}

function aboutTime(time: CompareRow): Conclusion {
  const range = ends(time);
  if (range === null) return { kind: 'time-unknown' };
  return differ(range, WORTH_TELLING)
    ? { kind: 'time-differs', soonest: range.least, latest: range.most }
    : { kind: 'time-alike', time_s: range.least.value };
}

/** Whether the quick run pays for its haste in steam, water and energy, per millilitre. */
function aboutCost(cost: CompareRow, perSteam: CompareRow): Conclusion | null {
  const price = ends(cost);
  if (price !== null && differ(price, COST_WORTH_TELLING) && price.least.value > 0)
    return {
      kind: 'cost-differs',
      cheapest: price.least.run,
      dearest: price.most.run,
      times: price.most.value / price.least.value,
    };
  const steam = ends(perSteam);
  return steam !== null && differ(steam, COST_WORTH_TELLING) ? { kind: 'steam-differs', ...steam } : null;
}

function aboutMakeUp(rows: readonly CompareRow[]): Conclusion | null {
  let telling: { readonly constituent: string; readonly range: Ends } | null = null;
  for (const row of rows) {
    const range = row.constituent === null ? null : ends(row);
    if (row.constituent === null || range === null || span(range) < SHARE_WORTH_TELLING) continue;
    if (telling === null || span(range) > span(telling.range)) telling = { constituent: row.constituent, range };
  }
  return telling === null ? null : { kind: 'make-up-differs', constituent: telling.constituent, ...telling.range };
}

function aboutSafety(runs: readonly CompareRun[]): Conclusion | null {
  const alarmed = runs.flatMap(({ cautions }, run) => {
    const events = [...new Set(cautions.filter(({ severity }) => severity === 'alarm').map(({ kind }) => kind))];
    return events.length === 0 ? [] : [{ run, events }];
  });
  return alarmed.length === 0
    ? null
    : { kind: 'alarms', severity: 'alarm', runs: alarmed, all: alarmed.length === runs.length };
}

/** Alarms where there are any, oil, time, then price or steam and make-up where there is something to tell. */
export function concludeComparison(runs: readonly CompareRun[], rows: readonly CompareRow[]): Conclusion[] {
  const row = (id: CompareRow['id']): CompareRow => rows.find((entry) => entry.id === id) as CompareRow;
  return [
    aboutSafety(runs),
    aboutOil(row('oil'), basisOf(row('end'), row('distillate'))),
    aboutTime(row('timeTo90')),
    aboutCost(row('costPerOil'), row('oilPerSteam')),
    aboutMakeUp(rows),
  ].filter((conclusion) => conclusion !== null);
}
