/**
 * Developed laminar heat transfer in an annulus, inner wall of one temperature, outer wall insulated, by finite volumes:
 * the first eigenvalue of (r θ′)′ = −λ u(r) r θ, found by repeated integration, gives Nu = λ d_h² ū/4 with the
 * profile u = 1 − r² + B ln r, r from D_i/D_o to 1. No series, no table.
 */
export function annulusNusselt(ratio: number, cells = 1000): number {
  const width = (1 - ratio) / cells;
  const B = (1 - ratio ** 2) / Math.log(1 / ratio);
  const radius = (cell: number): number => ratio + (cell + 0.5) * width;
  const profile = Array.from({ length: cells }, (_, cell) => 1 - radius(cell) ** 2 + B * Math.log(radius(cell)));
  const flow = profile.reduce((sum, u, cell) => sum + u * radius(cell) * width, 0);
  let theta = Array.from({ length: cells }, () => 1);
  let nusselt = 0;
  for (let pass = 0; pass < 25; pass++) {
    // Heat carried on past each face towards the inner wall, from the outer wall inwards.
    const source = profile.map((u, cell) => u * radius(cell) * width * (theta[cell] as number));
    const past: number[] = [];
    let sum = 0;
    for (let cell = cells - 1; cell >= 0; cell--) past[cell] = sum += source[cell] as number;
    // Temperature from the inner wall outwards: θ′ = heat past the face/r, the first face half a cell from the wall.
    const next: number[] = [];
    let temperature = 0;
    for (let cell = 0; cell < cells; cell++) {
      const distance = cell === 0 ? width / 2 : width;
      temperature += ((past[cell] as number) * distance) / (ratio + cell * width);
      next[cell] = temperature;
    }
    const mean =
      next.reduce((total, value, cell) => total + value * (profile[cell] as number) * radius(cell) * width, 0) / flow;
    // h = q/θ_m with q the heat at the wall per area, on d_h = 2 (1 − ratio) and the wall's radius.
    nusselt = (((past[0] as number) / ratio) * 2 * (1 - ratio)) / mean;
    theta = next.map((value) => value / mean);
  }
  return nusselt;
}
