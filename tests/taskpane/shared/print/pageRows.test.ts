// @vitest-environment jsdom
import { afterEach, describe, expect, it, vi } from 'vitest';
import { canPrint } from '../../../../src/taskpane/shared/print/canPrint.js';
import { pageRows } from '../../../../src/taskpane/shared/print/pageRows.js';
import { sheetOfPage } from '../../../../src/taskpane/shared/print/sheetOfPage.js';
import { MemoryWorkbook } from '../../support/memoryWorkbook.js';

const page = `<!doctype html><title>T</title><style>p{}</style><body><h1>Press check</h1><p>of <b>3</b> rows</p>
<div><dl><dt>Rows</dt><dd>4</dd><dt>Mass</dt><dd>12 lb</dd></dl></div><h2>Failing</h2>
<table><thead><tr><th>Mark</th><th>Hole</th></tr></thead><tbody><tr><td>A1</td><td>3/8</td></tr><tr><td>=1+1</td><td></td></tr></tbody></table>
<ul><li>one</li><li>two &lt;b&gt;</li></ul><script>alert(1)</script></body>`;

describe('a printable page as rows', () => {
  it('has a row for each heading, paragraph, entry and row of a table', () => {
    expect(pageRows(page)).toEqual([
      ['Press check'],
      ['of 3 rows'],
      ['Rows', '4'],
      ['Mass', '12 lb'],
      [],
      ['Failing'],
      ['Mark', 'Hole'],
      ['A1', '3/8'],
      ['=1+1', ''],
      [],
      ['one'],
      ['two <b>'],
    ]);
  });

  it('goes on a sheet of its own as text, and can be taken back', async () => {
    const book = new MemoryWorkbook('Quote', 'Press check');
    const { steps } = await sheetOfPage(book, page, 'Press check');
    const revert = await book.write(await book.plan(steps), { confirmed: true });
    const [read] = await book.read([{ usedOf: 'Press check 2' }], ['values', 'formulas', 'formats']);
    expect(read?.values[7]).toEqual(['A1', '3/8']);
    expect(read?.values[8]?.[0]).toBe('=1+1');
    expect(read?.formulas.flat().every((formula) => formula === null)).toBe(true);
    expect(read?.formats[7]).toEqual(['@', '@']);
    await revert.run();
    expect((await book.sheets()).map(({ name }) => name)).toEqual(['Quote', 'Press check']);
  });
});

describe('a page in the pane', () => {
  afterEach(() => vi.unstubAllGlobals());

  it.each([
    ['Mac', false],
    ['iOS', false],
    ['PC', true],
    ['OfficeOnline', true],
    [undefined, true],
  ])('on %s may print: %s', (platform, can) => {
    vi.stubGlobal('Office', { context: { platform } });
    expect(canPrint()).toBe(can);
  });
});
