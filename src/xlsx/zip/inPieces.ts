import { bytesInTurn, type Pausing } from '../pausing.js';
import type { Codec } from './codec.js';
import type { Packed } from './writeArchive.js';

/** Bytes that are packed between two rests: some milliseconds. */
export const packedInTurn = 128 * 1024;

/** The check sum of the bytes, with rests. */
export function* checkSum(bytes: Uint8Array, codec: Codec): Pausing<number> {
  let crc = 0;
  for (let at = 0; at < bytes.length; at += bytesInTurn) {
    crc = codec.crc32(bytes.subarray(at, at + bytesInTurn), crc);
    yield;
  }
  return crc;
}

/** Packs bytes, with rests. */
export function* packBytes(bytes: Uint8Array, codec: Codec): Pausing<Packed> {
  return yield* pack(
    parts(bytes, (from, to) => bytes.subarray(from, to)),
    codec,
  );
}

/** Packs a text of one character per byte that is in pieces, with rests: its bytes are never there as a whole. */
export function* packText(pieces: readonly string[], codec: Codec): Pausing<Packed> {
  const bytes = function* (): Generator<Uint8Array> {
    for (const piece of pieces) yield* parts(piece, (from, to) => codec.toBytes(piece.slice(from, to)));
  };
  return yield* pack(bytes(), codec);
}

function* parts({ length }: { length: number }, part: (from: number, to: number) => Uint8Array) {
  for (let at = 0; at < length; at += packedInTurn) yield part(at, at + packedInTurn);
}

function* pack(pieces: Iterable<Uint8Array>, codec: Codec): Pausing<Packed> {
  let [size, crc] = [0, 0];
  const counted = function* (): Generator<Uint8Array> {
    for (const piece of pieces) {
      size += piece.length;
      crc = codec.crc32(piece, crc);
      yield piece;
    }
  };
  const packed = yield* codec.deflate(counted());
  return { packed, size, crc };
}
