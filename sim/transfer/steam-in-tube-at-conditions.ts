/**
 * Condensation and friction of steam in a tube from temperatures alone: the relations of this folder with water's
 * properties looked up by IAPWS. Film properties at the mean of saturation and wall temperature, ρ_v and h_fg at
 * saturation, standard gravity. For the desk reference; the step loop keeps its own properties.
 */
import { STANDARD_GRAVITY } from '../constants.ts';
import { entryNamed, forReaders, withProperties, type Argument, type Correlation } from '../correlation.ts';
import {
  latentHeat,
  liquidConductivity,
  liquidDensity,
  liquidHeatCapacity,
  liquidViscosity,
  vapourDensity,
  vapourViscosity,
  whereWaterEnds as outside,
} from '../fluids/water.ts';
import {
  cavalliniTransition,
  condensationFluxChato,
  dimensionlessVapourVelocity,
  filmCoefficientCavallini,
  filmCoefficientChato,
  filmCondensationCorrelations,
} from './film-condensation.ts';
import {
  filmCoefficientHorizontalTier,
  filmCoefficientNusseltVertical,
  surfaceCondensationCorrelations,
} from './film-condensation-on-surfaces.ts';
import { frictionGradient, meanTwoPhaseGradient, pressureDropCorrelations, twoPhaseGradient } from './pressure-drop.ts';

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

/** Film coefficient of steam in a horizontal tube: entry `film-coefficient-chato-steam`. */
export const filmCoefficientChatoSteam = chatoSteam(filmCoefficientChato);

/** Heat flux from steam to the wall of a horizontal tube: entry `condensation-flux-chato-steam`. */
export const condensationFluxChatoSteam = chatoSteam(condensationFluxChato);

/** The same with vapour shear counted: entry `film-coefficient-cavallini-steam`. */
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

/** Reynolds number of steam filling a tube: entry `vapour-reynolds-steam`. */
export const vapourReynoldsSteam = (m: number, D_i: number, T_sat: number): number =>
  (4 * m) / (Math.PI * D_i * vapourViscosity(T_sat));

/** Steam’s velocity against gravity acting on the film: entry `dimensionless-vapour-velocity-steam`. */
export const vapourVelocitySteam = (m: number, x: number, D_i: number, T_sat: number): number =>
  dimensionlessVapourVelocity(massFluxIn(m, D_i), x, D_i, liquidDensity(T_sat), vapourDensity(T_sat), STANDARD_GRAVITY);

/** Steam’s velocity at which shear takes over: entry `cavallini-transition-velocity-steam`. */
export const transitionVelocitySteam = (x: number, T_sat: number): number =>
  cavalliniTransition(x, liquidDensity(T_sat), vapourDensity(T_sat), liquidViscosity(T_sat), vapourViscosity(T_sat));

/** Film of steam on a vertical wall: entry `film-coefficient-nusselt-vertical-steam`. */
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

/** Film of steam outside a horizontal tube: entry `film-coefficient-tube-outside-steam`. */
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

/** Friction gradient of dry steam: entry `friction-gradient-steam`. */
export const frictionGradientSteam = (m: number, D_i: number, T_sat: number): number =>
  frictionGradient(massFluxIn(m, D_i), D_i, vapourDensity(T_sat), vapourViscosity(T_sat), 0);

const frictionGradientCondensate = (m: number, D_i: number, T_sat: number): number =>
  frictionGradient(massFluxIn(m, D_i), D_i, liquidDensity(T_sat), liquidViscosity(T_sat), 0);

/** Friction gradient of steam and condensate: entry `two-phase-gradient-steam`. */
export const twoPhaseGradientSteam = (m: number, x: number, D_i: number, T_sat: number): number =>
  twoPhaseGradient(frictionGradientCondensate(m, D_i, T_sat), frictionGradientSteam(m, D_i, T_sat), x);

/** Its mean over a whole condensing length: entry `condensing-gradient-steam`. */
export const condensingGradientSteam = (m: number, D_i: number, T_sat: number): number =>
  meanTwoPhaseGradient(frictionGradientCondensate(m, D_i, T_sat), frictionGradientSteam(m, D_i, T_sat), 1, 0);

const saturation: Argument = { unit: 'K', says: 'saturation temperature', range: [273.15, 403.15] };
const wall: Argument = { unit: 'K', says: 'wall temperature', range: [273.15, 403.15] };
const bore: Argument = { unit: 'm', says: 'bore of the tube', range: [0.003, 0.05] };
const rate: Argument = { unit: 'kg/s', says: 'flow of steam and condensate' };
const vapourShare: Argument = { unit: '1', says: 'vapour share of the flow', range: [0, 1] };
const properties = 'properties by IAPWS R7-97, R12-08, R15-11';

