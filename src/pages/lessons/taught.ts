/** A lesson as it is taught: one of the course, or one that a teacher wrote. */
import type { JSX } from 'solid-js';
import {
  findLesson,
  lessonCommonMessages,
  lessonMessages,
  toldLesson,
  type Control,
  type ControlWords,
  type LessonAnswer,
  type LessonId,
  type LessonWords,
  type OwnAnswer,
  type Question,
  type QuestionWords,
  type Reader,
  type ToldLesson,
  type Turned,
} from '../../../sim/index.ts';
import { workerPool } from '../../workers/start-pool.ts';

export type TaughtAnswer = LessonAnswer | OwnAnswer;

export interface TaughtLesson {
  /** What the class commits itself to is remembered under it. */
  readonly key: string;
  readonly title: string;
  readonly setUp: readonly string[];
  readonly cautions: readonly string[];
  readonly questions: readonly Question[];
  readonly asked: Readonly<Record<string, QuestionWords>>;
  /** Turned by the class before it commits itself. */
  readonly choose: { readonly control: Control; readonly words: ControlWords } | null;
  readonly believed: string;
  readonly leavesOut: string;
  /** A question to go on with, for the answer sheet. */
  readonly further: string;
  reveal(turned: Turned): Promise<TaughtAnswer>;
  told(answer: TaughtAnswer): ToldLesson;
  /** Something to try at the end; `null` where there is nothing. */
  readonly lastStep: ((answer: TaughtAnswer, turned: Turned) => JSX.Element) | null;
  picture(answer: TaughtAnswer): JSX.Element;
  working(answer: TaughtAnswer): JSX.Element;
}

/** What a lesson of the course holds for a sheet or a step; its pictures and what is tried are added by the page. */
export function courseText(
  id: LessonId,
  reader: Reader,
): Omit<TaughtLesson, 'picture' | 'working' | 'lastStep'> & { readonly words: LessonWords<LessonId> } {
  const lesson = findLesson(id);
  const words: LessonWords<LessonId> = lessonMessages(id, reader);
  const common = lessonCommonMessages(reader);
  return {
    key: id,
    words,
    title: words.title,
    setUp: words.setUp,
    cautions: [
      ...(lesson.modelOnly ? [common.modelOnly] : []),
      ...lesson.hazards.map((hazard) => common.hazards[hazard]),
    ],
    questions: lesson.questions,
    asked: words.questions,
    choose: lesson.choose && { control: lesson.choose, words: words.choose ?? words.tryIt },
    believed: words.believed,
    leavesOut: words.leavesOut,
    further: words.further,
    reveal: (turned) => workerPool().ask('lesson', [id, turned], { priority: 'high', remember: true }),
    told: (answer) => {
      if (answer.id === 'own') throw new RangeError('this answer is of another lesson');
      return toldLesson(answer, reader);
    },
  };
}
