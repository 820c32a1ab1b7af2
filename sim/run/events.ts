/**
 * Events of a run, as facts with their time and numbers. Conditions are watched every step; an event is raised once,
 * except escaping vapour, which is raised each time it begins and ends.
 */
import { bedHeight, heatedBaseArea } from '../geometry/pot.ts';
import { freezingTemperature } from '../fluids/freezing.ts';
import type { Scenario } from '../scenario/scenario.ts';
import type { Still } from '../still/still.ts';
import { soudersBrownVelocity } from '../transfer/boiling.ts';
import { tableLiquidDensity, tableSaturationTemperature, tableVapourDensity } from '../fluids/water-table.ts';
import { runEvent } from './event-kinds.ts';
import { LIMITS } from './limits.ts';
import type { BoilingVessel, EventKind, EventValues, RunEvent } from './result.ts';

/** Time in which the first vapour finds its way through the tube, s. */
const STARTING = 60;
/** Time at full heat after which a rate that is not reached counts as not to be reached, s. */
const AT_FULL_HEAT = 600;
/** Time without escaping vapour after which the condenser counts as holding it again, s. */
const QUIET = 30;

/** Heat sources that a circuit feeds; a flame asks nothing of it. */
const ON_MAINS: ReadonlySet<Scenario['heat']['kind']> = new Set([
  'electric-plate',
  'immersion-element',
  'induction',
  'steam-generator',
]);

export class EventWatch {
  readonly events: RunEvent[] = [];
  firstBoil: number | null = null;
  firstDrop: number | null = null;
  private readonly raised = new Set<EventKind>();
  private escaping = false;
  private quietSince = 0;
  private readonly bedHeight: number;
  /** Since when the controller has asked for all the heat there is while distillate comes, s. */
  private fullSince = Infinity;
  /** Where water open to the air boils, K. */
  private readonly airBoilingPoint: number;

  private readonly vessel: BoilingVessel;
  private readonly scenario: Scenario;
  private readonly still: Still;

  constructor(scenario: Scenario, still: Still) {
    this.scenario = scenario;
    this.still = still;
    this.bedHeight = bedHeight(scenario);
    this.vessel = scenario.pot.layout === 'steam' ? 'boiler' : 'pot';
    this.airBoilingPoint = tableSaturationTemperature(still.airPressure);
    this.checkCircuit();
    this.checkScorch();
  }

  /** Keeps an event; the run itself raises those of its end. */
  raise<K extends EventKind>(kind: K, time_s: number, values: EventValues[K]): void {
    this.raised.add(kind);
    this.events.push(runEvent(kind, time_s, values) as RunEvent);
  }

  /** Highest setting the run may use: a controller may take all there is. */
  private peakSetting(): number {
    const { heat } = this.scenario;
    return heat.control === 'hold-rate' ? 1 : Math.max(...heat.setting.map((knot) => knot.value));
  }

  private checkCircuit(): void {
    const { heat } = this.scenario;
    if (!ON_MAINS.has(heat.kind) || heat.supplyVolts_V === null || heat.supplyAmps_A === null) return;
    const limit = heat.supplyVolts_V * heat.supplyAmps_A;
    const peak = heat.ratedPower_W * this.peakSetting();
    if (peak > limit) this.raise('circuit-overloaded', 0, { peak_W: peak, limit_W: limit });
  }

  private checkScorch(): void {
    const { pot, heat, charge } = this.scenario;
    if (pot.layout !== 'water' || charge.mass_kg === 0) return;
    const peak = (heat.ratedPower_W * heat.shareToPot * this.peakSetting()) / heatedBaseArea(this.scenario);
    if (peak > LIMITS.scorchFlux_W_m2) this.raise('scorch', 0, { flux_W_m2: peak, limit_W_m2: LIMITS.scorchFlux_W_m2 });
  }

  /** Looks at the still after a step; `warmestOutlet` is the summary's warmest distillate so far, K. */
  watch(time: number, dt: number, warmestOutlet: number): void {
    this.watchHeat(time, dt);
    this.watchPot(time, dt);
    this.watchBed(time);
    this.watchCondenser(time, dt, warmestOutlet);
    this.watchTube(time, dt);
    this.watchCooling(time);
    this.watchSeparator(time);
  }

