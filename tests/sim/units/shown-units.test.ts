import { describe, expect, test } from 'vitest';
import {
  displayUnit,
  formatDuration,
  formatQuantity,
  formatRange,
  formatTemperatureDifference,
  type UnitSystem,
} from '../../../sim/units/index.ts';

/** Thin space (U+2009) between value and unit, as a reader of these tests sees it: a plain space. */
const said = (text: string): string => text.replace(/[\u202f\u00a0]/gu, ' ');

describe('a quantity is said as people say it', () => {
  test.each<[number, string, UnitSystem, string | undefined, string]>([
    [1834, 'W', 'metric', undefined, '1.8 kW'],
    [750, 'W', 'metric', undefined, '750 W'],
    [34.2, 'kg', 'metric', 'coolantUsed_kg', '34 L'],
    [34.2, 'kg', 'us', 'coolantUsed_kg', '9.0 gal'],
    [0.25, 'kg', 'metric', 'hydrosol_kg', '250 mL'],
    [2.5, 'kg', 'us', 'hydrosol_kg', '2.6 qt'],
    [0.0004, 'kg/s', 'us', 'heat.targetRate_kg_s', '1.5 qt/h'],
    [12e-6, 'm³', 'us', 'oilVolume', '12 mL'],
    [372.25, 'K', 'metric', undefined, '99.1 °C'],
    [372.25, 'K', 'us', undefined, '210.4 °F'],
    [268.15, 'K', 'metric', undefined, '−5.0 °C'],
    [44, '°C', 'us', undefined, '111.2 °F'],
    [6720, 's', 'metric', undefined, '1 h 52 min'],
    [0.025, 'kg/s', 'metric', 'cooling.flow_kg_s', '1.5 L/min'],
    [0.0004, 'kg/s', 'metric', 'heat.targetRate_kg_s', '24 mL/min'],
    [0.0005, 'kg/s', 'metric', 'steamRate_kg_s', '1.8 kg/h'],
    [0.32, 'm', 'metric', 'pot.diameter_m', '320 mm'],
    [0.32, 'm', 'us', 'pot.diameter_m', '12.60 in'],
    [1.83, 'm', 'metric', undefined, '1.8 m'],
    [0.081, 'm', 'metric', undefined, '81 mm'],
    [0.000049, 'm', 'metric', undefined, '49 µm'],
    [0.0117, 'kg', 'metric', 'oilCollected_kg', '12 g'],
    [0.9997, 'kg', 'metric', undefined, '1.0 kg'],
    [12, 'mL', 'metric', undefined, '12 mL'],
    [0.3 / 3.6e6, '1/J', 'metric', undefined, '0.300 per kWh'],
    [9, '1/m', 'us', undefined, '2.74 per ft'],
    [0.0008, '1/s', 'metric', undefined, '0.048 1/min'],
    [0.45, '1', 'metric', 'captureShare', '45 %'],
    [1.3, '1', 'metric', 'separator.turbulenceFactor', '1.3'],
    [0.018, 'kg/kg', 'metric', 'charge.oilContent', '1.8 %'],
    [7900, 'Pa', 'metric', undefined, '7.9 kPa'],
    [98_000, 'Pa', 'metric', 'site.barometer_Pa', '980 hPa'],
    [0.1, 'rad', 'metric', undefined, '5.7°'],
    [0.375 * 0.0254, 'm', 'metric', 'condenser.outsideDiameter_m', '9.53 mm'],
    [1.125 * 0.0254, 'm', 'metric', 'condenser.outsideDiameter_m', '28.58 mm'],
    [0, 'kg', 'metric', 'oilCollected_kg', '0 g'],
  ])('%d %s (%s, %s) is %s', (value, unit, system, hint, expected) => {
    expect(said(formatQuantity(value, unit, system, hint === undefined ? {} : { hint }))).toBe(expected);
  });

  test('value and unit are joined by a thin space and a negative number has a true minus', () => {
    expect(formatQuantity(263.15, 'K', 'metric')).toBe('\u221210.0\u202f°C');
  });

  test('a mass of oil is a volume when its density is given', () => {
    expect(said(formatQuantity(0.0106, 'kg', 'metric', { hint: 'oilCollected_kg', density_kg_m3: 883 }))).toBe('12 mL');
  });

  test('a rise of temperature is scaled but not shifted', () => {
    expect(said(formatTemperatureDifference(10, 'metric'))).toBe('10.0 °C');
    expect(said(formatTemperatureDifference(10, 'us', { signed: true }))).toBe('+18.0 °F');
  });

  test('a missing, infinite or broken number is a dash, never “NaN”', () => {
    for (const value of [null, undefined, Number.NaN, Infinity])
      expect(formatQuantity(value, 'kg', 'metric')).toBe('–');
  });

  test('a unit that is not known is shown as it stands', () => {
    expect(said(formatQuantity(2.5, 'furlong', 'metric'))).toBe('2.50 furlong');
  });

  test('a hint of another unit is ignored rather than believed', () => {
    expect(said(formatQuantity(300, 'K', 'metric', { hint: 'pot.diameter_m' }))).toBe('26.9 °C');
  });
});

describe('a span of time', () => {
  test.each([
    [0, '0 s'],
    [0.5, '0.50 s'],
    [45, '45 s'],
    [59.8, '1 min'],
    [90, '1 min 30 s'],
    [599.7, '10 min'],
    [3120, '52 min'],
    [3599, '1 h'],
    [6720, '1 h 52 min'],
    [3900, '1 h 05 min'],
    [7200, '2 h'],
    [259_200, '72 h'],
    [-90, '−1 min 30 s'],
  ])('%d s is %s', (seconds, expected) => {
    expect(said(formatDuration(seconds))).toBe(expected);
  });

  test('that never comes is a dash', () => {
    expect(formatDuration(null)).toBe('–');
  });
});

describe('an allowed range', () => {
  test('is printed in the shown unit', () => {
    expect(said(formatRange(0.05, 1.5, 'm', 'metric', 'pot.diameter_m'))).toBe('50–1500 mm');
    expect(said(formatRange(253.15, 318.15, 'K', 'us'))).toBe('−4 to 113 °F');
  });

  test('never prints an end that is not itself allowed', () => {
    // 0.05 m is 1.96850… in and 1.5 m is 59.0551… in.
    expect(said(formatRange(0.05, 1.5, 'm', 'us', 'pot.diameter_m'))).toBe('1.969–59.05 in');
  });
});

describe('a unit for an axis', () => {
  test('follows the size of the numbers when told it', () => {
    expect(displayUnit('W', 'metric').label).toBe('kW');
    expect(displayUnit('W', 'metric', undefined, 400).label).toBe('W');
    expect(displayUnit('kg', 'metric', 'hydrosol_kg', 0.3).label).toBe('mL');
  });

  test('turns stored numbers into shown ones and back', () => {
    const flow = displayUnit('kg/s', 'us', 'cooling.flow_kg_s');
    expect(flow.label).toBe('gal/min');
    expect(flow.fromSI(0.0630901964)).toBeCloseTo(1, 9);
    expect(flow.toSI(1)).toBeCloseTo(0.0630901964, 9);
  });
});
