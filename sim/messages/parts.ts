/** The still’s parts at a moment of the run, in words to read and to hear. */
import { parts } from './english/parts.ts';
import type { Reader } from './language.ts';
import type { PartDetail, PartDetailValues, PartFacts, PartLine, PartLineValues, PartNameKind } from './part-facts.ts';
import { spokenQuantities } from './quantities.ts';
import { section } from './section.ts';

export type PartMessages = ReturnType<typeof parts>;

const partMessages = section<PartMessages>({ en: parts });

function lineIn<K extends keyof PartLineValues>({ kind, values }: PartLine, messages: PartMessages): string {
  const say = messages.lines[kind as K];
  return say(values as PartLineValues[K]);
}

function detailIn<K extends keyof PartDetailValues>({ kind, values }: PartDetail, messages: PartMessages): string {
  const say = messages.details[kind as K];
  return say(values as PartDetailValues[K]);
}

const whole = ({ name, line, details }: PartFacts, messages: PartMessages): string =>
  [messages.names[name], lineIn(line, messages), ...details.map((detail) => detailIn(detail, messages))].join(', ');

export const partNameMessage = (name: PartNameKind, reader: Reader): string => partMessages(reader).names[name];

/** The one line of numbers beside a part. */
export const partLineMessage = (line: PartLine, reader: Reader): string => lineIn(line, partMessages(reader));

/** Name and line in the very words that are seen, and what else there is to say. */
export const partMessage = (facts: PartFacts, reader: Reader): string => whole(facts, partMessages(reader));

/** The same with its units in whole words, to be read out. */
export const spokenPartMessage = (facts: PartFacts, reader: Reader): string =>
  whole(facts, partMessages(reader, spokenQuantities(reader)));
