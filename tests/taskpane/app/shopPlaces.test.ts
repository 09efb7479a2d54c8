import { describe, expect, it } from 'vitest';
import { shopPlaces } from '../../../src/taskpane/shared/shopPlaces.js';

const places = (inside: string) => shopPlaces(`=TONROW.SHOP(${inside})`, 'Shop');

describe('the places a SHOP formula names', () => {
  it('are its tables, whatever they are called', () => {
    expect(places('Machines[[#Headers],[#Data]],Werkzeug[#All]')).toEqual([
      { table: 'Machines' },
      { table: 'Werkzeug' },
    ]);
  });
  it('are names and cells as well, on the sheet of the shop cell where none is said', () => {
    expect(places("MyPresses,'Old, data'!$A$1:$B$9,C3:D4")).toEqual([
      { name: 'MyPresses' },
      { sheet: 'Old, data', row: 0, column: 0, rows: 9, columns: 2 },
      { sheet: 'Shop', row: 2, column: 2, rows: 2, columns: 2 },
    ]);
  });
  it('keep their order where one is left out', () => {
    expect(places('Presses[#All],,Grades[#All]')).toEqual([
      { table: 'Presses' },
      undefined,
      { table: 'Grades' },
    ]);
  });
  it('are read of the form in which files hold the call', () => {
    expect(shopPlaces('=_xldudf_TONROW_SHOP(P[#All])', 'Shop')).toEqual([{ table: 'P' }]);
  });
  it.each(['', '=SUM(A1:A2)', '=TONROW.SHOP(A1', 'TONROW.SHOP(A1)'])('%j is refused', (formula) => {
    expect(() => shopPlaces(formula, 'Shop')).toThrow('holds no SHOP formula');
  });
});
