/** The command line: the model with Node around it, for scripts and for checking. */
import { answerTo } from './cli/answer.ts';
import { isNoAnswer, printable, printableLines } from './cli/bad-input.ts';
import { fetchUnitsFor } from './cli/read-input.ts';

/** A reader that has seen enough, such as `head`, closes the pipe: that is no mistake. */
for (const stream of [process.stdout, process.stderr])
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
    process.exit();
  });

try {
  const args = process.argv.slice(2);
  await fetchUnitsFor(args);
  process.stdout.write(`${printableLines(answerTo(args))}\n`);
} catch (error) {
  const lines = isNoAnswer(error)
    ? error.lines
    : [printable(`This should not have happened: ${error instanceof Error ? error.message : String(error)}`)];
  process.stderr.write(`${lines.join('\n')}\n`);
  process.exitCode = isNoAnswer(error) ? error.exitCode : 1;
}
