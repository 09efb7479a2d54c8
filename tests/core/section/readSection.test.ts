import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../src/core/inputError.js';
import type { LengthUnit } from '../../../src/core/quantity/units.js';
import { readSection } from '../../../src/core/section/readSection.js';
import { refusal, refusalText } from '../../support/refusal.js';

const read = (text: string, unit: LengthUnit = 'in') => readSection(text, 'Section', unit);

describe('readSection: arguments', () => {
  it.each([null, '', '  '])('refuses the blank cell %j', (value) => {
    expect(refusal(() => readSection(value, 'Section', 'in')).problem).toBe('the cell is blank.');
  });

  it.each([12, 0, true, Number.NaN])('refuses %j, which is no text', (value) => {
    expect(refusal(() => readSection(value, 'Section', 'in')).problem).toContain('is not a section');
  });

  it.each(['UBP 203x203x45', 'PG 36'])('recognizes %s and says it is not among those read', (text) => {
    expect(refusal(() => read(text)).problem).toContain(
      'is not among the sections read: plate, flat, angle, channel, round, square, tube, tee, beam',
    );
  });

  it.each(['W8X31', 'WT5x11', 'IPE200', 'HEA 100', 'S8x18.4'])('refuses %s: no press cuts beams', (text) => {
    expect(refusal(() => read(text)).problem).toBe(`'${text}' is sawn: no press station cuts beams.`);
  });

  it.each(['HSS4X4X1/4', 'tube 2x2x1/4', 'HSS4.000X0.250', 'PIPE2.375x0.154'])(
    'says that %s is sawn',
    (text) => {
      expect(refusal(() => read(text)).problem).toContain('is sawn: no press station cuts tubes');
    },
  );

  it('says that a tee is sawn', () => {
    expect(refusal(() => read('T3X3X3/8')).problem).toContain('is sawn: no press station cuts tees');
  });

  it.each([
    'x',
    'PL',
    'PL1/2',
    'PL1/2X',
    'PLX6',
    'PL1/2X6X12X3',
    '3x3x1/4',
    '45',
    'abc',
    'PL 1/2 by 6',
    'RB',
  ])('refuses %j', (text) => {
    expect(refusal(() => read(text)).code).toBe('invalid');
  });

  it('says which dimension an angle lacks', () => {
    expect(refusalText(() => read('L3x3'))).toBe(
      "Section: 'L3x3' lacks a dimension of the angle. Write leg x leg x thickness: L3X3X1/4 or L80x80x8.",
    );
  });

  it('refuses a number with two readings', () => {
    expect(refusal(() => read('PL1,500x6')).problem).toBe(
      "'PL1,500x6' is not a section: '1,500' may be 1.5 or 1500.",
    );
  });

  it('refuses dimensions in two units', () => {
    expect(refusal(() => read('PL1/2x150mm')).problem).toContain('mixes inches and mm');
  });

  it.each([
    ["PL2x6x1'-0", 'mm'],
    ['FB10x50x6 m', 'in'],
  ] as const)('refuses %s in a shop of %s: the length has a unit, the section has none', (text, unit) => {
    expect(refusal(() => read(text, unit)).problem).toContain('its section has none');
  });

  it.each(['C8X11', 'MC8X22.9', 'UPN101', 'PFC200', 'C200x17'])('refuses the unknown channel %s', (text) => {
    const failure = refusal(() => read(text));
    expect(failure.code).toBe('unknown');
    expect(failure.problem).toContain('not a channel in the table');
  });

  it('names near channels', () => {
    expect(refusal(() => read('C8X11')).allowed).toMatch(/^Did you mean C8X11\.5, /);
  });

  it('never throws anything but a refusal, and never gives a dimension that is not above zero', () => {
    const piece = fc.constantFrom(
      'PL',
      'L',
      'C8',
      'UPN',
      'x',
      'X',
      '*',
      '1/2',
      '3',
      '80',
      '.',
      ' ',
      '-',
      "'",
      '"',
      'mm',
      '0',
    );
    const text = fc.oneof(
      fc.string(),
      fc.array(piece, { maxLength: 14 }).map((pieces) => pieces.join('')),
    );
    fc.assert(
      fc.property(text, fc.constantFrom<LengthUnit>('in', 'mm'), (written, unit) => {
        try {
          const { section, lengthMm = 1 } = readSection(written, 'Section', unit);
          const sizes = Object.entries(section).filter(
            ([name]) => /Mm$/.test(name) && name !== 'rootRadiusMm',
          );
          for (const [, size] of sizes) expect(size).toBeGreaterThan(0);
          expect(lengthMm).toBeGreaterThan(0);
        } catch (error) {
          expect(error).toBeInstanceOf(InputError);
        }
      }),
      { numRuns: 1000 },
    );
  });
});

