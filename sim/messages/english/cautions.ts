/** Cautions in English, few words each: they stand in the drawing beside the hazard. */
import type { CautionValues } from '../part-facts.ts';
import type { Quantities } from '../quantities.ts';

export function cautions(q: Quantities) {
  const told: { readonly [K in keyof CautionValues]: (values: CautionValues[K]) => string } = {
    'pot-dry': () => 'The pot is dry. Heat off, and let it cool before you add water.',
    'pot-low': () => 'Water is low: heat off now, before the base runs dry.',
    flame: () => 'Keep flame and sparks well away from the receiver: oil vapour burns.',
    'flame-out': () => 'Put the flame out: steam with oil vapour is escaping, and it burns.',
    mains: () => 'Never let it boil dry. Use a residual-current device. Keep plugs dry.',
    pressure: ({ gauge_Pa }) => `${q.pressure(gauge_Pa)} under the lid: it can lift. Heat off, and stand back.`,
    'hot-steam': () => 'Steam scalds: open the lid only when the pot has cooled.',
    'hot-pot': () => 'Steam scalds. Open the pot, and lift it, only when it has cooled.',
    'spent-plant': () => 'Steam scalds: let it cool first. Spread spent plant out; a heap heats itself.',
    escaping: ({ vapour_kg_s, flame }) =>
      `Vapour is escaping, ${q.stored(vapour_kg_s, 'kg/s')}. It scalds and burns: ${flame ? 'flame out' : 'heat down'}, water up.`,
    outlet: () => 'Never close the outlet: the still breathes here.',
    glass: () => 'Never close the outlet. Hot glass cracks in cold water: open the tap before you heat.',
    'neat-oil': () => 'Oil irritates and burns. Wear gloves and goggles. No flames, children or pets.',
    'tub-hot': ({ water_K }) => `The water here is ${q.temperature(water_K)}: it scalds.`,
    'tub-warm': ({ water_K }) => `The water here is ${q.temperature(water_K)}: it scalds in minutes, a child sooner.`,
    'tub-warms': () => 'The top of the water can grow hot enough to scald.',
    'coil-too-deep': ({ turns, depth_m, tub_m }) =>
      `${q.number(turns, { decimals: 1 })} turns need ${q.size(depth_m)} of water; the tub has ${q.size(tub_m)}.`,
    'coil-too-wide': ({ width_m, tub_m }) => `The coil is ${q.size(width_m)} across; the tub is ${q.size(tub_m)}.`,
  };
  return told;
}
