/**
 * Forced flow in straight tubes against independent evaluations and textbook examples. Every check of it handed to the
 * project is here.
 */
import { describe } from 'vitest';
import { checkPublished, look } from '../sim/transfer/published-rows.ts';

const library = 'python ht 1.0.7';
const long = { Re: 1000, Pr: 7, D: 0.01, L: 2 };
const short = { Re: 500, Pr: 5, D: 0.008, L: 1 };
const at = (name: string, values: Readonly<Record<string, number>>) => () => look(name, values);

const siederTate = (): number => {
  const Re = (980 * 2.44 * 0.0266) / 4.32e-4;
  return (look('nusselt-sieder-tate', { Re, Pr: 2.72, mu: 4.32e-4, mu_w: 3.56e-4 }) * 0.663) / 0.0266;
};
const wallAtConstantFlux = (): readonly number[] => {
  const L = (0.01 * 4178 * 60) / (2000 * Math.PI * 0.06);
  const h = (4.364 * 0.67) / 0.06;
  return [L, 80 + 2000 / h];
};

describe('flow in a straight tube', () => {
  checkPublished([
    [
      'coolant 025',
      'Dittus–Boelter at Re 10⁴',
      at('nusselt-dittus-boelter', { Re: 1e4, Pr: 5, n: 0.4 }),
      69.393028,
      1e-5,
      library,
    ],
    [
      'coolant 026',
      'Dittus–Boelter at Re 3·10⁴',
      at('nusselt-dittus-boelter', { Re: 3e4, Pr: 4, n: 0.4 }),
      152.84416,
      1e-5,
      library,
    ],
    ['coolant 028', 'Gnielinski at Re 5000', at('nusselt-gnielinski', { Re: 5000, Pr: 6 }), 38.221917, 1e-5, library],
    ['coolant 029', 'Gnielinski at Re 12 000', at('nusselt-gnielinski', { Re: 12000, Pr: 5 }), 82.48705, 1e-5, library],
    ['coolant 032', 'Hausen in a 2 m tube', at('nusselt-hausen', long), 5.2972606, 1e-5, library],
    ['coolant 033', 'Baehr and Stephan in a 2 m tube', at('nusselt-baehr-stephan', long), 5.6028857, 1e-5, library],
    [
      'coolant 034',
      'the VDI laminar form in a 2 m tube',
      at('nusselt-laminar-tube', long),
      5.2610333,
      1e-5,
      'VDI Heat Atlas G1, independent evaluation',
    ],
    ['coolant 035', 'Hausen in a 1 m tube', at('nusselt-hausen', short), 4.6918813, 1e-5, library],
    ['coolant 036', 'Baehr and Stephan in a 1 m tube', at('nusselt-baehr-stephan', short), 4.8956407, 1e-5, library],
    [
      'coolant 037',
      'the VDI laminar form in a 1 m tube',
      at('nusselt-laminar-tube', short),
      4.6316786,
      1e-5,
      'VDI Heat Atlas G1, independent evaluation',
    ],
    [
      'coolant 041',
      'the mean coefficient from an outlet temperature',
      at('coefficient-from-outlet-temperature', { C: 0.25 * 4178, T_in: 15, T_out: 57, T_w: 100, D: 0.05, L: 6 }),
      755.21749,
      0.005,
      'Incropera et al. 6e Example 8.3 p. 503',
    ],
    [
      'coolant 042',
      'length and exit wall temperature at constant flux',
      wallAtConstantFlux,
      [6.6494935, 121.04136],
      0.01,
      'Incropera et al. 6e Example 8.4 p. 506, with its own Nu = 4.364',
    ],
    [
      'coolant 045',
      'Sieder–Tate for hot water in a pipe',
      siederTate,
      13153.088,
      0.015,
      'Geankoplis 3e Example 4.5-2 p. 241',
    ],
  ]);
});
