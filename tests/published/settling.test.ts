/** Separation of oil and water against the worked examples of textbooks, and the error function against its table. */
import { describe } from 'vitest';
import { circleArea } from '../../sim/geometry/cylinder.ts';
import { look } from '../sim/transfer/look.ts';
import { checkPrinted, figures } from './printed.ts';
import { abramowitz, mccabe, silla, sinnott } from './works.ts';

/** 1000 kg/h of light oil of 900 kg/m³ and 5000 kg/h of water, drops of 150 µm, the rise rounded to 1.2 mm/s. */
const decanter = sinnott('Example 10.3');
const area = look('overflow-rate', { Q: 5 / 3600, A: 1.2e-3 });
const oilSpeed = (): number => look('overflow-rate', { Q: 1000 / 900 / 3600, A: area });

describe('decanters', () => {
  checkPrinted([
    [
      'rise of a drop of 150 µm, mm/s',
      () => 1000 * look('stokes-velocity', { d: 150e-6, drho: 100, mu: 1e-3, g: 9.81 }),
      '1.2',
      decanter,
    ],
    ['area of the interface, m²', () => area, '1.16', decanter],
    ['diameter of that area, m', () => 2 * Math.sqrt(area / circleArea(2)), '1.2', decanter],
    ['speed of the oil, mm/s', () => 1000 * oilSpeed(), '0.27', decanter],
    [
      'largest water drop that the oil carries off, mm',
      () => 1000 * look('cut-diameter', { v: oilSpeed(), drho: 100, mu: 3e-3, g: 9.81 }),
      '0.12',
      decanter,
    ],
    [
      'height of the heavy leg, m',
      () => look('heavy-leg-height', { z_1: 2.16, z_3: 1.2, rho_light: 900, rho_heavy: 1000 }),
      '2.06',
      decanter,
    ],
    [
      'standing time, h',
      () => look('settling-time-rule', { mu: 1.1e-3, drho: 1153 - 865 }) / 3600,
      '0.38',
      mccabe('Example 2.2'),
    ],
    [
      'which liquid is in drops',
      () =>
        look('dispersion-number', {
          Q_L: 1.26 / 897,
          Q_H: 5.04 / 1000,
          rho_L: 897,
          rho_H: 1000,
          mu_L: 0.01,
          mu_H: 0.7e-3,
        }),
      '0.1215',
      silla('Example 6.4'),
      figures(3, '0.1215'),
    ],
    [
      'rise of its drops, mm/s',
      () => 1000 * look('stokes-velocity', { d: 150e-6, drho: 103, mu: 0.7e-3, g: 9.81 }),
      '1.8',
      silla('Example 6.4'),
    ],
  ]);
});

describe('the error function', () => {
  checkPrinted([
    ['erf at 0.5', () => look('error-function', { x: 0.5 }), '0.5204998778', abramowitz('Table 7.1')],
    ['erf at 1', () => look('error-function', { x: 1 }), '0.8427007929', abramowitz('Table 7.1')],
    ['erf at 2', () => look('error-function', { x: 2 }), '0.9953222650', abramowitz('Table 7.1')],
  ]);
});
