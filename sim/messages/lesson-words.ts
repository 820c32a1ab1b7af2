/** What a lesson is said in: nothing of the answer before the class has committed itself, then everything. */
import type { LessonFacts, LessonId } from '../answers/lessons/facts.ts';

/** A number that matters, and what it is. */
export interface BigNumber {
  readonly value: string;
  readonly says: string;
}

export interface QuestionWords {
  readonly ask: string;
  /** By the ids of the options. */
  readonly options?: Readonly<Record<string, string>>;
}

export interface ControlWords {
  readonly label: string;
  readonly options?: Readonly<Record<string, string>>;
}

export interface LessonWords<Id extends LessonId> {
  /** Asks; answers nothing. */
  readonly title: string;
  /** The still and what is done with it, before anybody has committed himself. */
  readonly setUp: readonly string[];
  /** By the ids of the questions. */
  readonly questions: Readonly<Record<string, QuestionWords>>;
  readonly choose?: ControlWords;
  /** What many believe; it is said after the reveal. */
  readonly believed: string;
  readonly big: (facts: LessonFacts[Id]) => readonly BigNumber[];
  readonly happened: (facts: LessonFacts[Id]) => readonly string[];
  readonly why: (facts: LessonFacts[Id]) => readonly string[];
  readonly tryIt: ControlWords & { readonly says: string };
  readonly leavesOut: string;
  /** A question to go on with, for the answer sheet. */
  readonly further: string;
}

export type LessonMessages = { readonly [Id in LessonId]: LessonWords<Id> };
