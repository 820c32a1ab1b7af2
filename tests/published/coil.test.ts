/**
 * Flow filling a coiled tube, against independent evaluations. Every check of it handed to the project is here.
 */
import { describe } from 'vitest';
import { checkPublished, look } from '../sim/transfer/published-rows.ts';

const tight = { d: 0.01, D_coil: 0.2 };
const fluids = 'python fluids 1.1.0';
const at = (name: string, values: Readonly<Record<string, number>>) => () => look(name, { ...values, ...tight });
const vdi = 'VDI Heat Atlas G3, independent evaluation';
const manlapaz = 'Manlapaz and Churchill 1981, constants from memory';
const coulson = (): number => {
  const Re = (1315 * 0.022) / 1.08e-3;
  const Pr = (4180 * 1.08e-3) / 0.59;
  const straight = (look('nusselt-dittus-boelter', { Re, Pr, n: 0.4 }) * 0.59) / 0.022;
  return straight * look('coil-enhancement-factor', { d: 0.022, D_coil: 0.8 });
};

describe('flow in a coiled tube', () => {
  checkPublished([
    [
      'coolant 061',
      'the critical Reynolds number of a 10 mm tube on 200 mm',
      () => look('critical-reynolds-coil', tight),
      7437.6296,
      1e-5,
      fluids,
    ],
    [
      'coolant 062',
      'the critical Reynolds number of a 15 mm tube on 250 mm',
      () => look('critical-reynolds-coil', { d: 0.015, D_coil: 0.25 }),
      7876.9192,
      1e-5,
      fluids,
    ],
    [
      'coolant 065',
      'the critical Reynolds number of Ito',
      () => look('critical-reynolds-coil-ito', tight),
      7668.323,
      1e-5,
      fluids,
    ],
    [
      'coolant 067',
      'laminar heat transfer at Re 1500',
      at('nusselt-coil-laminar', { Re: 1500, Pr: 6 }),
      23.112729,
      1e-4,
      vdi,
    ],
    [
      'coolant 068',
      'Manlapaz and Churchill at Re 1500',
      at('nusselt-coil-manlapaz-churchill', { Re: 1500, Pr: 6 }),
      18.993377,
      0.03,
      manlapaz,
    ],
    [
      'coolant 069',
      'laminar heat transfer at Re 4000',
      at('nusselt-coil-laminar', { Re: 4000, Pr: 5 }),
      38.713096,
      1e-4,
      vdi,
    ],
    [
      'coolant 070',
      'Manlapaz and Churchill at Re 4000',
      at('nusselt-coil-manlapaz-churchill', { Re: 4000, Pr: 5 }),
      30.195193,
      0.03,
      manlapaz,
    ],
    [
      'coolant 073',
      'turbulent heat transfer',
      at('nusselt-coil-turbulent', { Re: 25000, Pr: 5 }),
      195.87851,
      1e-4,
      vdi,
    ],
    [
      'coolant 074',
      'Seban and McLaughlin',
      at('nusselt-coil-seban-mclaughlin', { Re: 25000, Pr: 5 }),
      177.60772,
      1e-4,
      'Seban and McLaughlin 1963, independent evaluation',
    ],
    [
      'coolant 075',
      'Mori and Nakayama',
      at('nusselt-coil-mori-nakayama', { Re: 25000, Pr: 5 }),
      173.81111,
      1e-4,
      'python ht 1.0.7',
    ],
    ['coolant 076', 'turbulent friction', at('friction-factor-coil', { Re: 25000 }), 0.029966517, 1e-4, fluids],
    ['coolant 081', 'laminar friction', at('friction-factor-coil', { Re: 2000 }), 0.1036883, 1e-4, fluids],
    [
      'coolant 083',
      'the coefficient inside a coil',
      coulson,
      5319.9276,
      0.01,
      'Coulson and Richardson vol. 1, 6e, Example 9.24 p. 498',
    ],
  ]);
});
