/**
 * Water and steam on the saturation line, as the model takes them, against printed tables. IF97 is itself a fit to
 * IAPWS-95; textbooks print the tables of older formulations, so that their values hold to the figures named.
 */
import { describe } from 'vitest';
import * as water from '../../sim/fluids/water.ts';
import { checkPrinted, figures, work, type Scatter } from './printed.ts';
import { cengel, incropera } from './works.ts';

const table8 = work('IAPWS R6-95(2018)')('Table 8');
const fit = (within: number): Scatter => ({
  within,
  because: 'IF97 is a fit to IAPWS-95, here to a few hundred-thousandths',
});
const C = 273.15;

describe('saturated water and steam', () => {
  checkPrinted([
    ['pressure at 275 K, kPa', () => water.saturationPressure(275) / 1e3, '0.698451167', table8, fit(2e-5)],
    ['density of the water, kg/m³', () => water.liquidDensity(275), '0.999887406e3', table8, fit(0.01)],
    ['density of the steam, kg/m³', () => water.vapourDensity(275), '0.550664919e-2', table8, fit(2e-7)],
    ['enthalpy of the water, kJ/kg', () => water.liquidEnthalpy(275) / 1e3, '0.775972202e1', table8, fit(0.02)],
    ['enthalpy of the steam, kJ/kg', () => water.vapourEnthalpy(275) / 1e3, '0.250428995e4', table8, fit(0.1)],
    [
      'heat of vaporisation at 100 °C, kJ/kg',
      () => water.latentHeat(C + 100) / 1e3,
      '2257',
      incropera('Example 10.1, p. 632'),
      figures(3, '2257'),
    ],
    [
      'heat of vaporisation at 40 °C, kJ/kg',
      () => water.latentHeat(C + 40) / 1e3,
      '2407',
      cengel('Example 10-6'),
      figures(3, '2407'),
    ],
    [
      'heat of vaporisation at 30 °C, kJ/kg',
      () => water.latentHeat(C + 30) / 1e3,
      '2431',
      cengel('Example 11-3'),
      figures(3, '2431'),
    ],
    ['density of water at 35 °C, kg/m³', () => water.liquidDensity(C + 35), '994', cengel('Example 10-6')],
    ['density of water at 90 °C, kg/m³', () => water.liquidDensity(C + 90), '965.3', cengel('Example 10-4')],
    ['density of steam at 100 °C, kg/m³', () => water.vapourDensity(C + 100), '0.60', cengel('Example 10-1')],
    [
      'heat capacity of water at 100 °C, J/kgK',
      () => water.liquidHeatCapacity(C + 100),
      '4217',
      incropera('Example 10.1, p. 632'),
    ],
    [
      'heat capacity of water at 90 °C, J/kgK',
      () => water.liquidHeatCapacity(C + 90),
      '4206',
      cengel('Example 10-4'),
      figures(3, '4206'),
    ],
    [
      'conductivity of water at 90 °C, W/mK',
      () => water.liquidConductivity(C + 90),
      '0.675',
      cengel('Example 10-4'),
      figures(2, '0.675'),
    ],
    [
      'conductivity of water at 35 °C, W/mK',
      () => water.liquidConductivity(C + 35),
      '0.623',
      cengel('Example 10-6'),
      figures(2, '0.623'),
    ],
    [
      'viscosity of water at 90 °C, mPa s',
      () => 1e3 * water.liquidViscosity(C + 90),
      '0.315',
      cengel('Example 10-4'),
      figures(2, '0.315'),
    ],
    [
      'viscosity of water at 35 °C, mPa s',
      () => 1e3 * water.liquidViscosity(C + 35),
      '0.720',
      cengel('Example 10-6'),
      figures(2, '0.720'),
    ],
    ['Prandtl number of water at 100 °C', () => water.liquidPrandtl(C + 100), '1.75', cengel('Example 10-1')],
    ['surface tension at 100 °C, N/m', () => water.surfaceTension(C + 100), '0.0589', cengel('Example 10-1')],
  ]);
});
