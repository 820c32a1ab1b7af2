/**
 * A liquid that does not mix with water, boiling with it: the pair boils where the pressures add up, and the vapour
 * carries them in the ratio of pressure times molar mass.
 */
import { describe } from 'vitest';
import type { VapourCurve } from '../../sim/fluids/vapour-curve.ts';
import { coBoilingTemperatureQuick, oilPerSteam } from '../../sim/fluids/immiscible.ts';
import { saturationPressure } from '../../sim/fluids/water.ts';
import { checkPrinted } from './printed.ts';
import { geankoplis } from './works.ts';

/** N-ethylaniline by the two rows of the problem's table round the answer: 369.2 K, 2.67 kPa and 372.3 K, 3.04 kPa. */
const B = Math.log(3.04 / 2.67) / (1 / 369.2 - 1 / 372.3);
const ethylaniline: VapourCurve = { A: Math.log(3040) + B / 372.3, B, C: 0, join: 0, cubic: [0, 0, 0, 0] };
const boilingPoint = (): number => coBoilingTemperatureQuick(101_320, [1], [ethylaniline], Number.NaN);
const pressure = (): number => Math.exp(ethylaniline.A - B / boilingPoint());
const ratio = (): number => oilPerSteam(pressure(), saturationPressure(boilingPoint()), 0.12118);

const problem = geankoplis('problem 26.3-4');

describe('N-ethylaniline over water at 101.32 kPa', () => {
  checkPrinted([
    ['boiling point, K', boilingPoint, '372.25', problem, { within: 0.05, because: 'printed as 372.2 to 372.3' }],
    ['share of its molecules in the vapour, %', () => (100 * pressure()) / 101_320, '3.0', problem],
    ['its share of the mass, %', () => (100 * ratio()) / (1 + ratio()), '17.2', problem],
    [
      'pressure of water at 353.8 K, kPa',
      () => saturationPressure(353.8) / 1e3,
      '48.5',
      problem,
      { within: 0.3, because: 'temperatures and pressures are rounded to 0.1; 0.05 K are up to 0.2 kPa' },
    ],
    [
      'pressure of water at 369.2 K, kPa',
      () => saturationPressure(369.2) / 1e3,
      '87.7',
      problem,
      { within: 0.3, because: 'temperatures and pressures are rounded to 0.1; 0.05 K are up to 0.2 kPa' },
    ],
    [
      'pressure of water at 372.3 K, kPa',
      () => saturationPressure(372.3) / 1e3,
      '98.3',
      problem,
      { within: 0.3, because: 'temperatures and pressures are rounded to 0.1; 0.05 K are up to 0.2 kPa' },
    ],
  ]);
});
