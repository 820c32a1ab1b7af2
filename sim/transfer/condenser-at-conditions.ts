/**
 * A whole condenser tube from temperatures alone: steam inside, wall, water outside, the wall temperature found. Ideal
 * lower bounds for the desk reference: no air, no fouling, no neighbouring turns, latent heat only. The engine marches
 * along the tube instead.
 */
import { STANDARD_GRAVITY } from '../constants.ts';
import { forReaders, type Argument, type Correlation } from '../correlation.ts';
import {
  latentHeat,
  liquidConductivity,
  liquidDensity,
  liquidExpansivity,
  liquidHeatCapacity,
  liquidViscosity,
  whereWaterEnds as outside,
} from '../fluids/water.ts';
import { bisect, bisectedRoot } from '../maths/bisect.ts';
import { nusseltAnnulus } from './annulus.ts';
import { cylinderResistance } from './conduction.ts';
import { nusseltCrossFlowCylinder } from './cross-flow.ts';
import { logMeanDifference } from './exchanger.ts';
import { nusseltHorizontalCylinder, rayleighNumber } from './natural-convection.ts';
import { condensationFluxChatoSteam } from './steam-in-tube-at-conditions.ts';

/** Natural convection from a horizontal tube to still water: entry `natural-convection-tube-in-water`. */
export const naturalConvectionTubeInWater = (T_wall: number, T_bulk: number, D_o: number): number => {
  const film = 0.5 * (T_wall + T_bulk);
  const k = liquidConductivity(film);
  const rho = liquidDensity(film);
  const nu = liquidViscosity(film) / rho;
  const alpha = k / (rho * liquidHeatCapacity(film));
  const Ra = rayleighNumber(liquidExpansivity(film), T_wall - T_bulk, D_o, nu, alpha, STANDARD_GRAVITY);
  return (nusseltHorizontalCylinder(Ra, nu / alpha) * k) / D_o;
};

/** Cross flow of water over a horizontal tube: entry `cross-flow-tube-in-water`. */
export const crossFlowTubeInWater = (V: number, T: number, D_o: number): number => {
  const k = liquidConductivity(T);
  const mu = liquidViscosity(T);
  const Re = (liquidDensity(T) * V * D_o) / mu;
  return (nusseltCrossFlowCylinder(Re, (mu * liquidHeatCapacity(T)) / k) * k) / D_o;
};

/**
 * Heat given per metre of tube, W/m, and through it the wall: the inside wall temperature at which the film inside
 * brings what the wall and the film outside take, by halving the interval between coolant and steam.
 */
const heatPerMetre = (
  T_sat: number,
  T_water: number,
  D_i: number,
  D_o: number,
  k: number,
  outside: (T_outerWall: number) => number,
): number => {
  if (!(T_sat > T_water)) return 0;
  const resistance = cylinderResistance(D_i, D_o, k);
  let brought = 0;
  const bringsMore = (T_wi: number): boolean => {
    brought = Math.PI * D_i * condensationFluxChatoSteam(T_sat, T_wi, D_i);
    const T_wo = Math.max(T_water, T_wi - brought * resistance);
    return brought > Math.PI * D_o * outside(T_wo) * (T_wo - T_water);
  };
  bisect(bringsMore, T_water, T_sat, 60);
  return brought;
};

const tubHeatPerMetre = (T_sat: number, T_water: number, D_i: number, D_o: number, k: number): number =>
  heatPerMetre(T_sat, T_water, D_i, D_o, k, (T_wo) => naturalConvectionTubeInWater(T_wo, T_water, D_o));

/** Overall coefficient of a coil turn in still water: entry `tube-in-tub-overall`. */
export const tubeInTubOverall = (T_sat: number, T_water: number, D_i: number, D_o: number, k: number): number =>
  T_sat > T_water ? tubHeatPerMetre(T_sat, T_water, D_i, D_o, k) / (Math.PI * D_o * (T_sat - T_water)) : 0;

