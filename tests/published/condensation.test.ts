/**
 * Condensation against textbook examples and independent evaluations. Every condensation check handed to the project
 * is here. Textbook answers are recomputed from the data given in the book, which is why they carry more figures than
 * it prints.
 */
import { describe } from 'vitest';
import { celsius, checkPublished, look, perHour, STANDARD_G } from '../sim/transfer/published-rows.ts';

const incropera103 = { L: 1, dT: 50, h_fg: 2257e3, rho_l: 975, k_l: 0.668, mu_l: 375e-6, cp_l: 4193, g: 9.81 };
const incropera = 'Incropera et al., Fundamentals of Heat and Mass Transfer 6e, Example 10.3 p. 648';
const incroperaH = (): number => look('film-coefficient-wavy-vertical', incropera103);
const cengel104 = { L: 2, dT: 20, h_fg: 2257e3, rho_l: 965.3, k_l: 0.675, mu_l: 0.315e-3, cp_l: 4206, g: 9.81 };
const cengel = 'Cengel, Heat and Mass Transfer 3e, Example 10-4; prints Re = 1287, h = 5850';
const cengelH = (): number =>
  look('film-coefficient-kutateladze', {
    Re: look('film-reynolds-wavy-vertical', cengel104),
    k_l: 0.675,
    nu_l: 0.326e-6,
    g: 9.81,
  });

describe('condensation on the outside of surfaces', () => {
  checkPublished([
    [
      '001',
      'film Reynolds number of a rippling film',
      () => look('film-reynolds-wavy-vertical', incropera103),
      1178.1466,
      0.01,
      incropera,
    ],
    ['002', 'coefficient of a rippling film', incroperaH, 5300.692, 0.01, incropera],
    [
      '003',
      'heat to a vertical cylinder',
      () => incroperaH() * Math.PI * 0.08 * 50,
      66610.46,
      0.01,
      `${incropera}; prints 66.62 kW`,
    ],
    [
      '004',
      'steam condensed on it',
      () => (incroperaH() * Math.PI * 0.08 * 50) / (2257e3 + 0.68 * 4193 * 50),
      0.027759424,
      0.015,
      incropera,
    ],
    ['006', 'coefficient of a rippling film, Kutateladze', cengelH, 5850.1765, 0.01, cengel],
    ['007', 'heat to a plate of 2 m by 3 m', () => cengelH() * 6 * 20, 702021.18, 0.01, `${cengel}, 7.02e5 W`],
    [
      '009',
      'coefficient outside a horizontal tube',
      () =>
        look('film-coefficient-horizontal-tube-outside', {
          D: 0.03,
          N: 1,
          dT: 10,
          h_fg: 2407e3,
          rho_l: 994,
          rho_v: 0.05,
          k_l: 0.623,
          mu_l: 0.72e-3,
          cp_l: 4178,
          c: 0.68,
          g: 9.81,
        }),
      9294.5453,
      0.01,
      'Cengel 3e Example 10-6; prints 9292–9295',
    ],
    [
      '011',
      'coefficient on a vertical plate, ρ² form',
      () =>
        look('film-coefficient-nusselt-vertical', {
          L: 0.3,
          dT: 2,
          h_fg: 2255e3,
          rho_l: 960,
          rho_v: 0,
          k_l: 0.68,
          mu_l: 282e-6,
          cp_l: 0,
          c: 0,
          g: 9.81,
        }),
      13156.27,
      0.01,
      'Holman, Heat Transfer (SI) Example 9-1',
    ],
    [
      '012',
      'coefficient of a tier of ten tubes',
      () =>
        look('film-coefficient-horizontal-tube-outside', {
          D: 0.0127,
          N: 10,
          dT: 2,
          h_fg: 2255e3,
          rho_l: 960,
          rho_v: 0,
          k_l: 0.68,
          mu_l: 282e-6,
          cp_l: 0,
          c: 0,
          g: 9.81,
        }),
      12539.739,
      0.01,
      'Holman (SI) Example 9-2, which uses 0.725',
    ],
    [
      '018',
      'coefficient on a vertical plate, plain Nusselt',
      () =>
        look('film-coefficient-nusselt-vertical', {
          L: 0.1,
          dT: 20,
          h_fg: 776.9e3,
          rho_l: 585,
          rho_v: 7,
          k_l: 0.091,
          mu_l: 158.9e-6,
          cp_l: 0,
          c: 0,
          g: STANDARD_G,
        }),
      1482.2064,
      1e-4,
      'Hewitt, Shires and Bott, Process Heat Transfer p. 578; python ht 1.0.7',
    ],
    [
      '020',
      'steam film on a wall at 80 °C',
      () => look('film-coefficient-nusselt-vertical-steam', { T_sat: celsius(100), T_wall: celsius(80), L: 0.3 }),
      7207.8857,
      0.015,
      'independent evaluation, IF97 properties',
    ],
    [
      '021',
      'steam film on a wall at 95 °C',
      () => look('film-coefficient-nusselt-vertical-steam', { T_sat: celsius(100), T_wall: celsius(95), L: 0.3 }),
      10370.6,
      0.015,
      'independent evaluation, IF97 properties',
    ],
    [
      '023',
      'steam film outside a 12 mm tube',
      () => look('film-coefficient-tube-outside-steam', { T_sat: celsius(100), T_wall: celsius(80), D: 0.012 }),
      12459.733,
      0.015,
      'independent evaluation, IF97 properties',
    ],
    [
      '024',
      'steam film outside a 22 mm tube',
      () => look('film-coefficient-tube-outside-steam', { T_sat: celsius(100), T_wall: celsius(60), D: 0.022 }),
      8764.7344,
      0.015,
      'independent evaluation, IF97 properties',
    ],
  ]);
});

