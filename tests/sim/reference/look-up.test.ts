import katex from 'katex';
import { describe, expect, it } from 'vitest';
import type { Correlation } from '../../../sim/correlation.ts';
import {
  closestWords,
  correlations,
  lookUp,
  rangeWords,
  readValue,
  searchCorrelations,
} from '../../../sim/reference/look-up.ts';

/** A value a reader would type where the source gives no limits, by symbol. */
const USUAL: Readonly<Record<string, number>> = {
  A: 0.005,
  'A Pa/m': 10,
  B: 500,
  C: 0.149,
  'C W/K': 100,
  C_r: 0.5,
  D: 0.012,
  D_coil: 0.25,
  D_i: 0.01,
  D_o: 0.012,
  D_s: 0.022,
  G: 20,
  Gr: 1e7,
  H: 1000,
  K_SH: 1,
  K_b: 1,
  K_c: 1,
  K_d: 0.975,
  L: 1,
  N: 5,
  NTU: 1,
  Nu_f: 10,
  Nu_n: 10,
  P: 3000,
  Pr: 4,
  Pr_l: 2,
  Q: 1e-6,
  Q_H: 1e-6,
  Q_L: 1e-8,
  R_f: 1e-4,
  Ra: 1e6,
  Re: 5000,
  Sc: 0.6,
  T: 350,
  T_0: 375,
  T_a: 293,
  T_air: 293,
  T_ci: 288,
  T_co: 310,
  T_hi: 373,
  T_ho: 330,
  T_in: 288,
  T_out: 310,
  T_s: 350,
  T_w: 330,
  V: 0.2,
  Z_T: 0.3,
  Z_leg: 0.28,
  a: 80,
  alpha: 1.5e-7,
  b: 30,
  beta: 3e-4,
  cp_l: 4200,
  cut: 1e-4,
  d: 1e-4,
  'd m': 0.005,
  dT: 20,
  depth: 0.1,
  dp: 2000,
  drho: 100,
  f: 0.02,
  g: 9.80665,
  gradient: 100,
  h_fg: 2.257e6,
  h_i: 5000,
  h_o: 800,
  k: 339,
  k_l: 0.67,
  layer: 0.02,
  m: 5e-4,
  m_c: 0.05,
  median: 1e-4,
  mu: 1e-3,
  mu_H: 1e-3,
  mu_L: 1e-3,
  mu_l: 3e-4,
  mu_o: 1e-3,
  mu_v: 1.2e-5,
  mu_w: 1e-3,
  nu: 1e-6,
  nu_l: 3e-7,
  p: 101_325,
  p_1: 1e6,
  p_0: 103_000,
  p_a: 1200,
  p_b: 101_325,
  p_v: 2000,
  p_w: 20_000,
  phi: 0.5,
  rho: 998,
  rho_1: 0.6,
  rho_A: 1000,
  rho_B: 880,
  rho_H: 1000,
  rho_L: 880,
  rho_heavy: 1000,
  rho_inf: 1.2,
  rho_l: 958,
  rho_light: 880,
  rho_s: 1.1,
  rho_v: 0.6,
  sigma: 0.059,
  thickness: 0.02,
  v: 0.001,
  v_H: 0.002,
  v_c: 0.0005,
  v_t: 0.0005,
  x: 0.5,
  z: 1,
  z_1: 0.2,
  z_3: 0.1,
};

/** The regions of IF97 hold on one side of the saturation line, and a pot holds its water: not in a whole box. */
const STATES: readonly (readonly [start: string, values: Readonly<Record<string, number>>])[] = [
  ['region-1', { T: 300, p: 3e6 }],
  ['region-2', { T: 700, p: 1e5 }],
  ['water-conductivity-industrial', { T: 650, p: 3e5 }],
  ['blocked-outlet', { m: 5, V: 0.05 }],
];

/** Middle of the range; by ratio where it spans more than a thousandfold. */
const middle = ([low, high]: readonly [number, number]): number =>
  low > 0 && high > 1000 * low ? Math.sqrt(low * Math.min(high, 1e12)) : 0.5 * (low + high);

const inputsFor = ({ name, arguments: args }: Correlation): Record<string, string> => {
  const state = STATES.find(([start]) => name.startsWith(start))?.[1] ?? {};
  return Object.fromEntries(
    Object.entries(args).map(([symbol, { unit, range }]) => {
      const value = state[symbol] ?? (range ? middle(range) : (USUAL[`${symbol} ${unit}`] ?? USUAL[symbol]));
      if (value === undefined) throw new Error(`${name}: nothing to try for ${symbol}`);
      return [symbol, String(value)];
    }),
  );
};

