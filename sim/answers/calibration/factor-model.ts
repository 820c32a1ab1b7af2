/** The model of one or several logged runs, as a function of the correction factors that are fitted to them. */
import { slopesOf } from '../../maths/least-squares.ts';
import type { NonFinite, RunResult } from '../../run/result.ts';
import { simulate } from '../../run/simulate.ts';
import { LONGEST_RUN_S } from '../../scenario/limits.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { coarseScenario } from '../ensemble/ensemble.ts';
import { predictedReading, type LoggedPoint, type Reading } from './readings.ts';

/** Step in the logarithm by which slopes are taken: well above the run's own graininess. */
export const SLOPE_STEP = 0.03;
const RECORD_EVERY = 15;

/** A log and the still that it was read at. */
export interface LoggedStill {
  readonly scenario: Scenario;
  readonly points: readonly LoggedPoint[];
}

/** A run of the fit whose calculation failed. */
export class BrokenOff extends Error {
  readonly failure: NonFinite;

  constructor(failure: NonFinite) {
    super('broke off');
    this.failure = failure;
  }
}

/** A still of a log, at steps that many runs can afford. */
function stillOf({ scenario }: LoggedStill, readings: readonly Reading[]): Scenario {
  const last = Math.max(...readings.map(({ time_s }) => time_s));
  const coarse = coarseScenario({
    ...scenario,
    run: {
      duration_s: Math.min(LONGEST_RUN_S, Math.max(60, last)),
      stopAtShare: null,
      stopAtOilRate_kg_s: null,
      stopAtDistillate_kg: null,
    },
  });
  // All segments are kept: with fewer the condenser would be fitted to their coarseness.
  return {
    ...coarse,
    advanced: {
      ...coarse.advanced,
      segments: scenario.advanced.segments,
      recordEvery_s: Math.max(RECORD_EVERY, last / 2000),
    },
  };
}

export interface ReadLog {
  readonly still: LoggedStill;
  readonly readings: readonly Reading[];
}

/** The model as a function of the logarithms of the chosen factors, of all logs together, each point computed once. */
export class FactorModel {
  private readonly known = new Map<string, { readonly results: readonly RunResult[]; readonly scaled: Float64Array }>();
  private readonly names: readonly (keyof Scenario['factors'])[];
  private readonly logs: readonly { readonly scenario: Scenario; readonly readings: readonly Reading[] }[];

  constructor(logs: readonly ReadLog[], names: readonly (keyof Scenario['factors'])[]) {
    this.names = names;
    this.logs = logs.map(({ still, readings }) => ({ scenario: stillOf(still, readings), readings }));
  }

  get runs(): number {
    return this.known.size * this.logs.length;
  }

  private at(logs: readonly number[]): { readonly results: readonly RunResult[]; readonly scaled: Float64Array } {
    const key = logs.join(' ');
    const found = this.known.get(key);
    if (found) return found;
    const changed = Object.fromEntries(this.names.map((name, index) => [name, Math.exp(logs[index] ?? 0)]));
    const results = this.logs.map(({ scenario }) =>
      simulate({ ...scenario, factors: { ...scenario.factors, ...changed } }),
    );
    const failed = results.find(({ failure }) => failure !== null);
    if (failed?.failure) throw new BrokenOff(failed.failure);
    const entry = {
      results,
      scaled: Float64Array.from(
        this.logs.flatMap(({ readings }, log) =>
          readings.map((reading) => predictedReading(results[log] as RunResult, reading) / reading.sigma),
        ),
      ),
    };
    this.known.set(key, entry);
    return entry;
  }

  /** Predictions over their uncertainties. */
  scaled(logs: readonly number[]): Float64Array {
    return this.at(logs).scaled;
  }

  results(logs: readonly number[]): readonly RunResult[] {
    return this.at(logs).results;
  }

  /** Slopes of the scaled predictions, by central differences: one row a factor. */
  slopes(logs: readonly number[]): number[][] {
    return slopesOf((at) => this.scaled(at), logs, SLOPE_STEP);
  }
}
