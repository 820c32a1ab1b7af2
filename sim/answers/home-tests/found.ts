/** What the tests found, on the still: the values it takes over, and the ranges that the next plans draw from. */
import type { Scenario } from '../../scenario/scenario.ts';
import type { OwnBands, UncertainId } from '../ensemble/factors.ts';
import { coilTest, coilTestHindrance, type CoilTest } from './coil-test.ts';
import { heatUpTest, type HeatUpTest } from './heat-up-test.ts';
import type { HomeTest, TestedPath, TestedValue, TestFound, TestProblem, TestResult } from './home-test.ts';
import { tubTest, tubTestHindrance, type TubTest } from './tub-test.ts';

export type HomeTestGiven =
  | { readonly test: 'tub'; readonly given: TubTest }
  | { readonly test: 'coil'; readonly given: CoilTest }
  | { readonly test: 'heat-up'; readonly given: HeatUpTest };

export function homeTest(scenario: Scenario, asked: HomeTestGiven): TestResult {
  switch (asked.test) {
    case 'tub':
      return tubTest(scenario, asked.given);
    case 'coil':
      return coilTest(scenario, asked.given);
    case 'heat-up':
      return heatUpTest(scenario, asked.given);
  }
}

/** Why a still has nothing for a test to find; `null` where it has. */
export const hindranceOf = (test: HomeTest, scenario: Scenario): TestProblem | null =>
  test === 'tub' ? tubTestHindrance(scenario) : test === 'coil' ? coilTestHindrance(scenario) : null;

/** The share of heat that reaches the pot is a setting: no plan draws it. */
const DRAWN: Readonly<Record<TestedPath, UncertainId | null>> = {
  'factors.jetMixing': 'jetMixing',
  'factors.curvature': 'curvature',
  'factors.rivulet': 'rivulet',
  'factors.heatLoss': 'heatLoss',
  'heat.shareToPot': null,
};

/** A value that the readings do not bound on either side is none. */
export const isKnown = ({ open }: TestedValue): boolean => open !== 'both';

/** Settings of the still by their paths. */
export const settingsOf = ({ values }: TestFound): Readonly<Partial<Record<TestedPath, number>>> =>
  Object.fromEntries(values.filter(isKnown).map(({ path, value }) => [path, value]));

/** The intervals as ratios about the values, for an ensemble about the tested still. */
export const bandsOfTest = ({ values }: TestFound): OwnBands =>
  Object.fromEntries(
    values.filter(isKnown).flatMap(({ path, value, low, high }) => {
      const id = DRAWN[path];
      return id === null ? [] : [[id, { low: low / value, high: high / value, origin: 'fit' as const }]];
    }),
  );
