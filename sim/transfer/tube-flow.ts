import { correlation, forReaders, type Argument, type Correlation } from '../correlation.ts';

/** Forced flow of one phase in a round tube: laminar with thermal entry, turbulent, and the blend between. */

/** Below this Reynolds number tube flow is taken as laminar, above `TURBULENT_RE` as fully turbulent. */
export const LAMINAR_RE = 2300;
export const TURBULENT_RE = 1e4;

/** Mean Nusselt number of laminar flow with thermal entry: entry `nusselt-laminar-tube`. */
export const nusseltLaminarTube = (Re: number, Pr: number, D: number, L: number): number => {
  const entry = 1.615 * Math.cbrt((Math.max(0, Re) * Pr * D) / L) - 0.7;
  return Math.cbrt(3.66 * 3.66 * 3.66 + 0.7 * 0.7 * 0.7 + entry * entry * entry);
};

/** Darcy friction factor of turbulent flow in a smooth tube: entry `friction-factor-petukhov`. */
export const frictionPetukhov = (Re: number): number => {
  const root = 0.79 * Math.log(Math.max(1000, Re)) - 1.64;
  return 1 / (root * root);
};

/** Nusselt number of developed turbulent flow: entry `nusselt-gnielinski`. */
export const nusseltGnielinski = (Re: number, Pr: number): number => {
  if (!(Re > 1000)) return 0;
  const eighth = frictionPetukhov(Re) / 8;
  const Pr23 = Math.cbrt(Pr * Pr);
  return (eighth * (Re - 1000) * Pr) / (1 + 12.7 * Math.sqrt(eighth) * (Pr23 - 1));
};

/** Mean Nusselt number of turbulent flow in a tube of finite length: entry `nusselt-turbulent-tube-vdi`. */
export const nusseltTurbulentVdi = (Re: number, Pr: number, D: number, L: number): number => {
  const root = 1.82 * Math.log10(Math.max(1000, Re)) - 1.64;
  const eighth = 1 / (8 * root * root);
  const Pr23 = Math.cbrt(Pr * Pr);
  const entry = Math.cbrt((D * D) / (L * L));
  return ((eighth * Math.max(0, Re) * Pr) / (1 + 12.7 * Math.sqrt(eighth) * (Pr23 - 1))) * (1 + entry);
};

/** Share of turbulence in the blend between laminar and turbulent flow: entry `turbulent-share`. */
export const turbulentShare = (Re: number): number =>
  Math.min(1, Math.max(0, (Re - LAMINAR_RE) / (TURBULENT_RE - LAMINAR_RE)));

/** Mean Nusselt number in a tube at any Reynolds number: entry `nusselt-tube`. */
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
  forReaders({
    name: 'nusselt-laminar-tube',
    says: 'Mean heat transfer of laminar flow in a tube with a developing temperature profile.',
    arguments: { Re: reynolds(0, LAMINAR_RE), Pr: prandtl, ...tube },
    result: nusselt,
    tex: 'Nu = \\left[3.66^3+0.7^3+\\left(1.615\\sqrt[3]{Re\\,Pr\\,D/L}-0.7\\right)^3\\right]^{1/3}',
    source: 'VDI Heat Atlas, section G1 (constant wall temperature)',
    outside: 'evaluated; meant for Re Pr D/L above 0.1; turbulence is not counted above Re 2300; 3.66 without flow',
    compute: nusseltLaminarTube,
  }),
  correlation({
    name: 'friction-factor-petukhov',
    says: 'Darcy friction factor of turbulent flow in a smooth tube.',
    arguments: { Re: reynolds(3000, 5e6) },
    result: { symbol: 'f', unit: '1' },
    tex: 'f = (0.79\\ln Re-1.64)^{-2}',
    source: 'Petukhov 1970; Incropera et al. 6e eq. 8.21',
    outside: 'below Re 1000 the value at 1000; otherwise evaluated',
    compute: frictionPetukhov,
  }),
  correlation({
    name: 'nusselt-gnielinski',
    says: 'Heat transfer of fully developed turbulent flow in a smooth tube.',
    arguments: { Re: reynolds(3000, 5e6), Pr: { ...prandtl, range: [0.5, 2000] } },
    result: nusselt,
    tex: 'Nu = \\frac{(f/8)(Re-1000)Pr}{1+12.7\\sqrt{f/8}\\,(Pr^{2/3}-1)}',
    source: 'Gnielinski, Int. Chem. Eng. 16 (1976) 359–368 with the friction factor of Petukhov',
    outside: 'zero at and below Re 1000, where it would change sign; otherwise evaluated',
    compute: nusseltGnielinski,
  }),
  correlation({
    name: 'nusselt-turbulent-tube-vdi',
    says: 'Mean heat transfer of turbulent flow in a tube of finite length.',
    arguments: { Re: reynolds(1e4, 1e6), Pr: { ...prandtl, range: [0.6, 1000] }, ...tube },
    result: nusselt,
    tex: 'Nu = \\frac{(\\xi/8)Re\\,Pr}{1+12.7\\sqrt{\\xi/8}\\,(Pr^{2/3}-1)}\\left[1+(D/L)^{2/3}\\right],\\quad \\xi=(1.82\\log_{10}Re-1.64)^{-2}',
    source: 'VDI Heat Atlas, section G2, 2006, friction of Filonenko',
    outside: 'evaluated; below Re 1000 in proportion to Re',
    compute: nusseltTurbulentVdi,
  }),
  correlation({
    name: 'turbulent-share',
    says: 'Share of turbulence in the blend between laminar and turbulent flow in a tube.',
    arguments: { Re: reynolds(0, 5e6) },
    result: { symbol: '\\gamma', unit: '1' },
    tex: '\\gamma=\\frac{Re-2300}{10^4-2300}',
    source: 'VDI Heat Atlas, section G1 (blend)',
    outside: '0 below and 1 above',
    compute: turbulentShare,
  }),
  forReaders({
    name: 'nusselt-tube',
    says: 'Mean heat transfer of one phase in a tube, laminar to turbulent without a jump.',
    arguments: { Re: reynolds(0, 5e6), Pr: prandtl, ...tube },
    result: nusselt,
    tex: 'Nu = (1-\\gamma)Nu_{lam,2300}+\\gamma Nu_{turb,10^4},\\quad \\gamma=\\frac{Re-2300}{10^4-2300}',
    source: 'VDI Heat Atlas, section G1 (blend), with Gnielinski above Re 10⁴',
    outside: 'evaluated; 3.66 without flow',
    compute: nusseltTube,
  }),
];