export const steamInTubeAtConditions: readonly Correlation[] = [
  withProperties(entryNamed(filmCondensationCorrelations, 'film-coefficient-chato'), properties, {
    name: 'film-coefficient-chato-steam',
    says: 'Mean film coefficient of steam condensing inside a horizontal tube.',
    arguments: { T_sat: saturation, T_wall: wall, D_i: bore },
    outside: `${outside}; zero where the wall is not colder`,
    compute: filmCoefficientChatoSteam,
  }),
  withProperties(entryNamed(filmCondensationCorrelations, 'condensation-flux-chato'), properties, {
    name: 'condensation-flux-chato-steam',
    says: 'Heat flux from steam condensing inside a horizontal tube to its wall.',
    arguments: { T_sat: saturation, T_wall: wall, D_i: bore },
    outside: `${outside}; zero where the wall is not colder`,
    compute: condensationFluxChatoSteam,
  }),
  withProperties(entryNamed(filmCondensationCorrelations, 'film-coefficient-cavallini'), properties, {
    name: 'film-coefficient-cavallini-steam',
    says: 'Local film coefficient of steam condensing inside a horizontal tube, vapour shear counted.',
    arguments: {
      m: rate,
      x: vapourShare,
      D_i: bore,
      T_sat: saturation,
      dT: { unit: 'K', says: 'saturation temperature less wall temperature', range: [0, 100], isDifference: true },
    },
    outside,
    compute: filmCoefficientCavalliniSteam,
  }),
  forReaders({
    name: 'vapour-reynolds-steam',
    says: 'Reynolds number of steam filling a tube.',
    arguments: { m: rate, D_i: bore, T_sat: saturation },
    result: { symbol: 'Re_v', unit: '1' },
    tex: 'Re_v = \\frac{4\\dot m}{\\pi D_i\\mu_v}',
    source: `definition; ${properties}`,
    outside,
    compute: vapourReynoldsSteam,
  }),
  withProperties(entryNamed(filmCondensationCorrelations, 'dimensionless-vapour-velocity'), properties, {
    name: 'dimensionless-vapour-velocity-steam',
    says: 'Vapour velocity of condensing steam against gravity acting on the film.',
    arguments: { m: rate, x: vapourShare, D_i: bore, T_sat: saturation },
    outside,
    compute: vapourVelocitySteam,
  }),
  withProperties(entryNamed(filmCondensationCorrelations, 'cavallini-transition-velocity'), properties, {
    name: 'cavallini-transition-velocity-steam',
    says: 'Dimensionless vapour velocity of steam above which shear shapes the film.',
    arguments: { x: vapourShare, T_sat: saturation },
    outside,
    compute: transitionVelocitySteam,
  }),
  withProperties(entryNamed(surfaceCondensationCorrelations, 'film-coefficient-nusselt-vertical'), properties, {
    name: 'film-coefficient-nusselt-vertical-steam',
    says: 'Mean film coefficient of steam condensing as a laminar film on a vertical wall.',
    arguments: { T_sat: saturation, T_wall: wall, L: { unit: 'm', says: 'height of the wall' } },
    outside: `${outside}; zero where the wall is not colder`,
    compute: filmCoefficientNusseltVerticalSteam,
  }),
  withProperties(entryNamed(surfaceCondensationCorrelations, 'film-coefficient-horizontal-tube-outside'), properties, {
    name: 'film-coefficient-tube-outside-steam',
    says: 'Mean film coefficient of steam condensing on the outside of a horizontal tube.',
    arguments: { T_sat: saturation, T_wall: wall, D: { unit: 'm', says: 'outside diameter' } },
    outside: `${outside}; zero where the wall is not colder`,
    compute: filmCoefficientTubeOutsideSteam,
  }),
  withProperties(entryNamed(pressureDropCorrelations, 'friction-gradient'), properties, {
    name: 'friction-gradient-steam',
    says: 'Pressure that dry steam loses to friction per length of smooth tube.',
    arguments: { m: rate, D_i: bore, T_sat: saturation },
    outside,
    compute: frictionGradientSteam,
  }),
  withProperties(entryNamed(pressureDropCorrelations, 'two-phase-gradient'), properties, {
    name: 'two-phase-gradient-steam',
    says: 'Pressure that steam and condensate lose to friction per length of smooth tube, at one place.',
    arguments: { m: rate, x: vapourShare, D_i: bore, T_sat: saturation },
    outside,
    compute: twoPhaseGradientSteam,
  }),
  withProperties(entryNamed(pressureDropCorrelations, 'mean-two-phase-gradient'), properties, {
    name: 'condensing-gradient-steam',
    says: 'Pressure that steam loses to friction per length, averaged over its whole condensing length.',
    arguments: { m: rate, D_i: bore, T_sat: saturation },
    outside,
    compute: condensingGradientSteam,
  }),
];
