/**
 * Whether a condenser holds: the real run, watched every step and abandoned as soon as it fails.
 *
 * A condenser holds when over the whole run, with the tub or barrel warming as it does,
 * - no vapour leaves the outlet (0.2 % of what arrives counts as none),
 * - the distillate stays at or below the outlet limit, as a flow-weighted mean over the last half minute once its flow has
 *   settled, and
 * - its tube holds back no more than 5 kPa, as a trailing mean over a minute.
 * The first two are just what the run's own events and summary tell, so that no page contradicts another.
 */
import { LIMITS } from '../../run/limits.ts';
import { Run } from '../../run/simulate.ts';
import { Peaks } from '../../run/summary.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import type { Still } from '../../still/still.ts';

/** Shortest time of vapour that counts as a run, and time over which the pressure drop is averaged, s. */
export const SETTLING_TIME = 60;
/** Time over which the temperatures inside the tube are averaged for the hint, s. */
const PROFILE_MEMORY = 30;
/** Share of the largest length from which on a moment counts as near the worst, and by how much more steam or drop counts. */
const NEAR_WORST = 0.93;
const MORE = 1.005;
/** Pressure drop of the tube above which a still must not be run, Pa: a lid lifts or sprays. */
export const TUBE_PRESSURE_LIMIT = LIMITS.potGauge_Pa;

export type CondenserFailureKind =
  | 'vapour-escapes'
  | 'outlet-warm'
  | 'pressure'
  /** The run broke off, so that nothing is known of it. */
  | 'calculation';

/** What failed first and when, with the cooling water round the outlet and the dew temperature in the tube then. */
export interface CondenserFailure {
  readonly kind: CondenserFailureKind;
  readonly time_s: number;
  readonly coolant_K: number;
  readonly dew_K: number;
}

export interface CondenserTrial {
  readonly holds: boolean;
  /** What failed first; `null` when it holds. */
  readonly failure: CondenserFailure | null;
  /** Whether vapour reached the condenser for longer than a minute, before the run ended or was abandoned. */
  readonly vapourCame: boolean;
  /** Length at which the distillate had cooled to the limit, at the worst moment, m: where the boundary may lie. */
  readonly cooledBy_m: number;
  /** Warmest distillate, flow-weighted over half a minute, K; `null` without vapour. */
  readonly warmestOutlet_K: number | null;
  readonly warmestCoolant_K: number;
  /** Largest pressure drop of the tube, as a trailing mean over a minute, Pa. */
  readonly drop_Pa: number;
  /** Largest rate of water vapour reaching the condenser, kg/s. */
  readonly peakVapour_kg_s: number;
  readonly coolantUsed_kg: number;
  /** Time after which nothing came near the worst again, s: neither the length, by a fifteenth, nor steam nor pressure. */
  readonly worstOver_s: number;
}

class CondenserWatch {
  vapourCame = false;
  failure: CondenserTrial['failure'] = null;
  cooledBy = 0;
  warmestOutlet = -Infinity;
  warmestCoolant = -Infinity;
  largestDrop = 0;
  peakVapour = 0;
  worstOver = 0;
  private vapourTime = 0;
  private drop = 0;
  private flow = 0;
  /** Trailing means of flow times temperature inside the tube at the end of each segment, kg K/s. */
  private readonly inside: Float64Array;
  private readonly peaks = new Peaks();
  private readonly still: Still;
  private readonly limit: number;

  constructor(still: Still, outletLimit: number) {
    this.still = still;
    this.limit = outletLimit;
    this.inside = new Float64Array(still.condenser.segments);
  }

