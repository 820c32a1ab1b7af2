/** In which kind of unit a quantity of the reference is shown, where its SI unit alone does not say. */
import type { KindName } from '../../../sim/index.ts';

export interface Shown {
  readonly unit: string;
  readonly range?: readonly [number, number];
  readonly isDifference?: true;
}

/** Lengths up to this are those of tubes, pieces and walls, m. */
const SMALL = 0.1;
/** And up to this those of drops, m. */
const TINY = 2e-3;

/** @param usual an ordinary value, by which lengths of a drop, a tube and a run are told apart */
export function kindShown({ unit, isDifference }: Shown, usual: number): KindName | undefined {
  if (isDifference) return 'temperatureDifference';
  if (unit !== 'm') return undefined;
  const size = Math.abs(usual);
  if (size > 0 && size < TINY) return 'drop';
  return size < SMALL ? 'bore' : 'run';
}
