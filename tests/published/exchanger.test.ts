/**
 * Exchanger effectiveness and log-mean differences against independent evaluations and textbook examples. Every check
 * of them handed to the project is here.
 */
import { describe } from 'vitest';
import { checkPublished, look } from '../sim/transfer/published-rows.ts';

const library = 'python ht 1.0.7';
const at = (name: string, values: Readonly<Record<string, number>>) => () => look(name, values);
const ends = { T_hi: 100, T_ho: 60, T_ci: 30, T_co: 40.2 };
const tubeFilm = (m: number, D: number, mu: number, k: number, Pr: number): number =>
  (look('nusselt-dittus-boelter', { Re: (4 * m) / (Math.PI * D * mu), Pr, n: 0.4 }) * k) / D;

/** Oil in an annulus of Nu 5.63 cooled by water in the tube, both films at the bore. */
const oilCooler = (): readonly number[] => {
  const duty = 0.1 * 2131 * 40;
  const T_co = 30 + duty / (0.2 * 4178);
  const h_i = tubeFilm(0.2, 0.025, 725e-6, 0.625, 4.85);
  const h_o = (5.63 * 0.138) / 0.02;
  const U = 1 / (1 / h_i + 1 / h_o);
  const difference = look('log-mean-counterflow', { T_hi: 100, T_ho: 60, T_ci: 30, T_co });
  return [T_co, U, duty / (U * Math.PI * 0.025 * difference)];
};
const powerPlant = (): readonly number[] => {
  const C = 30000 * 4179;
  const U = 1 / (1 / tubeFilm(1, 0.025, 855e-6, 0.613, 5.83) + 1 / 11000);
  const T_co = 20 + 2e9 / C;
  const difference = look('log-mean-counterflow', { T_hi: 50, T_ho: 50, T_ci: 20, T_co });
  return [T_co, U, 2e9 / (U * difference * 30000 * 2 * Math.PI * 0.025)];
};
const steamCondenser = (): readonly number[] => {
  const difference = look('log-mean-counterflow', { T_hi: 30, T_ho: 30, T_ci: 14, T_co: 22 });
  const duty = 2100 * 45 * difference;
  return [difference, duty, duty / (4184 * 8), duty / 2431e3];
};
const waterHeater = (): readonly number[] => {
  const difference = look('log-mean-counterflow', { T_hi: 110, T_ho: 75, T_ci: 35, T_co: 75 });
  return [difference, (1.133333333 * 4180 * 40) / (320 * difference)];
};
const geothermal = (): readonly number[] => {
  const duty = 1.2 * 4180 * 60;
  const T_ho = 160 - duty / (2 * 4310);
  const difference = look('log-mean-counterflow', { T_hi: 160, T_ho, T_ci: 20, T_co: 80 });
  const area = duty / (640 * difference);
  return [T_ho, difference, area, area / (Math.PI * 0.015)];
};
const crossFlow = (): readonly number[] => {
  const NTU = (275 * 10.82) / 1377.5;
  const share = look('effectiveness-cross-max-mixed', { NTU, C_r: 1377.5 / 9672 });
  return [NTU, share, share * 1377.5 * 115];
};
const propanol = (): readonly number[] => {
  const difference = look('log-mean-counterflow', {
    T_hi: 390.9277778,
    T_ho: 390.9277778,
    T_ci: 302.5944444,
    T_co: 322.0388889,
  });
  return [difference, 5011515.81 / (111.7555195 * difference)];
};
const crossTemperatures = { T_hi: 300, T_ho: 100, T_ci: 35, T_co: 125 };

describe('heat exchangers', () => {
  checkPublished([
    [
      'hx 001',
      'the effectiveness of a condenser',
      at('effectiveness-condenser', { NTU: 1 }),
      0.63212056,
      1e-6,
      library,
    ],
    [
      'hx 001',
      'counterflow with a condensing side',
      at('effectiveness-counterflow', { NTU: 1, C_r: 0 }),
      0.63212056,
      1e-6,
      library,
    ],
    ['hx 002', 'counterflow', at('effectiveness-counterflow', { NTU: 2, C_r: 0.5 }), 0.77460033, 1e-6, library],
    ['hx 003', 'balanced counterflow', at('effectiveness-counterflow', { NTU: 3, C_r: 1 }), 0.75, 1e-6, library],
    ['hx 006', 'parallel flow', at('effectiveness-parallel', { NTU: 2, C_r: 0.5 }), 0.63347529, 1e-6, library],
    [
      'hx 008',
      'the log mean in counterflow and parallel flow',
      () => [look('log-mean-counterflow', ends), look('log-mean-parallel', ends)],
      [43.200409, 39.752511],
      1e-5,
      `Incropera et al. 6e Example 11.1; ${library}`,
    ],
    [
      'hx 009',
      'the log mean of equal ends',
      at('log-mean-counterflow', { T_hi: 100, T_ho: 60, T_ci: 20, T_co: 60 }),
      40,
      1e-9,
      library,
    ],
    [
      'hx 011',
      'an oil cooler: outlet, U, length',
      oilCooler,
      [40.201053, 38.187545, 65.788232],
      0.01,
      'Incropera et al. 6e Example 11.1 p. 680, which prints 40.2 °C and 65.9 m',
    ],
    [
      'hx 012',
      'effectiveness and capacity ratio from temperatures',
      () => [
        look('effectiveness-from-temperatures', crossTemperatures),
        look('capacity-ratio-from-temperatures', crossTemperatures),
      ],
      [0.75471698, 0.45],
      0.005,
      'Incropera et al. 6e Example 11.3 p. 692',
    ],
    [
      'hx 013',
      'a power-plant condenser: outlet, U, length of a pass',
      powerPlant,
      [35.95278, 4474.4726, 4.5115152],
      0.01,
      'Incropera et al. 6e Example 11.5 p. 696, which prints 36.0 °C and 4.51 m',
    ],
    [
      'hx 014',
      'a steam condenser: difference, duty, coolant, condensate',
      steamCondenser,
      [11.54156, 1090677.5, 32.584771, 0.44865383],
      0.01,
      'Cengel 3e Example 11-3',
    ],
    [
      'hx 016',
      'a water heater: difference, area',
      waterHeater,
      [37.444378, 15.814568],
      0.01,
      'Holman (SI) Example 10-4',
    ],
    [
      'hx 018',
      'a geothermal heater: outlet, difference, area, length',
      geothermal,
      [125.08585, 91.973447, 5.1128887, 108.49887],
      0.01,
      'Cengel 3e Example 11-4',
    ],
    [
      'hx 021',
      'steam and oil in cross flow: NTU, effectiveness, duty',
      crossFlow,
      [2.1600726, 0.83121804, 131675.33],
      1e-4,
      `Holman 10e Example 10-9; ${library}`,
    ],
    [
      'hx 023',
      'a propanol condenser: difference, design U',
      propanol,
      [78.208665, 573.38358],
      0.01,
      'Kern, Process Heat Transfer Example 12.1 p. 274',
    ],
  ]);
});
