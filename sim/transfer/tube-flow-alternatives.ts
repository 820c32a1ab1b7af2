import { alternative, type Argument, type Correlation } from '../correlation.ts';

/** Older and alternative relations for flow in a tube, for comparison. No run uses them. */

/** Mean Nusselt number of laminar flow with thermal entry: entry `nusselt-hausen`. */
export const nusseltHausen = (Re: number, Pr: number, D: number, L: number): number => {
  const Gz = (Math.max(0, Re) * Pr * D) / L;
  return 3.66 + (0.0668 * Gz) / (1 + 0.04 * Math.cbrt(Gz * Gz));
};

/** Mean Nusselt number with velocity and temperature both developing: entry `nusselt-baehr-stephan`. */
export const nusseltBaehrStephan = (Re: number, Pr: number, D: number, L: number): number => {
  const Gz = (Math.max(0, Re) * Pr * D) / L;
  if (Gz === 0) return 3.657;
  const third = Math.cbrt(Gz);
  const thermal = 3.657 / Math.tanh(2.264 / third + 1.7 / (third * third)) + 0.0499 * Gz * Math.tanh(1 / Gz);
  return thermal / Math.tanh(2.432 * Math.pow(Pr / Gz, 1 / 6));
};

/** Nusselt number of turbulent flow: entry `nusselt-dittus-boelter`. */
export const nusseltDittusBoelter = (Re: number, Pr: number, n: number): number =>
  0.023 * Math.pow(Math.max(0, Re), 0.8) * Math.pow(Pr, n);

/** Nusselt number of turbulent flow with wall viscosity: entry `nusselt-sieder-tate`. */
export const nusseltSiederTate = (Re: number, Pr: number, mu: number, mu_w: number): number =>
  0.027 * Math.pow(Math.max(0, Re), 0.8) * Math.cbrt(Pr) * Math.pow(mu / mu_w, 0.14);

const reynolds = (low: number, high: number): Argument => ({
  unit: '1',
  says: 'Reynolds number on the bore',
  range: [low, high],
});
const prandtl: Argument = { unit: '1', says: 'Prandtl number' };
const tube: Readonly<Record<string, Argument>> = { D: { unit: 'm', says: 'bore' }, L: { unit: 'm', says: 'length' } };
const nusselt = { symbol: 'Nu', unit: '1' };
const outside = 'evaluated';

export const tubeFlowAlternatives: readonly Correlation[] = [
  alternative({
    name: 'nusselt-hausen',
    says: 'Mean heat transfer of laminar flow in a tube with thermal entry.',
    arguments: { Re: reynolds(0, 2300), Pr: prandtl, ...tube },
    result: nusselt,
    tex: 'Nu = 3.66+\\frac{0.0668Gz}{1+0.04Gz^{2/3}},\\quad Gz=Re\\,Pr\\,D/L',
    source: 'Hausen 1943; Incropera et al. 6e eq. 8.56 (some books print 0.065)',
    outside: 'evaluated; 3.66 without flow',
    compute: nusseltHausen,
  }),
  alternative({
    name: 'nusselt-baehr-stephan',
    says: 'Mean heat transfer of laminar flow in a tube with velocity and temperature developing.',
    arguments: { Re: reynolds(0, 2300), Pr: prandtl, ...tube },
    result: nusselt,
    tex: 'Nu = \\frac{\\dfrac{3.657}{\\tanh(2.264Gz^{-1/3}+1.7Gz^{-2/3})}+0.0499Gz\\tanh Gz^{-1}}{\\tanh(2.432Pr^{1/6}Gz^{-1/6})}',
    source: 'Baehr and Stephan, Heat and Mass Transfer, 2e, section 3.7.4',
    outside: 'evaluated; 3.657 without flow',
    compute: nusseltBaehrStephan,
  }),
  alternative({
    name: 'nusselt-dittus-boelter',
    says: 'Heat transfer of fully turbulent flow in a smooth tube.',
    arguments: {
      Re: reynolds(1e4, 1.2e5),
      Pr: { ...prandtl, range: [0.7, 160] },
      n: { unit: '1', says: '0.4 heating the fluid, 0.3 cooling it', range: [0.3, 0.4] },
    },
    result: nusselt,
    tex: 'Nu = 0.023Re^{0.8}Pr^{n}',
    source: 'Dittus and Boelter 1930 in the form of McAdams; Incropera et al. 6e eq. 8.60',
    outside: 'evaluated; meant for tubes longer than ten bores',
    compute: nusseltDittusBoelter,
  }),
  alternative({
    name: 'nusselt-sieder-tate',
    says: 'Heat transfer of turbulent flow with a wall much hotter or colder than the fluid.',
    arguments: {
      Re: reynolds(6e3, 1e7),
      Pr: { ...prandtl, range: [0.7, 16000] },
      mu: { unit: 'Pa s', says: 'viscosity at the bulk temperature' },
      mu_w: { unit: 'Pa s', says: 'viscosity at the wall temperature' },
    },
    result: nusselt,
    tex: 'Nu = 0.027Re^{0.8}Pr^{1/3}\\left(\\frac{\\mu}{\\mu_w}\\right)^{0.14}',
    source: 'Sieder and Tate 1936; Geankoplis 3e eq. 4.5-8',
    outside,
    compute: nusseltSiederTate,
  }),
];
