/** A still as a link: the whole scenario, packed into the part of the address that no browser sends anywhere. */
import type { Scenario } from '../../sim/index.ts';
import type { ParsedFile } from './files.ts';

/** How a link's anchor begins; the number tells how the rest is packed. */
const START = '#still=1.';

/** More than this unpacked is no scenario. */
const LARGEST_BYTES = 2_000_000;

export const isShareHash = (hash: string): boolean => hash.startsWith('#still=');

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

/** The anchor of a link that opens this scenario. */
export async function shareHash(scenario: Scenario): Promise<string> {
  const packed = await throughStream(
    new Uint8Array(new TextEncoder().encode(JSON.stringify(scenario))),
    new CompressionStream('deflate-raw'),
  );
  return `${START}${toBase64Url(packed)}`;
}

/** What a link's anchor holds, as unchecked as a file. */
export async function readShareHash(hash: string): Promise<ParsedFile> {
  if (!hash.startsWith(START)) return { ok: false, message: 'It was made by another version.' };
  try {
    const bytes = await throughStream(fromBase64Url(hash.slice(START.length)), new DecompressionStream('deflate-raw'));
    return { ok: true, json: JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)) as unknown };
  } catch {
    return { ok: false, message: 'It is not whole: a letter is missing or has changed on the way.' };
  }
}
