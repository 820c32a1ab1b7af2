/** What is kept of a still that two windows have changed at once. */
import { isObject } from '../../sim/index.ts';
import type { Keeping } from './kept-shape.ts';
import { SHELF, stillShape, type KeptStill } from './kept-still.ts';
import { newId } from './new-id.ts';
import { namedAfter, nameOfStill } from './still-names.ts';
import { CONFLICT, threeWay } from './three-way.ts';

const read = (value: unknown): KeptStill | null => stillShape.read(value, stillShape.version);

const OTHER_WINDOW = 'other window';

/**
 * Changes of different fields become one. Of the same field both are kept: this window's under the id that both had, the
 * other's beside it, which the other window then finds again as its own. What somebody works on is not deleted.
 */
export const bothStills: NonNullable<Keeping['both']> = (key, mine, theirs, base) => {
  const [own, other, from] = [read(mine), read(theirs), read(base)];
  if (!own || !other) return { [key]: mine };
  if (own.deleted_ms !== null && other.deleted_ms === null) return { [key]: theirs };
  const visit = threeWay(from?.visit, own.visit, other.visit);
  const joined = {
    ...own,
    touched: own.touched || other.touched,
    visit: visit === CONFLICT || visit === undefined ? null : visit,
    deleted_ms: own.deleted_ms === null ? null : other.deleted_ms,
  };
  const scenario = threeWay(from?.scenario, own.scenario, other.scenario);
  if (scenario !== CONFLICT) return { [key]: { ...joined, scenario } };
  // First what the other window must know its own by, before it hears that the id holds something else.
  const name = namedAfter(nameOfStill(other.scenario), OTHER_WINDOW);
  return {
    [SHELF + newId()]: { ...other, scenario: { ...(other.scenario as object), name }, split: key.slice(SHELF.length) },
    [key]: joined,
  };
};

/** Whether a still was parted from another by `bothStills` as it stood there. */
export const isPartedFrom = (parted: KeptStill, id: string, scenario: unknown): boolean =>
  parted.split === id &&
  isObject(scenario) &&
  isObject(parted.scenario) &&
  JSON.stringify({ ...parted.scenario, name: '' }) === JSON.stringify({ ...scenario, name: '' });
