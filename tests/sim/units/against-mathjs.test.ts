/** Our own table of shown units against mathjs, an independent implementation. */
import { all, create } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { COLUMN_UNITS, GRID_UNITS } from '../../../sim/run/record.ts';
import { displayUnit, type UnitSystem } from '../../../sim/units/index.ts';
import { KINDS, type Kind } from '../../../sim/units/scales.ts';

const math = create({ ...all });
// Conventional mercury and water: columns of 13 595.1 and 1000 kg/m³ under standard gravity, as in NIST SP 811.
math.createUnit('inHg', { definition: '3386.389 Pa' });
math.createUnit('inH2O', { definition: '249.08891 Pa' });

/** Our labels in mathjs notation, written out by hand. */
const IN_MATHJS: Readonly<Record<string, string>> = {
  µm: 'um',
  '°': 'deg',
  'qt/h': 'qt/hour',
  'in Hg': 'inHg',
  'in H₂O': 'inH2O',
  'kg/m³': 'kg/m^3',
  'lb/ft³': 'lb/ft^3',
  'kW/m²': 'kW/m^2',
  'W/in²': 'W/in^2',
  'm² K/W': 'm^2 K/W',
  'ft² h °F/BTU': 'ft^2 h degR/BTU',
  'BTU/(h ft °F)': 'BTU/(h ft degR)',
  'BTU/(lb °F)': 'BTU/(lb degR)',
  'W/(m² K)': 'W/(m^2 K)',
  'BTU/(h ft² °F)': 'BTU/(h ft^2 degR)',
  'ft h °F/BTU': 'ft h degR/BTU',
  'µPa s': 'uPa s',
  'mm²/s': 'mm^2/s',
  'ft²/h': 'ft^2/h',
  'kg/(m² s)': 'kg/(m^2 s)',
  'g/(m² s)': 'g/(m^2 s)',
  'lb/(ft² h)': 'lb/(ft^2 h)',
  'm²': 'm^2',
  'cm²': 'cm^2',
  'ft²': 'ft^2',
  'in²': 'in^2',
  'm/s²': 'm/s^2',
  'ft/s²': 'ft/s^2',
  'in H₂O/ft': 'inH2O/ft',
  'psi/°F': 'psi/degR',
  'm³/kg': 'm^3/kg',
  'ft³/lb': 'ft^3/lb',
  'BTU/(h °F)': 'BTU/(h degR)',
  'BTU/°F': 'BTU/degR',
  '1/K': 'K^-1',
  '1/°F': 'degR^-1',
  '1/min': 'min^-1',
  '1/h': 'hour^-1',
  'per kWh': 'kWh^-1',
  'per kg': 'kg^-1',
  'per lb': 'lb^-1',
  'per m': 'm^-1',
  'per ft': 'ft^-1',
  'per m³': 'm^-3',
  'kg/m²': 'kg/m^2',
  'lb/ft²': 'lb/ft^2',
  '1/m²': 'm^-2',
  '1/ft²': 'ft^-2',
};
const SI_IN_MATHJS: Readonly<Record<string, string>> = {
  'mol/m³': 'mol/m^3',
  'kg/m²': 'kg/m^2',
  'm³': 'm^3',
  'kg/m³': 'kg/m^3',
  'W/m²': 'W/m^2',
  'm² K/W': 'm^2 K/W',
  'W/(m² K)': 'W/(m^2 K)',
  'm²/s': 'm^2/s',
  'kg/(m² s)': 'kg/(m^2 s)',
  'm³/s': 'm^3/s',
  'm²': 'm^2',
  'm/s²': 'm/s^2',
  'm³/kg': 'm^3/kg',
  '1/K': 'K^-1',
  '1/s': 's^-1',
  '1/J': 'J^-1',
  '1/kg': 'kg^-1',
  '1/m': 'm^-1',
  '1/m³': 'm^-3',
  '1/m²': 'm^-2',
};
const LITRES_FOR_KILOGRAMS = new Set(['water', 'coolantFlow', 'distillateFlow']);

/** SI value of one shown unit according to mathjs. */
function sizeByMathjs(label: string, kindName: string, si: string): number {
  if (label === '%') return 0.01;
  if (label === 'per 1000 gal') return 1 / math.unit(1000, 'gal').toNumber('m^3');
  const unit = IN_MATHJS[label] ?? label;
  if (kindName.startsWith('temperature')) return math.unit(1, unit === '°F' ? 'degR' : 'K').toNumber('K');
  // Water: a litre is a kilogram.
  if (LITRES_FOR_KILOGRAMS.has(kindName)) return math.unit(1, unit).toNumber(si === 'kg' ? 'L' : 'L/s');
  return math.unit(1, unit).toNumber(SI_IN_MATHJS[si] ?? si);
}

const shownScales = Object.entries<Kind>(KINDS).flatMap(([name, kind]) =>
  [...new Set([...kind.metric, ...kind.us])]
    .filter(({ label }) => label !== '')
    .map((scale) => ({ name, si: kind.si, scale, label: scale.label })),
);

describe('the size of every shown unit agrees with mathjs', () => {
  test.each(shownScales)('$name in $label', ({ name, si, scale }) => {
    // Two definitions are printed to seven digits only.
    const digits = scale.label === 'in Hg' ? 3e-7 : 1e-10;
    expect(Math.abs(scale.size / sizeByMathjs(scale.label, name, si) - 1)).toBeLessThan(digits);
  });
});

describe('temperatures agree with mathjs, zero included', () => {
  test.each([
    ['metric', 'degC'],
    ['us', 'degF'],
  ] as const)('%s', (system, unit) => {
    for (const kelvin of [233.15, 273.15, 288.7, 373.124])
      expect(displayUnit('K', system).fromSI(kelvin)).toBeCloseTo(math.unit(kelvin, 'K').toNumber(unit), 9);
  });
});

describe('every column and grid of a record has a unit in both systems', () => {
  test.each(Object.entries({ ...COLUMN_UNITS, ...GRID_UNITS }))('%s', (name, unit) => {
    for (const system of ['metric', 'us'] satisfies UnitSystem[]) {
      const shown = displayUnit(unit, system, name);
      expect(shown.label).not.toBe(unit === 'kg/s' || unit === 'K' || unit === 's' ? unit : '');
      expect(shown.toSI(shown.fromSI(1.25))).toBeCloseTo(1.25, 12);
    }
  });
});
