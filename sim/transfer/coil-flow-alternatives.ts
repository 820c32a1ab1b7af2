import { alternative, type Argument, type Correlation } from '../correlation.ts';

/**
 * Further relations for flow in coiled tubes, for comparison. No run uses them. Laminar formulas
 * disagree with each other by 20–25 %.
 */

/** Critical Reynolds number: entry `critical-reynolds-coil-ito`. */
export const criticalReynoldsCoilIto = (d: number, D_coil: number): number => 20000 * Math.pow(d / D_coil, 0.32);

/** Nusselt number of laminar flow: entry `nusselt-coil-manlapaz-churchill`. */
export const nusseltCoilManlapazChurchill = (Re: number, Pr: number, d: number, D_coil: number): number => {
  if (!(Re > 0)) return 3.66;
  const Dn = Re * Math.sqrt(d / D_coil);
  const a = 1 + 957 / (Dn * Dn * Pr);
  const b = 1 + 0.477 / Pr;
  const straight = 3.66 + 4.343 / (a * a);
  return Math.cbrt(straight * straight * straight + 1.158 * Math.pow(Dn / b, 1.5));
};

/** Nusselt number of turbulent flow: entry `nusselt-coil-seban-mclaughlin`. */
export const nusseltCoilSebanMcLaughlin = (Re: number, Pr: number, d: number, D_coil: number): number =>
  0.023 * Math.pow(Math.max(0, Re), 0.85) * Math.pow(Pr, 0.4) * Math.pow(d / D_coil, 0.1);

/** Nusselt number of turbulent flow of a liquid: entry `nusselt-coil-mori-nakayama`. */
export const nusseltCoilMoriNakayama = (Re: number, Pr: number, d: number, D_coil: number): number => {
  if (!(Re > 0)) return 0;
  const ratio = d / D_coil;
  const curvature = 1 + 0.061 / Math.pow(Re * Math.pow(ratio, 2.5), 1 / 6);
  return (Math.pow(Pr, 0.4) / 41) * Math.pow(Re, 5 / 6) * Math.pow(ratio, 1 / 12) * curvature;
};

/** Factor by which a coil raises the straight tube’s turbulent coefficient: entry `coil-enhancement-factor`. */
export const coilEnhancement = (d: number, D_coil: number): number => 1 + (3.5 * d) / D_coil;

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
const outside = 'evaluated';

export const coilFlowAlternatives: readonly Correlation[] = [
  alternative({
    name: 'critical-reynolds-coil-ito',
    says: 'Reynolds number at which flow in a coiled tube turns turbulent.',
    arguments: winding,
    result: { symbol: 'Re_{crit}', unit: '1' },
    tex: 'Re_{crit} = 20000\\left(\\frac{d}{D}\\right)^{0.32}',
    source: 'Ito, J. Basic Engineering 81 (1959) 123–134',
    outside: 'evaluated; supported for d/D 0.001–0.07',
    compute: criticalReynoldsCoilIto,
  }),
  alternative({
    name: 'nusselt-coil-manlapaz-churchill',
    says: 'Heat transfer of laminar flow in a coiled tube at constant wall temperature.',
    arguments: { Re: reynolds(0, 2e4), Pr: prandtl, ...winding },
    result: nusselt,
    tex: 'Nu = \\left\\{\\left[3.66+\\frac{4.343}{a}\\right]^3+1.158\\left(\\frac{Dn}{b}\\right)^{3/2}\\right\\}^{1/3},\\quad a=\\left(1+\\frac{957}{Dn^2Pr}\\right)^2,\\ b=1+\\frac{0.477}{Pr},\\ Dn=Re\\sqrt{d/D}',
    source: 'Manlapaz and Churchill, Chem. Eng. Commun. 9 (1981) 185; constants from memory',
    outside: 'evaluated; 3.66 without flow',
    compute: nusseltCoilManlapazChurchill,
  }),
  alternative({
    name: 'nusselt-coil-seban-mclaughlin',
    says: 'Heat transfer of turbulent flow in a coiled tube.',
    arguments: { Re: reynolds(6000, 65600), Pr: prandtl, ...winding },
    result: nusselt,
    tex: 'Nu = 0.023Re^{0.85}Pr^{0.4}(d/D)^{0.1}',
    source: 'Seban and McLaughlin, Int. J. Heat Mass Transfer 6 (1963) 387',
    outside,
    compute: nusseltCoilSebanMcLaughlin,
  }),
  alternative({
    name: 'nusselt-coil-mori-nakayama',
    says: 'Heat transfer of turbulent liquid flow in a coiled tube.',
    arguments: { Re: reynolds(1e4, 2e5), Pr: { ...prandtl, range: [1, 1000] }, ...winding },
    result: nusselt,
    tex: 'Nu = \\frac{Pr^{0.4}}{41}Re^{5/6}(d/D)^{1/12}\\left[1+\\frac{0.061}{\\left(Re(d/D)^{2.5}\\right)^{1/6}}\\right]',
    source: 'Mori and Nakayama, Int. J. Heat Mass Transfer 10 (1967) 37–59, 681–695',
    outside: 'evaluated; zero without flow',
    compute: nusseltCoilMoriNakayama,
  }),
  alternative({
    name: 'coil-enhancement-factor',
    says: 'Factor by which winding a tube raises its turbulent coefficient.',
    arguments: winding,
    result: { symbol: 'h_{coil}/h', unit: '1' },
    tex: '\\frac{h_{coil}}{h_{straight}} = 1+3.5\\frac{d}{D}',
    source: 'Coulson and Richardson vol. 1, 6e, Example 9.24',
    outside,
    compute: coilEnhancement,
  }),
];
