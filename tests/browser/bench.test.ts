import { mkdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import ExcelJS from 'exceljs';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { saveBook } from '../../src/bench/save/saveBook.js';
import { GridWorkbook } from '../../src/bench/port/gridWorkbook.js';
import { root } from '../../scripts/ensure.mjs';
import { openWorkbook } from '../../src/xlsx/workbook.js';
import { readSheetValues } from '../../src/xlsx/readSheetValues.js';
import { recalculateWorkbook } from '../../src/headless/recalculate/recalculate.js';
import { rowCheckWorkbook } from '../../scripts/bench/workbooks.mjs';
import { cell, functions, openExample } from '../bench/support/openExample.js';
import { pressChange, recalculatedQuote } from '../golden/quote.js';
import {
  type Bench,
  goTo,
  opened,
  openPage,
  pause,
  type OpenPage,
  savedFile,
  startBench,
  typeInto,
  workbookFile,
} from './support/benchPage.js';

let bench: Bench;
let open: OpenPage;

beforeAll(async () => (bench = await startBench()));
afterAll(() => bench?.close());
afterEach(() => open?.page.context().close());

const shots = path.join(root, 'out', 'shots');
mkdirSync(shots, { recursive: true });
const shot = (name: string) => path.join(shots, `bench-${name}.png`);

const axe = readFileSync(path.join(root, 'node_modules/axe-core/axe.min.js'), 'utf8');

/** What a general accessibility checker finds serious or critical on the page. */
async function seriousFindings(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  const findings = await page.evaluate(() =>
    (window as unknown as { axe: { run(): Promise<AxeResults> } }).axe.run(),
  );
  return findings.violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}

const verdicts = (bytes: Uint8Array) =>
  readSheetValues(bytes, 'Quote').map((row) => [row[0], row[17], row[20]]);

describe('the bench page', () => {
  it('opens with the example, without an error, and asks nobody else for anything', async () => {
    open = await openPage(bench);
    const { page, troubles } = open;
    expect(await page.title()).toBe('quote.xlsx · Tonrow');
    expect(await page.locator('#trouble').isVisible()).toBe(false);
    await page.waitForLoadState('networkidle');
    expect(troubles).toEqual([]);
  });

  it('shows the verdicts that the headless command gives', async () => {
    open = await openPage(bench);
    const { bytes } = await recalculatedQuote();
    expect(verdicts(await savedFile(open.page))).toEqual(verdicts(bytes));
    expect(open.troubles).toEqual([]);
  });

  it('recalculates the rows that hang on a press value typed into its cell, and only those', async () => {
    open = await openPage(bench);
    const change = pressChange('Punch force', 'Bay B', 40);
    const failing = open.page.locator('#pane').getByText(/^\d+ of \d+ rows fail$/);
    const failedBefore = await failing.textContent();
    await typeInto(open.page, 'Shop', change.cell, '40');
    // The pane hears of it through the port.
    await expect.poll(() => failing.textContent()).not.toBe(failedBefore);
    const saved = verdicts(await savedFile(open.page));
    const [before, after] = [await recalculatedQuote(), await recalculatedQuote([change])];
    expect(saved).toEqual(verdicts(after.bytes));
    expect(saved).not.toEqual(verdicts(before.bytes));
    expect(open.troubles).toEqual([]);
  });

  it('explains a wrong argument in the sentence of the function', async () => {
    open = await openPage(bench);
    const { page } = open;
    await typeInto(page, 'Summary', 'J2', '=TONROW.HOLEMIN("3/8 inc","A36")');
    await goTo(page, 'Summary', 'J2');
    const note = page.locator('#news', { hasText: "J2: Thickness: '3/8 inc' is not a length" });
    await note.waitFor();
    await page.keyboard.press('ArrowDown');
    await note.waitFor({ state: 'detached' });
  });

  it('helps with the arguments while a formula is typed', async () => {
    open = await openPage(bench);
    await goTo(open.page, 'Summary', 'J2');
    await open.page.keyboard.type('=TONROW.PUNCHFORCE(');
    await open.page.getByText('hole, thickness, grade, [shop], [count], [punchShear]').first().waitFor();
    await open.page.locator('.o-formula-assistant-head .collapsor').first().click();
    await open.page.getByText('Thickness of the material: 3/8, 10 mm').first().waitFor();
  });
});

describe('the page in windows of all kinds', () => {
  it.each([
    ['light', {}],
    ['dark', { colorScheme: 'dark' }],
    ['narrow', { viewport: { width: 400, height: 800 } }],
    ['320', { viewport: { width: 320, height: 640 } }],
    ['320 dark', { viewport: { width: 320, height: 640 }, colorScheme: 'dark' }],
    ['forced', { forcedColors: 'active' }],
    ['320 forced', { viewport: { width: 320, height: 640 }, forcedColors: 'active' }],
  ] as const)('keeps grid and pane in sight: %s', async (name, options) => {
    open = await openPage(bench, options);
    const { page, troubles } = open;
    await page.screenshot({ path: shot(name) });
    const [grid, pane] = await Promise.all([
      page.locator('#grid').boundingBox(),
      page.locator('#pane').boundingBox(),
    ]);
    const width = page.viewportSize()?.width ?? 0;
    for (const box of [grid, pane]) {
      expect(box?.width).toBeGreaterThan(250);
      expect(box?.height).toBeGreaterThan(200);
      expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(width);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    expect(await seriousFindings(page)).toEqual([]);
    const stacked = (pane?.y ?? 0) >= (grid?.y ?? 0) + (grid?.height ?? 0);
    expect(stacked).toBe(width < 820);
    expect(troubles).toEqual([]);
  });
});

describe('the page without room for both', () => {
  it.each([
    ['1280 at 200 %', { width: 640, height: 400 }],
    ['1280 x 720 at 200 %', { width: 640, height: 360 }],
    ['320 x 256', { width: 320, height: 256 }],
  ])('shows the grid or the pane, each with all the room, by a switch: %s', async (name, viewport) => {
    open = await openPage(bench, { viewport });
    const { page } = open;
    const grid = await page.locator('#grid').boundingBox();
    expect(grid?.height).toBeGreaterThan(viewport.height * 0.75);
    // Rows stand below the frozen ones of the example.
    const rows = await page.locator('#grid .o-grid-container').boundingBox();
    expect(rows?.height).toBeGreaterThan(viewport.height - 125);
    expect(await page.locator('#pane').isVisible()).toBe(false);
    await page.getByRole('button', { name: 'Tonrow', exact: true }).click();
    expect((await page.locator('#pane').boundingBox())?.height).toBeGreaterThan(viewport.height * 0.75);
    expect(await page.locator('#grid').isVisible()).toBe(false);
    await page.getByRole('button', { name: 'Workbook', exact: true }).click();
    await page.getByRole('button', { name: 'Save a copy' }).waitFor();
    await page.screenshot({ path: shot(name.replaceAll(' ', '-')) });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      viewport.width,
    );
    expect(await seriousFindings(page)).toEqual([]);
  });
});

describe('opening and saving', () => {
  it('makes many calls later, holds them when it is told to, and saves no cell without its answer', async () => {
    open = await openPage(bench);
    const { page } = open;
    const list = rowCheckWorkbook(3000);
    await page.locator('#file').setInputFiles(workbookFile('long.xlsx', list));
    const line = page.locator('#progress');
    await line.getByText(/^Checking formulas: /).waitFor();
    await line.getByRole('button', { name: 'Stop' }).click();
    await line.getByText(/^Stopped: [\d,]+ formulas are not checked yet$/).waitFor();
    await page.screenshot({ path: shot('held') });
    await opened(page, 'long.xlsx');
    await line.getByRole('button', { name: 'Go on' }).click();
    await line.waitFor({ state: 'hidden' });
    const checks = (bytes: Uint8Array) => readSheetValues(bytes, 'Parts').map((row) => row.slice(17));
    const { bytes } = await recalculateWorkbook(list, functions);
    expect(checks(await savedFile(page))).toEqual(checks(bytes));
    expect(open.troubles).toEqual([]);
  });

  it('opens a workbook from disk, and what is saved has the edits', async () => {
    open = await openPage(bench);
    const { page, troubles } = open;
    const mine = saveBook(openExample()).bytes;
    await page.locator('#file').setInputFiles(workbookFile('mine.xlsx', mine));
    await page.locator('#file-name', { hasText: 'mine.xlsx' }).waitFor();
    expect(await savedFile(page)).toEqual(mine);
    await typeInto(page, 'Quote', 'B6', "'=HYPERLINK(0)");
    await typeInto(page, 'Summary', 'J2', '=2*3');
    const saved = await savedFile(page);
    expect(readSheetValues(saved, 'Quote')[5]?.[1]).toBe('=HYPERLINK(0)');
    expect(readSheetValues(saved, 'Summary')[1]?.[9]).toBe(6);
    expect(openWorkbook(saved).sheets[2]?.cells?.formulas.some((formula) => formula?.text === '2*3')).toBe(
      true,
    );
    expect(troubles).toEqual([]);
  });

  it('opens a workbook dropped on the page', async () => {
    open = await openPage(bench);
    const { page, troubles } = open;
    const bytes = [...saveBook(openExample()).bytes];
    const dropped = await page.evaluateHandle((content) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([new Uint8Array(content)], 'dropped.xlsx'));
      return transfer;
    }, bytes);
    await page.dispatchEvent('#grid', 'dragover', { dataTransfer: dropped });
    await page.dispatchEvent('#grid', 'drop', { dataTransfer: dropped });
    await page.locator('#file-name', { hasText: 'dropped.xlsx' }).waitFor();
    expect([...(await savedFile(page))]).toEqual(bytes);
    expect(troubles).toEqual([]);
  });

  it('asks too when only a look was changed, and saves it', async () => {
    open = await openPage(bench);
    const { page, troubles } = open;
    await goTo(page, 'Quote', 'B6');
    await page.keyboard.press('Control+b');
    await page.getByRole('button', { name: 'Example quote' }).click();
    await page.getByRole('button', { name: 'Stay' }).click();
    const saved = new ExcelJS.Workbook();
    await saved.xlsx.load((await savedFile(page)) as never);
    expect(saved.getWorksheet('Quote')?.getCell('B6').font.bold).toBe(true);
    expect(saved.getWorksheet('Quote')?.getCell('B7').font.bold).not.toBe(true);
    expect(troubles).toEqual([]);
  });

  it('does not ask when nothing was changed', async () => {
    open = await openPage(bench);
    const { page } = open;
    await goTo(page, 'Shop', 'B7');
    await page.getByRole('button', { name: 'Empty workbook' }).click();
    await page.locator('#file-name', { hasText: 'workbook.xlsx' }).waitFor();
  });

  it('begins with an empty workbook, which is saved as it is', async () => {
    open = await openPage(bench);
    const { page, troubles } = open;
    await page.getByRole('button', { name: 'Empty workbook' }).click();
    await opened(page, 'workbook.xlsx');
    await page.locator('#pane').getByText('Will it run on your presses?').waitFor();
    await typeInto(page, 'Sheet1', 'A1', 'Mark');
    const saved = openWorkbook(await savedFile(page));
    expect(saved.sheets.map(({ name }) => name)).toEqual(['Sheet1']);
    expect(saved.sheets[0]?.cells?.values).toEqual(['Mark']);
    expect(troubles).toEqual([]);
  });

  it('refuses what is no workbook in one sentence, and leaves the open one alone', async () => {
    open = await openPage(bench);
    const { page, troubles } = open;
    const before = await savedFile(page);
    await page
      .locator('#file')
      .setInputFiles(workbookFile('broken.xlsx', new TextEncoder().encode('no zip')));
    await page
      .getByRole('alert')
      .getByText(
        'broken.xlsx was not opened. The file is not an .xlsx workbook: save it as .xlsx and try again.',
      )
      .waitFor();
    expect(await page.locator('#file-name').textContent()).toBe('quote.xlsx');
    await page.getByRole('button', { name: 'Dismiss' }).click();
    expect(await page.getByRole('alert').isVisible()).toBe(false);
    expect(await savedFile(page)).toEqual(before);
    expect(troubles).toEqual([]);
  });

  it('asks before it leaves a workbook with unsaved edits', async () => {
    open = await openPage(bench);
    const { page } = open;
    await typeInto(page, 'Quote', 'B6', 'Edited');
    await page.getByRole('button', { name: 'Example quote' }).click();
    await page.getByRole('dialog').getByText('What you changed in quote.xlsx is not saved.').waitFor();
    await page.getByRole('button', { name: 'Stay' }).click();
    expect(readSheetValues(await savedFile(page), 'Quote')[5]?.[1]).toBe('Edited');
    await typeInto(page, 'Quote', 'B6', 'Edited again');
    await page.getByRole('button', { name: 'Example quote' }).click();
    await page.getByRole('button', { name: 'Leave it unsaved' }).click();
    await expect
      .poll(async () => readSheetValues(await savedFile(page), 'Quote')[5]?.[1], { timeout: 90_000 })
      .toBe('BP1');
  });
});

