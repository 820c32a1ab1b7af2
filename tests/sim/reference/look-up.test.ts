import katex from 'katex';
import { describe, expect, it } from 'vitest';
import type { Correlation } from '../../../sim/correlation.ts';
import { englishReader } from '../../../sim/messages/language.ts';
import { lookUpMessages, lookUpProblem } from '../../../sim/messages/look-up.ts';
import { closestWords } from '../../../sim/reference/closest-words.ts';
import { correlations } from '../../../sim/reference/entries.ts';
import { lookUp, readValue, type LookUp } from '../../../sim/reference/look-up.ts';
import { usualValues } from '../../../sim/reference/usual-values.ts';

const READER = englishReader('metric');

const inputsFor = (entry: Correlation): Record<string, string> =>
  Object.fromEntries(Object.entries(usualValues(entry)).map(([symbol, value]) => [symbol, String(value)]));
const messages = (found: LookUp): string[] =>
  found.ok ? [] : found.problems.map((problem) => lookUpProblem(problem, READER));

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
      if (!found.ok) throw new Error(messages(found).join(' '));
      expect(Number.isFinite(found.answer.value)).toBe(true);
      expect(found.answer.limits.filter(({ inRange }) => !inRange).map(({ symbol }) => symbol)).toEqual([]);
      expect(found.answer.source.length).toBeGreaterThan(5);
      expect(found.answer.outside.length).toBeGreaterThan(5);
      for (const argument of Object.values(entry.arguments)) {
        expect(argument.unit.length).toBeGreaterThan(0);
        expect(lookUpMessages(READER).range(argument.range ?? null, argument.unit)).toMatch(
          /^(no limits given|(at least )?-?\d.*)$/,
        );
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
});

describe('a typed value', () => {
  const kelvin = { unit: 'K', says: 'temperature' };

  it('may be a temperature in degrees Celsius where kelvin are meant', () => {
    for (const typed of ['373.15', '373.15K', '100C', '100 °C', '100°c', '1e2C'])
      expect(readValue(kelvin, typed), typed).toBe(373.15);
  });

  it('may not where they are not, nor for a difference of temperatures', () => {
    expect(readValue({ ...kelvin, isDifference: true }, '10C')).toBeNaN();
    expect(readValue({ unit: 'Pa', says: 'pressure' }, '100C')).toBeNaN();
  });

  it('is not taken for a number when it is none', () => {
    for (const typed of ['', 'ten', '1,5', '0x10', 'Infinity', '1e', 'C'])
      expect(readValue(kelvin, typed), typed).toBeNaN();
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
    const found = lookUp('liquid-density', { T: '200C' });
    expect(found).toMatchObject({ ok: false, problems: [{ kind: 'out-of-range', name: 'liquid-density' }] });
    expect(messages(found)[0]).toMatch(/473\.15 K is outside 273\.15–403\.15 K/);
  });

  it('names each missing, unknown and unreadable argument with unit and range', () => {
    const found = lookUp('film-coefficient-chato-steam', { T_sat: 'hot', D_i: '0.01', d: '1' });
    if (found.ok) throw new Error('expected problems');
    expect(found.problems.map(({ kind }) => kind)).toEqual(['unreadable', 'missing', 'not-an-argument']);
    const said = messages(found);
    expect(said[0]).toMatch(/T_sat=hot is not a number.*in K, 273\.15 to 403\.15 K/);
    expect(said[1]).toMatch(/T_wall is missing.*in K/);
  });

  it('suggests the closest names for an unknown one', () => {
    const found = lookUp('saturation-presure', { T: '100C' });
    expect(messages(found)[0]).toContain('saturation-pressure');
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
