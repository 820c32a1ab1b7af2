import { STANDARD_GRAVITY } from '../constants.ts';
import { correlation, type Argument, type Correlation } from '../correlation.ts';

/**
 * What cold water does where it enters a tub of warm water. Layers of equal mass are counted from the top down; each
 * function mixes their contents (see `tub-layers.ts`) and loses none.
 *
 * From below, the jet's own power pays for the mixing: lifting cold water into warm costs work, and the jet has
 * η · ½ ṁ u² to spend, less with distance as a round jet slows down. From above, the sinking stream drags tub water
 * along and lands it at the bottom, so that the tub turns over. Both follow from published jets and plumes; how much of a
 * loose hose's power does mix (η) is the uncertain part.
 */

/** Lengths of a round jet, in diameters, before its velocity begins to fall as 1/x (from memory: 6.2 d/x on the axis). */
export const JET_CORE = 6.2;
/** Share of a jet's power that mixes; reproduces the height of fountains, 1.74 d Fr (Turner 1966, from memory). */
export const JET_EFFICIENCY = 0.5;
/** Entrainment coefficient of a top-hat column between a jet (0.076) and a plume (0.117), both from memory. */
export const COLUMN_ENTRAINMENT = 0.1;
/** Sub-steps of the sinking column in each layer. */
const COLUMN_STEPS = 20;
/** Share of the power of stirred water, ρ V u³/D, that works against layers; estimate. */
export const STIRRING_SHARE = 0.05;

/** Speed in the bore, m/s, of `flow` kg/s that leaves through n holes of bore d. */
export const nozzleSpeed = (flow: number, density: number, d: number, holes: number): number =>
  flow / (density * holes * (Math.PI / 4) * d * d);

/** Density, kg/m³, of water that holds so much per kilogram. */
export type DensityOf = (value: number) => number;

/** What all of this needs to know of the tub. */
export interface LayerShape {
  /** Mass, kg, of a layer, its thickness, m, and its area, m². */
  mass: number;
  thickness: number;
  area: number;
}

/**
 * A jet from the floor mixes from the bottom up until its work is spent; what is left for a layer too dear for it
 * exchanges a part with it.
 * @param content of each layer from the top down, changed
 * @param work the jet's work in this step, η ½ ṁ u² Δt, J
 * @param d bore of the nozzle or hole, m; @param offset length it has run before it turns upward, m
 * @returns number of layers that are mixed through, the lowest counted in
 */
export function mixByJet(
  content: Float64Array,
  { mass, thickness, area }: LayerShape,
  densityOf: DensityOf,
  work: number,
  d: number,
  offset: number,
): number {
  const count = content.length;
  let sum = content[count - 1] as number;
  let mixed = 1;
  let spent = 0;
  while (mixed < count) {
    const next = count - 1 - mixed;
    const above = content[next] as number;
    const heavier = densityOf(sum / (mixed * mass)) - densityOf(above / mass);
    const price = 0.5 * STANDARD_GRAVITY * area * thickness * thickness * heavier * mixed;
    const left = work * Math.min(1, (JET_CORE * d) / (offset + mixed * thickness)) - spent;
    if (price > left && price > 0) {
      const share = Math.max(0, left) / price;
      const mean = (sum + above) / (mixed + 1);
      sum += share * (mean * mixed - sum);
      content[next] = above + share * (mean - above);
      break;
    }
    spent += Math.max(0, price);
    sum += above;
    mixed++;
  }
  for (let k = count - mixed; k < count; k++) content[k] = sum / mixed;
  return mixed;
}

/**
 * Stirring draws all layers towards their mean, by as much of the way as its work pays.
 * @param content of each layer, changed; @param work done against the layers in this step, J
 * @returns the share of the way, 0–1
 */
export function mixByStirring(
  content: Float64Array,
  { mass, thickness, area }: LayerShape,
  densityOf: DensityOf,
  work: number,
): number {
  const count = content.length;
  let sum = 0;
  let density = 0;
  let moment = 0;
  for (let k = 0; k < count; k++) {
    const rho = densityOf((content[k] as number) / mass);
    sum += content[k] as number;
    density += rho;
    moment += rho * (count - k - 0.5);
  }
  const price = STANDARD_GRAVITY * area * thickness * thickness * (0.5 * density * count - moment);
  const share = price > work ? work / price : 1;
  const mean = sum / count;
  for (let k = 0; k < count; k++) content[k] = (content[k] as number) + share * (mean - (content[k] as number));
  return share;
}

/** Power that stirring spends against the layers: entry `stirring-power`. */
export const stirringPower = (u: number, rho: number, V: number, D: number): number =>
  (STIRRING_SHARE * rho * V * u * u * u) / D;

