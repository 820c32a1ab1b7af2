/**
 * Natural convection, cross flow and radiation against textbook examples and independent evaluations: the outside of
 * the coil and the losses of the pot. Every check of these handed to the project is here.
 */
import { describe } from 'vitest';
import { celsius, checkPublished, look } from '../sim/transfer/published-rows.ts';

const cylinder = (Ra: number, Pr: number) => () => look('nusselt-horizontal-cylinder', { Ra, Pr });
const morgan = (Ra: number) => () => look('nusselt-horizontal-cylinder-morgan', { Ra });
const inWater = (t_wall: number, t_bulk: number, D_o: number) => () =>
  look('natural-convection-tube-in-water', { T_wall: celsius(t_wall), T_bulk: celsius(t_bulk), D_o });
const library = 'python ht 1.0.7';
const chain = 'Churchill–Chu at IF97 film properties, independent evaluation';

const pipe = { beta: 0.002725, dT: 142, L: 0.1, nu: 22.8e-6, alpha: 32.8e-6, g: 9.8 };
const pipeConvection = (): number =>
  (look('nusselt-horizontal-cylinder', { Ra: look('rayleigh-number', pipe), Pr: 0.697 }) * 0.0313) / 0.1;
const pipeLoss = (): number =>
  Math.PI *
  0.1 *
  (pipeConvection() * 142 + look('radiant-flux', { emissivity: 0.85, T_s: celsius(165), T_a: celsius(23) }));
const example94 = 'Incropera et al. 6e Example 9.4 p. 580';
const holman73 = (): number =>
  look('nusselt-horizontal-cylinder-mcadams', { Ra: 2.48e10 * 11 * 0.02 ** 3 }) * 0.63 * Math.PI * 11;

describe('natural convection round horizontal tubes', () => {
  checkPublished([
    ['coolant 001', 'Churchill–Chu at Pr 6', cylinder(1e5, 6), 9.3652683, 1e-5, library],
    ['coolant 003', 'Churchill–Chu at Pr 3', cylinder(5e6, 3), 26.952039, 1e-5, library],
    ['coolant 005', 'Churchill–Chu at Pr 0.7', cylinder(1e6, 0.7), 14.510191, 1e-5, library],
    ['coolant 002', 'Morgan at Ra 10⁵', morgan(1e5), 8.5357412, 1e-5, library],
    ['coolant 004', 'Morgan at Ra 5·10⁶', morgan(5e6), 22.697799, 1e-5, library],
    ['coolant 006', 'Morgan at Ra 10⁶', morgan(1e6), 15.178933, 1e-5, library],
    ['coolant 011', 'Xin and Ebadian', () => look('nusselt-coil-xin-ebadian', { Ra: 2e4 }), 5.279585, 1e-5, library],
    ['coolant 013', 'a 12 mm tube at 80 °C in water at 20 °C', inWater(80, 20, 0.012), 1493.9089, 0.03, chain],
    ['coolant 014', 'a 12 mm tube at 90 °C in water at 50 °C', inWater(90, 50, 0.012), 1539.3472, 0.03, chain],
    ['coolant 015', 'a 10 mm tube at 60 °C in water at 20 °C', inWater(60, 20, 0.01), 1229.5665, 0.03, chain],
    ['coolant 016', 'a 22 mm tube at 92 °C in water at 70 °C', inWater(92, 70, 0.022), 1290.2307, 0.03, chain],
    [
      'coolant 019',
      'heat from a cylinder in water',
      holman73,
      443.49892,
      0.01,
      'Holman (SI) Example 7-3, which prints 443 W/m',
    ],
    ['coolant 020', 'convection from a pipe in air', pipeConvection, 7.2287143, 0.01, example94],
    [
      'losses 001',
      'convection and radiation from a pipe',
      pipeLoss,
      763.49499,
      0.01,
      `${example94}, which prints 763 W/m`,
    ],
  ]);
});

/** Coefficient in W/m²K of a 12 mm tube in still water, by wall temperature 50, 60, 70, 80 and 90 °C. */
const STILL_WATER: readonly (readonly [bulk: number, wall: number, h: number])[] = [
  [15, 50, 1054],
  [15, 60, 1208],
  [15, 70, 1354],
  [15, 80, 1495],
  [15, 90, 1631],
  [30, 50, 982],
  [30, 60, 1163],
  [30, 70, 1326],
  [30, 80, 1477],
  [30, 90, 1621],
  [45, 50, 715],
  [45, 60, 1019],
  [45, 70, 1230],
  [45, 80, 1408],
  [45, 90, 1569],
  [60, 70, 995],
  [60, 80, 1256],
  [60, 90, 1458],
  [75, 80, 881],
  [75, 90, 1240],
];

describe('natural convection round a 12 mm tube over the whole working range', () => {
  checkPublished(
    STILL_WATER.map(([bulk, wall, h]) => [
      'table',
      `a wall at ${wall} °C in water at ${bulk} °C`,
      inWater(wall, bulk, 0.012),
      h,
      0.002,
      `${chain}, printed to 1 W/m²K`,
    ]),
  );
});

const crossFlow = (Re: number, Pr: number) => () => look('nusselt-cross-flow-cylinder', { Re, Pr });
const stirred = (V: number) => () => look('cross-flow-tube-in-water', { V, T: celsius(60), D_o: 0.012 });
const stirredSource = 'Churchill–Bernstein at IF97 properties, independent evaluation printed to 10 W/m²K';

