/** The places of the page that answer a question, as the address names them after its `#`. */
export const PLACES = [
  { id: 'bench', words: 'Bench' },
  { id: 'size', words: 'Size' },
  { id: 'run-length', words: 'Run length' },
  { id: 'compare', words: 'Compare' },
  { id: 'run-book', words: 'Run book' },
  { id: 'reference', words: 'Reference' },
] as const;

export type Place = (typeof PLACES)[number]['id'];
export type AnalysisPlace = Exclude<Place, 'bench' | 'reference'>;

/** What older addresses call a place. */
const FORMER: Readonly<Record<string, Place>> = { '#boils': 'compare', '#my-runs': 'run-book' };

/** The place that an address ends in, with or without what is opened there; `null` where it names none. */
export const placeOf = (hash: string): Place | null =>
  PLACES.find(({ id }) => `#${id}` === hash || (id === 'reference' && hash.startsWith(`#${id}/`)))?.id ??
  FORMER[hash] ??
  null;

/** What is opened in the reference: `surface-tension` of `#reference/surface-tension`. */
export const restOf = (hash: string): string => /^#reference\/(.*)$/u.exec(hash)?.[1] ?? '';
