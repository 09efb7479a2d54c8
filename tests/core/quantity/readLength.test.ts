import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../../src/core/inputError.js';
import { type LengthKindName, lengthKinds } from '../../../src/core/quantity/lengthKind.js';
import { readLength } from '../../../src/core/quantity/readLength.js';
import type { LengthUnit } from '../../../src/core/quantity/units.js';
import { refusal, refusalText } from '../../support/refusal.js';

const kinds = Object.keys(lengthKinds) as LengthKindName[];
const anyUnit = fc.constantFrom<LengthUnit>('in', 'mm');
const anyKind = fc.constantFrom(...kinds);

/** The length, or undefined where it is refused; anything else fails the test. */
function lengthOrRefusal(value: string | number | boolean | null, unit: LengthUnit, kind: LengthKindName) {
  try {
    return readLength(value, 'Length', unit, kind);
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    return undefined;
  }
}

describe('readLength: arguments', () => {
  it.each([null, '', '   ', '\t\n'])('refuses the blank cell %j', (value) => {
    expect(refusalText(() => readLength(value, 'Thickness', 'in', 'thickness'))).toBe(
      'Thickness: the cell is blank. Write 3/8, 9.5 mm or 0.375.',
    );
  });

  it.each([true, false, Number.NaN, Infinity, -Infinity])('refuses %j', (value) => {
    expect(refusal(() => readLength(value, 'Length', 'in')).problem).toContain('is not a length');
  });

  it('says in one sentence what was read and how to fix it', () => {
    expect(refusalText(() => readLength('3/8 inc', 'Thickness', 'in', 'thickness'))).toBe(
      "Thickness: '3/8 inc' is not a length. Write 3/8, 9.5 mm or 0.375.",
    );
  });

  it('refuses text and number of zero and below', () => {
    for (const value of [0, -1, '0', '0 mm']) {
      expect(refusal(() => readLength(value, 'Length', 'mm')).problem).toContain('is not above zero');
    }
  });

  it('gives a length above zero or a refusal for any text', () => {
    const piece = fc.constantFrom(
      '1',
      '3/8',
      '0',
      '9',
      ' ',
      '-',
      "'",
      '"',
      'mm',
      'in',
      'ft',
      'm',
      '.',
      ',',
      '/',
      '½',
    );
    const text = fc.oneof(
      fc.string(),
      fc.string({ unit: 'binary' }),
      fc.array(piece, { maxLength: 12 }).map((pieces) => pieces.join('')),
    );
    fc.assert(
      fc.property(text, anyUnit, anyKind, (written, unit, kind) => {
        const lengthMm = lengthOrRefusal(written, unit, kind);
        if (lengthMm === undefined) return;
        expect(lengthMm).toBeGreaterThanOrEqual(lengthKinds[kind].leastMm);
        expect(lengthMm).toBeLessThanOrEqual(lengthKinds[kind].greatestMm);
      }),
      { numRuns: 2000 },
    );
  });

  it('gives a length within its kind or a refusal for any number', () => {
    fc.assert(
      fc.property(fc.double(), anyUnit, anyKind, (value, unit, kind) => {
        const lengthMm = lengthOrRefusal(value, unit, kind);
        if (lengthMm !== undefined) expect(lengthMm).toBeGreaterThanOrEqual(lengthKinds[kind].leastMm);
      }),
    );
  });

  it('reads a number and the same number as text alike', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 4_000_000 }), anyUnit, anyKind, (thousandths, unit, kind) => {
        const value = thousandths / 1000;
        // Three digits behind a point have two readings in mm, see below.
        fc.pre(unit === 'in' || !/\.\d{3}$/.test(String(value)));
        expect(lengthOrRefusal(String(value), unit, kind)).toBe(lengthOrRefusal(value, unit, kind));
      }),
    );
  });
});

