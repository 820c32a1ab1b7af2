/**
 * A still as a link, packed into the part of the address that no browser sends anywhere: which of the known stills it
 * comes nearest to, and what differs from that.
 */
import { isObject, type Scenario } from '../../sim/index.ts';
import { crc32 } from './crc32.ts';
import type { ParsedFile } from './files.ts';
import { patchBetween, patched, type Patch } from './scenario-patch.ts';

/**
 * How a link's anchor begins. The number tells how the rest is packed: the whole scenario, or what differs; from the
 * third on with a check value in front, and plain where a browser cannot compress.
 */
const STARTS = { whole: '#still=1.', difference: '#still=2.', checked: '#still=3.', plain: '#still=4.' } as const;

/** Which of the known stills, what is set, and what is gone. */
type Difference = readonly [base: number, set: Patch['set'], gone?: Patch['gone']];

type Bases = readonly Readonly<Record<string, unknown>>[];

/** Links name these stills by their place in the list: one may be added at its end, none is ever changed. */
const fetchBases = async (): Promise<Bases> => (await import('./link-bases.json')).default;

/** More than this unpacked is no scenario. */
const LARGEST_BYTES = 2_000_000;

const bytesOf = async (stream: ReadableStream<Uint8Array<ArrayBuffer>>): Promise<Uint8Array<ArrayBuffer>> => {
  const parts: Uint8Array<ArrayBuffer>[] = [];
  const reader = stream.getReader();
  let size = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    size += value.length;
    if (size > LARGEST_BYTES) {
      await reader.cancel();
      throw new RangeError('it holds more than a scenario');
    }
    parts.push(value);
  }
  return new Uint8Array(await new Blob(parts).arrayBuffer());
};

const throughStream = (
  bytes: Uint8Array<ArrayBuffer>,
  transform: CompressionStream | DecompressionStream,
): Promise<Uint8Array<ArrayBuffer>> => bytesOf(new Blob([bytes]).stream().pipeThrough(transform));

const toBase64Url = (bytes: Uint8Array): string =>
  btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replace(/=+$/u, '');

const fromBase64Url = (text: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (letter) => letter.charCodeAt(0));

const utf8 = (text: string): Uint8Array<ArrayBuffer> => new Uint8Array(new TextEncoder().encode(text));

const deflated = (bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> =>
  throughStream(bytes, new CompressionStream('deflate-raw'));

const inflated = (bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> =>
  throughStream(bytes, new DecompressionStream('deflate-raw'));

const jsonOf = (bytes: Uint8Array<ArrayBuffer>): unknown =>
  JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)) as unknown;

/** As links were packed before they had a check value. */
const unpackJson = async (text: string): Promise<unknown> => jsonOf(await inflated(fromBase64Url(text)));

const CHECK_BYTES = 4;

/** The check value of a link: of how it begins, and of what it holds. */
function checkOf(start: string, bytes: Uint8Array<ArrayBuffer>): Uint8Array<ArrayBuffer> {
  const check = new Uint8Array(CHECK_BYTES);
  new DataView(check.buffer).setUint32(0, crc32(new Uint8Array([...utf8(start), ...bytes])));
  return check;
}

const checked = (start: string, bytes: Uint8Array<ArrayBuffer>): string =>
  start + toBase64Url(new Uint8Array([...checkOf(start, bytes), ...bytes]));

/** Throws where a letter has changed: in what the link holds, in its check value, or in bits that no byte needs. */
function unchecked(start: string, text: string): Uint8Array<ArrayBuffer> {
  const all = fromBase64Url(text);
  const [check, bytes] = [all.slice(0, CHECK_BYTES), all.slice(CHECK_BYTES)];
  if (toBase64Url(all) !== text || toBase64Url(checkOf(start, bytes)) !== toBase64Url(check))
    throw new RangeError('the check value does not fit');
  return bytes;
}

/** What stands before the letters of a link of another kind that has a check value; no letter of an older one is a dot. */
const CHECKED = '2.';

/** JSON as letters that an address takes as they are, with a check value in front. */
export const packJson = async (json: unknown): Promise<string> =>
  checked(CHECKED, await deflated(utf8(JSON.stringify(json))));

/** Rejects where a letter is missing or has changed; links of before the check value open as they did. */
export const unpackLetters = async (text: string): Promise<unknown> =>
  text.startsWith(CHECKED) ? jsonOf(await inflated(unchecked(CHECKED, text.slice(CHECKED.length)))) : unpackJson(text);

async function jsonIn(start: string, text: string): Promise<unknown> {
  if (start === STARTS.plain) return jsonOf(unchecked(start, text));
  return start === STARTS.checked ? jsonOf(await inflated(unchecked(start, text))) : unpackJson(text);
}

function differenceFrom(bases: Bases, scenario: Scenario): Difference {
  const differences = bases.map((base, index): Difference => {
    const { set, gone } = patchBetween(base, { ...scenario });
    return gone.length > 0 ? [index, set, gone] : [index, set];
  });
  const lengths = differences.map((difference) => JSON.stringify(difference).length);
  const shortest = differences[lengths.indexOf(Math.min(...lengths))];
  if (!shortest) throw new RangeError('no still is known to differ from');
  return shortest;
}

const isPath = (path: unknown): path is readonly string[] =>
  Array.isArray(path) && path.length > 0 && path.every((key) => typeof key === 'string');

const isDifference = (json: unknown): json is Difference =>
  Array.isArray(json) &&
  Number.isInteger(json[0]) &&
  isObject(json[1]) &&
  (json[2] === undefined || (Array.isArray(json[2]) && json[2].every(isPath)));

/** A scenario as its difference from the nearest known still, for a link that holds more than a still. */
export const stillDifference = async (scenario: Scenario): Promise<unknown> =>
  differenceFrom(await fetchBases(), scenario);

/** The scenario that differs so, as unchecked as a file; `null` where no known still does. */
export async function stillFromDifference(json: unknown): Promise<unknown> {
  if (!isDifference(json)) return null;
  const [index, set, gone = []] = json;
  const base = (await fetchBases())[index];
  return base ? patched(base, { set, gone }) : null;
}

/** The anchor of a link that opens this scenario. */
export async function shareHash(scenario: Scenario): Promise<string> {
  const bytes = utf8(JSON.stringify(differenceFrom(await fetchBases(), scenario)));
  return typeof CompressionStream === 'function'
    ? checked(STARTS.checked, await deflated(bytes))
    : checked(STARTS.plain, bytes);
}

const NOT_WHOLE: ParsedFile = { ok: false, message: 'It is not whole: a letter is missing or has changed on the way.' };

/** What a link's anchor holds, as unchecked as a file. */
export async function readShareHash(hash: string): Promise<ParsedFile> {
  const start = Object.values(STARTS).find((known) => hash.startsWith(known));
  if (start === undefined)
    return /^#still=\d+\./u.test(hash) ? { ok: false, message: 'It was made by another version.' } : NOT_WHOLE;
  if (start !== STARTS.plain && typeof DecompressionStream !== 'function')
    return { ok: false, message: 'This browser is too old to unpack it. Ask for the still as a file.' };
  let json: unknown;
  try {
    json = await jsonIn(start, hash.slice(start.length));
  } catch {
    return NOT_WHOLE;
  }
  if (start === STARTS.whole) return { ok: true, json };
  if (!isDifference(json)) return NOT_WHOLE;
  const whole = await stillFromDifference(json);
  return whole === null ? { ok: false, message: 'It was made by another version.' } : { ok: true, json: whole };
}
