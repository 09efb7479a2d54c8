import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holeLines } from '../../../../src/core/row/read/holeLines.js';
import { readPitch } from '../../../../src/core/row/read/readPitch.js';
import { refusalText } from '../../../support/refusal.js';
import { inInches, lengthsIn, sectionOf } from './support.js';

const holeMm = (13 / 16) * 25.4;

function context(count: number) {
  return {
    argument: 'Pitch',
    unit: 'in' as const,
    length: (text: string) => lengthsIn('in')(text),
    lines: holeLines({ count }, false, sectionOf('PL1/4X4'), undefined),
    leastApartMm: holeMm,
  };
}
const read = (text: string, count = 4) => inInches(readPitch(text, context(count)));
const refused = (text: string, count = 4) => refusalText(() => readPitch(text, context(count)));

describe('the pitch of four holes', () => {
  it.each([
    '3',
    '3"',
    '3 TYP',
    '3 typ.',
    '3 o.c.',
    '3" O/C',
    '3 c/c',
    '3 ctrs',
    '3, 3, 3',
    '3,3,3',
    '3;3;3',
    '3+3+3',
    '3@3',
    '3 @ 3',
    '3@3 = 9',
    '3@3"=9"',
    '3 SP @ 3',
    '3 spaces @ 3',
    '3 SPA. @ 3 = 9',
    '3 EQ SP @ 3 = 9',
    '3 equal spaces @ 3',
    '2@3 & 3',
    '2@3, 3 = 9',
    '2@3, 3 o.c.',
  ])('%s is 3 throughout', (text) => {
    expect(read(text)).toEqual({ pitch: 3 });
  });

  it.each<[string, number[]]>([
    ['3, 3-1/2, 3', [3, 3.5, 3]],
    ['3,3-1/2,3', [3, 3.5, 3]],
    ['2@3, 3-1/2', [3, 3, 3.5]],
    ['2@3-1/2, 3', [3.5, 3.5, 3]],
    ['1@3, 1@5, 1@6', [3, 5, 6]],
    ["2@3, 2'-6", [3, 3, 30]],
  ])('%s is a chain', (text, pitches) => {
    expect(read(text)).toEqual({ pitches });
  });

  it('running dimensions are refused with both readings', () => {
    expect(refused('3, 6, 9')).toBe(
      "Pitch: '3, 6, 9' may be spaces or distances from the first hole. Write 1@3, 1@6, 1@9 for spaces, or 3@3 for holes at those distances.",
    );
    expect(refused('0, 3, 6, 9')).toContain('starts at 0, as running dimensions do');
  });

  it('rising spaces that would put holes into each other as running dimensions are spaces', () => {
    expect(read('3, 3-1/2, 4')).toEqual({ pitches: [3, 3.5, 4] });
  });

  it('a total that is not the sum, and another number of spaces, are told', () => {
    expect(refused('3@3 = 10')).toContain('the spaces add up to 9 in, not 10 in');
    expect(refused('2@3 = 6-1/2', 3)).toContain('add up to 6 in, not 6-1/2 in');
    expect(refused('4@3')).toContain('4 spaces, so 5 holes in a line; the row says 4');
    expect(refused('3, 3')).toContain('2 spaces, so 3 holes in a line');
  });

  it.each([
    '3 3 3',
    '3-3-3',
    '3/3/3',
    '3x3',
    '@3',
    '=9',
    '3@3 =',
    '3@3-',
    '3@3/',
    '3, 3-, 3',
    '(3) 3',
    '9 total',
    '0@3',
    '3 4 typ',
  ])('%s is refused', (text) => {
    expect(refused(text)).toMatch(/^(?:Pitch|Cell): .+\. .+\.$/);
  });
});

describe('a comma between two digits', () => {
  it('is decimal where a chain of two has no place, and named where it has', () => {
    expect(read('3,5', 2)).toEqual({ pitch: 3.5 });
    expect(refused('3,5', 3)).toBe("Pitch: '3,5' may be 3.5 or two spaces of 3 and 5. Write 3.5, or 3; 5.");
    expect(refused('3,500', 2)).toContain('may be');
  });
});

describe('any chain', () => {
  it('of spaces written with @ reads back, and its total is checked', () => {
    const space = fc.integer({ min: 4, max: 80 }).map((eighths) => eighths / 8);
    fc.assert(
      fc.property(fc.array(space, { minLength: 2, maxLength: 8 }), (spaces) => {
        const text = spaces.map((each) => `1@${each}`).join(', ');
        const total = spaces.reduce((sum, each) => sum + each, 0);
        const same = spaces.every((each) => each === spaces[0]);
        const expected = same ? { pitch: spaces[0] } : { pitches: spaces };
        expect(read(text, spaces.length + 1)).toEqual(expected);
        expect(read(`${text} = ${total}`, spaces.length + 1)).toEqual(expected);
        expect(refused(`${text} = ${total + 1}`, spaces.length + 1)).toContain('add up to');
      }),
    );
  });
});
