/** IAPWS-IF97 regions 1, 2 and 4 against the verification values that the release prints, in the units of its tables. */
import { describe } from 'vitest';
import * as region1 from '../../sim/fluids/if97-region1.ts';
import * as region2 from '../../sim/fluids/if97-region2.ts';
import { region4SaturationPressure, region4SaturationTemperature } from '../../sim/fluids/if97-region4.ts';
import { checkPrinted, work } from './printed.ts';

const r7 = work('IAPWS R7-97(2012)');

/** T in K, p in MPa, then volume in m³/kg, enthalpy in kJ/kg, entropy and heat capacity in kJ/kgK. */
type State = readonly [T: number, p: number, volume: string, enthalpy: string, entropy: string, heatCapacity: string];

const TABLE_5: readonly State[] = [
  [300, 3, '0.100215168e-2', '0.115331273e3', '0.392294792', '0.417301218e1'],
  [300, 80, '0.971180894e-3', '0.184142828e3', '0.368563852', '0.401008987e1'],
  [500, 3, '0.120241800e-2', '0.975542239e3', '0.258041912e1', '0.465580682e1'],
];
const TABLE_15: readonly State[] = [
  [300, 0.0035, '0.394913866e2', '0.254991145e4', '0.852238967e1', '0.191300162e1'],
  [700, 0.0035, '0.923015898e2', '0.333568375e4', '0.101749996e2', '0.208141274e1'],
  [700, 30, '0.542946619e-2', '0.263149474e4', '0.517540298e1', '0.103505092e2'],
];

type Property = (T: number, p: number) => number;
const statesOf = (
  rows: readonly State[],
  table: string,
  volume: Property,
  enthalpy: Property,
  entropy: Property,
  heatCapacity: Property,
): void =>
  checkPrinted(
    rows.flatMap(([T, p, ...printed]) =>
      (
        [
          ['volume', (): number => volume(T, p * 1e6)],
          ['enthalpy', (): number => enthalpy(T, p * 1e6) / 1e3],
          ['entropy', (): number => entropy(T, p * 1e6) / 1e3],
          ['heat capacity', (): number => heatCapacity(T, p * 1e6) / 1e3],
        ] as const
      ).map(
        ([name, computed], index) =>
          [`${name} at ${T} K and ${p} MPa`, computed, printed[index] as string, r7(table)] as const,
      ),
    ),
  );

describe('IAPWS-IF97', () => {
  statesOf(
    TABLE_5,
    'Table 5, region 1',
    region1.region1Volume,
    region1.region1Enthalpy,
    region1.region1Entropy,
    region1.region1HeatCapacity,
  );
  statesOf(
    TABLE_15,
    'Table 15, region 2',
    region2.region2Volume,
    region2.region2Enthalpy,
    region2.region2Entropy,
    region2.region2HeatCapacity,
  );
  checkPrinted([
    ['saturation at 300 K, MPa', () => region4SaturationPressure(300) / 1e6, '0.353658941e-2', r7('Table 35')],
    ['saturation at 500 K, MPa', () => region4SaturationPressure(500) / 1e6, '0.263889776e1', r7('Table 35')],
    ['saturation at 600 K, MPa', () => region4SaturationPressure(600) / 1e6, '0.123443146e2', r7('Table 35')],
    ['boiling at 0.1 MPa, K', () => region4SaturationTemperature(0.1e6), '0.372755919e3', r7('Table 36')],
    ['boiling at 1 MPa, K', () => region4SaturationTemperature(1e6), '0.453035632e3', r7('Table 36')],
    ['boiling at 10 MPa, K', () => region4SaturationTemperature(10e6), '0.584149488e3', r7('Table 36')],
    [
      'boundary of regions 2 and 3 at 623.15 K, MPa',
      () => region2.boundary23Pressure(623.15) / 1e6,
      '0.165291643e2',
      r7('section 4'),
    ],
  ]);
});
