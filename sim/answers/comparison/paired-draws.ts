/**
 * Compared runs under doubt, in pairs: every draw sets what is uncertain once, and every still runs with it. What the
 * stills have in common, cooling, weather and the plant where it is the same, then cannot decide between them. The design
 * is worked out once from a seed; any worker may compute any run alone, in any order.
 */
import type { EventKind } from '../../run/result.ts';
import { simulate } from '../../run/simulate.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { coarseScenario } from '../ensemble/ensemble.ts';
import { uncertainties, valueAtShare, withDrawn, type OwnBands, type UncertainId } from '../ensemble/factors.ts';
import { latinHypercube, Xoshiro128 } from '../ensemble/random.ts';

/** Draws where the reader names none, and the most that is possible. */
export const USUAL_DRAWS = 20;
export const MOST_DRAWS = 1000;

/** Values of what is uncertain, of one still in one draw. */
export type Drawn = Readonly<Partial<Record<UncertainId, number>>>;

/** Plain data: may be sent to workers as it is. */
export interface PairedDesign {
  readonly scenarios: readonly Scenario[];
  readonly seed: number;
  /** By draw, then by still. */
  readonly drawn: readonly (readonly Drawn[])[];
}

/** What a still gave in a draw. */
export interface PairedRun {
  readonly draw: number;
  readonly still: number;
  readonly oil_mL: number;
  /** To nine tenths of its oil; `null` where it gives none. */
  readonly t90_s: number | null;
  /** Price of energy and tap water. */
  readonly cost: number;
  /** Kinds of alarm that it raised. */
  readonly alarms: readonly EventKind[];
  /** Whether the calculation broke off. */
  readonly failed: boolean;
}

/** Doubts about the plant itself, which another plant does not share. */
const OF_THE_PLANT: ReadonlySet<UncertainId> = new Set(['oilContent', 'readyShare', 'heldRate', 'takeUp']);

/** Two stills share a doubt that bears one name here. */
const sharedName = (id: UncertainId, { charge }: Scenario): string =>
  OF_THE_PLANT.has(id) ? `${id} of ${charge.botanical}` : id;

/**
 * @param seed whole number; the same seed gives the same design on every machine
 * @param own by still, widths that replace the stated ones
 */
export function pairedDesign(
  scenarios: readonly Scenario[],
  draws: number,
  seed: number,
  own: readonly OwnBands[] = [],
): PairedDesign {
  if (!Number.isInteger(draws) || draws < 1 || draws > MOST_DRAWS)
    throw new RangeError(`paired draws: ${draws} draws; 1 to ${MOST_DRAWS} are possible`);
  const doubts = scenarios.map((scenario, still) =>
    uncertainties(scenario, own[still]).map((doubt) => ({ doubt, name: sharedName(doubt.id, scenario) })),
  );
  const columns = new Map([...new Set(doubts.flat().map(({ name }) => name))].map((name, column) => [name, column]));
  const points = latinHypercube(draws, columns.size, Xoshiro128.fromSeed(seed));
  const drawn = points.map((point) =>
    doubts.map((all) =>
      Object.fromEntries(
        all.map(({ doubt, name }) => [doubt.id, valueAtShare(doubt, point[columns.get(name) as number] as number)]),
      ),
    ),
  );
  return { scenarios, seed, drawn };
}

/** Runs of a design, each with a place of its own: all stills of a draw stand together. */
export const pairedCount = ({ scenarios, drawn }: Pick<PairedDesign, 'scenarios' | 'drawn'>): number =>
  scenarios.length * drawn.length;

/** Computes one run of the design; a pure function of both arguments. */
export function runPaired({ scenarios, drawn }: PairedDesign, index: number): PairedRun {
  const draw = Math.floor(index / scenarios.length);
  const still = index % scenarios.length;
  const [scenario, values] = [scenarios[still], drawn[draw]?.[still]];
  if (!scenario || !values) throw new RangeError(`paired draws: there is no run ${index}`);
  const { summary, events, failure } = simulate(coarseScenario(withDrawn(scenario, values)));
  return {
    draw,
    still,
    oil_mL: summary.oilCollected_mL,
    t90_s: summary.t90_s,
    cost: summary.energyCost + summary.waterCost,
    alarms: [...new Set(events.filter(({ severity }) => severity === 'alarm').map(({ kind }) => kind))],
    failed: failure !== null,
  };
}