const dutta = 'Dutta, Heat Transfer: Principles and Applications, Example 6.7 p. 201; prints 52.7 %';
const duttaH = (): number =>
  look('film-coefficient-chato', {
    D_i: 0.016,
    dT: 25,
    h_fg: 391e3,
    rho_l: 815,
    rho_v: 2.7,
    k_l: 0.13,
    mu_l: 381e-6,
    cp_l: 1940,
    g: 9.8,
  });
const duttaShare = (): number =>
  (duttaH() * Math.PI * 0.016 * 0.5 * 25) / ((391e3 + 0.375 * 1940 * 25) * 20 * 0.25 * Math.PI * 0.016 ** 2);
const chatoSteam = (t_wall: number, D_i: number) => () =>
  look('film-coefficient-chato-steam', { T_sat: celsius(100), T_wall: celsius(t_wall), D_i });
const chato = 'Chato 1962 with IF97 properties, independent evaluation';
const cavallini = 'Cavallini et al. 2006 with IF97 properties, independent evaluation';
const cavalliniSteam = (m: number, x: number, D_i: number, dT: number) => () =>
  look('film-coefficient-cavallini-steam', { m: perHour(m), x, D_i, T_sat: celsius(100), dT });
const vapourSpeeds = (m: number, D_i: number) => () => [
  look('dimensionless-vapour-velocity-steam', { m: perHour(m), x: 0.9, D_i, T_sat: celsius(100) }),
  look('cavallini-transition-velocity-steam', { x: 0.9, T_sat: celsius(100) }),
];
const reynolds = (m: number, D_i: number) => () =>
  look('vapour-reynolds-steam', { m: perHour(m), D_i, T_sat: celsius(100) });

