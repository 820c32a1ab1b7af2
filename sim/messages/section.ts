/** A section of the catalogue: for each language the same messages, made for a reader's quantities. */
import type { Language, Reader } from './language.ts';
import { quantities, type Quantities } from './quantities.ts';

/** What happened, and what to do about it; no advice where there is nothing to do. */
export interface Message {
  readonly sentence: string;
  readonly advice: string | null;
}

/** Sentence and advice in one line. */
export const wholeMessage = ({ sentence, advice }: Message): string =>
  advice === null ? sentence : `${sentence} ${advice}`;

/**
 * The messages of a section for a reader, who hears them where `q` speaks; what English says is what every language must
 * say, so that one that lacks a message does not compile.
 */
export function section<Messages>(
  languages: Readonly<Record<Language, (q: Quantities) => Messages>>,
): (reader: Reader, q?: Quantities) => Messages {
  const made = new Map<Quantities, Messages>();
  return (reader, q = quantities(reader)) => {
    const messages = made.get(q) ?? languages[reader.language](q);
    made.set(q, messages);
    return messages;
  };
}
