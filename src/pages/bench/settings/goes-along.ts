/** Choices that bring other figures with them: a dried plant is not the same as a fresh one, a flame is no plate. */
import {
  chargeFromPlant,
  defaultEnergyPrice,
  defaultPrices,
  heatFromSource,
  heatSources,
  type Scenario,
} from '../../../../sim/index.ts';
import { allPlants } from '../../../state/own-plants-store.ts';

export interface GoesAlong {
  readonly values: Readonly<Record<string, unknown>>;
  readonly says: string;
}

const STATE_WORDS: Readonly<Record<string, string>> = { fresh: 'fresh', dry: 'dried' };

const under = (part: keyof Scenario, figures: object): Record<string, unknown> =>
  Object.fromEntries(Object.entries(figures).map(([key, figure]) => [`${part}.${key}`, figure]));

function plantState(value: unknown, { charge }: Scenario): GoesAlong | null {
  if (value !== 'fresh' && value !== 'dry') return null;
  const plant = allPlants().find(({ id }) => id === charge.botanical);
  if (plant?.states[value] === undefined) return null;
  return {
    values: under('charge', chargeFromPlant(plant, value)),
    says: `Moisture, oil content and packing are now those of the ${STATE_WORDS[value]} plant; the weight is as it was.`,
  };
}

export const FUEL_WORDS: Readonly<Record<keyof typeof defaultPrices, string>> = {
  electricity: 'electricity',
  'natural-gas': 'natural gas',
  propane: 'bottled gas',
  butane: 'bottled gas',
  wood: 'wood',
};

/** Said where something burns, as no check of the model sees the air of a room. */
const FLAME_SAYS =
  'Flames give off carbon monoxide: use it outdoors, or where it is well aired and an alarm is fitted.';

const PRICE = 'heat.energyPrice_J';
const FIRST_TAP = 'cooling.tapTemperature_K.0.value';
const TUB_START = 'cooling.startTemperature_K';

/** The first source of a kind in the library is its usual one. */
export const usualOf = (kind: unknown) => heatSources.find((source) => source.kind === kind);

function newPrice(values: Readonly<Record<string, unknown>>, usual: (typeof heatSources)[number]): string {
  if (values[PRICE] !== defaultEnergyPrice(usual)) return '';
  const { amount, per } = defaultPrices[usual.carrier];
  return `The price is now a default price: ${amount.toFixed(2)} per ${per} of ${FUEL_WORDS[usual.carrier]}.`;
}

const joined = (sentences: readonly string[]): string => sentences.filter((sentence) => sentence !== '').join(' ');

/** A heat source with its figures by path: one's own price stays where the fuel does. */
export function withFuelPrice(values: Readonly<Record<string, unknown>>, { heat }: Scenario): GoesAlong {
  const usual = usualOf(values['heat.kind']);
  if (!usual || !(PRICE in values)) return { values, says: '' };
  const airing = usual.carrier === 'electricity' ? '' : FLAME_SAYS;
  if (usualOf(heat.kind)?.carrier !== usual.carrier) return { values, says: joined([newPrice(values, usual), airing]) };
  const figures = Object.entries(values).filter(([path]) => path !== PRICE);
  return { values: Object.fromEntries(figures), says: airing };
}

function heatKind(value: unknown, scenario: Scenario): GoesAlong | null {
  const usual = usualOf(value);
  if (!usual) return null;
  const { values, says } = withFuelPrice(under('heat', heatFromSource(usual.id)), scenario);
  const brought = `Power, share that reaches the pot and lag are now those of a usual one: ${usual.name}.`;
  return { values, says: joined([brought, says]) };
}

/** A tub filled from the tap is as warm as it until somebody says otherwise. */
function firstTap(value: unknown, { cooling }: Scenario): GoesAlong | null {
  if (cooling.startTemperature_K !== cooling.tapTemperature_K[0]?.value) return null;
  return {
    values: { [FIRST_TAP]: value, [TUB_START]: value },
    says: 'The water in the tub starts as warm as the tap.',
  };
}

/** What a choice writes besides itself, or `null` when it stands alone. */
export function whatGoesAlong(path: string, value: unknown, scenario: Scenario): GoesAlong | null {
  if (path === 'charge.state') return plantState(value, scenario);
  if (path === FIRST_TAP) return firstTap(value, scenario);
  return path === 'heat.kind' ? heatKind(value, scenario) : null;
}
