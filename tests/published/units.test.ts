/** Units of the page against the factors printed in NIST Special Publication 811, appendix B.8. */
import { describe } from 'vitest';
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
