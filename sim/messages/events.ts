/** The events of a run in words. */
import type { EventKind, EventValues, NonFinite, RunEvent } from '../run/result.ts';
import { events } from './english/events.ts';
import type { Reader } from './language.ts';
import { section, type Message } from './section.ts';

export type EventMessages = ReturnType<typeof events>;

const eventMessages = section<EventMessages>({ en: events });

/** A sentence that says what is the matter, and one that says what to do. */
export interface EventMessage extends Message {
  readonly advice: string;
}

export function eventMessage<K extends EventKind>(event: RunEvent<K>, reader: Reader): EventMessage {
  const { kind, values, time_s } = event as { kind: K; values: EventValues[K]; time_s: number };
  const words: EventMessages['events'][K] = eventMessages(reader).events[kind];
  return { sentence: words.sentence({ values, time_s }), advice: words.advice({ values, time_s }) };
}

/** One to three words for a flag on a time line; the time stands beside them. */
export const eventFlag = (kind: EventKind, reader: Reader): string => eventMessages(reader).events[kind].flag;

/** Flag and sentence of the time mark at which nine tenths of the oil are collected. */
export const mostOilMark = (reader: Reader): EventMessages['mostOil'] => eventMessages(reader).mostOil;

/** What of the still a failed run could not calculate, to stand within a sentence. */
export const failedVariable = ({ variable }: NonFinite, reader: Reader): string =>
  eventMessages(reader).variables[variable];
