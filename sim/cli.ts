/** The command line: the model with Node around it, for scripts and for checking. */
import { answerTo } from './cli/answer.ts';
import { isNoAnswer } from './cli/bad-input.ts';

/** A reader that has seen enough, such as `head`, closes the pipe: that is no mistake. */
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
});

try {
  process.stdout.write(`${answerTo(process.argv.slice(2))}\n`);
} catch (error) {
  if (!isNoAnswer(error)) throw error;
  process.stderr.write(`${error.lines.join('\n')}\n`);
  process.exitCode = error.exitCode;
}
