/**
 * Condensation and friction of steam in a tube from temperatures alone: the relations of this folder with water's
 * properties looked up by IAPWS. Film properties at the mean of saturation and wall temperature, ρ_v and h_fg at
 * saturation, standard gravity. For the desk reference; the step loop keeps its own properties.
 */
import { STANDARD_GRAVITY } from '../constants.ts';
import { type Argument, type Correlation, positionalCorrelation } from '../correlation.ts';
import {
  latentHeat,
  liquidConductivity,
  liquidDensity,
  liquidHeatCapacity,
  liquidViscosity,
  vapourDensity,
  vapourViscosity,
} from '../fluids/water.ts';
import {
  cavalliniTransition,
  condensationFluxChato,
  dimensionlessVapourVelocity,
  filmCoefficientCavallini,
  filmCoefficientChato,
} from './film-condensation.ts';
import { filmCoefficientHorizontalTier, filmCoefficientNusseltVertical } from './film-condensation-on-surfaces.ts';
import { frictionGradient, meanTwoPhaseGradient, twoPhaseGradient } from './pressure-drop.ts';
import { subcoolingConductance } from './subcooling.ts';

const massFluxIn = (m: number, D_i: number): number => (4 * m) / (Math.PI * D_i * D_i);

/** Chato's film for steam, with the function that wants it: flux W/m² or coefficient W/m²K. */
const chatoSteam =
  (relation: typeof filmCoefficientChato) =>
  (T_sat: number, T_wall: number, D_i: number): number => {
    const film = 0.5 * (T_sat + T_wall);
    return relation(
      D_i,
      T_sat - T_wall,
      latentHeat(T_sat),
      liquidDensity(film),
      vapourDensity(T_sat),
      liquidConductivity(film),
      liquidViscosity(film),
      liquidHeatCapacity(film),
      STANDARD_GRAVITY,
    );
  };

/** `filmCoefficientChato` for steam, W/m²K. T_sat and T_wall in K (273.15–403.15), D_i in m. */
export const filmCoefficientChatoSteam = chatoSteam(filmCoefficientChato);

/** `condensationFluxChato` for steam, W/m². T_sat and T_wall in K (273.15–403.15), D_i in m. */
export const condensationFluxChatoSteam = chatoSteam(condensationFluxChato);

/** `filmCoefficientCavallini` for steam with all properties at saturation, W/m²K. m kg/s, T_sat and dT in K. */
export const filmCoefficientCavalliniSteam = (m: number, x: number, D_i: number, T_sat: number, dT: number): number =>
  filmCoefficientCavallini(
    massFluxIn(m, D_i),
    x,
    D_i,
    dT,
    latentHeat(T_sat),
    liquidDensity(T_sat),
    vapourDensity(T_sat),
    liquidConductivity(T_sat),
    liquidViscosity(T_sat),
    vapourViscosity(T_sat),
    liquidHeatCapacity(T_sat),
    STANDARD_GRAVITY,
  );

/** Reynolds number of steam filling a tube, pure number: 4 m/(π D_i μ_v). m kg/s, T_sat K. */
export const vapourReynoldsSteam = (m: number, D_i: number, T_sat: number): number =>
  (4 * m) / (Math.PI * D_i * vapourViscosity(T_sat));

/** `dimensionlessVapourVelocity` for steam, pure number. m kg/s, T_sat K. */
export const vapourVelocitySteam = (m: number, x: number, D_i: number, T_sat: number): number =>
  dimensionlessVapourVelocity(massFluxIn(m, D_i), x, D_i, liquidDensity(T_sat), vapourDensity(T_sat), STANDARD_GRAVITY);

/** `cavalliniTransition` for steam, pure number. T_sat K. */
export const transitionVelocitySteam = (x: number, T_sat: number): number =>
  cavalliniTransition(x, liquidDensity(T_sat), vapourDensity(T_sat), liquidViscosity(T_sat), vapourViscosity(T_sat));

/** `filmCoefficientNusseltVertical` for steam with the subcooling factor 0.68, W/m²K. Temperatures in K, L in m. */
export const filmCoefficientNusseltVerticalSteam = (T_sat: number, T_wall: number, L: number): number => {
  const film = 0.5 * (T_sat + T_wall);
  return filmCoefficientNusseltVertical(
    L,
    T_sat - T_wall,
    latentHeat(T_sat),
    liquidDensity(film),
    vapourDensity(T_sat),
    liquidConductivity(film),
    liquidViscosity(film),
    liquidHeatCapacity(film),
    0.68,
    STANDARD_GRAVITY,
  );
};

/** `filmCoefficientHorizontalTier` for steam on one tube, factor 0.68, W/m²K. Temperatures in K, D in m. */
export const filmCoefficientTubeOutsideSteam = (T_sat: number, T_wall: number, D: number): number => {
  const film = 0.5 * (T_sat + T_wall);
  return filmCoefficientHorizontalTier(
    D,
    1,
    T_sat - T_wall,
    latentHeat(T_sat),
    liquidDensity(film),
    vapourDensity(T_sat),
    liquidConductivity(film),
    liquidViscosity(film),
    liquidHeatCapacity(film),
    0.68,
    STANDARD_GRAVITY,
  );
};