describe('condensation inside a horizontal tube', () => {
  checkPublished([
    ['014', 'mean coefficient of Chato', duttaH, 1380.4157, 0.01, dutta],
    ['015', 'share of the vapour condensed', duttaShare, 0.52711764, 0.01, dutta],
    ['027', 'steam in 6 mm, wall 40 °C', chatoSteam(40, 0.006), 8016.8196, 0.015, chato],
    ['028', 'steam in 8 mm, wall 60 °C', chatoSteam(60, 0.008), 8546.0877, 0.015, chato],
    ['029', 'steam in 10 mm, wall 80 °C', chatoSteam(80, 0.01), 9900.5436, 0.015, chato],
    ['030', 'steam in 10 mm, wall 90 °C', chatoSteam(90, 0.01), 11929.444, 0.015, chato],
    ['031', 'steam in 15 mm, wall 90 °C', chatoSteam(90, 0.015), 10779.47, 0.015, chato],
    ['032', 'steam in 20 mm, wall 60 °C', chatoSteam(60, 0.02), 6796.4534, 0.015, chato],
    ['037', 'vapour Reynolds number, 1 kg/h in 10 mm', reynolds(1, 0.01), 2891.3757, 0.01, 'IAPWS viscosity'],
    ['038', 'vapour Reynolds number, 5 kg/h in 10 mm', reynolds(5, 0.01), 14456.879, 0.01, 'IAPWS viscosity'],
    ['039', 'vapour Reynolds number, 10 kg/h in 6 mm', reynolds(10, 0.006), 48189.596, 0.01, 'IAPWS viscosity'],
    ['042', 'J_G and its transition, 1 kg/h in 10 mm', vapourSpeeds(1, 0.01), [0.42468053, 2.5637006], 0.01, cavallini],
    ['043', 'J_G and its transition, 5 kg/h in 10 mm', vapourSpeeds(5, 0.01), [2.1234026, 2.5637006], 0.01, cavallini],
    ['044', 'J_G and its transition, 5 kg/h in 6 mm', vapourSpeeds(5, 0.006), [7.6147251, 2.5637006], 0.01, cavallini],
    ['047', 'local coefficient, gravity, 1 kg/h', cavalliniSteam(1, 0.5, 0.01, 20), 7990.5563, 0.02, cavallini],
    ['048', 'local coefficient, gravity, 2 kg/h', cavalliniSteam(2, 0.9, 0.01, 20), 10347.741, 0.02, cavallini],
    ['049', 'local coefficient, gravity, 5 kg/h', cavalliniSteam(5, 0.5, 0.01, 20), 9465.4684, 0.02, cavallini],
    ['050', 'local coefficient, shear, 10 kg/h', cavalliniSteam(10, 0.9, 0.01, 20), 17229.076, 0.02, cavallini],
    ['051', 'local coefficient in 8 mm', cavalliniSteam(2, 0.5, 0.008, 40), 8175.9426, 0.02, cavallini],
  ]);
});

/** Saturated water at 100 °C, IF97 and IAPWS transport properties as the checks were computed with. */
const water100 = { k_l: 0.6772, mu_l: 281.585e-6, cp_l: 4216.6 };
const densities100 = { rho_l: 958.354, rho_v: 0.598136 };
const p_r = 101418 / 22.064e6;
const flux = (m: number, D_i: number): number => perHour(m) / (0.25 * Math.PI * D_i * D_i);
const shear = (name: string, m: number, x: number, D_i: number, more: Readonly<Record<string, number>>) => () =>
  look(name, { G: flux(m, D_i), x, D_i, ...water100, ...more });

describe('shear-controlled correlations kept for comparison', () => {
  checkPublished([
    [
      '019',
      'Boyko and Kruzhilin',
      () =>
        look('film-coefficient-boyko-kruzhilin', {
          G: 500,
          x: 0.85,
          D_i: 0.03,
          rho_l: 582.9,
          rho_v: 6.36,
          k_l: 0.098,
          mu_l: 159e-6,
          cp_l: 2520,
        }),
      10598.657,
      1e-4,
      'Hewitt, Shires and Bott p. 589; python ht 1.0.7',
    ],
    [
      '055',
      'Shah 2009, 10 kg/h in 10 mm',
      shear('film-coefficient-shah-2009', 10, 0.9, 0.01, { p_r, mu_v: 12.232e-6 }),
      14691.208,
      0.02,
      'Shah 2009, as restated by Roetzel, Luo and Chen eqs 4.166–4.173',
    ],
    [
      '056',
      'Shah 2009, 5 kg/h in 6 mm',
      shear('film-coefficient-shah-2009', 5, 0.9, 0.006, { p_r, mu_v: 12.232e-6 }),
      21162.221,
      0.02,
      'Shah 2009, as restated by Roetzel, Luo and Chen eqs 4.166–4.173',
    ],
    [
      '058',
      'Akers, Deans and Crosser, 5 kg/h',
      shear('film-coefficient-akers', 5, 0.9, 0.01, densities100),
      11627.987,
      0.02,
      'python ht 1.0.7',
    ],
    [
      '059',
      'Shah 1979, 5 kg/h',
      shear('film-coefficient-shah-1979', 5, 0.9, 0.01, { p_r }),
      8402.8742,
      0.02,
      'python ht 1.0.7',
    ],
    [
      '060',
      'Cavallini, Smith and Zecchin, 5 kg/h',
      shear('film-coefficient-cavallini-smith-zecchin', 5, 0.9, 0.01, densities100),
      12439.127,
      0.02,
      'python ht 1.0.7',
    ],
    [
      '061',
      'Akers, Deans and Crosser, 2 kg/h',
      shear('film-coefficient-akers', 2, 0.5, 0.01, densities100),
      7094.763,
      0.02,
      'python ht 1.0.7',
    ],
    [
      '062',
      'Shah 1979, 2 kg/h',
      shear('film-coefficient-shah-1979', 2, 0.5, 0.01, { p_r }),
      2830.0182,
      0.02,
      'python ht 1.0.7',
    ],
    [
      '063',
      'Cavallini, Smith and Zecchin, 2 kg/h',
      shear('film-coefficient-cavallini-smith-zecchin', 2, 0.5, 0.01, densities100),
      3800.4058,
      0.02,
      'python ht 1.0.7',
    ],
  ]);
});

