/**
 * Two stills that a class drives at once, alike but for one thing. The hose: water that comes in at the top leaves the
 * cold water at the foot of the tub unrenewed, while the end of the coil lies there (layers of `sim/still`).
 */
import type { Scenario } from '../../scenario/scenario.ts';
import { AMPLE_COIL, gardenStill } from './class-still.ts';
import type { LessonId } from './facts.ts';
import { completeScenario, type CurveColumn, type LessonHazard } from './lesson.ts';

export const PAIR_IDS = ['gentle-hard', 'hose'] as const;
export type PairId = (typeof PAIR_IDS)[number];

export interface Pair {
  readonly hazards: readonly LessonHazard[];
  /** What the two differ in most. */
  readonly column: CurveColumn;
  stills(): readonly [Scenario, Scenario];
}

const GENTLE = 0.5;
const UNTIL_S = 7200;

const boiling = (name: string, setting: number): Scenario =>
  completeScenario(
    gardenStill(name, {
      ...AMPLE_COIL,
      // Wide enough for the hard boil, so that the plant alone decides.
      separator: { bore_m: 0.2 },
      heat: {
        setting: [
          { at_s: 0, value: 1 },
          { at_s: 0, after: 'first-drop', value: setting },
        ],
      },
      run: { duration_s: UNTIL_S },
    }),
  );

const cooled = (name: string, inlet: 'laid' | 'top'): Scenario =>
  completeScenario(
    gardenStill(name, {
      heat: {
        setting: [
          { at_s: 0, value: 0.9 },
          { at_s: 0, after: 'first-drop', value: 0.8 },
        ],
      },
      condenser: { length_m: 2, coilDiameter_m: 0.24 },
      cooling: { tubDiameter_m: 0.3, tubHeight_m: 0.26, inlet, flow_kg_s: [{ at_s: 0, value: 0.012 }] },
      run: { duration_s: UNTIL_S },
    }),
  );

const PAIRS: Readonly<Record<PairId, Pair>> = {
  'gentle-hard': {
    hazards: ['steam', 'neat-oil'],
    column: 'oilCollected_kg',
    stills: () => [boiling('Gentle', GENTLE), boiling('Hard', 1)],
  },
  hose: {
    hazards: ['steam', 'hot-water'],
    column: 'condensateTemperature_K',
    stills: () => [cooled('Hose below', 'laid'), cooled('Hose above', 'top')],
  },
};

export const findPair = (id: PairId): Pair => PAIRS[id];

/** The pair that goes on with the question of a lesson. */
export const PAIR_OF_LESSON: Readonly<Partial<Record<LessonId, PairId>>> = {
  'gentle-or-hard': 'gentle-hard',
  'tap-off': 'hose',
};
