/** What a comparison of runs comes to, in two to five sentences worked out from its numbers. */
import { minutes } from '../../run/words.ts';
import type { CompareRow, CompareRun } from './table.ts';

/** Differences smaller than these, relative or in shares of the oil, are not worth a sentence. */
const WORTH_TELLING = 0.02;
const SHARE_WORTH_TELLING = 0.01;
const COST_WORTH_TELLING = 0.05;

/** Places of the smallest and the largest value; `null` with fewer than two values. */
function ends(row: CompareRow): { low: number; high: number; least: number; most: number } | null {
  const known = row.values.flatMap((value, place) => (value === null ? [] : [{ value, place }]));
  if (known.length < 2) return null;
  const sorted = known.sort((a, b) => a.value - b.value);
  const first = sorted[0] as { value: number; place: number };
  const last = sorted[sorted.length - 1] as { value: number; place: number };
  return { low: first.place, high: last.place, least: first.value, most: last.value };
}

const differ = (range: { least: number; most: number } | null, by: number): boolean =>
  range !== null && range.most - range.least > by * Math.max(Math.abs(range.most), Math.abs(range.least));

const amount = (value: number): string => (value >= 100 ? value.toFixed(0) : Number(value.toPrecision(2)).toString());
const percent = (share: number): string => `${(100 * share).toFixed(share < 0.1 ? 1 : 0)} %`;

function aboutOil(runs: readonly CompareRun[], oil: CompareRow): string {
  const range = ends(oil) as NonNullable<ReturnType<typeof ends>>;
  if (range.most === 0) return 'None of these runs collects any oil.';
  if (!differ(range, WORTH_TELLING)) return `All collect about the same oil, ${amount(range.most)} mL.`;
  return `“${(runs[range.high] as CompareRun).name}” collects the most oil, ${amount(range.most)} mL; “${(runs[range.low] as CompareRun).name}” the least, ${amount(range.least)} mL.`;
}

function aboutTime(runs: readonly CompareRun[], time: CompareRow): string {
  const range = ends(time);
  if (range === null) return 'Fewer than two of them collect oil, so their times cannot be compared.';
  if (!differ(range, WORTH_TELLING))
    return `They take about the same time to 90 % of their oil, ${minutes(range.least)}.`;
  return `“${(runs[range.low] as CompareRun).name}” has 90 % of its oil after ${minutes(range.least)}, “${(runs[range.high] as CompareRun).name}” after ${minutes(range.most)}.`;
}

/** Whether the quick run pays for its haste in steam, water and energy, per millilitre. */
function aboutCost(runs: readonly CompareRun[], cost: CompareRow, perSteam: CompareRow): string | null {
  const price = ends(cost);
  if (price !== null && differ(price, COST_WORTH_TELLING) && price.least > 0)
    return `A millilitre costs least in “${(runs[price.low] as CompareRun).name}”; in “${(runs[price.high] as CompareRun).name}” it takes ${amount(price.most / price.least)} times as much money for energy and water.`;
  const steam = ends(perSteam);
  if (steam !== null && differ(steam, COST_WORTH_TELLING))
    return `A kilogram of steam brings ${amount(steam.most)} mL in “${(runs[steam.high] as CompareRun).name}” and ${amount(steam.least)} mL in “${(runs[steam.low] as CompareRun).name}”.`;
  return null;
}

function aboutOilMakeUp(runs: readonly CompareRun[], rows: readonly CompareRow[]): string | null {
  let telling: { row: CompareRow; range: NonNullable<ReturnType<typeof ends>> } | null = null;
  for (const row of rows.filter(({ id }) => id.startsWith('share-'))) {
    const range = ends(row);
    if (
      range !== null &&
      range.most - range.least >= SHARE_WORTH_TELLING &&
      (telling === null || range.most - range.least > telling.range.most - telling.range.least)
    )
      telling = { row, range };
  }
  if (telling === null) return null;
  const { row, range } = telling;
  const name = row.title.replace(/ in the oil$/, '');
  return `The oils differ most in ${name}: ${percent(range.most)} in “${(runs[range.high] as CompareRun).name}”, ${percent(range.least)} in “${(runs[range.low] as CompareRun).name}”.`;
}

const CAUSE: Readonly<Record<string, string>> = {
  'vapour-escapes': 'lets vapour escape',
  'cooling-boils': 'brings the cooling water to the boil',
  'pot-dry': 'runs the pot dry',
  'pot-low': 'runs the pot low',
  'pressure-high': 'builds up pressure',
  scorch: 'scorches the charge',
  'circuit-overloaded': 'overloads the circuit',
};

function aboutSafety(runs: readonly CompareRun[]): string | null {
  const alarmed = runs.filter(({ worst }) => worst === 'alarm');
  if (alarmed.length === 0) return null;
  const told = alarmed.map(({ name, cautions }) => {
    const kinds = [...new Set(cautions.filter(({ severity }) => severity === 'alarm').map(({ kind }) => kind))];
    const [first, second] = kinds.map((kind) => CAUSE[kind] ?? 'needs you at once');
    return `“${name}” ${first}${second === undefined || second === first ? '' : ` and ${second}`}`;
  });
  const few = runs.length - alarmed.length;
  return `${told.join('; ')}${few === 0 ? '; none of these runs is safe as set.' : ': do not run it so.'}`;
}

/** Two to five sentences: oil, time, then price or steam, make-up and alarms where there is something to say. */
export function concludeComparison(runs: readonly CompareRun[], rows: readonly CompareRow[]): string[] {
  const row = (id: CompareRow['id']): CompareRow => rows.find((entry) => entry.id === id) as CompareRow;
  return [
    aboutOil(runs, row('oil')),
    aboutTime(runs, row('timeTo90')),
    aboutCost(runs, row('costPerOil'), row('oilPerSteam')),
    aboutOilMakeUp(runs, rows),
    aboutSafety(runs),
  ].filter((sentence) => sentence !== null);
}
