import zlib from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nodeCodec } from '../../../src/headless/files/nodeCodec.js';
import { atOnce, bytesInTurn } from '../../../src/xlsx/pausing.js';
import { checkUtf8 } from '../../../src/xlsx/xml/characters.js';
import { portableCodec } from '../../../src/xlsx/zip/codec.js';
import { checkSum, packBytes, packedInTurn, packText } from '../../../src/xlsx/zip/inPieces.js';
import type { Packed } from '../../../src/xlsx/zip/writeArchive.js';

/** A long text in which a character of four bytes lies over the border of two pieces, by so many bytes. */
const across = (by: number) => Buffer.from(`${'a'.repeat(bytesInTurn - by)}😀${'é'.repeat(bytesInTurn)}`);

/** What the platform's library unpacks, where size and check sum are those of it. */
function unpacked({ packed, size, crc }: Packed): Buffer {
  const bytes = zlib.inflateRawSync(packed);
  expect([size, crc]).toEqual([bytes.length, zlib.crc32(bytes)]);
  return bytes;
}

describe.each([
  ['portable', portableCodec],
  ["platform's", nodeCodec],
])('a long part, by the %s codec', (_, codec) => {
  const bytes = across(2);

  it('has the check sum of the whole', () => {
    expect(atOnce(checkSum(bytes, codec))).toBe(zlib.crc32(bytes));
  });

  it('becomes characters, with rests', () => {
    const characters = atOnce(codec.toCharacters(bytes));
    expect(characters === bytes.toString('latin1')).toBe(true);
    expect([...portableCodec.toCharacters(bytes)].length).toBe(Math.ceil(bytes.length / bytesInTurn));
  });

  it('is packed from its bytes and from the pieces of its text', () => {
    const text = bytes.toString('latin1');
    const pieces = [text.slice(0, 7), '', text.slice(7, 3 * packedInTurn), text.slice(3 * packedInTurn)];
    expect(unpacked(atOnce(packBytes(bytes, codec))).equals(bytes)).toBe(true);
    expect(unpacked(atOnce(packText(pieces, codec))).equals(bytes)).toBe(true);
  });

  it('is packed whatever its pieces are', () => {
    const character = fc.integer({ min: 0, max: 255 }).map((code) => String.fromCharCode(code));
    const pieces = fc.array(fc.string({ unit: character, maxLength: 300 }), { maxLength: 8 });
    fc.assert(
      fc.property(pieces, (texts) => {
        expect(unpacked(atOnce(packText(texts, codec))).toString('latin1')).toBe(texts.join(''));
      }),
    );
  });
});

it('rests after each piece that it packs', () => {
  const bytes = across(2);
  const pieces = Math.ceil(bytes.length / packedInTurn);
  expect([...packBytes(bytes, portableCodec)]).toHaveLength(pieces);
  expect([...packText([bytes.toString('latin1')], portableCodec)]).toHaveLength(pieces);
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
