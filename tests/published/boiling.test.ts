/** Boiling against the worked examples of textbooks. */
import { describe } from 'vitest';
import { look } from '../sim/transfer/look.ts';
import { checkPrinted } from './printed.ts';
import { cengel, incropera, lienhard } from './works.ts';

const pan = { n: 1, h_fg: 2257e3, rho_l: 957.9, sigma: 0.0589, cp_l: 4217, g: 9.81 };
const base = 0.25 * Math.PI * 0.3 * 0.3;
const copper = (): number =>
  base * look('boiling-flux-rohsenow', { dT_e: 18, C_sf: 0.0128, rho_v: 0.5956, mu_l: 279e-6, Pr_l: 1.76, ...pan });
const steel = (): number =>
  base * look('boiling-flux-rohsenow', { dT_e: 8, C_sf: 0.013, rho_v: 0.6, mu_l: 282e-6, Pr_l: 1.75, ...pan });
const critical = (rho_l: number, rho_v: number, g: number): number =>
  look('critical-heat-flux-pool', { C: 0.149, h_fg: 2257e3, rho_l, rho_v, sigma: 0.0589, g }) / 1e6;

describe('pool boiling of water', () => {
  checkPrinted([
    ['heat from a copper pan at 118 °C, kW', () => copper() / 1000, '59.1', incropera('Example 10.1, p. 632')],
    ['its steam, kg/h', () => (copper() / 2257e3) * 3600, '94', incropera('Example 10.1, p. 632')],
    ['its critical flux, MW/m²', () => critical(957.9, 0.5956, 9.81), '1.26', incropera('Example 10.1, p. 632')],
    ['heat from a stainless pan at 108 °C, W', steel, '5095', cengel('Example 10-1')],
    ['its steam, g/s', () => (steel() / 2257e3) * 1000, '2.26', cengel('Example 10-1')],
    ['peak flux, MW/m²', () => critical(957.6 + 0.597, 0.597, 9.8), '1.26', lienhard('Example 9.5, p. 481')],
  ]);
});
