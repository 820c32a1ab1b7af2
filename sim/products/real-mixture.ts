/**
 * Activity coefficients of a mixed oil, as a pair of liquids: alcohols and phenols on one side, all else on the other.
 * Between the two stand the coefficients at infinite dilution that a group-contribution method gives for linalool and
 * limonene, by van Laar's equation. Within a side the mixture counts as ideal. Good to some tens of percent.
 */

/** Alcohols and phenols, which hold on to each other. */
const POLAR: ReadonlySet<string> = new Set([
  'linalool',
  'terpinen_4_ol',
  'alpha_terpineol',
  'menthol',
  'borneol',
  'geraniol',
  'citronellol',
  'cedrol',
  'alpha_bisabolol',
  'alpha_santalol',
  'thymol',
  'carvacrol',
  'eugenol',
]);

/** Modified group contribution (Dortmund) at 25 °C: linalool as a trace in limonene, and limonene in linalool. */
const POLAR_IN_REST = 8.2;
const REST_IN_POLAR = 2.1;

/** Activity coefficient of each constituent of a mixture, from the amounts in moles. */
export function polarityFactors(ids: readonly string[], amounts: Float64Array): Float64Array {
  const isPolar = ids.map((id) => POLAR.has(id));
  const whole = amounts.reduce((sum, amount) => sum + amount, 0);
  const polar = amounts.reduce((sum, amount, i) => sum + (isPolar[i] === true ? amount : 0), 0) / whole;
  const rest = 1 - polar;
  const a = Math.log(POLAR_IN_REST);
  const b = Math.log(REST_IN_POLAR);
  const weight = a * polar + b * rest;
  const ofPolar = whole > 0 && weight > 0 ? Math.exp(a * ((b * rest) / weight) ** 2) : 1;
  const ofRest = whole > 0 && weight > 0 ? Math.exp(b * ((a * polar) / weight) ** 2) : 1;
  return Float64Array.from(ids, (_, i) => (isPolar[i] === true ? ofPolar : ofRest));
}