describe('readLength: limits', () => {
  it.each(['1', ' ', '-', '1/', '1-', "1'", '1,', '.'])('refuses 100,000 times %j by its length', (piece) => {
    const text = `1${piece.repeat(100_000)}1`;
    const failure = refusal(() => readLength(text, 'Length', 'in'));
    expect(failure.problem).toContain('is not a length');
    expect(failure.problem.length).toBeLessThan(80);
  });

  it('reads a text of 60 characters and refuses one of 61', () => {
    const text = `1${' '.repeat(56)}mm`;
    expect(readLength(`${text} `, 'Length', 'in', 'distance')).toBe(1);
    expect(refusal(() => readLength(`${text}  `, 'Length', 'in', 'distance')).problem).toContain(
      'is not a length',
    );
  });

  it.each(kinds)('reads a %s on both ends of its range and refuses what lies past them', (kind) => {
    const { leastMm, greatestMm } = lengthKinds[kind];
    expect(readLength(leastMm, 'Length', 'mm', kind)).toBe(leastMm);
    expect(readLength(greatestMm, 'Length', 'mm', kind)).toBe(greatestMm);
    expect(refusal(() => readLength(leastMm * 0.999, 'Length', 'mm', kind)).problem).toContain('would be');
    expect(refusal(() => readLength(greatestMm * 1.001, 'Length', 'mm', kind)).problem).toContain('would be');
    expect(refusal(() => readLength(`${greatestMm * 1.001} mm`, 'Length', 'mm', kind)).problem).toContain(
      'out of range',
    );
  });

  it('refuses a number that is absurd in the unit of the shop and offers the other', () => {
    const failure = refusal(() => readLength(22, 'Hole', 'in', 'hole'));
    expect(failure.problem).toBe('22 would be 22 inches.');
    expect(failure.allowed).toContain('Write "22 mm", or add the shop cell or "mm".');
    expect(failure.allowedInCell).toBe('Allowed: 1/16 to 12 in. Write "22 mm".');
    expect(refusal(() => readLength('0.75', 'Hole', 'mm', 'hole')).allowed).toBe(
      'Allowed: 1.6 to 300 mm. Write "0.75 in", or add the shop cell or "in".',
    );
  });
});

describe('readLength: a comma', () => {
  it.each([
    ['1,5', 1.5],
    ['12,50', 12.5],
    ['1,2345', 1.2345],
    ['1,234.5', 1234.5],
    ['1.234,5', 1234.5],
  ] as const)('reads %s, which has one reading, in both units', (text, value) => {
    expect(readLength(text, 'Length', 'mm', 'distance')).toBeCloseTo(value, 9);
    expect(readLength(text, 'Length', 'in', 'length')).toBeCloseTo(value * 25.4, 9);
    expect(readLength(`${text} mm`, 'Length', 'in', 'distance')).toBeCloseTo(value, 9);
  });

  it.each(['1,500', '12,000', '1,500 mm', '1,500"'])('refuses %s with both its readings', (text) => {
    for (const unit of ['in', 'mm'] as const) {
      expect(refusal(() => readLength(text, 'Length', unit)).problem).toMatch(/ may be [\d.]+ or \d+\.$/);
    }
  });

  it.each(['1,5/8', '1,', '1,2,3', '1, 5', ',5'])('refuses %s, which is no number', (text) => {
    expect(refusal(() => readLength(text, 'Length', 'in')).problem).toBe(`'${text}' is not a length.`);
  });
});

