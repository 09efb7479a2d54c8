import { describe, expect, it } from 'vitest';
import { mmPerInch } from '../../../src/core/quantity/units.js';
import { describeHole, type Hole } from '../../../src/core/tooling/hole.js';
import { readHole, readHoleSize } from '../../../src/core/tooling/readHole.js';
import { refusal, refusalText } from '../../support/refusal.js';

const inches = (text: string | number) => readHole(text, 'Hole', 'in');
const metric = (text: string | number) => readHole(text, 'Hole', 'mm');
const round = (inch: number): Hole => ({
  shape: 'round',
  diameterMm: expect.closeTo(inch * mmPerInch, 9) as number,
});

describe('readHole: arguments', () => {
  it.each([null, '', '   '])('asks for the text of a blank cell (%j)', (cell) => {
    expect(refusalText(() => readHole(cell, 'Hole', 'in'))).toMatch(
      /^Hole: the cell is blank\. Write 13\/16, /,
    );
  });

  it.each([
    'abc',
    'Ø',
    'sq',
    'slot',
    '13/16x',
    'x13/16',
    '1x2x3',
    'oval 1x2',
    'M20',
    'round 1x2',
    'sq 1x2',
    '-1',
    '0 @ 13/16',
  ])('refuses %j, which is no hole, quoting all of it', (text) => {
    expect(refusal(() => inches(text))).toMatchObject({
      argument: 'Hole',
      received: text,
      problem: `'${text}' is not a hole.`,
    });
  });

  it('refuses a truth value, a length that is none, and text too long to be a hole', () => {
    expect(refusalText(() => readHole(true, 'Hole', 'in'))).toContain('TRUE is not a length');
    expect(refusalText(() => inches('13/16 inc'))).toContain("'13/16 inc' is not a length");
    expect(refusalText(() => inches('1'.repeat(61)))).toContain('is not a hole');
  });
});

describe('readHole: two readings', () => {
  it.each([
    ['2-1/4', '2.25', '2 holes of 1/4', '2 @ 1/4'],
    ['2 1/4', '2.25', '2 holes of 1/4', 'Ø2-1/4'],
    ['4-13/16Ø', '4.8125', '4 holes of 13/16', '4 @ 13/16'],
  ])('refuses %s with both', (text, one, several, fix) => {
    const said = refusalText(() => inches(text));
    for (const words of [text, one, several, fix]) expect(said).toContain(words);
  });

  it('refuses a count or a slot with both', () => {
    expect(refusalText(() => metric('4x22'))).toBe(
      "Hole: '4x22' may be 4 holes of 22 or a slot. Write 4 @ 22 for 4 holes, or slot 4x22 for one slot.",
    );
    expect(refusalText(() => inches('2x1'))).toContain('Write 2 @ 1 for 2 holes, or slot 2x1 for one slot.');
  });

  it.each(['2 13/16 holes', '2-13/16 HOLES'])(
    'refuses %s: so many holes, or holes of a mixed size',
    (text) => {
      expect(refusalText(() => inches(text))).toContain('may be one hole of 2.8125 or 2 holes of 13/16');
    },
  );

  it.each(['2-6', '3-5'])('refuses %s, an unfinished size or a count', (text) => {
    expect(refusalText(() => inches(text))).toMatch(/may be an unfinished size or \d holes of \d/);
  });

  it('refuses a number with two readings', () => {
    expect(refusalText(() => metric('1,500'))).toMatch(/1\.5 or 1500/);
  });

  it('reads 1-3/16 as a mixed number: one hole is never a count', () => {
    expect(inches('1-3/16').hole).toEqual(round(1.1875));
    expect(inches('1-3/16').count).toBeUndefined();
  });

  it('refuses a slot as long as it is wide', () => {
    expect(refusalText(() => inches('slot 1x1'))).toContain('as long as it is wide');
  });
});

describe('readHole: a slip of the keyboard', () => {
  it.each(['13/16x4', '13/16 x 12'])('refuses %s: so many holes, or a slot so long', (text) => {
    expect(refusal(() => inches(text)).problem).toMatch(/ may be \d+ holes of 13\/16 or a slot \d+ long\.$/);
    expect(inches(`slot ${text}`).hole.shape).toBe('slot');
  });

  it.each(['rect 1\'x2"', "13/16'x1", '010', 'slot 2x250 mm', '4 @ 03/8'])('refuses %s', (text) => {
    expect(refusal(() => inches(text)).code).toBe('invalid');
  });
});

