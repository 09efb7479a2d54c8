import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import ExcelJS from 'exceljs';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import '../contract/support/built.js';
import { stock } from '../../src/headless/command/stock.js';
import { readSheetValues } from '../../src/xlsx/readSheetValues.js';
import { violations } from '../support/packageReferee.js';

const quote = path.join(root, 'examples/quote.xlsx');
let folder: string;
beforeAll(() => void (folder = mkdtempSync(path.join(os.tmpdir(), 'tonrow-stock-'))));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function run(...argv: string[]) {
  let [out, err] = ['', ''];
  const progress: string[] = [];
  const code = await stock(argv, {
    out: (text) => (out += text),
    err: (text) => (err += text),
    progress: (text) => progress.push(text),
    folder: path.join(root, 'dist'),
    input: () => Promise.resolve(undefined),
  });
  return { code, out, err, progress };
}
const at = (name: string) => path.join(folder, name);
const parts = (file: string) => unzipSync(new Uint8Array(readFileSync(file)));
const changed = (from: string, to: string) => {
  const [before, after] = [parts(from), parts(to)];
  return Object.keys(after)
    .filter((name) => Buffer.compare(before[name] ?? Buffer.alloc(0), after[name] as Uint8Array) !== 0)
    .sort();
};

interface Json {
  status: string;
  sections: { section: string; proof: string | null; by: string; cost: number; buy: { bars: number }[] }[];
}

describe('stock', () => {
  it('proves the plan of the example, section by section, and tells how far it is', async () => {
    const { code, out, err, progress } = await run(quote, '--json');
    expect([code, err]).toEqual([0, '']);
    const { status, sections } = JSON.parse(out) as Json;
    expect(status).toBe('Proven: no plan buys less. What a cut takes is not known: C8X11.5.');
    expect(sections.filter(({ proof }) => proof === null)).toEqual([]);
    expect(sections).toHaveLength(16);
    // Counted by hand in tests/golden/quoteStock.test.ts.
    expect(sections.reduce((sum, { cost }) => sum + cost, 0)).toBeCloseTo(4433, 6);
    expect(progress[0]).toBe('Planning C8X11.5, 1 of 16 …');
    expect(progress.at(-1)).toBe('');
  });

  it('adds a sheet to a copy, a further one beside it, or replaces its own; all else keeps its bytes', async () => {
    const [first, second, third] = ['first.xlsx', 'second.xlsx', 'third.xlsx'].map(at) as [
      string,
      string,
      string,
    ];
    expect((await run(quote, first)).out).toContain(`Written to ${first}, sheet Stock plan.`);
    const list = ['[Content_Types].xml', 'xl/_rels/workbook.xml.rels', 'xl/workbook.xml'];
    const sheet = changed(quote, first).find((name) => name.startsWith('xl/worksheets/')) ?? '';
    expect(changed(quote, first)).toEqual([...list, sheet].sort());
    expect((await run(first, second)).out).toContain('sheet Stock plan 2.');
    expect((await run(first, third, '--replace')).out).toContain('sheet Stock plan.');
    expect(changed(first, third)).toEqual(['xl/workbook.xml']);
    for (const file of [first, second, third])
      expect(violations(new Uint8Array(readFileSync(file))), file).toEqual([]);
    const book = new ExcelJS.Workbook();
    await book.xlsx.readFile(second);
    const names = book.worksheets.map(({ name }) => name);
    expect(names.slice(-2)).toEqual(['Stock plan', 'Stock plan 2']);
    const totals: unknown[] = [];
    book.getWorksheet('Stock plan')?.eachRow((row) => {
      if (row.getCell(1).text === 'buy, total') totals.push(row.getCell(5).value, row.getCell(8).value);
    });
    expect(totals).toEqual([57, 4433]);
  });

  it('ends with 3 where a part is left without a plan, and names it', async () => {
    const book = new ExcelJS.Workbook();
    await book.xlsx.readFile(quote);
    const rows = readSheetValues(new Uint8Array(readFileSync(quote)), 'Quote');
    const top = rows.findIndex((row) => row.includes('Mark') && row.includes('Length'));
    const columnOf = (heading: string) => rows[top]?.indexOf(heading) ?? -1;
    // A plate needs no bar; an angle does.
    const angle = rows.findIndex((row) => /^L ?\d/.test(String(row[columnOf('Section')])));
    const cell = book.getWorksheet('Quote')?.getCell(angle + 1, columnOf('Length') + 1);
    if (cell) cell.value = null;
    await book.xlsx.writeFile(at('open.xlsx'));
    const { code, out } = await run(at('open.xlsx'), '--json');
    expect(code).toBe(3);
    expect(out).toContain(String(rows[angle]?.[columnOf('Mark')]));
  });

  it('replaces no sheet that is not its own, and writes nothing then', async () => {
    const book = new ExcelJS.Workbook();
    await book.xlsx.readFile(quote);
    book.addWorksheet('stock PLAN').getCell('A1').value = 'Ours';
    await book.xlsx.writeFile(at('own.xlsx'));
    const { code, err } = await run(at('own.xlsx'), at('never.xlsx'), '--replace');
    expect([code, err]).toEqual([
      1,
      'The sheet "stock PLAN" is no plan of ours and is not replaced: rename it, or leave out --replace.\n',
    ]);
    expect(() => readFileSync(at('never.xlsx'))).toThrow('ENOENT');
  });

  it('plans hidden rows too and names them, and with --without-hidden leaves them out', async () => {
    const book = new ExcelJS.Workbook();
    await book.xlsx.readFile(quote);
    const sheet = book.getWorksheet('Quote');
    let hidden = 0;
    sheet?.eachRow((row, at) => {
      row.eachCell(({ value }) => {
        if (value === 'AF1') [hidden, row.hidden] = [at, true];
      });
    });
    expect(hidden).toBeGreaterThan(0);
    await book.xlsx.writeFile(at('hidden.xlsx'));
    const [all, without] = [await run(at('hidden.xlsx')), await run(at('hidden.xlsx'), '--without-hidden')];
    expect(all.out).toContain(`1 hidden row is planned too: ${hidden}.`);
    const cut = (out: string) => out.split('\n').filter((line) => /^cut .*\bAF1\b/.test(line)).length;
    expect(cut(all.out)).toBeGreaterThan(0);
    expect(cut(without.out)).toBe(0);
    expect(without.out).toMatch(/not planned .*AF1.*hidden/i);
  });

  it('plans what is asked, refuses in one sentence, and says how it is called', async () => {
    const { out } = await run(quote, '--json', '--without-failing', '--without-off-press');
    expect(out).toContain('Off press rows are left out, as asked.');
    expect(out).toContain('Rows that fail are left out, as asked.');
    expect(await run(at('none.xlsx'), '--json')).toMatchObject({
      code: 1,
      err: expect.stringMatching(/does not exist\.\n$/),
    });
    expect((await run(quote, quote)).err).toContain('is the workbook itself');
    expect((await run(quote, path.join(folder, 'no', 'folder.xlsx'))).err).toContain(
      'its folder does not exist',
    );
    for (const argv of [[], [quote, 'a.xlsx', 'b.xlsx'], [quote, '--replace'], ['--odd']])
      expect((await run(...argv)).code).toBe(2);
  });
});