describe('readLength: the date trap', () => {
  const small = ['thickness', 'hole', 'leg', 'bolt', 'width', 'distance'] as const;

  it.each(small)('holds for a %s in inches', (kind) => {
    for (const value of [10_959, 45_721, 60_267, '45721']) {
      const failure = refusal(() => readLength(value, 'Cell', 'in', kind));
      expect(failure.problem).toContain('turned into a date');
    }
  });

  it('names the size that was typed where only one turns into the date', () => {
    const fraction = refusal(() => readLength(45_724, 'Thickness', 'in', 'thickness'));
    expect(fraction.problem).toBe('45724 looks like 3/8 that the spreadsheet turned into a date.');
    expect(fraction.allowed).toBe('Format the cell as text and type 3/8 again.');
    const mixed = refusal(() => readLength(42_370, 'Hole', 'in', 'hole'));
    expect(mixed.problem).toBe('42370 looks like 1-1/16 that the spreadsheet turned into a date.');
    expect(mixed.allowed).toBe('Format the cell as text and type 1-1/16 again.');
  });

  it('names every size that turns into the date, and takes none for the right one', () => {
    const { problem, allowed } = refusal(() => readLength(42_372, 'Edge', 'in', 'distance'));
    expect(problem).toBe(
      '42372 is a date, 3 January 2016: any of 1-3/16, 3-1/16, turned into a date by the spreadsheet.',
    );
    expect(allowed).toBe("Write the size as text, for example '1-3/16.");
  });

  it('says so where no size turns into the date', () => {
    const { problem, allowed } = refusal(() => readLength(45_721, 'Pitch', 'in', 'distance'));
    expect(problem).toBe(
      '45721 is a date, 5 March 2025: a size that cannot be told, turned into a date by the spreadsheet.',
    );
    expect(allowed).toBe("Write the size as text, for example '1-1/16.");
  });

  it('ends at both ends of its range', () => {
    for (const value of [10_958, 60_268, 45_721.5]) {
      expect(refusal(() => readLength(value, 'Cell', 'in', 'hole')).problem).not.toContain('date');
    }
  });

  it('never names a size for a length, but says that it may be a date', () => {
    const { problem, allowed } = refusal(() => readLength(45_724, 'Length', 'in'));
    expect(problem).toBe(
      '45724 would be 45724 inches; it may also be a length that became the date 8 March 2025.',
    );
    expect(allowed).toMatch(/ If it became a date, type it again as text\.$/);
    expect(refusal(() => readLength(10_958, 'Length', 'in')).problem).toBe('10958 would be 10958 inches.');
  });

  it('in mm says of a size out of range that it may be a date, without a guess at what was typed', () => {
    expect(readLength(12_000, 'Length', 'mm')).toBe(12_000);
    for (const kind of small) {
      const { problem, allowed } = refusal(() => readLength(46_024, 'Cell', 'mm', kind));
      expect(problem).toBe(
        '46024 would be 46024 mm; it may also be a size that became the date 2 January 2026.',
      );
      expect(allowed).toMatch(/ If it became a date, type it again as text\.$/);
      expect(`${problem} ${allowed}`).not.toContain('1/2');
    }
  });

  it('in mm takes a number that a length can be for what it is', () => {
    expect(readLength(46_000, 'Length', 'mm')).toBe(46_000);
    expect(readLength(28_125, 'Length', 'mm')).toBe(28_125);
    expect(readLength('46024', 'Length', 'mm')).toBe(46_024);
    expect(readLength(12_000, 'Edge', 'mm', 'distance')).toBe(12_000);
    expect(refusal(() => readLength(10_958, 'Hole', 'mm', 'hole')).problem).toBe('10958 would be 10958 mm.');
  });
});

describe('readLength: a length in mm that may be a date', () => {
  it.each([
    [46_024, '2 January 2026'],
    [36_678, '1 June 2000'],
  ])('refuses %d with both readings', (value, date) => {
    expect(refusal(() => readLength(value, 'Length', 'mm'))).toMatchObject({
      problem: `${value} may be a length that became the date ${date}, or ${value} mm.`,
      allowed: `Type it again as text, or write "${value} mm".`,
    });
    expect(readLength(`${value} mm`, 'Length', 'mm')).toBe(value);
  });
});

