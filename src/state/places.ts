/** The places of the page as its address names them after the `#`, in the groups that the head of the page shows. */
export const GROUPS = [
  {
    id: 'plan',
    words: 'Plan',
    places: [
      { id: 'bench', words: 'Bench' },
      { id: 'plants', words: 'Plants' },
      { id: 'size', words: 'Size' },
      { id: 'build', words: 'Build' },
      { id: 'run-length', words: 'Run length' },
      { id: 'compare', words: 'Compare' },
    ],
  },
  { id: 'run', words: 'Run', places: [{ id: 'at-the-still', words: 'At the still' }] },
  {
    id: 'keep',
    words: 'Keep',
    places: [
      { id: 'run-book', words: 'Run book' },
      { id: 'bottling', words: 'Bottling' },
      { id: 'blend', words: 'Blend' },
    ],
  },
  {
    id: 'teach',
    words: 'Teach',
    places: [
      { id: 'lessons', words: 'Lessons' },
      { id: 'reference', words: 'Reference' },
    ],
  },
] as const;

export type Place = (typeof GROUPS)[number]['places'][number]['id'];
export type AnalysisPlace = Exclude<Place, 'bench' | 'reference'>;

export const PLACES: readonly Place[] = GROUPS.flatMap(({ places }) => places.map(({ id }) => id));

/** What older addresses call a place. */
const FORMER: Readonly<Record<string, Place>> = { '#boils': 'compare', '#my-runs': 'run-book' };

/** Places in which something is opened by the address. */
const OPENS: ReadonlySet<Place> = new Set(['reference', 'plants', 'lessons']);

/** The place that an address ends in, with or without what is opened there; `null` where it names none. */
export const placeOf = (hash: string): Place | null =>
  PLACES.find((id) => `#${id}` === hash || (OPENS.has(id) && hash.startsWith(`#${id}/`))) ?? FORMER[hash] ?? null;

/** What is opened in a place: `surface-tension` of `#reference/surface-tension`. */
export const restOf = (hash: string): string => /^#[a-z-]+\/(.*)$/u.exec(hash)?.[1] ?? '';

/** The lesson that an address opens: `tap-off` of `#lessons/tap-off`. */
export const lessonOf = (hash: string): string => (hash.startsWith('#lessons/') ? restOf(hash) : '');
