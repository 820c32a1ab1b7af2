/** The events of a run in words. */
import type { EventKind, EventValues, NonFinite, RunEvent } from '../run/result.ts';
import type { EventMessages, EventWords } from './catalogue/events.ts';
import { englishEvents } from './english/events.ts';
import type { Language, Reader } from './language.ts';
import { quantities } from './quantities.ts';
import type { Message } from './section.ts';

const MESSAGES: Readonly<Record<Language, EventMessages>> = { en: englishEvents };

/** A sentence that says what is the matter, and one that says what to do. */
export interface EventMessage extends Message {
  readonly advice: string;
}

const wordsOf = <K extends EventKind>(kind: K, reader: Reader): EventWords<K> => MESSAGES[reader.language].events[kind];

export function eventMessage<K extends EventKind>(event: RunEvent<K>, reader: Reader): EventMessage {
  const { kind, values, time_s } = event as { kind: K; values: EventValues[K]; time_s: number };
  const words = wordsOf(kind, reader);
  const q = quantities(reader);
  return { sentence: words.sentence({ values, time_s }, q), advice: words.advice({ values, time_s }, q) };
}

/** One to three words for a flag on a time line; the time stands beside them. */
export const eventFlag = (kind: EventKind, reader: Reader): string => wordsOf(kind, reader).flag;

/** Flag and sentence of the time mark at which nine tenths of the oil are collected. */
export const mostOilMark = (reader: Reader): EventMessages['mostOil'] => MESSAGES[reader.language].mostOil;

/** What of the still a failed run could not calculate, to stand within a sentence. */
export const failedVariable = ({ variable }: NonFinite, reader: Reader): string =>
  MESSAGES[reader.language].variables[variable];
