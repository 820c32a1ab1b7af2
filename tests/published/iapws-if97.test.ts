/**
 * IAPWS-IF97 regions 1, 2 and 4 against the verification values printed in IAPWS R7-97(2012), Tables 5, 7, 15, 35
 * and 36, in the units of the tables. Rows marked `memory` were recalled from the same tables and not read again.
 */
import { describe, expect, it } from 'vitest';
import * as region1 from '../../sim/fluids/if97-region1.ts';
import * as region2 from '../../sim/fluids/if97-region2.ts';
import { region4SaturationPressure, region4SaturationTemperature } from '../../sim/fluids/if97-region4.ts';

type Quantity = 'volume' | 'enthalpy' | 'entropy' | 'heat capacity';

/** Check, quantity, T in K, p in MPa, expected in m³/kg, kJ/kg or kJ/(kg K), relative tolerance. */
type Row = readonly [id: string, quantity: Quantity, T: number, p: number, expected: number, rel: number];

const REGION_1: readonly Row[] = [
  ['water-001', 'volume', 300, 3, 0.00100215168, 1e-8],
  ['water-002', 'enthalpy', 300, 3, 115.331273, 1e-8],
  ['water-003', 'entropy', 300, 3, 0.392294792, 1e-8],
  ['water-004', 'heat capacity', 300, 3, 4.17301218, 1e-8],
  ['water-005', 'volume', 500, 3, 0.001202418, 1e-8],
  ['water-006', 'enthalpy', 500, 3, 975.542239, 1e-8],
  ['water-007', 'heat capacity', 500, 3, 4.65580682, 1e-8],
  ['memory', 'entropy', 500, 3, 2.58041912, 1e-8],
  ['memory', 'volume', 300, 80, 0.000971180894, 1e-8],
  ['memory', 'enthalpy', 300, 80, 184.142828, 1e-8],
  ['memory', 'entropy', 300, 80, 0.368563852, 1e-8],
  ['memory', 'heat capacity', 300, 80, 4.01008987, 1e-8],
];

const REGION_2: readonly Row[] = [
  ['water-012', 'volume', 300, 0.0035, 39.4913866, 1e-8],
  ['water-013', 'enthalpy', 300, 0.0035, 2549.91145, 1e-8],
  ['water-014', 'entropy', 300, 0.0035, 8.52238967, 1e-8],
  ['water-015', 'heat capacity', 300, 0.0035, 1.91300162, 1e-8],
  ['water-016', 'volume', 700, 30, 0.00542946619, 1e-8],
  ['water-017', 'enthalpy', 700, 30, 2631.49474, 1e-8],
  ['memory', 'volume', 700, 0.0035, 92.3015898, 1e-8],
  ['memory', 'enthalpy', 700, 0.0035, 3335.68375, 1e-8],
  ['memory', 'entropy', 700, 0.0035, 10.1749996, 1e-8],
  ['memory', 'heat capacity', 700, 0.0035, 2.08141274, 1e-8],
  ['memory', 'entropy', 700, 30, 5.17540298, 1e-8],
  ['memory', 'heat capacity', 700, 30, 10.3505092, 1e-8],
];

/** Check, T in K, expected p in MPa. */
const SATURATION_PRESSURE = [
  ['water-021', 300, 0.00353658941],
  ['water-022', 500, 2.63889776],
  ['memory', 600, 12.3443146],
] as const;

/** Check, p in MPa, expected T in K. */
const SATURATION_TEMPERATURE = [
  ['water-024', 0.1, 372.755919],
  ['water-025', 1, 453.035632],
  ['memory', 10, 584.149488],
] as const;

const within = (value: number, expected: number, rel: number): void =>
  expect(Math.abs(value / expected - 1)).toBeLessThanOrEqual(rel);

const PER_TABLE_UNIT: Readonly<Record<Quantity, number>> = {
  volume: 1,
  enthalpy: 1e3,
  entropy: 1e3,
  'heat capacity': 1e3,
};

describe('IAPWS R7-97(2012) verification values', () => {
  it.each(REGION_1)('%s: region 1 gives the printed %s at %d K and %d MPa', (_, quantity, T, p, expected, rel) => {
    const property = {
      volume: region1.region1Volume,
      enthalpy: region1.region1Enthalpy,
      entropy: region1.region1Entropy,
      'heat capacity': region1.region1HeatCapacity,
    }[quantity];
    within(property(T, p * 1e6) / PER_TABLE_UNIT[quantity], expected, rel);
  });

  it.each(REGION_2)('%s: region 2 gives the printed %s at %d K and %d MPa', (_, quantity, T, p, expected, rel) => {
    const property = {
      volume: region2.region2Volume,
      enthalpy: region2.region2Enthalpy,
      entropy: region2.region2Entropy,
      'heat capacity': region2.region2HeatCapacity,
    }[quantity];
    within(property(T, p * 1e6) / PER_TABLE_UNIT[quantity], expected, rel);
  });

  it.each(SATURATION_PRESSURE)('%s: water at %d K boils at %d MPa', (_, T, expected) => {
    within(region4SaturationPressure(T) / 1e6, expected, 1e-8);
  });

  it.each(SATURATION_TEMPERATURE)('%s: water at %d MPa boils at %d K', (_, p, expected) => {
    within(region4SaturationTemperature(p * 1e6), expected, 1e-8);
  });

  it('puts the boundary to region 3 at 16.529 164 3 MPa at 623.15 K (section 4, from memory)', () => {
    within(region2.boundary23Pressure(623.15) / 1e6, 16.5291643, 1e-8);
  });
});
