import { type Argument, type Correlation, positionalCorrelation } from '../correlation.ts';

/**
 * Shear-controlled in-tube condensation correlations kept for comparison. NOT USED BY THE ENGINE: at the flows of
 * a small still (J_G < 2.6) the film is stratified, and these read far too low or agree only by accident.
 */

const allLiquidCoefficient = (G: number, D_i: number, k_l: number, mu_l: number, cp_l: number): number =>
  ((0.023 * k_l) / D_i) * Math.pow((G * D_i) / mu_l, 0.8) * Math.pow((mu_l * cp_l) / k_l, 0.4);

/**
 * Local coefficient of an annular film (Shah 1979), W/m²K: h_LO [(1 − x)^0.8 + 3.8 x^0.76 (1 − x)^0.04 / p_r^0.38].
 *
 * @param G mass flux, kg/m²s; @param x vapour share; @param D_i bore, m; @param p_r pressure over critical pressure
 * @param k_l, mu_l, cp_l liquid properties, W/mK, Pa s, J/kgK
 * Range: G > 10.8 kg/m²s, bore 7–40 mm, p_r ≥ 0.002. Evaluated outside. Source: see the entry.
 */
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

/**
 * Shear term h_I of Shah's 2009 correlation, W/m²K: the 1979 form times (μ_l / 14 μ_v)^(0.0058 + 0.557 p_r).
 * Arguments as `filmCoefficientShah1979` with the vapour's viscosity mu_v, Pa s. Regime I only. Source: the entry.
 */
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

/**
 * Local coefficient from an equivalent all-liquid flow (Akers, Deans and Crosser 1959), W/m²K.
 * Nu = 0.0265 Re_e^0.8 Pr^⅓ for Re_e > 5·10⁴, 5.03 Re_e^⅓ Pr^⅓ below, Re_e = G[(1 − x) + x √(ρ_l/ρ_v)] D/μ_l.
 * Range: Re_e > 5·10⁴ is what its data cover. Evaluated outside. Source: see the entry.
 */
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

/**
 * Local coefficient from an equivalent Reynolds number (Cavallini, Smith and Zecchin 1974), W/m²K:
 * Nu = 0.05 Re_eq^0.8 Pr^⅓, Re_eq = Re_v (μ_v/μ_l) √(ρ_l/ρ_v) + Re_l on superficial velocities.
 * Range: 7000 < Re_l < 53 000. Evaluated outside. Source: see the entry.
 */
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

/**
 * Local coefficient (Boyko and Kruzhilin 1967), W/m²K: 0.021 (k/D) Re_LO^0.8 Pr^0.43 √[1 + x (ρ_l/ρ_v − 1)].
 * Range: steam at 12–90 bar in its data. Evaluated outside. Source: see the entry.
 */
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
const outside = 'evaluated; comparison only, not used by the engine';

export const condensationCrossChecks: readonly Correlation[] = [
  positionalCorrelation(
    {
      name: 'film-coefficient-shah-1979',
      says: 'Local coefficient of an annular condensate film in a tube; comparison only.',
      arguments: { ...flow, p_r: reduced, ...liquid, cp_l: liquidHeat },
      result,
      tex: 'h = h_{LO}\\left[(1-x)^{0.8}+\\frac{3.8x^{0.76}(1-x)^{0.04}}{p_r^{0.38}}\\right]',
      source: 'Shah, Int. J. Heat Mass Transfer 22 (1979) 547–556',
      outside,
    },
    filmCoefficientShah1979,
  ),
  positionalCorrelation(
    {
      name: 'film-coefficient-shah-2009',
      says: 'Shear term of the 2009 correlation for condensation in tubes; comparison only.',
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
      outside,
    },
    filmCoefficientShah2009,
  ),
  positionalCorrelation(
    {
      name: 'film-coefficient-akers',
      says: 'Local coefficient of condensation in a tube from an equivalent liquid flow; comparison only.',
      arguments: { ...flow, ...densities, ...liquid, cp_l: liquidHeat },
      result,
      tex: 'Nu = 0.0265\\,Re_e^{0.8}Pr^{1/3},\\quad Re_e=\\frac{G\\left[(1-x)+x\\sqrt{\\rho_l/\\rho_v}\\right]D_i}{\\mu_l}',
      source: 'Akers, Deans and Crosser, Chem. Eng. Prog. Symp. Ser. 55 (1959) 171',
      outside,
    },
    filmCoefficientAkers,
  ),
  positionalCorrelation(
    {
      name: 'film-coefficient-cavallini-smith-zecchin',
      says: 'Local coefficient of condensation in a tube from an equivalent Reynolds number; comparison only.',
      arguments: { ...flow, ...densities, ...liquid, cp_l: liquidHeat },
      result,
      tex: 'Nu = 0.05\\,Re_{eq}^{0.8}Pr^{1/3},\\quad Re_{eq}=Re_v\\frac{\\mu_v}{\\mu_l}\\sqrt{\\frac{\\rho_l}{\\rho_v}}+Re_l',
      source: 'Cavallini, Smith and Zecchin, 6th Int. Heat Transfer Conf. Tokyo (1974)',
      outside,
    },
    filmCoefficientCavalliniSmithZecchin,
  ),
  positionalCorrelation(
    {
      name: 'film-coefficient-boyko-kruzhilin',
      says: 'Local coefficient of condensation in a tube at high pressure; comparison only.',
      arguments: { ...flow, ...densities, ...liquid, cp_l: liquidHeat },
      result,
      tex: 'h = 0.021\\frac{k_l}{D_i}Re_{LO}^{0.8}Pr_l^{0.43}\\sqrt{1+x\\left(\\frac{\\rho_l}{\\rho_v}-1\\right)}',
      source:
        'Boyko and Kruzhilin, Int. J. Heat Mass Transfer 10 (1967) 361; Hewitt, Shires and Bott, Process Heat Transfer p. 589',
      outside,
    },
    filmCoefficientBoykoKruzhilin,
  ),
];
