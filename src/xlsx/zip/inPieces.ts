import { bytesInTurn, type Pausing } from '../pausing.js';
import type { Codec } from './codec.js';

/** The check sum of the bytes, with rests. */
export function* checkSum(bytes: Uint8Array, codec: Codec): Pausing<number> {
  let crc = 0;
  for (let at = 0; at < bytes.length; at += bytesInTurn) {
    crc = codec.crc32(bytes.subarray(at, at + bytesInTurn), crc);
    yield;
  }
  return crc;
}

/** The bytes of a string with one character per byte, with rests. */
export function* bytesOf(characters: string, codec: Codec): Pausing<Uint8Array> {
  const bytes = new Uint8Array(characters.length);
  for (let at = 0; at < characters.length; at += bytesInTurn) {
    bytes.set(codec.toBytes(characters.slice(at, at + bytesInTurn)), at);
    yield;
  }
  return bytes;
}
