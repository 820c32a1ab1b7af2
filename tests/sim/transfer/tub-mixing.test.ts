/**
 * Layers, jets and sinking streams in a tub against worked cases: own numbers of this project, found a second time by
 * somebody else from the equations alone, not published ones. Contents are temperatures in °C here, a layer weighs 1.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  jetFroudeNumber,
  jetMixedHeight,
  mixByJet,
  mixByStirring,
  sinkingColumn,
  stirringPower,
  turnByColumn,
} from '../../../sim/transfer/tub-inlets.ts';
import { limitedSlopes, pushUp, turnOver, type LayerLines } from '../../../sim/transfer/tub-layers.ts';

const GRAVITY = 9.80665;
/** Density of water, kg/m³, T in °C, as the worked cases have it. */
const density = (T: number): number => 1000 * (1 - ((T + 288.9414) * (T - 3.9863) ** 2) / (508929.2 * (T + 68.12963)));
const fromBottom = (...T: number[]): Float64Array => Float64Array.from(T.reverse());
const bottomUp = (T: Float64Array): number[] => [...T].reverse();
const sum = (T: Float64Array): number => T.reduce((total, value) => total + value, 0);
const linesFor = (layers: number): LayerLines => ({ value: new Float64Array(layers), slope: new Float64Array(layers) });
const litresPerMinute = (Q: number): number => Q / 60_000;
const push = (T: Float64Array, courant: number, entering: number): number =>
  pushUp(T, linesFor(T.length), 1, courant, entering, 0, courant, Infinity);

describe('lines in the layers', () => {
  /** Heats every layer evenly while water of 15 °C passes, 15 to 65 °C in all, until nothing changes. */
  const steady = (layers: number, courant: number): number[] => {
    const T = Float64Array.from({ length: layers }, (_, k) => 65 - (50 * (k + 0.5)) / layers);
    const heat = (courant * 50) / layers;
    for (let step = 0; step < (40 * layers) / courant; step++) {
      push(T, courant, 15);
      for (let k = 0; k < layers; k++) T[k] = (T[k] as number) + heat;
    }
    return bottomUp(T).map((value, k) => value - (15 + (50 * (k + 0.5)) / layers));
  };

  it('follow an even warming to 0.07–0.11 K just after a step’s heat, where flat layers were 2.08 K too warm', () => {
    const bias = steady(12, 0.05);
    expect(bias[0]).toBeCloseTo(0.0658, 3);
    expect(bias[1]).toBeCloseTo(0.0955, 3);
    for (const wrong of bias.slice(3)) expect(wrong).toBeCloseTo(0.104, 3);
  });

  it.each([
    [12, 0.23],
    [24, 0.14],
    [48, 0.09],
  ])('keep a front in %d layers as sharp as %d of the height', (layers, thickness) => {
    const T = new Float64Array(layers).fill(60);
    for (let step = 0; step < layers * 10; step++) push(T, 0.05, 15);
    const up = bottomUp(T);
    const where = (level: number): number => {
      const k = up.findIndex((value) => value >= level);
      const [low, high] = [up[k - 1] as number, up[k] as number];
      return (k - 1 + (level - low) / (high - low)) / layers;
    };
    expect(where(55.5) - where(19.5)).toBeCloseTo(thickness, 2);
    if (layers === 12)
      [15, 15.007, 15.083, 15.633, 18.656, 29.005, 44.517, 57.139, 59.96, 60, 60, 60].forEach((told, k) =>
        expect(up[k]).toBeCloseTo(told, 2),
      );
  });

  it('move a front exactly when a whole layer enters at a time, and several at once', () => {
    const one = fromBottom(20, 20, 60, 60, 60, 60);
    push(one, 1, 10);
    expect(bottomUp(one)).toEqual([10, 20, 20, 60, 60, 60]);
    const three = fromBottom(20, 20, 60, 60, 60, 60);
    expect(push(three, 3, 10)).toBeCloseTo(180, 10);
    bottomUp(three).forEach((value, k) => expect(value).toBeCloseTo([10, 10, 10, 20, 20, 60][k] as number, 10));
    const flushed = fromBottom(20, 30, 40, 50);
    expect(push(flushed, 1000, 10)).toBeCloseTo(140 + 996 * 10, 8);
    expect([...flushed]).toEqual([10, 10, 10, 10]);
  });

  it('lie flat at a turning point, in a single layer, and at the floor when nothing comes in', () => {
    const slope = new Float64Array(4);
    limitedSlopes(Float64Array.of(40, 50, 20, 30), slope, Number.NaN);
    expect([...slope]).toEqual([-10, 0, 0, 0]);
    const alone = new Float64Array(1).fill(7);
    limitedSlopes(Float64Array.of(40), alone, 15);
    expect(alone[0]).toBe(0);
  });

  it('lose nothing and make nothing warmer or colder than what meets, however much comes, melts, dries or spills', () => {
    const layers = fc.array(fc.double({ min: 1, max: 99, noNaN: true }), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(
        layers,
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 5, max: 30, noNaN: true }),
        fc.double({ min: -0.4, max: 0.4, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (list, inflow, entering, gain, share) => {
          const T = Float64Array.from(list);
          const mean = sum(T) / T.length;
          const held = T.length + inflow + gain;
          // Meltwater comes with its heat, vapour leaves with its own: here both at the top layer's temperature.
          T[0] = (T[0] as number) * (1 + gain);
          const before = sum(T);
          const spill = share * Math.max(0, held - T.length);
          const over = pushUp(T, linesFor(T.length), 1, inflow, entering, gain, spill, Infinity);
          expect(Math.abs(sum(T) + over - before - inflow * entering)).toBeLessThan(1e-11 * (before + inflow * 99));
          const after = (held - spill) / T.length;
          const [low, high] = [Math.min(entering, ...list), Math.max(entering, ...list)];
          if (gain === 0 && spill === inflow)
            for (const content of T) {
              expect(content / after).toBeGreaterThan(low - 1e-9);
              expect(content / after).toBeLessThan(high + 1e-9);
            }
          expect(mean).toBeGreaterThan(0);
        },
      ),
      { numRuns: 500, seed: 12 },
    );
  });

  it('let nothing run over hotter than the limit', () => {
    const T = fromBottom(20, 40, 60, 80, 99);
    expect(pushUp(T, linesFor(5), 1, 0.1, 15, 0, 0.1, 100)).toBeCloseTo(10, 10);
  });

  it('turn over where warm lies under cold, pair by pair', () => {
    const T = fromBottom(50, 30, 40, 60, 55);
    turnOver(T);
    expect(bottomUp(T)).toEqual([40, 40, 40, 57.5, 57.5]);
  });
});

