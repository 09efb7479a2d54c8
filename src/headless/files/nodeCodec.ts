import zlib from 'node:zlib';
import type { Codec } from '../../xlsx/zip/codec.js';
import { concatenate } from '../../xlsx/zip/concatenate.js';

/** The zip codec of the platform's own compression library. */
export const nodeCodec: Codec = {
  *deflate(pieces) {
    yield;
    return zlib.deflateRawSync(concatenate([...pieces]), { level: 6 });
  },
  *inflate(packed, limit) {
    yield;
    try {
      // One piece, with room to see that it ends: pieces would have to be copied together.
      const chunkSize = Math.max(zlib.constants.Z_MIN_CHUNK, limit + 1);
      return zlib.inflateRawSync(packed, { maxOutputLength: Math.max(1, limit), chunkSize });
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === 'ERR_BUFFER_TOO_LARGE') return undefined;
      throw error;
    }
  },
  crc32: (bytes, before) => zlib.crc32(bytes, before),
  *toCharacters(bytes) {
    yield;
    return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
  },
  toBytes: (characters) => Buffer.from(characters, 'latin1'),
};
