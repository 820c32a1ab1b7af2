/** How far an arrow key moves a number: one in its second digit, ten times that with Shift. */

/** Moves of a step counted from zero, so that 1.4 goes to 1.5 and not to 1.5000000000000002. */
const stepped = (value: number, step: number, direction: 1 | -1): number => {
  const steps = value / step;
  const whole = Math.round(steps);
  const next =
    Math.abs(steps - whole) < 1e-6 ? whole + direction : direction > 0 ? Math.ceil(steps) : Math.floor(steps);
  return Number((next * step).toPrecision(12));
};

const decade = (size: number): number => 10 ** Math.floor(Math.log10(size));

/**
 * @param shown number as shown
 * @param least smallest step, such as 1 for a count; 0 for none
 * @param span allowed range as shown, from which a step at zero is taken
 */
export function nudged(
  shown: number,
  direction: 1 | -1,
  options: { readonly least?: number; readonly span?: number; readonly large?: boolean } = {},
): number {
  const { least = 0, span = 100, large = false } = options;
  const size = Math.abs(shown);
  // Away from zero 100 steps by 10; towards zero it steps like 99, so that the way back is the way there.
  const towardsZero = shown > 0 === direction < 0;
  const fine = size === 0 ? decade(span) / 100 : decade(towardsZero ? size * (1 - 1e-6) : size * (1 + 1e-6)) / 10;
  return stepped(shown, Math.max(least, fine) * (large ? 10 : 1), direction);
}