/** Friction gradient of dry steam in a smooth tube, Pa/m. m kg/s, T_sat K. */
export const frictionGradientSteam = (m: number, D_i: number, T_sat: number): number =>
  frictionGradient(massFluxIn(m, D_i), D_i, vapourDensity(T_sat), vapourViscosity(T_sat), 0);

const frictionGradientCondensate = (m: number, D_i: number, T_sat: number): number =>
  frictionGradient(massFluxIn(m, D_i), D_i, liquidDensity(T_sat), liquidViscosity(T_sat), 0);

/** `twoPhaseGradient` of steam and condensate in a smooth tube, Pa/m. m kg/s of both, T_sat K. */
export const twoPhaseGradientSteam = (m: number, x: number, D_i: number, T_sat: number): number =>
  twoPhaseGradient(frictionGradientCondensate(m, D_i, T_sat), frictionGradientSteam(m, D_i, T_sat), x);

/** `meanTwoPhaseGradient` over a whole condensing length, dry steam in, water out, Pa/m. m kg/s, T_sat K. */
export const condensingGradientSteam = (m: number, D_i: number, T_sat: number): number =>
  meanTwoPhaseGradient(frictionGradientCondensate(m, D_i, T_sat), frictionGradientSteam(m, D_i, T_sat), 1, 0);

/** `subcoolingConductance` of water at T, W/mK. m kg/s, D_i m, slope rad, T K. */
export const subcoolingConductanceWater = (m: number, D_i: number, slope: number, T: number): number =>
  subcoolingConductance(m, D_i, slope, liquidDensity(T), liquidViscosity(T), liquidConductivity(T), STANDARD_GRAVITY);

const saturation: Argument = { unit: 'K', says: 'saturation temperature', range: [273.15, 403.15] };
const wall: Argument = { unit: 'K', says: 'wall temperature', range: [273.15, 403.15] };
const bore: Argument = { unit: 'm', says: 'bore of the tube', range: [0.003, 0.05] };
const rate: Argument = { unit: 'kg/s', says: 'flow of steam and condensate' };
const vapourShare: Argument = { unit: '1', says: 'vapour share of the flow', range: [0, 1] };
const coefficient = { symbol: 'h', unit: 'W/(m² K)' };
const gradient = { symbol: 'dp/dz', unit: 'Pa/m' };
const properties = 'properties by IAPWS R7-97, R12-08, R15-11';
const outside = 'throws a RangeError outside 273.15–403.15 K';

