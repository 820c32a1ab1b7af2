/** What is said of a lesson that a teacher writes. */
import type { OwnLessonProblem } from '../answers/lessons/own-lesson-file.ts';
import { ownLesson } from './english/own-lesson.ts';
import type { Reader } from './language.ts';
import { problemMessage } from './problems.ts';
import { section } from './section.ts';

export const ownLessonMessages = section<ReturnType<typeof ownLesson>>({ en: ownLesson });

const OPTION = /^question\.options\.(\d+)$/u;

/** What is wrong, with the field, what stands there and what is allowed. */
export function ownLessonProblem(problem: OwnLessonProblem, reader: Reader): string {
  const words = ownLessonMessages(reader);
  const { kind, path, value } = problem;
  if (problem.kind === 'bad-still') return words.ofStill(problemMessage(problem.values.problem, reader));
  const place = OPTION.exec(path)?.[1];
  const name = place === undefined ? (words.fields[path] ?? path) : words.option(Number(place) + 1);
  const quantity = 'quantity' in problem.values ? problem.values.quantity : undefined;
  const say = words.allowed[problem.kind] as (values: OwnLessonProblem['values']) => string;
  const what = say(problem.values);
  if (kind === 'not-a-lesson') return words.notALesson(what);
  if (value === undefined || value === null || value === '') return words.missing(name, what);
  return words.sentence(name, words.given(value, quantity), what);
}