describe('readHole: limits', () => {
  it.each([1, 999])('takes %d holes', (count) => {
    expect(inches(`${count} @ 13/16`).count).toBe(count);
  });

  it('takes sizes from 1/16 in to 12 in', () => {
    for (const text of ['1/16', '12']) expect(inches(text).hole.shape).toBe('round');
    for (const text of ['1/32', '12-1/16']) expect(() => inches(text)).toThrow();
  });

  it('takes a fraction that became a date for what it was, in inches only', () => {
    expect(refusalText(() => inches(45_724))).toMatch(
      /looks like 3\/8 that the spreadsheet turned into a date/,
    );
    expect(refusalText(() => metric(45_000))).toContain(
      'it may also be a size that became the date 15 March 2023',
    );
    expect(refusalText(() => metric(45_000))).not.toContain('looks like');
  });
});

describe('readHoleSize', () => {
  const size = (text: string, shape: Hole['shape']) => readHoleSize(text, shape, 'Size', 'in');

  it.each([
    ['13/16', 'round', 'Ø13/16'],
    ['2-1/4', 'round', 'Ø2-1/4'],
    ['3/4', 'square', 'square 3/4'],
    ['7/8', 'hexagon', 'hexagon 7/8'],
    ['13/16 x 1-7/8', 'slot', 'slot 13/16 × 1-7/8'],
    ['1 x 4', 'rectangle', 'rectangle 1 × 4'],
    ['Ø13/16', 'round', 'Ø13/16'],
    ['13/16 dia', 'round', 'Ø13/16'],
    ['sq 3/4', 'square', 'square 3/4'],
  ] as const)('reads %s of a %s', (text, shape, described) => {
    expect(describeHole(size(text, shape), 'in')).toBe(described);
  });

  it.each([
    ['Abc', 'round'],
    ['1 x 2', 'round'],
    ['1', 'slot'],
    ['sq 1', 'round'],
    ['9'.repeat(61), 'round'],
  ] as const)('refuses %s of a %s as typed', (text, shape) => {
    const { problem, allowed } = refusal(() => size(text, shape));
    expect(problem).toMatch(new RegExp(`^'${text.slice(0, 40)}…?' is not a hole\\.$`));
    expect(allowed).toMatch(/^Write the size alone, /);
  });

  it('refuses a slot as long as it is wide', () => {
    expect(refusal(() => size('1 x 1', 'slot')).problem).toBe("'1 x 1' is a slot as long as it is wide.");
  });
});

describe('readHole: a count or a slot in mm', () => {
  it.each(['12x18', '12x13', '16x18', '22x26', '12 x 18 mm'])('refuses %s with both readings', (text) => {
    const [first = '', second = ''] = text.replace(/ /g, '').split('x');
    expect(refusal(() => metric(text)).problem).toMatch(/ may be \d+ holes of \d+(?: mm)? or a slot\.$/);
    expect(metric(`${first} @ ${second}`).count).toBe(Number(first));
    expect(metric(`slot ${text}`).hole.shape).toBe('slot');
  });

  it.each(['22x50', '18x40', '12mm x 18mm', 'LL 22x30', '13x16 slot'])('reads %s as a slot', (text) => {
    expect(metric(text)).toMatchObject({ hole: { shape: 'slot' } });
    expect(metric(text).count).toBeUndefined();
  });

  it('reads a round hole times a number where that is no slot', () => {
    expect(metric('Ø18 x 4')).toEqual({ hole: { shape: 'round', diameterMm: 18 }, count: 4 });
    expect(refusal(() => metric('Ø18x40'))).toMatchObject({
      problem: "'Ø18x40' may be 40 round holes or a slot 40 long.",
      allowed: 'Write 40 @ Ø18, or the slot without its mark.',
    });
  });

  it('shows examples in mm', () => {
    expect(refusal(() => metric('abc')).allowed).toBe(
      'Write 22, 22x50 (slot), sq 20, rect 20x40, hex 22 or 4 @ 22 (four holes).',
    );
  });

  it('takes the unit behind one side for both', () => {
    expect(metric('slot 1"x2').hole).toEqual({ shape: 'slot', widthMm: 25.4, lengthMm: 50.8 });
  });
});

