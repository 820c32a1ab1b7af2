/** What a lesson says: before the class has committed itself nothing of the answer, afterwards everything with its numbers. */
import type { LessonId } from '../answers/lessons/facts.ts';
import type { LessonAnswer } from '../answers/lessons/lessons.ts';
import { lessonCommon } from './english/lessons-common.ts';
import { lessonsOfHeat } from './english/lessons-of-heat.ts';
import { lessonsOfOil } from './english/lessons-of-oil.ts';
import type { Reader } from './language.ts';
import type { BigNumber, LessonMessages, LessonWords } from './lesson-words.ts';
import { section } from './section.ts';

export const lessonCommonMessages = section<ReturnType<typeof lessonCommon>>({ en: lessonCommon });

const all = section<LessonMessages>({ en: (q) => ({ ...lessonsOfHeat(q), ...lessonsOfOil(q) }) });

export const lessonMessages = <Id extends LessonId>(id: Id, reader: Reader): LessonWords<Id> => all(reader)[id];

export interface ToldLesson {
  readonly big: readonly BigNumber[];
  readonly happened: readonly string[];
  readonly why: readonly string[];
}

/** What a lesson tells once it is revealed. */
export function toldLesson({ id, facts }: LessonAnswer, reader: Reader): ToldLesson {
  const words = lessonMessages(id, reader) as LessonWords<LessonId>;
  return { big: words.big(facts), happened: words.happened(facts), why: words.why(facts) };
}
