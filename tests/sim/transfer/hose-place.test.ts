/**
 * The same coil and power with the hose below, above, and in a tub that is stirred through: how much water each needs.
 * Own worked numbers, found twice, not published ones: 0.8 kg/h, 3 m of coil from 5 to 40 cm deep in a tub of
 * 0.45 × 0.159 m², 40 W/K a metre while steam condenses and 5.5 after, condensate to 30 °C, water from 15 °C.
 */
import { describe, expect, it } from 'vitest';
import { mixByJet, sinkingColumn, turnByColumn } from '../../../sim/transfer/tub-inlets.ts';
import { limitedSlopes, pushUp, turnOver } from '../../../sim/transfer/tub-layers.ts';

const density = (T: number): number => 1000 * (1 - ((T + 288.9414) * (T - 3.9863) ** 2) / (508929.2 * (T + 68.12963)));
const LAYERS = 12;
const HEIGHT = 0.45;
const AREA = 0.159;
const CAPACITY = 4186;
const RATE = 0.8 / 3600;
const LATENT = RATE * 2.257e6;
const SEGMENTS = 60;
const LENGTH = 3;
const DT = 10;
const LAYER_MASS = (998 * AREA * HEIGHT) / LAYERS;

type Inlet = 'bottom' | 'top' | 'stirred';

/** After five fillings from a start, °C, at a flow, L/min: the condensate’s temperature and that of the overflow, °C. */
function settled(inlet: Inlet, litres: number, start: number): { outlet: number; over: number } {
  const T = new Float64Array(LAYERS).fill(start);
  const slope = new Float64Array(LAYERS);
  const lines = { value: new Float64Array(LAYERS), slope };
  const column = { value: new Float64Array(LAYERS), share: new Float64Array(LAYERS), rising: new Float64Array(LAYERS) };
  const dragged = new Float64Array(LAYERS);
  const shape = { mass: 1, thickness: HEIGHT / LAYERS, area: AREA };
  const flow = litres / 60;
  const moved = (flow * DT) / LAYER_MASS;
  const u = flow / 998 / ((Math.PI / 4) * 0.012 ** 2);
  const steps = Math.ceil((5 * LAYERS * LAYER_MASS) / (flow * DT));
  let outlet = 0;
  let over = 0;
  for (let step = 0; step < steps; step++) {
    limitedSlopes(T, slope, inlet === 'bottom' ? 15 : Number.NaN);
    let left = LATENT;
    outlet = 100;
    const heat = new Float64Array(LAYERS);
    for (let s = 0; s < SEGMENTS; s++) {
      const depth = 0.05 + (0.35 * (s + 0.5)) / SEGMENTS;
      const layer = Math.min(LAYERS - 1, Math.floor((depth / HEIGHT) * LAYERS));
      const water = (T[layer] as number) + (slope[layer] as number) * (layer + 0.5 - (depth / HEIGHT) * LAYERS);
      const possible = 40 * (LENGTH / SEGMENTS) * (100 - water);
      const spent = Math.min(left, possible);
      left -= spent;
      const rest = 1 - spent / possible;
      const fall = (outlet - water) * -Math.expm1((-5.5 * rest * LENGTH) / SEGMENTS / (RATE * CAPACITY));
      outlet -= fall;
      heat[layer] = (heat[layer] as number) + spent + fall * RATE * CAPACITY;
    }
    for (let k = 0; k < LAYERS; k++) T[k] = (T[k] as number) + ((heat[k] as number) * DT) / (LAYER_MASS * CAPACITY);
    if (inlet === 'top') {
      const landing = sinkingColumn(T, shape, density, flow, 15, 0.012, dragged);
      over =
        turnByColumn(
          T,
          column,
          dragged.map((value) => value / LAYER_MASS),
          landing,
          1,
          moved,
          15,
          0,
          moved,
          DT,
        ) / moved;
    } else over = pushUp(T, lines, 1, moved, 15, 0, moved, Infinity) / moved;
    turnOver(T);
    if (inlet === 'bottom') mixByJet(T, shape, density, 0.25 * flow * u * u * DT, 0.012, 0.225);
    if (inlet === 'stirred') T.fill(T.reduce((sum, value) => sum + value, 0) / LAYERS);
  }
  return { outlet, over };
}

/** Least flow, L/min, that keeps the condensate below 30 °C and the tub from boiling. */
function least(inlet: Inlet, start: number): number {
  let [low, high] = [0.05, 1.5];
  while (high / low > 1.003) {
    const middle = Math.sqrt(low * high);
    const { outlet, over } = settled(inlet, middle, start);
    if (outlet <= 30 && over <= 99) high = middle;
    else low = middle;
  }
  return high;
}

describe('where the hose ends', () => {
  it('decides the water: 0.10 L/min laid on the floor, 0.42 from above, 0.55 into a stirred tub', () => {
    expect(least('bottom', 15)).toBeCloseTo(0.099, 2);
    expect(Math.abs(least('top', 60) / 0.42 - 1)).toBeLessThan(0.02);
    expect(Math.abs(least('stirred', 60) / 0.55 - 1)).toBeLessThan(0.02);
  });

  it('leaves condensate close to the tap’s temperature above a laid hose, where the tub’s top is near the boil', () => {
    const { outlet, over } = settled('bottom', 0.1, 15);
    expect(outlet).toBeLessThan(18);
    expect(over).toBeGreaterThan(90);
  });

  it('matters less to a tub that starts cold: warmed on its way down, the stream from above floats on the cold water', () => {
    expect(settled('top', 0.42, 60).outlet).toBeCloseTo(30, 0);
    expect(settled('top', 0.42, 15).outlet).toBeLessThan(20);
    expect(settled('top', 0.42, 15).over).toBeCloseTo(settled('top', 0.42, 60).over, 0);
  });
});
