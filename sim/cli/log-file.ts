/** The log of a real run as a file. */
import { fitMessages, readPoints, understood, type Reader, type ReadPoints } from '../index.ts';
import { BadInput, printable } from './bad-input.ts';
import { listOf, textOf, type Words } from './options.ts';
import { readText } from './read-input.ts';

/** Where the log is read from; refused where it is not named, or where the scenario takes standard input too. */
export function logSource(words: Words, scenario: string): string {
  const log = textOf(words, 'log');
  if (log === undefined)
    throw new BadInput('--log is missing; it names the file with what was logged, or - for standard input.');
  if (scenario === '-' && log === '-') throw new BadInput('Standard input can be the scenario or the log, not both.');
  return log;
}

/** The logs of a command that takes several. */
export function logSources(words: Words): readonly string[] {
  const logs = listOf(words, 'log');
  if (logs.length === 0)
    throw new BadInput('--log is missing; it names the file with what was logged, or - for standard input.');
  return logs;
}

export function refuseTwiceFromInput(sources: readonly string[]): void {
  if (sources.filter((source) => source === '-').length > 1)
    throw new BadInput('Standard input can be the scenario or the log, not both.');
}

/**
 * A log that cannot be read whole is refused, so that no reading is left out unseen; how it was understood is told on
 * standard error.
 */
export function logFrom(
  source: string,
  reader: Reader,
  tell: (line: string) => void = (line) => void process.stderr.write(`${line}\n`),
): Pick<ReadPoints, 'points' | 'passedOver'> {
  const text = readText(source, () => `--log: there is no file “${source}”.`);
  if (/^\s*[[{]/.test(text))
    throw new BadInput(`--log ${source}: this is JSON; a log is a line of headings, then one line a reading.`);
  const { points, problems, passedOver } = readPoints(text);
  const { pointsProblem, understood: told } = fitMessages(reader);
  const found = understood(text);
  if (found !== null) tell(printable(`--log ${source}: ${told(found.table, found.reading)}`));
  if (problems.length > 0) throw new BadInput(problems.map((problem) => `--log ${source}: ${pointsProblem(problem)}`));
  return { points, passedOver };
}
