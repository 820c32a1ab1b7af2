/** In which encoding a file of text was written: UTF-8 or UTF-16 by its mark or its zeros, else what older spreadsheets write. */
export type TextEncoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

/** Bytes that are looked at for zeros. */
const LOOKED_AT = 1000;

/** Whether bytes are UTF-8: each leading byte is followed by as many of the others as it says. */
function isUtf8(bytes: Uint8Array): boolean {
  let left = 0;
  for (const byte of bytes) {
    if (left > 0) {
      if ((byte & 0xc0) !== 0x80) return false;
      left--;
    } else if (byte >= 0x80) {
      left = byte >= 0xf0 && byte < 0xf5 ? 3 : byte >= 0xe0 && byte < 0xf0 ? 2 : byte >= 0xc2 && byte < 0xe0 ? 1 : -1;
      if (left < 0) return false;
    }
  }
  return true;
}

export function encodingOf(bytes: Uint8Array): TextEncoding {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  const zeros = [0, 0];
  for (let at = 0; at < Math.min(LOOKED_AT, bytes.length); at++)
    if (bytes[at] === 0) zeros[at % 2] = (zeros[at % 2] as number) + 1;
  const [even = 0, odd = 0] = zeros;
  const most = Math.min(LOOKED_AT, bytes.length) / 4;
  if (odd > most && even === 0) return 'utf-16le';
  if (even > most && odd === 0) return 'utf-16be';
  return isUtf8(bytes) ? 'utf-8' : 'windows-1252';
}