  private watchHeat(time: number, dt: number): void {
    const { heat } = this.scenario;
    const { source, condenser } = this.still;
    if (heat.control !== 'hold-rate' || this.raised.has('rate-not-held')) return;
    if (this.firstDrop === null || source.setting < 1) this.fullSince = Infinity;
    else this.fullSince = Math.min(this.fullSince, time);
    if (!(time - this.fullSince > AT_FULL_HEAT)) return;
    const rate = (condenser.condensate.water + condenser.condensate.oilTotal()) / dt;
    if (rate < LIMITS.rateReached * heat.targetRate_kg_s)
      this.raise('rate-not-held', time, { rate_kg_s: rate, target_kg_s: heat.targetRate_kg_s });
  }

  private watchPot(time: number, dt: number): void {
    const { still, scenario, raised } = this;
    const { pot } = still;
    if (this.firstBoil === null && pot.out.water > 0) {
      this.firstBoil = time;
      this.raise('first-boil', time, { boilingPoint_K: pot.boilingTemperature });
    }
    const gauge = still.gauge();
    if (!raised.has('pressure-high') && gauge > LIMITS.potGauge_Pa)
      this.raise('pressure-high', time, { gauge_Pa: gauge, limit_Pa: LIMITS.potGauge_Pa });
    if (
      !raised.has('pot-low') &&
      pot.depth() - pot.geometry.submergedVolume / pot.section < scenario.pot.minimumDepth_m
    )
      this.raise('pot-low', time, { water_kg: pot.water, vessel: this.vessel });
    if (!raised.has('foam-carry-over') && pot.out.water > 0) {
      const density = tableVapourDensity(pot.out.temperature);
      const speed = pot.out.water / (dt * density * pot.section);
      const limit = soudersBrownVelocity(LIMITS.foamFactor_m_s, tableLiquidDensity(pot.out.temperature), density);
      if (speed > limit)
        this.raise('foam-carry-over', time, { speed_m_s: speed, limit_m_s: limit, vessel: this.vessel });
    }
  }

  private watchBed(time: number): void {
    const { still, scenario, raised } = this;
    if (!still.bed) return;
    if (!raised.has('front-through') && still.bed.out.water > 0)
      this.raise('front-through', time, { bedHeight_m: still.bed.height });
    const weight = scenario.charge.bulkDensity_kg_m3 * 9.81 * this.bedHeight;
    if (!raised.has('bed-lifts') && still.bedDrop > weight)
      this.raise('bed-lifts', time, { pressureDrop_Pa: still.bedDrop, weight_Pa: weight });
  }

  private watchCondenser(time: number, dt: number, outlet: number): void {
    const { still, scenario, raised } = this;
    if (this.firstDrop === null && still.keptWater + still.returnedWater >= LIMITS.firstDrop_kg) {
      this.firstDrop = time;
      this.raise('first-drop', time, { distillate_kg: still.keptWater + still.returnedWater });
    }
    this.watchEscape(time, dt);
    if (!raised.has('outlet-warm') && outlet > scenario.condenser.outletLimit_K)
      this.raise('outlet-warm', time, { distillate_K: outlet, limit_K: scenario.condenser.outletLimit_K });
    if (!raised.has('oil-freezes')) this.watchFreezing(time);
    if (!raised.has('neck-fast') && still.neckSpeed > LIMITS.vapourSpeed_m_s)
      this.raise('neck-fast', time, { speed_m_s: still.neckSpeed, limit_m_s: LIMITS.vapourSpeed_m_s });
  }

  /** Crystals on the wall where the tube ends, which is its coldest place. */
  private watchFreezing(time: number): void {
    const { condenser, oil } = this.still;
    const wall_K = condenser.wall[condenser.segments - 1] as number;
    const { oil: mass, water } = condenser.condensate;
    const solid = oil.freezing[oil.mostFrozen(mass, water, wall_K)];
    if (!solid || oil.solidShare <= LIMITS.solidOilShare) return;
    this.raise('oil-freezes', time, {
      constituent: solid.row.id,
      wall_K,
      freezes_K: freezingTemperature(solid.row, oil.moleFraction(solid.at, mass)),
      solidShare: oil.solidShare,
    });
  }

