/** What the page asks before anything else: a run, from any JSON, and the example it opens with. */
import {
  LONG_RUN_S,
  openingExample,
  readScenario,
  roughly,
  Run,
  runSeconds,
  type Example,
  type NonFinite,
  type Problem,
  type RunResult,
  type Scenario,
} from '../../sim/index.ts';
import { errorMessage } from './errors.ts';
import type { Progress } from './progress.ts';

export type RunAnswer =
  /** `awaited`: what has still to be run, where the result is a rough one of the same still. */
  | { readonly kind: 'ran'; readonly result: RunResult; readonly awaited?: Scenario | undefined }
  | { readonly kind: 'invalid'; readonly problems: readonly Problem[] }
  /** The calculation failed on its way: nothing of such a run is an answer, so none of it is given. */
  | { readonly kind: 'broke-off'; readonly failure: NonFinite }
  | { readonly kind: 'failed'; readonly message: string };

export type Tell = (progress: Progress) => void;

/** Slices in which a long run tells how far it has come. */
const SLICES = 100;

/** @param tell told how far a run that takes long has come; @param rough whether a rough run may stand in for that */
function run(input: unknown, tell?: Tell, rough?: boolean): RunAnswer {
  const read = readScenario(input);
  if (!read.ok) return { kind: 'invalid', problems: read.problems };
  const { scenario } = read;
  try {
    const whole_s = runSeconds(scenario);
    const isLong = whole_s > LONG_RUN_S;
    const awaited = isLong && rough ? scenario : undefined;
    const running = new Run(awaited ? roughly(awaited) : scenario);
    for (let share = 0; !running.ended; share += 1 / SLICES) {
      if (isLong) tell?.({ share, whole_s });
      running.advance(isLong && share < 1 ? (share + 1 / SLICES) * scenario.run.duration_s : Infinity);
    }
    const result = running.result();
    return result.failure === null ? { kind: 'ran', result, awaited } : { kind: 'broke-off', failure: result.failure };
  } catch (error) {
    return { kind: 'failed', message: errorMessage(error) };
  }
}

export const runTasks = {
  run,
  /** A run to open the page with: a rough one at once where the still's own takes long. */
  firstRun: (input: unknown): RunAnswer => run(input, undefined, true),
  openingExample: (): Example => openingExample,
} as const;
