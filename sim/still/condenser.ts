/**
 * Condenser: n equal tubes marched in segments from the vapour end; quasi-steady within a step, because the metal is
 * light against the water.
 *
 * Equations: in the condensing zone each segment takes g (T_s − T_c), g from film inside, wall, fouling and film
 * outside in series; water and oil condense in the proportion in which they arrive; where the latent heat is spent the
 * condensate cools by its own conductance, as `condensate-cooling.ts` says. What is not condensed at the end leaves as vapour.
 * The condensate's temperature follows from the heat taken out, so energy
 * closes by construction.
 * Assumptions: one dew temperature along the tube (at half the pressure drop); air is swept out ahead of the vapour;
 * film coefficients follow the wall temperature and what else they hang on as `film-timing.ts` says, once it has
 * changed enough.
 */
import {
  tableLiquidEnthalpy,
  tableLiquidHeatCapacity,
  tableSaturationTemperature,
  tableVapourDensity,
} from '../fluids/water-table.ts';
import { cylinderVolume } from '../geometry/cylinder.ts';
import { tubeCount } from '../geometry/jacket.ts';
import { findMaterial } from '../library/materials.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { cylinderResistance } from '../transfer/conduction.ts';
import { CondensateCooling, CondensateFilm } from './condensate-cooling.ts';
import { CondenserTerms } from './condenser-terms.ts';
import { OutsideFilm, type Coolant } from './coolant.ts';
import { FilmConditions } from './film-conditions.ts';
import { FilmTiming } from './film-timing.ts';
import type { Oil } from './oil.ts';
import { PRESSURE_MEMORY } from './pot.ts';
import { ENTHALPY_ZERO, liquidTemperature, LiquidStream, VapourStream } from './stream.ts';
import { TubeFriction } from './tube-friction.ts';
import { InsideFilm } from './tube-inside.ts';

/** Passes in which walls and coefficients find each other: at the first vapour, and when something has changed at once. */
const STARTING_PASSES = 12;
const CHANGED_PASSES = 2;
/** Segments before and after the end of the vapour in which both ways of giving heat are kept up to date. */
const FRONT_MARGIN = 2;
/** Least share of the difference between water and vapour by which the wall under a rivulet counts as warmed. */
const RIVULET_WALL = 0.05;

/** Mean heat capacity of water between two temperatures, exact for the whole fall, J/kgK. */
const meanHeatCapacity = (hot: number, cold: number): number =>
  hot - cold > 0.5
    ? (tableLiquidEnthalpy(hot) - tableLiquidEnthalpy(cold)) / (hot - cold)
    : tableLiquidHeatCapacity(hot);

/** 1 − e^(−u): what a stream of u transfer units gives; by a quotient good to 5e-6 where u is small. */
const shareGiven = (u: number): number => (u < 0.25 ? u / (1 + u * (0.5 + u / 12)) : -Math.expm1(-u));

/** Condensate of a smaller share of the vapour has no temperature of its own. */
const TRACE = 1e-10;

export class Condenser {
  readonly segments: number;
  readonly segmentLength: number;
  /** Heat taken out by each segment of all tubes in the last step, W/m of one tube. */
  readonly heatPerMetre: Float64Array;
  readonly vapourShare: Float64Array;
  readonly inside: Float64Array;
  /** Outer wall temperature that carries the heat of the last step, K. */
  readonly wall: Float64Array;
  /** What left the last step: liquid at the outlet and vapour that escaped. */
  readonly condensate: LiquidStream;
  readonly escaped: VapourStream;
  condensateTemperature = ENTHALPY_ZERO;
  /** Heat taken out in the last step, J. */
  duty = 0;
  condensingLength = 0;
  drop = 0;
  /** The drop with the lag of the pot's pressure: what the dew temperature follows, Pa. */
  private heldDrop = 0;
  dewTemperature = 373.15;
  private readonly outerWall: Float64Array;
  private readonly innerWall: Float64Array;
  /** Resistance of the film outside, per metre of one tube, mK/W. */
  readonly outerResistance: Float64Array;
  /** Conductance of each segment while vapour condenses in it, W/K of all tubes. */
  readonly condensing: Float64Array;
  private readonly cooling: Float64Array;
  /** Conductance that each segment really had in the last step, W/K. */
  private readonly effective: Float64Array;
  /** Temperature inside each segment where it begins, K, which `effective` refers to. */
  private readonly upstream: Float64Array;
  private readonly conditions: FilmConditions;
  readonly terms = new CondenserTerms();
  /** Films of each segment while vapour condenses in it, as last worked out. */
  readonly insideFilms: readonly InsideFilm[];
  readonly outsideFilms: readonly OutsideFilm[];
  /** The same where all is liquid and the condensate cools. */
  readonly condensateCooling: CondensateCooling;
  readonly condensateFilms: readonly CondensateFilm[];
  readonly coolOutsideFilms: readonly OutsideFilm[];
  readonly tubes: number;
  private readonly D_i: number;
  private readonly D_o: number;
  /** Resistances per metre of one tube, mK/W. */
  readonly wallResistance: number;
  readonly foulingResistance: number;
  /** What the films inside and outside are multiplied by. */
  readonly filmFactor: number;
  readonly coolantFactor: number;
  readonly upright: boolean;
  /** Segment in which the vapour ended in the last step. */
  private front = 0;
  private readonly timing = new FilmTiming();

