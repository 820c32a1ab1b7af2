import { forReaders, type Argument, type Correlation } from '../correlation.ts';
import { frictionFactor } from './pressure-drop.ts';

/**
 * One liquid filling a coiled tube. Curvature delays turbulence and mixes the flow. Not for the condensing side of a
 * coil, where steam and a rivulet of condensate share the bore, nor for the outside of the coil.
 */

/** Above this Reynolds number Schmidt's turbulent coil relation holds. */
export const COIL_TURBULENT_RE = 2.2e4;

/** Reynolds number at which flow in a coiled tube turns turbulent: entry `critical-reynolds-coil`. */
export const criticalReynoldsCoil = (d: number, D_coil: number): number =>
  2300 * (1 + 8.6 * Math.pow(d / D_coil, 0.45));

/** Nusselt number of laminar flow in a coiled tube: entry `nusselt-coil-laminar`. */
export const nusseltCoilLaminar = (Re: number, Pr: number, d: number, D_coil: number): number => {
  const ratio = d / D_coil;
  const m = 0.5 + 0.2903 * Math.pow(ratio, 0.194);
  return 3.66 + 0.08 * (1 + 0.8 * Math.pow(ratio, 0.9)) * Math.pow(Math.max(0, Re), m) * Math.cbrt(Pr);
};

/** Nusselt number of turbulent flow in a coiled tube: entry `nusselt-coil-turbulent`. */
export const nusseltCoilTurbulent = (Re: number, Pr: number, d: number, D_coil: number): number => {
  if (!(Re > 0)) return 0;
  const eighth = (0.3164 / Math.sqrt(Math.sqrt(Re)) + 0.03 * Math.sqrt(d / D_coil)) / 8;
  return (eighth * Re * Pr) / (1 + 12.7 * Math.sqrt(eighth) * (Math.cbrt(Pr * Pr) - 1));
};

/** Nusselt number in a coiled tube at any Reynolds number: entry `nusselt-coil`. */
export const nusseltCoil = (Re: number, Pr: number, d: number, D_coil: number): number => {
  const critical = criticalReynoldsCoil(d, D_coil);
  if (Re <= critical) return nusseltCoilLaminar(Re, Pr, d, D_coil);
  if (Re >= COIL_TURBULENT_RE) return nusseltCoilTurbulent(Re, Pr, d, D_coil);
  const share = (Re - critical) / (COIL_TURBULENT_RE - critical);
  return (
    (1 - share) * nusseltCoilLaminar(critical, Pr, d, D_coil) +
    share * nusseltCoilTurbulent(COIL_TURBULENT_RE, Pr, d, D_coil)
  );
};

/** Darcy friction factor in a smooth coiled tube: entry `friction-factor-coil`. */
export const frictionFactorCoil = (Re: number, d: number, D_coil: number): number => {
  if (!(Re > 0)) return 0;
  const ratio = d / D_coil;
  if (Re <= criticalReynoldsCoil(d, D_coil)) {
    const exponent = 1 - 0.644 * Math.pow(ratio, 0.312);
    return Math.min(Number.MAX_VALUE, 64 / Re) * (1 + 0.14 * Math.pow(ratio, 0.97) * Math.pow(Re, exponent));
  }
  const curvature =
    Re < COIL_TURBULENT_RE
      ? (28800 / Re) * Math.pow(ratio, 0.62)
      : 0.0823 * (1 + ratio) * Math.pow(ratio, 0.53) * Math.pow(Re, 0.25);
  return frictionFactor(Re, 0) * (1 + curvature);
};

const reynolds = (low: number, high: number): Argument => ({
  unit: '1',
  says: 'Reynolds number on the bore',
  range: [low, high],
});
const prandtl: Argument = { unit: '1', says: 'Prandtl number' };
const winding: Readonly<Record<string, Argument>> = {
  d: { unit: 'm', says: 'bore of the tube' },
  D_coil: { unit: 'm', says: 'diameter of the winding' },
};
const nusselt = { symbol: 'Nu', unit: '1' };

