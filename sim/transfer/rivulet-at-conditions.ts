/**
 * A rivulet of water in a sloping tube or coil from temperatures alone: what a metre takes, and how long a tube in still
 * water must be to cool it. For the desk reference; the engine marches along the tube with its own properties.
 */
import { STANDARD_GRAVITY } from '../constants.ts';
import { forReaders, type Argument, type Correlation } from '../correlation.ts';
import { liquidConductivity, liquidDensity, liquidHeatCapacity, liquidViscosity } from '../fluids/water.ts';
import { naturalConvectionTubeInWater } from './condenser-at-conditions.ts';
import { rivuletConductance, rivuletConductanceCoil, rivuletHalfAngle, rivuletWallShare } from './rivulet.ts';

/** Diameter of a coil that stands for a straight tube, and distance that stands for far from the start, m. */
const STRAIGHT = Infinity;
const FAR = Infinity;

const angleAt = (m: number, D_i: number, slope: number, T: number): number =>
  rivuletHalfAngle(m, D_i, slope, liquidDensity(T), liquidViscosity(T), STANDARD_GRAVITY);

/** Conductance of a stretch of rivulet of water at T that wets the tube up to phi, W/mK. */
const conductanceAt = (
  phi: number,
  m: number,
  D_i: number,
  D_coil: number,
  s: number,
  z_1: number,
  z_2: number,
  T: number,
): number => {
  const mu = liquidViscosity(T);
  const k = liquidConductivity(T);
  const cp = liquidHeatCapacity(T);
  return D_coil < STRAIGHT
    ? rivuletConductanceCoil(phi, m, D_i, D_coil, s, z_1, z_2, mu, k, cp)
    : rivuletConductance(phi, m, D_i, z_1, z_2, mu, k, cp);
};

/** Developed rivulet of water in a straight tube: entry `rivulet-conductance-water`. */
export const rivuletConductanceWater = (m: number, D_i: number, slope: number, T: number): number =>
  conductanceAt(angleAt(m, D_i, slope, T), m, D_i, STRAIGHT, 0, FAR, FAR, T);

/** Developed rivulet of water in a coil: entry `rivulet-conductance-water-coil`. */
export const rivuletConductanceWaterCoil = (
  m: number,
  D_i: number,
  slope: number,
  D_coil: number,
  s: number,
  T: number,
): number => conductanceAt(angleAt(m, D_i, slope, T), m, D_i, D_coil, s, FAR, FAR, T);

/** Equal falls of temperature into which a length is divided, and passes that settle wall and stretch in each. */
const STEPS = 150;
const PASSES = 4;

/** Length of tube in still water that cools condensate from T_in to T_out, m; the entry counts from its start. */
function lengthToCool(
  m: number,
  T_in: number,
  T_out: number,
  T_water: number,
  D_i: number,
  t: number,
  k_w: number,
  slope: number,
  D_coil: number,
  s: number,
): number {
  if (!(m > 0) || T_out >= T_in) return 0;
  if (T_out <= T_water) return Number.MAX_VALUE;
  const D_o = D_i + 2 * t;
  const fall = (T_in - T_out) / STEPS;
  let z = 0;
  let stretch = 0.001;
  let wall = 0.5 * (T_in + T_water);
  for (let step = 0; step < STEPS; step++) {
    const T = T_in - (step + 0.5) * fall;
    const heat = m * liquidHeatCapacity(T) * fall;
    const phi = angleAt(m, D_i, slope, T);
    for (let pass = 0; pass < PASSES; pass++) {
      const inner = conductanceAt(phi, m, D_i, D_coil, s, z, z + stretch, T);
      const h_o = naturalConvectionTubeInWater(wall, T_water, D_o);
      const outer = Math.PI * D_o * h_o * rivuletWallShare(phi, D_i, t, k_w, h_o);
      wall = T_water + ((T - T_water) * inner) / (inner + outer);
      stretch = (heat * (1 / inner + 1 / outer)) / (T - T_water);
    }
    z += stretch;
  }
  return z;
}