  look(time: number, dt: number): void {
    const { condenser, coolant, arrivingWater } = this.still;
    this.peaks.watch(this.still, dt);
    this.warmestCoolant = Math.max(this.warmestCoolant, coolant.outletTemperature);
    this.drop += -Math.expm1(-dt / SETTLING_TIME) * (condenser.drop - this.drop);
    if (arrivingWater / dt > MORE * this.peakVapour || this.drop > MORE * this.largestDrop) this.worstOver = time;
    this.peakVapour = Math.max(this.peakVapour, arrivingWater / dt);
    this.largestDrop = Math.max(this.largestDrop, this.drop);
    this.averageProfile(dt);
    if (!(arrivingWater > 0)) return;
    this.vapourTime += dt;
    this.vapourCame = this.vapourTime > SETTLING_TIME;
    if (!(this.drop <= TUBE_PRESSURE_LIMIT) || !Number.isFinite(condenser.condensateTemperature))
      this.fail('pressure', time);
    if (condenser.escaped.water > LIMITS.escapeShare * arrivingWater) this.fail('vapour-escapes', time);
    this.warmestOutlet = this.peaks.condensate;
    if (!(this.warmestOutlet > 0)) return;
    const here = Math.max(this.lengthToLimit(), condenser.condensingLength);
    this.cooledBy = Math.max(this.cooledBy, here);
    if (here > NEAR_WORST * this.cooledBy) this.worstOver = time;
    if (this.warmestOutlet > this.limit) this.fail('outlet-warm', time);
  }

  private averageProfile(dt: number): void {
    const { condenser } = this.still;
    const share = -Math.expm1(-dt / PROFILE_MEMORY);
    const flow = condenser.condensate.water / dt;
    this.flow += share * (flow - this.flow);
    for (let s = 0; s < this.inside.length; s++) {
      const before = this.inside[s] as number;
      this.inside[s] = before + share * (flow * (condenser.inside[s] as number) - before);
    }
  }

  fail(kind: CondenserFailureKind, time: number): void {
    if (this.failure !== null) return;
    const { coolant, condenser } = this.still;
    this.failure = {
      kind,
      time_s: time,
      coolant_K: coolant.segmentTemperature.at(-1) ?? Number.NaN,
      dew_K: condenser.dewTemperature,
    };
  }

  /** Length at which the averaged profile crosses the limit, m; the whole tube when it does not. */
  private lengthToLimit(): number {
    const { inside, limit, flow } = this;
    const { segmentLength, dewTemperature } = this.still.condenser;
    let before = dewTemperature;
    for (let s = 0; s < inside.length; s++) {
      const here = (inside[s] as number) / flow;
      if (here <= limit) return (s + Math.max(0, (before - limit) / (before - here))) * segmentLength;
      before = here;
    }
    return inside.length * segmentLength;
  }
}

/**
 * Runs a scenario until its condenser fails or the run ends.
 * @param step_s step of the model, s; the scenario's own when left out
 * @param until_s where it is known that nothing worse comes after a time, s: no longer than that
 */
export function tryCondenser(
  scenario: Scenario,
  step_s: number = scenario.advanced.step_s,
  until_s = Infinity,
): CondenserTrial {
  const run = new Run({
    ...scenario,
    advanced: { ...scenario.advanced, step_s, recordEvery_s: scenario.run.duration_s },
  });
  const watch = new CondenserWatch(run.still, scenario.condenser.outletLimit_K);
  while (!run.ended && watch.failure === null && run.time() < until_s) {
    run.takeStep();
    watch.look(run.time(), run.stepLength);
  }
  if (run.failure !== null) watch.fail('calculation', run.failure.time_s);
  return {
    holds: watch.failure === null,
    failure: watch.failure,
    vapourCame: watch.vapourCame,
    cooledBy_m: watch.cooledBy,
    warmestOutlet_K: Number.isFinite(watch.warmestOutlet) ? watch.warmestOutlet : null,
    warmestCoolant_K: watch.warmestCoolant,
    drop_Pa: watch.largestDrop,
    peakVapour_kg_s: watch.peakVapour,
    coolantUsed_kg: run.still.coolant.used,
    worstOver_s: watch.worstOver,
  };
}

/** Step for searching, s: five seconds move the needed length by some tenths of a percent. */
export const searchStep = (scenario: Scenario): number => Math.max(5, scenario.advanced.step_s);

/** A trial of several scenarios as one: it holds when more than half of them do. */
export function tryMost(scenarios: readonly Scenario[], step_s: number): CondenserTrial {
  const enough = Math.floor(scenarios.length / 2) + 1;
  const held: CondenserTrial[] = [];
  const failed: CondenserTrial[] = [];
  for (const scenario of scenarios) {
    const trial = tryCondenser(scenario, step_s);
    (trial.holds ? held : failed).push(trial);
    if (held.length === enough || failed.length === enough) break;
  }
  const decided = held.length === enough ? held : failed;
  return decided.reduce((worst, next) => (next.cooledBy_m > worst.cooledBy_m ? next : worst));
}
