import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { headingSpan, listAround, rowsToGap } from '../../../src/taskpane/parts/list/listBounds.js';

/** Rows of text, a dot for a blank cell. */
function grid(...rows: string[]): CellValue[][] {
  return rows.map((row) => row.split(' ').map((cell) => (cell === '.' ? null : cell)));
}

describe('the list around a cell', () => {
  const groups = grid(
    'Mark Section Grade',
    'A1 PL3/8X6 A36',
    '. . .',
    'A2 PL3/8X6 .',
    '. . .',
    '. . .',
    'x y z',
  );

  it('reaches over one blank row, and ends before two', () => {
    const list = { top: 0, left: 0, bottom: 3, right: 2 };
    expect(listAround(groups, 1, 1)).toEqual(list);
    expect(listAround(groups, 3, 0)).toEqual(list);
  });

  it('is found from a blank row between its groups', () => {
    expect(listAround(groups, 2, 1)).toEqual({ top: 0, left: 0, bottom: 3, right: 2 });
  });

  it('ends at a blank column', () => {
    const cells = grid('Mark Section . Note', 'A1 PL3/8X6 . mine', 'A2 PL3/8X6 . .');
    expect(listAround(cells, 1, 0)).toEqual({ top: 0, left: 0, bottom: 2, right: 1 });
    expect(listAround(cells, 1, 3)).toEqual({ top: 0, left: 3, bottom: 1, right: 3 });
  });

  it('ends where a blank row and the headings of another list follow', () => {
    const cells = grid('Mark Section', 'A1 PL3/8X6', '. .', 'Tower .', 'Mark Section', 'B1 PL3/8X6');
    expect(listAround(cells, 1, 0)).toEqual({ top: 0, left: 0, bottom: 1, right: 1 });
    expect(listAround(cells, 5, 1)).toEqual({ top: 3, left: 0, bottom: 5, right: 1 });
  });

  it('goes on where its headings stand once more on the next page', () => {
    const cells = grid('Mark Section', 'A1 PL3/8X6', '. .', 'Page .', 'Mark Section', 'B1 PL3/8X6');
    expect(listAround(cells, 1, 0)).toEqual({ top: 0, left: 0, bottom: 5, right: 1 });
    expect(listAround(cells, 5, 1)).toEqual({ top: 0, left: 0, bottom: 5, right: 1 });
  });

  it.each([
    ['Page 2', 0],
    ['Sheet 2 of 3', 0],
    ['Sheet metal', 3],
    ['Page boy rail', 3],
  ])('with %s above the same headings, begins in row %i', (title, top) => {
    const cells = grid('Mark Section', 'A1 PL3/8X6', '. .', '. .', 'Mark Section', 'B1 PL3/8X6');
    cells[3] = [title, null];
    expect(listAround(cells, 5, 1)?.top).toBe(top);
  });

  it('keeps a title above its headings', () => {
    const cells = grid('Catwalk .', '. .', 'Mark Section', 'A1 PL3/8X6');
    expect(listAround(cells, 3, 1)).toEqual({ top: 0, left: 0, bottom: 3, right: 1 });
  });

  it('is none where nothing is', () => {
    expect(listAround(grid('. . .', '. . .', '. . x'), 0, 0)).toBeUndefined();
    expect(listAround(grid('a b'), 20, 20)).toBeUndefined();
  });
});

describe('the columns that headings span', () => {
  it.each([
    ['Mark Section Remarks . .', 0, 3],
    ['. Mark Section', 1, 3],
    ['No Mark Section . keep', 0, 3],
    ['Mark . Section Note . keep', 0, 4],
    ['. what this . other', 1, 3],
    ['. .', 0, 2],
  ])('%j', (headings, from, to) => {
    expect(headingSpan(grid(headings)[0] ?? [])).toEqual({ from, to });
  });
});

describe('rows without an end of their own', () => {
  it.each([
    ['all of them', 3, grid('a b', 'c d', 'e f')],
    ['over one blank row', 3, grid('a b', '. .', 'e f')],
    ['to the first of two blank rows', 1, grid('a b', '. .', '. .', 'e f')],
  ])('go %s', (_, rows, cells) => expect(rowsToGap(cells)).toBe(rows));
});