describe('cross flow over a tube in a stirred tub', () => {
  checkPublished([
    ['coolant 022', 'Churchill–Bernstein at Re 1000', crossFlow(1000, 4.3), 31.442021, 1e-5, library],
    ['coolant 023', 'Churchill–Bernstein at Re 300', crossFlow(300, 6), 19.292929, 1e-5, library],
    ['table', 'water at 0.02 m/s', stirred(0.02), 1060, 0.005, stirredSource],
    ['table', 'water at 0.05 m/s', stirred(0.05), 1690, 0.005, stirredSource],
    ['table', 'water at 0.1 m/s', stirred(0.1), 2410, 0.005, stirredSource],
    ['table', 'water at 0.2 m/s', stirred(0.2), 3480, 0.005, stirredSource],
  ]);
});

const plate = (Ra: number, Pr: number) => () => look('nusselt-vertical-plate', { Ra, Pr });
const door = { beta: 0.0025, dT: 209, L: 0.71, nu: 26.4e-6, alpha: 38.3e-6, g: 9.8 };
const doorLoss = (): number => ((plate(look('rayleigh-number', door), 0.69)() * 0.0338) / 0.71) * 0.71 * 1.02 * 209;
const duct = (L: number): number =>
  look('rayleigh-number', { beta: 0.0033, dT: 30, L, nu: 16.2e-6, alpha: 22.9e-6, g: 9.8 });
const ductLoss = (): number => {
  const side = look('nusselt-vertical-plate-laminar', { Ra: duct(0.3), Pr: 0.71 }) / 0.3;
  const top = look('nusselt-horizontal-plate-hot-side-up', { Ra: duct(0.375) }) / 0.375;
  const bottom = look('nusselt-horizontal-plate-hot-side-down', { Ra: duct(0.375) }) / 0.375;
  return 0.0265 * 30 * (2 * 0.3 * side + 0.75 * (top + bottom));
};
const cengelPlate = (): number => {
  const nu = 1.896e-5;
  const Gr = look('grashof-number', { beta: 1 / 333, dT: 60, L: 0.6, nu, g: 9.81 });
  return ((plate(Gr * 0.7202, 0.7202)() * 0.02808) / 0.6) * 0.36 * 60;
};
const sideOf = (t_s: number, emissivity: number) => (): readonly number[] => {
  const side = { T_s: celsius(t_s), T_air: celsius(20), L: 0.4 };
  return [look('pot-side-convection', side), look('pot-side-loss-flux', { ...side, emissivity })];
};
const lid = (): readonly number[] => {
  const top = { T_s: celsius(95), T_air: celsius(20), D: 0.3 };
  return [look('pot-lid-convection', top), look('pot-lid-loss-flux', { ...top, emissivity: 0.2 })];
};
const lossChain = 'independent evaluation with dry air of Lemmon and Jacobsen';

describe('losses of walls, lids and bases to air', () => {
  checkPublished([
    ['losses 002', 'Churchill–Chu plate at Ra 10⁸', plate(1e8, 0.7), 60.949184, 1e-5, library],
    ['losses 003', 'Churchill–Chu plate at Ra 2·10⁹', plate(2e9, 0.71), 152.28579, 1e-5, library],
    [
      'losses 005',
      'a slender upright cylinder',
      () => look('nusselt-slender-vertical-cylinder', { Gr: 2e8, Pr: 0.7, L: 0.4, D: 0.3 }),
      69.014724,
      1e-4,
      library,
    ],
    [
      'losses 007',
      'hot side up, laminar',
      () => look('nusselt-horizontal-plate-hot-side-up', { Ra: 1e6 }),
      17.076299,
      1e-5,
      library,
    ],
    [
      'losses 008',
      'hot side up, turbulent',
      () => look('nusselt-horizontal-plate-hot-side-up', { Ra: 5e7 }),
      55.260472,
      1e-5,
      library,
    ],
    [
      'losses 009',
      'hot side down',
      () => look('nusselt-horizontal-plate-hot-side-down', { Ra: 1e6 }),
      8.5381497,
      1e-5,
      library,
    ],
    [
      'losses 013',
      'heat lost by a vertical plate',
      doorLoss,
      1060.3138,
      0.01,
      'Incropera et al. 6e Example 9.2 p. 572, which prints 1060 W',
    ],
    [
      'losses 014',
      'heat lost by a duct, sides with the laminar form',
      ductLoss,
      245.8514,
      0.01,
      'Incropera et al. 6e Example 9.3 p. 577, which prints 246 W/m',
    ],
    [
      'losses 015',
      'heat lost by a square plate',
      cengelPlate,
      114.57788,
      0.01,
      'Cengel 3e Example 9-2a, which prints 115 W',
    ],
    ['losses 018', 'a bright pot side at 95 °C', sideOf(95, 0.2), [5.9863721, 573.5495], 0.03, lossChain],
    ['losses 019', 'a dull tub side at 60 °C', sideOf(60, 0.9), [5.1031426, 455.89301], 0.03, lossChain],
    ['losses 021', 'a bright lid at 95 °C', lid, [7.6362812, 697.29268], 0.03, lossChain],
  ]);
});
