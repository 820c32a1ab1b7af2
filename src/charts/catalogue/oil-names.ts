/** Names of the oil's constituents, in the order in which they boil. */
import { constituents } from '../../../sim/index.ts';
import type { OilName } from './oil.ts';

const GREEK: Readonly<Record<string, string>> = { alpha: 'α', beta: 'β', gamma: 'γ' };

/** `alpha-pinene` to `α-pinene`; what stands in brackets after a name is left to the tables. */
export const shortName = (name: string): string =>
  name.replace(/ \(.*\)$/u, '').replace(/^(alpha|beta|gamma)-/u, (_, letter: string) => `${GREEK[letter] ?? letter}-`);

const places = new Map(
  constituents.map(({ id, name, normalBoilingPoint }) => [
    id,
    { name: shortName(name), boiling_K: normalBoilingPoint.value },
  ]),
);

/** The most volatile first; a constituent without data keeps its id and comes last. */
export const oilNames = (ids: readonly string[]): readonly OilName[] =>
  ids
    .map((id) => ({ id, name: places.get(id)?.name ?? id, boiling_K: places.get(id)?.boiling_K ?? Infinity }))
    .sort((a, b) => (a.boiling_K === b.boiling_K ? 0 : a.boiling_K - b.boiling_K))
    .map(({ id, name }) => ({ id, name }));