const inTub = (D_i: number, D_o: number, t_water: number) => ({
  T_sat: celsius(100),
  T_water: celsius(t_water),
  D_i,
  D_o,
  k: 390,
});
const tub = (D_i: number, D_o: number, t_water: number) => () => [
  look('tube-in-tub-overall', inTub(D_i, D_o, t_water)),
  look('tube-in-tub-wall-temperature', inTub(D_i, D_o, t_water)) - 273.15,
];
const coil = (m: number, t_water: number) => () =>
  look('coil-length-to-condense', { m: perHour(m), ...inTub(0.01, 0.012, t_water) });
const jacket = (m: number, m_c: number) => (): readonly number[] => {
  const coolant = { m: perHour(m), m_c: perHour(m_c), T_in: celsius(15), T_sat: celsius(100) };
  const whole = { ...coolant, D_i: 0.01, D_o: 0.012, D_s: 0.02, k: 390 };
  const L = look('jacket-condensing-length', whole);
  return [
    look('jacket-coolant-outlet', coolant) - 273.15,
    look('jacket-reynolds', { ...coolant, D_o: 0.012, D_s: 0.02 }),
    look('jacket-film-coefficient', { ...coolant, D_o: 0.012, D_s: 0.02, L }),
    look('jacket-overall', whole),
    L,
  ];
};
const chain = 'independent evaluation of Chato inside, the coolant outside, wall found between; IF97 properties';

describe('a whole condenser tube', () => {
  checkPublished([
    ['067', 'U and wall, 10/12 mm in water at 20 °C', tub(0.01, 0.012, 20), [1372.0409, 88.252428], 0.05, chain],
    ['068', 'U and wall, 10/12 mm in water at 60 °C', tub(0.01, 0.012, 60), [1372.9617, 95.353908], 0.05, chain],
    ['069', 'U and wall, 6/8 mm in water at 30 °C', tub(0.006, 0.008, 30), [1448.9483, 89.731683], 0.05, chain],
    ['072', 'coil for 3 kg/h in water at 20 °C', coil(3, 20), 0.45442341, 0.08, chain],
    ['073', 'coil for 3 kg/h in water at 70 °C', coil(3, 70), 1.2504402, 0.08, chain],
    [
      '075',
      'jacket, 2 kg/h steam, 60 kg/h coolant: outlet, Re, h_o, U, length',
      jacket(2, 60),
      [32.982691, 728.02629, 597.49792, 570.84156, 0.76999163],
      0.1,
      chain,
    ],
    [
      '076',
      'jacket, 3 kg/h steam, 150 kg/h coolant: outlet, Re, h_o, U, length',
      jacket(3, 150),
      [25.784072, 1671.0957, 708.40307, 668.75479, 0.93833905],
      0.1,
      chain,
    ],
  ]);
});
