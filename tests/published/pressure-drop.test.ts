/** Pressure drop in tubes and beds against the worked examples of textbooks. */
import { describe } from 'vitest';
import { look } from '../sim/transfer/look.ts';
import { checkPrinted, figures } from './printed.ts';
import { coulson, deNevers, geankoplis } from './works.ts';

/** Steam with water in a 75 mm pipe: the gas gradient times the square of the chart's 3.95. The book has R/ρu² = f/8. */
const steamAndWater = (): number => {
  const rho = (120e3 * 0.018) / (8.314 * 330);
  const G = 0.05 / (0.25 * Math.PI * 0.075 * 0.075);
  return (3.95 * 3.95 * look('darcy-gradient', { f: 8 * 0.0022, G, D: 0.075, rho })) / 1000;
};

/** Water 15 inches deep over a foot of sand. */
const sand = (): number =>
  look('blake-kozeny-velocity', {
    gradient: (997.950058 * 9.80665 * 0.381) / 0.3048,
    d: 0.000762,
    voidage: 0.33,
    mu: 0.001002,
  }) / 0.3048;

/** Air at 311 K through 2.44 m of 12.7 mm spheres, at the mean of the pressures at the two ends. */
const spheres = (): number => {
  const rho = (1.09e5 * 28.97e-3) / (8.3143 * 311);
  const v = 0.358 / (0.25 * Math.PI * 0.61 * 0.61) / rho;
  return (2.44 * look('ergun-gradient', { v, d: 0.0127, voidage: 0.38, rho, mu: 1.9e-5 })) / 1e5;
};

describe('pressure drop', () => {
  checkPrinted([
    ['steam and water in a 75 mm pipe, kPa/m', steamAndWater, '0.298', coulson('Example 5.1, p. 190')],
    ['water seeping through sand, ft/s', sand, '0.012422', deNevers('Example 11.1, p. 401'), figures(3, '0.012422')],
    ['air through a bed of spheres, 10⁵ Pa', spheres, '0.0497', geankoplis('Example 3.1-4')],
  ]);
});
