import { describe, expect, it } from 'vitest';
import { moveFormula } from '../../../src/sheet/formula/moveFormula.js';

describe('a formula read from another cell', () => {
  it.each([
    ['A1+B2', 2, 1, 'B3+C4'],
    ['$A1+B$2+$C$3', 2, 1, '$A3+C$2+$C$3'],
    ['SUM(A1:B9)', 1, 0, 'SUM(A2:B10)'],
    ['SUM(A:A)+SUM($B:C)', 5, 1, 'SUM(B:B)+SUM($B:D)'],
    ['SUM(1:1)+SUM($2:3)', 1, 4, 'SUM(2:2)+SUM($2:4)'],
    ['"A1"&A1', 1, 0, '"A1"&A2'],
    ['"say ""A1"""&A1', 1, 0, '"say ""A1"""&A2'],
    ["'A1 it''s'!A1+Shop!B2", 1, 1, "'A1 it''s'!B2+Shop!C3"],
    ["Parts[[#This Row],[A1]]+Parts[it''s A1]", 3, 0, "Parts[[#This Row],[A1]]+Parts[it''s A1]"],
    ['_xldudf_TONROW_HOLEMIN(A1,"A36",ShopStamp)', 1, 0, '_xldudf_TONROW_HOLEMIN(A2,"A36",ShopStamp)'],
    ['LOG10(A1)+ATAN2(A1,B1)', 1, 0, 'LOG10(A2)+ATAN2(A2,B2)'],
    ['A1.B+x_A1+ÄA1', 1, 0, 'A1.B+x_A1+ÄA1'],
    ['1.5E10+A1', 1, 0, '1.5E10+A2'],
    ['A1', 0, 0, 'A1'],
  ])('%s, %i down and %i right, is %s', (text, down, right, moved) => {
    expect(moveFormula(text, down, right)).toBe(moved);
  });

  it('goes round at the edges of a sheet, as shared formulas do', () => {
    expect(moveFormula('A1', -1, -1)).toBe('XFD1048576');
  });
});
