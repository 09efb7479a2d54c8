import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { rowKindOf } from '../../../src/core/row/rowKind.js';

const names = ['Mark', 'Qty', 'Section', 'Grade', 'Length', 'Hole', 'Weight', 'Verdict', 'Note'];
const headings = readHeadings(names);
const row = (cells: Readonly<Record<string, CellValue>>) => names.map((name) => cells[name] ?? null);
const kind = (cells: Readonly<Record<string, CellValue>>) => rowKindOf(row(cells), headings);

describe('a row is taken for', () => {
  it.each([
    ['blank', {}],
    ['blank', { Hole: '-' }],
    ['title', { Mark: 'CATWALK LEVEL 2' }],
    ['title', { Section: 'Handrail' }],
    ['title', { Mark: 'STAIR 1', Verdict: '', Note: 'Not checked: taken as a subhead or note.' }],
    ['title', { Mark: 'All holes are standard unless noted' }],
    ['total', { Mark: 'Subtotal', Qty: 12, Length: 512 }],
    ['total', { Section: 'TOTAL', Weight: 1250 }],
    ['total', { Mark: 'Summe', Qty: 4 }],
    ['headings', { Mark: 'Mark', Qty: 'Qty', Section: 'Section', Grade: 'Grade', Hole: 'Dia' }],
    ['headings', { Mark: 'Item', Section: 'Profile' }],
    ['units', { Length: '(in)', Hole: '(in)', Weight: 'lb' }],
    ['note', { Weight: 55 }],
    ['note', { Weight: 'see drawing' }],
  ] as const)('%s: %o', (expected, cells) => {
    expect(kind(cells)).toBe(expected);
  });

  it.each([
    ['a mark alone', { Mark: 'P12' }],
    ['a mark of letters alone', { Mark: 'BA' }],
    ['a section alone', { Section: 'PL 3/8 x 6' }],
    ['a title beside a quantity', { Mark: 'HANDRAIL POST', Qty: 2 }],
    ['a total beside a grade', { Mark: 'Total', Grade: 'A36' }],
    ['a total beside a hole', { Mark: 'Sum', Hole: '13/16' }],
    ['a heading beside a size', { Section: 'Section', Grade: 'Grade', Hole: '13/16' }],
  ] as const)('a part: %s', (_, cells) => {
    expect(kind(cells)).toBe('part');
  });

  it('a part, whatever stands beside a section that can be read and a grade', () => {
    const cell = fc.oneof(
      fc.constant(null),
      fc.string({ maxLength: 12 }),
      fc.constantFrom('Total', 'Section', 'Hole', '(in)', 'CATWALK LEVEL 2'),
      fc.integer(),
    );
    fc.assert(
      fc.property(
        fc.constantFrom('FB 3/8x4', 'L3X3X1/4', 'PL10', 'C8X11.5'),
        fc.constantFrom('A36', 'S235', 'Stainless'),
        fc.array(cell, { minLength: names.length, maxLength: names.length }),
        (section, grade, cells) => {
          const given = cells.map((each, at) =>
            names[at] === 'Section' ? section : names[at] === 'Grade' ? grade : each,
          );
          expect(rowKindOf(given, headings)).toBe('part');
        },
      ),
    );
  });
});
