/**
 * A whole run: a pure function of the scenario. Time advances in whole steps counted as integers; controls are read
 * from their schedules; the record is taken at its own interval. `Run.advance` may be called in slices of any size
 * without changing a bit of the result.
 */
import { isTapFed } from '../geometry/condenser-kind.ts';
import { tableLiquidDensity } from '../fluids/water-table.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { Still } from '../still/still.ts';
import { BalanceSheet } from './balance.ts';
import { EventWatch } from './events.ts';
import { LIMITS } from './limits.ts';
import { Recorder, sum } from './recorder.ts';
import type { EndReason, NonFinite, RunResult, StateVariable } from './result.ts';
import { ScheduleReader } from './schedule-value.ts';
import { meanOilRate, OIL_RATE_SPAN_S, runStopRule, type RunStopRule } from './stop-rules.ts';
import { Peaks, summarise } from './summary.ts';

/** Sub-steps of a step from just before the boil until so long after the first drop, s. */
const SUB_STEPS_AT_BOIL = 4;
const FIRST_VAPOUR_S = 60;

export class Run {
  readonly still: Still;
  ended = false;
  private step = 0;
  private endReason: EndReason = 'duration';
  failure: NonFinite | null = null;
  private readonly dt: number;
  /** Length of the step taken last, s: `dt`, or a sub-step's while the first vapour comes. */
  stepLength: number;
  /** Sub-steps in which the present step is taken, and how many of them are taken. */
  private subSteps = 1;
  private subStep = 0;
  /** Time for which distillate has come, s. */
  private dripped = 0;
  private readonly steps: number;
  private readonly rowEvery: number;
  private readonly recorder: Recorder;
  private readonly events: EventWatch;
  private readonly balance: BalanceSheet;
  readonly peaks = new Peaks();
  private readonly heat: ScheduleReader;
  private readonly flow: ScheduleReader;
  private readonly tap: ScheduleReader;
  private readonly startEnergy: number;
  private readonly oilAtStart: number;
  private readonly oilBefore: Float64Array;
  private lastPotTemperature: number;

  readonly scenario: Scenario;

  constructor(scenario: Scenario) {
    this.scenario = scenario;
    const { advanced, run, heat, cooling } = scenario;
    this.dt = advanced.step_s;
    this.stepLength = this.dt;
    this.steps = Math.ceil(run.duration_s / this.dt - 1e-9);
    this.rowEvery = Math.max(1, Math.round(advanced.recordEvery_s / this.dt));
    this.still = new Still(scenario);
    this.recorder = new Recorder(this.still, Math.ceil(this.steps / this.rowEvery) + 2);
    this.balance = new BalanceSheet(this.still);
    this.events = new EventWatch(scenario, this.still);
    this.heat = new ScheduleReader(heat.setting);
    this.flow = new ScheduleReader(cooling.flow_kg_s);
    this.tap = new ScheduleReader(cooling.tapTemperature_K);
    this.startEnergy = this.still.storedEnergy();
    this.oilAtStart = this.balance.oilAtStart();
    this.oilBefore = new Float64Array(Math.max(1, Math.round(OIL_RATE_SPAN_S / this.dt)));
    this.lastPotTemperature = this.still.pot.temperature;
    this.setControls(0);
    this.recorder.take(0, this.stepLength, this.startEnergy);
  }

  /** Time reached, s. */
  time(): number {
    return (this.step + this.subStep / this.subSteps) * this.dt;
  }

  private setControls(time: number): void {
    const { source, coolant } = this.still;
    if (this.scenario.heat.control === 'hold-rate') this.holdRate();
    else source.setting = this.heat.at(time);
    coolant.flow = this.flow.at(time);
    if (isTapFed(this.scenario)) coolant.inletTemperature = this.tap.at(time);
  }

  private holdRate(): void {
    const { source, condenser, pot } = this.still;
    const rate = (condenser.condensate.water + condenser.condensate.oilTotal()) / this.stepLength;
    const warming = (pot.temperature - this.lastPotTemperature) / this.stepLength;
    this.lastPotTemperature = pot.temperature;
    source.control(rate, pot.boilingTemperature - pot.temperature, warming, this.stepLength);
  }

  /** Runs on to a time (or the end). */
  advance(until: number): void {
    while (!this.ended && this.time() + this.dt / this.subSteps <= until + 1e-9) this.takeStep();
  }

  /** One step of the model: a whole one, or a sub-step while the first vapour comes. */
  takeStep(): void {
    const { still, peaks, events } = this;
    const start = this.time();
    const length = this.dt / this.subSteps;
    this.setControls(start + 0.5 * length);
    this.stepLength = length;
    still.step(start, this.stepLength);
    this.subStep++;
    if (this.subStep === this.subSteps) this.finishWholeStep();
    const now = this.time();
    peaks.watch(still, this.stepLength);
    events.watch(now, this.stepLength, peaks.condensate);
    if (!this.isFinite(now) || this.subStep > 0) return;
    this.checkEnd(now);
    if (this.ended || this.step % this.rowEvery === 0) this.recorder.take(now, this.stepLength, this.startEnergy);
  }