export const steamInTubeChains: readonly Correlation[] = [
  positionalCorrelation(
    {
      name: 'film-coefficient-chato-steam',
      says: 'Mean film coefficient of steam condensing inside a horizontal tube.',
      arguments: { T_sat: saturation, T_wall: wall, D_i: bore },
      result: coefficient,
      tex: "h = 0.555\\left[\\frac{g\\,\\rho_l(\\rho_l-\\rho_v)k_l^3 h'_{fg}}{\\mu_l(T_{sat}-T_w)D_i}\\right]^{1/4}",
      source: `Chato 1962; ${properties}`,
      outside,
    },
    filmCoefficientChatoSteam,
  ),
  positionalCorrelation(
    {
      name: 'film-coefficient-cavallini-steam',
      says: 'Local film coefficient of steam condensing inside a horizontal tube, vapour shear counted.',
      arguments: {
        m: rate,
        x: vapourShare,
        D_i: bore,
        T_sat: saturation,
        dT: { unit: 'K', says: 'saturation temperature less wall temperature', range: [0, 100] },
      },
      result: coefficient,
      tex: 'h=\\begin{cases}h_A & J_G>J_G^T\\\\ \\left[h_A\\left(J_G^T/J_G\\right)^{0.8}-h_S\\right]\\left(J_G/J_G^T\\right)+h_S & J_G\\le J_G^T\\end{cases}',
      source: `Cavallini et al. 2006; ${properties}`,
      outside,
    },
    filmCoefficientCavalliniSteam,
  ),
  positionalCorrelation(
    {
      name: 'vapour-reynolds-steam',
      says: 'Reynolds number of steam filling a tube.',
      arguments: { m: rate, D_i: bore, T_sat: saturation },
      result: { symbol: 'Re_v', unit: '1' },
      tex: 'Re_v = \\frac{4\\dot m}{\\pi D_i\\mu_v}',
      source: `definition; ${properties}`,
      outside,
    },
    vapourReynoldsSteam,
  ),
  positionalCorrelation(
    {
      name: 'dimensionless-vapour-velocity-steam',
      says: 'Vapour velocity of condensing steam against gravity acting on the film.',
      arguments: { m: rate, x: vapourShare, D_i: bore, T_sat: saturation },
      result: { symbol: 'J_G', unit: '1' },
      tex: 'J_G = \\frac{x\\,G}{\\sqrt{g\\,D_i\\,\\rho_v(\\rho_l-\\rho_v)}}',
      source: `Cavallini et al. 2006; ${properties}`,
      outside,
    },
    vapourVelocitySteam,
  ),
  positionalCorrelation(
    {
      name: 'cavallini-transition-velocity-steam',
      says: 'Dimensionless vapour velocity of steam above which shear shapes the film.',
      arguments: { x: vapourShare, T_sat: saturation },
      result: { symbol: 'J_G^T', unit: '1' },
      tex: 'J_G^T = \\left\\{\\left[\\frac{7.5}{4.3X_{tt}^{1.111}+1}\\right]^{-3}+2.6^{-3}\\right\\}^{-1/3}',
      source: `Cavallini et al. 2006; ${properties}`,
      outside,
    },
    transitionVelocitySteam,
  ),
  positionalCorrelation(
    {
      name: 'film-coefficient-nusselt-vertical-steam',
      says: 'Mean film coefficient of steam condensing as a laminar film on a vertical wall.',
      arguments: { T_sat: saturation, T_wall: wall, L: { unit: 'm', says: 'height of the wall' } },
      result: coefficient,
      tex: "h = 0.943\\left[\\frac{g\\,\\rho_l(\\rho_l-\\rho_v)k_l^3 h'_{fg}}{\\mu_l\\,\\Delta T\\,L}\\right]^{1/4}",
      source: `Nusselt 1916, Rohsenow 1956; ${properties}`,
      outside,
    },
    filmCoefficientNusseltVerticalSteam,
  ),
  positionalCorrelation(
    {
      name: 'film-coefficient-tube-outside-steam',
      says: 'Mean film coefficient of steam condensing on the outside of a horizontal tube.',
      arguments: { T_sat: saturation, T_wall: wall, D: { unit: 'm', says: 'outside diameter' } },
      result: coefficient,
      tex: "h = 0.729\\left[\\frac{g\\,\\rho_l(\\rho_l-\\rho_v)k_l^3 h'_{fg}}{\\mu_l\\,\\Delta T\\,D}\\right]^{1/4}",
      source: `Nusselt 1916, Rohsenow 1956; ${properties}`,
      outside,
    },
    filmCoefficientTubeOutsideSteam,
  ),
  positionalCorrelation(
    {
      name: 'friction-gradient-steam',
      says: 'Pressure that dry steam loses to friction per metre of smooth tube.',
      arguments: { m: rate, D_i: bore, T_sat: saturation },
      result: gradient,
      tex: '\\frac{dp}{dz} = f\\,\\frac{G^2}{2\\rho_vD_i}',
      source: `Darcy–Weisbach, Colebrook; ${properties}`,
      outside,
    },
    frictionGradientSteam,
  ),
  positionalCorrelation(
    {
      name: 'two-phase-gradient-steam',
      says: 'Pressure that steam and condensate lose to friction per metre of smooth tube, at one place.',
      arguments: { m: rate, x: vapourShare, D_i: bore, T_sat: saturation },
      result: gradient,
      tex: '\\frac{dp}{dz} = \\left[A+2(B-A)x\\right](1-x)^{1/3}+Bx^3',
      source: `Müller-Steinhagen and Heck 1986; ${properties}`,
      outside,
    },
    twoPhaseGradientSteam,
  ),
  positionalCorrelation(
    {
      name: 'condensing-gradient-steam',
      says: 'Pressure that steam loses to friction per metre, averaged over its whole condensing length.',
      arguments: { m: rate, D_i: bore, T_sat: saturation },
      result: gradient,
      tex: '\\overline{\\frac{dp}{dz}} = \\int_0^1\\left\\{\\left[A+2(B-A)x\\right](1-x)^{1/3}+Bx^3\\right\\}dx',
      source: `Müller-Steinhagen and Heck 1986, integrated; ${properties}`,
      outside,
    },
    condensingGradientSteam,
  ),
  positionalCorrelation(
    {
      name: 'subcooling-conductance-water',
      says: 'Heat that a rivulet of condensate gives to the wall, per metre of tube and kelvin; an estimate.',
      arguments: {
        m: rate,
        D_i: bore,
        slope: { unit: 'rad', says: 'inclination of the tube', range: [0.017, 0.27] },
        T: { unit: 'K', says: 'temperature of the condensate', range: [273.15, 403.15] },
      },
      result: { symbol: "UA'", unit: 'W/(m K)' },
      tex: "UA' = 3.66\\,k_l\\frac{\\varphi^2}{\\varphi-\\sin\\varphi\\cos\\varphi}",
      source: `estimate of this project, ± 40 %; ${properties}`,
      outside,
    },
    subcoolingConductanceWater,
  ),
];
