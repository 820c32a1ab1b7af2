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
import { isCoil } from '../geometry/condenser-kind.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { nusseltCrossFlowCylinder } from '../transfer/cross-flow.ts';
import { combineForcedAndNatural, nusseltHorizontalCylinder, rayleighNumber } from '../transfer/natural-convection.ts';
import { Coolant, type OutsideFilm } from './coolant.ts';
import { Tub } from './tub.ts';

/** Heat capacity of water for its rise past the segments, J/kgK; within 1 % from 0 to 100 °C. */
const WATER_HEAT_CAPACITY = 4190;
/**
 * Fewest layers under a hose from above: where its column lands is told to a layer, and the edge of the water that it
 * mixes lies there.
 */
const LEAST_BELOW_COLUMN = 24;
/** Thickest layer of standing water, m: well under the two or three centimetres that plumes of the turns rise. */
const STANDING_LAYER_m = 1 / 125;
const LEAST_STANDING_LAYERS = 12;
const MOST_STANDING_LAYERS = 96;
/** Share of the film that touching turns keep; judgement, 10–30 % loss. */
const TOUCHING_SHARE = 0.7;

/**
 * Share of its first heat that a coil gives to a layer over a step, for u transfer units, conductance times step over heat
 * capacity: (1 − e^(−u))/u where the layer is so thin that it follows the tube within a step. A thick one passes its heat
 * on as fast as it takes it up and hardly warms, so there the share goes to one, faster than u to nothing.
 */
const impliedShare = (u: number): number => (u > 1e-4 ? 1 - Math.min(1, u) * (1 + Math.expm1(-u) / u) : 1);

/** Whether a coil stands in a tub that no water flows through. */
export const waterStands = ({ condenser, cooling }: Scenario): boolean =>
  isCoil(condenser) && cooling.flow_kg_s.every(({ value }) => value === 0);

/**
 * Layers of the tub. Standing water keeps a boundary between warmed and cold that is sharper than a twelfth of a tub, and
 * layers much thinner than its plumes would say nothing more: so their thickness is given, not their number.
 */
function layersOf(scenario: Scenario): number {
  const { cooling, advanced } = scenario;
  const { tubLayers } = advanced;
  if (tubLayers === 1) return 1;
  if (!waterStands(scenario)) return cooling.inlet === 'top' ? Math.max(LEAST_BELOW_COLUMN, tubLayers) : tubLayers;
  const thin = Math.ceil((cooling.tubHeight_m * cooling.tubFill) / STANDING_LAYER_m);
  return Math.min(MOST_STANDING_LAYERS, Math.max(LEAST_STANDING_LAYERS, thin));
}

export class CoilTub extends Coolant {
  override readonly predictsTemperature = false;
  readonly tub: Tub;
  private readonly diameter: number;
  private readonly plumeShare: number;
  private readonly stir: number;
  /** Depth of each segment below the overflow, m. */
  private readonly segmentDepth: Float64Array;
  private readonly fullDepth: number;
  private readonly segmentLayer: Int32Array;
  /** Height of each segment above the middle of its layer, in thicknesses of a layer. */
  private readonly segmentOffset: Float64Array;
  /** Heat that the segments in each layer gave in the last step, J, without what any took. */
  private readonly layerHeat: Float64Array;
  private locatedDepth = -1;
  private readonly layerConductance: Float64Array;

  constructor(scenario: Scenario, airPressure: number) {
    const { condenser, cooling, factors, advanced } = scenario;
    super(advanced.segments, cooling.startTemperature_K);
    const layers = layersOf(scenario);
    this.tub = new Tub(cooling, scenario.site, airPressure, factors, layers, advanced.step_s);
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
    this.segmentOffset = new Float64Array(advanced.segments);
    this.layerHeat = new Float64Array(layers);
    this.layerConductance = new Float64Array(layers);
    this.locateSegments();
  }

