/** Choices that bring other figures with them: a plant dried is not the same plant as fresh, a flame is no plate. */
import { botanicals, chargeFromBotanical, heatFromSource, heatSources, type Scenario } from '../../../../sim/index.ts';

export interface GoesAlong {
  readonly values: Readonly<Record<string, unknown>>;
  readonly says: string;
}

const STATE_WORDS: Readonly<Record<string, string>> = { fresh: 'fresh', dry: 'dried' };

const under = (part: keyof Scenario, figures: object): Record<string, unknown> =>
  Object.fromEntries(Object.entries(figures).map(([key, figure]) => [`${part}.${key}`, figure]));

function plantState(value: unknown, { charge }: Scenario): GoesAlong | null {
  if (value !== 'fresh' && value !== 'dry') return null;
  const plant = botanicals.find(({ id }) => id === charge.botanical);
  if (plant?.states[value] === undefined) return null;
  return {
    values: under('charge', chargeFromBotanical(plant.id, value)),
    says: `Moisture, oil content and packing are now those of the ${STATE_WORDS[value]} plant; the weight is as it was.`,
  };
}

/** The first source of a kind in the library is its usual one. */
function heatKind(value: unknown): GoesAlong | null {
  const usual = heatSources.find(({ kind }) => kind === value);
  if (!usual) return null;
  return {
    values: under('heat', heatFromSource(usual.id)),
    says: `Power, share that reaches the pot and lag are now those of a usual one: ${usual.name}.`,
  };
}

/** What a choice writes besides itself, or `null` when it stands alone. */
export function whatGoesAlong(path: string, value: unknown, scenario: Scenario): GoesAlong | null {
  if (path === 'charge.state') return plantState(value, scenario);
  return path === 'heat.kind' ? heatKind(value) : null;
}