  /** The first vapour carries the richest oil and meets a cold condenser: steps are cut until it is over. */
  private finishWholeStep(): void {
    const { still } = this;
    this.subStep = 0;
    this.step++;
    if (still.condenser.condensate.water > 0) this.dripped += this.dt;
    this.subSteps = still.nearBoil() && this.dripped < FIRST_VAPOUR_S ? SUB_STEPS_AT_BOIL : 1;
  }

  private checkEnd(now: number): void {
    const { still, scenario } = this;
    const { run } = scenario;
    if (still.gauge() > LIMITS.burstGauge_Pa) {
      this.events.raise('over-pressure', now, { gauge_Pa: still.gauge(), limit_Pa: LIMITS.burstGauge_Pa });
      this.finishBecause('over-pressure');
      return;
    }
    const collected = sum(still.separator.collected);
    const slot = this.step % this.oilBefore.length;
    const before = this.oilBefore[slot] as number;
    this.oilBefore[slot] = collected;
    const rule = runStopRule(run, collected, this.oilAtStart, still.keptWater + still.returnedWater, before);
    if (still.pot.depth() - still.pot.geometry.submergedVolume / still.pot.section < LIMITS.dryDepth_m && now > 0) {
      this.events.raise('pot-dry', now, {
        water_kg: still.pot.water,
        vessel: scenario.pot.layout === 'steam' ? 'boiler' : 'pot',
      });
      this.finishBecause('pot-dry');
    } else if (rule) {
      this.stopBy(rule, now, collected, before);
    } else if (this.step >= this.steps) {
      this.events.raise('run-ends', now, { duration_s: now });
      this.finishBecause('duration');
    }
  }

  private stopBy(rule: RunStopRule, now: number, collected: number, before: number): void {
    const { events, still } = this;
    const { run } = this.scenario;
    if (rule === 'stop-share') {
      events.raise('stop-rule', now, { rule, share: collected / this.oilAtStart, limit: run.stopAtShare as number });
    } else if (rule === 'stop-distillate') {
      const distillate_kg = still.keptWater + still.returnedWater;
      events.raise('stop-rule', now, { rule, distillate_kg, limit_kg: run.stopAtDistillate_kg as number });
    } else {
      const values = { oilRate_kg_s: meanOilRate(collected, before), limit_kg_s: run.stopAtOilRate_kg_s as number };
      events.raise('oil-rate-low', now, { ...values, over_s: OIL_RATE_SPAN_S });
      events.raise('stop-rule', now, { rule, ...values });
    }
    this.finishBecause(rule);
  }

  private finishBecause(reason: EndReason): void {
    this.endReason = reason;
    this.ended = true;
  }

  /** Checks that every part gives numbers; if not, stops the run and names the first that does not. */
  private isFinite(now: number): boolean {
    const { still } = this;
    const { source, pot, bed, head, neck, condenser, coolant, separator, release } = still;
    const sound =
      source.stored +
      pot.enthalpy +
      pot.out.enthalpy +
      (bed ? bed.out.enthalpy : 0) +
      head.temperature +
      neck.temperature +
      condenser.condensate.enthalpy +
      coolant.outletTemperature +
      separator.enthalpy;
    if (Number.isFinite(sound)) return true;
    const states: readonly (readonly [StateVariable, number])[] = [
      ['heat-source', source.stored],
      ['charge-oil', release.total(release.ready) + release.total(release.held)],
      ['coolant-temperature', coolant.enthalpy() + coolant.outletTemperature],
      ['separator-temperature', separator.enthalpy + separator.temperature],
      ['distillate-temperature', condenser.condensateTemperature],
      ['lid-temperature', head.temperature],
      ['neck-temperature', neck.temperature],
      ['bed-temperature', bed ? sum(bed.temperature) + sum(bed.enthalpy) : 0],
      ['pot-water', pot.water],
      ['pot-temperature', pot.temperature + pot.enthalpy],
    ];
    const variable = states.find(([, value]) => !Number.isFinite(value))?.[0] ?? 'vapour';
    this.failure = { variable, time_s: now };
    this.finishBecause('non-finite');
    return false;
  }

  /** Water in the pot at the end, kg; a pot that ran dry holds the film by which it counts as dry. */
  private potWaterLeft(): number {
    const { pot } = this.still;
    return this.endReason === 'pot-dry'
      ? LIMITS.dryDepth_m * pot.section * tableLiquidDensity(pot.boilingTemperature)
      : pot.water;
  }

  /** The finished run. */
  result(): RunResult {
    const record = this.recorder.finish();
    const { events } = this;
    return {
      scenario: this.scenario,
      record,
      events: [...events.events].sort((a, b) => a.time_s - b.time_s),
      summary: summarise({
        scenario: this.scenario,
        still: this.still,
        record,
        peaks: this.peaks,
        oilAtStart: this.oilAtStart,
        firstBoil: events.firstBoil,
        firstDrop: events.firstDrop,
        end: this.time(),
        endReason: this.endReason,
        potWaterLeft: this.potWaterLeft(),
      }),
      balance: this.balance.close(),
      failure: this.failure,
    };
  }
}

/** Runs a scenario from start to end. */
export function simulate(scenario: Scenario): RunResult {
  const run = new Run(scenario);
  run.advance(Infinity);
  return run.result();
}
