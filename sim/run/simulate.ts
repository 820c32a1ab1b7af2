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
import { MOST_VALUES, Recorder, sum, valuesInRow } from './recorder.ts';
import type { EndReason, NonFinite, RunResult, StateVariable } from './result.ts';
import { ScheduleReader } from './schedule-value.ts';
import { StepLength } from './step-length.ts';
import { meanOilRate, OIL_RATE_SPAN_S, runStopRule, type RunStopRule } from './stop-rules.ts';
import { Peaks, summarise } from './summary.ts';

export class Run {
  readonly still: Still;
  ended = false;
  private step = 0;
  private endReason: EndReason = 'duration';
  failure: NonFinite | null = null;
  private readonly dt: number;
  /** Length of the step taken last, s. */
  stepLength: number;
  private readonly length: StepLength;
  /** Parts of the present step that are taken. */
  private part = 0;
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
    this.still = new Still(scenario);
    const wanted = Math.max(1, Math.round(advanced.recordEvery_s / this.dt));
    // A record that would be too large keeps every so many rows: its times tell which.
    this.rowEvery = wanted * Math.max(1, Math.ceil(((this.steps / wanted) * valuesInRow(this.still)) / MOST_VALUES));
    this.recorder = new Recorder(this.still, Math.ceil(this.steps / this.rowEvery) + 2);
    this.balance = new BalanceSheet(this.still);
    this.length = new StepLength(this.still, this.dt);
    this.events = new EventWatch(scenario, this.still);
    this.heat = new ScheduleReader(heat.setting, this.events);
    this.flow = new ScheduleReader(cooling.flow_kg_s, this.events);
    this.tap = new ScheduleReader(cooling.tapTemperature_K, this.events);
    this.startEnergy = this.still.storedEnergy();
    this.oilAtStart = this.balance.oilAtStart();
    this.oilBefore = new Float64Array(Math.max(1, Math.round(OIL_RATE_SPAN_S / this.dt)));
    this.lastPotTemperature = this.still.pot.temperature;
    this.setControls(0, this.dt);
    this.recorder.take(0, this.stepLength, this.startEnergy);
    this.chooseLength();
  }

  /** Time reached, s. */
  time(): number {
    return (this.step + this.part / this.length.parts) * this.dt;
  }

  private setControls(time: number, coming: number): void {
    const { source, coolant } = this.still;
    if (this.scenario.heat.control === 'hold-rate') this.holdRate(coming);
    else source.setting = this.heat.at(time);
    coolant.flow = this.flow.at(time);
    if (isTapFed(this.scenario)) coolant.inletTemperature = this.tap.at(time);
  }

  private holdRate(coming: number): void {
    const { source, condenser, pot } = this.still;
    const rate = (condenser.condensate.water + condenser.condensate.oilTotal()) / this.stepLength;
    const warming = (pot.temperature - this.lastPotTemperature) / this.stepLength;
    this.lastPotTemperature = pot.temperature;
    source.control(rate, pot.boilingTemperature - pot.temperature, warming, this.stepLength, coming);
  }

  /** Runs on to a time (or the end); a step that would go beyond it is left for the next call. */
  advance(until: number): void {
    while (!this.ended && this.time() + this.nextLength() <= until + 1e-9) this.takeStep();
  }

  /** Length of the coming step, s. */
  private nextLength(): number {
    return (this.length.atOnce * this.dt) / this.length.parts;
  }

  /** One step of the model: one of the scenario's, several at once, or a part of one. */
  takeStep(): void {
    const { still, peaks, events, length } = this;
    const start = this.time();
    const coming = this.nextLength();
    this.setControls(start + 0.5 * coming, coming);
    this.stepLength = coming;
    still.step(start, this.stepLength);
    this.part = (this.part + 1) % length.parts;
    if (this.part === 0) this.step += length.atOnce;
    const now = this.time();
    peaks.watch(still, this.stepLength);
    events.watch(now, this.stepLength, peaks.condensate);
    length.watch(this.stepLength);
    if (!this.isFinite(now) || this.part > 0) return;
    this.checkEnd(now);
    if (this.ended || this.step % this.rowEvery === 0) this.recorder.take(now, this.stepLength, this.startEnergy);
    this.chooseLength();
  }

  private chooseLength(): void {
    const toRow = Math.min(this.rowEvery - (this.step % this.rowEvery), this.steps - this.step);
    this.length.choose(this.step, toRow, this.nextChange(), this.timeLeft());
  }

  /** Time of the next change of a control or of ice, s. */
  private nextChange(): number {
    const { heat, flow, tap, still, scenario } = this;
    return Math.min(
      scenario.heat.control === 'hold-rate' ? Infinity : heat.nextChange(),
      flow.nextChange(),
      isTapFed(scenario) ? tap.nextChange() : Infinity,
      still.coolant.nextIce(),
    );
  }

  /** Time until the pot is dry or a rule on an amount ends the run if all goes on as in the last step, s. */
  private timeLeft(): number {
    const { still, stepLength } = this;
    const { stopAtShare, stopAtDistillate_kg } = this.scenario.run;
    const { pot, separator } = still;
    let left = (pot.water - this.dryWater()) / pot.out.water;
    if (stopAtShare !== null)
      left = Math.min(left, (stopAtShare * this.oilAtStart - sum(separator.collected)) / sum(separator.caught));
    if (stopAtDistillate_kg !== null)
      left = Math.min(left, (stopAtDistillate_kg - still.keptWater - still.returnedWater) / separator.out.water);
    return Number.isNaN(left) ? Infinity : Math.max(0, left) * stepLength;
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
    const before = this.oilTenMinutesAgo(collected);
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

  /** Keeps the oil collected now; returns what was collected ten minutes ago, kg, zero in the first ten. */
  private oilTenMinutesAgo(collected: number): number {
    const { oilBefore, step } = this;
    const before = oilBefore[step % oilBefore.length] as number;
    for (let back = 0; back < Math.min(step, this.length.atOnce); back++)
      oilBefore[(step - back) % oilBefore.length] = collected;
    return before;
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
      condenser.condensateTemperature +
      coolant.outletTemperature +
      coolant.meanTemperature() +
      separator.enthalpy;
    if (Number.isFinite(sound)) return true;
    const states: readonly (readonly [StateVariable, number])[] = [
      ['heat-source', source.stored],
      ['charge-oil', release.total(release.ready) + release.total(release.held)],
      ['coolant-temperature', coolant.enthalpy() + coolant.outletTemperature + coolant.meanTemperature()],
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

  /** Water in the film by which a pot counts as dry, kg. */
  private dryWater(): number {
    const { pot } = this.still;
    return LIMITS.dryDepth_m * pot.section * tableLiquidDensity(pot.boilingTemperature);
  }

  /** Water in the pot at the end, kg; a pot that ran dry holds the film by which it counts as dry. */
  private potWaterLeft(): number {
    const { pot } = this.still;
    return this.endReason === 'pot-dry' ? this.dryWater() : pot.water;
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
