/** What differs between two pieces of JSON, so that a scenario can be told by an example and a few changes. */
import { isObject } from '../../sim/index.ts';

/** Values that replace others, nested like what they change, and the paths of those that are gone. */
export interface Patch {
  readonly set: Readonly<Record<string, unknown>>;
  readonly gone: readonly (readonly string[])[];
}

const equal = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** The changes that make `to` of `from`; a list is one value. */
export function patchBetween(from: Readonly<Record<string, unknown>>, to: Readonly<Record<string, unknown>>): Patch {
  const set: Record<string, unknown> = {};
  const gone: (readonly string[])[] = Object.keys(from)
    .filter((key) => !(key in to))
    .map((key) => [key]);
  for (const [key, value] of Object.entries(to)) {
    const before = from[key];
    if (equal(before, value)) continue;
    if (!isObject(before) || !isObject(value)) {
      set[key] = value;
      continue;
    }
    const inner = patchBetween(before, value);
    set[key] = inner.set;
    gone.push(...inner.gone.map((path) => [key, ...path]));
  }
  return { set, gone };
}

function withSet(from: Readonly<Record<string, unknown>>, set: Readonly<Record<string, unknown>>) {
  const whole: Record<string, unknown> = { ...from };
  for (const [key, value] of Object.entries(set)) {
    const before = Object.hasOwn(from, key) ? from[key] : undefined;
    whole[key] = isObject(before) && isObject(value) ? withSet(before, value) : value;
  }
  return whole;
}

function without(from: Readonly<Record<string, unknown>>, [key, ...rest]: readonly string[]): Record<string, unknown> {
  const { [key ?? '']: inner, ...others } = from;
  return rest.length > 0 && isObject(inner) ? { ...from, [key ?? '']: without(inner, rest) } : others;
}

export const patched = (from: Readonly<Record<string, unknown>>, { set, gone }: Patch): Record<string, unknown> =>
  gone.reduce((whole, path) => without(whole, path), withSet(from, set));
