/** Drops in a separator by hand. SI. */

/** Rise with the drag of Schiller and Naumann, by halving the interval between rest and Stokes's speed, m/s. */
export function riseWithDrag(d: number, drho: number, rho: number, mu: number, g: number): number {
  const stokes = (g * d ** 2 * Math.abs(drho)) / (18 * mu);
  let [slow, fast] = [0, stokes];
  for (let step = 0; step < 80; step++) {
    const v = (slow + fast) / 2;
    const drag = v * (1 + 0.15 * ((rho * v * d) / mu) ** 0.687);
    if (drag > stokes) fast = v;
    else slow = v;
  }
  return Math.sign(drho) * slow;
}

/** Share of log-normal drops that is kept, by adding up four thousand slices of their sizes. */
export function keptBySlices(d_c: number, median: number, spread: number): number {
  const sigma = Math.log(spread);
  const steps = 4000;
  let kept = 0;
  for (let i = 0; i < steps; i += 1) {
    const z = -9 + (18 * (i + 0.5)) / steps;
    const ratio = (median * Math.exp(sigma * z)) / d_c;
    kept += (Math.min(1, ratio * ratio) * Math.exp(-0.5 * z * z) * 18) / (steps * Math.sqrt(2 * Math.PI));
  }
  return kept;
}
