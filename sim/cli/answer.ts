/** From the words of the command line to the text of the answer. */
import { blendCommand, bottleCommand, diluteCommand, plantCommand, quantityCommand } from './after-commands.ts';
import { BadInput } from './bad-input.ts';
import { compareCommand } from './compare-command.ts';
import { fitCommand } from './fit-command.ts';
import { forecastCommand } from './forecast-command.ts';
import { commandHelp, generalHelp, type CommandName } from './help.ts';
import { listCommand } from './list-command.ts';
import { lookUpCommand } from './look-up-command.ts';
import { planCommand } from './plan-command.ts';
import { predictCommand } from './predict-command.ts';
import { runCommand } from './run-command.ts';
import { exampleCommand, schemaCommand } from './scenario-commands.ts';
import { sizeCommand } from './size-command.ts';

const commands: Readonly<Record<CommandName, (args: readonly string[]) => string>> = {
  run: runCommand,
  plan: planCommand,
  size: sizeCommand,
  predict: predictCommand,
  compare: compareCommand,
  fit: fitCommand,
  forecast: forecastCommand,
  plant: plantCommand,
  quantity: quantityCommand,
  bottle: bottleCommand,
  dilute: diluteCommand,
  blend: blendCommand,
  'look-up': lookUpCommand,
  list: listCommand,
  schema: schemaCommand,
  example: exampleCommand,
};

const isCommand = (word: string): word is CommandName => Object.hasOwn(commands, word);
const asksForHelp = (word: string): boolean => word === '--help' || word === '-h';

/** Text for standard output; throws `BadInput` with the lines for standard error. */
export function answerTo(args: readonly string[]): string {
  const [command, ...rest] = args;
  if (command === undefined) throw new BadInput(['A command is missing.', ...generalHelp.split('\n')]);
  if (asksForHelp(command)) return generalHelp;
  if (!isCommand(command))
    throw new BadInput(
      `“${command}” is no command; there are ${Object.keys(commands).join(', ')}. “--help” tells more.`,
    );
  return rest.some(asksForHelp) ? commandHelp[command] : commands[command](rest);
}
