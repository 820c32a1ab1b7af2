/** What a plant is mistaken for: the library's list, or the reader's own. */
import { lookAlikes, wordsOfOwn, type LookAlike } from '../../../../sim/index.ts';
import { ownPlantOf } from '../../../state/own-plants-store.ts';

export function lookAlikesOf(id: string): readonly LookAlike[] {
  const own = ownPlantOf(id);
  return own ? wordsOfOwn(own).lookAlikes : (lookAlikes[id] ?? []);
}

export const deadlyLookAlikes = (id: string): readonly LookAlike[] =>
  lookAlikesOf(id).filter(({ severity }) => severity === 'deadly');
