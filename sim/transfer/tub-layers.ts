/**
 * Water in layers of equal mass, counted from the top down: how it moves up when water comes in at the floor, and how
 * it turns over where warm lies under cold. What a layer holds (its enthalpy, or in the tests its temperature) is
 * called its content; nothing here gains or loses any.
 *
 * A layer is more than its mean: its content runs along a straight line from its floor to its top, as steep as its
 * neighbours allow (monotonised central slopes, van Leer 1977, J. Comput. Phys. 23:276). Twelve such layers follow a
 * warm gradient as closely as ninety of one value each.
 */

/** The least of twice each step and their mean; none where they differ in sign. */
const limited = (down: number, up: number): number => {
  const mean = 0.5 * (down + up);
  if (down > 0 && up > 0) {
    const least = 2 * (down < up ? down : up);
    return least < mean ? least : mean;
  }
  if (down < 0 && up < 0) {
    const least = 2 * (down > up ? down : up);
    return least > mean ? least : mean;
  }
  return 0;
};

/**
 * Rise of the value from the bottom of each layer to its top: the least of twice the step to the layer below, twice the
 * step to the layer above and the mean of both; none at a turning point. The lowest layer leans on the incoming water,
 * and lies flat when none comes; the highest goes on as the step below it.
 * @param value mean of each layer; @param slope filled
 * @param entering value of water let in at the floor; NaN for none
 */
export function limitedSlopes(value: Float64Array, slope: Float64Array, entering: number): void {
  const last = value.length - 1;
  if (last < 1) {
    slope[0] = 0;
    return;
  }
  const lowest = value[last] as number;
  let up = (value[last - 1] as number) - lowest;
  const down = 2 * (lowest - entering);
  const mean = 0.5 * (down + up);
  slope[last] =
    down > 0 && up > 0 ? Math.min(down, mean, 2 * up) : down < 0 && up < 0 ? Math.max(down, mean, 2 * up) : 0;
  for (let k = last - 1; k > 0; k--) {
    const step = (value[k - 1] as number) - (value[k] as number);
    slope[k] = limited(up, step);
    up = step;
  }
  slope[0] = up;
}

/** Scratch for `pushUp`, as long as there are layers. */
export interface LayerLines {
  readonly value: Float64Array;
  readonly slope: Float64Array;
}

/**
 * Lets water in at the floor: every layer boundary is pushed up, the top spills, and the layers end with equal masses.
 * Each stream carries the mean of the stretch of the line that crosses the boundary (second order; exact for a layer at
 * a time). Water that would pass more than a layer is taken in several moves, whatever would pass the whole tub at once.
 *
 * @param content of each layer, changed; @param lines scratch
 * @param before mass of a layer at the start, kg; the top layer holds `topGain` more (melt less vapour), kg
 * @param inflow mass let in, kg; @param entering its content per kilogram
 * @param spill mass that runs over, kg; @param limit greatest content per kilogram that can run over
 * @returns content of what ran over
 */
export function pushUp(
  content: Float64Array,
  lines: LayerLines,
  before: number,
  inflow: number,
  entering: number,
  topGain: number,
  spill: number,
  limit: number,
): number {
  const layers = content.length;
  const straight = Math.max(0, Math.min(spill, inflow - layers * before));
  let over = straight * entering;
  const moved = inflow - straight;
  const spilled = spill - straight;
  const moves = Math.max(1, Math.ceil((1 - 1e-12) * (moved / before)));
  const grown = (moved + topGain - spilled) / (layers * moves);
  let mass = before;
  let extra = topGain;
  for (let move = 0; move < moves; move++) {
    over += pushOnce(content, lines, mass, extra, moved / moves, entering, grown, spilled / moves, limit);
    mass += grown;
    extra -= topGain / moves;
  }
  return over;
}

/** One move of at most a layer; `grown` is what every layer keeps, `extra` what the top layer has to hand down or take. */
function pushOnce(
  content: Float64Array,
  { value, slope }: LayerLines,
  mass: number,
  extra: number,
  inflow: number,
  entering: number,
  grown: number,
  spill: number,
  limit: number,
): number {
  const last = content.length - 1;
  const each = 1 / mass;
  for (let k = 1; k <= last; k++) value[k] = (content[k] as number) * each;
  value[0] = (content[0] as number) / (mass + extra);
  limitedSlopes(value, slope, inflow > 0 ? entering : Number.NaN);
  let flow = inflow;
  let carried = inflow * entering;
  for (let k = last; k > 0; k--) {
    const out = flow - grown;
    const from = out >= 0 ? k : k - 1;
    const side = out >= 0 ? 0.5 * (1 - out / mass) : -0.5 * (1 + out / mass);
    const leaving = out * ((value[from] as number) + side * (slope[from] as number));
    content[k] = (content[k] as number) + carried - leaving;
    flow = out;
    carried = leaving;
  }
  const edge = value[0] + 0.5 * Math.max(0, 1 - spill / mass) * (slope[0] as number);
  const over = spill * Math.min(Math.max(limit, value[0]), edge);
  content[0] = (content[0] as number) + carried - over;
  return over;
}

/** Turns over whatever lies warm under cold: neighbours take their common mean until none is left. */
export function turnOver(content: Float64Array): void {
  const count = content.length;
  let from = 0;
  while (from < count) {
    let to = from;
    let sum = content[from] as number;
    while (to + 1 < count && (content[to + 1] as number) * (to + 1 - from) > sum) {
      to++;
      sum += content[to] as number;
    }
    const mean = sum / (to - from + 1);
    for (let k = from; k <= to; k++) content[k] = mean;
    if (to > from && from > 0 && mean > (content[from - 1] as number)) from--;
    else from = to + 1;
  }
}
