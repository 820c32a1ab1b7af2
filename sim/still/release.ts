/**
 * How the charge gives up its oil. Two stocks per constituent: *held* oil behind tissue, which comes free by
 * first-order release once hot and wet, and *ready* oil on the surface, which passing steam takes up.
 *
 * Equations (per step, stocks in kg):
 *   release    ΔB_i = B_i (1 − exp(−k_B a w Δt)), a Arrhenius about 100 °C, w wetness;
 *   take-up    out_i = (1 − E) in_i + A_i (1 − e^(−λ_i)),  λ_i = v E p_i/p_w / (M_w (n_A + n_½)), exact for constant λ;
 *   approach   E = (1 − φ)(1 − exp(−K z G^(m−1))).
 * With n_½ → 0 and E → 1 the vapour leaves saturated with the oil (Raoult, immiscible); as the ready moles n_A fall
 * below n_½ the rest leaves by first-order decay. No stock goes negative at any step.
 * Assumptions: constituents of one group share f, k_B and K; bypass φ skips take-up only; liquid running down
 * carries no oil. Limits: K, k_B and f are fitted or estimated, see the library.
 */
import { GAS_CONSTANT, WATER_MOLAR_MASS } from '../constants.ts';
import { CONSTITUENT_GROUPS, type ConstituentGroup } from '../fluids/constituents.ts';
import type { Scenario } from '../scenario/scenario.ts';
import type { Oil } from './oil.ts';

const GROUPS = CONSTITUENT_GROUPS.length;
/** Moisture on dry weight at which cell walls are saturated and release runs in full; about 0.25–0.30, from memory. */
const FIBRE_SATURATION = 0.27;
const BOILING = 373.15;
/** Ready oil below this, mol, is left where it is: dividing by less overflows. */
const LEAST_MOLES = 1e-30;
/** Changes of temperature, K, and wetness after which release rates are worked out anew: 0.1 % of the rate. */
const RATE_TEMPERATURE = 0.02;
const RATE_WETNESS = 0.001;
/** Linalyl acetate + water → linalool + acetic acid, kg/mol. */
const ESTER_MOLAR_MASS = 0.19629;
const ALCOHOL_MOLAR_MASS = 0.154253;
const WATER_CONSUMED = WATER_MOLAR_MASS / ESTER_MOLAR_MASS;
const ALCOHOL_FORMED = ALCOHOL_MOLAR_MASS / ESTER_MOLAR_MASS;

/**
 * What is left at the end of a step of a stock that trickles in evenly while it leaves at a rate λ per step,
 * (1 − e^(−λ))/λ; a ratio of polynomials where λ is small.
 */
const meanShareLeft = (lambda: number): number =>
  lambda < 0.5 ? 1 / (1 + lambda * (0.5 + lambda / 12)) : (1 - Math.exp(-lambda)) / lambda;

/** Share of a stock that leaves in a step at a rate λ per step, 1 − e^(−λ). */
export const shareLeaving = (lambda: number): number => lambda * meanShareLeft(lambda);

export class Release {
  /** Ready and held oil, kg, cell by cell: constituent i of cell j at `j * count + i`. */
  readonly ready: Float64Array;
  readonly held: Float64Array;
  /** Oil in each cell, ready and held, kg. */
  readonly oilIn: Float64Array;
  /** Of the oil that left the last cell as vapour: mass, kg, latent heat, J, and amount, mol. */
  outMass = 0;
  outLatent = 0;
  outMoles = 0;
  /** Ester hydrolysed and alcohol formed so far, kg. */
  hydrolysed = 0;
  alcoholFormed = 0;
  private readonly count: number;
  private readonly halfMoles: number;
  /** Held rate at 100 °C, 1/s, and take-up of each group. */
  private readonly rate: Float64Array;
  private readonly takeUpRate: Float64Array;
  private readonly ratios: Float64Array;
  private readonly rateStep: Float64Array;
  private readonly rateTemperature: Float64Array;
  private readonly rateWetness: Float64Array;
  /** Share of held oil that comes free in a step, group g of cell j at `j * GROUPS + g`. */
  private readonly freed: Float64Array;
  private readonly arrhenius: Float64Array;
  private readonly fluxPower: number;
  private readonly activation: number;
  private readonly hydrolysisRate: number;
  private readonly dryMassPerCell: number;
  private readonly through: number;
  /** Approach to saturation of each group at the present flux. */
  private readonly approach = new Float64Array(GROUPS);
  private approachFlux = -1;
  private approachDepth = -1;

  private readonly oil: Oil;
  readonly cells: number;

