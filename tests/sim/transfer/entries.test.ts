import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { correlation, type Correlation } from '../../../sim/correlation.ts';
import { transferCorrelations } from '../../../sim/transfer/index.ts';

/** Inputs a reader could type, by symbol, in a world where oil floats on water and a tube lies inside its jacket. */
const TYPED: Readonly<Record<string, readonly [number, number]>> = {
  A: [0, 1e4],
  B: [0, 1e5],
  C: [0.1, 5],
  D: [0.003, 0.6],
  D_coil: [0.1, 0.5],
  D_i: [0.003, 0.02],
  D_o: [0.021, 0.03],
  D_s: [0.032, 0.08],
  G: [0, 200],
  Gr: [0, 1e10],
  L: [0.05, 10],
  N: [1, 20],
  NTU: [0, 50],
  Nu_f: [0, 100],
  Nu_n: [0, 100],
  P: [0, 2e4],
  Pr: [0.5, 15],
  Pr_l: [1.5, 13],
  Q: [0, 1e-3],
  Q_H: [1e-6, 1e-3],
  Q_L: [0, 1e-3],
  K_SH: [0.6, 1],
  K_b: [0.5, 1],
  K_c: [0.5, 1],
  K_d: [0.5, 1],
  R_f: [0, 1e-3],
  Ra: [0, 1e12],
  Re: [0, 1e5],
  Sc: [0.5, 3],
  T: [280, 400],
  T_0: [370, 420],
  T_a: [250, 320],
  T_air: [275, 320],
  T_bulk: [275, 400],
  T_ci: [275, 370],
  T_co: [275, 370],
  T_hi: [275, 400],
  T_ho: [275, 400],
  T_in: [274, 372],
  T_out: [274, 372],
  T_s: [275, 400],
  T_sat: [350, 390],
  T_w: [275, 400],
  T_wall: [275, 400],
  T_water: [275, 400],
  V: [0, 1],
  Z_T: [0.05, 1],
  Z_leg: [0, 1],
  a: [-10, 80],
  alpha: [1e-7, 3e-5],
  b: [-10, 80],
  beta: [-1e-4, 4e-3],
  cp_l: [1000, 4300],
  cut: [0, 1e-2],
  d: [1e-5, 0.02],
  dT: [-20, 80],
  dT_e: [-5, 30],
  depth: [0, 2],
  dp: [-1e3, 7e4],
  drho: [-150, 200],
  f: [0, 0.1],
  g: [9.7, 9.9],
  gradient: [0, 1e4],
  h_fg: [2e6, 2.5e6],
  h_i: [0, 2e4],
  h_o: [0, 3e3],
  k_l: [0.1, 0.7],
  layer: [0, 0.3],
  m: [0, 0.01],
  m_c: [0.02, 0.2],
  median: [1e-5, 1e-3],
  mu: [1e-5, 2e-3],
  mu_H: [1e-4, 1e-2],
  mu_L: [1e-4, 1e-2],
  mu_l: [2e-4, 2e-3],
  mu_o: [5e-4, 1e-2],
  mu_v: [8e-6, 1.4e-5],
  mu_w: [3e-4, 2e-3],
  nu: [2e-7, 3e-5],
  nu_l: [2e-7, 2e-6],
  p: [8e4, 1.1e5],
  p_0: [9e4, 2e5],
  p_a: [0, 3e3],
  p_b: [8e4, 1.1e5],
  p_v: [0, 2e4],
  p_w: [600, 1e5],
  rho: [0.5, 1000],
  rho_1: [0.4, 1],
  rho_A: [1000, 1100],
  rho_B: [800, 1000],
  rho_H: [1000, 1100],
  rho_L: [800, 1000],
  rho_heavy: [990, 1100],
  rho_inf: [1, 1.3],
  rho_l: [900, 1000],
  rho_light: [800, 990],
  rho_s: [0.9, 1.2],
  rho_v: [0.1, 2],
  sigma: [0.05, 0.08],
  slope: [0, 0.3],
  thickness: [0, 0.1],
  v: [0, 0.1],
  v_H: [0, 0.02],
  v_c: [0, 0.01],
  v_t: [1e-6, 0.01],
  x: [0, 1],
  phi: [0, 3.14],
  z: [-50, 50],
  z_1: [0.1, 0.4],
  z_3: [0, 0.1],
  k: [0.03, 400],
  'A m²': [1e-4, 1],
  // What stands after the still: films in a room, drops, bottles, germs.
  'D m²/s': [1e-7, 1e-4],
  D_ref: [1e-6, 2e-5],
  E: [0, 1e-5],
  H: [2e4, 1.2e5],
  M: [0.016, 0.3],
  N_0: [1, 1e6],
  'N 1': [1, 1e6],
  N_max: [1.1e6, 1e10],
  'V 1': [10, 400],
  'V m³/mol': [5e-5, 1e-3],
  V_a: [0, 1e-3],
  V_c: [5e-5, 1e-3],
  V_o: [1e-6, 1e-3],
  V_r: [5, 300],
  c: [1e-6, 0.1],
  chi: [-1, 2],
  cp: [900, 1100],
  h: [0, 100],
  'k m/s': [1e-5, 0.1],
  'mu 1/s': [1e-7, 1e-3],
  mu_25: [0, 1e-3],
  n: [0, 0.01],
  p_25: [1e-3, 1e3],
  r: [1e-4, 0.02],
  t: [0, 1e6],
};