/** Length of straight tube in still water that cools condensate: entry `rivulet-cooling-length`. */
export const rivuletCoolingLength = (
  m: number,
  T_in: number,
  T_out: number,
  T_water: number,
  D_i: number,
  t: number,
  k_w: number,
  slope: number,
): number => lengthToCool(m, T_in, T_out, T_water, D_i, t, k_w, slope, STRAIGHT, 0);

/** The same for a coil: entry `rivulet-cooling-length-coil`. */
export const rivuletCoolingLengthCoil = lengthToCool;

const kelvin = (says: string): Argument => ({ unit: 'K', says, range: [273.15, 403.15] });
const rate: Argument = { unit: 'kg/s', says: 'condensate in the tube' };
const bore: Argument = { unit: 'm', says: 'bore of the tube', range: [0.003, 0.05] };
const slope: Argument = { unit: 'rad', says: 'inclination of the tube', range: [0.017, 0.27] };
const coil: Readonly<Record<string, Argument>> = {
  D_coil: { unit: 'm', says: 'diameter of the coil' },
  s: { unit: '1', says: 'share of the solved curvature that counts', range: [0, 1.1] },
};
const cooling: Readonly<Record<string, Argument>> = {
  m: rate,
  T_in: kelvin('temperature of the condensate when the last steam is gone'),
  T_out: kelvin('temperature of the condensate at the outlet'),
  T_water: kelvin('temperature of the still water around the tube'),
  D_i: bore,
  t: { unit: 'm', says: 'wall of the tube', range: [0.0003, 0.003] },
  k_w: { unit: 'W/(m K)', says: 'conductivity of the wall', range: [0.2, 400] },
  slope,
};
const conductance = { symbol: "UA'", unit: 'W/(m K)' };
const length = { symbol: 'L', unit: 'm' };
const source = 'solved by this project, not measured; a surface that clings or draws back changes it by × 0.7 to × 1.4';
const outside = 'evaluated';
const conductanceTex = "UA' = Nu\\,k_l\\frac{2R\\varphi}{D_h}";
const lengthTex = "L = \\int\\frac{\\dot m\\,c_p}{T-T_{water}}\\left(\\frac1{UA'}+\\frac{1}{\\pi D_oh_oa}\\right)dT";

export const rivuletAtConditionsCorrelations: readonly Correlation[] = [
  forReaders({
    name: 'rivulet-conductance-water',
    says: 'Heat that a rivulet of water gives to the wall of a straight sloping tube, per length and degree.',
    arguments: { m: rate, D_i: bore, slope, T: kelvin('temperature of the condensate') },
    result: conductance,
    tex: conductanceTex,
    source,
    outside,
    compute: rivuletConductanceWater,
  }),
  forReaders({
    name: 'rivulet-conductance-water-coil',
    says: 'Heat that a rivulet of water gives to the wall of a coil, per length and degree.',
    arguments: { m: rate, D_i: bore, slope, ...coil, T: kelvin('temperature of the condensate') },
    result: conductance,
    tex: conductanceTex,
    source,
    outside,
    compute: rivuletConductanceWaterCoil,
  }),
  forReaders({
    name: 'rivulet-cooling-length',
    says: 'Length of straight sloping tube in still water that cools condensate to a temperature.',
    arguments: cooling,
    result: length,
    tex: lengthTex,
    source,
    outside: 'no length (the largest number) to water as warm as the outlet',
    compute: rivuletCoolingLength,
  }),
  forReaders({
    name: 'rivulet-cooling-length-coil',
    says: 'Length of coil in still water that cools condensate to a temperature.',
    arguments: { ...cooling, ...coil },
    result: length,
    tex: lengthTex,
    source,
    outside: 'no length (the largest number) to water as warm as the outlet',
    compute: rivuletCoolingLengthCoil,
  }),
];
