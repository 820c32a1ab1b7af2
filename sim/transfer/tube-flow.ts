import { type Argument, type Correlation, positionalCorrelation } from '../correlation.ts';

/** Forced flow of one phase in a round tube: laminar with thermal entry, turbulent, and the blend between. */

/** Below this Reynolds number tube flow is taken as laminar, above `TURBULENT_RE` as fully turbulent. */
export const LAMINAR_RE = 2300;
export const TURBULENT_RE = 1e4;

/**
 * Mean Nusselt number of laminar flow in a tube with thermal entry at constant wall temperature (VDI Heat Atlas G1),
 * pure number: [3.66³ + 0.7³ + (1.615 (Re Pr D/L)^⅓ − 0.7)³]^⅓.
 *
 * @param Re Reynolds number; @param Pr Prandtl number; @param D bore, m; @param L length, m (positive)
 * Range: Re < 2300, Re Pr D/L > 0.1. Re ≤ 0 gives the long-tube limit 3.66. Source: see the entry.
 */
export const nusseltLaminarTube = (Re: number, Pr: number, D: number, L: number): number => {
  const entry = 1.615 * Math.cbrt((Math.max(0, Re) * Pr * D) / L) - 0.7;
  return Math.cbrt(3.66 * 3.66 * 3.66 + 0.7 * 0.7 * 0.7 + entry * entry * entry);
};

/**
 * Darcy friction factor of turbulent flow in a smooth tube (Petukhov), pure number: (0.79 ln Re − 1.64)⁻².
 * Range: 3000 < Re < 5·10⁶; below Re = 1000 the value at 1000. Source: see the entry.
 */
export const frictionPetukhov = (Re: number): number => {
  const root = 0.79 * Math.log(Math.max(1000, Re)) - 1.64;
  return 1 / (root * root);
};

/**
 * Nusselt number of turbulent flow in a smooth tube, fully developed (Gnielinski 1976), pure number:
 * (f/8)(Re − 1000) Pr / [1 + 12.7 √(f/8) (Pr^⅔ − 1)] with f of `frictionPetukhov`.
 *
 * Range: 3000 < Re < 5·10⁶, 0.5 < Pr < 2000. At Re ≤ 1000, where the formula would change sign, 0.
 * Source: see the entry.
 */
export const nusseltGnielinski = (Re: number, Pr: number): number => {
  if (!(Re > 1000)) return 0;
  const eighth = frictionPetukhov(Re) / 8;
  const Pr23 = Math.cbrt(Pr * Pr);
  return (eighth * (Re - 1000) * Pr) / (1 + 12.7 * Math.sqrt(eighth) * (Pr23 - 1));
};

/**
 * Mean Nusselt number of turbulent flow in a tube of finite length (VDI Heat Atlas G2, 2006, for its annulus),
 * pure number: (ξ/8) Re Pr / [1 + 12.7 √(ξ/8) (Pr^⅔ − 1)] · [1 + (D/L)^⅔], ξ = (1.82 log₁₀ Re − 1.64)⁻².
 *
 * Range: 10⁴ < Re < 10⁶, 0.6 < Pr < 1000. Below Re = 1000 the value falls in proportion to Re. Source: the entry.
 */
export const nusseltTurbulentVdi = (Re: number, Pr: number, D: number, L: number): number => {
  const root = 1.82 * Math.log10(Math.max(1000, Re)) - 1.64;
  const eighth = 1 / (8 * root * root);
  const Pr23 = Math.cbrt(Pr * Pr);
  const entry = Math.cbrt((D * D) / (L * L));
  return ((eighth * Math.max(0, Re) * Pr) / (1 + 12.7 * Math.sqrt(eighth) * (Pr23 - 1))) * (1 + entry);
};

/**
 * Share of turbulence γ in the blend Nu = (1 − γ) Nu_laminar(2300) + γ Nu_turbulent(10⁴), 0–1 (VDI Heat Atlas G1).
 */
export const turbulentShare = (Re: number): number =>
  Math.min(1, Math.max(0, (Re - LAMINAR_RE) / (TURBULENT_RE - LAMINAR_RE)));

/**
 * Mean Nusselt number in a tube at any Reynolds number, pure number: VDI laminar below 2300, Gnielinski above 10⁴,
 * and between them the VDI linear blend of the two end values, so that there is no jump.
 *
 * @param Re Reynolds number; @param Pr Prandtl number; @param D bore, m; @param L length, m
 * Range: Pr 0.5–1000. Re ≤ 0 gives 3.66. Source: see the entry.
 */
