/** Stills stripped of everything a hand calculation leaves out: no heat loss, no lag, no plant, wide tubes. */
import { readScenario, Run, type Scenario, type ScenarioInput } from '../../../sim/index.ts';

export type Parts = { readonly [P in keyof ScenarioInput]?: ScenarioInput[P] };

/** Air pressure at which pure water boils at 100 °C exactly (IAPWS-IF97). */
export const BOILS_AT_100_C = 101_418;

/** A complete scenario; what the test leaves open is the default. Anything not allowed is an error in the test. */
export function scenarioOf(parts: Parts): Scenario {
  const read = readScenario(parts);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.scenario;
}

/** The same with no losses, no lag, all heat into the pot and nothing in it but water. */
export function idealStill(parts: Parts): Scenario {
  return scenarioOf({
    ...parts,
    site: { barometer_Pa: 101_325, airTemperature_K: 293.15, ...parts.site },
    heat: { shareToPot: 1, lag_s: 0, ...parts.heat },
    pot: { layout: 'water', waterTemperature_K: 372, water_kg: 6, ...parts.pot },
    charge: { mass_kg: 0, ...parts.charge },
    neck: { bore_m: 0.05, ...parts.neck },
    condenser: { fouling_m2K_W: 0, oilFilmFactor: 1, ...parts.condenser },
    factors: { heatLoss: 0, ...parts.factors },
  });
}

/** A run up to a time. */
export function runTo(scenario: Scenario, time_s: number): Run {
  const run = new Run(scenario);
  run.advance(time_s);
  if (run.ended) throw new Error(`the run ended at ${run.time()} s, before ${time_s} s`);
  return run;
}