describe('readLength: a point that may part thousands', () => {
  it.each([
    ['6.000', '6 or 6000'],
    ['15.000', '15 or 15000'],
    ['2.500 mm', '2.5 mm or 2500 mm'],
  ])('refuses %s in mm with both readings', (text, readings) => {
    expect(refusal(() => readLength(text, 'Length', 'mm'))).toMatchObject({
      problem: `'${text}' may be ${readings}.`,
      allowed: `Write ${readings}.`,
    });
  });

  it('asks for the thousands alone where the other is too small for the size', () => {
    expect(refusal(() => readLength('1.250', 'Length', 'mm'))).toMatchObject({
      problem: "'1.250' may be 1.25 or 1250.",
      allowed: 'Write 1250.',
    });
  });

  it('has one reading where the other can be no size, in meters and in inches', () => {
    expect(readLength('22.000', 'Hole', 'mm', 'hole')).toBe(22);
    expect(readLength('150.000', 'Length', 'mm')).toBe(150);
    expect(readLength('0.500', 'Edge', 'mm', 'distance')).toBe(0.5);
    expect(readLength('6.000 m', 'Length', 'mm')).toBe(6000);
    expect(readLength('6.000', 'Length', 'in')).toBeCloseTo(152.4, 9);
    expect(readLength('6.00', 'Length', 'mm')).toBe(6);
  });

  it('takes no two numbers for one that a line break or a tab parts', () => {
    const whole = fc.integer({ min: 1, max: 999 });
    const rest = fc.constantFrom('3/4', '1/2', '½', '250', '000', '.5');
    const between = fc.constantFrom('\n', '\r\n', '\t', ' \n ', '\u2028');
    fc.assert(
      fc.property(whole, between, rest, anyUnit, anyKind, (first, gap, second, unit, kind) => {
        const failure = refusal(() => readLength(`${first}${gap}${second}`, 'Length', unit, kind));
        expect(failure.problem).toMatch(/ stands on two lines, so it may be two lengths\.$/);
        expect(failure.allowed).toBe('Write one length on one line.');
      }),
    );
  });

  it('reads spaces that part thousands in mm only', () => {
    expect(readLength('6 000', 'Length', 'mm')).toBe(6000);
    expect(readLength('12\u202F500 mm', 'Length', 'in')).toBe(12_500);
    expect(refusal(() => readLength('1 000', 'Length', 'in')).problem).toBe("'1 000' is not a length.");
  });

  it('refuses an apostrophe that may part thousands', () => {
    for (const unit of ['in', 'mm'] as const)
      expect(refusal(() => readLength("1'000", 'Length', unit))).toMatchObject({
        problem: "'1'000' may be 1000 or 1 ft and 000 in.",
        allowed: 'Write 1000, or feet and inches as 1\'-6".',
      });
  });
});

describe('readLength: fractions', () => {
  it.each([
    ['11/2', "'11/2' may be 1-1/2 or 5-1/2.", 'Write 1-1/2 or 5-1/2.'],
    ["1'-11/2", "11/2 in '1'-11/2' may be 1-1/2 or 5-1/2.", 'Write 1-1/2 or 5-1/2.'],
    ['113/16', "'113/16' may be 1-13/16 or 11-3/16 or 7-1/16.", 'Write 1-13/16 or 11-3/16 or 7-1/16.'],
    ['9/8', "'9/8' is more than 1.", 'Write 1-1/8.'],
    ['16/8', "'16/8' is more than 1.", 'Write 2.'],
  ])('%s lost a space or is more than 1, and is refused with every reading', (text, problem, allowed) => {
    expect(refusal(() => readLength(text, 'Length', 'in'))).toMatchObject({ problem, allowed });
  });

  it.each(['3/6', '1/3', '5/10', '3/12', '0/8', '⅓'])('%s is no fraction of an inch', (text) => {
    expect(refusal(() => readLength(text, 'Length', 'in')).problem).toMatch(/is no fraction of an inch\.$/);
  });

  it.each([
    ['1/2', '12.7'],
    ['1-3/16', '30.16'],
    ['½', '12.7'],
  ])('%s by itself is refused in a shop in mm, with both ways to write it', (text, mm) => {
    expect(refusal(() => readLength(text, 'Hole', 'mm', 'hole'))).toMatchObject({
      problem: `'${text}' is a fraction of an inch, and bare sizes are in mm here.`,
      allowed: `Write ${text} in or ${mm}.`,
    });
    expect(readLength(`${text} in`, 'Hole', 'mm', 'hole')).toBe(readLength(text, 'Hole', 'in', 'hole'));
  });
});

