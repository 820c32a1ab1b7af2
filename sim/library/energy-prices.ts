/** What energy costs until the reader says otherwise: invented round figures, to be replaced by one's own. */
import type { Sourced } from './provenance.ts';
import type { EnergyCarrier, HeatSource } from './types.ts';

export interface DefaultPrice {
  /** In the reader's currency. */
  readonly amount: number;
  readonly per: 'kWh' | 'kg';
}

export const defaultPrices: Readonly<Record<EnergyCarrier, DefaultPrice>> = {
  electricity: { amount: 0.3, per: 'kWh' },
  'natural-gas': { amount: 0.1, per: 'kWh' },
  propane: { amount: 2.5, per: 'kg' },
  butane: { amount: 2.5, per: 'kg' },
  wood: { amount: 0.4, per: 'kg' },
};

const KILOWATT_HOUR = 3.6e6;
/** Of fuels that are sold by weight, as the rows of the sources have it: their prices per joule follow. */
export const HEATING_VALUES_J_kg = { propane: 46.33e6, wood: 14.5e6 } as const;

const DEFAULTS_J: readonly number[] = [
  ...Object.values(defaultPrices).flatMap(({ amount, per }) => (per === 'kWh' ? [amount / KILOWATT_HOUR] : [])),
  defaultPrices.propane.amount / HEATING_VALUES_J_kg.propane,
  defaultPrices.wood.amount / HEATING_VALUES_J_kg.wood,
];

/** Whether a price of a joule is one that no reader has chosen. */
export const isDefaultEnergyPrice = (price_J: number): boolean =>
  DEFAULTS_J.some((usual) => Math.abs(price_J / usual - 1) < 1e-6);

/** Default price of what a source burns or takes, per joule; what is sold by weight counts with its heating value. */
export function defaultEnergyPrice({ carrier, lowerHeatingValue_J_kg }: HeatSource): number {
  const { amount, per } = defaultPrices[carrier];
  if (per === 'kWh') return amount / KILOWATT_HOUR;
  if (lowerHeatingValue_J_kg === null) throw new RangeError(`${carrier} is sold by weight but has no heating value`);
  return amount / lowerHeatingValue_J_kg.value;
}

/** Heating value by which the price of what a source burns is told by weight, J/kg; `null` where it is sold by energy. */
export const soldByWeight = ({ carrier, lowerHeatingValue_J_kg }: HeatSource): Sourced<number> | null =>
  defaultPrices[carrier].per === 'kg' ? lowerHeatingValue_J_kg : null;
