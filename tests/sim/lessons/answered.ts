/** Answers of the lessons, each worked out once for all tests. */
import type { LessonId } from '../../../sim/answers/lessons/facts.ts';
import { answerLesson, type LessonAnswer } from '../../../sim/answers/lessons/lessons.ts';
import type { Turned } from '../../../sim/answers/lessons/lesson.ts';

const known = new Map<string, LessonAnswer>();

export function answered<Id extends LessonId>(id: Id, turned: Turned = {}): Extract<LessonAnswer, { id: Id }> {
  const key = `${id} ${JSON.stringify(turned)}`;
  const answer = known.get(key) ?? answerLesson(id, turned);
  known.set(key, answer);
  return answer as Extract<LessonAnswer, { id: Id }>;
}
