import { describe, expect, it } from 'vitest';
import { readHoleCount } from '../../../../src/core/row/read/readHoleCount.js';
import { refusalText } from '../../../support/refusal.js';

const read = (cell: string | number) => readHoleCount(cell, 'Holes');

describe('a number of holes', () => {
  it.each([4, '4', '4 holes', '4 EA', '(4)', '4x', '4 PLCS', '4 places', '4 TYP', '4 total'])(
    '%s is 4',
    (cell) => {
      expect(read(cell)).toEqual({ count: 4 });
    },
  );

  it.each([
    '2 each end',
    '2 EACH  END',
    '2 ea end',
    '2-EA. END',
    '2 per end',
    '2 every end',
    '2 holes at each end',
    '2 @ each end',
    'each end 2',
    '2 E.E.',
    '2EE',
    '2 each end typ.',
  ])('%s is 4, 2 at each end', (cell) => {
    expect(read(cell)).toEqual({ count: 4, eachEnd: true });
  });

  it('at both ends may be at each or in all', () => {
    expect(refusalText(() => read('2 both ends'))).toBe(
      "Holes: '2 both ends' may be 2 at each end or 2 in all. Write 2 each end, or 2.",
    );
  });

  it.each([2.5, -1, 1000, '0', '2x2', '2+2', 'two', '2 each side', '2 rows of 2', '1,500', '500 each end'])(
    '%s is refused',
    (cell) => {
      expect(refusalText(() => read(cell))).toMatch(/^Holes: .+\. .+\.$/);
    },
  );
});
