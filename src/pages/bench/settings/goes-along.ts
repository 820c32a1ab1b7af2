/** Choices that bring other figures with them: a plant dried is not the same plant as fresh. */
import { botanicals, chargeFromBotanical, type Scenario } from '../../../../sim/index.ts';

export interface GoesAlong {
  readonly values: Readonly<Record<string, unknown>>;
  readonly says: string;
}

const STATE_WORDS: Readonly<Record<string, string>> = { fresh: 'fresh', dry: 'dried' };

/** What a choice writes besides itself, or `null` when it stands alone. */
export function whatGoesAlong(path: string, value: unknown, scenario: Scenario): GoesAlong | null {
  if (path !== 'charge.state' || (value !== 'fresh' && value !== 'dry')) return null;
  const plant = botanicals.find(({ id }) => id === scenario.charge.botanical);
  if (plant?.states[value] === undefined) return null;
  const figures = chargeFromBotanical(plant.id, value);
  return {
    values: Object.fromEntries(Object.entries(figures).map(([key, figure]) => [`charge.${key}`, figure])),
    says: `Moisture, oil content and packing are now those of the ${STATE_WORDS[value]} plant; the weight is as it was.`,
  };
}
