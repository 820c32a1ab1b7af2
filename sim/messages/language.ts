/**
 * Who reads a message. Facts carry numbers in SI and no words; a section of `sim/messages` turns a fact into sentences
 * for a reader. English stands in `english/`, one function a section, and what it says is what every language must say:
 * `section()` joins them, so that a second language that lacks a message does not compile.
 */
import type { Currency, UnitSystem } from '../units/index.ts';

export type Language = 'en';

export interface Reader {
  readonly units: UnitSystem;
  readonly language: Language;
  /** What amounts are said in; bare numbers without one. */
  readonly currency?: Currency | null;
}

/** A reader of English, which is what the page and the command line speak today. */
export const englishReader = (units: UnitSystem, currency: Currency | null = null): Reader =>
  currency === null ? READERS[units] : { units, language: 'en', currency };

const READERS: Readonly<Record<UnitSystem, Reader>> = {
  metric: { units: 'metric', language: 'en' },
  us: { units: 'us', language: 'en' },
};
