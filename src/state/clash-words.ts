/** What the reader is told where two windows have changed the same thing at once. */
import { isObject } from '../../sim/index.ts';
import { SHELF } from './kept-still.ts';
import type { Clash } from './kept-writes.ts';
import { scenarioIn } from './still-names.ts';

/** A log bears its name itself, a still in its scenario. */
const nameOf = (value: unknown): string => {
  const named = scenarioIn(value);
  return isObject(named) && typeof named['name'] === 'string' && named['name'] !== ''
    ? `“${named['name']}”`
    : 'An entry';
};

const isDeleted = (value: unknown): boolean =>
  value === undefined || (isObject(value) && typeof value['deleted_ms'] === 'number');

/** `null` where nobody need choose: both changes stand in one, or the later says all that the earlier did. */
export function clashWords({ key, mine, theirs, beside }: Clash): string | null {
  if (key.startsWith('compared'))
    return beside.length === 0
      ? null
      : 'The comparison was changed in two windows at once. Compare shows this window’s and offers the other.';
  const isStill = key.startsWith(SHELF);
  if (!isStill && !key.startsWith('run-book/')) return null;
  if (isDeleted(mine))
    return isDeleted(theirs) ? null : `${nameOf(theirs)} was changed in another window, so it is not deleted.`;
  const name = nameOf(mine);
  if (isDeleted(theirs)) return `${name} was deleted in another window. It was changed in this one, so it is kept.`;
  if (beside.length === 0) return null;
  return isStill
    ? `${name} was changed in two windows at once. Both are kept among your stills: the other one has “(other window)” in its name.`
    : `${name} was changed in two windows at once. Both are kept: the other one has “(other window)” in its name.`;
}
