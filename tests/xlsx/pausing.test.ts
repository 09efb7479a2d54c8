import { describe, expect, it } from 'vitest';
import { rowCheckWorkbook } from '../../scripts/bench/workbooks.mjs';
import { PackageParts } from '../../src/xlsx/packageParts.js';
import { atOnce, entriesInTurn, type Pausing } from '../../src/xlsx/pausing.js';
import { openingWorkbook, openWorkbook } from '../../src/xlsx/workbook.js';

function counted<Result>(work: Pausing<Result>): { rests: number; result: Result } {
  for (let rests = 0; ; rests++) {
    const step = work.next();
    if (step.done) return { rests, result: step.value };
  }
}

describe('long work that may rest', () => {
  const rows = 400;
  const bytes = rowCheckWorkbook(rows);

  it('reads the same workbook with rests and without', () => {
    const { rests, result } = counted(openingWorkbook(bytes));
    const cells = result.sheets[0]?.cells;
    expect(cells?.rows.length).toBeGreaterThan(10 * rows);
    expect(rests).toBeGreaterThan((cells?.rows.length ?? 0) / entriesInTurn);
    expect(cells).toEqual(openWorkbook(bytes).sheets[0]?.cells);
  });

  it('changes and packs a large part with rests', () => {
    const changed = (read: boolean) => {
      const parts = new PackageParts(openWorkbook(bytes).package);
      const reading = read ? counted(parts.readingRoot('xl/worksheets/sheet1.xml')).rests : 0;
      parts.root('xl/worksheets/sheet1.xml').child('sheetData')?.children[rows]?.set({ hidden: 1 });
      return { reading, ...counted(parts.packing()) };
    };
    const [whole, resting] = [changed(false), changed(true)];
    expect(resting.reading).toBeGreaterThan(1);
    expect(resting.rests).toBeGreaterThan(1);
    expect(resting.result).toEqual(whole.result);
    expect(openWorkbook(resting.result).sheets[0]?.cells?.hiddenRows).toEqual(new Set([rows]));
  });

  it('gives up where the work does', () => {
    const work = function* (): Pausing<number> {
      yield;
      throw new Error('no more');
    };
    expect(() => atOnce(work())).toThrow('no more');
  });
});
