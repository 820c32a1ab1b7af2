/** Which events stand as words on the time line, so that none runs over another. */
import {
  eventFlag,
  eventMessage,
  formatDuration,
  mostOilMark,
  type Reader,
  type RunEvent,
  type Severity,
} from '../../../sim/index.ts';
import { markRank } from '../model/event-words.ts';

export interface TimelineMark {
  readonly time_s: number;
  readonly words: string;
  readonly sentence: string;
  readonly severity: Severity;
  /** Where its words begin, px from the tick; null where there is no room for them. */
  readonly wordsAt_px: number | null;
}

const GAP_PX = 12;
/** The time of most oil is a milestone like the first drop: more than a note, less than what asks for care. */
const MOST_OIL_RANK = 1.4;

interface Candidate extends Omit<TimelineMark, 'wordsAt_px'> {
  readonly rank: number;
}

/** What the time line tells of a run. */
export interface TimelineRun {
  /** Stands before the line of its own that each of several runs has. */
  readonly letter: string;
  readonly name: string;
  readonly events: readonly RunEvent[];
  /** When nine tenths of the oil are in, if ever. */
  readonly mostOil_s: number | null;
  readonly end_s: number;
}

function candidates(
  { events, mostOil_s }: Pick<TimelineRun, 'events' | 'mostOil_s'>,
  reader: Reader,
  withEnd: boolean,
): Candidate[] {
  const seen = new Set<RunEvent['kind']>();
  const found: Candidate[] = [];
  for (const event of events) {
    const { kind, time_s, severity } = event;
    if ((kind === 'run-ends' && !withEnd) || seen.has(kind)) continue;
    seen.add(kind);
    const { sentence } = eventMessage(event, reader);
    found.push({ time_s, sentence, severity, words: eventFlag(kind, reader), rank: markRank(event) });
  }
  if (mostOil_s !== null) {
    const { flag, sentence } = mostOilMark(reader);
    found.push({ time_s: mostOil_s, words: flag, sentence, severity: 'note', rank: MOST_OIL_RANK });
  }
  return found.sort((a, b) => a.time_s - b.time_s);
}

/** Rank from which a mark's words matter enough to make room for. */
const MATTERS = 1.4;

/**
 * `widthOf` gives the width of words as they are set; those of an alarm are bold. Beside other runs the end of a run is
 * marked too.
 */
export function timelineMarks(
  run: Pick<TimelineRun, 'events' | 'mostOil_s'>,
  reader: Reader,
  end_s: number,
  width_px: number,
  widthOf: (words: string, isAlarm: boolean) => number,
  withEnd = false,
): TimelineMark[] {
  const all = candidates(run, reader, withEnd);
  const x = (mark: Candidate): number => (end_s > 0 ? (mark.time_s / end_s) * width_px : 0);
  const taken: (readonly [number, number])[] = [];
  const wordsAt = new Map<Candidate, number>();

  for (const mark of [...all].sort((a, b) => b.rank - a.rank || a.time_s - b.time_s)) {
    const wide = widthOf(`${mark.words} ${formatDuration(mark.time_s)}`, mark.severity === 'alarm');
    if (wide > width_px) continue;
    const here = x(mark);
    const crowded = all.some(
      (other) => other !== mark && other.rank >= MATTERS && x(other) >= here && x(other) - here < wide,
    );
    const [middle, left, right] = [here - wide / 2, here - wide, here];
    const from = (crowded ? [left, middle, right] : [middle, right, left])
      .map((wish) => Math.min(Math.max(wish, 0), width_px - wide))
      .find((wish) => taken.every(([start, stop]) => wish + wide + GAP_PX <= start || wish >= stop + GAP_PX));
    if (from === undefined) continue;
    taken.push([from, from + wide]);
    wordsAt.set(mark, from - here);
  }
  return all.map((mark) => ({
    time_s: mark.time_s,
    words: mark.words,
    sentence: mark.sentence,
    severity: mark.severity,
    wordsAt_px: wordsAt.get(mark) ?? null,
  }));
}
