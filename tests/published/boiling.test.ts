/**
 * Boiling and entrainment against textbook examples and independent evaluations. Every check of them handed to the
 * project is here.
 */
import { describe } from 'vitest';
import { celsius, checkPublished, look, perHour } from '../sim/transfer/published-rows.ts';

const pan = { n: 1, h_fg: 2257e3, rho_l: 957.9, sigma: 0.0589, cp_l: 4217, g: 9.81 };
const base = 0.25 * Math.PI * 0.3 * 0.3;
const copper = (): readonly number[] => {
  const heat =
    base * look('boiling-flux-rohsenow', { dT_e: 18, C_sf: 0.0128, rho_v: 0.5956, mu_l: 279e-6, Pr_l: 1.76, ...pan });
  return [heat, (heat / 2257e3) * 3600];
};
const steel = (): readonly number[] => {
  const heat =
    base * look('boiling-flux-rohsenow', { dT_e: 8, C_sf: 0.013, rho_v: 0.6, mu_l: 282e-6, Pr_l: 1.75, ...pan });
  return [heat, heat / 2257e3];
};
const superheat = (q: number, C_sf: number) => () => look('boiling-superheat', { q, C_sf, T_sat: celsius(100) });
const critical = (C: number) => () => look('critical-heat-flux', { C, T_sat: celsius(100) });
const drops = (K: number) => () => look('souders-brown-velocity', { K, T_sat: celsius(100) });
const library = 'python ht 1.0.7 with IF97 properties';

describe('boiling and entrainment', () => {
  checkPublished([
    [
      'boiling 001',
      'heat and steam of a copper pan',
      copper,
      [59133.797, 94.320633],
      0.01,
      'Incropera et al. 6e Example 10.1 p. 632, which prints 59.1 kW and 94 kg/h',
    ],
    [
      'boiling 002',
      'its critical flux',
      () =>
        look('critical-heat-flux-pool', {
          C: 0.149,
          h_fg: 2257e3,
          rho_l: 957.9,
          rho_v: 0.5956,
          sigma: 0.0589,
          g: 9.81,
        }),
      1258646.5,
      0.005,
      'Incropera et al. 6e Example 10.1 p. 632, which prints 1.26 MW/m²',
    ],
    [
      'boiling 003',
      'heat and steam of a stainless pan',
      steel,
      [5095.1366, 0.0022574819],
      0.01,
      'Cengel 3e Example 10-1, which prints 5095 W',
    ],
    [
      'boiling 007',
      'the peak flux of water',
      () =>
        look('critical-heat-flux-pool', {
          C: 0.149,
          h_fg: 2257e3,
          rho_l: 957.6 + 0.597,
          rho_v: 0.597,
          sigma: 0.0589,
          g: 9.8,
        }),
      1259900.9,
      0.005,
      'Lienhard, A Heat Transfer Textbook Example 9.5 p. 481',
    ],
    ['boiling 008', 'the critical flux of Zuber', critical(0.131), 1108781.5, 0.01, library],
    ['boiling 009', 'the critical flux of Lienhard', critical(0.149), 1261133.2, 0.01, library],
    ['boiling 011', 'the superheat at 20 kW/m²', superheat(20e3, 0.013), 5.2298581, 0.015, library],
    ['boiling 012', 'the superheat at 50 kW/m²', superheat(50e3, 0.013), 7.0980095, 0.015, library],
    ['boiling 013', 'the superheat at 100 kW/m²', superheat(100e3, 0.0128), 8.805348, 0.015, library],
    [
      'boiling 016',
      'the steam velocity with wire mesh',
      drops(0.107),
      4.2816512,
      0.01,
      'python fluids 1.1.0 with IF97 properties',
    ],
    [
      'boiling 017',
      'the steam velocity without',
      drops(0.05),
      2.0007716,
      0.01,
      'python fluids 1.1.0 with IF97 properties',
    ],
    [
      'boiling 019',
      'Souders and Brown',
      () => look('souders-brown', { K: 0.08, rho_l: 985.4, rho_v: 1.3 }),
      2.2010906,
      1e-6,
      'python fluids 1.1.0',
    ],
    [
      'boiling 020',
      'the velocity of 5 kg/h in a 300 mm pot',
      () => look('steam-velocity', { m: perHour(5), D: 0.3, T_sat: celsius(100) }),
      0.032849985,
      0.005,
      'continuity with IF97 density',
    ],
  ]);
});
