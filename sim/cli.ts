/** The command line: the model with Node around it, for scripts and for checking. */
import { answerTo } from './cli/answer.ts';
import { isNoAnswer } from './cli/bad-input.ts';
import { fetchUnitsFor } from './cli/read-input.ts';

/** A reader that has seen enough, such as `head`, closes the pipe: that is no mistake. */
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
});

try {
  const args = process.argv.slice(2);
  await fetchUnitsFor(args);
  process.stdout.write(`${answerTo(args)}\n`);
} catch (error) {
  if (!isNoAnswer(error)) throw error;
  process.stderr.write(`${error.lines.join('\n')}\n`);
  process.exitCode = error.exitCode;
}
