/**
 * Heat lost to the air by a surface of the still, as a table over the inside temperature so that the step loop only
 * interpolates. Outside: natural convection (Churchill–Chu plate or cylinder, McAdams plate) plus grey radiation;
 * inside: insulation in series. Wall and inside film are neglected: both are a hundred times better than air.
 */
import { STANDARD_GRAVITY } from '../constants.ts';
import { airConductivity, airDensity, airExpansivity, airHeatCapacity, airViscosity } from '../fluids/air.ts';
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

/** Convective and radiant flux from a surface at T_s to air at T_a, W/m². */
export function bareFlux(
  facing: LossSurface['facing'],
  length: number,
  emissivity: number,
  T_s: number,
  T_a: number,
  p: number,
): number {
  const dT = T_s - T_a;
  if (dT === 0) return 0;
  const film = 0.5 * (T_s + T_a);
  const k = airConductivity(film);
  const rho = airDensity(film, p);
  const nu = airViscosity(film) / rho;
  const alpha = k / (rho * airHeatCapacity(film));
  const Ra = rayleighNumber(airExpansivity(film), Math.abs(dT), length, nu, alpha, STANDARD_GRAVITY);
  const Nu =
    facing === 'side'
      ? nusseltVerticalPlate(Ra, nu / alpha)
      : facing === 'up'
        ? nusseltHotSideUp(Ra)
        : nusseltHorizontalCylinder(Ra, nu / alpha);
  return ((Nu * k) / length) * dT + radiantFlux(emissivity, T_s, T_a);
}

/** Heat lost by a whole surface whose inside is at T, W, solved for the outside temperature by bisection. */
export function surfaceLoss(surface: LossSurface, T: number, T_a: number, p: number): number {
  const { insulation, insulationConductivity, radius } = surface;
  if (insulation <= 0) return surface.area * bareFlux(surface.facing, surface.length, surface.emissivity, T, T_a, p);
  const outerFactor = radius === null ? 1 : (radius + insulation) / radius;
  const resistance =
    radius === null
      ? insulation / insulationConductivity
      : (radius * Math.log((radius + insulation) / radius)) / insulationConductivity;
  const length = surface.facing === 'tube' ? surface.length * outerFactor : surface.length;
  let low = Math.min(T, T_a);
  let high = Math.max(T, T_a);
  for (let pass = 0; pass < 60; pass++) {
    const T_s = 0.5 * (low + high);
    const out = outerFactor * bareFlux(surface.facing, length, surface.emissivity, T_s, T_a, p);
    if (out * resistance < T - T_s) low = T_s;
    else high = T_s;
  }
  return surface.area * outerFactor * bareFlux(surface.facing, length, surface.emissivity, 0.5 * (low + high), T_a, p);
}

/** Table of the heat lost by one or several surfaces together over their inside temperature. */
export class LossTable {
  private readonly start: number;
  private readonly step: number;
  private readonly loss = new Float64Array(POINTS);
  readonly airTemperature: number;

  constructor(surfaces: readonly LossSurface[], airTemperature: number, airPressure: number, factor: number) {
    this.airTemperature = airTemperature;
    this.start = Math.min(airTemperature, 273.15);
    this.step = (403.15 - this.start) / (POINTS - 1);
    for (let k = 0; k < POINTS; k++) {
      const T = this.start + k * this.step;
      this.loss[k] = surfaces.reduce(
        (sum, surface) => sum + factor * surfaceLoss(surface, T, airTemperature, airPressure),
        0,
      );
    }
  }

  /**
   * Loss at inside temperature T, W; negative when the surface is colder than the air. Nothing freezes in this still:
   * within the last kelvin above the enthalpy zero a loss dies away.
   */
  at(T: number): number {
    const place = (T - this.start) / this.step;
    const k = Math.min(POINTS - 2, Math.max(0, Math.floor(place)));
    const low = this.loss[k] as number;
    const loss = low + (place - k) * ((this.loss[k + 1] as number) - low);
    return loss > 0 && T < ENTHALPY_ZERO + 1 ? loss * Math.max(0, T - ENTHALPY_ZERO) : loss;
  }

  /** Heat lost in a step by something of a heat capacity, J: at most what brings it to the air's temperature. */
  inStep(T: number, dt: number, capacity: number): number {
    const spare = capacity * (T - this.airTemperature);
    const lost = this.at(T) * dt;
    return spare > 0 ? Math.min(lost, spare) : Math.max(lost, spare);
  }
}
