/** The places of the page as its address names them after the `#`, in the groups that the head of the page shows. */
export const GROUPS = [
  { words: 'Plan', places: ['bench', 'begin', 'plants', 'size', 'build', 'run-length', 'compare'] },
  { words: 'Run', places: ['at-the-still', 'still-tests'] },
  { words: 'Keep', places: ['run-book', 'bottling', 'blend'] },
  { words: 'Teach', places: ['lessons', 'reference'] },
] as const;

export type Place = (typeof GROUPS)[number]['places'][number];
export type AnalysisPlace = Exclude<Place, 'bench' | 'reference'>;

export const PLACES: readonly Place[] = GROUPS.flatMap(({ places }) => places);

/** A place as the head of the page names it: `Run book` of `run-book`. */
export const placeWords = (place: Place): string => place.charAt(0).toUpperCase() + place.slice(1).replaceAll('-', ' ');

/** What older addresses call a place. */
const FORMER: Readonly<Record<string, Place>> = { '#boils': 'compare', '#my-runs': 'run-book' };

/** Places in which something is opened by the address. */
const OPENS: ReadonlySet<Place> = new Set(['reference', 'plants', 'lessons']);

/** The place that an address ends in, with or without what is opened there; `null` where it names none. */
export const placeOf = (hash: string): Place | null =>
  PLACES.find((id) => `#${id}` === hash || (OPENS.has(id) && hash.startsWith(`#${id}/`))) ?? FORMER[hash] ?? null;

/** What is opened in a place: `surface-tension` of `#reference/surface-tension`. */
export const restOf = (hash: string): string => /^#[a-z-]+\/(.*)$/u.exec(hash)?.[1] ?? '';
