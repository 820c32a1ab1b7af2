/** Runs of which every number can be trusted: one that broke off gives no answer. */
import { failureMessages, type NonFinite, type Reader, type RunResult, type Scenario } from '../index.ts';
import { BrokenRun } from './bad-input.ts';
import { runTold } from './progress.ts';

export const brokeOff = ({ name }: Scenario, failure: NonFinite, reader: Reader): BrokenRun =>
  new BrokenRun(`${name}: ${failureMessages(reader).brokeOff(failure).sentence}`);

/** @throws BrokenRun */
export function whole(result: RunResult, reader: Reader): RunResult {
  if (result.failure !== null) throw brokeOff(result.scenario, result.failure, reader);
  return result;
}

/** @throws BrokenRun */
export const wholeRun = (scenario: Scenario, reader: Reader): RunResult => whole(runTold(scenario), reader);
