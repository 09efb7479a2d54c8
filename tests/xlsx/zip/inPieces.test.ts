import zlib from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { nodeCodec } from '../../../src/headless/files/nodeCodec.js';
import { atOnce, bytesInTurn } from '../../../src/xlsx/pausing.js';
import { checkUtf8 } from '../../../src/xlsx/xml/characters.js';
import { portableCodec } from '../../../src/xlsx/zip/codec.js';
import { bytesOf, checkSum } from '../../../src/xlsx/zip/inPieces.js';

/** A long text in which a character of four bytes lies over the border of two pieces, by so many bytes. */
const across = (by: number) => Buffer.from(`${'a'.repeat(bytesInTurn - by)}😀${'é'.repeat(bytesInTurn)}`);

describe.each([
  ['portable', portableCodec],
  ["platform's", nodeCodec],
])('a long part, by the %s codec', (_, codec) => {
  const bytes = across(2);

  it('has the check sum of the whole', () => {
    expect(atOnce(checkSum(bytes, codec))).toBe(zlib.crc32(bytes));
  });

  it('becomes characters and bytes again, with rests', () => {
    const characters = atOnce(codec.toCharacters(bytes));
    expect(characters === bytes.toString('latin1')).toBe(true);
    expect(bytes.equals(atOnce(bytesOf(characters, codec)))).toBe(true);
    expect([...portableCodec.toCharacters(bytes)].length).toBe(Math.ceil(bytes.length / bytesInTurn));
    expect([...bytesOf(characters, codec)].length).toBe(Math.ceil(bytes.length / bytesInTurn));
  });
});

describe('UTF-8 in pieces', () => {
  it.each([0, 1, 2, 3, 4])('is told, with %i bytes of a character before the border', (by) => {
    const bytes = across(by);
    expect([...checkUtf8(bytes)].length).toBeGreaterThanOrEqual(3);
  });

  it.each([0, 1, 2, 3, 4])('is refused where the last byte of that character is missing (%i)', (by) => {
    const at = bytesInTurn - by + 3;
    const bytes = Buffer.concat([across(by).subarray(0, at), across(by).subarray(at + 1)]);
    expect(() => atOnce(checkUtf8(bytes))).toThrow('not well-formed');
  });

  it('is refused where a piece ends with half a character', () => {
    const cut = Buffer.concat([Buffer.alloc(bytesInTurn - 1, 'a'), Uint8Array.of(0xc3), Buffer.from('abc')]);
    expect(() => atOnce(checkUtf8(cut))).toThrow('not well-formed');
  });
});