/**
 * A cold stream falls in from above, drags water of the layers it passes along and lands on the floor, or on the first
 * layer that is heavier than itself. Top-hat column of flow q and momentum M: dq = 2 α √(π M) dz, dM = B q/M dz,
 * B = g (ρ_p − ρ)/ρ · q.
 * @param content of each layer from the top down; @param flow of the stream, kg/s; @param entering its content per kg
 * @param d bore it leaves through, m
 * @param dragged filled: flow that leaves each layer with the column, kg/s; none from the layer it lands in
 * @returns the layer it lands in
 */
export function sinkingColumn(
  content: Float64Array,
  { mass, thickness }: LayerShape,
  densityOf: DensityOf,
  flow: number,
  entering: number,
  d: number,
  dragged: Float64Array,
): number {
  dragged.fill(0);
  const count = content.length;
  const dz = thickness / COLUMN_STEPS;
  let value = entering;
  let density = densityOf(value);
  let q = flow / density;
  let momentum = (q * q) / ((Math.PI / 4) * d * d);
  for (let k = 0; k < count - 1; k++) {
    const around = (content[k] as number) / mass;
    const rho = densityOf(around);
    const first = q;
    for (let step = 0; step < COLUMN_STEPS; step++) {
      const buoyancy = ((STANDARD_GRAVITY * Math.max(0, density - rho)) / rho) * q;
      const gained = 2 * COLUMN_ENTRAINMENT * Math.sqrt(Math.PI * momentum) * dz;
      momentum += ((buoyancy * q) / momentum) * dz;
      value = (q * value + gained * around) / (q + gained);
      q += gained;
      density = densityOf(value);
    }
    if (densityOf((content[k + 1] as number) / mass) >= density) return k;
    dragged[k] = (q - first) * rho;
  }
  return count - 1;
}

/** Scratch for `turnByColumn`, as long as there are layers. */
export interface ColumnLines {
  readonly value: Float64Array;
  readonly share: Float64Array;
  /** Mass that rises through the top of each layer in the step, kg; negative where it sinks. */
  readonly rising: Float64Array;
}

/**
 * Lets water in through a sinking column for a step: what it drags along and brings lands in one layer and rises from
 * there to the rim. Solved for the end of the step (backward Euler), whatever its length; content is kept to rounding.
 *
 * @param content of each layer from the top down, changed; @param lines scratch
 * @param dragged from `sinkingColumn`, kg/s; @param landing layer it lands in
 * @param before mass of a layer at the start, kg; the top layer holds `topGain` more (melt less vapour), kg
 * @param inflow mass let in, kg; @param entering its content per kilogram
 * @param spill mass that runs over, kg; @param dt step, s
 * @returns content of what ran over
 */
export function turnByColumn(
  content: Float64Array,
  { value, share, rising }: ColumnLines,
  dragged: Float64Array,
  landing: number,
  before: number,
  inflow: number,
  entering: number,
  topGain: number,
  spill: number,
  dt: number,
): number {
  const count = content.length;
  const after = before + (inflow + topGain - spill) / count;
  let to = landing;
  let flow = spill;
  for (let k = 0; k <= to; k++) {
    rising[k] = flow;
    flow += (dragged[k] as number) * dt + after - before - (k === 0 ? topGain : 0);
    // Melt that outruns the column sinks on its own: the column then counts as landing there.
    if (k < to && flow < 0) to = k;
  }
  let sinking = 0;
  for (let k = count - 1; k > to; k--) {
    rising[k] = sinking + before - after;
    sinking = rising[k] as number;
  }
  const held = (k: number): number => (k === 0 ? before + topGain : before);
  // Above the landing: value = own + share · value of the landing layer; the layers below it feed or drain it.
  let brought = 0;
  let fedBack = 0;
  let landed = inflow;
  let carried = inflow * entering;
  value[to] = 0;
  share[to] = 1;
  for (let k = to - 1; k >= 0; k--) {
    const through = rising[k + 1] as number;
    const mass = held(k) + through;
    value[k] = ((content[k] as number) + through * (value[k + 1] as number)) / mass;
    share[k] = (through * (share[k + 1] as number)) / mass;
    const drag = (dragged[k] as number) * dt;
    brought += drag * (value[k] as number);
    fedBack += drag * (share[k] as number);
    landed += drag;
  }
  for (let k = count - 1; k > to; k--) {
    const below = k === count - 1 ? 0 : Math.max(0, rising[k + 1] as number);
    if ((rising[k] as number) < 0) break;
    value[k] = ((content[k] as number) + below * (value[k + 1] ?? 0)) / (before + below);
  }
  if (to < count - 1 && (rising[to + 1] as number) > 0) {
    landed += rising[to + 1] as number;
    carried += (rising[to + 1] as number) * (value[to + 1] as number);
  }
  const landing0 = ((content[to] as number) + carried + brought) / (held(to) + landed - fedBack);
  for (let k = 0; k <= to; k++) value[k] = (k === to ? 0 : (value[k] as number)) + (share[k] as number) * landing0;
  for (let k = to + 1; k < count; k++) {
    const above = -(rising[k] as number);
    if (above > 0) value[k] = ((content[k] as number) + above * (value[k - 1] as number)) / (before + above);
  }
  for (let k = 0; k < count; k++) content[k] = after * (value[k] as number);
  return spill * (value[0] as number);
}

