/** What a condenser sees of its cooling water: a temperature and a film coefficient at every segment. */
import { tableTemperatureFromLiquidEnthalpy } from '../fluids/water-table.ts';
import { ICE_MELTING } from './tub.ts';

/**
 * The film outside one piece of tube, with the terms of its last evaluation by the symbols of the relations; NaN what
 * its kind of condenser does not use.
 */
export class OutsideFilm {
  /** Water and outer wall, K. */
  T_c = NaN;
  T_w = NaN;
  /** Length that Nusselt number and coefficient are based on, m: tube outside, or hydraulic diameter of the gap. */
  D = NaN;
  k = NaN;
  Pr = NaN;
  Re = NaN;
  /** Of a coil in a tub: natural convection, and the cross-flow of stirred water. */
  beta = NaN;
  nu = NaN;
  alpha = NaN;
  Ra = NaN;
  natural = NaN;
  forced = NaN;
  Nu = NaN;
  /** Share of the coefficient that close turns leave each other. */
  share = 1;
  /** W/m²K. */
  coefficient = 0;
}

export abstract class Coolant {
  /** Water temperature at each segment of the tube, from the vapour end, K. */
  readonly segmentTemperature: Float64Array;
  /** Heat given by each segment in this step, J; written by the condenser. */
  readonly segmentHeat: Float64Array;
  /**
   * Share by which each segment's conductance counts in this step (backward Euler): water that warms while it cools
   * takes less heat than its first temperature says; 1 where the coolant predicts its temperature.
   */
  readonly implicitFactor: Float64Array;
  /** Flow let in or pumped, kg/s. */
  flow = 0;
  /** Temperature of the water coming in, K. */
  inletTemperature = 288.15;
  /** Temperature of the water leaving, or of the tub surface, K. */
  outletTemperature = 288.15;
  /** Tap water used so far, kg. */
  used = 0;
  /** Water and energy that came in, left by overflow or drain, and evaporated so far. */
  enthalpyIn = 0;
  overflow = 0;
  overflowEnthalpy = 0;
  evaporated = 0;
  evaporatedEnthalpy = 0;
  /** Heat lost through walls and surface so far, J. */
  lossEnergy = 0;
  iceLeft = 0;
  iceAdded = 0;
  /** Whether `predictTemperature` asks for the segments’ conductances. */
  readonly predictsTemperature: boolean = true;
  /** Segments of the tube that stand above the water. */
  uncovered = 0;
  /** Whether water beside the tube boiled in the last step. */
  boils = false;

  constructor(segments: number, startTemperature: number) {
    this.segmentTemperature = new Float64Array(segments).fill(startTemperature);
    this.segmentHeat = new Float64Array(segments);
    this.implicitFactor = new Float64Array(segments).fill(1);
    this.outletTemperature = startTemperature;
  }

  /** Film coefficient on the water side at a segment whose outer wall is at T_wall, W/m²K; its terms go to `film`. */
  abstract filmCoefficient(segment: number, wallTemperature: number, film: OutsideFilm): number;
  /**
   * Sets `segmentTemperature` to what the water will be at the end of the step, given each segment's conductance, W/K,
   * and the temperature inside where it begins, K. Water that streams past many segments in a step needs this; a tub does not.
   */
  abstract predictTemperature(conductance: Float64Array, inside: Float64Array, dt: number): void;
  /** Sets `implicitFactor` from the segments' conductances, W/K. */
  abstract updateImplicitFactor(conductance: Float64Array, dt: number): void;
  /**
   * How much of the heat that a segment would give in this step the water beside it can take up, J: it grows no warmer
   * than the tube inside, whose temperature is given, and where it boils there must be water left.
   */
  takenUp(_segment: number, _inside: number, wanted: number): number {
    return wanted;
  }
  /** Takes up the heat of the step. */
  abstract step(time: number, dt: number): void;
  /** Water held, kg, its enthalpy with ice, J, its mean temperature, K, and its depth, m. */
  abstract mass(): number;
  abstract enthalpy(): number;
  abstract meanTemperature(): number;
  abstract depth(): number;
  /** Time of the next ice, s; infinite where none comes. */
  nextIce(): number {
    return Infinity;
  }
  /** Depth of a tub that the water let in mixes, m; none where there is no such tub. */
  mixedDepth(): number {
    return 0;
  }
  /** Temperatures from the top down, K. */
  abstract layers(): Float64Array;

  /** Water without ice, kg, and its enthalpy, J. */
  liquidMass(): number {
    return this.mass() - this.iceLeft;
  }

  liquidEnthalpy(): number {
    return this.enthalpy() + this.iceLeft * ICE_MELTING;
  }

  /** Temperature that all the water would have if it were mixed, K. */
  mixedTemperature(): number {
    return tableTemperatureFromLiquidEnthalpy(this.liquidEnthalpy() / this.liquidMass());
  }
}
