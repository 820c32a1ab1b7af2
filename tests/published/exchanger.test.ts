/** Mean differences, effectiveness, films and walls of heat exchangers against the worked examples of textbooks. */
import { describe } from 'vitest';
import { look } from '../sim/transfer/look.ts';
import { checkPrinted, figures } from './printed.ts';
import { cengel, holman, incropera, kern } from './works.ts';

const counterflow = (T_hi: number, T_ho: number, T_ci: number, T_co: number): number =>
  look('log-mean-counterflow', { T_hi, T_ho, T_ci, T_co });
const crossFlow = { T_hi: 300, T_ho: 100, T_ci: 35, T_co: 125 };

const powerPlantOutlet = 20 + 2e9 / (30000 * 4179);
/** A tube of 25 mm with 1 kg/s of water inside and 11 000 W/m²K of condensing steam outside; thin wall, two passes. */
const powerPlantPass = (): number => {
  const Re = 4 / (Math.PI * 0.025 * 855e-6);
  const h_i = (look('nusselt-dittus-boelter', { Re, Pr: 5.83, n: 0.4 }) * 0.613) / 0.025;
  const U = look('overall-outside-coefficient', { h_i, h_o: 11000, D_i: 0.025, D_o: 0.025, k: 400, R_f: 0 });
  return 2e9 / (U * counterflow(50, 50, 20, powerPlantOutlet) * 30000 * 2 * Math.PI * 0.025);
};
const steamCondenser = (): number => 2100 * 45 * counterflow(30, 30, 14, 22);
const heaterDuty = 1.2 * 4180 * 60;
const geothermal = (): number => heaterDuty / (640 * counterflow(160, 160 - heaterDuty / (2 * 4310), 20, 80));
const fahrenheit = (K: number): number => (K * 9) / 5;
const propanol = (): number => counterflow(390.9277778, 390.9277778, 302.5944444, 322.0388889);

/** A steel tube of 15 and 19 mm, 1 m long, with scale on both sides; the inner one counted on the outside area. */
const scaledTube = (): number =>
  look('overall-outside-coefficient', {
    h_i: 800,
    h_o: 1200,
    D_i: 0.015,
    D_o: 0.019,
    k: 15.1,
    R_f: 0.0001 + (0.0004 * 0.019) / 0.015,
  });

describe('heat exchangers', () => {
  checkPrinted([
    ['an oil cooler: log mean, K', () => counterflow(100, 60, 30, 40.2), '43.2', incropera('Example 11.1, p. 680')],
    [
      'effectiveness from temperatures',
      () => look('effectiveness-from-temperatures', crossFlow),
      '0.75',
      incropera('Example 11.3, p. 692'),
    ],
    [
      'capacity ratio from temperatures',
      () => look('capacity-ratio-from-temperatures', crossFlow),
      '0.45',
      incropera('Example 11.3, p. 692'),
    ],
    ['a power-plant condenser: length of a pass, m', powerPlantPass, '4.51', incropera('Example 11.5, p. 696')],
    ['a steam condenser: log mean, K', () => counterflow(30, 30, 14, 22), '11.5', cengel('Example 11-3')],
    ['its duty, kW', () => steamCondenser() / 1000, '1091', cengel('Example 11-3')],
    ['its cooling water, kg/s', () => steamCondenser() / (4184 * 8), '32.6', cengel('Example 11-3')],
    ['its condensate, kg/s', () => steamCondenser() / 2431e3, '0.45', cengel('Example 11-3')],
    ['a water heater: log mean, K', () => counterflow(110, 75, 35, 75), '37.44', holman('Example 10-4')],
    [
      'its area, m²',
      () => ((68 / 60) * 4180 * 40) / (320 * counterflow(110, 75, 35, 75)),
      '15.81',
      holman('Example 10-4'),
    ],
    [
      'a geothermal heater: log mean, K',
      () => counterflow(160, 160 - heaterDuty / (2 * 4310), 20, 80),
      '92.0',
      cengel('Example 11-4'),
    ],
    ['its area, m²', geothermal, '5.11', cengel('Example 11-4')],
    ['a propanol condenser: log mean, °F', () => fahrenheit(propanol()), '141', kern('Example 12.1, p. 274')],
    [
      'its design coefficient, Btu/(h ft² °F)',
      () => 5011515.81 / (111.7555195 * propanol()) / 5.678263,
      '101',
      kern('Example 12.1, p. 274'),
    ],
  ]);
});

describe('a tube wall with scale', () => {
  checkPrinted([
    ['overall coefficient on the outside, W/m²K', scaledTube, '315', cengel('Example 11-2')],
    [
      'resistance of a metre, K/W',
      () => 1 / (scaledTube() * Math.PI * 0.019),
      '0.0532',
      cengel('Example 11-2'),
      { within: 0.0001, because: 'the book adds five resistances, the wall rounded to four decimals' },
    ],
    ['overall coefficient on the inside, W/m²K', () => (scaledTube() * 0.019) / 0.015, '399', cengel('Example 11-2')],
    [
      'the wall by itself, K/W',
      () => look('cylinder-resistance', { D_i: 0.015, D_o: 0.019, k: 15.1 }),
      '0.0025',
      cengel('Example 11-2'),
    ],
  ]);
});

describe('the film in a tube', () => {
  checkPrinted([
    [
      'mean coefficient from an outlet temperature, W/m²K',
      () =>
        look('coefficient-from-outlet-temperature', { C: 0.25 * 4178, T_in: 15, T_out: 57, T_w: 100, D: 0.05, L: 6 }),
      '755',
      incropera('Example 8.3, p. 503'),
    ],
    [
      'Nusselt number of water in an oil cooler',
      () => look('nusselt-dittus-boelter', { Re: (4 * 0.2) / (Math.PI * 0.025 * 725e-6), Pr: 4.85, n: 0.4 }),
      '90',
      incropera('Example 11.1, p. 680'),
      figures(2, '90'),
    ],
  ]);
});
