/**
 * Flow in an annulus with a heated inner wall, against exact solutions and an independent evaluation of the VDI form.
 * Every check of it handed to the project is here.
 */
import { describe } from 'vitest';
import { checkPublished, look } from '../sim/transfer/published-rows.ts';

const kays = 'Kays and Perkins, as Incropera et al. 6e Table 8.2';
const eigenvalue = 'a finite-volume eigenvalue solution on 4000 cells';
const vdi = 'VDI Heat Atlas G2 (2006) case 1, independent evaluation';
const exact = (ratio: number) => () => look('nusselt-annulus-exact', { ratio });
const gap = (Re: number, Pr: number, D_i: number, D_o: number, L: number) => () =>
  look('nusselt-annulus', { Re, Pr, D_i, D_o, L });

describe('flow in an annulus', () => {
  checkPublished([
    ['coolant 046', 'the exact laminar value at ratio 0.05', exact(0.05), 17.46, 0.003, kays],
    ['coolant 047', 'the exact laminar value at ratio 0.25', exact(0.25), 7.37, 0.003, kays],
    ['coolant 048', 'the exact laminar value at ratio 0.5', exact(0.5), 5.74, 0.003, kays],
    ['coolant 049', 'the exact laminar value at ratio 1', exact(1), 4.86, 0.003, kays],
    ['coolant 051', 'the exact laminar value at ratio 0.6', exact(0.6), 5.44895, 0.003, eigenvalue],
    ['coolant 052', 'the exact laminar value at ratio 0.75', exact(0.75), 5.15574, 0.003, eigenvalue],
    [
      'coolant 054',
      'the developed laminar value at ratio 0.6',
      () => look('nusselt-annulus-developed', { ratio: 0.6 }),
      5.4657609,
      1e-5,
      vdi,
    ],
    ['coolant 056', 'laminar flow with entry', gap(800, 6, 0.012, 0.02, 2), 6.6675838, 0.01, vdi],
    ['coolant 057', 'turbulent flow', gap(12000, 5, 0.012, 0.02, 2), 86.01326, 0.01, vdi],
    ['coolant 058', 'flow between laminar and turbulent', gap(5000, 6, 0.012, 0.022, 3), 33.437045, 0.01, vdi],
  ]);
});