describe('readHole: values', () => {
  it.each<[string, string, number | undefined]>([
    ['13/16', 'Ø13/16', undefined],
    ['.8125', 'Ø13/16', undefined],
    ['13/16"', 'Ø13/16', undefined],
    ['Ø13/16', 'Ø13/16', undefined],
    ['⌀ 13/16', 'Ø13/16', undefined],
    ['13/16 dia.', 'Ø13/16', undefined],
    ['⅞', 'Ø7/8', undefined],
    ['1 3/16', 'Ø1-3/16', undefined],
    ['sq 3/4', 'square 3/4', undefined],
    ['3/4 SQ.', 'square 3/4', undefined],
    ['rect 1x2', 'rectangle 1 × 2', undefined],
    ['Rectangle 2 × 1', 'rectangle 1 × 2', undefined],
    ['hex 7/8', 'hexagon 7/8', undefined],
    ['13/16x1-7/8', 'slot 13/16 × 1-7/8', undefined],
    ['13/16 X 1-7/8 slot', 'slot 13/16 × 1-7/8', undefined],
    ['slot 1-7/8x13/16', 'slot 13/16 × 1-7/8', undefined],
    ['4@13/16', 'Ø13/16', 4],
    ['4 x Ø13/16', 'Ø13/16', 4],
    ['4-Ø13/16', 'Ø13/16', 4],
    ['2 @ 13/16x1-7/8', 'slot 13/16 × 1-7/8', 2],
    ['2 off ø 13/16', 'Ø13/16', 2],
    ['(4) 13/16', 'Ø13/16', 4],
    ['(4x) 13/16', 'Ø13/16', 4],
    ['13/16 (4)', 'Ø13/16', 4],
    ['13/16 TYP', 'Ø13/16', undefined],
    ['13/16 (TYP.)', 'Ø13/16', undefined],
    ['4 HOLES 13/16', 'Ø13/16', 4],
    ['4 holes @ 13/16 dia', 'Ø13/16', 4],
    ['13/16 DIA HOLES', 'Ø13/16', undefined],
    ['13/16 DIA. THRU', 'Ø13/16', undefined],
    ['13/16 - 4 holes', 'Ø13/16', 4],
    ['13/16 dia 4 ea', 'Ø13/16', 4],
    ['13/16, 4 EA', 'Ø13/16', 4],
    ['13/16 4x', 'Ø13/16', 4],
    ['4EA .8125', 'Ø13/16', 4],
    ['2 @ .8125', 'Ø13/16', 2],
    ['13/16x1 SSL', 'slot 13/16 × 1', undefined],
    ['slotted 13/16x1-7/8 TYP', 'slot 13/16 × 1-7/8', undefined],
  ])('reads %s as %s', (text, described, count) => {
    const { hole, count: read } = inches(text);
    expect(describeHole(hole, 'in')).toBe(described);
    expect(read).toBe(count);
  });

  it.each([
    ['22', 'Ø22'],
    ['Ø22 mm', 'Ø22'],
    ['22x50', 'slot 22 × 50'],
    ['10x40 mm', 'slot 10 × 40'],
    ['0.866"', 'Ø22'],
    ['D22', 'Ø22'],
    ['D 22', 'Ø22'],
    ['4Ø18', 'Ø18'],
    ['4xD22', 'Ø22'],
    ['4 Stk Ø22', 'Ø22'],
    ['Bohrung 22', 'Ø22'],
    ['Langloch 22x50', 'slot 22 × 50'],
    ['LL 22x30', 'slot 22 × 30'],
    ['vkt 20', 'square 20'],
  ])('reads %s in a mm shop as %s', (text, described) => {
    expect(describeHole(metric(text).hole, 'mm')).toBe(described);
  });

  it('reads a number in the unit of the shop', () => {
    expect(inches(0.8125).hole).toEqual(round(0.8125));
    expect(metric(22).hole).toEqual({ shape: 'round', diameterMm: 22 });
  });
});