export const coilFlowCorrelations: readonly Correlation[] = [
  forReaders({
    name: 'critical-reynolds-coil',
    says: 'Reynolds number at which flow in a coiled tube turns turbulent.',
    arguments: winding,
    result: { symbol: 'Re_{crit}', unit: '1' },
    tex: 'Re_{crit} = 2300\\left[1+8.6\\left(\\frac{d}{D}\\right)^{0.45}\\right]',
    source: 'Schmidt, Chemie Ingenieur Technik 39 (1967) 781; VDI Heat Atlas, section G3',
    outside: 'evaluated; supported for d/D 0.01–0.25',
    compute: criticalReynoldsCoil,
  }),
  forReaders({
    name: 'nusselt-coil-laminar',
    says: 'Heat transfer of laminar flow filling a coiled tube.',
    arguments: { Re: reynolds(0, 2e4), Pr: prandtl, ...winding },
    result: nusselt,
    tex: 'Nu = 3.66+0.08\\left[1+0.8(d/D)^{0.9}\\right]Re^{m}Pr^{1/3},\\quad m=0.5+0.2903(d/D)^{0.194}',
    source: 'Schmidt 1967; VDI Heat Atlas, section G3, without the wall viscosity factor',
    outside: 'evaluated; meant below the critical Reynolds number; 3.66 without flow',
    compute: nusseltCoilLaminar,
  }),
  forReaders({
    name: 'nusselt-coil-turbulent',
    says: 'Heat transfer of turbulent flow filling a coiled tube.',
    arguments: { Re: reynolds(COIL_TURBULENT_RE, 2e5), Pr: prandtl, ...winding },
    result: nusselt,
    tex: 'Nu = \\frac{(\\xi/8)Re\\,Pr}{1+12.7\\sqrt{\\xi/8}(Pr^{2/3}-1)},\\quad \\xi=\\frac{0.3164}{Re^{0.25}}+0.03\\sqrt{d/D}',
    source: 'Gnielinski 1986; VDI Heat Atlas, section G3',
    outside: 'evaluated; zero without flow',
    compute: nusseltCoilTurbulent,
  }),
  forReaders({
    name: 'nusselt-coil',
    says: 'Heat transfer of one liquid filling a coiled tube, laminar to turbulent.',
    arguments: { Re: reynolds(0, 2e5), Pr: prandtl, ...winding },
    result: nusselt,
    tex: 'Nu = (1-\\gamma)Nu_{lam,Re_{crit}}+\\gamma Nu_{turb,2.2\\cdot10^4}',
    source: 'VDI Heat Atlas, section G3',
    outside: 'evaluated',
    compute: nusseltCoil,
  }),
  forReaders({
    name: 'friction-factor-coil',
    says: 'Darcy friction factor of one fluid filling a smooth coiled tube.',
    arguments: { Re: reynolds(0, 2e5), ...winding },
    result: { symbol: 'f', unit: '1' },
    tex: 'f = f_{straight}\\begin{cases}1+0.14\\left(\\tfrac{d}{D}\\right)^{0.97}Re^{1-0.644(d/D)^{0.312}} & Re\\le Re_{crit}\\\\ 1+\\frac{28800}{Re}\\left(\\tfrac{d}{D}\\right)^{0.62} & Re<2.2\\cdot10^4\\\\ 1+0.0823\\left(1+\\tfrac{d}{D}\\right)\\left(\\tfrac{d}{D}\\right)^{0.53}Re^{1/4} & Re\\ge2.2\\cdot10^4\\end{cases}',
    source: 'Schmidt, Chemie Ingenieur Technik 39 (1967) 781',
    outside:
      'evaluated; supported for d/D 0.01–0.25; steps a little at the regime boundaries, as published; zero without flow',
    compute: frictionFactorCoil,
  }),
];
