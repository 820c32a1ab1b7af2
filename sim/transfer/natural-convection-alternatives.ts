import { type Argument, type Correlation, positionalCorrelation } from '../correlation.ts';
import { nusseltVerticalPlate } from './natural-convection.ts';

/** Further natural-convection correlations, for comparison. NOT USED BY THE ENGINE. */

/**
 * Mean Nusselt number of a horizontal cylinder in five ranges (Morgan 1975), pure number. 10–20 % below
 * Churchill–Chu in water. Range: Ra 10⁻¹⁰–10¹²; the end laws are used beyond. Source: see the entry.
 */
export const nusseltHorizontalCylinderMorgan = (Ra: number): number => {
  const size = Math.max(0, Ra);
  if (size < 1e-2) return 0.675 * Math.pow(size, 0.058);
  if (size < 1e2) return 1.02 * Math.pow(size, 0.148);
  if (size < 1e4) return 0.85 * Math.pow(size, 0.188);
  if (size < 1e7) return 0.48 * Math.pow(size, 0.25);
  return 0.125 * Math.cbrt(size);
};

/**
 * Mean Nusselt number of a horizontal cylinder in laminar flow, 0.53 Ra^¼ (McAdams), pure number.
 * Range: Ra 10⁴–10⁹; evaluated outside. Source: see the entry.
 */
export const nusseltHorizontalCylinderMcAdams = (Ra: number): number => 0.53 * Math.sqrt(Math.sqrt(Math.max(0, Ra)));

/**
 * Mean Nusselt number on the tube diameter of a helical coil with upright axis in air (Xin and Ebadian 1996), pure
 * number: 0.290 Ra^0.293. Range: Ra 5·10³–10⁵, far below coils in water; evaluated outside. Source: see the entry.
 */
export const nusseltCoilXinEbadian = (Ra: number): number => 0.29 * Math.pow(Math.max(0, Ra), 0.293);

/**
 * Mean Nusselt number on the height of a slender upright cylinder (Popiel 2008), pure number: the plate's value
 * times 1 + B [√32 Gr^−¼ L/D]^C, B = 0.0571322 + 0.20305 Pr^−0.43,
 * C = 0.9165 − 0.0043 √Pr + 0.01333 ln Pr + 0.0004809/Pr.
 *
 * @param Gr Grashof number on the height; @param L height, m; @param D diameter, m
 * Range: Pr 0.01–100; Gr ≤ 0 gives the plate's limit. Source: see the entry.
 */
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
const outside = 'evaluated; comparison only, not used by the engine';

export const naturalConvectionCrossChecks: readonly Correlation[] = [
  positionalCorrelation(
    {
      name: 'nusselt-horizontal-cylinder-morgan',
      says: 'Mean natural convection round a horizontal cylinder in five ranges; comparison only.',
      arguments: { Ra: rayleigh(1e-10, 1e12) },
      result: nusselt,
      tex: 'Nu = C\\,Ra^{n}',
      source: 'Morgan, Advances in Heat Transfer 11 (1975) 199–264; Incropera et al. 6e Table 9.1',
      outside,
    },
    nusseltHorizontalCylinderMorgan,
  ),
  positionalCorrelation(
    {
      name: 'nusselt-horizontal-cylinder-mcadams',
      says: 'Mean laminar natural convection round a horizontal cylinder; comparison only.',
      arguments: { Ra: rayleigh(1e4, 1e9) },
      result: nusselt,
      tex: 'Nu = 0.53Ra^{1/4}',
      source: 'McAdams 1954; Holman (SI) Table 7-1',
      outside,
    },
    nusseltHorizontalCylinderMcAdams,
  ),
  positionalCorrelation(
    {
      name: 'nusselt-coil-xin-ebadian',
      says: 'Mean natural convection from a helical coil in air; comparison only.',
      arguments: { Ra: rayleigh(5e3, 1e5) },
      result: nusselt,
      tex: 'Nu = 0.290Ra^{0.293}',
      source: 'Xin and Ebadian, J. Thermophys. Heat Transfer 10(2) (1996) 297–302',
      outside: 'evaluated; far below coils in water, comparison only, not used by the engine',
    },
    nusseltCoilXinEbadian,
  ),
  positionalCorrelation(
    {
      name: 'nusselt-slender-vertical-cylinder',
      says: 'Mean natural convection from an upright cylinder too slender to count as a plate; comparison only.',
      arguments: {
        Gr: { unit: '1', says: 'Grashof number on the height' },
        Pr: { unit: '1', says: 'Prandtl number', range: [0.01, 100] },
        L: { unit: 'm', says: 'height' },
        D: { unit: 'm', says: 'diameter' },
      },
      result: nusselt,
      tex: 'Nu = Nu_{plate}\\left\\{1+B\\left[\\sqrt{32}\\,Gr^{-1/4}\\frac{L}{D}\\right]^C\\right\\}',
      source: 'Popiel, Heat Transfer Engineering 29 (2008) 521–536',
      outside,
    },
    nusseltSlenderCylinder,
  ),
];
