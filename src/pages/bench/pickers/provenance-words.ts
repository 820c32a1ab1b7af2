/** How a number is known, in plain words. */
import type { Provenance, ProvenanceKind } from '../../../../sim/index.ts';

const WORDS: Readonly<Record<ProvenanceKind, string>> = {
  read: 'read in the source',
  seen: 'seen in the source’s text or a copy of its table',
  published: 'printed in a standard or compilation',
  secondary: 'quoted by a page that names the source',
  computed: 'worked out by formula',
  derived: 'worked out from other figures here',
  fitted: 'fitted to a published curve',
  memory: 'from memory, not looked up again',
  'common-practice': 'what people in the trade do',
  estimated: 'estimated',
  assumption: 'assumed; nobody has measured it',
  own: 'your own figure',
};

/** The same in a word or two, for a column. */
const SHORT: Readonly<Record<ProvenanceKind, string>> = {
  read: 'read',
  seen: 'seen',
  published: 'published',
  secondary: 'second-hand',
  computed: 'worked out',
  derived: 'worked out',
  fitted: 'fitted',
  memory: 'from memory',
  'common-practice': 'practice',
  estimated: 'estimated',
  assumption: 'assumed',
  own: 'your own',
};

export const provenanceShort = (kind: ProvenanceKind): string => SHORT[kind];

/** One line: how it is known, where from, and what to bear in mind. */
export const provenanceLine = ({ kind, source, note }: Provenance): string =>
  `${WORDS[kind]}: ${source}${note === undefined ? '' : ` (${note})`}`;
