/** Names of the oil constituents, and the list to choose from. */
import { constituents } from '../../../../sim/index.ts';

const NAMES: ReadonlyMap<string, string> = new Map(constituents.map(({ id, name }) => [id, name]));

export const constituentName = (id: string): string => NAMES.get(id) ?? id;

/** By name, Greek letters and numbers in front counted like the rest. */
export const constituentIds: readonly string[] = [...NAMES.keys()].sort((a, b) =>
  constituentName(a).localeCompare(constituentName(b), 'en'),
);
