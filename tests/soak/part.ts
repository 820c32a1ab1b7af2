import type { Parameters, RunDetails } from 'fast-check';

type Asked = Pick<Parameters<never>, 'numRuns' | 'seed' | 'interruptAfterTimeLimit' | 'markInterruptAsFailure'>;

type Found = Pick<RunDetails<unknown>, 'failed' | 'numRuns' | 'errorInstance' | 'counterexample'>;

interface Measured extends Found {
  /** What was measured, in a line. */
  readonly figures?: string;
}

/** A law of which `npm test` tries a few cases and `npm run soak` many. */
export interface Part {
  readonly name: string;
  /** What the cases are. */
  readonly says: string;
  /** None where even one takes minutes. */
  readonly few: number;
  readonly many: number;
  check(asked: Asked): Measured | Promise<Measured>;
}
