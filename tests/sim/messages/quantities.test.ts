/** Quantities in sentences, for both systems, on paper and read out. */
import { describe, expect, test } from 'vitest';
import { englishReader } from '../../../sim/messages/language.ts';
import { quantities, spokenQuantities } from '../../../sim/messages/quantities.ts';

const said = (text: string): string => text.replace(/[\u202f\u00a0]/gu, ' ');
const metric = quantities(englishReader('metric'));
const us = quantities(englishReader('us'));
const heard = spokenQuantities(englishReader('metric'));
const heardInUS = spokenQuantities(englishReader('us'));

describe('a quantity in a sentence', () => {
  test.each<[string, string, string]>([
    ['time', metric.time(4320), '1 h 12 min'],
    ['time', us.time(3900), '1 h 05 min'],
    ['temperature', metric.temperature(333.15), '60 °C'],
    ['temperature', us.temperature(333.15), '140 °F'],
    ['water', metric.water(1.2), '1.2 L'],
    ['water', us.water(1.2), '1.3 qt'],
    ['oil', metric.oil(0.0106, 883), '12 mL'],
    ['oil', us.oil(0.0106, 883), '12 mL'],
    ['oil of unknown density', metric.oil(0.0106, null), '11 g'],
    ['pressure', metric.pressure(5000), '5.0 kPa'],
    ['pressure', us.pressure(5000), '20 in H₂O'],
    ['pressure', us.pressure(50_000), '7.3 psi'],
    ['power', us.power(1834), '1.8 kW'],
    ['speed', metric.speed(32.4), '32 m/s'],
    ['speed', us.speed(32.4), '106 ft/s'],
    ['tube', metric.tubeLength(4.034), '4.03 m'],
    ['tube', us.tubeLength(4.034), '13 ft 3 in'],
    ['layer', metric.size(0.0213), '21 mm'],
    ['flux', metric.heatFlux(83_000), '83 kW/m²'],
    ['flux', us.heatFlux(83_000), '54 W/in²'],
    ['share', metric.share(0.9), '90 %'],
    ['difference', us.temperatureDifference(10, { signed: true, decimals: 0 }), '+18 °F'],
    ['number alone', metric.size(0.0213, { bare: true }), '21'],
    ['field', us.stored(0.05, 'kg/s', 'cooling.flow_kg_s'), '0.79 gal/min'],
    ['range', metric.range(0.05, 1.5, 'm', 'pot.diameter_m'), '50–1500 mm'],
    ['missing', metric.time(null), '–'],
    ['not a number', metric.water(Number.NaN), '–'],
  ])('%s', (_, text, expected) => {
    expect(said(text)).toBe(expected);
  });

  test('two numbers stand in one unit, to the digit at which they differ', () => {
    expect(metric.apart('mass', 3, 2.998).map(said)).toEqual(['3.000 kg', '2.998 kg']);
    expect(metric.apart('water', 0.9, 1.2).map(said)).toEqual(['0.90 L', '1.2 L']);
    expect(us.apart('size', 0.3, 0.3).map(said)).toEqual(['11.81 in', '11.81 in']);
  });
});

describe('a quantity read out', () => {
  test.each<[string, string]>([
    [heard.time(4320), '1 hour 12 minutes'],
    [heard.time(3660), '1 hour 1 minute'],
    [heard.water(7.9), '7.9 litres'],
    [heardInUS.water(7.9), '2.1 gallons'],
    [heard.temperature(372.15), '99 degrees Celsius'],
    [heard.share(0.9), '90 per cent'],
    [heardInUS.pressure(5000), '20 inches of water'],
    [heard.range(0.05, 1.5, 'm', 'pot.diameter_m'), '50–1500 millimetres'],
  ])('%s', (text, expected) => {
    expect(text).toBe(expected);
  });
});
