import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { root } from '../../scripts/ensure.mjs';
import type { CellValue } from '../../src/core/quantity/cellValue.js';
import { reportRows } from '../../src/taskpane/handOff/report/lists.js';
import { type ReportData, reportData } from '../../src/taskpane/handOff/report/reportData.js';
import { reportHtml } from '../../src/taskpane/handOff/report/reportHtml.js';
import { reportStyle } from '../../src/taskpane/handOff/report/reportStyle.js';
import { readShopState } from '../../src/taskpane/shared/readShopState.js';
import { launchChromium } from '../support/chromium.js';
import { pagesOfPdf } from '../support/pdfText.js';
import { MemoryWorkbook } from '../taskpane/support/memoryWorkbook.js';

const folder = path.join(root, 'out', 'report');
const job = { job: 'Catwalk', customer: 'Grain tower', file: 'quote.xlsx', date: 'November 29, 2026' };
const formats = ['Letter', 'A4'] as const;

/** The example's lists and shop in a workbook. */
function exampleWorkbook(): MemoryWorkbook {
  const book = new MemoryWorkbook('Quote', 'Shop');
  const add = (name: string, file: string, sheet: string, column: number) => {
    const lines = readFileSync(path.join(root, 'examples/quote', file), 'utf8')
      .trimEnd()
      .split('\n');
    const rows = lines.map((line) => line.split('\t').map(cellOf));
    const columns = Math.max(...rows.map(({ length }) => length));
    const filled = rows.map((row) => [...row, ...Array<CellValue>(columns - row.length).fill(null)]);
    book.type(sheet, 5, column, filled);
    book.memory.tables.push({
      name,
      area: { sheet, row: 5, column, rows: rows.length, columns },
      hasTotals: false,
    });
  };
  add('Presses', 'presses.tsv', 'Shop', 0);
  add('Tools', 'tools.tsv', 'Shop', 8);
  add('Grades', 'grades.tsv', 'Shop', 24);
  add('Settings', 'settings.tsv', 'Shop', 34);
  add('Parts', 'parts.tsv', 'Quote', 0);
  book.memory.names.push({
    name: 'ShopStamp',
    area: { sheet: 'Shop', row: 3, column: 1, rows: 1, columns: 1 },
  });
  book.type('Shop', 3, 1, [
    [
      {
        formula: `=TONROW.SHOP(${['Presses', 'Tools', 'Grades', 'Settings'].map((name) => `${name}[[#Headers],[#Data]]`).join(',')})`,
      },
    ],
  ]);
  return book;
}

function cellOf(text: string): CellValue {
  const [, number] = /^(?:number|date):(.*)$/.exec(text) ?? [];
  if (number !== undefined) return Number(number);
  return text === '' || text === 'sum' ? null : text;
}

let browser: Browser;
let page: Page;
let data: ReportData;
beforeAll(async () => {
  mkdirSync(folder, { recursive: true });
  const book = exampleWorkbook();
  const state = await readShopState(book);
  if (state.kind !== 'ready') throw new Error('The shop of the example could not be read.');
  const { rows, told } = await reportRows(book, state, {});
  data = reportData(rows, state, { ...job, told });
  browser = await launchChromium();
  page = await browser.newPage();
});
afterAll(() => browser.close());

const bare = (text: string) => text.replaceAll(/\s/g, '');

async function printed(format: (typeof formats)[number], name = 'report'): Promise<string[]> {
  const bytes = await page.pdf({ format, preferCSSPageSize: false });
  writeFileSync(path.join(folder, `${name}-${format}.pdf`), bytes);
  return pagesOfPdf(bytes);
}

describe.each(formats)('the report on paper, %s', (format) => {
  it('has its head and page x of y on every page, and what counts on the first', async () => {
    await page.setContent(reportHtml(data));
    const pages = await printed(format);
    expect(pages.length).toBeGreaterThan(3);
    pages.forEach((text, at) => {
      for (const part of [
        `Page ${at + 1} of ${pages.length}`,
        'Catwalk · Grain tower',
        job.file,
        job.date,
        data.stamp,
      ])
        expect(text, `page ${at + 1}`).toContain(bare(part));
    });
    for (const heading of [
      'Total',
      'By verdict',
      'Caution',
      'Assumptions',
      data.assumptions.at(-1)?.text ?? '',
    ])
      expect(pages[0]).toContain(bare(heading));
    expect(pages[0]).not.toContain('Failingrows');
  });

  it('splits no row, and parts no drawing from its row and caption', async () => {
    await page.setContent(reportHtml(data));
    // Each row begins and ends with letters of its own, so that a row on two pages is seen.
    const count = await page.evaluate(() => {
      const rows = [...document.querySelectorAll('tbody:has(.drawing), tbody:not(:has(.drawing)) > tr')];
      rows.forEach((row, at) => {
        const cells = row.querySelectorAll('td');
        cells[0]?.prepend(`«${at}`);
        const caption = row.querySelector('figcaption');
        (caption ?? cells[cells.length - 1])?.append(`${at}»`);
      });
      return rows.length;
    });
    const pages = await printed(format, 'marked');
    const split = Array.from({ length: count }, (_, at) => at).filter(
      (at) => !pages.some((text) => text.includes(`«${at}`) && text.includes(`${at}»`)),
    );
    expect(count).toBeGreaterThan(60);
    expect(split).toEqual([]);
  });
});

describe('the report as the pane prints it', () => {
  it('has its page numbers, too, though its style comes from outside', async () => {
    await page.setContent(reportHtml(data, ''));
    await page.evaluate(
      (style) => {
        const sheet = new CSSStyleSheet();
        sheet.replaceSync(style);
        document.adoptedStyleSheets = [sheet];
      },
      reportStyle(data, data.stamp),
    );
    const pages = await printed('Letter', 'pane');
    pages.forEach((text, at) => expect(text).toContain(bare(`Page ${at + 1} of ${pages.length}`)));
  });
});