describe('readSection: limits', () => {
  it.each(['1', ' ', '-', 'x', '1/', "1'"])('refuses over-long runs of %j unread', (piece) => {
    const text = `PL${piece.repeat(100_000)}`;
    expect(refusal(() => read(text)).problem).toContain('is not a section');
    expect(refusal(() => read(text)).problem.length).toBeLessThan(80);
  });

  it('reads a text of 200 characters and refuses one of 201', () => {
    const spaced = `PL1/2X6${' '.repeat(193)}`;
    expect(spaced).toHaveLength(200);
    expect(read(spaced).section.kind).toBe('flat');
    expect(refusal(() => read(`${spaced} `)).problem).toContain('is not a section');
  });

  it.each([
    ['L80x80x8', 'in', '80 would be 80 inches of leg.'],
    ['PL 10x150', 'in', '10 would be 10 inches thick.'],
    ['10x40', 'in', '40 would be 40 inches wide.'],
    ['RD 25', 'in', '25 would be 25 inches thick.'],
    ['L3x3x.25', 'mm', '3 would be 3 mm of leg.'],
  ] as const)('refuses %s in a shop of %s as absurd', (text, unit, problem) => {
    const failure = refusal(() => read(text, unit));
    const other = unit === 'in' ? 'mm' : 'in';
    expect(failure.problem).toBe(problem);
    expect(failure.allowed).toContain(`Write "${text} ${other}", or add the shop cell or "${other}".`);
  });

  it('does not offer another unit where the text has one', () => {
    expect(refusal(() => read('L800x800x8 mm')).allowed).toMatch(/^Allowed: \S+ to 300 mm\.$/);
  });

  it.each([
    'PL1/64X6',
    'PL4X6',
    'FB1/8X3/8',
    'FB1X24',
    'L3/8X3/8X1/16',
    'L12X12X1',
    'RB1/8',
    'SQ12',
    'PL1X160',
  ])('reads %s, on a limit', (text) => {
    expect(read(text).section.designation).toBe(text);
  });

  it.each([
    'PL1/65X6',
    'PL4.01X6',
    'FB1/8X23/64',
    'FB1X24.1',
    'L23/64X1X1/16',
    'L12.1X12X1',
    'RB1/9',
    'SQ12.1',
    'PL1X161',
  ])('refuses %s, past a limit', (text) => {
    expect(refusal(() => read(text)).code).toBe('invalid');
  });

  it('refuses an angle as thick as its leg', () => {
    expect(read('L1X2X63/64').section.kind).toBe('angle');
    expect(refusal(() => read('L1X2X1')).problem).toContain('not less than its leg');
  });
});

describe('readSection: flats', () => {
  it.each([
    'PL1/2X6',
    'pl 1/2 x 6',
    'PLT1/2X6',
    'PLATE 1/2" x 6"',
    'PL 6 x 0.5',
    'PL½×6',
    'PL. 1/2*6',
    'PL.5X6',
  ])('reads %s as plate 1/2 × 6', (text) => {
    const { section } = read(text);
    expect(section).toMatchObject({ kind: 'flat', form: 'plate', designation: 'PL1/2X6' });
  });

  it.each(['FB1/2X4', 'FL 1/2x4', 'BAR 1/2 x 4', 'flat 4x1/2', 'flat bar 1/2x4', '1/2x4'])(
    'reads %s as bar 1/2 × 4',
    (text) => {
      expect(read(text).section).toMatchObject({ kind: 'flat', form: 'bar', designation: 'FB1/2X4' });
    },
  );

  it('reads the smaller dimension as the thickness', () => {
    expect(read('FB 150x10', 'mm').section).toMatchObject({ thicknessMm: 10, widthMm: 150 });
  });
});

