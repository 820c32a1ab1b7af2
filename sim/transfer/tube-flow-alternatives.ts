import { type Argument, type Correlation, positionalCorrelation } from '../correlation.ts';

/** Older and alternative relations for flow in a tube, for comparison. NOT USED BY THE ENGINE. */

/**
 * Mean Nusselt number of laminar flow with thermal entry (Hausen 1943), pure number:
 * 3.66 + 0.0668 Gz / (1 + 0.04 Gz^⅔), Gz = Re Pr D/L. (Some books print 0.065.)
 * Range: Re < 2300. Re ≤ 0 gives 3.66. Source: see the entry.
 */
export const nusseltHausen = (Re: number, Pr: number, D: number, L: number): number => {
  const Gz = (Math.max(0, Re) * Pr * D) / L;
  return 3.66 + (0.0668 * Gz) / (1 + 0.04 * Math.cbrt(Gz * Gz));
};

/**
 * Mean Nusselt number of laminar flow with velocity and temperature both developing (Baehr and Stephan), pure
 * number. Nu = [3.657/tanh(2.264 Gz^−⅓ + 1.7 Gz^−⅔) + 0.0499 Gz tanh(1/Gz)] / tanh(2.432 Pr^(1/6) Gz^(−1/6)).
 * Range: Re < 2300. Re ≤ 0 gives 3.657. Source: see the entry.
 */
export const nusseltBaehrStephan = (Re: number, Pr: number, D: number, L: number): number => {
  const Gz = (Math.max(0, Re) * Pr * D) / L;
  if (Gz === 0) return 3.657;
  const third = Math.cbrt(Gz);
  const thermal = 3.657 / Math.tanh(2.264 / third + 1.7 / (third * third)) + 0.0499 * Gz * Math.tanh(1 / Gz);
  return thermal / Math.tanh(2.432 * Math.pow(Pr / Gz, 1 / 6));
};

/**
 * Nusselt number of turbulent flow (Dittus and Boelter), pure number: 0.023 Re^0.8 Pr^n.
 * @param n 0.4 when the fluid is heated, 0.3 when cooled. Range: Re > 10⁴, Pr 0.7–160, L/D > 10. Source: the entry.
 */
export const nusseltDittusBoelter = (Re: number, Pr: number, n: number): number =>
  0.023 * Math.pow(Math.max(0, Re), 0.8) * Math.pow(Pr, n);

/**
 * Nusselt number of turbulent flow with wall viscosity (Sieder and Tate 1936), pure number:
 * 0.027 Re^0.8 Pr^⅓ (μ/μ_w)^0.14. Range: Re > 6000, Pr 0.7–16 000. Source: see the entry.
 */
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
const outside = 'evaluated; comparison only, not used by the engine';

export const tubeFlowCrossChecks: readonly Correlation[] = [
  positionalCorrelation(
    {
      name: 'nusselt-hausen',
      says: 'Mean heat transfer of laminar flow in a tube with thermal entry; comparison only.',
      arguments: { Re: reynolds(0, 2300), Pr: prandtl, ...tube },
      result: nusselt,
      tex: 'Nu = 3.66+\\frac{0.0668Gz}{1+0.04Gz^{2/3}},\\quad Gz=Re\\,Pr\\,D/L',
      source: 'Hausen 1943; Incropera et al. 6e eq. 8.56',
      outside,
    },
    nusseltHausen,
  ),
  positionalCorrelation(
    {
      name: 'nusselt-baehr-stephan',
      says: 'Mean heat transfer of laminar flow in a tube with velocity and temperature developing; comparison only.',
      arguments: { Re: reynolds(0, 2300), Pr: prandtl, ...tube },
      result: nusselt,
      tex: 'Nu = \\frac{\\dfrac{3.657}{\\tanh(2.264Gz^{-1/3}+1.7Gz^{-2/3})}+0.0499Gz\\tanh Gz^{-1}}{\\tanh(2.432Pr^{1/6}Gz^{-1/6})}',
      source: 'Baehr and Stephan, Heat and Mass Transfer, 2e, section 3.7.4',
      outside,
    },
    nusseltBaehrStephan,
  ),
  positionalCorrelation(
    {
      name: 'nusselt-dittus-boelter',
      says: 'Heat transfer of fully turbulent flow in a smooth tube; comparison only.',
      arguments: {
        Re: reynolds(1e4, 1.2e5),
        Pr: { ...prandtl, range: [0.7, 160] },
        n: { unit: '1', says: '0.4 heating the fluid, 0.3 cooling it', range: [0.3, 0.4] },
      },
      result: nusselt,
      tex: 'Nu = 0.023Re^{0.8}Pr^{n}',
      source: 'Dittus and Boelter 1930 in the form of McAdams; Incropera et al. 6e eq. 8.60',
      outside,
    },
    nusseltDittusBoelter,
  ),
  positionalCorrelation(
    {
      name: 'nusselt-sieder-tate',
      says: 'Heat transfer of turbulent flow with a wall much hotter or colder than the fluid; comparison only.',
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
    },
    nusseltSiederTate,
  ),
];
