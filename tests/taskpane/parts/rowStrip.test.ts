import { describe, expect, it } from 'vitest';
import type { Verdict } from '../../../src/core/check/verdict.js';
import type { RowResult } from '../../../src/core/row/rowResult.js';
import { mostCells, stripOf } from '../../../src/taskpane/parts/list/rowStrip.js';

const row = (verdict: Verdict): RowResult => ({
  ...{ blank: false, verdict, route: [], findings: [], readings: [] },
});

describe('the strip of all rows', () => {
  it('has a cell for each row in the order of the list, none for a blank one', () => {
    expect(stripOf([row('OK'), { blank: true }, row('Too big')])).toEqual([
      { row: 0, rows: 1, verdict: 'OK' },
      { row: 2, rows: 1, verdict: 'Too big' },
    ]);
  });

  it('has the worst of several rows in a cell of a long list, and loses no failing row', () => {
    const results = Array.from({ length: 1000 }, (_, at) => row(at % 97 === 3 ? 'Edge short' : 'OK'));
    const cells = stripOf(results);
    expect(cells.length).toBeLessThanOrEqual(mostCells);
    expect(cells.reduce((sum, { rows }) => sum + rows, 0)).toBe(1000);
    const failing = cells.filter(({ verdict }) => verdict === 'Edge short').map((cell) => cell.row);
    expect(failing).toEqual(Array.from({ length: 11 }, (_, at) => 97 * at + 3));
  });
});