  private readonly friction: TubeFriction;
  private readonly oil: Oil;

  constructor(scenario: Scenario, oil: Oil) {
    this.oil = oil;
    const { condenser, factors, advanced, charge } = scenario;
    this.segments = advanced.segments;
    this.segmentLength = condenser.length_m / advanced.segments;
    this.tubes = tubeCount(condenser);
    this.D_i = condenser.insideDiameter_m;
    this.D_o = condenser.outsideDiameter_m;
    this.wallResistance = cylinderResistance(
      this.D_i,
      this.D_o,
      findMaterial(condenser.material).conductivity_W_mK.value,
    );
    this.foulingResistance = (condenser.fouling_m2K_W * factors.fouling) / (Math.PI * this.D_o);
    this.filmFactor = factors.condensingFilm * (charge.mass_kg > 0 ? condenser.oilFilmFactor : 1);
    this.coolantFactor = factors.coolantFilm;
    this.friction = new TubeFriction(this.tubes, this.D_i, this.length());
    this.condensateCooling = new CondensateCooling(scenario);
    this.upright = this.condensateCooling.upright;
    const cells = () => new Float64Array(this.segments);
    this.heatPerMetre = cells();
    this.vapourShare = cells();
    this.inside = cells().fill(scenario.site.airTemperature_K);
    this.wall = cells().fill(scenario.site.airTemperature_K);
    this.outerWall = cells();
    this.innerWall = cells();
    this.outerResistance = cells();
    this.condensing = cells();
    this.cooling = cells();
    this.effective = cells();
    this.upstream = cells();
    this.conditions = new FilmConditions(this.segments);
    this.insideFilms = Array.from({ length: this.segments }, () => new InsideFilm());
    this.outsideFilms = Array.from({ length: this.segments }, () => new OutsideFilm());
    this.condensateFilms = Array.from({ length: this.segments }, () => new CondensateFilm());
    this.coolOutsideFilms = Array.from({ length: this.segments }, () => new OutsideFilm());
    this.condensate = new LiquidStream(oil.count);
    this.escaped = new VapourStream(oil.count);
  }

  /** Length of the tube, m. */
  length(): number {
    return this.segmentLength * this.segments;
  }

  /** Bore volume of all tubes, m³. */
  boreVolume(): number {
    return cylinderVolume(this.D_i, this.length()) * this.tubes;
  }

  /**
   * Works out one segment from its last wall temperatures: how it condenses up to a little beyond the place where the
   * vapour ends, how its condensate cools from a little before it; both everywhere when `all` is asked for.
   */
  private refresh(s: number, coolant: Coolant, T_s: number, G: number, m: number, all: boolean): void {
    const before = this.shareBefore(s);
    this.conditions.keep(s, coolant.segmentTemperature[s] as number, this.inside[s] as number, before, m);
    const outsideFilm = this.outsideFilms[s] as OutsideFilm;
    const condensate = this.condensateFilms[s] as CondensateFilm;
    if (all || s <= this.front + FRONT_MARGIN) this.refreshCondensing(s, coolant, T_s, G, outsideFilm);
    if (all || s >= this.front - FRONT_MARGIN) this.refreshCooling(s, coolant, T_s, m, condensate);
    this.outerResistance[s] =
      before > 0 ? 1 / (this.coolantFactor * outsideFilm.coefficient * Math.PI * this.D_o) : condensate.outerResistance;
  }

