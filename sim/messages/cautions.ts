/** Cautions at the still’s hazards. */
import { cautions, type CautionWords } from './english/cautions.ts';
import type { Reader } from './language.ts';
import type { CautionFact, CautionValues } from './part-facts.ts';
import { section } from './section.ts';

const cautionMessages = section<ReturnType<typeof cautions>>({ en: cautions });

export function cautionMessage<K extends keyof CautionValues>(
  { kind, values }: CautionFact,
  reader: Reader,
): CautionWords {
  const say = cautionMessages(reader)[kind as K];
  return say(values as CautionValues[K]);
}
