import { sha256 } from '@noble/hashes/sha2.js';
import { utf8ToBytes } from '@noble/hashes/utils.js';

/** Letters and digits that cannot be mistaken for each other: no 0, O, 1, I. */
const alphabet = 'ABCDEFGHJKLMNPQRSTUVWXYZ23456789';
const length = 12;

/** Twelve characters (60 bits) of the SHA-256 of a text, in groups of four: `7K7Q-29MX-DT4P`. */
export function contentHash(text: string): string {
  const digest = sha256(utf8ToBytes(text));
  const characters = Array.from({ length }, (_, index) => alphabet[fiveBits(digest, index * 5)] ?? '');
  return [0, 4, 8].map((start) => characters.slice(start, start + 4).join('')).join('-');
}

function fiveBits(bytes: Uint8Array, bit: number): number {
  const at = bit >> 3;
  const two = ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0);
  return (two >> (11 - (bit & 7))) & 31;
}
