/** The flags of a run's events on its time axis, and the time marks that a reader jumps to. */
import {
  type EventKind,
  eventFlag,
  eventMessage,
  formatDuration,
  type Reader,
  type RunEvent,
} from '../../../sim/index.ts';

export interface Flag {
  /** On the chart's horizontal axis. */
  readonly x: number;
  readonly words: string;
  readonly severity: RunEvent['severity'];
  readonly sentence: string;
  readonly rank: number;
}

const RANK = { note: 1, care: 2, alarm: 3 } as const;
/** Milestones a reader looks for before other notes, and after all that asks for care. */
const LEADING: ReadonlySet<EventKind> = new Set(['first-boil', 'first-drop', 'stop-rule']);

/** Words on the time axis, which say when. */
export const timedWords = ({ words, x }: Flag): string => `${words} ${formatDuration(x)}`;

/** Words on another axis. */
export const untimedWords = ({ words }: Flag): string => words;

/** How much a mark's words matter where not all have room. */
export const markRank = ({ kind, severity }: Pick<RunEvent, 'kind' | 'severity'>): number =>
  RANK[severity] + (LEADING.has(kind) ? 0.5 : 0);

/** Flags of a run in order of time; the end of the run needs none, the axis shows it. */
export const flagsOf = (events: readonly RunEvent[], reader: Reader): readonly Flag[] =>
  events
    .filter(({ kind }) => kind !== 'run-ends')
    .map((event) => ({
      x: event.time_s,
      severity: event.severity,
      sentence: eventMessage(event, reader).sentence,
      words: eventFlag(event.kind, reader),
      rank: markRank(event),
    }))
    .sort((a, b) => a.x - b.x);
