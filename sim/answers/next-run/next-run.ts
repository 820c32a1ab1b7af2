/** What a run that is over says for the next with the same still: facts of its readings, and changes the model tried. */
import { columnAt } from '../../run/record.ts';
import { simulate } from '../../run/simulate.ts';
import { isTapFed } from '../../geometry/condenser-kind.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import type { LoggedPoint } from '../calibration/readings.ts';
import { coarseScenario } from '../ensemble/ensemble.ts';
import { runLength, runOn } from '../run-length/run-length.ts';

export type NextRunFact =
  /** The log went on after 90 % of the oil was in. */
  | {
      readonly kind: 'ran-long';
      readonly logged_s: number;
      readonly enough_s: number;
      readonly saved_J: number;
      readonly forgone_mL: number;
    }
  /** It ended before. */
  | { readonly kind: 'stopped-early'; readonly logged_s: number; readonly enough_s: number; readonly gained_mL: number }
  /** An outlet read above its limit; with how much more water the model keeps it below, `null` where none of those tried does. */
  | {
      readonly kind: 'outlet-warm';
      readonly read_K: number;
      readonly limit_K: number;
      readonly more: { readonly times: number; readonly outlet_K: number } | null;
    };

export interface NextRun {
  readonly facts: readonly NextRunFact[];
}

/** Closer to the time of 90 % than this a run ended well. */
const NEAR_S = 600;
const MORE_WATER = [1.25, 1.5, 2, 3];
const EVERY_S = 60;

function warmestOutlet(scenario: Scenario): number {
  const { record, summary } = simulate(coarseScenario(scenario));
  let most = -Infinity;
  for (let time = (summary.firstDrop_s ?? Infinity) + 2 * EVERY_S; time <= summary.end_s; time += EVERY_S)
    most = Math.max(most, columnAt(record, 'condensateTemperature_K', time));
  return most;
}

function moreWater(scenario: Scenario, limit_K: number): { readonly times: number; readonly outlet_K: number } | null {
  if (!isTapFed(scenario)) return null;
  for (const times of MORE_WATER) {
    const { cooling } = scenario;
    const flow_kg_s = cooling.flow_kg_s.map((knot) => ({ ...knot, value: times * knot.value }));
    const outlet_K = warmestOutlet({ ...scenario, cooling: { ...cooling, flow_kg_s } });
    if (outlet_K <= limit_K) return { times, outlet_K };
  }
  return null;
}

/** @param scenario the still of the run, with the factors of its fit; @param points its log */
export function nextRun(scenario: Scenario, points: readonly LoggedPoint[]): NextRun {
  const facts: NextRunFact[] = [];
  const oily = points.filter(({ oil_mL, oil_kg }) => oil_mL !== undefined || oil_kg !== undefined);
  const logged_s = oily.at(-1)?.time_s ?? null;
  const result = runOn(coarseScenario(scenario));
  const enough = runLength(result).shares.find(({ share }) => share === 0.9)?.at ?? null;
  if (logged_s !== null && enough !== null) {
    const { record, summary } = result;
    const mL = summary.oilDensity_kg_m3 === null ? 0 : 1e6 / summary.oilDensity_kg_m3;
    const at = Math.min(logged_s, summary.end_s);
    const oil_mL = mL * columnAt(record, 'oilCollected_kg', at);
    if (logged_s > enough.time_s + NEAR_S)
      facts.push({
        kind: 'ran-long',
        logged_s,
        enough_s: enough.time_s,
        saved_J: columnAt(record, 'fuelEnergy_J', at) - enough.energy_J,
        forgone_mL: oil_mL - enough.oil_mL,
      });
    else if (logged_s < enough.time_s - NEAR_S)
      facts.push({ kind: 'stopped-early', logged_s, enough_s: enough.time_s, gained_mL: enough.oil_mL - oil_mL });
  }
  const limit_K = scenario.condenser.outletLimit_K;
  const read_K = Math.max(...points.map(({ outlet_K }) => outlet_K ?? -Infinity));
  if (read_K > limit_K) facts.push({ kind: 'outlet-warm', read_K, limit_K, more: moreWater(scenario, limit_K) });
  return { facts };
}
