/** What an event flag says beside its staff: one or two words; the sentence is the run's own. */
import { type EventKind, type RunEvent, formatDuration } from '../../../sim/index.ts';

export const EVENT_WORDS: Record<EventKind, string> = {
  'first-boil': 'boil',
  'front-through': 'steam through',
  'first-drop': 'first drop',
  'tub-warm': 'tub warm',
  'vapour-escapes': 'vapour escapes',
  'vapour-held-again': 'vapour held',
  'outlet-warm': 'outlet warm',
  'cooling-boils': 'cooling boils',
  'coil-uncovered': 'coil uncovered',
  'separator-overrun': 'separator overrun',
  'oil-at-inlet': 'oil at the inlet',
  'near-neutral-oil': 'oil barely floats',
  'oil-rate-low': 'oil fading',
  'pot-low': 'pot low',
  'pot-dry': 'pot dry',
  'pressure-high': 'pressure',
  'over-pressure': 'pressure too high',
  'neck-fast': 'neck fast',
  'bed-lifts': 'bed lifts',
  'foam-carry-over': 'foam',
  scorch: 'scorch',
  'circuit-overloaded': 'circuit overloaded',
  'rate-not-held': 'rate not held',
  'tube-hazard': 'tube too thin',
  'stop-rule': 'stop',
  'run-ends': 'end',
};

export interface Flag {
  /** On the chart's horizontal axis. */
  readonly x: number;
  readonly words: string;
  readonly severity: RunEvent['severity'];
  readonly sentence: string;
  readonly rank: number;
}

const RANK = { note: 1, care: 2, alarm: 3 } as const;
/** Milestones a reader looks for first, before what asks for care but not before an alarm. */
const LEADING: ReadonlySet<EventKind> = new Set(['first-boil', 'first-drop', 'stop-rule']);

/** Words on the time axis, which say when. */
export const timedWords = ({ words, x }: Flag): string => `${words} ${formatDuration(x)}`;

/** Words on another axis. */
export const untimedWords = ({ words }: Flag): string => words;

/** Flags of a run in order of time; the end of the run needs none, the axis shows it. */
export const flagsOf = (events: readonly RunEvent[]): readonly Flag[] =>
  events
    .filter(({ kind }) => kind !== 'run-ends')
    .map(({ kind, time_s, severity, sentence }) => ({
      x: time_s,
      severity,
      sentence,
      words: EVENT_WORDS[kind],
      rank: RANK[severity] + (LEADING.has(kind) ? 1.5 : 0),
    }))
    .sort((a, b) => a.x - b.x);
