// Orders in which sections are written besides word, then sizes.
import { describe, expect, it } from 'vitest';
import { readAnySection } from '../../../src/core/section/readAnySection.js';
import { sectionWords } from '../../../src/core/section/sectionWords.js';
import { refusal, refusalText } from '../../support/refusal.js';

const designation = (text: string, unit: 'in' | 'mm' = 'in') =>
  readAnySection(text, 'Section', unit).section.designation;

describe('a section with its word behind a size', () => {
  it.each([
    ['3/8 PL X 6', 'PL3/8X6'],
    ['PL 3/8 X 6', 'PL3/8X6'],
    ['3/8 x 6 PL', 'PL3/8X6'],
    ['3/8" plate x 6"', 'PL3/8X6'],
    ['1/2 FB x 3', 'FB1/2X3'],
    ['1/2 x 3 flat bar', 'FB1/2X3'],
    ['FLAT 1/2x3', 'FB1/2X3'],
    ['ROD 3/4', 'RB3/4'],
    ['3/4 RD', 'RB3/4'],
    ['3/4 rod', 'RB3/4'],
    ['3/4Ø', 'RB3/4'],
    ['RD 3/4', 'RB3/4'],
    ['RD BAR 3/4', 'RB3/4'],
    ['3/4 RD.', 'RB3/4'],
    ['SQ BAR 1', 'SQ1'],
    ['1 SQ BAR', 'SQ1'],
    ['1" SQ', 'SQ1'],
    ['BAR SQ 1', 'SQ1'],
    ['3x3x1/4 ANGLE', 'L3X3X1/4'],
  ])('%s is %s', (text, named) => {
    expect(designation(text)).toBe(named);
  });

  it.each([
    ['20 mm RD', 'in', 'RB20'],
    ['20 mm x 100 mm flat', 'in', 'FB20X100'],
    ['20 SQ', 'mm', 'SQ20'],
  ] as const)('%s in a shop of %s is %s', (text, unit, named) => {
    expect(designation(text, unit)).toBe(named);
  });

  it('keeps a trailing length', () => {
    expect(readAnySection("3/8 PL X 6 X 2'-0", 'Section', 'in').lengthMm).toBeCloseTo(609.6, 6);
    expect(readAnySection('1 SQ BAR X 12', 'Section', 'in').lengthMm).toBeCloseTo(304.8, 6);
  });

  it.each(['3/8 PL 6', '1 BAR', '3/8 PL X 6 PL', 'PL 3/8 PL X 6', '4x4x1/4 HSS', '8 C x 11.5', 'HR', 'LLV'])(
    'refuses %s',
    (text) => {
      expect(refusal(() => designation(text)).problem).toContain(`'${text}' is not a section`);
    },
  );

  it('is refused in the wrong unit with words that are read', () => {
    for (const text of ['1 SQ BAR', 'SQ BAR 1', '1 RD']) {
      const { allowed } = refusal(() => designation(text, 'mm'));
      const written = /Write "([^"]*)"/.exec(allowed)?.[1] ?? '';
      expect(designation(written, 'mm')).toMatch(/^(?:SQ|RB)1$/);
    }
    expect(refusal(() => designation('1 SQ BAR', 'mm')).allowed).toContain('Write "1 in SQ BAR", or add');
    expect(refusal(() => designation('1 SQ BAR', 'mm')).allowedInCell).toMatch(/Write "1 in SQ BAR"\.$/);
  });
});

describe('the words of European shops', () => {
  it.each([
    ['FLB 100x10', 'FB10X100'],
    ['Flach 100x10', 'FB10X100'],
    ['Flachstahl 100 x 10', 'FB10X100'],
    ['Plat 50x10', 'FB10X50'],
    ['BL 15x200', 'PL15X200'],
    ['Blech 15x200', 'PL15X200'],
    ['L80x8', 'L80X80X8'],
    ['Winkel 80x80x8', 'L80X80X8'],
    ['U 120', 'UPN120'],
    ['UNP-120', 'UPN120'],
    ['UPE 200', 'UPE200'],
    ['VKT 20', 'SQ20'],
    ['4KT 20', 'SQ20'],
    ['4 kt 20', 'SQ20'],
    ['Rund 20', 'RB20'],
    ['rond 20', 'RB20'],
  ])('%s is %s', (text, named) => expect(designation(text, 'mm')).toBe(named));

  it('keep a trailing length', () => {
    expect(readAnySection('BL 15x200x300', 'Section', 'mm')).toMatchObject({ lengthMm: 300 });
    expect(readAnySection('L80x8x6000', 'Section', 'mm')).toMatchObject({ lengthMm: 6000 });
  });
});

