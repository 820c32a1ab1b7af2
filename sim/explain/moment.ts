/**
 * The moments of a run that the working shows. The run is gone through once to find them and once more to look at them:
 * the still after the step, with the terms of that step.
 */
import { Run } from '../run/simulate.ts';
import type { Peaks } from '../run/summary.ts';
import type { Scenario } from '../scenario/scenario.ts';
import type { Coolant } from '../still/coolant.ts';
import type { Still } from '../still/still.ts';

/** What the cooling water holds without its ice, kg and J, and what it has exchanged since the start, J; ice melted, kg. */
export const coolantAccount = (coolant: Coolant) => ({
  water: coolant.liquidMass(),
  enthalpy: coolant.liquidEnthalpy(),
  mixedTemperature: coolant.mixedTemperature(),
  enthalpyIn: coolant.enthalpyIn,
  overflowEnthalpy: coolant.overflowEnthalpy,
  evaporatedEnthalpy: coolant.evaporatedEnthalpy,
  lossEnergy: coolant.lossEnergy,
  melted: coolant.iceAdded - coolant.iceLeft,
});

export type CoolantAccount = ReturnType<typeof coolantAccount>;

export interface Moment {
  readonly time_s: number;
  readonly dt: number;
  readonly scenario: Scenario;
  readonly still: Still;
  /** Smoothed numbers, where the moment is that of a peak; `null` for a moment that was asked for. */
  readonly peaks: Peaks | null;
  readonly coolantBefore: CoolantAccount;
  readonly atStart: { readonly coolant: CoolantAccount; readonly potTemperature: number; readonly potEnthalpy: number };
}

/** The time at which a number was highest, s; `null` where the run never got so far. */
class Highest {
  at_s: number | null = null;
  private value = 0;

  see(value: number, time_s: number): void {
    if (!(value > this.value)) return;
    this.value = value;
    this.at_s = time_s;
  }
}

/** Finds the moments that the headline numbers speak of, and the end of the step before the first steam, if there is one. */
export function surveyRun(scenario: Scenario) {
  const run = new Run(scenario);
  const { still, peaks } = run;
  const [steam, length, gauge, outlet] = [new Highest(), new Highest(), new Highest(), new Highest()];
  const [warmestCoolant, coarsestCut] = [new Highest(), new Highest()];
  let beforeBoil: number | null = null;
  while (!run.ended) {
    const before = run.time();
    run.takeStep();
    const time = run.time();
    if (still.pot.out.water > 0) beforeBoil ??= before;
    steam.see(peaks.steam.peak, time);
    length.see(peaks.condensingLength, time);
    gauge.see(peaks.gauge.peak, time);
    outlet.see(peaks.condensate, time);
    warmestCoolant.see(still.coolant.outletTemperature, time);
    if (Number.isFinite(still.separator.densityDifference)) coarsestCut.see(still.separator.cutSize, time);
  }
  return {
    beforeBoil: beforeBoil === 0 ? null : beforeBoil,
    steam,
    length,
    gauge,
    outlet,
    warmestCoolant,
    coarsestCut,
  };
}

/** Visits moments of a run, each at the first step that reaches its time, or at the end; `null` is left out. */
export function visitMoments(
  scenario: Scenario,
  ofPeaks: boolean,
  visits: readonly { readonly at_s: number | null; readonly visit: (moment: Moment) => void }[],
): void {
  const run = new Run(scenario);
  const { still } = run;
  const peaks = ofPeaks ? run.peaks : null;
  const { temperature: potTemperature, enthalpy: potEnthalpy } = still.pot;
  const atStart = { coolant: coolantAccount(still.coolant), potTemperature, potEnthalpy };
  let waiting = visits.filter(({ at_s }) => at_s !== null);
  while (waiting.length > 0 && !run.ended) {
    const coolantBefore = coolantAccount(still.coolant);
    run.takeStep();
    const time_s = run.time();
    const moment = { time_s, dt: run.stepLength, scenario, still, peaks, coolantBefore, atStart };
    const due = waiting.filter(({ at_s }) => run.ended || time_s >= (at_s as number) - 1e-9);
    if (due.length === 0) continue;
    for (const { visit } of due) visit(moment);
    waiting = waiting.filter((each) => !due.includes(each));
  }
}
