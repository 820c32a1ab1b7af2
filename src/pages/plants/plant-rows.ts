/** The library's plants as they are compared: what they give, how long they take, what floats, who is mistaken for them. */
import type { Botanical } from '../../../sim/index.ts';
import type { LookAlike, Severity } from '../../../sim/library-texts.ts';

/** A run at home that is over within this counts as short, minutes. */
const SHORT_RUN_min = 90;

/** Plants that are bought, or come from a forest or a kitchen. */
const NO_GARDEN: ReadonlySet<string> = new Set([
  'clove-bud',
  'orange-peel',
  'cedarwood-virginia',
  'scots-pine',
  'eucalyptus-globulus',
  'juniper-berry',
]);

export const FILTERS = {
  garden: { words: 'grows in a garden', passes: (plant: Botanical) => !NO_GARDEN.has(plant.id) },
  fresh: { words: 'goes in fresh', passes: (plant: Botanical) => plant.states.fresh !== undefined },
  short: { words: 'short run', passes: (plant: Botanical) => plant.distillationMinutes.home.value[1] <= SHORT_RUN_min },
  floats: { words: 'oil floats', passes: (plant: Botanical) => plant.floats.value === 'floats' },
} as const;
export type FilterId = keyof typeof FILTERS;
export const FILTER_IDS = Object.keys(FILTERS) as readonly FilterId[];

const plain = (text: string): string => text.toLowerCase().normalize('NFKD').replace(/\p{M}/gu, '');

export function plantsMatching(
  plants: readonly Botanical[],
  typed: string,
  filters: ReadonlySet<FilterId>,
): readonly Botanical[] {
  const words = plain(typed)
    .split(/\s+/u)
    .filter((word) => word !== '');
  return plants.filter((plant) => {
    const text = plain([plant.name.value, plant.latinName.value, plant.kind, plant.part.value].join(' '));
    return (
      words.every((word) => text.includes(word)) &&
      FILTER_IDS.every((id) => !filters.has(id) || FILTERS[id].passes(plant))
    );
  });
}

export const SEVERITY_WORDS: Readonly<Record<Severity, string>> = {
  deadly: 'Deadly',
  harmful: 'Harmful',
  quality: 'Another oil',
};

/** The deadly ones first. */
export const bySeverity = (all: readonly LookAlike[]): readonly LookAlike[] => {
  const rank = { deadly: 0, harmful: 1, quality: 2 } as const;
  return [...all].sort((a, b) => rank[a.severity] - rank[b.severity]);
};

export const sentenceCase = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
