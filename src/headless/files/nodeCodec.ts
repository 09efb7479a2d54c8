import zlib from 'node:zlib';
import type { Codec } from '../../xlsx/zip/codec.js';

/** The zip codec of the platform's own compression library. */
export const nodeCodec: Codec = {
  *deflate(bytes) {
    yield;
    return zlib.deflateRawSync(bytes, { level: 6 });
  },
  *inflate(packed, limit) {
    yield;
    try {
      return zlib.inflateRawSync(packed, { maxOutputLength: Math.max(1, limit) });
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === 'ERR_BUFFER_TOO_LARGE') return undefined;
      throw error;
    }
  },
  crc32: (bytes, before) => zlib.crc32(bytes, before),
  toCharacters: (bytes) => Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1'),
  toBytes: (characters) => Buffer.from(characters, 'latin1'),
};
