/** How many checks held and how many did not, in one stage or in all. */
export interface Tally {
  readonly passed: number;
  readonly failed: number;
}

/** The counts of vitest's JSON report that matter here. */
export interface TestReport {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
}

/** A tool without a count of its own, such as the type checker, is one check. */
export const tallyOfTool = (exitCode: number): Tally =>
  exitCode === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };

/**
 * A test run counts its tests. A run that fails without a failed test (a file that did not load, nothing found,
 * no report) counts as one failure, and so does one that reports no test at all: silence is not success.
 */
export function tallyOfTests(exitCode: number, report: TestReport | undefined): Tally {
  const passed = report?.numPassedTests ?? 0;
  const failed = report?.numFailedTests ?? 0;
  const failedSilently = failed === 0 && (exitCode !== 0 || passed === 0);
  return { passed, failed: failedSilently ? 1 : failed };
}

export const sumOf = (tallies: readonly Tally[]): Tally => ({
  passed: tallies.reduce((sum, { passed }) => sum + passed, 0),
  failed: tallies.reduce((sum, { failed }) => sum + failed, 0),
});

/** The one line by which people and machines read the outcome. */
export const lineOf = ({ passed, failed }: Tally): string => `${passed} passed, ${failed} failed`;

export const exitCodeOf = ({ passed, failed }: Tally): number => (failed > 0 || passed === 0 ? 1 : 0);