  constructor(scenario: Scenario, oil: Oil, cells: number) {
    this.oil = oil;
    this.cells = cells;
    const { charge, factors, pot } = scenario;
    const { release } = charge;
    this.count = oil.count;
    this.ready = new Float64Array(cells * oil.count);
    this.held = new Float64Array(cells * oil.count);
    const dry = charge.mass_kg * (1 - charge.moisture);
    this.dryMassPerCell = dry / cells;
    const shares = new Float64Array(oil.count);
    for (const entry of charge.composition) shares[oil.ids.indexOf(entry.constituent)] = entry.share;
    for (let i = 0; i < oil.count; i++) {
      const mass = (dry * charge.oilContent * factors.oilContent * (shares[i] as number)) / cells;
      const f = release.readyShare[CONSTITUENT_GROUPS[oil.group[i] as number] as ConstituentGroup];
      for (let j = 0; j < cells; j++) {
        this.ready[j * oil.count + i] = f * mass;
        this.held[j * oil.count + i] = (1 - f) * mass;
      }
    }
    this.oilIn = new Float64Array(cells);
    for (let j = 0; j < cells; j++) this.weigh(j);
    this.ratios = new Float64Array(oil.count);
    this.rateStep = new Float64Array(cells);
    this.rateTemperature = new Float64Array(cells);
    this.rateWetness = new Float64Array(cells);
    this.freed = new Float64Array(cells * GROUPS);
    this.arrhenius = new Float64Array(cells);
    this.halfMoles = (release.halfCoverage_mol_kg * dry) / cells;
    this.rate = Float64Array.from(CONSTITUENT_GROUPS, (group) => factors.release * release.heldRate_1_s[group]);
    this.takeUpRate = Float64Array.from(CONSTITUENT_GROUPS, (group) => factors.release * release.takeUp[group]);
    this.fluxPower = release.takeUpExponent - 1;
    this.activation = release.activationEnergy_J_mol / GAS_CONSTANT;
    this.hydrolysisRate = pot.layout === 'water' ? charge.hydrolysisImmersed_1_s : charge.hydrolysisBed_1_s;
    this.through = 1 - charge.bypass;
  }

  /** Adds up the oil of a cell. */
  private weigh(cell: number): void {
    let sum = 0;
    for (let at = cell * this.count; at < (cell + 1) * this.count; at++)
      sum += (this.ready[at] as number) + (this.held[at] as number);
    this.oilIn[cell] = sum;
  }

  /** Shares of held oil freed in a step, worked out anew when the cell's temperature or wetness, or the step, has moved. */
  private updateRates(cell: number, T: number, wet: number, dt: number): void {
    if (
      dt === (this.rateStep[cell] as number) &&
      Math.abs(T - (this.rateTemperature[cell] as number)) < RATE_TEMPERATURE &&
      Math.abs(wet - (this.rateWetness[cell] as number)) < RATE_WETNESS
    )
      return;
    this.rateStep[cell] = dt;
    this.rateTemperature[cell] = T;
    this.rateWetness[cell] = wet;
    const arrhenius = Math.exp(-this.activation * (1 / T - 1 / BOILING));
    this.arrhenius[cell] = arrhenius;
    for (let g = 0; g < GROUPS; g++)
      this.freed[cell * GROUPS + g] = 1 - Math.exp(-(this.rate[g] as number) * arrhenius * wet * dt);
  }

  /**
   * Release and ester loss in a cell over a step. Below about 60 °C nothing measurable happens and the cell is passed
   * over.
   * @param waterInCell water in the cell, kg
   * @returns water consumed by hydrolysis, kg
   */
  advance(cell: number, T: number, waterInCell: number, dt: number): number {
    if (T < 333.15) return 0;
    const wet = this.dryMassPerCell > 0 ? Math.min(1, waterInCell / (FIBRE_SATURATION * this.dryMassPerCell)) : 1;
    this.updateRates(cell, T, wet, dt);
    const first = cell * this.count;
    const { ready, held, oil } = this;
    for (let i = 0; i < this.count; i++) {
      const freed = (held[first + i] as number) * (this.freed[cell * GROUPS + (oil.group[i] as number)] as number);
      held[first + i] = (held[first + i] as number) - freed;
      ready[first + i] = (ready[first + i] as number) + freed;
    }
    return this.hydrolysisRate > 0 &&
      oil.ester >= 0 &&
      (ready[first + oil.ester] as number) + (held[first + oil.ester] as number) > 0
      ? this.hydrolyse(cell, (this.arrhenius[cell] as number) * dt, waterInCell)
      : 0;
  }

  private hydrolyse(cell: number, scale: number, waterInCell: number): number {
    const { ester, alcohol } = this.oil;
    const first = cell * this.count;
    const x = this.hydrolysisRate * scale;
    const share = x < 1e-3 ? x * (1 - 0.5 * x) : 1 - Math.exp(-x);
    const fromReady = (this.ready[first + ester] as number) * share;
    const fromHeld = (this.held[first + ester] as number) * share;
    const lost = fromReady + fromHeld;
    if (!(lost > 0) || lost * WATER_CONSUMED > 0.5 * waterInCell) return 0;
    this.ready[first + ester] = (this.ready[first + ester] as number) - fromReady;
    this.held[first + ester] = (this.held[first + ester] as number) - fromHeld;
    this.ready[first + alcohol] = (this.ready[first + alcohol] as number) + fromReady * ALCOHOL_FORMED;
    this.held[first + alcohol] = (this.held[first + alcohol] as number) + fromHeld * ALCOHOL_FORMED;
    this.oilIn[cell] = (this.oilIn[cell] as number) - lost * (1 - ALCOHOL_FORMED);
    this.hydrolysed += lost;
    this.alcoholFormed += lost * ALCOHOL_FORMED;
    return lost * WATER_CONSUMED;
  }

