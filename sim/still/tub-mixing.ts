/**
 * Water let into a tub and what mixes its layers: hose or nozzle on the bottom, perforated pipe, hose from the top,
 * stirring. The relations are in `transfer/tub-layers.ts` and `transfer/tub-inlets.ts`; here they meet a scenario's tub
 * and water's own density.
 */
import { STANDARD_GRAVITY } from '../constants.ts';
import { tableLiquidDensityFromEnthalpy as densityOf } from '../fluids/water-table.ts';
import type { Scenario } from '../scenario/scenario.ts';
import {
  JET_EFFICIENCY,
  jetFroudeNumber,
  jetMixedHeight,
  mixByJet,
  mixByStirring,
  nozzleSpeed,
  sinkingColumn,
  stirringPower,
  turnByColumn,
  type LayerShape,
} from '../transfer/tub-inlets.ts';
import { pushUp } from '../transfer/tub-layers.ts';

/** Time after which the course of a stream from above is worked out anew, s, and change of its flow that asks for it. */
const COLUMN_REFRESH = 5;
const COLUMN_CHANGE = 0.05;
/** Density of water for the speed in a hose and the power of stirring, kg/m³. */
const COLD_DENSITY = 999;

export class TubMixing {
  private readonly inlet: Scenario['cooling']['inlet'];
  private readonly bore: number;
  private readonly holes: number;
  /** Length that a jet runs before it turns upward, m. */
  private readonly offset: number;
  private readonly efficiency: number;
  private readonly stir: number;
  private readonly diameter: number;
  private readonly shape: LayerShape;
  /** Scratch of the relations. */
  readonly value: Float64Array;
  readonly slope: Float64Array;
  readonly share: Float64Array;
  readonly rising: Float64Array;
  private readonly dragged: Float64Array;
  private landing = 0;
  private columnAge = Infinity;
  private columnFlow = 0;
  /** Flow of the last step, kg/s, and its enthalpy, J/kg. */
  private flow = 0;
  private entering = 0;
  /** Let in in the last step, kg. */
  private inflow = 0;

  constructor(cooling: Scenario['cooling'], jetFactor: number, layers: number, area: number) {
    const perforated = cooling.inlet === 'perforated';
    this.inlet = cooling.inlet;
    this.bore = perforated ? cooling.holeBore_m : cooling.hoseBore_m;
    this.holes = perforated ? cooling.holes : 1;
    this.offset = cooling.inlet === 'laid' ? 0.5 * cooling.tubDiameter_m : 0;
    this.efficiency = JET_EFFICIENCY * jetFactor;
    this.stir = cooling.stir_m_s;
    this.diameter = cooling.tubDiameter_m;
    this.shape = { mass: 0, thickness: 0, area };
    this.value = new Float64Array(layers);
    this.slope = new Float64Array(layers);
    this.share = new Float64Array(layers);
    this.rising = new Float64Array(layers);
    this.dragged = new Float64Array(layers);
  }

  /** Whether water comes in at the floor, on which the lowest layer then leans. */
  fromBelow(): boolean {
    return this.flow > 0 && this.inlet !== 'top';
  }

  /** Water that rose through a layer in the last step, kg; what came in, and with a hose from the top what it dragged. */
  risen(layer: number): number {
    return this.inlet === 'top' ? Math.max(0, this.rising[layer] as number) : this.inflow;
  }

  /**
   * Lets water in for a step.
   * @param content enthalpy of each layer from the top down, J, changed
   * @param before mass of a layer at the start, kg; the top layer holds `topGain` more, kg
   * @param inflow kg, with its enthalpy `entering`, J/kg; @param spill what runs over, kg, at no more than `limit`, J/kg
   * @returns enthalpy of what runs over, J
   */
  letIn(
    content: Float64Array,
    before: number,
    thickness: number,
    inflow: number,
    entering: number,
    topGain: number,
    spill: number,
    limit: number,
    dt: number,
  ): number {
    const { shape, dragged } = this;
    this.flow = inflow / dt;
    this.entering = entering;
    this.inflow = inflow;
    if (inflow === 0 && topGain === 0) return 0;
    if (this.inlet !== 'top' || !(inflow > 0) || content.length === 1)
      return pushUp(content, this, before, inflow, entering, topGain, spill, limit);
    shape.mass = before;
    shape.thickness = thickness;
    this.columnAge += dt;
    if (this.columnAge >= COLUMN_REFRESH || Math.abs(this.flow - this.columnFlow) > COLUMN_CHANGE * this.columnFlow) {
      this.columnAge = 0;
      this.columnFlow = this.flow;
      this.landing = sinkingColumn(content, shape, densityOf, this.flow, entering, this.bore, dragged);
    }
    return turnByColumn(content, this, dragged, this.landing, before, inflow, entering, topGain, spill, dt);
  }

  /** Jet and stirring, once what was warm below cold has turned over. */
  mix(content: Float64Array, layerMass: number, thickness: number, dt: number): void {
    const { shape } = this;
    if (content.length === 1) return;
    shape.mass = layerMass;
    shape.thickness = thickness;
    if (this.fromBelow()) {
      const speed = nozzleSpeed(this.flow, COLD_DENSITY, this.bore, this.holes);
      const work = 0.5 * this.efficiency * this.flow * dt * speed * speed;
      mixByJet(content, shape, densityOf, work, this.bore, this.offset);
    }
    if (this.stir > 0) {
      const volume = shape.area * thickness * content.length;
      mixByStirring(content, shape, densityOf, stirringPower(this.stir, COLD_DENSITY, volume, this.diameter) * dt);
    }
  }

  /**
   * Depth of water that the stream mixes, m: from the floor up as far as the jet's work reaches against the water that
   * lies there, or from the surface down to where a stream from above lands; none without flow.
   */
  mixedDepth(content: Float64Array, layerMass: number, thickness: number): number {
    if (!(this.flow > 0)) return 0;
    if (this.inlet === 'top') return (this.landing + 1) * thickness;
    const { bore, offset, efficiency } = this;
    const cold = densityOf(this.entering);
    const speed = nozzleSpeed(this.flow, COLD_DENSITY, bore, this.holes);
    const count = content.length;
    for (let k = count - 1; k >= 0; k--) {
      const rho = densityOf((content[k] as number) / layerMass);
      const Fr = jetFroudeNumber(speed, bore, rho, cold - rho, STANDARD_GRAVITY);
      // Close to the hose the jet is whole, and the work that counts is all of it.
      const height = Math.min(jetMixedHeight(bore, Fr, efficiency, offset), efficiency * bore * Math.min(1e9, Fr * Fr));
      const top = (count - k) * thickness;
      if (height <= top) return Math.max(height, top - thickness);
    }
    return count * thickness;
  }
}
