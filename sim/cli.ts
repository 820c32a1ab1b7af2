/** The command line: the model with Node around it, for scripts and for checking. */
import { BadInput } from './cli/bad-input.ts';
import { commandHelp, generalHelp, type CommandName } from './cli/help.ts';
import { listCommand } from './cli/list-command.ts';
import { lookUpCommand } from './cli/look-up-command.ts';
import { runCommand } from './cli/run-command.ts';
import { exampleCommand, schemaCommand } from './cli/scenario-commands.ts';
import { sizeCommand } from './cli/size-command.ts';

const commands: Readonly<Record<CommandName, (args: readonly string[]) => string>> = {
  run: runCommand,
  size: sizeCommand,
  'look-up': lookUpCommand,
  list: listCommand,
  schema: schemaCommand,
  example: exampleCommand,
};

const isCommand = (word: string): word is CommandName => Object.hasOwn(commands, word);
const asksForHelp = (word: string): boolean => word === '--help' || word === '-h';

function answerTo(args: readonly string[]): string {
  const [command, ...rest] = args;
  if (command === undefined) throw new BadInput('A command is missing.', ...generalHelp.split('\n'));
  if (asksForHelp(command)) return generalHelp;
  if (!isCommand(command)) throw new BadInput(`“${command}” is no command; there are ${Object.keys(commands).join(', ')}. “--help” tells more.`);
  return rest.some(asksForHelp) ? commandHelp[command] : commands[command](rest);
}

/** A reader that has seen enough, such as `head`, closes the pipe: that is no mistake. */
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
});

try {
  process.stdout.write(`${answerTo(process.argv.slice(2))}\n`);
} catch (error) {
  if (!(error instanceof BadInput)) throw error;
  process.stderr.write(`${error.lines.join('\n')}\n`);
  process.exitCode = 2;
}
