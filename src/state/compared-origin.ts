/** Where a compared run comes from, so that it can be made anew when the still on the bench has changed. */
import { isObject, type GentleAndHard, type Scenario } from '../../sim/index.ts';
import { valueAtPath, withValueAtPath } from './field-path.ts';

export interface Origin {
  /** Taken from the bench as it stood, or made from it by boiling it gently or hard. */
  readonly made: 'copy' | 'gentle' | 'hard';
  /** The still on the bench at that moment. */
  readonly bench: Scenario;
  /** The reader's own name for it; `null` where it bears the name of its still. */
  readonly name: string | null;
  /** What the reader has set since, by path. */
  readonly changes: Readonly<Record<string, unknown>>;
}

export const originOf = (bench: Scenario, made: Origin['made'] = 'copy'): Origin => ({
  made,
  bench,
  name: null,
  changes: {},
});

/** The origin after the reader has set one more field. */
export const changedBy = (origin: Origin, path: string, value: unknown): Origin =>
  path === 'name' ? { ...origin, name: String(value) } : { ...origin, changes: { ...origin.changes, [path]: value } };

const same = (one: Scenario, other: Scenario): boolean =>
  one === other || JSON.stringify(one) === JSON.stringify(other);

/** Whether the bench holds another still than the one that compared runs come from, and none of them either. */
export const isStale = (
  compared: readonly { readonly scenario: Scenario; readonly origin: Origin | null }[],
  bench: Scenario,
): boolean =>
  compared.some(({ origin }) => origin !== null && !same(origin.bench, bench)) &&
  !compared.some(({ scenario }) => same(scenario, bench));

/** The scenario made anew from another bench. What the reader has set and the new still lacks is left out. */
export function madeAnew(
  { made, name, changes }: Origin,
  bench: Scenario,
  boiled: GentleAndHard | null,
): { readonly scenario: Scenario; readonly origin: Origin } {
  const start = made === 'copy' || boiled === null ? bench : boiled[made];
  const kept = Object.entries(changes).filter(([path]) => valueAtPath(start, path) !== undefined);
  const scenario = kept.reduce((whole, [path, value]) => withValueAtPath(whole, path, value), start);
  return {
    scenario: name === null ? scenario : { ...scenario, name },
    origin: { made, bench, name, changes: Object.fromEntries(kept) },
  };
}

/** An origin as it was kept; `null` where there is none. The bench in it is only ever compared with another. */
export function readOrigin(value: unknown): Origin | null {
  if (!isObject(value)) return null;
  const { made, bench, name, changes } = value;
  if (made !== 'copy' && made !== 'gentle' && made !== 'hard') return null;
  if (!isObject(bench) || !isObject(changes)) return null;
  return { made, bench: bench as unknown as Scenario, name: typeof name === 'string' ? name : null, changes };
}
