import { expect, it } from 'vitest';
import { bookOfFile } from '../../src/headless/book/bookOfFile.js';
import { nodeCodec } from '../../src/headless/files/nodeCodec.js';
import { calculateWorkbook } from '../../src/headless/recalculate/calculate.js';
import { openWorkbook } from '../../src/xlsx/workbook.js';
import { buildWorkbook } from '../xlsx/support/buildWorkbook.js';
import { sampleFunctions } from './support/sample.js';

/** The formula that a book gives for its stamp, in a sheet of these rows. */
async function stampFormula(sheetData: string, cell: string): Promise<string | undefined> {
  const bytes = buildWorkbook([{ name: 'Shop', sheetData }], { names: { ShopStamp: `Shop!${cell}` } });
  return bookOfFile(await calculateWorkbook(openWorkbook(bytes, nodeCodec), sampleFunctions(), []))
    .stampFormula;
}

const row = (at: number, formula: string) => `<row r="${at}"><c r="B${at}">${formula}<v>0</v></c></row>`;
const double = '_xldudf_TONROW_DOUBLE';

it('gives the formula of the stamp as its own cell has it, where the one above has the same form', async () => {
  const rows = [1, 2, 3].map((at) => row(at, `<f>${double}(A${at})</f>`));
  expect(await stampFormula(rows.join(''), '$B$3')).toBe(`=${double}(A3)`);
});

it('gives it also where the formula is stored with that of another cell', async () => {
  const shared = `<f t="shared" ref="B1:B3" si="0">${double}(A1)</f>`;
  const rows = [row(1, shared), ...[2, 3].map((at) => row(at, '<f t="shared" si="0"/>'))];
  expect(await stampFormula(rows.join(''), '$B$3')).toBe(`=${double}(A3)`);
});
