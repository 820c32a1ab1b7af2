import { alternative, correlation, type Argument, type Correlation } from '../correlation.ts';
import { lerp } from '../maths/interpolate.ts';
import { LAMINAR_RE, TURBULENT_RE, nusseltTurbulentVdi, turbulentShare } from './tube-flow.ts';

/**
 * Flow in the gap between two concentric tubes, the inner one heated, the outer insulated: the jacket of a straight
 * condenser. Reynolds and Nusselt numbers are on the gap's hydraulic diameter D_h = D_o − D_i. Forced flow only: a
 * hot inner wall and a curved gap raise the true laminar value, by perhaps 1.5 to 2, so it is a lower bound.
 */

/** Nusselt number of developed laminar flow: entry `nusselt-annulus-developed`. */
export const nusseltAnnulusDeveloped = (ratio: number): number => 3.66 + 1.2 * Math.pow(ratio, -0.8);

/** Mean Nusselt number of laminar flow with thermal entry: entry `nusselt-annulus-laminar`. */
export const nusseltAnnulusLaminar = (Re: number, Pr: number, D_i: number, D_o: number, L: number): number => {
  const ratio = D_i / D_o;
  const developed = nusseltAnnulusDeveloped(ratio);
  const shape = 1.615 * (1 + 0.14 / Math.sqrt(ratio));
  const entry = (shape * shape * shape * Math.max(0, Re) * Pr * (D_o - D_i)) / L;
  return Math.cbrt(developed * developed * developed + entry);
};

/** Mean Nusselt number at any Reynolds number: entry `nusselt-annulus`. */
export const nusseltAnnulus = (Re: number, Pr: number, D_i: number, D_o: number, L: number): number => {
  if (Re <= LAMINAR_RE) return nusseltAnnulusLaminar(Re, Pr, D_i, D_o, L);
  const factor = 0.86 * Math.pow(D_i / D_o, -0.16);
  const gap = D_o - D_i;
  if (Re >= TURBULENT_RE) return factor * nusseltTurbulentVdi(Re, Pr, gap, L);
  const share = turbulentShare(Re);
  return (
    (1 - share) * nusseltAnnulusLaminar(LAMINAR_RE, Pr, D_i, D_o, L) +
    share * factor * nusseltTurbulentVdi(TURBULENT_RE, Pr, gap, L)
  );
};

/** D_i/D_o against the exact developed Nusselt number, inner wall isothermal, outer adiabatic. */
const EXACT_RATIO = [0.05, 0.1, 0.25, 0.5, 0.6, 0.75, 1] as const;
const EXACT_NUSSELT = [17.46, 11.56, 7.37, 5.74, 5.44895, 5.15574, 4.86] as const;

/**
 * Exact Nusselt number of developed laminar flow: entry `nusselt-annulus-exact`. Interpolated in the departure from
 * the VDI form, which carries the steep rise at small ratios.
 */
export const nusseltAnnulusExact = (ratio: number): number => {
  let above = 1;
  while (above < EXACT_RATIO.length - 1 && (EXACT_RATIO[above] ?? 1) < ratio) above += 1;
  const low = EXACT_RATIO[above - 1] ?? 0;
  const high = EXACT_RATIO[above] ?? 1;
  const departureLow = (EXACT_NUSSELT[above - 1] ?? 0) / nusseltAnnulusDeveloped(low);
  const departureHigh = (EXACT_NUSSELT[above] ?? 0) / nusseltAnnulusDeveloped(high);
  const share = Math.min(1, Math.max(0, (ratio - low) / (high - low)));
  return lerp(departureLow, departureHigh, share) * nusseltAnnulusDeveloped(ratio);
};

const ratio = (low: number): Argument => ({
  unit: '1',
  says: 'inner tube outside diameter over outer tube bore',
  range: [low, 1],
});
const gapFlow = (low: number, high: number): Readonly<Record<string, Argument>> => ({
  Re: { unit: '1', says: 'Reynolds number on the hydraulic diameter', range: [low, high] },
  Pr: { unit: '1', says: 'Prandtl number' },
  D_i: { unit: 'm', says: 'outside diameter of the inner tube' },
  D_o: { unit: 'm', says: 'bore of the outer tube' },
  L: { unit: 'm', says: 'length' },
});
const nusselt = { symbol: 'Nu', unit: '1' };
const vdi = 'VDI Heat Atlas, section G2, 2006, case 1 (inner wall heated, outer insulated)';

export const annulusCorrelations: readonly Correlation[] = [
  correlation({
    name: 'nusselt-annulus-developed',
    says: 'Heat transfer from the inner wall of an annulus, laminar and fully developed.',
    arguments: { ratio: ratio(0.02) },
    result: nusselt,
    tex: 'Nu_1 = 3.66+1.2\\left(\\frac{D_i}{D_o}\\right)^{-0.8}',
    source: vdi,
    outside: 'evaluated',
    compute: nusseltAnnulusDeveloped,
  }),
  correlation({
    name: 'nusselt-annulus-laminar',
    says: 'Mean heat transfer from the inner wall of an annulus, laminar with thermal entry; a lower bound.',
    arguments: gapFlow(0, LAMINAR_RE),
    result: nusselt,
    tex: 'Nu = \\left\\{Nu_1^3+\\left[1.615\\left(1+0.14(D_i/D_o)^{-1/2}\\right)(Re\\,Pr\\,D_h/L)^{1/3}\\right]^3\\right\\}^{1/3}',
    source: vdi,
    outside: 'evaluated; turbulence is not counted above Re 2300; the developed value without flow',
    compute: nusseltAnnulusLaminar,
  }),
  correlation({
    name: 'nusselt-annulus',
    says: 'Mean heat transfer from the inner wall of an annulus, laminar to turbulent without a jump.',
    arguments: gapFlow(0, 1e6),
    result: nusselt,
    tex: 'Nu = (1-\\gamma)Nu_{lam,2300}+\\gamma\\,0.86\\left(\\frac{D_i}{D_o}\\right)^{-0.16}Nu_{tube,10^4}',
    source: `${vdi}; later editions use another friction form`,
    outside: 'evaluated; laminar values are a lower bound (no buoyancy, no curvature)',
    compute: nusseltAnnulus,
  }),
  alternative({
    name: 'nusselt-annulus-exact',
    says: 'Exact heat transfer from the isothermal inner wall of an annulus, laminar and fully developed.',
    arguments: { ratio: ratio(0.05) },
    result: nusselt,
    tex: 'Nu = Nu_{table}(D_i/D_o)',
    source: 'Kays and Perkins 1972, as Incropera et al. 6e Table 8.2, with 0.6 and 0.75 from an eigenvalue solution',
    outside: 'the departure from the VDI form at the nearer end of the table is kept',
    compute: nusseltAnnulusExact,
  }),
];