describe('readSection: units', () => {
  it.each([
    ['PL10x150', 'mm', 10],
    ['PL10x150 mm', 'in', 10],
    ['PL 10 mm x 150 mm', 'in', 10],
    ['PL1/2x6', 'mm', 12.7],
    ['PL0.5"x6"', 'mm', 12.7],
    ['PL.5x6 in', 'mm', 12.7],
    ['PL10x150x300 mm', 'in', 10],
    ['PL2x6x12"', 'mm', 50.8],
  ] as const)('reads %s in a shop of %s', (text, unit, thicknessMm) => {
    expect(read(text, unit).section).toMatchObject({ kind: 'flat', thicknessMm });
  });
});

describe('readSection: angles, channels, bars', () => {
  it.each(['L3X3X1/4', 'l 3 x 3 x 1/4', 'angle 3x3x1/4', 'L3x3x.25', 'L3"x3"x1/4"'])('reads %s', (text) => {
    expect(read(text).section).toMatchObject({
      designation: 'L3X3X1/4',
      rootRadiusMm: 0,
      rootRadiusKnown: true,
    });
  });

  it('puts the longer leg first', () => {
    expect(read('L3X5X1/4').section).toMatchObject({ designation: 'L5X3X1/4', legAMm: 127 });
  });

  it('gives a metric angle the radius of its size, and says where it has none', () => {
    expect(read('L80x80x8', 'mm').section).toMatchObject({ rootRadiusMm: 10, rootRadiusKnown: true });
    expect(read('L150x100x10', 'mm').section).toMatchObject({ rootRadiusMm: 12, rootRadiusKnown: true });
    expect(read('L81x80x8', 'mm').section).toMatchObject({ rootRadiusMm: 0, rootRadiusKnown: false });
  });

  it.each([
    ['C8X11.5', 'C8X11.5'],
    ['c 8 x 11.50', 'C8X11.5'],
    ['channel 8x11.5', 'C8X11.5'],
    ['C8x13.7', 'C8X13.75'],
    ['C8x13.75', 'C8X13.75'],
    ['UPN100', 'UPN100'],
    ['upn 100', 'UPN100'],
    ['UNP 100', 'UPN100'],
  ])('finds %s by name in every shop', (text, designation) => {
    expect(read(text, 'in').section.designation).toBe(designation);
    expect(read(text, 'mm').section.designation).toBe(designation);
  });

  it.each([
    ['RB 1', 'in', 'RB1'],
    ['RD 25', 'mm', 'RB25'],
    ['round bar 1-1/4', 'in', 'RB1-1/4'],
    ['Ø25', 'mm', 'RB25'],
    ['SQ 3/4', 'in', 'SQ3/4'],
    ['square bar 20', 'mm', 'SQ20'],
  ] as const)('reads %s', (text, unit, designation) => {
    expect(read(text, unit).section.designation).toBe(designation);
  });
});

describe('readSection: a trailing length', () => {
  it.each([
    ["PL1/2X6X1'-0", 'in', 304.8],
    ['PL1/2X6X12', 'in', 304.8],
    ['PL10x150x300', 'mm', 300],
    ['L3x3x1/4x20\'-6 1/2"', 'mm', 6261.1],
    ['L80x80x8x6 m', 'mm', 6000],
    ['C8X11.5 x 20 ft', 'mm', 6096],
    ['C8X11.5x240', 'in', 6096],
    ['UPN100x6000', 'mm', 6000],
    ['RB 1 x 24', 'in', 609.6],
    ['SQ 20 x 600', 'mm', 600],
  ] as const)('is read from %s in a shop of %s', (text, unit, lengthMm) => {
    expect(read(text, unit).lengthMm).toBeCloseTo(lengthMm, 6);
  });

  it('is left out where none is written', () => {
    expect(read('PL1/2X6')).not.toHaveProperty('lengthMm');
  });

  it.each(['PL1/2X6X0', 'PL1/2X6X1/32', 'C8X11.5X4001'])('is refused out of range in %s', (text) => {
    expect(refusal(() => read(text)).problem).toContain('out of range');
  });
});
