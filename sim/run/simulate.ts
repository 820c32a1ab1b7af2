/**
 * A whole run: a pure function of the scenario. Time advances in whole steps counted as integers; controls are read
 * from their schedules; the record is taken at its own interval. `Run.advance` may be called in slices of any size
 * without changing a bit of the result.
 */
import { tableLiquidDensity } from '../fluids/water-table.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { Still } from '../still/still.ts';
import { BalanceSheet } from './balance.ts';
import { EventWatch } from './events.ts';
import { Recorder, sum } from './recorder.ts';
import type { EndReason, NonFinite, RunResult } from './result.ts';
import { ScheduleReader } from './schedule-value.ts';
import { Peaks, summarise } from './summary.ts';
import { litres, minutes } from './words.ts';

/** Time over which the stop rule looks at the oil rate, s. */
const OIL_RATE_WINDOW = 600;
/** Pot counts as dry below this depth, m. */
const DRY_DEPTH = 0.000_8;
/** Gauge pressure at which the run stops, Pa: pressure-vessel law begins here, and no open still's lid holds it. */
const BURST_GAUGE = 50_000;
/** Parts into which steps are cut from just before the boil, and time after the first drop until which they are, s. */
const PUFF_PARTS = 4;
const PUFF_TIME = 60;

export class Run {
  readonly still: Still;
  ended = false;
  private step = 0;
  private endReason: EndReason = 'duration';
  private failure: NonFinite | null = null;
  private readonly dt: number;
  /** Length of the step taken last, s: `dt`, or a part of it while the first vapour comes. */
  stepLength: number;
  /** Parts in which the present step is taken, and how many of them are taken. */
  private parts = 1;
  private part = 0;
  /** Time for which distillate has come, s. */
  private dripped = 0;
  private readonly steps: number;
  private readonly rowEvery: number;
  private readonly recorder: Recorder;
  private readonly events: EventWatch;
  private readonly balance: BalanceSheet;
  private readonly peaks = new Peaks();
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
    this.oilBefore = new Float64Array(Math.max(1, Math.round(OIL_RATE_WINDOW / this.dt)));
    this.lastPotTemperature = this.still.pot.temperature;
    this.setControls(0);
    this.recorder.take(0, this.stepLength, this.startEnergy);
  }

  /** Time reached, s. */
  time(): number {
    return (this.step + this.part / this.parts) * this.dt;
  }

  private setControls(time: number): void {
    const { source, coolant } = this.still;
    if (this.scenario.heat.control === 'hold-rate') this.holdRate();
    else source.setting = this.heat.at(time);
    coolant.flow = this.flow.at(time);
    if (this.scenario.condenser.kind === 'coil-in-tub' || this.scenario.cooling.jacketSupply === 'tap')
      coolant.inletTemperature = this.tap.at(time);
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
    while (!this.ended && this.time() + this.dt / this.parts <= until + 1e-9) this.takeStep();
  }

  /** One step of the model: a whole one, or a part of it while the first vapour comes. */
  takeStep(): void {
    const { still, peaks, events } = this;
    const start = this.time();
    const length = this.dt / this.parts;
    this.setControls(start + 0.5 * length);
    this.stepLength = length;
    still.step(start, this.stepLength);
    this.part++;
    if (this.part === this.parts) this.finishWholeStep();
    const now = this.time();
    peaks.watch(still, this.stepLength);
    events.watch(now, this.stepLength, peaks.condensate);
    if (!this.isFinite(now) || this.part > 0) return;
    this.checkEnd(now);
    if (this.ended || this.step % this.rowEvery === 0) this.recorder.take(now, this.stepLength, this.startEnergy);
  }

  /** The first vapour carries the richest oil and meets a cold condenser: steps are parted until its puff is over. */
  private finishWholeStep(): void {
    const { still } = this;
    this.part = 0;
    this.step++;
    if (still.condenser.condensate.water > 0) this.dripped += this.dt;
    this.parts = still.nearBoil() && this.dripped < PUFF_TIME ? PUFF_PARTS : 1;
  }

  private checkEnd(now: number): void {
    const { still, scenario } = this;
    if (still.gauge() > BURST_GAUGE) {
      this.events.add(
        'over-pressure',
        now,
        'alarm',
        'pot',
        still.gauge(),
        'Pa',
        `The pot stands at more than ${BURST_GAUGE / 1000} kPa above the air at ${minutes(now)}: no lid here is made for that, and the run stops.`,
        'Never run such a narrow way out. Use a wider tube and neck.',
      );
      this.finishBecause('over-pressure');
      return;
    }
    const collected = sum(still.separator.collected);
    const slot = this.step % this.oilBefore.length;
    const before = this.oilBefore[slot] as number;
    this.oilBefore[slot] = collected;
    const { run } = scenario;
    if (still.pot.depth() - still.pot.geometry.submergedVolume / still.pot.section < DRY_DEPTH && now > 0) {
      this.events.add(
        'pot-dry',
        now,
        'alarm',
        'pot',
        still.pot.water,
        'kg',
        `The pot is dry at ${minutes(now)}; the run stops.`,
        'Turn the heat off and let it cool before opening. Fill more water next time.',
      );
      this.finishBecause('pot-dry');
    } else if (run.stopAtShare !== null && this.oilAtStart > 0 && collected >= run.stopAtShare * this.oilAtStart) {
      this.stopRule(
        now,
        'stop-share',
        collected / this.oilAtStart,
        '1',
        `${(100 * run.stopAtShare).toFixed(0)} % of the oil is over at ${minutes(now)}.`,
      );
    } else if (run.stopAtDistillate_kg !== null && still.keptWater + still.returnedWater >= run.stopAtDistillate_kg) {
      this.stopRule(
        now,
        'stop-distillate',
        still.keptWater,
        'kg',
        `${litres(run.stopAtDistillate_kg)} of distillate are over at ${minutes(now)}.`,
      );
    } else if (
      run.stopAtOilRate_kg_s !== null &&
      this.oilPassed(collected, before) &&
      (collected - before) / OIL_RATE_WINDOW < run.stopAtOilRate_kg_s
    ) {
      this.events.add(
        'oil-rate-low',
        now,
        'note',
        'run',
        (collected - before) / OIL_RATE_WINDOW,
        'kg/s',
        `The oil of the last ten minutes came slower than your limit at ${minutes(now)}.`,
        'More running costs more than it brings.',
      );
      this.stopRule(now, 'stop-oil-rate', collected, 'kg', `The run stops by your oil-rate rule at ${minutes(now)}.`);
    } else if (this.step >= this.steps) {
      this.events.add(
        'run-ends',
        now,
        'note',
        'run',
        now,
        's',
        `The run ends at ${minutes(now)}.`,
        'Heat off first, then the water; leave the outlet open while it cools.',
      );
      this.finishBecause('duration');
    }
  }

  /** The oil-rate rule waits until oil has come for a full window. */
  private oilPassed(collected: number, before: number): boolean {
    return this.step >= this.oilBefore.length && before > 0 && collected > 0;
  }

  private stopRule(now: number, reason: EndReason, value: number, unit: string, sentence: string): void {
    this.events.add(
      'stop-rule',
      now,
      'note',
      'run',
      value,
      unit,
      sentence,
      'Heat off first, then the water; leave the outlet open while it cools.',
    );
    this.finishBecause(reason);
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
    const states: readonly (readonly [string, number])[] = [
      ['heat source', source.stored],
      ['oil in the charge', release.total(release.ready) + release.total(release.held)],
      ['cooling-water temperature', coolant.enthalpy() + coolant.outletTemperature],
      ['separator temperature', separator.enthalpy + separator.temperature],
      ['distillate temperature', condenser.condensateTemperature],
      ['lid temperature', head.temperature],
      ['neck temperature', neck.temperature],
      ['bed temperature', bed ? sum(bed.temperature) + sum(bed.enthalpy) : 0],
      ['pot water', pot.water],
      ['pot temperature', pot.temperature + pot.enthalpy],
    ];
    const variable = states.find(([, value]) => !Number.isFinite(value))?.[0] ?? 'vapour in the still';
    this.failure = { variable, time_s: now };
    this.finishBecause('non-finite');
    return false;
  }

  /** Water in the pot at the end, kg; a pot that ran dry holds the film by which it counts as dry. */
  private potWaterLeft(): number {
    const { pot } = this.still;
    return this.endReason === 'pot-dry'
      ? DRY_DEPTH * pot.section * tableLiquidDensity(pot.boilingTemperature)
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
