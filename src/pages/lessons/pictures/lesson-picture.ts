/** Which picture explains which lesson, and what its time mark stands for. */
import { quantities, type LessonAnswer, type Reader, type RunResult } from '../../../../sim/index.ts';
import type { Picture } from '../../../charts/pictures/picture.ts';
import { flatStretch, kilojoules, ladders, peopleOnLid, tubLayers, waterLeft, type Sheet } from './heat-pictures.ts';
import {
  dropsWithForces,
  jars,
  lastTenth,
  PICTURE_FROM_K,
  pressuresAddUp,
  twoBoils,
  withReturn,
} from './oil-pictures.ts';

function firstOf(runs: readonly RunResult[]): RunResult {
  const [run] = runs;
  if (!run) throw new RangeError('this lesson has no run to draw');
  return run;
}

export function lessonPicture(answer: LessonAnswer, sheet: Sheet): Picture {
  switch (answer.id) {
    case 'heat-of-steam':
      return flatStretch(firstOf(answer.runs), answer.facts, sheet);
    case 'harder-flame':
      return kilojoules(firstOf(answer.runs), sheet);
    case 'two-liquids':
      return pressuresAddUp(answer.facts, sheet);
    case 'steam-in-the-coil':
      return ladders(answer.runs, answer.facts, sheet);
    case 'tap-off':
      return tubLayers(firstOf(answer.runs), answer.facts, sheet);
    case 'gentle-or-hard':
      return twoBoils(answer.runs, answer.facts, sheet);
    case 'when-to-stop':
      return lastTenth(firstOf(answer.runs), answer.facts, sheet);
    case 'float-or-sink':
      return dropsWithForces(answer.facts, sheet);
    case 'drops-rise':
      return jars(answer.facts, sheet);
    case 'water-back':
      return withReturn(answer.runs, answer.facts, sheet);
    case 'closed-outlet':
      return peopleOnLid(answer.facts, sheet);
    case 'dry-pot':
      return waterLeft(answer.runs, answer.facts, sheet);
  }
}

/** What the time mark of a picture stands at, in words; `null` where a picture has no time. */
export function pictureTime({ id, facts, runs }: LessonAnswer, mark: number, reader: Reader): string | null {
  const q = quantities(reader);
  const minutes = (time_s: number) => q.time(60 * Math.round(time_s / 60));
  switch (id) {
    case 'heat-of-steam':
      return q.energy(mark * (facts.heatUp_J + facts.boilAway_J));
    case 'harder-flame':
      return minutes(mark * firstOf(runs).summary.end_s);
    case 'two-liquids':
      return q.temperature(PICTURE_FROM_K + mark * (facts.together_K - PICTURE_FROM_K), { decimals: 1 });
    case 'steam-in-the-coil':
      return minutes(mark * facts.coldAt_s);
    case 'tap-off': {
      const last_s = facts.escapes_s ?? facts.tooWarm_s ?? firstOf(runs).summary.end_s;
      return minutes(facts.closed_s + mark * (last_s - facts.closed_s));
    }
    case 'gentle-or-hard':
      return minutes(mark * facts.time_s);
    case 'when-to-stop':
      return minutes(mark * facts.end_s);
    case 'water-back':
      return minutes(mark * firstOf(runs).summary.end_s);
    case 'closed-outlet':
      return q.time(Math.round(mark * (facts.peopleAt.length - 1)));
    case 'dry-pot':
      return minutes(mark * (facts.dry_s ?? firstOf(runs).summary.end_s));
    case 'float-or-sink':
      return q.share(mark);
    case 'drops-rise':
      return null;
  }
}
