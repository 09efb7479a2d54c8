import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { rowKindOf } from '../../../src/core/row/rowKind.js';

const names = ['Mark', 'Qty', 'Section', 'Remark', 'Grade', 'Length', 'Hole', 'Weight', 'Verdict', 'Note'];
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
    ['work', { Mark: 'All holes are standard unless noted' }],
    ['work', { Hole: '4 holes' }],
    ['work', { Hole: 'two slots each end' }],
    ['work', { Hole: '13/16', Weight: 2 }],
    ['work', { Remark: 'cope both ends' }],
    ['work', { Qty: 2, Section: 'slots 13/16 x 1-3/4' }],
    ['work', { Mark: 'w/', Section: 'cope both ends' }],
    ['total', { Mark: 'Subtotal', Qty: 12, Length: 512 }],
    ['total', { Section: 'TOTAL', Weight: 1250 }],
    ['total', { Mark: 'Summe', Qty: 4 }],
    ['headings', { Mark: 'Mark', Qty: 'Qty', Section: 'Section', Grade: 'Grade', Hole: 'Dia' }],
    ['headings', { Mark: 'Item', Section: 'Profile' }],
    ['units', { Length: '(in)', Hole: '(in)', Weight: 'lb' }],
    ['note', { Weight: 55 }],
    ['note', { Weight: 'see drawing' }],
    ['title', { Mark: '2nd floor handrail' }],
    ['title', { Section: 'STAIR 1' }],
    ['total', { Mark: 'Level 2', Section: 'TOTAL', Qty: 12 }],
    ['total', { Qty: 12, Remark: 'Total' }],
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
    ['a unit that is a mark', { Mark: 'M' }],
    ['a length in words', { Length: '3 feet' }],
    ['a mark beside work', { Mark: 'P4', Section: 'cope both ends' }],
    ['a hole beside a quantity', { Qty: 2, Hole: '13/16' }],
    ['a grade beside work', { Section: 'notched plate', Grade: 'A36' }],
    ['a length beside work', { Section: 'PLATE W/ HOLES', Length: 12 }],
    ['a section of words alone', { Section: 'PIPE 2 STD' }],
    ['a mark with a remark of a total', { Mark: 'P4', Qty: 2, Length: 36, Remark: 'Total 4 holes' }],
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

  it('the same by the columns that a check of the row is given, whatever stands beside them', () => {
    const all = ['Line', ...names];
    const wide = readHeadings(all);
    const given = readHeadings(all.slice(1, 8));
    const cell = fc.oneof(
      fc.constant(null),
      fc.constantFrom('Total', 'Mark', 'Hole', '(in)', 'CATWALK LEVEL 2', 'PL3/8X6', 'A36', '12', 'P4'),
      fc.integer({ min: 1, max: 40 }),
    );
    const seen = new Set<string>();
    fc.assert(
      fc.property(fc.array(cell, { minLength: all.length, maxLength: all.length }), (cells) => {
        const whole = rowKindOf(cells, wide);
        seen.add(whole);
        // What is noted beside a row without a part says nothing of it.
        const told = (is: string) => (is === 'note' ? 'blank' : is);
        expect(told(rowKindOf(cells.slice(1, 8), given))).toBe(told(whole));
      }),
      { numRuns: 2000 },
    );
    expect(seen.size).toBeGreaterThan(3);
  });
});
