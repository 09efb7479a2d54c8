import { expect, it } from 'vitest';
import { otherRowSentences } from '../../../src/core/say/otherRows.js';
import { rowRuns } from '../../../src/core/say/rowRuns.js';

it('rows that are no parts are named by what they are taken for', () => {
  expect(
    otherRowSentences([
      { row: 8, is: 'title' },
      { row: 31, is: 'total' },
      { row: 20, is: 'title' },
      { row: 21, is: 'title' },
    ]),
  ).toEqual([
    'Row 31 is taken as a total: not checked.',
    'Rows 8 and 20–21 are taken as subheads or notes: not checked.',
  ]);
});

it('rows beside each other are one run, and too many runs are counted', () => {
  expect(rowRuns([14, 16, 15, 20])).toBe('14–16 and 20');
  expect(rowRuns([7])).toBe('7');
  expect(rowRuns(Array.from({ length: 12 }, (_, at) => 2 * at))).toBe('0, 2, 4, 6, 8, 10, 12, 14 and 4 more');
});