describe('a formula that is not calculated here', () => {
  it('shows the value of the file with a mark, says why, and is saved as it was', async () => {
    const example = openExample();
    const write = (address: string, content: string) =>
      example.book.model.dispatch('UPDATE_CELL', { ...cell(example.book, 'Summary', address), content });
    write('D2', '=TODAY()');
    const mine = saveBook(example).bytes;
    open = await openPage(bench);
    const { page, troubles } = open;
    await page.locator('#file').setInputFiles(workbookFile('kept.xlsx', mine));
    await page.getByText('1 formula is not calculated here').waitFor();
    await goTo(page, 'Summary', 'D2');
    await page
      .getByText('D2 keeps the value it has in the file. It uses TODAY, whose value depends on the moment.')
      .waitFor();
    await page.screenshot({ path: shot('kept') });
    expect(await savedFile(page)).toEqual(mine);
    expect(troubles).toEqual([]);
  });
});

describe('keyboard', () => {
  it('goes round the areas with F6, in both directions', async () => {
    open = await openPage(bench);
    const { page } = open;
    const areas = async () =>
      page.evaluate(() => document.activeElement?.closest('#top, #grid, #splitter, #pane')?.id ?? 'nowhere');
    const seen = [await areas()];
    for (const key of ['F6', 'F6', 'F6', 'F6', 'Shift+F6']) {
      await page.keyboard.press(key);
      seen.push(await areas());
    }
    expect(seen).toEqual(['grid', 'splitter', 'pane', 'top', 'grid', 'top']);
  });

  it('moves between cells and edits them without a mouse', async () => {
    open = await openPage(bench);
    const { page, troubles } = open;
    for (let row = 0; row < 5; row++) await page.keyboard.press('ArrowDown');
    // A person takes a moment between moving and typing; the grid draws its cell editor in that time.
    await pause(page);
    await page.keyboard.type('Typed', { delay: 40 });
    await page.keyboard.press('Tab');
    await pause(page);
    await page.keyboard.type('Beside', { delay: 40 });
    await page.keyboard.press('Enter');
    expect(readSheetValues(await savedFile(page), 'Quote')[5]?.slice(0, 2)).toEqual(['Typed', 'Beside']);
    expect(troubles).toEqual([]);
  });

  it('resizes the pane with the arrow keys', async () => {
    open = await openPage(bench);
    const { page } = open;
    const width = () => page.locator('#pane').evaluate((pane) => (pane as HTMLElement).offsetWidth);
    const before = await width();
    await page.getByRole('separator', { name: 'Width of the pane' }).focus();
    await page.keyboard.press('ArrowLeft');
    expect(await width()).toBe(before + 24);
    await page.keyboard.press('ArrowRight');
    expect(await width()).toBe(before);
  });
});

