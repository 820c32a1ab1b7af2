/** Names of the oil's constituents, in the order in which they boil. */
import { constituents } from '../../../sim/index.ts';
import type { OilName } from './oil.ts';

const byId = new Map(constituents.map((constituent) => [constituent.id, constituent]));

/** The most volatile first; a constituent without data keeps its id and comes last. */
export const oilNames = (ids: readonly string[]): readonly OilName[] =>
  ids
    .map((id) => {
      const known = byId.get(id);
      return {
        id,
        name: known?.shortName ?? known?.name ?? id,
        boiling_K: known?.normalBoilingPoint.value ?? Infinity,
      };
    })
    .sort((a, b) => (a.boiling_K === b.boiling_K ? 0 : a.boiling_K - b.boiling_K))
    .map(({ id, name }) => ({ id, name }));