/** Outer wall temperature of a coil turn in still water: entry `tube-in-tub-wall-temperature`. */
export const tubeInTubWall = (T_sat: number, T_water: number, D_i: number, D_o: number, k: number): number => {
  const perMetre = tubHeatPerMetre(T_sat, T_water, D_i, D_o, k);
  const taken = (T_wo: number): number =>
    Math.PI * D_o * naturalConvectionTubeInWater(T_wo, T_water, D_o) * (T_wo - T_water);
  return bisectedRoot((T_wo) => taken(T_wo) < perMetre, Math.min(T_sat, T_water), T_sat);
};

/** Length of coil that condenses all the steam: entry `coil-length-to-condense`. */
export const coilLengthToCondense = (
  m: number,
  T_sat: number,
  T_water: number,
  D_i: number,
  D_o: number,
  k: number,
): number => {
  const perMetre = tubHeatPerMetre(T_sat, T_water, D_i, D_o, k);
  if (!(m > 0)) return 0;
  return perMetre > 0 ? (m * latentHeat(T_sat)) / perMetre : Number.MAX_VALUE;
};

/** Temperature at which the cooling water leaves a jacket: entry `jacket-coolant-outlet`. */
export const jacketOutlet = (m: number, m_c: number, T_in: number, T_sat: number): number => {
  const duty = m * latentHeat(T_sat);
  let T_out = T_in;
  for (let step = 0; step < 20; step += 1) {
    T_out = T_in + duty / (m_c * liquidHeatCapacity(Math.min(T_sat, 0.5 * (T_in + T_out))));
  }
  return T_out;
};

const jacketMean = (m: number, m_c: number, T_in: number, T_sat: number): number =>
  0.5 * (T_in + Math.min(T_sat, jacketOutlet(m, m_c, T_in, T_sat)));

/** Reynolds number of the cooling water in a jacket: entry `jacket-reynolds`. */
export const jacketReynolds = (m: number, m_c: number, T_in: number, D_o: number, D_s: number, T_sat: number): number =>
  (4 * m_c) / (Math.PI * (D_s + D_o) * liquidViscosity(jacketMean(m, m_c, T_in, T_sat)));

/** Film coefficient of the cooling water in a jacket: entry `jacket-film-coefficient`. */
export const jacketFilmCoefficient = (
  m: number,
  m_c: number,
  T_in: number,
  D_o: number,
  D_s: number,
  T_sat: number,
  L: number,
): number => {
  const T = jacketMean(m, m_c, T_in, T_sat);
  const k = liquidConductivity(T);
  const Pr = (liquidViscosity(T) * liquidHeatCapacity(T)) / k;
  const Re = jacketReynolds(m, m_c, T_in, D_o, D_s, T_sat);
  return (nusseltAnnulus(Re, Pr, D_o, D_s, L) * k) / (D_s - D_o);
};

/** Change of a length, as a share of it, at which the search for it ends. */
const LENGTH_FOUND = 1e-12;

/**
 * Length of jacketed tube that condenses all the steam: entry `jacket-condensing-length`. The coolant’s coefficient and
 * the length are found together.
 */
export const jacketCondensingLength = (
  m: number,
  m_c: number,
  T_in: number,
  D_i: number,
  D_o: number,
  D_s: number,
  T_sat: number,
  k: number,
): number => {
  if (!(m > 0)) return 0;
  const difference = logMeanDifference(T_sat - T_in, T_sat - jacketOutlet(m, m_c, T_in, T_sat));
  if (difference === 0) return Number.MAX_VALUE;
  const duty = m * latentHeat(T_sat);
  let L = 1;
  for (let step = 0; step < 40; step += 1) {
    const h_o = jacketFilmCoefficient(m, m_c, T_in, D_o, D_s, T_sat, L);
    const next = duty / heatPerMetre(T_sat, T_sat - difference, D_i, D_o, k, () => h_o);
    const isFound = Math.abs(next - L) <= LENGTH_FOUND * next;
    L = next;
    if (isFound) break;
  }
  return L;
};

