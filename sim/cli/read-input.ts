/** From the words of a command to a complete scenario: an example, a file or standard input, with single fields changed. */
import { readFileSync } from 'node:fs';
import { chargeFromBotanical, examples, fieldAt, readScenario, type Scenario } from '../index.ts';
import { closestWords } from '../reference/closest-words.ts';
import { isObject } from '../scenario/json.ts';
import type { AskedQuantity } from '../units/index.ts';
import { englishReader } from '../messages/language.ts';
import { encodingOf } from '../messages/text-encoding.ts';
import { fileProblemMessage } from '../messages/problems.ts';
import { fetchUnits, readTyped } from '../messages/typed-reading.ts';
import { BadInput } from './bad-input.ts';

type Json = Record<string, unknown>;

/** Who types files and options: SI. */
const READER = englishReader('metric');

const place = (source: string): string => (source === '-' ? 'Standard input' : `The file ${source}`);

/** The text of a file or, for `-`, of standard input. @param missing what to say when there is no such file */
export function readText(source: string, missing: () => string): string {
  try {
    const bytes = readFileSync(source === '-' ? 0 : source);
    return new TextDecoder(encodingOf(bytes)).decode(bytes);
  } catch (error) {
    const reason = error instanceof Error && 'code' in error ? String(error.code) : String(error);
    throw new BadInput(
      source !== '-' && reason === 'ENOENT' ? missing() : `${place(source)} can't be read (${reason}).`,
    );
  }
}

export function readJson(source: string, missing: () => string): unknown {
  const text = readText(source, missing);
  try {
    return JSON.parse(text) as unknown;
  } catch (error) {
    throw new BadInput(`${place(source)} is not JSON: ${error instanceof Error ? error.message : String(error)}`);
  }
}

function neitherExampleNorFile(source: string): string {
  const ids = examples.map(({ id }) => id);
  return `“${source}” is neither an example nor a file; the closest example is “${closestWords(source, ids, 1).join()}”, all are ${ids.join(', ')}.`;
}

/** Number, list, object, true, null as JSON writes them; anything else is text. */
function valueOf(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return text;
  }
}

/** What may be typed with a unit at a path, with bare numbers in SI; `undefined` for texts, choices and lists. */
function askedAt(path: string): AskedQuantity | undefined {
  const field = fieldAt(path);
  const title = `${field?.title} (${path})`;
  switch (field?.kind) {
    case 'number':
    case 'integer':
      return { ...field, title, bareNumbers: 'SI' };
    case 'schedule':
      if (path.endsWith('.at_s')) return { title, unit: 's', bareNumbers: 'SI' };
      return path === field.path || path.endsWith('.value') ? { ...field, title, bareNumbers: 'SI' } : undefined;
    default:
      return undefined;
  }
}

/** A value as JSON writes it, or a quantity with its unit in SI. */
function typedAt(path: string, text: string): unknown {
  const given = valueOf(text);
  const asked = typeof given === 'string' ? askedAt(path) : undefined;
  if (asked === undefined) return given;
  const read = readTyped(text, asked, READER);
  if (read === null) throw new BadInput(`--with: ${asked.title}: units can't be read just now; type the number in SI.`);
  if (!read.ok) throw new BadInput(`--with: ${read.message}`);
  return read.value;
}

/** Fetches what reads units when a changed field needs it; it is too large to wait for otherwise. */
export async function fetchUnitsFor(args: readonly string[]): Promise<void> {
  const needsUnits = (arg: string): boolean => {
    const [, path = '', text = ''] = /^(?:--with=)?(?:\d+:)?([^=]+)=(.*)$/su.exec(arg) ?? [];
    const asked = typeof valueOf(text.trim()) === 'string' ? askedAt(path.trim()) : undefined;
    return asked !== undefined && readTyped(text, asked, READER) === null;
  };
  // Where it does not come, the field says so.
  if (args.some(needsUnits)) await fetchUnits().catch(() => undefined);
}

/** Fields of the charge that a plant brings along, apart from its name. */
const plantFields = (): readonly string[] =>
  Object.keys(chargeFromBotanical('lavender-true')).filter((key) => key !== 'botanical');

/** Longer paths lead to no field of any scenario. */
const DEEPEST_PATH = 10;
/** Characters of a path that are repeated to whoever wrote it. */
const MOST_SHOWN = 80;

const noField = (path: string): BadInput =>
  new BadInput(`--with: ${path.slice(0, MOST_SHOWN)} is not a field; “schema” lists them all.`);

/** The file with one field changed; a bare number in a schedule's place holds from the start to the end. */
function withField(input: Json, assignment: string): Json {
  const cut = assignment.indexOf('=');
  if (cut < 1)
    throw new BadInput(
      `--with: “${assignment}” is not allowed; a path, “=” and a value are needed, as in condenser.length_m=4.`,
    );
  const path = assignment.slice(0, cut).trim();
  const keys = path.split('.');
  if (keys.length > DEEPEST_PATH) throw noField(path);
  const given = typedAt(path, assignment.slice(cut + 1).trim());
  const field = fieldAt(path);
  const value =
    field?.kind === 'schedule' && field.path === path && typeof given === 'number'
      ? [{ at_s: 0, value: given }]
      : given;
  return changed(input, keys, path, value) as Json;
}

function changed(node: unknown, keys: readonly string[], path: string, value: unknown): unknown {
  const [key, ...rest] = keys;
  if (key === undefined) return value;
  if (key === '' || key === '__proto__') throw noField(path);
  if (Array.isArray(node)) {
    const index = Number(key);
    if (!Number.isInteger(index) || index < 0 || index > node.length)
      throw new BadInput(`--with: ${path} is not a field; the list has ${node.length} entries, counted from 0.`);
    const copy = [...(node as unknown[])];
    copy[index] = changed(copy[index], rest, path, value);
    return copy;
  }
  if (node !== undefined && !isObject(node)) throw noField(path);
  return { ...node, [key]: changed(node?.[key], rest, path, value) };
}

/** Another plant brings its own figures, unless these are set too. */
function forgetPlant(input: Json, assignments: readonly string[]): Json {
  if (
    !assignments.some((assignment) => /^\s*charge\.(botanical|state)\s*=/.test(assignment)) ||
    !isObject(input['charge'])
  )
    return input;
  const gone = new Set(plantFields());
  const charge = Object.fromEntries(Object.entries(input['charge']).filter(([key]) => !gone.has(key)));
  return { ...input, charge };
}

/**
 * Reads a scenario.
 * @param source id of an example, path of a file, or `-` for standard input
 * @param assignments `path=value`: a number in SI, or a quantity with its unit
 */
export function scenarioFrom(source: string, assignments: readonly string[]): Scenario {
  const example = examples.find(({ id }) => id === source);
  let input: unknown = example ? example.scenario : readJson(source, () => neitherExampleNorFile(source));
  const complaints: string[] = [];
  if (isObject(input)) {
    input = assignments.reduce<Json>(
      (changing, assignment) => {
        try {
          return withField(changing, assignment);
        } catch (error) {
          if (!(error instanceof BadInput)) throw error;
          complaints.push(...error.lines);
          return changing;
        }
      },
      forgetPlant(input, assignments),
    );
  }
  const read = readScenario(input);
  if (!read.ok) complaints.push(...read.problems.map((problem) => fileProblemMessage(problem, READER)));
  if (!read.ok || complaints.length > 0) throw new BadInput(complaints);
  return read.scenario;
}
