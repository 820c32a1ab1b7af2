import { alternative, type Argument, type Correlation } from '../correlation.ts';
import { nusseltVerticalPlate } from './natural-convection.ts';

/** Further natural-convection correlations, for comparison. No run uses them. */

/** Nusselt number of a horizontal cylinder in five ranges: entry `nusselt-horizontal-cylinder-morgan`. */
export const nusseltHorizontalCylinderMorgan = (Ra: number): number => {
  const size = Math.max(0, Ra);
  if (size < 1e-2) return 0.675 * Math.pow(size, 0.058);
  if (size < 1e2) return 1.02 * Math.pow(size, 0.148);
  if (size < 1e4) return 0.85 * Math.pow(size, 0.188);
  if (size < 1e7) return 0.48 * Math.pow(size, 0.25);
  return 0.125 * Math.cbrt(size);
};

/** Nusselt number of a horizontal cylinder, laminar: entry `nusselt-horizontal-cylinder-mcadams`. */
export const nusseltHorizontalCylinderMcAdams = (Ra: number): number => 0.53 * Math.sqrt(Math.sqrt(Math.max(0, Ra)));

/** Nusselt number of a helical coil with upright axis in air: entry `nusselt-coil-xin-ebadian`. */
export const nusseltCoilXinEbadian = (Ra: number): number => 0.29 * Math.pow(Math.max(0, Ra), 0.293);

/** Nusselt number of a slender upright cylinder: entry `nusselt-slender-vertical-cylinder`. */
export const nusseltSlenderCylinder = (Gr: number, Pr: number, L: number, D: number): number => {
  const plate = nusseltVerticalPlate(Gr * Pr, Pr);
  if (!(Gr > 0)) return plate;
  const B = 0.0571322 + 0.20305 * Math.pow(Pr, -0.43);
  const C = 0.9165 - 0.0043 * Math.sqrt(Pr) + 0.01333 * Math.log(Pr) + 0.0004809 / Pr;
  return plate * (1 + B * Math.pow((Math.sqrt(32) * Math.pow(Gr, -0.25) * L) / D, C));
};

const rayleigh = (low: number, high: number): Argument => ({
  unit: '1',
  says: 'Rayleigh number on the diameter',
  range: [low, high],
});
const nusselt = { symbol: 'Nu', unit: '1' };
const outside = 'evaluated';

export const naturalConvectionAlternatives: readonly Correlation[] = [
  alternative({
    name: 'nusselt-horizontal-cylinder-morgan',
    says: 'Mean natural convection round a horizontal cylinder in five ranges.',
    arguments: { Ra: rayleigh(1e-10, 1e12) },
    result: nusselt,
    tex: 'Nu = \\begin{cases}0.675Ra^{0.058} & Ra<10^{-2}\\\\ 1.02Ra^{0.148} & Ra<10^2\\\\ 0.85Ra^{0.188} & Ra<10^4\\\\ 0.48Ra^{1/4} & Ra<10^7\\\\ 0.125Ra^{1/3} & Ra\\ge10^7\\end{cases}',
    source: 'Morgan, Advances in Heat Transfer 11 (1975) 199–264; Incropera et al. 6e Table 9.1',
    outside: 'the end laws are used beyond; 10–20 % below Churchill–Chu in water',
    compute: nusseltHorizontalCylinderMorgan,
  }),
  alternative({
    name: 'nusselt-horizontal-cylinder-mcadams',
    says: 'Mean laminar natural convection round a horizontal cylinder.',
    arguments: { Ra: rayleigh(1e4, 1e9) },
    result: nusselt,
    tex: 'Nu = 0.53Ra^{1/4}',
    source: 'McAdams 1954; Holman (SI) Table 7-1',
    outside,
    compute: nusseltHorizontalCylinderMcAdams,
  }),
  alternative({
    name: 'nusselt-coil-xin-ebadian',
    says: 'Mean natural convection from a helical coil with upright axis in air.',
    arguments: { Ra: rayleigh(5e3, 1e5) },
    result: nusselt,
    tex: 'Nu = 0.290Ra^{0.293}',
    source: 'Xin and Ebadian, J. Thermophys. Heat Transfer 10(2) (1996) 297–302',
    outside: 'evaluated; coils in water lie far above the range',
    compute: nusseltCoilXinEbadian,
  }),
  alternative({
    name: 'nusselt-slender-vertical-cylinder',
    says: 'Mean natural convection from an upright cylinder too slender to count as a plate.',
    arguments: {
      Gr: { unit: '1', says: 'Grashof number on the height' },
      Pr: { unit: '1', says: 'Prandtl number', range: [0.01, 100] },
      L: { unit: 'm', says: 'height' },
      D: { unit: 'm', says: 'diameter' },
    },
    result: nusselt,
    tex: 'Nu = Nu_{plate}\\left\\{1+B\\left[\\sqrt{32}\\,Gr^{-1/4}\\frac{L}{D}\\right]^C\\right\\},\\quad B=0.0571322+0.20305Pr^{-0.43},\\ C=0.9165-0.0043\\sqrt{Pr}+0.01333\\ln Pr+\\frac{0.0004809}{Pr}',
    source: 'Popiel, Heat Transfer Engineering 29 (2008) 521–536',
    outside: 'evaluated; the plate’s limit without buoyancy',
    compute: nusseltSlenderCylinder,
  }),
];
