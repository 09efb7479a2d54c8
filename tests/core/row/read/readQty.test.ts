import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readQty } from '../../../../src/core/row/read/readQty.js';
import { refusalText } from '../../../support/refusal.js';

const read = (cell: string | number) => readQty(cell, 'Qty');

describe('a quantity', () => {
  it.each([4, '4', '4 EA', '4 pcs', '4 req', "4 REQ'D", '(4)'])('%s is 4 pieces', (cell) => {
    expect(read(cell)).toEqual({ qty: 4 });
  });

  it.each([
    '3R 1L',
    '3R, 1L',
    '3R/1L',
    '3R-1L',
    '3R+1L',
    '3R1L',
    '1L 3R',
    '3 RH 1 LH',
    '3 R.H., 1 L.H.',
    '3 R/H & 1 L/H',
    '3 right, 1 left',
    '3 right hand and 1 left hand',
    '3-R 1-L',
    'R3 L1',
    'RH 3, LH 1',
    '4 (3R 1L)',
    '3R 1L = 4',
    '3R 1L total 4',
  ])('%s is 3 right and 1 left', (cell) => {
    expect(read(cell)).toEqual({ qty: 4, hands: { right: 3, left: 1 } });
  });

  it('may be of one hand', () => {
    expect(read('2R')).toEqual({ qty: 2, hands: { right: 2, left: 0 } });
    expect(read('2 LH')).toEqual({ qty: 2, hands: { right: 0, left: 2 } });
  });

  it('whose total is another is refused', () => {
    expect(refusalText(() => read('5 (3R 1L)'))).toBe(
      "Qty: '5 (3R 1L)': the hands add up to 4, not 5. Correct one of them.",
    );
  });

  it.each([
    -1,
    2.5,
    1_000_001,
    '2R 2R',
    'R2 R2',
    '2R 2L 1',
    '2.5R',
    '2 R L',
    '2 rl',
    '3 rolls',
    '2 lbs',
    '4 lot',
    '2 pair',
    '2 AS 2 OPP',
    '1,000',
    'TBD',
    '-',
  ])('%s is refused', (cell) => {
    expect(refusalText(() => read(cell))).toMatch(/^Qty: .+\. .+\.$/);
  });

  it('of both hands reads back in each spelling', () => {
    const many = fc.integer({ min: 0, max: 9999 });
    const some = fc.integer({ min: 1, max: 9999 });
    fc.assert(
      fc.property(some, many, (right, left) => {
        const qty = { qty: right + left, hands: { right, left } };
        expect(read(`${right}R ${left}L`)).toEqual(qty);
        expect(read(`${left} LH/${right} RH`)).toEqual(qty);
        expect(read(`${right + left} (${right}R, ${left}L)`)).toEqual(qty);
      }),
    );
  });
});
