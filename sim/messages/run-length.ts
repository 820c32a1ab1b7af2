/** Messages on how long to run: times to the oil, when to stop, how sure that is. */
import type { Uncertain } from '../answers/ensemble/factors.ts';
import type { StopAdvice } from '../answers/run-length/stop-advice.ts';
import { runLength, type CarriedOnRun } from './english/run-length.ts';
import type { Reader } from './language.ts';
import { section } from './section.ts';

export type { CarriedOnRun } from './english/run-length.ts';

export type RunLengthMessages = ReturnType<typeof runLength>;

export const runLengthMessages = section<RunLengthMessages>({ en: runLength });

/** How long to run and when to stop, with its words, as it is saved and printed; `null` before the answer has come. */
export function toldRunLength(facts: (CarriedOnRun & { readonly advice: StopAdvice }) | null, reader: Reader) {
  if (facts === null) return { length: null, advice: null };
  const messages = runLengthMessages(reader);
  const { sentences, dangers } = messages.stop(facts.advice);
  return {
    length: { sentence: messages.lead(facts), ...facts.length },
    advice: { ...facts.advice, sentence: sentences.join(' '), dangers },
  };
}

/** The uncertain values of a design with their words. */
export function toldUncertain(facts: readonly Uncertain[], reader: Reader) {
  const messages = runLengthMessages(reader);
  return facts.map((fact) => ({ ...fact, title: messages.uncertain(fact.id), sentence: messages.origin(fact) }));
}
