/** Messages on which of the compared runs to take. */
import type { Recommendation } from '../answers/comparison/recommendation.ts';
import type { CompareRun } from '../answers/comparison/table.ts';
import { recommendation } from './english/recommendation.ts';
import type { Reader } from './language.ts';
import { section, wholeMessage } from './section.ts';

export type RecommendationMessages = ReturnType<typeof recommendation>;

export const recommendationMessages = section<RecommendationMessages>({ en: recommendation });

/** A recommendation with its words, as it is saved and printed: dangers first. */
export function toldRecommendation(found: Recommendation, heads: readonly CompareRun[], reader: Reader) {
  const messages = recommendationMessages(reader);
  return {
    ...found,
    sentences: [...messages.dangers(found, heads), messages.choice(found, heads)].map(wholeMessage),
    note: messages.note(found),
  };
}