describe('readLength: invisible characters', () => {
  it.each(['\u200B3/8', '3/8\uFEFF', '\u202A3/8\u202C', '\u00AD 3/8', '3\u00A0/8'.replace('\u00A0', '')])(
    'reads %j as 3/8',
    (text) => expect(readLength(text, 'Edge', 'in', 'distance')).toBeCloseTo(9.525, 9),
  );

  it('names one between two digits, where a dash may be lost', () => {
    expect(refusal(() => readLength('1\u00AD3/16', 'Edge', 'in', 'distance')).problem).toBe(
      "'1[U+00AD]3/16' is not a length.",
    );
  });
});

describe('readLength: values', () => {
  it.each<[string | number, LengthUnit, number]>([
    ['3/8', 'in', 9.525],
    [0.375, 'in', 9.525],
    ['.375', 'in', 9.525],
    ['1-3/16', 'in', 30.1625],
    ['1 3/16"', 'mm', 30.1625],
    ['1 3/16 in', 'mm', 30.1625],
    ['2\'-6 1/2"', 'mm', 774.7],
    ["2'6", 'mm', 762],
    ["2'", 'mm', 609.6],
    ['2 ft 6 in', 'mm', 762],
    ['1-0 3/8', 'in', 314.325],
    ['1-0-3/8', 'in', 314.325],
    ['0-6"', 'in', 152.4],
    ['12 mm', 'in', 12],
    ['12mm', 'in', 12],
    ['1.2 cm', 'in', 12],
    ['6 m', 'in', 6000],
    ['1,5', 'in', 38.1],
    ['12,000.5', 'mm', 12_000.5],
    ['1.234.567,5 mm', 'mm', Number.NaN],
    ['½', 'in', 12.7],
    ['1½', 'in', 38.1],
    ['1 ½″', 'mm', 38.1],
    [40, 'mm', 40],
  ])('reads %j in a shop of %s', (value, unit, lengthMm) => {
    const read = lengthOrRefusal(value, unit, 'length');
    if (Number.isNaN(lengthMm)) expect(read).toBeUndefined();
    else expect(read).toBeCloseTo(lengthMm, 9);
  });

  it.each([
    ['1,500', "'1,500' may be 1.5 or 1500.", 'Write 1.5 or 1500.'],
    ['2-6', "'2-6' may be 2 ft 6 in or an unfinished fraction.", 'Write 2\'-6" or the whole fraction.'],
  ])('refuses %s with both readings', (text, problem, allowed) => {
    expect(refusal(() => readLength(text, 'Length', 'in'))).toMatchObject({ problem, allowed });
  });

  it.each([
    "2'-13",
    '3/0',
    '1/2/3',
    '5 mm 3',
    '--3',
    '3 4',
    '1..2',
    '1e3',
    '0x10',
    "6''6''",
    '3/8/',
    'mm',
    '1-',
  ])('refuses %j', (text) => {
    expect(refusal(() => readLength(text, 'Length', 'in')).code).toBe('invalid');
  });
});

describe('a word of a drawing behind a length', () => {
  it.each([
    ['12 REF', 'REF'],
    ['2\'-6 1/2" typ.', 'typ.'],
    ['12LG', 'LG'],
  ])('%s: it is named', (text, word) => {
    expect(refusalText(() => readLength(text, 'Length', 'in'))).toBe(
      `Length: '${text}' is more than a length: take '${word}' off. Write 3/8, 9.5 mm or 0.375.`,
    );
  });
});
