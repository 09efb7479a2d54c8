import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tradeText } from '../../../src/core/quantity/tradeText.js';

describe('tradeText', () => {
  it.each([
    ['  PL 1/2  X 6 ', 'pl 1/2 x 6'],
    ['3×4*5', '3x4x5'],
    ['1½', '1 1/2'],
    ['2’−6”', '2\'-6"'],
    ["6''", '6"'],
    ['Ø22', 'ø22'],
    ['⌀22', 'ø22'],
    ['3⁄8', '3/8'],
    ['1–3/16', '1-3/16'],
    ['1³⁄₁₆', '1 3/16'],
    ['φ22', 'ø22'],
    ['∠3×3×¼', 'l 3x3x 1/4'],
    ['\u200B3/8\u00A0in', '3/8 in'],
    ['3\n3/4', '3; 3/4'],
    ['3\r\n½', '3; 1/2'],
    ['3\t.5', '3; .5'],
    ['PL 3/8\nx 6', 'pl 3/8 x 6'],
  ])('spells %j as %j', (text, spelled) => expect(tradeText(text)).toBe(spelled));

  it('leaves its own result alone, but for inch marks that meet anew', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const once = tradeText(text);
        fc.pre(!once.includes("''"));
        expect(tradeText(once)).toBe(once);
      }),
    );
  });
});
