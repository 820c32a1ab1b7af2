/**
 * Range checks of the property functions: a formula asked for a state it was never fitted to must say so, with the
 * number and the limits, and not return a plausible figure.
 */

/** Up to seven significant figures without trailing zeros, as a reader would write the number. */
const plain = (value: number): string =>
  Number.isFinite(value) ? String(Number(value.toPrecision(7))) : String(value);

/**
 * Throws a `RangeError` such as `saturation pressure: temperature 412 K is outside 273.15–403.15 K`.
 * A NaN counts as outside.
 */
export function requireWithin(
  quantity: string,
  argument: string,
  value: number,
  unit: string,
  low: number,
  high: number,
): void {
  if (value >= low && value <= high) return;
  const suffix = unit === '1' ? '' : ` ${unit}`;
  throw new RangeError(
    `${quantity}: ${argument} ${plain(value)}${suffix} is outside ${plain(low)}–${plain(high)}${suffix}`,
  );
}
