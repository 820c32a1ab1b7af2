/** Puts the still of a link on the bench, and says what became of it. */
import type { Bench } from '../state/bench.ts';
import { readShareHash } from '../state/share-link.ts';

export async function openSharedStill(bench: Bench, hash: string): Promise<string> {
  const link = await readShareHash(hash);
  const problem = link.ok ? await bench.load(link.json) : link.message;
  return problem === null
    ? 'This still came with the link. Undo brings back the one before.'
    : `The link was not opened, and your work is as it was. ${problem}`;
}
