// A cell with a question mark is not sure, and one with a mark of a note says what nobody reads, whatever else stands in it.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkRow } from '../../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../../src/core/row/headings/readHeadings.js';
import { noteOf } from '../../../../src/core/say/noteOf.js';
import { shopWith } from '../../../support/sampleShop.js';
import { type Cells, wholeRow } from '../support/randomRow.js';

const shop = shopWith();

function check(cells: Cells) {
  const result = checkRow(Object.values(cells), readHeadings(Object.keys(cells)), shop);
  if (result.blank) throw new Error('the row is blank');
  return result;
}

describe('a question mark in a cell', () => {
  it('is never read over, in whatever column and place it stands', () => {
    fc.assert(
      fc.property(
        wholeRow,
        fc.nat(),
        fc.nat(),
        fc.constantFrom('?', ' ?', '??', '？'),
        (row, which, at, mark) => {
          const cells: Cells = { ...row.given, ...row.places };
          const filled = Object.keys(cells).filter(
            (heading) => heading !== 'Press' && cells[heading] !== null,
          );
          const heading = filled[which % filled.length] ?? '';
          const text = String(cells[heading]);
          const cut = at % (text.length + 1);
          const doubtful = { ...cells, [heading]: `${text.slice(0, cut)}${mark}${text.slice(cut)}` };
          expect(check(doubtful).verdict, JSON.stringify(doubtful)).toBe('Check input');
        },
      ),
      { numRuns: 300 },
    );
  });

  it('says what to do', () => {
    expect(noteOf(check({ Section: 'FB 3/8x4', Grade: 'A36 ?', Length: 12 }), 'in')).toContain(
      "Grade: 'A36 ?' has a question mark. Write what is sure, or clear the cell.",
    );
  });
});

describe('a mark that points to a note', () => {
  it('is never read over, in whatever column it stands', () => {
    fc.assert(
      fc.property(
        wholeRow,
        fc.nat(),
        fc.constantFrom('*', ' *', '**', '†', '‡', ' §'),
        fc.boolean(),
        (row, which, mark, isBefore) => {
          const cells: Cells = { ...row.given, ...row.places };
          const filled = Object.keys(cells).filter(
            (heading) => heading !== 'Press' && cells[heading] !== null,
          );
          const heading = filled[which % filled.length] ?? '';
          const text = String(cells[heading]);
          const marked = { ...cells, [heading]: isBefore ? `${mark}${text}` : `${text}${mark}` };
          expect(check(marked).verdict, JSON.stringify(marked)).toBe('Check input');
        },
      ),
      { numRuns: 300 },
    );
  });

  it('says what to do', () => {
    expect(noteOf(check({ Section: 'FB 3/8x4', Grade: 'A36†', Length: 12 }), 'in')).toContain(
      "Grade: 'A36†' points to a note, which is not read. Write what the note says in its columns, and the cell without the mark.",
    );
  });
});
