/** How the price of what the heat source takes is typed: by weight where its fuel is sold so, else by energy. */
import {
  defaultEnergyPrice,
  defaultPrices,
  formatQuantity,
  soldByWeight,
  type FieldInfo,
  type Scenario,
  type UnitSystem,
} from '../../../../sim/index.ts';
import { FUEL_WORDS, usualOf } from './goes-along.ts';

export const FUEL_PRICE = 'heat.energyPrice_J';

export interface ShownField {
  readonly field: FieldInfo;
  /** What is shown for one of what is stored: the heating value, J/kg, of a fuel sold by weight. */
  readonly times: number;
}

/** The field as it is for the heat source of a still, with the default price of its fuel. */
export function fuelPriceField(field: FieldInfo, { heat }: Scenario, units: UnitSystem): ShownField {
  const source = usualOf(heat.kind);
  if (!source) return { field, times: 1 };
  const fuel = FUEL_WORDS[source.carrier];
  const { amount, per } = defaultPrices[source.carrier];
  const priced = {
    ...field,
    default: defaultEnergyPrice(source),
    source: `default price, an invented round figure: ${amount.toFixed(2)} per ${per} of ${fuel}`,
  };
  const heating = soldByWeight(source);
  if (heating === null) return { field: { ...priced, says: `Price of ${fuel} by its energy.` }, times: 1 };
  const { value, source: origin, note } = heating;
  return {
    field: {
      ...priced,
      unit: '1/kg',
      min: (field.min ?? 0) * value,
      max: (field.max ?? Infinity) * value,
      says: `Price of ${fuel} by its weight. Each gives ${formatQuantity(value, 'J/kg', units)} (${origin}${note === undefined ? '' : `; ${note}`}).`,
    },
    times: value,
  };
}
