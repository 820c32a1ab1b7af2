/**
 * Heat lost to the air by a surface of the still, as a table over the inside temperature so that the step loop only
 * interpolates. Outside: natural convection (Churchill–Chu plate or cylinder, McAdams plate) plus grey radiation;
 * inside: insulation in series. Wall and inside film are neglected: both are a hundred times better than air.
 */
import { STANDARD_GRAVITY } from '../constants.ts';
import { airConductivity, airDensity, airExpansivity, airHeatCapacity, airViscosity } from '../fluids/air.ts';
import { bisectedRoot } from '../maths/bisect.ts';
import { lerp } from '../maths/interpolate.ts';
import {
  nusseltHorizontalCylinder,
  nusseltHotSideUp,
  nusseltVerticalPlate,
  rayleighNumber,
} from '../transfer/natural-convection.ts';
import { radiantFlux } from '../transfer/radiation.ts';
import { ENTHALPY_ZERO } from './stream.ts';

export interface LossSurface {
  /** Which way it faces. */
  readonly facing: 'side' | 'up' | 'tube';
  /** Characteristic length of the convection, m: height of a side, area over perimeter of a lid, tube diameter. */
  readonly length: number;
  /** Outside area of the bare surface, m². */
  readonly area: number;
  readonly emissivity: number;
  /** Insulation, m and W/mK. */
  readonly insulation: number;
  readonly insulationConductivity: number;
  /** Radius for curved insulation, m; `null` for flat. */
  readonly radius: number | null;
}

const POINTS = 41;

/** Heat that leaves a surface at T_s, with the terms that make it. */
export interface SurfaceFlux {
  readonly T_s: number;
  /** Air at the mean of surface and air: expansivity, 1/K, viscosity and diffusivity, m²/s, conductivity, W/mK. */
  readonly beta: number;
  readonly nu: number;
  readonly alpha: number;
  readonly k: number;
  /** Length of the convection, m, and its numbers. */
  readonly length: number;
  readonly Ra: number;
  readonly Nu: number;
  /** By radiation, and by both ways together, W/m². */
  readonly radiant: number;
  readonly flux: number;
}

/** Convective and radiant flux from a surface at T_s to air at T_a. */
export function surfaceFlux(
  facing: LossSurface['facing'],
  length: number,
  emissivity: number,
  T_s: number,
  T_a: number,
  p: number,
): SurfaceFlux {
  const dT = T_s - T_a;
  const film = 0.5 * (T_s + T_a);
  const k = airConductivity(film);
  const rho = airDensity(film, p);
  const nu = airViscosity(film) / rho;
  const alpha = k / (rho * airHeatCapacity(film));
  const beta = airExpansivity(film);
  const Ra = rayleighNumber(beta, Math.abs(dT), length, nu, alpha, STANDARD_GRAVITY);
  const Nu =
    facing === 'side'
      ? nusseltVerticalPlate(Ra, nu / alpha)
      : facing === 'up'
        ? nusseltHotSideUp(Ra)
        : nusseltHorizontalCylinder(Ra, nu / alpha);
  const radiant = radiantFlux(emissivity, T_s, T_a);
  return { T_s, beta, nu, alpha, k, length, Ra, Nu, radiant, flux: ((Nu * k) / length) * dT + radiant };
}

/** Heat lost by a whole surface, W, and how it leaves the outside. */
export interface SurfaceLoss {
  readonly outside: SurfaceFlux;
  /** Resistance of the insulation, m²K/W of bare surface; outside area over bare area. */
  readonly resistance: number;
  readonly outerFactor: number;
  readonly loss: number;
}

