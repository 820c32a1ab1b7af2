/** What the reader is told where two windows have changed the same thing at once. */
import { isObject } from '../../sim/index.ts';
import type { Clash } from './kept-writes.ts';

const nameOf = (value: unknown): string =>
  isObject(value) && typeof value['name'] === 'string' && value['name'] !== '' ? `“${value['name']}”` : 'An entry';

/** `null` where nobody need choose: both changes stand in one, or the later says all that the earlier did. */
export function clashWords({ key, mine, theirs, beside }: Clash): string | null {
  if (key.startsWith('compared'))
    return beside.length === 0
      ? null
      : 'The comparison was changed in two windows at once. Compare shows this window’s and offers the other.';
  if (!/^(?:run-book|shelf)\//u.test(key)) return null;
  if (mine === undefined) return `${nameOf(theirs)} was changed in another window, so it is not deleted.`;
  const name = nameOf(mine);
  if (theirs === undefined) return `${name} was deleted in another window. It was changed in this one, so it is kept.`;
  return beside.length === 0
    ? null
    : `${name} was changed in two windows at once. Both are kept: the other one has “(other window)” in its name.`;
}
