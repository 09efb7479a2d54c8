import { Deflate, Inflate, strFromU8, strToU8 } from 'fflate';
import { bytesInTurn, type Pausing } from '../pausing.js';
import { concatenate } from './concatenate.js';
import { crc32 } from './crc32.js';

/** Packs and unpacks the contents of zip entries. */
export interface Codec {
  /** Packs bytes that come in pieces, each made when it is wanted. */
  deflate(pieces: Iterable<Uint8Array>): Pausing<Uint8Array>;
  /** Unpacks at most `limit` bytes; undefined when there are more, throws when the data is damaged. */
  inflate(packed: Uint8Array, limit: number): Pausing<Uint8Array | undefined>;
  /** The check sum of bytes that follow others with a check sum. */
  crc32(bytes: Uint8Array, before: number): number;
  /** Bytes to a string with one character per byte, and back. */
  toCharacters(bytes: Uint8Array): Pausing<string>;
  toBytes(characters: string): Uint8Array;
}

/** Bytes that are unpacked between two rests: some milliseconds. */
const step = 16 * 1024;

/** The codec that works everywhere; a program may bring a faster one. */
export const portableCodec: Codec = {
  *deflate(pieces) {
    const packed: Uint8Array[] = [];
    const stream = new Deflate({ level: 6 }, (chunk) => void packed.push(chunk));
    for (const piece of pieces) {
      stream.push(piece);
      yield;
    }
    stream.push(new Uint8Array(0), true);
    return concatenate(packed);
  },
  *inflate(packed, limit) {
    const out = new Uint8Array(limit);
    let length = 0;
    const stream = new Inflate((chunk) => {
      if (length + chunk.length <= limit) out.set(chunk, length);
      length += chunk.length;
    });
    for (let at = 0; at < packed.length && length <= limit; at += step) {
      stream.push(packed.subarray(at, at + step), at + step >= packed.length);
      yield;
    }
    if (length > limit) return undefined;
    return length === limit ? out : out.subarray(0, length);
  },
  crc32,
  *toCharacters(bytes) {
    let characters = '';
    for (let at = 0; at < bytes.length; at += bytesInTurn) {
      characters += strFromU8(bytes.subarray(at, at + bytesInTurn), true);
      yield;
    }
    return characters;
  },
  toBytes: (characters) => strToU8(characters, true),
};
