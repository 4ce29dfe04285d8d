/** The CRC-32 of zip archives (polynomial 0xEDB88320, PKWARE's APPNOTE 4.4.7). */

const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let remainder = byte;
  for (let bit = 0; bit < 8; bit += 1) remainder = remainder & 1 ? (remainder >>> 1) ^ 0xedb88320 : remainder >>> 1;
  return remainder;
});

/** Of bytes that follow others whose checksum is `before`. */
export function checksumOf(bytes: Uint8Array, before = 0): number {
  let sum = ~before;
  for (let at = 0; at < bytes.length; at += 1) {
    sum = (sum >>> 8) ^ (table[(sum ^ (bytes[at] as number)) & 0xff] as number);
  }
  return ~sum >>> 0;
}