/** Heat lost by a surface whose inside is at T, solved for the outside temperature by bisection. */
export function surfaceLoss(surface: LossSurface, T: number, T_a: number, p: number): SurfaceLoss {
  const { facing, emissivity, area, insulation, insulationConductivity, radius } = surface;
  if (insulation <= 0) {
    const outside = surfaceFlux(facing, surface.length, emissivity, T, T_a, p);
    return { outside, resistance: 0, outerFactor: 1, loss: area * outside.flux };
  }
  const outerFactor = radius === null ? 1 : (radius + insulation) / radius;
  const resistance =
    radius === null
      ? insulation / insulationConductivity
      : (radius * Math.log((radius + insulation) / radius)) / insulationConductivity;
  const length = facing === 'tube' ? surface.length * outerFactor : surface.length;
  const flux = (T_s: number): number => outerFactor * surfaceFlux(facing, length, emissivity, T_s, T_a, p).flux;
  const T_s = bisectedRoot((middle) => flux(middle) * resistance < T - middle, Math.min(T, T_a), Math.max(T, T_a));
  const outside = surfaceFlux(facing, length, emissivity, T_s, T_a, p);
  return { outside, resistance, outerFactor, loss: area * outerFactor * outside.flux };
}

/** Losses that were tabulated last, by all that they depend on: the many stills of a sizing or a forecast share most. */
const tabulated = new Map<string, Float64Array>();
const MOST_TABULATED = 128;

const surfaceKey = (surface: LossSurface): string =>
  [
    surface.facing,
    surface.length,
    surface.area,
    surface.emissivity,
    surface.insulation,
    surface.insulationConductivity,
    surface.radius,
  ].join();

function lossPoints(
  surfaces: readonly LossSurface[],
  airTemperature: number,
  airPressure: number,
  factor: number,
  start: number,
  step: number,
): Float64Array {
  const key = [airTemperature, airPressure, factor, ...surfaces.map(surfaceKey)].join();
  const known = tabulated.get(key);
  if (known !== undefined) return known;
  const points = Float64Array.from({ length: POINTS }, (_, k) => {
    const T = start + k * step;
    return surfaces.reduce(
      (sum, surface) => sum + factor * surfaceLoss(surface, T, airTemperature, airPressure).loss,
      0,
    );
  });
  if (tabulated.size >= MOST_TABULATED) tabulated.clear();
  tabulated.set(key, points);
  return points;
}

/** Table of the heat lost by one or several surfaces together over their inside temperature. */
export class LossTable {
  private readonly start: number;
  private readonly step: number;
  private readonly loss: Float64Array;
  readonly surfaces: readonly LossSurface[];
  readonly airTemperature: number;

  constructor(surfaces: readonly LossSurface[], airTemperature: number, airPressure: number, factor: number) {
    this.surfaces = surfaces;
    this.airTemperature = airTemperature;
    this.start = Math.min(airTemperature, 273.15);
    this.step = (403.15 - this.start) / (POINTS - 1);
    this.loss = lossPoints(surfaces, airTemperature, airPressure, factor, this.start, this.step);
  }

  /** Points of the table between which a temperature lies: temperature, K, and loss, W, below and above. */
  around(T: number): { readonly T_k: number; readonly step: number; readonly low: number; readonly high: number } {
    const k = this.below((T - this.start) / this.step);
    return {
      T_k: this.start + k * this.step,
      step: this.step,
      low: this.loss[k] as number,
      high: this.loss[k + 1] as number,
    };
  }

  /** Temperature below which nothing is cooled, K: the air's, or in frost the enthalpy zero. */
  coldest(): number {
    return Math.max(this.airTemperature, ENTHALPY_ZERO);
  }

  private below(position: number): number {
    return Math.min(POINTS - 2, Math.max(0, Math.floor(position)));
  }

  /**
   * Loss at inside temperature T, W; negative when the surface is colder than the air. Nothing freezes in this still:
   * within the last kelvin above the enthalpy zero a loss dies away.
   */
  at(T: number): number {
    const position = (T - this.start) / this.step;
    const k = this.below(position);
    const loss = lerp(this.loss[k] as number, this.loss[k + 1] as number, position - k);
    return loss > 0 && T < ENTHALPY_ZERO + 1 ? loss * Math.max(0, T - ENTHALPY_ZERO) : loss;
  }

  /**
   * Heat lost in a step by something of a heat capacity, J, which has a multiple of the table's area: at most what
   * brings it to the air's temperature, or in frost to the enthalpy zero.
   */
  inStep(T: number, dt: number, capacity: number, area = 1): number {
    const spare = capacity * (T - this.coldest());
    const lost = this.at(T) * area * dt;
    return spare > 0 ? Math.min(lost, spare) : Math.max(lost, spare);
  }
}