  /**
   * The water's temperature at each segment. Inside a layer the water rises past the segments that warm it: below them it
   * is as it came from the layer below, and each adds what its heat makes of the flow. The warmest that a segment reads
   * is the water that goes on to the layer above, as far as the flow explains its warmth, and the layer's line where
   * the water stands still and turns over. So a short coil in a thick layer is met by the cold water that it is met by
   * in a tub.
   */
  private locateSegments(): void {
    const depth = this.tub.depth();
    if (depth !== this.locatedDepth) this.findLayers(depth);
    const { temperature, rise } = this.tub;
    const { segmentLayer, segmentHeat, segmentOffset, segmentTemperature, layerHeat } = this;
    const lowest = temperature.length - 1;
    let last = -1;
    let below = 0;
    let through = 0;
    let cold = 0;
    let warm = 0;
    for (let s = segmentLayer.length - 1; s >= 0; s--) {
      const layer = segmentLayer[s] as number;
      if (layer < 0) {
        segmentTemperature[s] = this.tub.surface();
        continue;
      }
      if (layer !== last) {
        const from = layer === lowest ? layer : layer + 1;
        cold = (temperature[from] as number) + (layer === lowest ? -0.5 : 0.5) * (rise[from] as number);
        warm = (temperature[layer] as number) + 0.5 * (rise[layer] as number);
        through = this.tub.rising(layer);
        below = 0;
        last = layer;
      }
      const heat = Math.max(0, segmentHeat[s] as number);
      const line = cold + ((segmentOffset[s] as number) + 0.5) * (warm - cold);
      const all = layerHeat[layer] as number;
      if (all > 0 && warm > cold) {
        const perHeat = 1 / (through * WATER_HEAT_CAPACITY);
        const byFlow = Math.min(1, (warm - cold) / (all * perHeat));
        const cap = line + byFlow * (warm - line);
        const gained = below + 0.5 * heat;
        segmentTemperature[s] = gained > 0 ? Math.min(cap, cold + gained * perHeat) : cold;
      } else segmentTemperature[s] = line;
      below += heat;
    }
  }

  /** Finds the layer each segment lies in, −1 above the water. */
  private findLayers(depth: number): void {
    this.locatedDepth = depth;
    const surface = this.fullDepth - depth;
    const thickness = depth / this.tub.layerCount;
    this.uncovered = 0;
    for (let s = 0; s < this.segmentLayer.length; s++) {
      const below = (this.segmentDepth[s] as number) - surface;
      const position = Math.max(0, below) / thickness;
      const layer = Math.min(this.tub.layerCount - 1, Math.floor(position));
      const covered = below >= -1e-9;
      if (!covered) this.uncovered++;
      this.segmentLayer[s] = covered ? layer : -1;
      this.segmentOffset[s] = covered ? layer + 0.5 - Math.min(this.tub.layerCount, position) : 0.5;
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

  /** The layers hold the heat of a step; `implicitFactor` stands for a prediction. */
  predictTemperature(): void {}

  updateImplicitFactor(conductance: Float64Array, dt: number): void {
    const { layerConductance, segmentLayer } = this;
    layerConductance.fill(0);
    for (let s = 0; s < segmentLayer.length; s++) {
      const layer = segmentLayer[s] as number;
      if (layer >= 0) layerConductance[layer] = (layerConductance[layer] as number) + (conductance[s] as number);
    }
    for (let k = 0; k < layerConductance.length; k++) {
      const capacity = this.tub.layerMass() * tableLiquidHeatCapacity(this.tub.temperature[k] as number);
      const transferUnits = ((layerConductance[k] as number) * dt) / capacity;
      layerConductance[k] = impliedShare(transferUnits);
    }
    for (let s = 0; s < segmentLayer.length; s++) {
      const layer = segmentLayer[s] as number;
      this.implicitFactor[s] = layer < 0 ? 0 : (layerConductance[layer] as number);
    }
  }

  step(time: number, dt: number): void {
    const { segmentLayer, segmentHeat, layerHeat } = this;
    layerHeat.fill(0);
    for (let s = 0; s < segmentLayer.length; s++) {
      const layer = segmentLayer[s] as number;
      if (layer < 0) continue;
      const heat = segmentHeat[s] as number;
      this.tub.addHeat(layer, heat);
      layerHeat[layer] = (layerHeat[layer] as number) + Math.max(0, heat);
    }
    const inflow = this.flow * dt;
    this.used += inflow;
    this.enthalpyIn += inflow * tableLiquidEnthalpy(this.inletTemperature);
    const { tub } = this;
    tub.step(time, inflow, this.inletTemperature, dt);
    this.overflow = tub.overflow;
    this.overflowEnthalpy = tub.overflowEnthalpy;
    this.evaporated = tub.evaporated;
    this.evaporatedEnthalpy = tub.evaporatedEnthalpy;
    this.lossEnergy = tub.lossEnergy;
    this.iceLeft = tub.ice;
    this.iceAdded = tub.iceAdded;
    this.outletTemperature = tub.surface();
    this.locateSegments();
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

  override nextIce(): number {
    return this.tub.nextIceTime();
  }

  override mixedDepth(): number {
    return this.tub.mixedDepth();
  }

  layers(): Float64Array {
    return this.tub.temperature;
  }
}
