import { alternative, type Argument, type Correlation } from '../correlation.ts';

/**
 * Shear-controlled in-tube condensation correlations kept for comparison. At the flows of
 * a small still (J_G < 2.6) the film is stratified, and these read far too low or agree only by accident.
 */

const allLiquidCoefficient = (G: number, D_i: number, k_l: number, mu_l: number, cp_l: number): number =>
  ((0.023 * k_l) / D_i) * Math.pow((G * D_i) / mu_l, 0.8) * Math.pow((mu_l * cp_l) / k_l, 0.4);

/** Local coefficient of an annular film: entry `film-coefficient-shah-1979`. */
export const filmCoefficientShah1979 = (
  G: number,
  x: number,
  D_i: number,
  p_r: number,
  k_l: number,
  mu_l: number,
  cp_l: number,
): number =>
  allLiquidCoefficient(G, D_i, k_l, mu_l, cp_l) *
  (Math.pow(1 - x, 0.8) + (3.8 * Math.pow(x, 0.76) * Math.pow(1 - x, 0.04)) / Math.pow(p_r, 0.38));

/** Shear term of Shah’s later relation: entry `film-coefficient-shah-2009`. */
export const filmCoefficientShah2009 = (
  G: number,
  x: number,
  D_i: number,
  p_r: number,
  k_l: number,
  mu_l: number,
  mu_v: number,
  cp_l: number,
): number =>
  filmCoefficientShah1979(G, x, D_i, p_r, k_l, mu_l, cp_l) * Math.pow(mu_l / (14 * mu_v), 0.0058 + 0.557 * p_r);

/** Local coefficient from an equivalent all-liquid flow: entry `film-coefficient-akers`. */
export const filmCoefficientAkers = (
  G: number,
  x: number,
  D_i: number,
  rho_l: number,
  rho_v: number,
  k_l: number,
  mu_l: number,
  cp_l: number,
): number => {
  const Re = (G * (1 - x + x * Math.sqrt(rho_l / rho_v)) * D_i) / mu_l;
  const Pr = (mu_l * cp_l) / k_l;
  const Nu = Re > 5e4 ? 0.0265 * Math.pow(Re, 0.8) * Math.cbrt(Pr) : 5.03 * Math.cbrt(Re * Pr);
  return (Nu * k_l) / D_i;
};

/** Local coefficient from an equivalent Reynolds number: entry `film-coefficient-cavallini-smith-zecchin`. */
export const filmCoefficientCavalliniSmithZecchin = (
  G: number,
  x: number,
  D_i: number,
  rho_l: number,
  rho_v: number,
  k_l: number,
  mu_l: number,
  cp_l: number,
): number => {
  const Re = ((G * D_i) / mu_l) * (x * Math.sqrt(rho_l / rho_v) + 1 - x);
  return ((0.05 * k_l) / D_i) * Math.pow(Re, 0.8) * Math.cbrt((mu_l * cp_l) / k_l);
};

/** Local coefficient at high pressure: entry `film-coefficient-boyko-kruzhilin`. */
export const filmCoefficientBoykoKruzhilin = (
  G: number,
  x: number,
  D_i: number,
  rho_l: number,
  rho_v: number,
  k_l: number,
  mu_l: number,
  cp_l: number,
): number =>
  ((0.021 * k_l) / D_i) *
  Math.pow((G * D_i) / mu_l, 0.8) *
  Math.pow((mu_l * cp_l) / k_l, 0.43) *
  Math.sqrt(1 + x * (rho_l / rho_v - 1));

const flow: Readonly<Record<string, Argument>> = {
  G: { unit: 'kg/(m² s)', says: 'mass flux over the whole bore' },
  x: { unit: '1', says: 'vapour share of the flow', range: [0, 1] },
  D_i: { unit: 'm', says: 'bore of the tube' },
};
const annular: Readonly<Record<string, Argument>> = {
  ...flow,
  G: { unit: 'kg/(m² s)', says: 'mass flux over the whole bore', range: [10.8, Number.MAX_VALUE] },
  D_i: { unit: 'm', says: 'bore of the tube', range: [0.007, 0.04] },
};
const liquid: Readonly<Record<string, Argument>> = {
  k_l: { unit: 'W/(m K)', says: 'conductivity of the condensate' },
  mu_l: { unit: 'Pa s', says: 'viscosity of the condensate' },
};
const liquidHeat: Argument = { unit: 'J/(kg K)', says: 'heat capacity of the condensate' };
const densities: Readonly<Record<string, Argument>> = {
  rho_l: { unit: 'kg/m³', says: 'density of the condensate' },
  rho_v: { unit: 'kg/m³', says: 'density of the vapour' },
};
const reduced: Argument = { unit: '1', says: 'pressure over critical pressure', range: [0.002, 0.44] };
const result = { symbol: 'h', unit: 'W/(m² K)' };
const outside = 'evaluated';

