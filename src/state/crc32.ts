/** CRC-32 as ISO 3309 has it: notices every change that spans no more than 32 bits, so any one letter of a link. */
const POLYNOMIAL = 0xedb88320;

export function crc32(bytes: Uint8Array): number {
  let check = 0xffffffff;
  for (const byte of bytes) {
    check ^= byte;
    for (let bit = 0; bit < 8; bit++) check = (check >>> 1) ^ (check & 1 ? POLYNOMIAL : 0);
  }
  return (check ^ 0xffffffff) >>> 0;
}
