/** Reading of a command's words: flags by node:util, numbers with their allowed range. */
import { parseArgs, type ParseArgsConfig } from 'node:util';
import { englishReader, type Reader } from '../index.ts';
import { BadInput } from './bad-input.ts';

type Flags = NonNullable<ParseArgsConfig['options']>;

/** `--help` and `--json` are known to every command. */
const everywhere = { help: { type: 'boolean', short: 'h' }, json: { type: 'boolean' } } as const satisfies Flags;

export interface Words {
  readonly positionals: readonly string[];
  readonly values: Readonly<Record<string, string | boolean | (string | boolean)[] | undefined>>;
}

function complaint(error: TypeError & { readonly code?: string }, known: Flags): string {
  const said = error.message
    .replace(/\s+/g, ' ')
    .replace(/\.? To specify a positional.*$/, '')
    .replace(/\.$/, '');
  const flags = Object.keys(known)
    .sort()
    .map((flag) => `--${flag}`);
  return error.code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION'
    ? `${said}; there are ${flags.join(', ')}.`
    : `${said}. “--help” lists the flags.`;
}

export function readWords(words: readonly string[], flags: Flags): Words {
  const options: Flags = { ...everywhere, ...flags };
  try {
    const { positionals, values, tokens } = parseArgs({
      args: [...words],
      options,
      allowPositionals: true,
      strict: true,
      tokens: true,
    });
    const given = tokens.flatMap((token) => (token.kind === 'option' ? [token.name] : []));
    const twice = given.find(
      (name, index) =>
        options[name]?.type === 'string' && options[name].multiple !== true && given.indexOf(name) < index,
    );
    if (twice !== undefined) throw new BadInput(`--${twice} can only be given once.`);
    return { positionals, values };
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    throw new BadInput(complaint(error, options));
  }
}

export const isSet = ({ values }: Words, flag: string): boolean => values[flag] === true;

/** Changes of single fields, for every command that takes a scenario. */
export const WITH = { with: { type: 'string', multiple: true } } as const satisfies Flags;

/** Units of the sentences and tables; what is printed as data stays in SI. */
export const UNITS = { units: { type: 'string' } } as const satisfies Flags;

export function readerOf(words: Words): Reader {
  const units = textOf(words, 'units') ?? 'metric';
  if (units !== 'metric' && units !== 'us')
    throw new BadInput(`--units: “${units}” is not allowed; there are metric, us.`);
  return englishReader(units);
}

/** The text given with a flag; undefined when the flag is not there. */
export const textOf = ({ values }: Words, flag: string): string | undefined => {
  const found = values[flag];
  return typeof found === 'string' ? found : undefined;
};

/** Values of a flag that may stand several times. */
export const listOf = ({ values }: Words, flag: string): string[] => {
  const found = values[flag];
  return Array.isArray(found) ? found.filter((value) => typeof value === 'string') : [];
};

/** A number as text, within its limits. @param where names what it was given for */
export function numberIn(text: string, where: string, low: number, high: number, unit: string): number {
  const value = text.trim() === '' ? Number.NaN : Number(text);
  if (value >= low && value <= high) return value;
  throw new BadInput(
    `${where}: ${text === '' ? '“”' : text} is not allowed; allowed is ${low} to ${high}${unit === '1' ? '' : ` ${unit}`}.`,
  );
}

/** A number given with a flag, within its limits; undefined when the flag is not there. */
export function numberOf(words: Words, flag: string, low: number, high: number, unit: string): number | undefined {
  const text = textOf(words, flag);
  return text === undefined ? undefined : numberIn(text, `--${flag}`, low, high, unit);
}

/** A whole number given with a flag. */
export function wholeNumberOf(words: Words, flag: string, low: number, high: number): number | undefined {
  const value = numberOf(words, flag, low, high, '1');
  if (value === undefined || Number.isInteger(value)) return value;
  throw new BadInput(`--${flag}: ${value} is not allowed; it must be a whole number, ${low} to ${high}.`);
}

/** The one word a command needs. */
export function onlyWord({ positionals }: Words, what: string): string {
  const [word, ...more] = positionals;
  if (word === undefined) throw new BadInput(`${what} is missing. “--help” shows how the command is written.`);
  if (more.length > 0) throw new BadInput(`Only one ${what} can be given, not also “${more.join(' ')}”.`);
  return word;
}
