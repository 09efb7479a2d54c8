import { describe, expect, it } from 'vitest';
import { rowCheckWorkbook } from '../../scripts/bench/workbooks.mjs';
import { PackageParts } from '../../src/xlsx/packageParts.js';
import { atOnce, entriesInTurn, type Pausing } from '../../src/xlsx/pausing.js';
import { openingWorkbook, openWorkbook } from '../../src/xlsx/workbook.js';
import { XmlElement } from '../../src/xlsx/xml/element.js';

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

  it('writes a long element as it is written at once, with rests between its children', () => {
    const count = 3 * entriesInTurn + 7;
    const row = (at: number) => `<row r="${at}"><c r="A${at}"><v>${at}</v></c></row>`;
    const xml = `<sheetData>${Array.from({ length: count }, (_, at) => row(at + 1)).join(' ')}</sheetData >`;
    const { root, toString, writing } = XmlElement.part(`<?xml version="1.0"?>${xml}`);
    root.children[1_200]?.children[0]?.set({ s: 4 });
    const { rests, result } = counted(writing());
    const text = result.join('');
    // Rows, what stands between them, the tags around them, and a row that was read in its two tags and its cell.
    const written = 2 * count - 1 + 3 + 2;
    expect(rests).toBe(Math.floor(written / entriesInTurn));
    expect(result).toHaveLength(rests + 1);
    expect(text).toBe(toString());
    expect(text.match(/<row /g)).toHaveLength(count);
    expect(text).toContain('<c r="A1201" s="4"><v>1201</v></c>');
  });

  it('gives up where the work does', () => {
    const work = function* (): Pausing<number> {
      yield;
      throw new Error('no more');
    };
    expect(() => atOnce(work())).toThrow('no more');
  });
});
