/** Natural convection and radiation against the worked examples of textbooks. */
import { describe } from 'vitest';
import { look } from '../sim/transfer/look.ts';
import { checkPrinted } from './printed.ts';
import { cengel, holman, incropera } from './works.ts';

/** A pipe of 100 mm at 165 °C in air and surroundings at 23 °C; the book takes 0 °C for 273 K. */
const pipeRayleigh = (): number =>
  look('rayleigh-number', { beta: 0.002725, dT: 142, L: 0.1, nu: 22.8e-6, alpha: 32.8e-6, g: 9.8 });
const pipeFilm = (): number => (look('nusselt-horizontal-cylinder', { Ra: pipeRayleigh(), Pr: 0.697 }) * 0.0313) / 0.1;
const pipeRadiation = (): number => look('radiant-flux', { emissivity: 0.85, T_s: 438, T_a: 296 });
const example94 = incropera('Example 9.4, p. 580');

const doorRayleigh = (): number =>
  look('rayleigh-number', { beta: 0.0025, dT: 209, L: 0.71, nu: 26.4e-6, alpha: 38.3e-6, g: 9.8 });
const doorNusselt = (): number => look('nusselt-vertical-plate', { Ra: doorRayleigh(), Pr: 0.69 });

const duct = (L: number): number =>
  look('rayleigh-number', { beta: 0.0033, dT: 30, L, nu: 16.2e-6, alpha: 22.9e-6, g: 9.8 });
const ductSide = (): number => look('nusselt-vertical-plate-laminar', { Ra: duct(0.3), Pr: 0.71 }) / 0.3;
const ductTop = (): number => look('nusselt-horizontal-plate-hot-side-up', { Ra: duct(0.375) }) / 0.375;
const ductBottom = (): number => look('nusselt-horizontal-plate-hot-side-down', { Ra: duct(0.375) }) / 0.375;

const uprightPlate = (): number => {
  const Gr = look('grashof-number', { beta: 1 / 333, dT: 60, L: 0.6, nu: 1.896e-5, g: 9.81 });
  return look('nusselt-vertical-plate', { Ra: Gr * 0.7202, Pr: 0.7202 });
};

describe('natural convection and radiation', () => {
  checkPrinted([
    [
      'heat from a cylinder in water, W/m',
      () => look('nusselt-horizontal-cylinder-mcadams', { Ra: 2.48e10 * 11 * 0.02 ** 3 }) * 0.63 * Math.PI * 11,
      '443',
      holman('Example 7-3'),
    ],
    ['a hot pipe in air: coefficient, W/m²K', pipeFilm, '7.23', example94],
    [
      'its loss by convection and radiation, W/m',
      () => Math.PI * 0.1 * (pipeFilm() * 142 + pipeRadiation()),
      '763',
      example94,
    ],
    ['an oven door: Nusselt number', doorNusselt, '147', incropera('Example 9.2, p. 572')],
    ['its loss, W', () => doorNusselt() * 0.0338 * 1.02 * 209, '1060', incropera('Example 9.2, p. 572')],
    [
      'a warm duct: loss of its four sides, W/m',
      () => 0.0265 * 30 * (2 * 0.3 * ductSide() + 0.75 * (ductTop() + ductBottom())),
      '246',
      incropera('Example 9.3, p. 577'),
    ],
    ['an upright plate: Nusselt number', uprightPlate, '113.3', cengel('Example 9-2a')],
    ['its loss, W', () => ((uprightPlate() * 0.02808) / 0.6) * 0.36 * 60, '115', cengel('Example 9-2a')],
    [
      'radiation of a hot bath, W',
      () => 3.5 * look('radiant-flux', { emissivity: 0.95, T_s: 323, T_a: 293 }),
      '663',
      cengel('Example 14-13'),
    ],
  ]);
});