  /** Share of the vapour that gets as far as a segment. */
  private shareBefore(s: number): number {
    return s === 0 ? 1 : (this.vapourShare[s - 1] as number);
  }

  /** Conductance of a segment while vapour condenses in it, W/K of all tubes. */
  private refreshCondensing(s: number, coolant: Coolant, T_s: number, G: number, outsideFilm: OutsideFilm): void {
    const T_c = coolant.segmentTemperature[s] as number;
    const outside = this.coolantFactor * coolant.filmCoefficient(s, this.outerWall[s] as number, outsideFilm);
    if (!(outside > 0)) {
      this.condensing[s] = 0;
      return;
    }
    const T_w = this.innerWall[s] as number;
    const insideFilm = this.insideFilms[s] as InsideFilm;
    const film = this.upright
      ? insideFilm.upright(Math.max(this.condensingLength, this.segmentLength), T_s, T_w)
      : insideFilm.sloping(this.D_i, T_s, T_w, G, Math.max(0.02, this.shareBefore(s)));
    const inner = 1 / (this.filmFactor * film * Math.PI * this.D_i);
    const outer = 1 / (outside * Math.PI * this.D_o);
    const total = inner + this.wallResistance + this.foulingResistance + outer;
    const flux = (T_s - T_c) / total;
    this.innerWall[s] = T_s - flux * inner;
    this.outerWall[s] = T_c + flux * outer;
    this.condensing[s] = (this.tubes * this.segmentLength) / total;
  }

  /** Conductance of a segment while m kg/s of condensate a tube cools in it, W/K of all tubes. */
  private refreshCooling(s: number, coolant: Coolant, T_s: number, m: number, condensate: CondensateFilm): void {
    const { segmentLength } = this;
    const T_c = coolant.segmentTemperature[s] as number;
    const wall = Math.max(this.wall[s] as number, T_c + RIVULET_WALL * (T_s - T_c));
    const outside = this.coolantFactor * coolant.filmCoefficient(s, wall, this.coolOutsideFilms[s] as OutsideFilm);
    if (!(outside > 0)) {
      this.cooling[s] = 0;
      return;
    }
    const T = 0.5 * ((this.upstream[s] as number) + (this.inside[s] as number));
    const from = s * segmentLength - this.condensingLength;
    this.condensateCooling.evaluate(condensate, m, T, from, segmentLength, outside);
    this.cooling[s] = (this.tubes * segmentLength) / condensate.resistance;
  }

  private refreshAll(coolant: Coolant, T_s: number, G: number, m: number, passes: number): void {
    for (let pass = 0; pass < passes; pass++)
      for (let s = 0; s < this.segments; s++) this.refresh(s, coolant, T_s, G, m, true);
  }

  /**
   * One step.
   * @param vapour what arrives, with its enthalpy
   * @param liquid condensate from the neck that runs in with it
   */
  step(vapour: VapourStream, liquid: LiquidStream, airPressure: number, coolant: Coolant, dt: number): void {
    const { oil, condensate, escaped, terms } = this;
    condensate.clear();
    escaped.clear();
    coolant.segmentHeat.fill(0);
    this.duty = 0;
    this.heldDrop += -Math.expm1(-dt / PRESSURE_MEMORY) * (this.drop - this.heldDrop);
    const T_s = tableSaturationTemperature(
      (airPressure + 0.5 * this.heldDrop) / (1 + oil.molarRatio(vapour.oil, vapour.water)),
    );
    this.dewTemperature = T_s;
    const arriving = vapour.water + liquid.water;
    if (!(arriving > 0)) {
      this.rest(coolant);
      return;
    }
    const oilMass = vapour.oilTotal();
    const asLiquid = vapour.water * tableLiquidEnthalpy(T_s) + oilMass * oil.heatCapacity * (T_s - ENTHALPY_ZERO);
    const latent = Math.max(0, vapour.enthalpy - asLiquid);
    terms.vapourEnthalpy = vapour.enthalpy;
    terms.liquidEnthalpy = liquid.enthalpy;
    terms.asLiquid = asLiquid;
    terms.latent = latent;
    this.updateCoefficients(vapour.water / dt, arriving / dt, latent / dt, T_s, coolant, dt);
    coolant.predictTemperature(this.effective, this.upstream, dt);
    const oilHeat = (oilMass + liquid.oilTotal()) * oil.heatCapacity;
    const T_l = liquid.water > 0 ? liquidTemperature(asLiquid + liquid.enthalpy, arriving, oilHeat) : T_s;
    const capacity =
      arriving * meanHeatCapacity(T_l, coolant.segmentTemperature[this.segments - 1] as number) + oilHeat;
    const left = this.march(latent, T_s, T_l, capacity, coolant, dt);
    const escapingShare = latent > 0 ? left / latent : 0;
    this.split(vapour, liquid, T_s, escapingShare, left);
    this.drop = this.friction.drop(vapour.water / dt, T_s, escapingShare, this.condensingLength, terms);
  }

