import { expect, it } from 'vitest';
import { rowsTold } from '../../../src/taskpane/parts/list/rowsTold.js';
import type { RowResult } from '../../../src/core/row/rowResult.js';

const part: RowResult = { blank: false, verdict: 'OK', route: [], findings: [], readings: [] };
const area = { sheet: 'Parts', row: 2, column: 0, rows: 6, columns: 4 };
const source = { key: 'cells', title: '', area };

it('hidden parts, rows that are no parts, and cells merged over rows are named by their rows on the sheet', () => {
  const results: RowResult[] = [
    part,
    { blank: true, is: 'title' },
    part,
    { blank: true },
    { blank: true, is: 'total' },
  ];
  const merged = [{ ...area, row: 3, rows: 2, columns: 1 }];
  const list = { source, area, headings: [], rows: [], arrangement: { merged, hidden: [3, 4, 5] } };
  expect(rowsTold(list, results)).toEqual([
    '2 hidden rows are checked too: 4 and 6.',
    'Row 8 is taken as a total: not checked.',
    'Row 5 is taken as a subhead or note: not checked.',
    'Merged over several rows: A4:A5. The value is read in the first row only; the rows below it are blank there. Where it holds for them too, fill it in.',
  ]);
});

it('nothing is said of a list with nothing to know of', () => {
  expect(rowsTold({ source, area, headings: [], rows: [] }, [part, { blank: true }])).toEqual([]);
});
