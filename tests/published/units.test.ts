/** Units of the page and typed units against the factors printed in NIST Special Publication 811, appendix B.8. */
import { describe, it } from 'vitest';
import { fetchUnits, readQuantity } from '../../sim/units/read-quantity.ts';
import { KINDS, type KindName, type Scale } from '../../sim/units/scales.ts';
import { checkPrinted, expectPrinted, work, type Publication } from './printed.ts';

/** Every figure was compared with the text of the appendix as it is published on the web. */
const nist = work('NIST Special Publication 811 (2008)')('appendix B.8');

// What the units are by definition: every printed figure must be the rounding of it, so that one copied wrongly is found out. The Btu is that of the International Table; mercury and water are the conventional ones.
const FOOT = 0.3048;
const INCH = FOOT / 12;
const POUND = 0.45359237;
const GALLON = 231 * INCH ** 3;
const GRAVITY = 9.80665;
const BTU = 1055.05585262;

type Row = readonly [what: string, computed: () => number, printed: string, source: Publication, exact: number];

function checkUnits(rows: readonly Row[]): void {
  checkPrinted(rows.map(([what, computed, printed, source]) => [what, computed, printed, source]));
  it.each(rows.map(([what, , printed, , exact]) => [what, printed, exact] as const))(
    '%s: %s is its definition, rounded',
    (_, printed, exact) => expectPrinted(exact, printed),
  );
}

/** SI value of one unit with that label in a kind. */
function sizeOf(kind: KindName, label: string): number {
  const scales: readonly Scale[] = [...KINDS[kind].metric, ...KINDS[kind].us];
  const found = scales.find((scale) => scale.label === label);
  if (found === undefined) throw new Error(`no unit ${label}`);
  return found.size;
}
const fahrenheit = KINDS.temperature.us[0];
/** °C of a temperature in °F. */
const celsius = (t: number): number => fahrenheit.zero + t * fahrenheit.size - 273.15;

describe('the units of the page', () => {
  checkUnits([
    ['foot, m', () => sizeOf('length', 'ft'), '3.048e-1', nist, FOOT],
    ['inch, m', () => sizeOf('length', 'in'), '2.54e-2', nist, INCH],
    ['pound, kg', () => sizeOf('mass', 'lb'), '4.535924e-1', nist, POUND],
    ['ounce, kg', () => sizeOf('mass', 'oz'), '2.834952e-2', nist, POUND / 16],
    ['gallon (US), m³', () => sizeOf('volume', 'gal'), '3.785412e-3', nist, GALLON],
    ['quart (US liquid), m³', () => sizeOf('volume', 'qt'), '9.463529e-4', nist, GALLON / 4],
    ['pound per cubic foot, kg/m³', () => sizeOf('density', 'lb/ft³'), '1.601846e1', nist, POUND / FOOT ** 3],
    ['pound per square inch, Pa', () => sizeOf('pressure', 'psi'), '6.894757e3', nist, (POUND * GRAVITY) / INCH ** 2],
    ['inch of water, Pa', () => sizeOf('pressure', 'in H₂O'), '2.490889e2', nist, 1000 * GRAVITY * INCH],
    ['inch of mercury, Pa', () => sizeOf('barometer', 'in Hg'), '3.386389e3', nist, 13_595.1 * GRAVITY * INCH],
    [
      'Btu per hour foot degree Fahrenheit, W/mK',
      () => sizeOf('conductivity', 'BTU/(h ft °F)'),
      '1.730735',
      nist,
      BTU / (3600 * FOOT * (5 / 9)),
    ],
    [
      'Btu per pound degree Fahrenheit, J/kgK',
      () => sizeOf('heatCapacity', 'BTU/(lb °F)'),
      '4.1868e3',
      nist,
      BTU / (POUND * (5 / 9)),
    ],
    ['kilowatt-hour, J', () => sizeOf('energy', 'kWh'), '3.6e6', nist, 3.6e6],
    ['32 °F, °C', () => celsius(32), '0', nist, 0],
    ['212 °F, °C', () => celsius(212), '100', nist, 100],
  ]);
});

await fetchUnits();

/** SI value of what is typed, read as a quantity of that SI unit. */
function typed(text: string, unit: string): number {
  const read = readQuantity(text, { title: 'Quantity', unit }, 'metric');
  if (read?.ok !== true || read.value === null) throw new Error(`“${text}” was not read`);
  return read.value;
}

describe('typed units', () => {
  checkUnits([
    ['yard, m', () => typed('1 yd', 'm'), '9.144e-1', nist, 3 * FOOT],
    ['mil, m', () => typed('1 mil', 'm'), '2.54e-5', nist, INCH / 1000],
    ['fluid ounce (US), m³', () => typed('1 fl oz', 'm³'), '2.957353e-5', nist, GALLON / 128],
    ['cup (US), m³', () => typed('1 cup', 'm³'), '2.365882e-4', nist, GALLON / 16],
    ['pint (US liquid), m³', () => typed('1 pt', 'm³'), '4.731765e-4', nist, GALLON / 8],
    ['gallon (UK), m³', () => typed('1 imp gal', 'm³'), '4.54609e-3', nist, 4.54609e-3],
    ['British thermal unit, J', () => typed('1 BTU', 'J'), '1.055056e3', nist, BTU],
    ['Btu per hour, W', () => typed('1 BTU/h', 'W'), '2.930711e-1', nist, BTU / 3600],
    ['horsepower (550 ft lbf/s), W', () => typed('1 hp', 'W'), '7.456999e2', nist, 550 * FOOT * POUND * GRAVITY],
  ]);
});

describe('typed products and sums', () => {
  checkUnits([
    ['twelve inches and a foot less a foot, m', () => typed('12 * 1 in + 1 ft - 1 ft', 'm'), '3.048e-1', nist, FOOT],
    ['half a pound and eight ounces, kg', () => typed('1/2 lb + 8 oz', 'kg'), '4.535924e-1', nist, POUND],
    ['square foot, m²', () => typed('1 ft * 1 ft', 'm²'), '9.290304e-2', nist, FOOT ** 2],
    ['cubic inch, m³', () => typed('1 in * 1 in * 1 in', 'm³'), '1.638706e-5', nist, INCH ** 3],
    ['cubic foot, m³', () => typed('(6 in + 6 in) * 12 in * 1 ft', 'm³'), '2.831685e-2', nist, FOOT ** 3],
    ['gallon per minute, m³/s', () => typed('60 gal / 1 h', 'm³/s'), '6.309020e-5', nist, GALLON / 60],
    [
      'pound per cubic foot, kg/m³',
      () => typed('1 lb / (1 ft * 1 ft * 1 ft)', 'kg/m³'),
      '1.601846e1',
      nist,
      POUND / FOOT ** 3,
    ],
    ['kilowatt-hour, J', () => typed('500 W * 2 h', 'J'), '3.6e6', nist, 3.6e6],
  ]);
});