describe('a jet from the floor', () => {
  const shape = { mass: 1, thickness: 0.1, area: 0.2 };
  const mixed = (u: number): number[] => {
    const T = fromBottom(15, 20, 30, 40, 50, 60);
    const flow = (0.998 * 2) / 60;
    mixByJet(T, shape, density, 0.5 * 0.5 * flow * u * u * 10, 0.012, 0);
    return bottomUp(T);
  };

  it('mixes as far as its work goes', () => {
    [16.53392808, 18.46607192, 30, 40, 50, 60].forEach((told, k) => expect(mixed(0.295)[k]).toBeCloseTo(told, 8));
    mixed(30).forEach((found) => expect(found).toBeCloseTo(35.8333, 4));
    expect(mixed(0.001)[0] as number).toBeCloseTo(15 + 1.8e-5, 6);
    for (const u of [0.295, 30, 0.001]) expect(mixed(u).reduce((a, b) => a + b)).toBeCloseTo(215, 10);
  });

  /** A tub of 0.5 × ⌀ 0.45 m at 60 °C takes in half a filling of 15 °C: mean of each quarter, bottom up, 0 cold, 1 warm. */
  const quarters = (Q: number, d: number, x0: number, layers: number): number[] => {
    const area = (Math.PI / 4) * 0.45 ** 2;
    const tub = { mass: 1, thickness: 0.5 / layers, area };
    const u = litresPerMinute(Q) / ((Math.PI / 4) * d * d);
    const courant = 0.2;
    const volume = area * tub.thickness;
    const dt = (courant * volume) / litresPerMinute(Q);
    const T = new Float64Array(layers).fill(60);
    for (let step = 0; step < Math.round((0.5 * layers) / courant); step++) {
      push(T, courant, 15);
      mixByJet(T, tub, density, 0.5 * 0.5 * 1000 * litresPerMinute(Q) * u * u * dt, d, x0);
    }
    const theta = bottomUp(T).map((value) => (value - 15) / 45);
    return [0, 1, 2, 3].map(
      (k) => (4 / layers) * theta.slice((k * layers) / 4, ((k + 1) * layers) / 4).reduce((a, b) => a + b),
    );
  };

  it.each([
    [0.15, 12, 0, [0.014, 0.122, 0.864, 1], [0.01, 0.032, 0.959, 1]],
    [0.7, 12, 0, [0.129, 0.154, 0.717, 0.999], [0.1, 0.108, 0.792, 1]],
    [2, 12, 0, [0.32, 0.32, 0.429, 0.931], [0.288, 0.288, 0.425, 0.999]],
    [2, 12, 0.45, [0.18, 0.18, 0.641, 0.999], [0.15, 0.15, 0.699, 1]],
    [5, 12, 0, [0.544, 0.544, 0.544, 0.548], [0.525, 0.525, 0.525, 0.528]],
    [0.7, 6, 0, [0.318, 0.318, 0.431, 0.934], [0.286, 0.286, 0.429, 0.999]],
    [2, 6, 0, [0.571, 0.571, 0.571, 0.571], [0.556, 0.556, 0.556, 0.556]],
    [10, 12, 0, [0.604, 0.604, 0.604, 0.604], [0.606, 0.606, 0.606, 0.606]],
  ])('fills a warm tub as worked out: %d L/min through %d mm, run %d m', (Q, d, x0, twelve, ninetySix) => {
    quarters(Q, d / 1000, x0, 12).forEach((theta, k) =>
      expect(Math.abs(theta - (twelve[k] as number))).toBeLessThan(0.0012),
    );
    quarters(Q, d / 1000, x0, 96).forEach((theta, k) =>
      expect(Math.abs(theta - (ninetySix[k] as number))).toBeLessThan(0.0012),
    );
  });

  it.each([
    [0.15, 12, 0.016, 0.001],
    [0.5, 12, 0.054, 0.013],
    [1, 12, 0.109, 0.044],
    [2, 12, 0.218, 0.133],
    [5, 12, 0.545, 0.444],
    [1, 6, 0.308, 0.216],
  ])('reaches a height at which the work is spent: %d L/min through %d mm', (Q, d_mm, up, laid) => {
    const d = d_mm / 1000;
    const u = litresPerMinute(Q) / ((Math.PI / 4) * d * d);
    const Fr = jetFroudeNumber(u, d, density(40), density(15) - density(40), GRAVITY);
    expect(jetMixedHeight(d, Fr, 0.5, 0)).toBeCloseTo(up, 3);
    expect(jetMixedHeight(d, Fr, 0.5, 0.225)).toBeCloseTo(laid, 3);
  });

  it('rises to 1.76 d Fr when it points up, close to a fountain’s 1.74', () => {
    expect(jetMixedHeight(0.012, 10, 0.5, 0) / (0.012 * 10)).toBeCloseTo(1.76, 2);
  });

  it('keeps heat and order, whatever the step, and mixes all with power without end', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 5, max: 99, noNaN: true }), { minLength: 1, maxLength: 20 }),
        fc.double({ min: -12, max: 3, noNaN: true }),
        fc.double({ min: 0.003, max: 0.03, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (list, logWork, d, x0) => {
          const T = Float64Array.from([...list].sort((a, b) => b - a));
          const before = Float64Array.from(T);
          const total = sum(T);
          mixByJet(T, { mass: 1, thickness: 0.5 / T.length, area: 0.16 }, density, 10 ** logWork, d, x0);
          expect(Math.abs(sum(T) - total)).toBeLessThan(5e-13 * total);
          for (let k = 1; k < T.length; k++) expect(T[k] as number).toBeLessThan((T[k - 1] as number) + 1e-9);
          expect(Math.min(...T)).toBeGreaterThan(Math.min(...before) - 1e-9);
          expect(Math.max(...T)).toBeLessThan(Math.max(...before) + 1e-9);
        },
      ),
      { numRuns: 1000, seed: 31 },
    );
    const all = fromBottom(15, 30, 60);
    expect(mixByJet(all, shape, density, 1e9, 0.012, 0)).toBe(3);
    expect([...all]).toEqual([35, 35, 35]);
  });
});

