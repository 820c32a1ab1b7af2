/** Two changes of one thing as one, where they do not touch the same part of it. */
import { isObject } from '../../sim/index.ts';

/** What `threeWay` answers where both have changed the same part. */
export const CONFLICT = Symbol('conflict');

const equal = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);

/** Parts by name; a list has parts only while its length stays. */
function partsOf(base: unknown, mine: unknown, theirs: unknown): readonly string[] | null {
  if (Array.isArray(base) && Array.isArray(mine) && Array.isArray(theirs))
    return base.length === mine.length && base.length === theirs.length ? Object.keys(base) : null;
  if (!isObject(base) || !isObject(mine) || !isObject(theirs)) return null;
  return [...new Set([...Object.keys(theirs), ...Object.keys(mine)])];
}

const at = (whole: unknown, part: string): unknown =>
  Object.hasOwn(whole as object, part) ? (whole as Readonly<Record<string, unknown>>)[part] : undefined;

/** @param base what both began from; `undefined` where it is not known */
export function threeWay(base: unknown, mine: unknown, theirs: unknown): unknown {
  if (equal(mine, theirs) || equal(base, theirs)) return mine;
  if (equal(base, mine)) return theirs;
  const parts = partsOf(base, mine, theirs);
  if (parts === null) return CONFLICT;
  const joined = parts.map((part) => [part, threeWay(at(base, part), at(mine, part), at(theirs, part))] as const);
  if (joined.some(([, value]) => value === CONFLICT)) return CONFLICT;
  const left = joined.filter(([, value]) => value !== undefined);
  return Array.isArray(base) ? left.map(([, value]) => value) : Object.fromEntries(left);
}
