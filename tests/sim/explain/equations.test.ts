import katex from 'katex';
import { describe, expect, it } from 'vitest';
import type { Argument, Correlation } from '../../../sim/correlation.ts';
import { fluidCorrelations } from '../../../sim/fluids/index.ts';
import { transferCorrelations } from '../../../sim/transfer/index.ts';
import { entryStep } from '../../../sim/explain/sheet.ts';
import { numberTex, substituteTex, symbolTex, unitTex } from '../../../sim/explain/tex.ts';

const parses = (tex: string): string => katex.renderToString(tex, { throwOnError: true, strict: 'error' });

describe('numbers as TeX', () => {
  it.each([
    [0, '0'],
    [0.5, '0.5'],
    [12345.678, '12\\,346'],
    [-1234.5, '-1\\,234.5'],
    [123.456, '123.46'],
    [0.00012345678, '1.2346\\times10^{-4}'],
    [-3.2e-9, '-3.2\\times10^{-9}'],
    [1e7, '1\\times10^{7}'],
    [Infinity, '\\infty'],
    [NaN, '\\text{–}'],
  ])('%s is %s', (value, tex) => {
    expect(numberTex(value)).toBe(tex);
    expect(parses(tex)).toContain('katex');
  });
});

describe('units as TeX', () => {
  it.each(['W/(m² K)', 'kg/m³', 'm² K/W', '°C', 'Pa s', 'kg/(m² s)', '1/m³', 'mol/mol', 'K/s', '%', 'μm'])(
    '%s parses',
    (unit) => expect(parses(`1\\,${unitTex(unit)}`)).toContain('katex'),
  );
  it('leaves a pure number without', () => expect(unitTex('1')).toBe(''));
});

describe('putting numbers in', () => {
  it('replaces symbols right of the equals sign and leaves names that merely contain them', () => {
    expect(
      substituteTex('h = \\frac{k}{D}\\,k_l\\,Nu', [
        { tex: 'k', value: 2 },
        { tex: 'D', value: 3 },
      ]),
    ).toBe('h = \\frac{(2)}{(3)}\\,k_l\\,Nu');
    expect(substituteTex('J_G = G', [{ tex: 'G', value: 4 }])).toBe('J_G = (4)');
    expect(substituteTex('q = \\rho_l\\,\\rho', [{ tex: '\\rho', value: 5 }])).toBe('q = \\rho_l\\,(5)');
    expect(substituteTex("h = h'_{fg}+h_{fg}", [{ tex: 'h_{fg}', value: 6 }])).toBe("h = h'_{fg}+(6)");
    expect(substituteTex('p = m\\,\\mathrm{m}', [{ tex: 'm', value: 7 }])).toBe('p = (7)\\,\\mathrm{m}');
  });

  it('puts behind the equation what it does not write out', () => {
    expect(
      substituteTex('Nu = a', [
        { tex: 'a', value: 1 },
        { tex: 'Re', value: 2 },
      ]),
    ).toBe('Nu = (1)\\quad(Re=2)');
  });
});

/** A value at a share of an argument's range; kelvins and pure numbers stand in where the source gives none. */
const valueFor = ({ unit, range }: Argument, share: number): number => {
  if (range === undefined) return unit === 'K' ? 330 + 20 * share : 1.5;
  return range[1] > 1e30 ? range[0] + 1.5 : range[0] + share * (range[1] - range[0]);
};

/** Values at which an entry can be evaluated: the properties of water need temperature and pressure of one phase. */
function sample(entry: Correlation): Record<string, number> {
  for (const share of [0.5, 0.001, 0.02, 0.9]) {
    const values = Object.fromEntries(
      Object.entries(entry.arguments).map(([key, argument]) => [key, valueFor(argument, share)]),
    );
    try {
      entry.evaluate(values);
      return values;
    } catch (problem) {
      expect(problem).toBeInstanceOf(RangeError);
    }
  }
  throw new Error(`${entry.name}: no sample found`);
}

describe('every relation of the desk reference', () => {
  it.each([...transferCorrelations, ...fluidCorrelations].map((entry) => [entry.name, entry] as const))(
    '%s can be shown with numbers',
    (name, entry) => {
      expect(parses(entry.tex)).toContain('katex');
      const step = entryStep(
        name,
        Object.fromEntries(Object.entries(sample(entry)).map(([key, value]) => [key, [value, 'made up'] as const])),
      );
      expect(parses(step.tex)).toContain('katex');
      expect(parses(step.substituted)).toContain('katex');
      for (const { tex, value } of step.symbols) {
        expect(parses(tex)).toContain('katex');
        expect(step.substituted, tex).toContain(numberTex(value));
      }
      expect(parses(symbolTex(entry.result.symbol))).toContain('katex');
      expect(step.valid.says.length).toBeGreaterThanOrEqual(
        Object.values(entry.arguments).filter(({ range }) => range !== undefined).length,
      );
    },
  );

  it('tells where it is used outside its range', () => {
    const inside = entryStep('nusselt-horizontal-cylinder', { Ra: [1e6, 'here'], Pr: [5, 'here'] });
    expect(inside.valid.inside).toBe(true);
    const outside = entryStep('nusselt-horizontal-cylinder', { Ra: [1e13, 'here'], Pr: [5, 'here'] });
    expect(outside.valid.inside).toBe(false);
    expect(outside.valid.says[0]).toMatch(
      /10000000000000 is outside 0 to 1000000000000; the relation is evaluated; 0\.36 without buoyancy$/,
    );
  });

  it('is asked for by a name that exists', () =>
    expect(() => entryStep('no-such-thing', {})).toThrow('no relation is called “no-such-thing”'));
});
