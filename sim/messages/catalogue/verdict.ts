/** What a language must say of a run as a whole. */
import type { ConclusionKind, ConclusionValues } from '../../answers/verdict/conclusion.ts';
import type { Suggestion } from '../../answers/verdict/suggestion.ts';
import type { Quantities } from '../quantities.ts';

export interface ConclusionSaid<K extends ConclusionKind> {
  readonly values: ConclusionValues[K];
  readonly time_s: number | null;
}

export interface ConclusionWords<K extends ConclusionKind> {
  readonly sentence: (said: ConclusionSaid<K>, q: Quantities) => string;
  /** What to do, where there is something to do. */
  readonly advice?: (said: ConclusionSaid<K>, q: Quantities) => string;
  /** The same in few words, for those that stand in the head line. */
  readonly brief?: (said: ConclusionSaid<K>, q: Quantities) => string;
}

export interface VerdictMessages {
  readonly conclusions: { readonly [K in ConclusionKind]: ConclusionWords<K> };
  readonly suggestions: {
    readonly [K in Suggestion['kind']]: (wish: Extract<Suggestion, { kind: K }>, q: Quantities) => string;
  };
}
