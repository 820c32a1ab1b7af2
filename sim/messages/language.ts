/**
 * Who reads a message. Facts carry numbers in SI and no words; a section of `sim/messages` turns a fact into sentences
 * for a reader. What a section must say stands in `catalogue/`, the words in `english/`, and each section joins them in a
 * `Record<Language, …>`, so that a second language that lacks a message does not compile.
 */
import type { UnitSystem } from '../units/index.ts';

export type Language = 'en';

export interface Reader {
  readonly units: UnitSystem;
  readonly language: Language;
}

/** A reader of English, which is what the page and the command line speak today. */
export const englishReader = (units: UnitSystem): Reader => READERS[units];

const READERS: Readonly<Record<UnitSystem, Reader>> = {
  metric: { units: 'metric', language: 'en' },
  us: { units: 'us', language: 'en' },
};
