/** Cautions in English: they stand in the drawing by the hazard, whole or, where there is little room, in a few words. */
import type { CautionValues } from '../part-facts.ts';
import type { Quantities } from '../quantities.ts';

export interface CautionWords {
  readonly sentence: string;
  /** At most 16 letters; of an alarm, at most 14. */
  readonly brief: string;
}

const words = (brief: string, sentence: string): CautionWords => ({ sentence, brief });

export function cautions(q: Quantities) {
  const told: { readonly [K in keyof CautionValues]: (values: CautionValues[K]) => CautionWords } = {
    'pot-dry': () => words('Pot is dry', 'The pot is dry. Heat off, and let it cool before you add water.'),
    'pot-low': () => words('Water is low', 'Water is low: heat off now, before the base runs dry.'),
    flame: () => words('Oil vapour burns', 'Keep flame and sparks well away from the receiver: oil vapour burns.'),
    'flame-out': () => words('Flame out now', 'Put the flame out: steam with oil vapour is escaping, and it burns.'),
    mains: () => words('Mains and water', 'Never let it boil dry. Use a residual-current device. Keep plugs dry.'),
    pressure: ({ gauge_Pa }) =>
      words('Lid can lift', `${q.pressure(gauge_Pa)} under the lid: it can lift. Heat off, and stand back.`),
    'hot-steam': () => words('Steam scalds', 'Steam scalds: open the lid only when the pot has cooled.'),
    'hot-pot': () => words('Steam scalds', 'Steam scalds. Open the pot, and lift it, only when it has cooled.'),
    'spent-plant': () =>
      words('Steam scalds', 'Steam scalds: let it cool first. Spread spent plant out; a heap heats itself.'),
    escaping: ({ vapour_kg_s, flame }) =>
      words(
        'Steam escapes',
        `Vapour is escaping, ${q.stored(vapour_kg_s, 'kg/s')}. It scalds and burns: ${flame ? 'flame out' : 'heat down'}, water up.`,
      ),
    outlet: () => words('Keep outlet open', 'Never close the outlet: the still breathes here.'),
    glass: () =>
      words(
        'Keep outlet open',
        'Never close the outlet. Hot glass cracks in cold water: open the tap before you heat.',
      ),
    'neat-oil': () =>
      words('Oil irritates', 'Oil irritates and burns. Wear gloves and goggles. No flames, children or pets.'),
    'tub-hot': ({ water_K }) =>
      words(`${q.temperature(water_K)}: scalds`, `The water here is ${q.temperature(water_K)}: it scalds.`),
    'tub-warm': ({ water_K }) =>
      words(
        `${q.temperature(water_K)}: scalds`,
        `The water here is ${q.temperature(water_K)}: it scalds in minutes, a child sooner.`,
      ),
    'tub-warms': () => words('Water can scald', 'The top of the water can grow hot enough to scald.'),
    'coil-too-deep': ({ turns, depth_m, tub_m }) =>
      words(
        'Coil is too tall',
        `${q.number(turns, { decimals: 1 })} turns need ${q.size(depth_m)} of water; the tub has ${q.size(tub_m)}.`,
      ),
    'coil-too-wide': ({ width_m, tub_m }) =>
      words('Coil is too wide', `The coil is ${q.size(width_m)} across; the tub is ${q.size(tub_m)}.`),
  };
  return told;
}