const inputsOf = (entry: Correlation): fc.Arbitrary<Readonly<Record<string, number>>> => {
  const fields: Record<string, fc.Arbitrary<number>> = {};
  for (const [symbol, argument] of Object.entries(entry.arguments)) {
    const bounds = TYPED[`${symbol} ${argument.unit}`] ?? TYPED[symbol] ?? argument.range;
    if (bounds === undefined) throw new Error(`${entry.name}: no inputs to try for ${symbol}`);
    const [low, high] = argument.unit === '1' || argument.unit === 'm/s' ? (argument.range ?? bounds) : bounds;
    const between = fc
      .double({ min: low, max: high, noNaN: true })
      .map((value) => (Math.abs(value) < 1e-9 * high ? Math.max(0, low) : value));
    fields[symbol] = low <= 0 && high >= 0 ? fc.oneof({ weight: 5, arbitrary: between }, fc.constant(0)) : between;
  }
  return fc.record(fields);
};

describe('entries of the desk reference', () => {
  it('have names of their own in kebab-case', () => {
    const names = transferCorrelations.map((entry) => entry.name);
    expect(new Set(names).size).toBe(names.length);
    expect(names.filter((name) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(name))).toEqual([]);
  });

  it('say what they give, from where, and what happens outside their range', () => {
    const silent = transferCorrelations.filter(
      (entry) =>
        !entry.says.endsWith('.') || entry.source.length < 6 || entry.outside.length < 6 || entry.tex.length < 3,
    );
    expect(silent.map((entry) => entry.name)).toEqual([]);
  });

  it('give every argument words and an ordered range', () => {
    const faulty = transferCorrelations.flatMap((entry) =>
      Object.entries(entry.arguments)
        .filter(([, { says, range }]) => says.length < 3 || (range !== undefined && !(range[0] < range[1])))
        .map(([symbol]) => `${entry.name} ${symbol}`),
    );
    expect(faulty).toEqual([]);
  });

  it('pass the values of the named arguments in the order in which these are written', () => {
    const text = { says: '', result: { symbol: 'y', unit: '1' }, tex: '', source: '', outside: '' };
    const one = { unit: '1', says: 'a number' };
    const entry = correlation({
      ...text,
      name: 'difference',
      arguments: { a: one, b: one },
      compute: (a = 0, b = 0) => a - b,
    });
    expect(entry.evaluate({ b: 1, a: 5 })).toBe(4);
  });

  it('name the argument that is missing', () => {
    const entry = transferCorrelations.find(({ name }) => name === 'effectiveness-counterflow');
    expect(() => entry?.evaluate({ NTU: 1 })).toThrow(
      new RangeError('effectiveness-counterflow: argument C_r is missing'),
    );
  });

  it.each(transferCorrelations.map((entry) => [entry.name, entry] as const))(
    'stay finite for anything a reader could type: %s',
    (_name, entry) => {
      fc.assert(
        fc.property(inputsOf(entry), (values) => Number.isFinite(entry.evaluate(values))),
        { numRuns: 60, seed: 1969 },
      );
    },
  );
});