/** Overall coefficient of the same tube: entry `jacket-overall`. */
export const jacketOverall = (
  m: number,
  m_c: number,
  T_in: number,
  D_i: number,
  D_o: number,
  D_s: number,
  T_sat: number,
  k: number,
): number => {
  const difference = logMeanDifference(T_sat - T_in, T_sat - jacketOutlet(m, m_c, T_in, T_sat));
  if (difference === 0 || !(m > 0)) return 0;
  const L = jacketCondensingLength(m, m_c, T_in, D_i, D_o, D_s, T_sat, k);
  return (m * latentHeat(T_sat)) / (Math.PI * D_o * L * difference);
};

const kelvin = (says: string): Argument => ({ unit: 'K', says, range: [273.15, 403.15] });
const T_sat = kelvin('saturation temperature');
const tube: Readonly<Record<string, Argument>> = {
  D_i: { unit: 'm', says: 'bore of the tube' },
  D_o: { unit: 'm', says: 'outside diameter of the tube' },
};
const wall: Argument = { unit: 'W/(m K)', says: 'conductivity of the wall' };
const inTub: Readonly<Record<string, Argument>> = {
  T_sat,
  T_water: kelvin('temperature of the water in the tub'),
  ...tube,
  k: wall,
};
const steam: Argument = { unit: 'kg/s', says: 'flow of steam' };
const coolant: Readonly<Record<string, Argument>> = {
  m: steam,
  m_c: { unit: 'kg/s', says: 'flow of cooling water' },
  T_in: kelvin('temperature of the cooling water entering'),
};
const shell: Argument = { unit: 'm', says: 'bore of the jacket' };
const inJacket: Readonly<Record<string, Argument>> = { ...coolant, ...tube, D_s: shell, T_sat, k: wall };
const properties = 'properties by IAPWS';
const tubSource = `Chato inside, Churchill–Chu outside, wall found between; ${properties}`;
const jacketSource = `Chato inside, VDI annulus outside, log-mean difference; ${properties}`;