export const condensationAlternatives: readonly Correlation[] = [
  alternative({
    name: 'film-coefficient-shah-1979',
    says: 'Local coefficient of an annular condensate film in a tube.',
    arguments: { ...annular, p_r: reduced, ...liquid, cp_l: liquidHeat },
    result,
    tex: 'h = h_{LO}\\left[(1-x)^{0.8}+\\frac{3.8x^{0.76}(1-x)^{0.04}}{p_r^{0.38}}\\right]',
    source: 'Shah, Int. J. Heat Mass Transfer 22 (1979) 547–556',
    outside,
    compute: filmCoefficientShah1979,
  }),
  alternative({
    name: 'film-coefficient-shah-2009',
    says: 'Shear term of the 2009 correlation for condensation in tubes.',
    arguments: {
      ...flow,
      p_r: reduced,
      ...liquid,
      mu_v: { unit: 'Pa s', says: 'viscosity of the vapour' },
      cp_l: liquidHeat,
    },
    result,
    tex: 'h_I = h_{1979}\\left(\\frac{\\mu_l}{14\\mu_v}\\right)^{0.0058+0.557p_r}',
    source: 'Shah, HVAC&R Research 15(5) (2009) 889–913',
    outside: 'evaluated; meant for the regime in which shear rules',
    compute: filmCoefficientShah2009,
  }),
  alternative({
    name: 'film-coefficient-akers',
    says: 'Local coefficient of condensation in a tube from an equivalent liquid flow.',
    arguments: { ...flow, ...densities, ...liquid, cp_l: liquidHeat },
    result,
    tex: 'Nu = \\begin{cases}5.03\\,Re_e^{1/3}Pr^{1/3} & Re_e\\le5\\cdot10^4\\\\ 0.0265\\,Re_e^{0.8}Pr^{1/3} & Re_e>5\\cdot10^4\\end{cases},\\quad Re_e=\\frac{G\\left[(1-x)+x\\sqrt{\\rho_l/\\rho_v}\\right]D_i}{\\mu_l}',
    source: 'Akers, Deans and Crosser, Chem. Eng. Prog. Symp. Ser. 55 (1959) 171',
    outside: 'evaluated; its data cover equivalent Reynolds numbers above 5·10⁴',
    compute: filmCoefficientAkers,
  }),
  alternative({
    name: 'film-coefficient-cavallini-smith-zecchin',
    says: 'Local coefficient of condensation in a tube from an equivalent Reynolds number.',
    arguments: { ...flow, ...densities, ...liquid, cp_l: liquidHeat },
    result,
    tex: 'Nu = 0.05\\,Re_{eq}^{0.8}Pr^{1/3},\\quad Re_{eq}=Re_v\\frac{\\mu_v}{\\mu_l}\\sqrt{\\frac{\\rho_l}{\\rho_v}}+Re_l',
    source: 'Cavallini, Smith and Zecchin, 6th Int. Heat Transfer Conf. Tokyo (1974)',
    outside: 'evaluated; its data cover liquid Reynolds numbers 7000–53 000',
    compute: filmCoefficientCavalliniSmithZecchin,
  }),
  alternative({
    name: 'film-coefficient-boyko-kruzhilin',
    says: 'Local coefficient of condensation in a tube at high pressure.',
    arguments: { ...flow, ...densities, ...liquid, cp_l: liquidHeat },
    result,
    tex: 'h = 0.021\\frac{k_l}{D_i}Re_{LO}^{0.8}Pr_l^{0.43}\\sqrt{1+x\\left(\\frac{\\rho_l}{\\rho_v}-1\\right)}',
    source:
      'Boyko and Kruzhilin, Int. J. Heat Mass Transfer 10 (1967) 361; Hewitt, Shires and Bott, Process Heat Transfer p. 589',
    outside: 'evaluated; its data are of steam at 12–90 bar',
    compute: filmCoefficientBoykoKruzhilin,
  }),
];
