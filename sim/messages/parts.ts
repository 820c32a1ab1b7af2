/** The still’s parts at a moment of the run, in words to read and to hear. */
import type {
  PartDetail,
  PartDetailValues,
  PartLine,
  PartLineValues,
  PartMessages,
  PartNameKind,
} from './catalogue/parts.ts';
import { englishParts } from './english/parts.ts';
import type { Language, Reader } from './language.ts';
import { quantities, spokenQuantities, type Quantities } from './quantities.ts';

const MESSAGES: Readonly<Record<Language, PartMessages>> = { en: englishParts };

/** What is to be said of a part. */
export interface PartFacts {
  readonly name: PartNameKind;
  readonly line: PartLine;
  readonly details: readonly PartDetail[];
}

const messagesFor = ({ language }: Reader): PartMessages => MESSAGES[language];

function lineIn<K extends keyof PartLineValues>({ kind, values }: PartLine, q: Quantities): string {
  const write = messagesFor(q.reader).lines[kind as K];
  return write(values as PartLineValues[K], q);
}

function detailIn<K extends keyof PartDetailValues>({ kind, values }: PartDetail, q: Quantities): string {
  const write = messagesFor(q.reader).details[kind as K];
  return write(values as PartDetailValues[K], q);
}

const whole = ({ name, line, details }: PartFacts, q: Quantities): string =>
  [messagesFor(q.reader).names[name], lineIn(line, q), ...details.map((detail) => detailIn(detail, q))].join(', ');

export const partNameMessage = (name: PartNameKind, reader: Reader): string => messagesFor(reader).names[name];

/** The one line of numbers beside a part. */
export const partLineMessage = (line: PartLine, reader: Reader): string => lineIn(line, quantities(reader));

/** Name and line in the very words that are seen, and what else there is to say. */
export const partMessage = (facts: PartFacts, reader: Reader): string => whole(facts, quantities(reader));

/** The same with its units in whole words, to be read out. */
export const spokenPartMessage = (facts: PartFacts, reader: Reader): string => whole(facts, spokenQuantities(reader));
