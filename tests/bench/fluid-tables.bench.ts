/**
 * Time that a thousand readings of the step loop's fluid functions take. Best times recorded on a shared two-core
 * machine: 0.03 ms for a table, 0.05 ms for the closed saturation equation, 3 ms for the formulation, 0.36 ms for eight
 * constituents boiling together with water from a near guess.
 */
import { bench, describe } from 'vitest';
import { constituents, curveOf } from '../../sim/fluids/constituents.ts';
import { coBoilingTemperatureQuick } from '../../sim/fluids/immiscible.ts';
import * as table from '../../sim/fluids/water-table.ts';
import { liquidViscosity } from '../../sim/fluids/water.ts';

const temperatures = Float64Array.from({ length: 1000 }, (_, k) => 280 + k * 0.1);
const oil = constituents.slice(0, 8).map(curveOf);
const x = Float64Array.from({ length: 8 }, () => 1 / 8);

/** Sum of the readings, so that none is optimised away. */
const readAll = (read: (T: number) => number): number => temperatures.reduce((sum, T) => sum + read(T), 0);

describe('a thousand readings', () => {
  bench('table: liquid viscosity', () => void readAll(table.tableLiquidViscosity));
  bench('table: vapour enthalpy', () => void readAll(table.tableVapourEnthalpy));
  bench('closed: saturation pressure', () => void readAll(table.tableSaturationPressure));
  bench('formulation: liquid viscosity', () => void readAll(liquidViscosity));
  bench('co-boiling of eight constituents, near guess', () => {
    let T = 369.8;
    for (let k = 0; k < 1000; k++) T = coBoilingTemperatureQuick(101_325 + k * 0.1, x, oil, T);
  });
});
