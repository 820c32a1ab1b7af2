/** How far the headline numbers of a run move when the model is refined. */
import { simulate, type Scenario } from '../../sim/index.ts';
import {
  ensembleTimes,
  headlineOf,
  HEADLINE_NAMES,
  type Headline,
  type HeadlineName,
} from '../../sim/answers/ensemble/ensemble.ts';

type Advanced = Scenario['advanced'];

/** Ways to refine it, each on its own. */
export const REFINEMENTS = {
  step: ({ step_s }: Advanced) => ({ step_s: step_s / 2 }),
  segments: ({ segments }: Advanced) => ({ segments: 2 * segments }),
  tub: ({ tubLayers }: Advanced) => ({ tubLayers: 2 * tubLayers }),
  bed: ({ bedLayers }: Advanced) => ({ bedLayers: 2 * bedLayers }),
} as const satisfies Record<string, (advanced: Advanced) => Partial<Advanced>>;
export type Refinement = keyof typeof REFINEMENTS;
export const REFINEMENT_NAMES = Object.keys(REFINEMENTS) as readonly Refinement[];

export const headline = (scenario: Scenario): Headline => headlineOf(simulate(scenario), ensembleTimes(scenario));

/** Temperatures are compared in kelvin: a percent of one's own scale is none. */
const NEAR_K = 1;
/** The place where the vapour ends is found within a segment: so much of one may change. */
const OF_SEGMENT = 0.15;
/** Oil below this, kg, is a trace. */
const TRACE = 1e-6;

export interface Moved {
  readonly refinement: Refinement;
  readonly name: HeadlineName;
  /** Over the larger of the two, or in kelvin. */
  readonly by: number;
  readonly says: string;
}

/**
 * Every headline number that a refinement moves by more than a share, or a temperature by more than a kelvin.
 * @param before the numbers as they are
 */
export function movedBy(before: Headline, scenario: Scenario, refinement: Refinement, limit: number): Moved[] {
  const refined = { ...scenario.advanced, ...REFINEMENTS[refinement](scenario.advanced) };
  const after = headline({ ...scenario, advanced: refined });
  const segment = scenario.condenser.length_m / scenario.advanced.segments;
  return HEADLINE_NAMES.flatMap((name): Moved[] => {
    const [a, b] = [before[name], after[name]];
    if (a === b) return [];
    const says = `${refinement}: ${name} ${a} becomes ${b}`;
    if (a === null || b === null) return [{ refinement, name, by: Infinity, says }];
    const [larger, apart] = [Math.max(Math.abs(a), Math.abs(b)), Math.abs(a - b)];
    const isTemperature = name.endsWith('_K');
    const allowed = isTemperature
      ? NEAR_K
      : Math.max(
          limit * larger,
          name === 'condensingLength_m' ? OF_SEGMENT * segment : name.endsWith('_kg') ? TRACE : 0,
        );
    return apart <= allowed ? [] : [{ refinement, name, by: isTemperature ? apart : apart / larger, says }];
  });
}
