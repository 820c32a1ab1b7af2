/** Units of the page and typed units against the factors printed in NIST Special Publication 811, appendix B.8. */
import { describe } from 'vitest';
import { fetchUnits, readQuantity } from '../../sim/units/read-quantity.ts';
import { KINDS, type KindName, type Scale } from '../../sim/units/scales.ts';
import { checkPrinted, work } from './printed.ts';

const nist = work('NIST Special Publication 811 (2008)')('appendix B.8');

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
  checkPrinted([
    ['foot, m', () => sizeOf('length', 'ft'), '3.048e-1', nist],
    ['inch, m', () => sizeOf('length', 'in'), '2.54e-2', nist],
    ['pound, kg', () => sizeOf('mass', 'lb'), '4.535924e-1', nist],
    ['ounce, kg', () => sizeOf('mass', 'oz'), '2.834952e-2', nist],
    ['gallon (US), m³', () => sizeOf('volume', 'gal'), '3.785412e-3', nist],
    ['quart (US liquid), m³', () => sizeOf('volume', 'qt'), '9.463529e-4', nist],
    ['pound per cubic foot, kg/m³', () => sizeOf('density', 'lb/ft³'), '1.601846e1', nist],
    ['pound per square inch, Pa', () => sizeOf('pressure', 'psi'), '6.894757e3', nist],
    ['inch of water, Pa', () => sizeOf('pressure', 'in H₂O'), '2.490889e2', nist],
    ['inch of mercury, Pa', () => sizeOf('barometer', 'in Hg'), '3.386389e3', nist],
    ['Btu per hour foot degree Fahrenheit, W/mK', () => sizeOf('conductivity', 'BTU/(h ft °F)'), '1.730735', nist],
    ['Btu per pound degree Fahrenheit, J/kgK', () => sizeOf('heatCapacity', 'BTU/(lb °F)'), '4.1868e3', nist],
    ['kilowatt-hour, J', () => sizeOf('energy', 'kWh'), '3.6e6', nist],
    ['32 °F, °C', () => celsius(32), '0', nist],
    ['212 °F, °C', () => celsius(212), '100', nist],
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
  checkPrinted([
    ['yard, m', () => typed('1 yd', 'm'), '9.144e-1', nist],
    ['mil, m', () => typed('1 mil', 'm'), '2.54e-5', nist],
    ['fluid ounce (US), m³', () => typed('1 fl oz', 'm³'), '2.957353e-5', nist],
    ['cup (US), m³', () => typed('1 cup', 'm³'), '2.365882e-4', nist],
    ['pint (US liquid), m³', () => typed('1 pt', 'm³'), '4.731765e-4', nist],
    ['gallon (UK), m³', () => typed('1 imp gal', 'm³'), '4.54609e-3', nist],
    ['British thermal unit, J', () => typed('1 BTU', 'J'), '1.055056e3', nist],
    ['Btu per hour, W', () => typed('1 BTU/h', 'W'), '2.930711e-1', nist],
    ['horsepower (550 ft lbf/s), W', () => typed('1 hp', 'W'), '7.456999e2', nist],
  ]);
});

describe('typed products and sums', () => {
  checkPrinted([
    ['twelve inches and a foot less a foot, m', () => typed('12 * 1 in + 1 ft - 1 ft', 'm'), '3.048e-1', nist],
    ['half a pound and eight ounces, kg', () => typed('1/2 lb + 8 oz', 'kg'), '4.535924e-1', nist],
    ['square foot, m²', () => typed('1 ft * 1 ft', 'm²'), '9.290304e-2', nist],
    ['cubic inch, m³', () => typed('1 in * 1 in * 1 in', 'm³'), '1.638706e-5', nist],
    ['cubic foot, m³', () => typed('(6 in + 6 in) * 12 in * 1 ft', 'm³'), '2.831685e-2', nist],
    ['gallon per minute, m³/s', () => typed('60 gal / 1 h', 'm³/s'), '6.309020e-5', nist],
    ['pound per foot, kg/m', () => typed('16 oz / 12 in', 'kg/m'), '1.488164', nist],
    ['pound per cubic foot, kg/m³', () => typed('1 lb / (1 ft * 1 ft * 1 ft)', 'kg/m³'), '1.601846e1', nist],
    ['kilowatt-hour, J', () => typed('500 W * 2 h', 'J'), '3.6e6', nist],
  ]);
});
