/** Messages on logs of real runs: what in them cannot be read, and what a fit to them comes to. */
import type { Fit } from '../answers/calibration/calibrate.ts';
import { fit } from './english/fit.ts';
import type { Reader } from './language.ts';
import { section } from './section.ts';

export type FitMessages = ReturnType<typeof fit>;

export const fitMessages = section<FitMessages>({ en: fit });

/** A fit with its words, as it is saved and printed. */
export function toldFit(facts: Fit, reader: Reader) {
  const messages = fitMessages(reader);
  return {
    sentence: messages.lead(facts),
    ...facts,
    factors: facts.factors.map((factor) => ({
      ...factor,
      title: messages.factorTitle(factor.name),
      sentence: messages.meaning(factor),
    })),
    notes: facts.notes.map((note) => ({ ...note, sentence: messages.note(note) })),
  };
}
