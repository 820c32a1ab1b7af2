/** A teacher's lesson in an address: the lesson without its still, and how the still differs from a known one. */
import {
  isObject,
  readOwnLesson,
  writtenOwnLesson,
  type OwnLesson,
  type ReadOwnLesson,
} from '../../../../sim/index.ts';
import { packJson, stillDifference, stillFromDifference, unpackLetters } from '../../../state/share-link.ts';

/** What stands before the letters in the address of the place. */
export const OWN_ADDRESS = 'own/';

export async function ownAddress(lesson: OwnLesson): Promise<string> {
  const still = 'scenario' in lesson.still ? { differs: await stillDifference(lesson.still.scenario) } : lesson.still;
  return `#lessons/${OWN_ADDRESS}${await packJson({ ...(writtenOwnLesson(lesson) as object), still })}`;
}

/** What the letters hold; `null` where they are not whole. */
export async function readOwnAddress(letters: string): Promise<ReadOwnLesson | null> {
  try {
    const json = await unpackLetters(letters);
    if (!isObject(json) || !isObject(json['still'])) return readOwnLesson(json);
    const { differs } = json['still'];
    return readOwnLesson(
      differs === undefined ? json : { ...json, still: { scenario: await stillFromDifference(differs) } },
    );
  } catch {
    return null;
  }
}