describe('a hostile workbook', () => {
  const hostile = [
    '<img src=x onerror="window.pwned=1">',
    '<script>window.pwned=1</script>',
    '[click](javascript:window.pwned=1)',
    "=cmd|' /C calc'!A0",
    '\u202Etxet',
    'x'.repeat(30_000),
  ];

  it('shows its text as text and gives it back as it was', async () => {
    const example = openExample();
    const port = new GridWorkbook(example.book);
    const name = '<b>"sheet"<b>';
    await port.write(
      await port.plan([
        { kind: 'sheet', name },
        {
          kind: 'cells',
          area: { sheet: name, row: 0, column: 0, rows: hostile.length, columns: 1 },
          contents: hostile.map((text) => [text]),
        },
        {
          kind: 'cells',
          area: { sheet: 'Quote', row: 5, column: 0, rows: hostile.length, columns: 1 },
          contents: hostile.map((text) => [text]),
        },
      ]),
      { confirmed: true },
    );
    open = await openPage(bench);
    const { page, troubles } = open;
    await page.locator('#file').setInputFiles(workbookFile('<i>evil</i>.xlsx', saveBook(example).bytes));
    await page.locator('#file-name', { hasText: '<i>evil</i>.xlsx' }).waitFor();
    for (const sheet of [name, 'Quote']) {
      await goTo(page, sheet, 'A1');
      for (let row = 0; row < 8; row++) await page.keyboard.press('ArrowDown');
    }
    const saved = await savedFile(page);
    expect(readSheetValues(saved, name).map(([text]) => text)).toEqual(hostile);
    expect(await page.evaluate(() => (window as { pwned?: number }).pwned)).toBeUndefined();
    expect(await page.locator('img[src="x"], #file-name i, .o-sheet b').count()).toBe(0);
    expect(troubles).toEqual([]);
  });
});