describe('a hose from the top', () => {
  const LAYERS = 12;
  const height = 0.5;
  const area = (Math.PI / 4) * 0.45 ** 2;
  const shape = { mass: 1, thickness: height / LAYERS, area };
  const layerMass = (1000 * area * height) / LAYERS;
  const flow = 1000 * litresPerMinute(1);

  it.each([
    [60, 36.3],
    [25, 22.2],
  ])('drags the tub along to its floor: tub at %d °C, %d times the inflow', (T_tub, told) => {
    const T = new Float64Array(LAYERS).fill(T_tub);
    const dragged = new Float64Array(LAYERS);
    expect(sinkingColumn(T, shape, density, flow, 15, 0.012, dragged)).toBe(LAYERS - 1);
    const brought = 1 + dragged.reduce((total, value) => total + value, 0) / flow;
    // Told for equal densities of what is dragged and what enters; here the warm layers weigh a little less.
    expect(Math.abs(brought / told - 1)).toBeLessThan(0.02);
    expect(dragged[LAYERS - 1]).toBe(0);
  });

  const scratch = () => ({
    value: new Float64Array(LAYERS),
    share: new Float64Array(LAYERS),
    rising: new Float64Array(LAYERS),
  });

  it('leaves a tub of 60 °C almost mixed after 20 minutes: 48.2 °C below, 52.3 °C above', () => {
    const T = new Float64Array(LAYERS).fill(60);
    const dragged = new Float64Array(LAYERS);
    for (let step = 0; step < 120; step++) {
      const landing = sinkingColumn(T, shape, density, flow, 15, 0.012, dragged);
      const share = (flow * 10) / layerMass;
      const perLayer = dragged.map((value) => value / layerMass);
      turnByColumn(T, scratch(), perLayer, landing, 1, share, 15, 0, share, 10);
    }
    const up = bottomUp(T);
    // Within what counting litres as kilograms makes.
    expect(Math.abs((up[0] as number) - 48.21)).toBeLessThan(0.03);
    expect(Math.abs((up[6] as number) - 49.11)).toBeLessThan(0.03);
    expect(Math.abs((up[11] as number) - 52.33)).toBeLessThan(0.03);
    expect(Math.abs(sum(T) / LAYERS - 49.41)).toBeLessThan(0.02);
  });

  it('lands where the water is as heavy as itself, and on top when it is warmer than all', () => {
    const dragged = new Float64Array(6);
    const T = fromBottom(10, 10, 10, 50, 50, 50);
    expect(sinkingColumn(T, shape, density, flow, 15, 0.012, dragged)).toBe(2);
    expect(dragged.filter((value) => value > 0)).toHaveLength(2);
    expect(sinkingColumn(fromBottom(10, 10, 10, 10, 10, 10), shape, density, flow, 40, 0.012, dragged)).toBe(0);
    expect(sum(dragged)).toBe(0);
  });

  it('keeps its heat to rounding and stays between what meets, at any step, full, filling or drying', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 5, max: 95, noNaN: true }), { minLength: 2, maxLength: 16 }),
        fc.double({ min: -4, max: 2, noNaN: true }),
        fc.double({ min: -0.3, max: 0.3, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: -2, max: 5, noNaN: true }),
        fc.nat(),
        (list, logInflow, gain, share, logStep, place) => {
          const T = Float64Array.from(list);
          const inflow = 10 ** logInflow;
          const dt = 10 ** logStep;
          const landing = place % T.length;
          const dragged = T.map((_, k) => (k < landing ? 1e-3 * (1 + ((place + k) % 7)) : 0));
          T[0] = (T[0] as number) * (1 + gain);
          const before = sum(T);
          const spill = share * Math.max(0, inflow + gain);
          const lines = {
            value: new Float64Array(T.length),
            share: new Float64Array(T.length),
            rising: new Float64Array(T.length),
          };
          const over = turnByColumn(T, lines, dragged, landing, 1, inflow, 12, gain, spill, dt);
          expect(Math.abs(sum(T) + over - before - 12 * inflow)).toBeLessThan(1e-11 * (before + 99 * inflow + 1));
          const after = 1 + (inflow + gain - spill) / T.length;
          for (const content of T) {
            expect(content / after).toBeGreaterThan(Math.min(12, ...list) - 1e-6);
            expect(content / after).toBeLessThan(Math.max(12, ...list) + 1e-6);
          }
        },
      ),
      { numRuns: 1000, seed: 7 },
    );
  });
});

