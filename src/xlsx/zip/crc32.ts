const table = new Int32Array(256);
for (let n = 0; n < 256; n++) {
  let c = n;
  for (let bit = 0; bit < 8; bit++) c = c & 1 ? (c >>> 1) ^ 0xedb88320 : c >>> 1;
  table[n] = c;
}

/**
 * The CRC-32 of ISO 3309 that zip archives carry for each entry.
 *
 * @param before that of the bytes before these
 */
export function crc32(bytes: Uint8Array, before = 0): number {
  let crc = before ^ -1;
  for (let i = 0; i < bytes.length; i++)
    crc = (table[(crc ^ (bytes[i] as number)) & 0xff] as number) ^ (crc >>> 8);
  return (crc ^ -1) >>> 0;
}