  /** Sets the approach to saturation for a depth of charge z (m) at superficial steam flux G (kg/m²s). */
  setApproach(z: number, G: number): void {
    if (Math.abs(G - this.approachFlux) <= 1e-4 * this.approachFlux && z === this.approachDepth) return;
    this.approachFlux = G;
    this.approachDepth = z;
    const units = G > 0 ? z * Math.pow(G, this.fluxPower) : 0;
    for (let g = 0; g < GROUPS; g++)
      this.approach[g] = this.through * (1 - Math.exp(-(this.takeUpRate[g] as number) * units));
  }

  /**
   * Steam takes up ready oil of a cell.
   * @param incoming oil in the vapour that enters, kg by constituent
   * @param outgoing written: oil in the vapour that leaves, kg by constituent
   * @param steam water vapour leaving, kg
   */
  takeUp(cell: number, T: number, steam: number, incoming: Float64Array, outgoing: Float64Array): void {
    const first = cell * this.count;
    const { oil, ready, held, ratios } = this;
    oil.pressureRatios(T, ratios);
    let moles = this.halfMoles;
    for (let i = 0; i < this.count; i++) moles += (ready[first + i] as number) / (oil.molarMass[i] as number);
    const strength = moles > LEAST_MOLES ? steam / (WATER_MOLAR_MASS * moles) : 0;
    const carried = this.carriedShare(steam, incoming);
    let kept = 0;
    let mass = 0;
    let latent = 0;
    let amount = 0;
    for (let i = 0; i < this.count; i++) {
      const approach = this.approach[oil.group[i] as number] as number;
      const arriving = carried * (incoming[i] as number);
      const condensed = (incoming[i] as number) - arriving;
      const lambda = strength * approach * (ratios[i] as number);
      const stays = meanShareLeft(lambda);
      const stock = (ready[first + i] as number) + condensed;
      const settling = approach * arriving;
      const left = stock * (1 - lambda * stays) + settling * stays;
      ready[first + i] = left;
      kept += left + (held[first + i] as number);
      const leaving = arriving + stock - left;
      outgoing[i] = leaving;
      mass += leaving;
      latent += leaving * (oil.latent[i] as number);
      amount += leaving / (oil.molarMass[i] as number);
    }
    this.oilIn[cell] = kept;
    this.outMass = mass;
    this.outLatent = latent;
    this.outMoles = amount;
  }

  /** Share of arriving oil that the steam which leaves can still carry; the rest condenses with the water it lost. */
  private carriedShare(steam: number, incoming: Float64Array): number {
    const { oil, ratios } = this;
    let load = 0;
    for (let i = 0; i < this.count; i++)
      load += (incoming[i] as number) / ((oil.molarMass[i] as number) * (ratios[i] as number));
    load *= WATER_MOLAR_MASS;
    return load > steam ? steam / load : 1;
  }

  /**
   * Moles of oil per mole of water that steam would carry out of a cell now: what the boiling point is worked out with
   * before the steam of the step is known.
   * @param incoming oil in the vapour that enters, kg by constituent, with `steam` kg of water vapour
   */
  expectedRatio(cell: number, T: number, incoming: Float64Array, steam: number): number {
    const first = cell * this.count;
    const { oil, ready, ratios } = this;
    oil.pressureRatios(T, ratios);
    let moles = this.halfMoles;
    let taken = 0;
    let brought = 0;
    for (let i = 0; i < this.count; i++) {
      const approach = this.approach[oil.group[i] as number] as number;
      const n = (ready[first + i] as number) / (oil.molarMass[i] as number);
      moles += n;
      taken += n * approach * (ratios[i] as number);
      brought += ((1 - approach) * (incoming[i] as number)) / (oil.molarMass[i] as number);
    }
    return (moles > LEAST_MOLES ? taken / moles : 0) + (steam > 0 ? (brought * WATER_MOLAR_MASS) / steam : 0);
  }

  /** A share of an oil, kg by constituent, that vapour condensing or liquid falling leaves in a cell. */
  deposit(cell: number, oil: Float64Array, share = 1): void {
    const first = cell * this.count;
    for (let i = 0; i < this.count; i++)
      this.ready[first + i] = (this.ready[first + i] as number) + share * (oil[i] as number);
    this.weigh(cell);
  }

  /** Sum of a stock over the cells, kg. */
  total(stock: Float64Array): number {
    let sum = 0;
    for (let at = 0; at < stock.length; at++) sum += stock[at] as number;
    return sum;
  }
}
