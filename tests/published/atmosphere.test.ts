/** The standard atmosphere, vapour over ice and dry air against printed tables. */
import { describe } from 'vitest';
import * as air from '../../sim/fluids/air.ts';
import * as atmosphere from '../../sim/fluids/atmosphere.ts';
import { checkPrinted, figures, work } from './printed.ts';
import { incropera } from './works.ts';

const standard = work('U.S. Standard Atmosphere, 1976')('Table I, geometric altitude');

/** Geometric altitude in m, K, hPa, kg/m³. */
const TABLE_I = [
  [0, '288.150', '1013.25', '1.2250'],
  [500, '284.900', '954.61', '1.1673'],
  [1000, '281.651', '898.76', '1.1117'],
  [2000, '275.154', '795.01', '1.0066'],
  [3000, '268.659', '701.21', '0.90925'],
  [4000, '262.166', '616.60', '0.81935'],
] as const;

/** Dry air at a film temperature, with the example that prints it: K, W/mK, 10⁻⁶ m²/s. */
const AIR = [
  [303, '0.0265', '16.2', 'Example 9.3, p. 577'],
  [367, '0.0313', '22.8', 'Example 9.4, p. 580'],
  [400, '0.0338', '26.4', 'Example 9.2, p. 572'],
] as const;

const ATMOSPHERE = 101_325;
const viscosity = (T: number): number => (1e6 * air.airViscosity(T)) / air.airDensity(T, ATMOSPHERE);

describe('the standard atmosphere', () => {
  checkPrinted([
    ...TABLE_I.flatMap(
      ([h, T, p, rho]) =>
        [
          [`temperature at ${h} m, K`, () => atmosphere.standardTemperature(h), T, standard],
          [`pressure at ${h} m, hPa`, () => atmosphere.standardPressure(h) / 100, p, standard],
          [`density at ${h} m, kg/m³`, () => atmosphere.standardDensity(h), rho, standard],
        ] as const,
    ),
    [
      'vapour over ice at 230 K, MPa',
      () => atmosphere.sublimationPressure(230) / 1e6,
      '8.94735e-6',
      work('IAPWS R14-08(2011)')('Table 3'),
    ],
  ]);
});

describe('dry air at one atmosphere', () => {
  checkPrinted(
    AIR.flatMap(([T, k, nu, example]) => {
      const source = incropera(example);
      return [
        [`conductivity at ${T} K, W/mK`, () => air.airConductivity(T), k, source, figures(2, k)],
        [`kinematic viscosity at ${T} K, 10⁻⁶ m²/s`, () => viscosity(T), nu, source, figures(2, nu)],
      ] as const;
    }),
  );
});