export const nusseltTube = (Re: number, Pr: number, D: number, L: number): number => {
  if (Re <= LAMINAR_RE) return nusseltLaminarTube(Re, Pr, D, L);
  if (Re >= TURBULENT_RE) return nusseltGnielinski(Re, Pr);
  const share = turbulentShare(Re);
  return (1 - share) * nusseltLaminarTube(LAMINAR_RE, Pr, D, L) + share * nusseltGnielinski(TURBULENT_RE, Pr);
};

const reynolds = (low: number, high: number): Argument => ({
  unit: '1',
  says: 'Reynolds number on the bore',
  range: [low, high],
});
const prandtl: Argument = { unit: '1', says: 'Prandtl number' };
const tube: Readonly<Record<string, Argument>> = { D: { unit: 'm', says: 'bore' }, L: { unit: 'm', says: 'length' } };
const nusselt = { symbol: 'Nu', unit: '1' };

export const tubeFlowCorrelations: readonly Correlation[] = [
  positionalCorrelation(
    {
      name: 'nusselt-laminar-tube',
      says: 'Mean heat transfer of laminar flow in a tube with a developing temperature profile.',
      arguments: { Re: reynolds(0, LAMINAR_RE), Pr: prandtl, ...tube },
      result: nusselt,
      tex: 'Nu = \\left[3.66^3+0.7^3+\\left(1.615\\sqrt[3]{Re\\,Pr\\,D/L}-0.7\\right)^3\\right]^{1/3}',
      source: 'VDI Heat Atlas, section G1 (constant wall temperature)',
      outside: 'evaluated; turbulence is not counted above Re 2300',
    },
    nusseltLaminarTube,
  ),
  positionalCorrelation(
    {
      name: 'friction-factor-petukhov',
      says: 'Darcy friction factor of turbulent flow in a smooth tube.',
      arguments: { Re: reynolds(3000, 5e6) },
      result: { symbol: 'f', unit: '1' },
      tex: 'f = (0.79\\ln Re-1.64)^{-2}',
      source: 'Petukhov 1970; Incropera et al. 6e eq. 8.21',
      outside: 'below Re 1000 the value at 1000; otherwise evaluated',
    },
    frictionPetukhov,
  ),
  positionalCorrelation(
    {
      name: 'nusselt-gnielinski',
      says: 'Heat transfer of fully developed turbulent flow in a smooth tube.',
      arguments: { Re: reynolds(3000, 5e6), Pr: { ...prandtl, range: [0.5, 2000] } },
      result: nusselt,
      tex: 'Nu = \\frac{(f/8)(Re-1000)Pr}{1+12.7\\sqrt{f/8}\\,(Pr^{2/3}-1)}',
      source: 'Gnielinski, Int. Chem. Eng. 16 (1976) 359–368 with the friction factor of Petukhov',
      outside: 'zero at and below Re 1000; otherwise evaluated',
    },
    nusseltGnielinski,
  ),
  positionalCorrelation(
    {
      name: 'nusselt-turbulent-tube-vdi',
      says: 'Mean heat transfer of turbulent flow in a tube of finite length.',
      arguments: { Re: reynolds(1e4, 1e6), Pr: { ...prandtl, range: [0.6, 1000] }, ...tube },
      result: nusselt,
      tex: 'Nu = \\frac{(\\xi/8)Re\\,Pr}{1+12.7\\sqrt{\\xi/8}\\,(Pr^{2/3}-1)}\\left[1+(D/L)^{2/3}\\right],\\quad \\xi=(1.82\\log_{10}Re-1.64)^{-2}',
      source: 'VDI Heat Atlas, section G2, 2006, friction of Filonenko',
      outside: 'evaluated; below Re 1000 in proportion to Re',
    },
    nusseltTurbulentVdi,
  ),
  positionalCorrelation(
    {
      name: 'nusselt-tube',
      says: 'Mean heat transfer of one phase in a tube, laminar to turbulent without a jump.',
      arguments: { Re: reynolds(0, 5e6), Pr: prandtl, ...tube },
      result: nusselt,
      tex: 'Nu = (1-\\gamma)Nu_{lam,2300}+\\gamma Nu_{turb,10^4},\\quad \\gamma=\\frac{Re-2300}{10^4-2300}',
      source: 'VDI Heat Atlas, section G1 (blend), with Gnielinski above Re 10⁴',
      outside: 'evaluated',
    },
    nusseltTube,
  ),
];