  /** A narrow tube: what it holds back, or how fast the vapour rushes in. */
  private watchTube(time: number, dt: number): void {
    const { condenser, arrivingWater } = this.still;
    if (this.raised.has('tube-hazard')) return;
    if (condenser.drop > LIMITS.tubeDrop_Pa) {
      this.raise('tube-hazard', time, {
        because: 'pressure',
        pressureDrop_Pa: condenser.drop,
        speed_m_s: condenser.inletSpeed(arrivingWater / dt),
      });
      return;
    }
    // A tube that will hold back too much says so in its first minute.
    if (this.firstDrop === null || time < this.firstDrop + STARTING) return;
    const speed = condenser.inletSpeed(arrivingWater / dt);
    if (speed > LIMITS.vapourSpeed_m_s)
      this.raise('tube-hazard', time, { because: 'speed', pressureDrop_Pa: condenser.drop, speed_m_s: speed });
  }

  private watchEscape(time: number, dt: number): void {
    const { condenser, arrivingWater } = this.still;
    const escaping = arrivingWater > 0 && condenser.escaped.water > LIMITS.escapeShare * arrivingWater;
    if (escaping) this.quietSince = time;
    if (escaping && !this.escaping) {
      this.escaping = true;
      this.raise('vapour-escapes', time, {
        escaping_kg_s: condenser.escaped.water / dt,
        share: condenser.escaped.water / arrivingWater,
      });
    } else if (this.escaping && time - this.quietSince > QUIET) {
      this.escaping = false;
      this.raise('vapour-held-again', time, { condensingLength_m: condenser.condensingLength });
    }
  }

  private watchCooling(time: number): void {
    const { still, raised, scenario } = this;
    const { coolant } = still;
    const { kind: condenser } = scenario.condenser;
    const water_K = coolant.outletTemperature;
    if (!raised.has('tub-warm') && water_K >= LIMITS.hotWater_K)
      this.raise('tub-warm', time, { water_K, limit_K: LIMITS.hotWater_K, condenser });
    if (!raised.has('tub-hot') && water_K >= LIMITS.scaldingWater_K)
      this.raise('tub-hot', time, { water_K, limit_K: LIMITS.scaldingWater_K, condenser });
    const warmest_K = coolant.boils ? this.airBoilingPoint : water_K;
    if (!raised.has('cooling-boils') && warmest_K > this.airBoilingPoint - LIMITS.coolingBelowBoil_K)
      this.raise('cooling-boils', time, { water_K: warmest_K });
    if (!raised.has('coil-uncovered') && coolant.uncovered > 0 && coolant.depth() < scenario.cooling.tubHeight_m)
      this.raise('coil-uncovered', time, { depth_m: coolant.depth() });
  }

  private watchSeparator(time: number): void {
    const { raised } = this;
    const { separator } = this.still;
    if (Number.isNaN(separator.densityDifference)) return;
    if (!raised.has('separator-overrun') && separator.captureShare < LIMITS.captureShare)
      this.raise('separator-overrun', time, { captureShare: separator.captureShare, limit: LIMITS.captureShare });
    if (
      !raised.has('near-neutral-oil') &&
      Math.abs(separator.densityDifference) < LIMITS.nearNeutral_kg_m3 &&
      separator.dropsCame()
    )
      this.raiseNearNeutral(time);
    if (!raised.has('oil-at-inlet') && separator.layer() > this.inletLayer())
      this.raise('oil-at-inlet', time, { layer_m: separator.layer() });
  }

  /** Oil layer that reaches the inlet, m: floating oil grows down to it, sinking oil up. */
  private inletLayer(): number {
    const { inletDepth_m, height_m } = this.scenario.separator;
    return this.still.separator.densityDifference > 0 ? inletDepth_m : height_m - inletDepth_m;
  }

  private raiseNearNeutral(time: number): void {
    const { separator } = this.still;
    const T = separator.temperatureForDifference(LIMITS.separatesWell_kg_m3);
    this.raise('near-neutral-oil', time, {
      difference_kg_m3: separator.densityDifference,
      water_kg_m3: tableLiquidDensity(separator.temperature),
      temperature_K: separator.temperature,
      advised_K: T,
      differenceThere_kg_m3: separator.differenceAt(T),
      waterThere_kg_m3: tableLiquidDensity(T),
    });
  }
}
