/** The lessons in the order of a course, and what the model answers to one. */
import { simulate } from '../../run/simulate.ts';
import type { RunResult } from '../../run/result.ts';
import type { LessonId } from './facts.ts';
import type { Answered, Lesson, Turned } from './lesson.ts';
import { closedOutlet } from './closed-outlet.ts';
import { dropsRise } from './drops-rise.ts';
import { dryPot } from './dry-pot.ts';
import { floatOrSink } from './float-or-sink.ts';
import { gentleOrHard } from './gentle-or-hard.ts';
import { harderFlame } from './harder-flame.ts';
import { heatOfSteam } from './heat-of-steam.ts';
import { steamInTheCoil } from './steam-in-the-coil.ts';
import { tapOff } from './tap-off.ts';
import { twoLiquids } from './two-liquids.ts';
import { waterBack } from './water-back.ts';
import { whenToStop } from './when-to-stop.ts';

const LESSONS: { readonly [Id in LessonId]: Lesson<Id> } = {
  'heat-of-steam': heatOfSteam,
  'harder-flame': harderFlame,
  'two-liquids': twoLiquids,
  'steam-in-the-coil': steamInTheCoil,
  'tap-off': tapOff,
  'gentle-or-hard': gentleOrHard,
  'when-to-stop': whenToStop,
  'float-or-sink': floatOrSink,
  'drops-rise': dropsRise,
  'water-back': waterBack,
  'closed-outlet': closedOutlet,
  'dry-pot': dryPot,
};

export const LESSON_IDS = Object.keys(LESSONS) as readonly LessonId[];

export const findLesson = <Id extends LessonId>(id: Id): Lesson<Id> => LESSONS[id];

/** Lessons that fill a time in class, in order, min of the class. */
export const CLASS_PLANS: Readonly<Record<45 | 90, readonly LessonId[]>> = {
  45: ['harder-flame', 'two-liquids', 'steam-in-the-coil', 'tap-off'],
  90: [
    'heat-of-steam',
    'two-liquids',
    'steam-in-the-coil',
    'gentle-or-hard',
    'when-to-stop',
    'float-or-sink',
    'closed-outlet',
  ],
};

export type LessonAnswer = {
  readonly [Id in LessonId]: Answered<Id> & { readonly id: Id; readonly runs: readonly RunResult[] };
}[LessonId];

/** Runs the stills of a lesson as its controls stand, and answers its questions. */
export function answerLesson<Id extends LessonId>(id: Id, turned: Turned = {}): Extract<LessonAnswer, { id: Id }> {
  const lesson = findLesson(id);
  const runs = lesson.stills(turned).map(simulate);
  const failure = runs.find((run) => run.failure !== null)?.failure;
  if (failure) throw new RangeError(`the calculation failed at ${failure.time_s} s`);
  return { id, runs, ...lesson.answer(runs, turned) } as unknown as Extract<LessonAnswer, { id: Id }>;
}