  /** No vapour: nothing happens; profiles show the water's temperature. */
  private rest(coolant: Coolant): void {
    this.condensingLength = 0;
    this.drop = 0;
    this.timing.rest();
    this.effective.fill(0);
    this.vapourShare.fill(0);
    this.heatPerMetre.fill(0);
    this.inside.set(coolant.segmentTemperature);
    this.wall.set(coolant.segmentTemperature);
  }

  private updateCoefficients(
    rate: number,
    arriving: number,
    latentPower: number,
    T_s: number,
    coolant: Coolant,
    dt: number,
  ): void {
    const G = this.friction.massFlux(rate);
    this.terms.massFlux = G;
    const m = arriving / this.tubes;
    const { timing } = this;
    const due = timing.due(rate, arriving, coolant, this.condensingLength, this.segmentLength, dt);
    if (due === 'nothing') return;
    if (due === 'start') this.vapourShare.fill(1);
    if (due === 'start' || timing.wasIdle()) this.guessWalls(T_s, coolant);
    if (due === 'batch') {
      for (let s = timing.offset; s < this.segments; s += timing.stride) {
        const water = coolant.segmentTemperature[s] as number;
        if (this.conditions.changed(s, water, this.inside[s] as number, this.shareBefore(s), m))
          this.refresh(s, coolant, T_s, G, m, false);
      }
    } else if (due !== 'step') {
      const passes = due === 'start' ? STARTING_PASSES : due === 'settle' ? 1 : CHANGED_PASSES;
      this.refreshAll(coolant, T_s, G, m, passes);
      if (due === 'start' || timing.isFailing(coolant)) this.estimateCondensation(latentPower, T_s, coolant, dt);
      timing.keep(rate, arriving, coolant, this.condensingLength);
    }
    coolant.updateImplicitFactor(this.condensing, dt);
  }

  /** Temperatures to begin with, before anything has warmed the walls. */
  private guessWalls(T_s: number, coolant: Coolant): void {
    for (let s = 0; s < this.segments; s++) {
      this.outerWall[s] = 0.7 * T_s + 0.3 * (coolant.segmentTemperature[s] as number);
      this.innerWall[s] = this.outerWall[s] as number;
      this.inside[s] = 0.5 * (T_s + (coolant.segmentTemperature[s] as number));
      this.upstream[s] = this.inside[s] as number;
    }
  }

  /**
   * For the first step with vapour, and for water that has as good as stopped: only the segments that will condense it
   * warm the water. How far they reach is told from water as warm as if all did, so that vapour meets no segment whose
   * water is not predicted yet.
   */
  private estimateCondensation(latentPower: number, T_s: number, coolant: Coolant, dt: number): void {
    this.upstream.fill(T_s);
    coolant.predictTemperature(this.condensing, this.upstream, dt);
    let left = latentPower;
    for (let s = 0; s < this.segments; s++) {
      const dT = Math.max(0, T_s - (coolant.segmentTemperature[s] as number));
      const heat = Math.min(left, (this.condensing[s] as number) * dT);
      this.effective[s] = dT > 0 ? heat / dT : 0;
      left -= heat;
    }
  }