export const condenserAtConditions: readonly Correlation[] = [
  forReaders({
    name: 'natural-convection-tube-in-water',
    says: 'Coefficient of natural convection from a horizontal tube to still water.',
    arguments: {
      T_wall: kelvin('temperature of the wall'),
      T_bulk: kelvin('temperature of the water'),
      D_o: { unit: 'm', says: 'outside diameter' },
    },
    result: { symbol: 'h_o', unit: 'W/(m² K)' },
    tex: 'h_o = \\frac{k}{D_o}\\left\\{0.60+\\frac{0.387Ra^{1/6}}{\\left[1+(0.559/Pr)^{9/16}\\right]^{8/27}}\\right\\}^2',
    source: `Churchill and Chu 1975, film temperature; ${properties}`,
    outside,
    compute: naturalConvectionTubeInWater,
  }),
  forReaders({
    name: 'cross-flow-tube-in-water',
    says: 'Coefficient of stirred water passing over a horizontal tube.',
    arguments: {
      V: { unit: 'm/s', says: 'speed of the water', range: [0, 1] },
      T: kelvin('film temperature'),
      D_o: { unit: 'm', says: 'outside diameter' },
    },
    result: { symbol: 'h_o', unit: 'W/(m² K)' },
    tex: 'h_o = \\frac{k}{D_o}Nu(Re,Pr)',
    source: `Churchill and Bernstein 1977; ${properties}`,
    outside,
    compute: crossFlowTubeInWater,
  }),
  forReaders({
    name: 'tube-in-tub-overall',
    says: 'Overall coefficient, on the outside area, of a clean coil turn condensing steam in still water.',
    arguments: inTub,
    result: { symbol: 'U_o', unit: 'W/(m² K)' },
    tex: '\\frac{1}{U_o} = \\frac{D_o}{h_iD_i}+\\frac{D_o\\ln(D_o/D_i)}{2k}+\\frac{1}{h_o}',
    source: tubSource,
    outside: `${outside}; zero where the water is not colder than the steam`,
    compute: tubeInTubOverall,
  }),
  forReaders({
    name: 'tube-in-tub-wall-temperature',
    says: 'Outer wall temperature of a clean coil turn condensing steam in still water.',
    arguments: inTub,
    result: { symbol: 'T_w', unit: 'K' },
    tex: 'U_o(T_{sat}-T_{water}) = h_o(T_w-T_{water})',
    source: tubSource,
    outside,
    compute: tubeInTubWall,
  }),
  forReaders({
    name: 'coil-length-to-condense',
    says: 'Least length of clean coil that condenses a steam rate in still water of one temperature.',
    arguments: { m: steam, ...inTub },
    result: { symbol: 'L', unit: 'm' },
    tex: 'L = \\frac{\\dot m\\,h_{fg}}{U_o\\,\\pi D_o(T_{sat}-T_{water})}',
    source: tubSource,
    outside: `${outside}; beyond all measure when the water is as hot as the steam`,
    compute: coilLengthToCondense,
  }),
  forReaders({
    name: 'jacket-coolant-outlet',
    says: 'Temperature at which cooling water leaves a jacket that condenses all the steam.',
    arguments: { ...coolant, T_sat },
    result: { symbol: 'T_{out}', unit: 'K' },
    tex: 'T_{out} = T_{in}+\\frac{\\dot m\\,h_{fg}}{\\dot m_cc_p}',
    source: `energy balance; ${properties}`,
    outside: `${outside}; may exceed the steam's temperature, which no jacket reaches`,
    compute: jacketOutlet,
  }),
  forReaders({
    name: 'jacket-reynolds',
    says: 'Reynolds number of the cooling water in a jacket, on the hydraulic diameter of the gap.',
    arguments: { ...coolant, D_o: { unit: 'm', says: 'outside diameter of the tube' }, D_s: shell, T_sat },
    result: { symbol: 'Re', unit: '1' },
    tex: 'Re = \\frac{4\\dot m_c}{\\pi(D_s+D_o)\\mu}',
    source: `definition; ${properties}`,
    outside,
    compute: jacketReynolds,
  }),
  forReaders({
    name: 'jacket-film-coefficient',
    says: 'Film coefficient of the cooling water in a jacket of known length; laminar values are a lower bound.',
    arguments: {
      ...coolant,
      D_o: { unit: 'm', says: 'outside diameter of the tube' },
      D_s: shell,
      T_sat,
      L: { unit: 'm', says: 'length' },
    },
    result: { symbol: 'h_o', unit: 'W/(m² K)' },
    tex: 'h_o = \\frac{k}{D_s-D_o}Nu(Re,Pr,D_o/D_s,L)',
    source: jacketSource,
    outside,
    compute: jacketFilmCoefficient,
  }),
  forReaders({
    name: 'jacket-overall',
    says: 'Overall coefficient, on the outside area, of a clean jacketed tube condensing all its steam.',
    arguments: inJacket,
    result: { symbol: 'U_o', unit: 'W/(m² K)' },
    tex: 'U_o = \\frac{\\dot m\\,h_{fg}}{\\pi D_oL\\,\\Delta T_{lm}}',
    source: jacketSource,
    outside: `${outside}; zero where the coolant would reach the steam’s temperature`,
    compute: jacketOverall,
  }),
  forReaders({
    name: 'jacket-condensing-length',
    says: 'Least length of clean jacketed tube that condenses all its steam.',
    arguments: inJacket,
    result: { symbol: 'L', unit: 'm' },
    tex: 'L = \\frac{\\dot m\\,h_{fg}}{U_o\\,\\pi D_o\\,\\Delta T_{lm}}',
    source: jacketSource,
    outside: `${outside}; beyond all measure when the coolant would reach the steam's temperature`,
    compute: jacketCondensingLength,
  }),
];
