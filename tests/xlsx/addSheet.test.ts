import { readFileSync } from 'node:fs';
import path from 'node:path';
import ExcelJS from 'exceljs';
import fc from 'fast-check';
import { unzipSync } from 'fflate';
import { expect, it } from 'vitest';
import { emptyWorkbook } from '../../examples/build/workbook.mjs';
import { root } from '../../scripts/ensure.mjs';
import { addSheet, type NewCell } from '../../src/xlsx/addSheet.js';
import { openWorkbook } from '../../src/xlsx/workbook.js';
import { violations } from '../support/packageReferee.js';

const quote = new Uint8Array(readFileSync(path.join(root, 'examples/quote.xlsx')));

const text = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 20 }),
  fc.constantFrom('=1+1', ' two  spaces ', 'line\nbreak', '<b>&amp;', "'quoted", '_x000D_', '\u0001'),
);
const cell: fc.Arbitrary<NewCell> = fc.oneof(
  fc.constant(null),
  fc.integer(),
  fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e300, max: 1e300 }),
  text,
  text.map((bold) => ({ bold })),
);
const rows = fc.array(fc.array(cell, { maxLength: 5 }), { maxLength: 8 });

/** What another reader finds in a cell: nothing where nothing was written. */
function found(value: ExcelJS.CellValue): number | string | null {
  if (value !== null && typeof value === 'object' && 'richText' in value)
    return value.richText.map((run) => run.text).join('');
  // ECMA-376 part 1, 22.9.2.19: letters that XML cannot hold are written as _xHHHH_, which this reader leaves as it is
  // where a text has no runs.
  return typeof value === 'string'
    ? value.replaceAll(/_x([\dA-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(parseInt(code, 16)))
    : (value as number | null);
}

const small = new Uint8Array(emptyWorkbook());

it('another reader finds each cell as it was given, text as text, and a sound package', async () => {
  await fc.assert(
    fc.asyncProperty(rows, async (given) => {
      const { bytes, name } = addSheet(openWorkbook(small), { name: 'Plan', rows: given, widths: [10, 12] });
      expect(name).toBe('Plan');
      expect(violations(bytes)).toEqual([]);
      const book = new ExcelJS.Workbook();
      await book.xlsx.load(bytes as never);
      const sheet = book.getWorksheet('Plan');
      for (const [row, cells] of given.entries())
        for (const [column, cell] of cells.entries()) {
          const wanted = cell !== null && typeof cell === 'object' ? cell.bold : cell;
          const shown = sheet?.getCell(row + 1, column + 1);
          expect(found(shown?.value ?? null)).toBe(wanted === '' ? null : wanted === -0 ? 0 : wanted);
          expect(shown?.formula).toBeUndefined();
        }
    }),
    { numRuns: 100 },
  );
});

it('leaves every other part as it was, and takes a free name of at most 31 characters', () => {
  const sheet = { name: 'A name of exactly 31 characters', rows: [['x']], widths: [] };
  expect(sheet.name).toHaveLength(31);
  const first = addSheet(openWorkbook(quote), sheet);
  const second = addSheet(openWorkbook(first.bytes), { ...sheet, name: sheet.name.toUpperCase() });
  expect(first.name).toBe(sheet.name);
  expect(second.name.length).toBeLessThanOrEqual(31);
  expect(second.name.toLowerCase()).not.toBe(first.name.toLowerCase());
  const [before, after] = [quote, second.bytes].map((bytes) => unzipSync(bytes));
  const touched = /^(?:\[Content_Types\]\.xml|xl\/workbook\.xml|xl\/_rels\/workbook\.xml\.rels)$/;
  for (const [part, bytes] of Object.entries(before ?? {}))
    if (!touched.test(part)) expect(Buffer.compare(bytes, after?.[part] ?? Buffer.alloc(0)), part).toBe(0);
});

it('replaces a sheet of its name, whatever its case, and what reads it is calculated again', async () => {
  const first = addSheet(openWorkbook(small), { name: 'Plan', rows: [['old', 1]], widths: [] });
  const again = addSheet(
    openWorkbook(first.bytes),
    { name: 'PLAN', rows: [['new']], widths: [] },
    { replace: true },
  );
  expect(again.name).toBe('Plan');
  const book = new ExcelJS.Workbook();
  await book.xlsx.load(again.bytes as never);
  expect(book.worksheets.filter(({ name }) => /plan/i.test(name))).toHaveLength(1);
  expect(book.getWorksheet('Plan')?.getSheetValues()).toEqual([undefined, [undefined, 'new']]);
  const workbook = new TextDecoder().decode(unzipSync(again.bytes)['xl/workbook.xml']);
  expect(workbook).toMatch(/<calcPr[^>]* fullCalcOnLoad="1"/);
  expect(violations(again.bytes)).toEqual([]);
});
