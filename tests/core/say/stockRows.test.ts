import { expect, it } from 'vitest';
import { stockRowSentences } from '../../../src/core/say/stockRows.js';

const others = [
  { list: 'Stairs', row: 8, is: 'total' },
  { list: 'Parts', row: 5, is: 'title' },
  { list: 'Parts', row: 9, is: 'title' },
] as const;
const hidden = [
  { list: 'Parts', row: 8 },
  { list: 'Stairs', row: 8 },
];

it('rows of one list are named by their numbers, those of several with their list', () => {
  expect(
    stockRowSentences({ lists: ['Parts'], hidden: hidden.slice(0, 1), others: others.slice(1) }),
  ).toEqual(['1 hidden row is planned too: 8.', 'Rows 5 and 9 are taken as subheads or notes: not planned.']);
  expect(stockRowSentences({ lists: ['Parts', 'Stairs'], hidden, others })).toEqual([
    'Parts: 1 hidden row is planned too: 8.',
    'Parts: Rows 5 and 9 are taken as subheads or notes: not planned.',
    'Stairs: 1 hidden row is planned too: 8.',
    'Stairs: Row 8 is taken as a total: not planned.',
  ]);
});

it('nothing is said where every row is a part that is seen', () => {
  expect(stockRowSentences({ lists: ['Parts', 'Stairs'], hidden: [], others: [] })).toEqual([]);
});
