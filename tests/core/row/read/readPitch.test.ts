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
    '3x3',
    '3 x 3 = 9',
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

describe('the pitch of a list in mm', () => {
  const inMm = (count: number) => ({
    ...context(count),
    unit: 'mm' as const,
    length: (text: string) => lengthsIn('mm')(text),
    leastApartMm: 18,
  });
  const mm = (text: string, count: number) => readPitch(text, inMm(count));
  const refusedMm = (text: string, count: number) => refusalText(() => mm(text, count));

  it.each([
    ['4x120', 5, 120],
    ['4 x 120', 5, 120],
    ['4*120', 5, 120],
    ['4×120', 5, 120],
    ['4à120', 5, 120],
    ['4 à 120', 5, 120],
    ['1.120,0', 2, 1120],
    ['1.120,5 mm', 2, 1120.5],
    ['4x120=480', 5, 120],
    ['2@62,5', 3, 62.5],
    ['2 x 62,5', 3, 62.5],
    ['2@62,5=125', 3, 62.5],
    ['62,5', 2, 62.5],
    ['60-60', 3, 60],
  ])('%s of %s holes is %s throughout', (text, count, pitchMm) => {
    expect(mm(text, count)).toEqual({ pitchMm });
  });

  it.each([
    ['100-120-150', 4, [100, 120, 150]],
    ['100 - 120 - 150', 4, [100, 120, 150]],
    ['100–120–150', 4, [100, 120, 150]],
    ['100/120/150', 4, [100, 120, 150]],
    ['100; 120; 150', 4, [100, 120, 150]],
    ['62,5-70-62,5', 4, [62.5, 70, 62.5]],
    ['2x60; 75', 4, [60, 60, 75]],
    ['2x60 + 1x75', 4, [60, 60, 75]],
    ['2@62,5', 4, [62, 62, 5]],
  ])('%s of %s holes is a chain', (text, count, pitchesMm) => {
    expect(mm(text, count)).toEqual({ pitchesMm });
  });

  it.each([
    ['100-200-300', 4, 'may be spaces or distances from the first hole.'],
    ['4x120', 4, "'4x120' is 4 spaces, so 5 holes in a line; the row says 4."],
    ['120x4', 5, 'is 120 spaces'],
    ['100-120', 4, "'100-120' is 2 spaces, so 3 holes in a line; the row says 4."],
    ['sixty', 4, "'sixty' is not a pitch. Write 60, or the spaces one by one: 60; 75; 60 or 2@60; 75."],
    ['100/120', 3, 'is no fraction of an inch'],
    ['100 120 150', 4, 'would be 100 120 150 mm'],
    ['4 Felder', 5, 'is not a pitch.'],
  ])('%s of %s holes is refused', (text, count, told) => {
    expect(refusedMm(text, count)).toContain(told);
  });

  it('names both readings of two numbers that may be spaces and holes either way', () => {
    expect(refused('3x4', 4)).toBe("Pitch: '3x4' may be 3 spaces of 4 or 4 holes 3 apart. Write 3@4, or 3.");
    expect(mm('3x40', 4)).toEqual({ pitchMm: 40 });
  });

  it('never has other spaces than those that are written, in their order', () => {
    const space = fc.integer({ min: 30, max: 400 });
    const run = fc.record({ count: fc.integer({ min: 1, max: 4 }), space });
    const written = fc.constantFrom('@', 'x', ' x ', ' à ');
    fc.assert(
      fc.property(
        fc.array(run, { minLength: 1, maxLength: 4 }),
        written,
        fc.constantFrom('; ', ' + '),
        (runs, sign, mark) => {
          const spaces = runs.flatMap(({ count, space: each }) => Array.from({ length: count }, () => each));
          const text = runs.map(({ count, space: each }) => `${count}${sign}${each}`).join(mark);
          const read = mm(text, spaces.length + 1);
          const expected = spaces.map((each) => ('pitchMm' in read ? read.pitchMm : each));
          expect('pitchesMm' in read ? read.pitchesMm : expected, text).toEqual(spaces);
        },
      ),
    );
    fc.assert(
      fc.property(
        fc.array(space, { minLength: 2, maxLength: 6 }),
        fc.constantFrom('-', ' - ', '–'),
        (spaces, mark) => {
          let read;
          try {
            read = mm(spaces.join(mark), spaces.length + 1);
          } catch {
            return;
          }
          const each = 'pitchesMm' in read ? read.pitchesMm : spaces.map(() => read.pitchMm);
          expect(each).toEqual(spaces);
        },
      ),
    );
  });
});
