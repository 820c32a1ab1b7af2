/** Reading of a command's words: flags by node:util, numbers with their allowed range. */
import { parseArgs, type ParseArgsConfig } from 'node:util';
import { BadInput } from './bad-input.ts';

type Flags = NonNullable<ParseArgsConfig['options']>;

/** `--help` and `--json` are known to every command. */
const everywhere = { help: { type: 'boolean', short: 'h' }, json: { type: 'boolean' } } as const satisfies Flags;

export interface Words {
  readonly positionals: readonly string[];
  readonly values: Readonly<Record<string, string | boolean | (string | boolean)[] | undefined>>;
}

export function readWords(words: readonly string[], flags: Flags): Words {
  try {
    const { positionals, values } = parseArgs({ args: [...words], options: { ...everywhere, ...flags }, allowPositionals: true, strict: true });
    return { positionals, values };
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    throw new BadInput(`${error.message.replace(/\s+/g, ' ').replace(/\.? To specify.*$/, '')}. “--help” lists the flags.`);
  }
}

export const isSet = ({ values }: Words, flag: string): boolean => values[flag] === true;

/** Values of a flag that may stand several times. */
export const listOf = ({ values }: Words, flag: string): string[] => {
  const found = values[flag];
  return Array.isArray(found) ? found.filter((value) => typeof value === 'string') : [];
};

/** A number given with a flag, within its limits; undefined when the flag is not there. */
export function numberOf({ values }: Words, flag: string, low: number, high: number, unit: string): number | undefined {
  const text = values[flag];
  if (typeof text !== 'string') return undefined;
  const value = text.trim() === '' ? Number.NaN : Number(text);
  if (value >= low && value <= high) return value;
  throw new BadInput(`--${flag}: ${text} is not allowed; allowed is ${low} to ${high}${unit === '1' ? '' : ` ${unit}`}.`);
}

/** The one word a command needs. */
export function onlyWord({ positionals }: Words, what: string): string {
  const [word, ...more] = positionals;
  if (word === undefined) throw new BadInput(`${what} is missing. “--help” shows how the command is written.`);
  if (more.length > 0) throw new BadInput(`Only one ${what} can be given, not also “${more.join(' ')}”.`);
  return word;
}
