/** Numbers in the sentences of events, in everyday units. */

const THIN = '\u202f';

/** `1 h 52 min`, `31 min`, `40 s`. */
export function minutes(time_s: number): string {
  if (time_s < 120) return `${Math.round(time_s)}${THIN}s`;
  const all = Math.round(time_s / 60);
  const hours = Math.floor(all / 60);
  if (hours === 0) return `${all}${THIN}min`;
  return all % 60 === 0 ? `${hours}${THIN}h` : `${hours}${THIN}h ${all % 60}${THIN}min`;
}

export const celsius = (T: number): string => `${(T - 273.15).toFixed(0)}${THIN}°C`;

export const litres = (mass_kg: number): string => `${mass_kg < 10 ? mass_kg.toFixed(1) : mass_kg.toFixed(0)}${THIN}L`;

export const litresAnHour = (rate_kg_s: number): string => `${(3600 * rate_kg_s).toPrecision(2)}${THIN}L/h`;

export const kilowatts = (power_W: number): string => `${(power_W / 1000).toFixed(1)}${THIN}kW`;