  /** Marches the segments, the condensate setting out at T_l; returns the latent heat left at the end, J. */
  private march(latent: number, T_s: number, T_l: number, capacity: number, coolant: Coolant, dt: number): number {
    const { segmentHeat, segmentTemperature, implicitFactor } = coolant;
    const { terms } = this;
    terms.whole = this.segments;
    terms.left = 0;
    terms.possible = 0;
    terms.water = segmentTemperature[this.segments - 1] as number;
    let left = latent;
    let T = T_l;
    this.condensingLength = latent > 0 ? this.length() : 0;
    const perMetre = 1 / (dt * this.segmentLength * this.tubes);
    const perLatent = latent > 0 ? 1 / latent : 0;
    this.front = latent > 0 ? this.segments : 0;
    for (let s = 0; s < this.segments; s++) {
      const T_c = segmentTemperature[s] as number;
      let heat = 0;
      let remaining = 1;
      const arriving = left > 0 ? T_s : T;
      if (left > 0) {
        const wanted = (this.condensing[s] as number) * (implicitFactor[s] as number) * dt * Math.max(0, T_s - T_c);
        const possible = coolant.takenUp(s, T_s, wanted);
        if (possible < left) {
          heat = possible;
          left -= possible;
          remaining = 0;
        } else {
          const used = left / possible;
          terms.whole = s;
          this.front = s;
          terms.left = left;
          terms.possible = possible;
          terms.water = T_c;
          heat = left;
          left = 0;
          remaining = 1 - used;
          this.condensingLength = (s + used) * this.segmentLength;
        }
      }
      if (left === 0 && remaining > 0) {
        const units = ((this.cooling[s] as number) * remaining * dt) / capacity;
        const fall = (T - T_c) * ((implicitFactor[s] as number) * shareGiven(units));
        const wanted = heat + fall * capacity;
        const taken = coolant.takenUp(s, T, wanted);
        if (taken === wanted) {
          T -= fall;
          heat = wanted;
        } else if (taken > heat) {
          T -= (taken - heat) / capacity;
          heat = taken;
        }
      }
      segmentHeat[s] = heat;
      this.duty += heat;
      this.heatPerMetre[s] = heat * perMetre;
      // The resistance may still be that of the other zone where condensation has just moved on: no wall is hotter than the
      // steam. Where no heat goes out, as above the water of a tub, it is as hot as what is in it.
      this.wall[s] =
        heat === 0
          ? arriving
          : Math.min(Math.max(T_s, T_c), T_c + heat * perMetre * (this.outerResistance[s] as number));
      this.inside[s] = T;
      this.upstream[s] = arriving;
      if (coolant.predictsTemperature)
        this.effective[s] = Math.abs(arriving - T_c) > 0.01 ? heat / (dt * (arriving - T_c)) : 0;
      this.vapourShare[s] = left * perLatent;
    }
    return left;
  }

  /** Shares out what arrived between condensate and escaping vapour. */
  private split(vapour: VapourStream, liquid: LiquidStream, T_s: number, escapingShare: number, left: number): void {
    const { oil, condensate, escaped } = this;
    escaped.water = escapingShare * vapour.water;
    condensate.water = vapour.water - escaped.water + liquid.water;
    let oilCondensed = 0;
    let oilEscaping = 0;
    for (let i = 0; i < oil.count; i++) {
      const all = vapour.oil[i] as number;
      const gone = escapingShare * all;
      escaped.oil[i] = gone;
      condensate.oil[i] = all - gone + (liquid.oil[i] as number);
      oilEscaping += gone;
      oilCondensed += condensate.oil[i] as number;
    }
    escaped.temperature = T_s;
    escaped.enthalpy =
      escaped.water * tableLiquidEnthalpy(T_s) + oilEscaping * oil.heatCapacity * (T_s - ENTHALPY_ZERO) + left;
    condensate.enthalpy = vapour.enthalpy + liquid.enthalpy - this.duty - escaped.enthalpy;
    if (condensate.water > TRACE * vapour.water)
      this.condensateTemperature = liquidTemperature(
        condensate.enthalpy,
        condensate.water,
        oilCondensed * oil.heatCapacity,
      );
    else if (vapour.water > 0) {
      // The heat of next to nothing would be a difference of nearly equal numbers: such a trace is as hot as the vapour.
      const both = condensate.enthalpy + escaped.enthalpy;
      this.condensateTemperature = T_s;
      condensate.enthalpy =
        condensate.water * tableLiquidEnthalpy(T_s) + oilCondensed * oil.heatCapacity * (T_s - ENTHALPY_ZERO);
      escaped.enthalpy = both - condensate.enthalpy;
    }
  }

  /** Vapour speed at the inlet of the tubes for a rate, m/s. */
  inletSpeed(rate: number): number {
    return this.friction.massFlux(rate) / tableVapourDensity(this.dewTemperature);
  }
}