describe('a count in front of a section', () => {
  it.each([
    ['2 L3X3X1/4', 'may be a double angle or 2 pieces', 'Write L3X3X1/4, and 2 under Qty.'],
    ['2L3X3X1/4', 'may be a double angle or 2 pieces', 'Write L3X3X1/4, and 2 under Qty.'],
    ['(2) PL1/2X6', 'has a count in front', 'Write PL1/2X6, and 2 under Qty.'],
    ['4 pcs FB 1/2x4', 'has a count in front', 'Write FB 1/2X4, and 4 under Qty.'],
  ])('is refused: %s', (text, problem, allowed) => {
    const said = refusal(() => designation(text));
    expect(said.problem).toContain(problem);
    expect(said.allowed).toBe(allowed);
  });
});

describe('marks that change nothing', () => {
  it.each([
    ['L5X3X1/4 LLV', 'L5X3X1/4', ['LLV']],
    ['L5X3X1/4 llh', 'L5X3X1/4', ['LLH']],
    ['L5X3X1/4LLBB', 'L5X3X1/4', ['LLBB']],
    ["L5X3X1/4 LLV X 10'-0", 'L5X3X1/4', ['LLV']],
    ["L5X3X1/4X10'-0 LLV", 'L5X3X1/4', ['LLV']],
    ['HR FLAT 1/2x3', 'FB1/2X3', ['HR']],
    ['cf rd 3/4', 'RB3/4', ['CF']],
    ['CHK PL 1/4x48', 'PL1/4X48', ['CHK']],
    ['HR L3X3X1/4 LLV', 'L3X3X1/4', ['HR', 'LLV']],
  ])('%s is %s, and says so', (text, named, ignored) => {
    const read = readAnySection(text, 'Section', 'in');
    expect(read.section.designation).toBe(named);
    expect(read.ignored).toEqual(ignored);
  });

  it('are not said where there are none', () => {
    expect(readAnySection('L5X3X1/4', 'Section', 'in')).not.toHaveProperty('ignored');
  });

  it('belong to angles only', () => {
    expect(refusal(() => designation('PL1/2X6 LLV')).problem).toContain("'PL1/2X6 LLV' is not a section");
  });
});

describe('what is wrong with a section', () => {
  it('is told with the whole cell as typed', () => {
    expect(refusalText(() => designation('L3X3X1/4 FOO'))).toMatch(
      /^Section: 'L3X3X1\/4 FOO' is not a section: '1\/4 FOO' is not a length\. Write PL1\/2X6, /,
    );
    expect(refusal(() => designation('PL2-6X12')).problem).toMatch(
      /^'PL2-6X12' is not a section: '2-6' may be/,
    );
    expect(refusal(() => designation('C8X11.5X5001')).problem).toBe(
      "the length of 'C8X11.5X5001' is out of range.",
    );
  });

  it.each(['10 GA PL X 6', 'PL 10ga x 6', '16 gauge x 4', 'PL #10 x 6', 'GA 10 PL x 6'])(
    'is the gauge number in %s, with how to write the thickness',
    (text) => {
      expect(refusalText(() => designation(text))).toBe(
        `Section: '${text}' gives its thickness as a gauge number. Write the thickness in inches or mm: PL1/8X6 or PL 3x150 mm.`,
      );
      expect(designation('PL 3x150 mm')).toBe('PL3X150');
    },
  );
});

describe('sectionWords', () => {
  it('takes a text apart', () => {
    expect(sectionWords('hr 3/8 pl x 6')).toEqual({
      family: 'plate',
      word: 'pl',
      parts: ['3/8', '6'],
      ignored: ['HR'],
    });
    expect(sectionWords('1/2x4')).toMatchObject({ family: 'bar', word: '' });
    expect(sectionWords('1/2x4x6').family).toBeUndefined();
  });
});