describe('the desk reference', () => {
  it('names every entry once, in kebab-case', () => {
    const names = correlations.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    expect(names.filter((name) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(name))).toEqual([]);
  });

  it.each(correlations.map((entry) => [entry.name, entry] as const))(
    'has a finite value, a source, a range in words and an equation that can be set: %s',
    (_, entry) => {
      const found = lookUp(entry.name, inputsFor(entry));
      if (!found.ok) throw new Error(found.problems.map(({ message }) => message).join(' '));
      expect(Number.isFinite(found.answer.value)).toBe(true);
      expect(found.answer.source.length).toBeGreaterThan(5);
      expect(found.answer.outside.length).toBeGreaterThan(5);
      for (const argument of Object.values(entry.arguments)) {
        expect(argument.unit.length).toBeGreaterThan(0);
        expect(rangeWords(argument)).toMatch(/^(no limits given|(at least )?-?\d.*)$/);
      }
      expect(katex.renderToString(entry.tex, { throwOnError: true, strict: false })).toContain('katex');
    },
  );

  it('holds the properties, the relations, the blocked outlet and the coil', () => {
    for (const name of [
      'saturation-pressure',
      'film-coefficient-chato',
      'blocked-outlet-time',
      'coil-turns',
      'heavy-leg-height',
    ])
      expect(
        correlations.some((entry) => entry.name === name),
        name,
      ).toBe(true);
  });

  it('finds entries by words in their name, sentence, arguments or source', () => {
    expect(searchCorrelations('chato').map(({ name }) => name)).toContain('film-coefficient-chato-steam');
    expect(searchCorrelations('lid force').map(({ name }) => name)).toEqual(['lid-force']);
    expect(searchCorrelations('no such thing anywhere')).toEqual([]);
  });
});

describe('a typed value', () => {
  const kelvin = { unit: 'K', says: 'temperature' };

  it('may be a temperature in degrees Celsius where kelvin are meant', () => {
    for (const typed of ['373.15', '373.15K', '100C', '100 °C', '100°c', '1e2C'])
      expect(readValue('T', kelvin, typed), typed).toBe(373.15);
  });

  it('may not where they are not, nor for a difference of temperatures', () => {
    expect(readValue('dT', kelvin, '10C')).toBeNaN();
    expect(readValue('p', { unit: 'Pa', says: 'pressure' }, '100C')).toBeNaN();
  });

  it('is not taken for a number when it is none', () => {
    for (const typed of ['', 'ten', '1,5', '0x10', 'Infinity', '1e', 'C'])
      expect(readValue('T', kelvin, typed), typed).toBeNaN();
  });
});

describe('looking something up', () => {
  it('answers with value, unit, range, source and equation', () => {
    const found = lookUp('saturation-pressure', { T: '100C' });
    expect(found).toMatchObject({
      ok: true,
      answer: { unit: 'Pa', inRange: true, source: 'IAPWS R7-97(2012), region 4, equation 30' },
    });
    if (found.ok) expect(found.answer.value).toBeCloseTo(101_417.98, 1);
  });

  it('says which argument is out of range and evaluates all the same, where the relation does', () => {
    const found = lookUp('film-coefficient-chato-steam', { T_sat: '100C', T_wall: '80C', D_i: '0.06' });
    expect(found).toMatchObject({ ok: true, answer: { inRange: false } });
    if (found.ok)
      expect(found.answer.limits.filter(({ inRange }) => !inRange).map(({ symbol }) => symbol)).toEqual(['D_i']);
  });

  it('says when something computed from the arguments is out of range', () => {
    const found = lookUp('stokes-velocity', { d: '0.002', drho: '100', mu: '0.001', g: '9.81' });
    if (!found.ok) throw new Error('expected an answer');
    expect(found.answer.limits.at(-1)).toMatchObject({ symbol: 'Re', inRange: false });
  });

  it('refuses a property outside its range with value and range', () => {
    expect(lookUp('liquid-density', { T: '200C' })).toMatchObject({
      ok: false,
      problems: [{ message: expect.stringMatching(/473\.15 K is outside 273\.15–403\.15 K/) as unknown }],
    });
  });

  it('names each missing, unknown and unreadable argument with unit and range', () => {
    const found = lookUp('film-coefficient-chato-steam', { T_sat: 'hot', D_i: '0.01', d: '1' });
    if (found.ok) throw new Error('expected problems');
    expect(found.problems.map(({ about }) => about)).toEqual(['T_sat', 'T_wall', 'd']);
    expect(found.problems[0]?.message).toMatch(/T_sat=hot is not a number.*in K, 273\.15 to 403\.15 K/);
    expect(found.problems[1]?.message).toMatch(/T_wall is missing.*in K/);
  });

  it('suggests the closest names for an unknown one', () => {
    const found = lookUp('saturation-presure', { T: '100C' });
    expect(found).toMatchObject({
      ok: false,
      problems: [{ message: expect.stringContaining('saturation-pressure') as unknown }],
    });
    expect(closestWords('tubs', ['tubes', 'tubs', 'circuits'], 1)).toEqual(['tubs']);
    expect(closestWords('film-chato', ['lid-force', 'film-coefficient-chato', 'vent-bore'], 1)).toEqual([
      'film-coefficient-chato',
    ]);
  });

  it('refuses names from the language’s own furniture', () => {
    expect(
      lookUp('saturation-pressure', JSON.parse('{"__proto__": "1", "T": "300"}') as Record<string, string>).ok,
    ).toBe(false);
    expect(lookUp('toString', {}).ok).toBe(false);
  });
});
