/** What a language must say of the events of a run. */
import type { EventKind, EventValues, StateVariable } from '../../run/result.ts';
import type { Quantities } from '../quantities.ts';

export interface EventSaid<K extends EventKind> {
  readonly values: EventValues[K];
  readonly time_s: number;
}

export interface EventWords<K extends EventKind> {
  /** One to three words, to stand on a time line beside the time. */
  readonly flag: string;
  /** What is the matter, when, with its number, and whom it hurts. */
  readonly sentence: (said: EventSaid<K>, q: Quantities) => string;
  /** What to do. */
  readonly advice: (said: EventSaid<K>, q: Quantities) => string;
}

export interface EventMessages {
  readonly events: { readonly [K in EventKind]: EventWords<K> };
  /** The time mark at which nine tenths of the oil are collected. */
  readonly mostOil: { readonly flag: string; readonly sentence: string };
  /** What of the still could not be calculated any more, within a sentence. */
  readonly variables: Readonly<Record<StateVariable, string>>;
}
