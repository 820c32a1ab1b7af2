/**
 * Cooling water of a coil in a tub: each segment lies in the layer at its depth; outside film by natural convection
 * from a horizontal cylinder (Churchill–Chu), joined with cross-flow (Churchill–Bernstein) when stirred.
 * Close turns sit in each other's plume: the film falls to 0.7 at touching turns and is whole from two diameters on
 * (judgement). A turn above the water is not cooled.
 */
import { STANDARD_GRAVITY } from '../constants.ts';
import {
  tableLiquidConductivity,
  tableLiquidDensity,
  tableLiquidEnthalpy,
  tableLiquidExpansivity,
  tableLiquidHeatCapacity,
  tableLiquidViscosity,
} from '../fluids/water-table.ts';
import { coilFall } from '../geometry/coil.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { nusseltCrossFlowCylinder } from '../transfer/cross-flow.ts';
import { combineForcedAndNatural, nusseltHorizontalCylinder, rayleighNumber } from '../transfer/natural-convection.ts';
import { Coolant, type OutsideFilm } from './coolant.ts';
import { Tub } from './tub.ts';

/** Share of the film that touching turns keep; judgement, 10–30 % loss. */
const TOUCHING_SHARE = 0.7;

export class CoilTub extends Coolant {
  readonly tub: Tub;
  private readonly diameter: number;
  private readonly plumeShare: number;
  private readonly stir: number;
  /** Depth of each segment below the overflow, m. */
  private readonly segmentDepth: Float64Array;
  private readonly fullDepth: number;
  private readonly segmentLayer: Int32Array;
  private readonly layerConductance: Float64Array;

  constructor(scenario: Scenario, airPressure: number) {
    const { condenser, cooling, factors, advanced } = scenario;
    super(advanced.segments, cooling.startTemperature_K);
    this.tub = new Tub(cooling, scenario.site, airPressure, factors.heatLoss, advanced.tubLayers);
    this.diameter = condenser.outsideDiameter_m;
    this.stir = cooling.stir_m_s;
    const spacing = condenser.coilPitch_m / condenser.outsideDiameter_m;
    this.plumeShare = Math.min(1, TOUCHING_SHARE + (1 - TOUCHING_SHARE) * Math.max(0, spacing - 1));
    const fallPerMetre = coilFall(condenser.coilDiameter_m, condenser.coilPitch_m);
    this.fullDepth = cooling.tubHeight_m;
    this.segmentDepth = Float64Array.from({ length: advanced.segments }, (_, s) =>
      Math.min(
        this.fullDepth,
        condenser.coilTopDepth_m + ((s + 0.5) / advanced.segments) * condenser.length_m * fallPerMetre,
      ),
    );
    this.segmentLayer = new Int32Array(advanced.segments);
    this.layerConductance = new Float64Array(advanced.tubLayers);
    this.place();
  }

  /** Finds the layer each segment lies in; −1 above the water. */
  private place(): void {
    const surface = this.fullDepth - this.tub.depth();
    const layerDepth = this.tub.depth() / this.tub.layerCount;
    this.uncovered = 0;
    for (let s = 0; s < this.segmentLayer.length; s++) {
      const below = (this.segmentDepth[s] as number) - surface;
      const layer = below < -1e-9 ? -1 : Math.min(this.tub.layerCount - 1, Math.floor(Math.max(0, below) / layerDepth));
      if (layer < 0) this.uncovered++;
      this.segmentLayer[s] = layer;
      this.segmentTemperature[s] =
        layer < 0 ? (this.tub.temperature[0] as number) : (this.tub.temperature[layer] as number);
    }
  }

  filmCoefficient(segment: number, wallTemperature: number, film: OutsideFilm): number {
    film.coefficient = 0;
    if ((this.segmentLayer[segment] as number) < 0) return 0;
    const bulk = this.segmentTemperature[segment] as number;
    const T = 0.5 * (wallTemperature + bulk);
    const k = tableLiquidConductivity(T);
    const rho = tableLiquidDensity(T);
    const nu = tableLiquidViscosity(T) / rho;
    const alpha = k / (rho * tableLiquidHeatCapacity(T));
    const beta = Math.abs(tableLiquidExpansivity(T));
    const Ra = rayleighNumber(beta, Math.abs(wallTemperature - bulk), this.diameter, nu, alpha, STANDARD_GRAVITY);
    const natural = nusseltHorizontalCylinder(Ra, nu / alpha);
    let Nu = natural;
    if (this.stir > 0) {
      film.Re = (this.stir * this.diameter) / nu;
      film.forced = nusseltCrossFlowCylinder(film.Re, nu / alpha);
      Nu = combineForcedAndNatural(film.forced, natural);
    }
    film.T_c = bulk;
    film.T_w = wallTemperature;
    film.D = this.diameter;
    film.k = k;
    film.Pr = nu / alpha;
    film.beta = beta;
    film.nu = nu;
    film.alpha = alpha;
    film.Ra = Ra;
    film.natural = natural;
    film.Nu = Nu;
    film.share = this.plumeShare;
    film.coefficient = (this.plumeShare * Nu * k) / this.diameter;
    return film.coefficient;
  }

  /** The layers hold the heat of a step; `relief` is foresight enough. */
  foresee(): void {}

  prepare(conductance: Float64Array, dt: number): void {
    const { layerConductance, segmentLayer } = this;
    layerConductance.fill(0);
    for (let s = 0; s < segmentLayer.length; s++) {
      const layer = segmentLayer[s] as number;
      if (layer >= 0) layerConductance[layer] = (layerConductance[layer] as number) + (conductance[s] as number);
    }
    for (let k = 0; k < layerConductance.length; k++) {
      const capacity = this.tub.layerMass() * tableLiquidHeatCapacity(this.tub.temperature[k] as number);
      layerConductance[k] = 1 / (1 + ((layerConductance[k] as number) * dt) / capacity);
    }
    for (let s = 0; s < segmentLayer.length; s++) {
      const layer = segmentLayer[s] as number;
      this.relief[s] = layer < 0 ? 0 : (layerConductance[layer] as number);
    }
  }

  step(time: number, dt: number): void {
    for (let s = 0; s < this.segmentLayer.length; s++) {
      const layer = this.segmentLayer[s] as number;
      if (layer >= 0) this.tub.addHeat(layer, this.segmentHeat[s] as number);
    }
    const inflow = this.flow * dt;
    const inflowEnthalpy = inflow * tableLiquidEnthalpy(this.inletTemperature);
    this.used += inflow;
    this.enthalpyIn += inflowEnthalpy;
    const { tub } = this;
    tub.step(time, inflow, inflowEnthalpy, dt);
    this.overflow = tub.overflow;
    this.overflowEnthalpy = tub.overflowEnthalpy;
    this.evaporated = tub.evaporated;
    this.evaporatedEnthalpy = tub.evaporatedEnthalpy;
    this.lossEnergy = tub.lossEnergy;
    this.iceLeft = tub.ice;
    this.iceAdded = tub.iceAdded;
    this.outletTemperature = tub.temperature[0] as number;
    this.place();
  }

  mass(): number {
    return this.tub.water + this.tub.ice;
  }

  enthalpy(): number {
    return this.tub.enthalpy();
  }

  meanTemperature(): number {
    return this.tub.mean();
  }

  depth(): number {
    return this.tub.depth();
  }

  layers(): Float64Array {
    return this.tub.temperature;
  }
}
