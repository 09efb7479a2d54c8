import fc from 'fast-check';
import { inflateSync } from 'fflate';
import { createHash } from 'node:crypto';
import { crc32 } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { packPieces } from '../../src/headless/files/packPieces.js';

/** Texts of one character per byte, that come again or do not. */
const pieces = fc.array(
  fc.oneof(
    fc.string({ unit: fc.nat(255).map((code) => String.fromCharCode(code)), maxLength: 2000 }),
    fc.nat(70_000).map((length) => '<c r="A1"><v>12</v></c>'.repeat(Math.ceil(length / 22)).slice(0, length)),
  ),
  { minLength: 1, maxLength: 12 },
);

describe('a text packed piece by piece', () => {
  it('is one stream that a general library unpacks to the whole, with its size and check sum', async () => {
    await fc.assert(
      fc.asyncProperty(pieces, async (texts) => {
        const whole = Buffer.from(texts.join(''), 'latin1');
        const { packed, size, crc } = (await packPieces(texts)) ?? expect.fail('nothing is packed');
        expect(Buffer.from(inflateSync(packed)).equals(whole)).toBe(true);
        expect({ size, crc }).toEqual({ size: whole.length, crc: crc32(whole) });
      }),
      { numRuns: 200 },
    );
  });

  it('refers back over the ends of pieces', async () => {
    // A digest of its place for each piece: nothing in it comes again.
    const digest = (at: number) => createHash('sha256').update(String(at)).digest().toString('latin1');
    const random = Array.from({ length: 500 }, (_, at) => digest(at)).join('');
    const packed = await packPieces([random, random, random]);
    expect(packed?.packed.length).toBeLessThan(1.2 * ((await packPieces([random]))?.packed.length ?? 0));
  });

  it('is nothing where there is no piece', async () => {
    expect(await packPieces([])).toBeUndefined();
  });
});