/** Push of a cold jet against its weight: entry `jet-froude-number`. */
export const jetFroudeNumber = (u: number, d: number, rho: number, drho: number, g: number): number =>
  drho > 0 && d > 0 ? Math.min(Number.MAX_VALUE, u / Math.sqrt((g * drho * d) / rho)) : Number.MAX_VALUE;

/** Height up to which a jet from the floor mixes: entry `jet-mixed-height`. */
export const jetMixedHeight = (d: number, Fr: number, eta: number, x_0: number): number => {
  const square = JET_CORE * eta * d * d * Math.min(1e100, Fr) * Math.min(1e100, Fr);
  return square > 0 ? (2 * square) / (x_0 + Math.sqrt(x_0 * x_0 + 4 * square)) : 0;
};

const bore: Argument = { unit: 'm', says: 'bore of the hose or nozzle' };

export const tubInletCorrelations: readonly Correlation[] = [
  correlation({
    name: 'jet-froude-number',
    says: 'Push of a jet of cold water against the weight it has in warm water.',
    arguments: {
      u: { unit: 'm/s', says: 'speed in the bore', range: [0, 5] },
      d: bore,
      rho: { unit: 'kg/m³', says: 'density of the water around' },
      drho: { unit: 'kg/m³', says: 'by how much the jet is heavier' },
      g: { unit: 'm/s²', says: 'acceleration of gravity' },
    },
    result: { symbol: 'Fr', unit: '1' },
    tex: "Fr = \\frac{u}{\\sqrt{g'd}},\\quad g'=g\\frac{\\Delta\\rho}{\\rho}",
    source: 'definition',
    outside: 'the largest number where nothing is heavier',
    compute: jetFroudeNumber,
  }),
  correlation({
    name: 'jet-mixed-height',
    says: 'Height up to which cold water let in at the floor of a tub mixes into the warm water above it.',
    arguments: {
      d: bore,
      Fr: { unit: '1', says: 'Froude number of the jet', range: [0, 100] },
      eta: { unit: '1', says: 'share of the jet’s power that mixes', range: [0.1, 1] },
      x_0: { unit: 'm', says: 'length it runs before it turns upward', range: [0, 1.5] },
    },
    result: { symbol: 'h', unit: 'm' },
    tex: 'h\\,(h+x_0) = 6.2\\,\\eta\\,d^2Fr^2',
    source:
      'work balance of this project: the jet’s power, falling as 6.2 d/x, lifts cold water; η = 0.5 gives the height of fountains, 1.74 d Fr (Turner 1966, from memory), η = 0.1 the 0.8 d Fr seen in cold stores (Nakahara et al. 1988, from memory)',
    outside: 'evaluated; closer than 6.2 d to the hose the jet mixes less, to η d Fr²',
    checks: [
      {
        symbol: '(h+x_0)/d',
        says: 'run of the jet in diameters',
        range: [JET_CORE, 1e3],
        value: ({ d = 1, Fr = 0, eta = 0, x_0 = 0 }) => (jetMixedHeight(d, Fr, eta, x_0) + x_0) / d,
      },
    ],
    compute: jetMixedHeight,
  }),
  correlation({
    name: 'stirring-power',
    says: 'Power with which stirred water works against its layers.',
    arguments: {
      u: { unit: 'm/s', says: 'speed of the water', range: [0, 1] },
      rho: { unit: 'kg/m³', says: 'density of the water' },
      V: { unit: 'm³', says: 'water in the tub' },
      D: { unit: 'm', says: 'diameter of the tub' },
    },
    result: { symbol: 'P', unit: 'W' },
    tex: 'P = 0.05\\,\\rho V\\frac{u^3}{D}',
    source: 'estimate of this project: a twentieth of the power that turbulence of that speed and size uses up',
    outside: 'evaluated',
    compute: stirringPower,
  }),
];
