/** Which events stand as words on the time line, so that none runs over another. */
import { type RunEvent, type Severity, formatDuration } from '../../../sim/index.ts';
import { EVENT_WORDS } from '../model/event-words.ts';

export interface TimelineMark {
  readonly time_s: number;
  readonly words: string;
  readonly sentence: string;
  readonly severity: Severity;
  /** Where its words begin, px from the tick; null where there is no room for them. */
  readonly wordsAt_px: number | null;
}

const GAP_PX = 12;

const rank: Readonly<Record<Severity, number>> = { note: 1, care: 2, alarm: 3 };
/** Milestones a reader looks for first. */
const LEADING: ReadonlySet<RunEvent['kind']> = new Set(['first-boil', 'first-drop', 'stop-rule']);

interface Candidate extends Omit<TimelineMark, 'wordsAt_px'> {
  readonly rank: number;
}

function candidates(events: readonly RunEvent[], mostOil_s: number | null): Candidate[] {
  const seen = new Set<RunEvent['kind']>();
  const found: Candidate[] = [];
  for (const { kind, time_s, sentence, severity } of events) {
    if (kind === 'run-ends' || seen.has(kind)) continue;
    seen.add(kind);
    found.push({
      time_s,
      sentence,
      severity,
      words: EVENT_WORDS[kind],
      rank: rank[severity] + (LEADING.has(kind) ? 1.5 : 0),
    });
  }
  if (mostOil_s !== null) {
    const words = '90 % of the oil';
    found.push({
      time_s: mostOil_s,
      words,
      sentence: 'Nine tenths of the oil of this run are in the receiver.',
      severity: 'note',
      rank: 2.2,
    });
  }
  return found.sort((a, b) => a.time_s - b.time_s);
}

/** Rank from which a mark's words matter enough to make room for. */
const MATTERS = 2;

/** `widthOf` gives the width of words as they are set; those of an alarm are bold. */
export function timelineMarks(
  events: readonly RunEvent[],
  mostOil_s: number | null,
  end_s: number,
  width_px: number,
  widthOf: (words: string, isAlarm: boolean) => number,
): TimelineMark[] {
  const all = candidates(events, mostOil_s);
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
