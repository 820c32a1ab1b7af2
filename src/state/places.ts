/** The places of the page that answer a question, as the address names them after its `#`. */
export const PLACES = [
  { id: 'bench', words: 'Bench' },
  { id: 'size', words: 'Size' },
  { id: 'run-length', words: 'Run length' },
  { id: 'boils', words: 'Boils' },
  { id: 'my-runs', words: 'My runs' },
] as const;

export type Place = (typeof PLACES)[number]['id'];
export type AnalysisPlace = Exclude<Place, 'bench'>;

/** The place that an address ends in; `null` where it names none. */
export const placeOf = (hash: string): Place | null => PLACES.find(({ id }) => `#${id}` === hash)?.id ?? null;