describe('stirring', () => {
  const shape = { mass: 1, thickness: 0.1, area: 0.2 };

  it('draws the layers together by as much as its work pays, and no further than their mean', () => {
    const price = (T: Float64Array): number => {
      const mean = T.reduce((total, value) => total + density(value), 0) / T.length;
      return (
        T.reduce((total, value, k) => total + (mean - density(value)) * (T.length - k - 0.5), 0) * GRAVITY * 0.2 * 0.01
      );
    };
    const T = fromBottom(15, 30, 60);
    expect(mixByStirring(T, shape, density, 0.25 * price(T))).toBeCloseTo(0.25, 10);
    bottomUp(T).forEach((value, k) => expect(value).toBeCloseTo([20, 31.25, 53.75][k] as number, 10));
    expect(mixByStirring(T, shape, density, 10)).toBe(1);
    T.forEach((value) => expect(value).toBeCloseTo(35, 10));
    const still = fromBottom(15, 30, 60);
    expect(mixByStirring(still, shape, density, 0)).toBe(0);
    expect(bottomUp(still)).toEqual([15, 30, 60]);
  });

  it('grows with the cube of the speed', () => {
    expect(stirringPower(0.2, 998, 0.05, 0.4) / stirringPower(0.1, 998, 0.05, 0.4)).toBeCloseTo(8, 12);
  });
});
