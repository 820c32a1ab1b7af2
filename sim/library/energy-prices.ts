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
