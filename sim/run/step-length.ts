/**
 * How long a step of the model may be: a part of the scenario's own step while the first vapour meets a cold condenser,
 * several of them at once where nothing that a reader sees changes much.
 *
 * Lengths are counted in the scenario's step, so that a finer one is finer everywhere. A long step begins at a multiple
 * of its own length and ends no later than the next row of the record, the next change of a control and the end.
 */
import type { Still } from '../still/still.ts';

/** Parts of a step while the first vapour comes, and how long after the first distillate it is over, s. */
const PARTS_AT_FIRST_VAPOUR = 4;
const FIRST_VAPOUR_S = 60;
/** Steps that may be taken at once, and the longest time that they may span, s. */
const AT_ONCE = [5, 2] as const;
const LONGEST_S = 5;
/** The same under a controller, which answers but once in each. */
const LONGEST_CONTROLLED_S = 2;
/** Quiet that must have lasted before steps are lengthened, s. */
const QUIET_S = 10;
/** Distance from the boil within which nothing is quiet until distillate has come for a while, K, and that while, s. */
const NEAR_BOIL_K = 4;
const SETTLED_S = 180;
/** Share of the time left until a pot is dry or a rule ends the run that a long step takes at most. */
const SHARE_OF_REST = 0.25;

/**
 * How much may change in a second for single steps; m at once ask for an m-th of it. Shares of the value itself, for oil
 * of its highest rate so far; kelvin; pascal. Chosen so that results stay within half a percent of runs at a tenth of
 * the step, which tests hold.
 */
const STEAM_CHANGE = 0.01;
const OIL_CHANGE = 0.01;
const POWER_CHANGE = 0.02;
const DISTILLATE_CHANGE_K = 0.5;
const COOLANT_CHANGE_K = 1;
const WARMING_POT_CHANGE_K = 3;
const BOILING_POT_CHANGE_K = 0.1;
const BED_TOP_CHANGE_K = 0.5;
const BED_CHANGE_K = 2;
const DROP_CHANGE = 0.03;
const LEAST_DROP_CHANGE_PA = 20;
/** Rates below these do not count, kg/s and W. */
const LEAST_STEAM_RATE = 1e-6;
const LEAST_OIL_RATE = 1e-9;
const LEAST_POWER = 10;

export class StepLength {
  /** Steps taken at once, and parts in which a single one is taken. */
  atOnce = 1;
  parts = 1;
  /** Steps at once that have proved quiet enough. */
  private allowed = 1;
  /** Time for which longer steps would have done, s. */
  private quiet = 0;
  /** Time for which distillate has come, s. */
  private dripped = 0;
  private highestOilRate = 0;
  private nextChange = -1;
  /** What was watched after the last step. */
  private readonly before = new Float64Array(10);
  private known = false;
  /** Changes in the last step over what a single step allows, 1/s: the largest. */
  private pace = 0;

  private readonly still: Still;
  private readonly dt: number;
  private readonly longest: number;

  constructor(still: Still, dt: number) {
    this.still = still;
    this.dt = dt;
    this.longest = still.scenario.heat.control === 'hold-rate' ? LONGEST_CONTROLLED_S : LONGEST_S;
  }

  /**
   * Chooses the length of the coming step.
   * @param step steps taken so far
   * @param toRow steps until the next row of the record or the end
   * @param nextChange time of the next change of a control, s
   * @param rest about how long the run still lasts, s
   */
  choose(step: number, toRow: number, nextChange: number, rest: number): void {
    if (nextChange !== this.nextChange) {
      this.nextChange = nextChange;
      this.allowed = 1;
      this.quiet = 0;
    }
    this.parts = this.firstVapourComes() ? PARTS_AT_FIRST_VAPOUR : 1;
    this.atOnce = 1;
    if (this.parts > 1) return;
    const room = Math.min(
      this.allowed,
      toRow,
      Math.round(nextChange / this.dt) - step,
      (SHARE_OF_REST * rest) / this.dt,
    );
    for (const many of AT_ONCE)
      if (many <= room && many * this.dt <= this.longest && step % many === 0) {
        this.atOnce = many;
        return;
      }
  }

  /** The first vapour carries the richest oil and meets a cold condenser: it is about to leave the bed, or has just come. */
  private firstVapourComes(): boolean {
    const { still } = this;
    return this.dripped < FIRST_VAPOUR_S && still.nearBoil() && (still.bed?.nearlyThrough() ?? true);
  }

  /** Looks at what a step of a length changed, s. */
  watch(length: number): void {
    const { still } = this;
    const { source, pot, bed, condenser, coolant } = still;
    if (condenser.condensate.water > 0) this.dripped += length;
    const comes = still.arrivingWater > 0;
    const steam = still.arrivingWater / length;
    const oil = still.arrivingOil / length;
    const power = source.toPot / length;
    this.highestOilRate = Math.max(this.highestOilRate, oil);
    this.pace = 0;
    this.compare(0, steam, STEAM_CHANGE * Math.max(LEAST_STEAM_RATE, steam), length);
    this.compare(1, oil, OIL_CHANGE * Math.max(LEAST_OIL_RATE, this.highestOilRate), length);
    this.compare(2, power, POWER_CHANGE * Math.max(LEAST_POWER, power), length);
    this.compare(3, comes ? condenser.condensateTemperature : 0, DISTILLATE_CHANGE_K, length);
    this.compare(4, pot.temperature, comes ? BOILING_POT_CHANGE_K : WARMING_POT_CHANGE_K, length);
    this.compare(5, coolant.outletTemperature, COOLANT_CHANGE_K, length);
    this.compare(6, condenser.drop, Math.max(LEAST_DROP_CHANGE_PA, DROP_CHANGE * condenser.drop), length);
    if (bed) {
      const { temperature, layers } = bed;
      this.compare(7, temperature[layers - 1] as number, BED_TOP_CHANGE_K, length);
      this.compare(8, temperature[layers >> 1] as number, BED_CHANGE_K, length);
      this.compare(9, temperature[0] as number, BED_CHANGE_K, length);
    }
    this.settle(length);
  }

  private compare(slot: number, now: number, allowed: number, length: number): void {
    const change = Math.abs(now - (this.before[slot] as number));
    this.before[slot] = now;
    this.pace = Math.max(this.pace, change / (allowed * length));
  }

  private settle(length: number): void {
    const { pot } = this.still;
    const unsettled = pot.temperature > pot.boilingTemperature - NEAR_BOIL_K && this.dripped < SETTLED_S;
    const wanted = unsettled || !this.known ? 1 : (AT_ONCE.find((many) => many * this.pace <= 1) ?? 1);
    this.known = true;
    if (wanted <= this.allowed) {
      this.allowed = wanted;
      this.quiet = 0;
    } else if ((this.quiet += length) >= QUIET_S) this.allowed = wanted;
  }
}
