/** What is asked of a plan of plant and oil, from what is known of a plant: the same for page and command line. */
import type { Garden } from '../library/harvests.ts';
import type { Band, Botanical, ChargeState } from '../library/index.ts';
import type { QuantityQuestion, Spread } from './quantities.ts';

/** Oil from a kilogram as charged, m³/kg; `null` where nothing is known of the plant in this state. */
export function yieldOf(plant: Botanical, state: ChargeState): Band | null {
  const data = plant.states[state];
  if (!data) return null;
  const dry = 1 - data.moisture.value.typical;
  const density = plant.oilDensity_kg_m3.value;
  const { low, typical, high } = data.oilContent.value;
  return { low: (low * dry) / density, typical: (typical * dry) / density, high: (high * dry) / density };
}

const spread = (range: readonly [number, number] | null | undefined): Spread | null =>
  range ? { low: range[0], typical: (range[0] + range[1]) / 2, high: range[1] } : null;

export type Chosen = Pick<QuantityQuestion, 'loss' | 'chamber_m3' | 'fill' | 'batchesADay'>;

export function quantityQuestion(
  plant: Botanical,
  state: ChargeState,
  garden: Garden | undefined,
  chosen: Chosen,
): QuantityQuestion | null {
  const found = yieldOf(plant, state);
  if (found === null) return null;
  return {
    ...chosen,
    yield_m3_kg: found,
    packing_kg_m3: plant.states[state]?.bulkDensity_kg_m3.value[plant.defaultCharge.packing] ?? 0,
    harvest_kg_m2: spread(state === 'fresh' ? garden?.fresh_kg_m2 : garden?.dry_kg_m2),
    plantsPer_m2: spread(garden?.plants_per_m2),
  };
}
