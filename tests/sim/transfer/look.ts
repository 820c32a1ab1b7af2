import { transferCorrelations } from '../../../sim/transfer/index.ts';

const byName = new Map(transferCorrelations.map((entry) => [entry.name, entry]));

/** Evaluates an entry of the desk reference, so that the check covers the function and the order of its arguments. */
export const look = (name: string, values: Readonly<Record<string, number>>): number => {
  const entry = byName.get(name);
  if (entry === undefined) throw new Error(`no entry ${name}`);
  const known = new Set(Object.keys(entry.arguments));
  for (const symbol of Object.keys(values)) if (!known.has(symbol)) throw new Error(`${name} takes no ${symbol}`);
  return entry.evaluate(values);
};

/** K from °C. */
export const celsius = (t: number): number => t + 273.15;

/** kg/s from kg/h. */
export const perHour = (m: number): number => m / 3600;

export const STANDARD_G = 9.80665;
