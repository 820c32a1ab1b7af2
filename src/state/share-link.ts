/**
 * A still as a link, packed into the part of the address that no browser sends anywhere: which of the known stills it
 * comes nearest to, and what differs from that.
 */
import { isObject, type Scenario } from '../../sim/index.ts';
import type { ParsedFile } from './files.ts';
import { patchBetween, patched, type Patch } from './scenario-patch.ts';

/** How a link's anchor begins; the number tells how the rest is packed: the whole scenario, or what differs. */
const WHOLE = '#still=1.';
const DIFFERENCE = '#still=2.';

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

/** JSON as letters that an address takes as they are. */
export const packJson = async (json: unknown): Promise<string> =>
  toBase64Url(
    await throughStream(
      new Uint8Array(new TextEncoder().encode(JSON.stringify(json))),
      new CompressionStream('deflate-raw'),
    ),
  );

/** Rejects where a letter is missing or has changed. */
export const unpackJson = async (text: string): Promise<unknown> =>
  JSON.parse(
    new TextDecoder('utf-8', { fatal: true }).decode(
      await throughStream(fromBase64Url(text), new DecompressionStream('deflate-raw')),
    ),
  ) as unknown;

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
export const shareHash = async (scenario: Scenario): Promise<string> =>
  DIFFERENCE + (await packJson(differenceFrom(await fetchBases(), scenario)));

const NOT_WHOLE: ParsedFile = { ok: false, message: 'It is not whole: a letter is missing or has changed on the way.' };

/** What a link's anchor holds, as unchecked as a file. */
export async function readShareHash(hash: string): Promise<ParsedFile> {
  const start = [WHOLE, DIFFERENCE].find((known) => hash.startsWith(known));
  if (start === undefined) return { ok: false, message: 'It was made by another version.' };
  let json: unknown;
  try {
    json = await unpackJson(hash.slice(start.length));
  } catch {
    return NOT_WHOLE;
  }
  if (start === WHOLE) return { ok: true, json };
  if (!isDifference(json)) return NOT_WHOLE;
  const whole = await stillFromDifference(json);
  return whole === null ? { ok: false, message: 'It was made by another version.' } : { ok: true, json: whole };
}
