import { readFileSync } from 'node:fs';
import { strFromU8, unzipSync } from 'fflate';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { cellAddress } from '../../src/sheet/address.js';
import { openWorkbook } from '../../src/xlsx/workbook.js';
import { readSheetValues } from '../../src/xlsx/readSheetValues.js';
import { bringFormulasBack } from '../../src/xlsx/freeze/bringFormulasBack.js';
import {
  type Bench,
  goTo,
  openPage,
  savedFile,
  startBench,
  typeInto,
  workbookFile,
} from './support/benchPage.js';
import { emptyWorkbook, type Kind, oddHeadings, oddRows, verdictOf } from './support/oddList.js';

let bench: Bench;
beforeAll(async () => (bench = await startBench()));
afterAll(() => bench?.close());

const rowCount = 2000;
const ofEachKind = rowCount / Object.keys(verdictOf).length;
const hourlyRate = '137.31';
const margin = 'Margin 17.29 %';

let page: Page;
let pane: Locator;

const click = (name: string | RegExp) =>
  pane.getByRole('button', typeof name === 'string' ? { name, exact: true } : { name }).click();
const tab = (name: string) => pane.getByRole('tab', { name, exact: true }).click();
const says = (text: string | RegExp) => pane.getByText(text).first().waitFor();

/** Looks at what a dialog says it will write, and says yes. */
async function confirm(written: string): Promise<string> {
  const dialog = page.getByRole('dialog');
  const write = dialog.getByRole('button', { name: 'Write to sheet', exact: true });
  await write.waitFor();
  const text = await dialog.innerText();
  await write.click();
  await says(`Done: ${written}.`);
  return text;
}

async function pasteList(): Promise<void> {
  await page.locator('#file').setInputFiles(workbookFile('takeoff.xlsx', await emptyWorkbook()));
  await page.locator('#file-name', { hasText: 'takeoff.xlsx' }).waitFor();
  const list = [oddHeadings, ...oddRows(rowCount)].map((row) => row.join('\t')).join('\n');
  await goTo(page, 'Takeoff', 'A1');
  await page.evaluate((text) => navigator.clipboard.writeText(text), list);
  await page.keyboard.press('Control+v');
  await says('No shop sheet in this workbook yet');
}

async function addPress(name: string, ...answers: [string, string, string, string]): Promise<void> {
  await click('New press');
  const labels = ['Punch force', /^3\. Throat/, /^Hole, in/, /^Through, in/];
  await pane.getByLabel(/^1\. Name/).fill(name);
  for (const [at, label] of labels.entries())
    await pane.getByLabel(label, { exact: true }).fill(answers[at] ?? '');
  await pane.getByRole('checkbox', { name: /^Remove the invented/ }).uncheck();
  await click('Add press');
  expect(await confirm(`Add press ${name}`)).toContain(`Presses becomes`);
}

/** Money that no customer is to see, typed into the cells of the shop. */
async function typeMoney(): Promise<void> {
  const shop = readSheetValues(await savedFile(page), 'Shop');
  const heading = shop.findIndex(([first]) => first === 'Item');
  const row = shop.findIndex(([first]) => first === 'Hourly rate');
  const column = shop[heading]?.indexOf('Bay B') ?? -1;
  await typeInto(page, 'Shop', cellAddress(row, column), hourlyRate);
  await typeInto(page, 'Shop', 'H1', margin);
}

/** The rows by verdict, as the pane counts them. */
const counted = async () =>
  (await pane.getByRole('list', { name: 'Rows by verdict' }).innerText()).replaceAll(/\s+/g, ' ').trim();

async function matchAndCheck(): Promise<void> {
  await goTo(page, 'Takeoff', 'A1');
  await tab('Parts');
  await tab('Check a list');
  await click('Use selected cells');
  await says('10 of 12 columns are read · 1 guessed: look at it');
  expect(await pane.getByLabel(/^Column [A-Z], Stock, is read as$/).inputValue()).toBe('Section');
  await pane.getByLabel(/^Column [A-Z], Clear at tip, is read as$/).selectOption('End');
  await says('11 of 12 columns are read · 1 guessed: look at it · 1 chosen');
  await click('Check this list');
  await says(/A size turned into a date/);
  expect(await counted()).toBe('OK 250 Check input 1,750');
}

async function fixDates(): Promise<void> {
  await click(/A size turned into a date/);
  await click('Fix 1,500 dates');
  await confirm('Fix 1,500 dates');
}

async function addChecks(): Promise<void> {
  await click('Add check columns');
  const preview = await confirm('Add check columns');
  expect(preview).toContain('Takeoff!C1 becomes Section');
  expect(preview).toContain('Takeoff!J1 becomes End');
  expect(preview).toContain('New column Verdict in table Parts, 2,000 cells filled');
  await says('1,000 of 2,000 rows fail');
  await says('250 not fully checked');
}

async function setPress(): Promise<void> {
  const groups = pane.getByRole('button', { name: new RegExp(`^${ofEachKind} rows · `) });
  await pane.getByRole('button', { name: /Bay A has no angle shear/ }).waitFor();
  expect(await groups.count()).toBe(5);
  await click(/Bay A has no angle shear/);
  await click('Set Bay B for these 250 rows');
  expect(await confirm('Set press Bay B for 250 rows')).toContain('250 cells will be overwritten');
  await says('750 of 2,000 rows fail');
  await pane.getByRole('list', { name: 'Rows by verdict' }).filter({ hasText: '1,000' }).waitFor();
  expect(await counted()).toBe(
    'OK 1,000 Edge short 250 Over capacity 250 Hole too small 250 Check input 250',
  );
}

/** π d t times the shear strength, three quarters of the upper tensile strength of A36 (ASTM A36: 58-80 ksi). */
const thickForceTons = (Math.PI * 1.0625 * 0.75 * 0.75 * 80) / 2;
const thickShare = thickForceTons / 40;

async function openWorking(): Promise<void> {
  await goTo(page, 'Takeoff', 'A4');
  await tab('Steps');
  await pane.getByRole('heading', { name: 'thick-1', exact: true }).waitFor();
  const row = pane.getByRole('region', { name: 'Row', exact: true });
  expect(await row.innerText()).toContain(
    `${(thickShare * 100).toFixed(0)}% of the rating, ${thickForceTons.toFixed(1)} US tons · Bay D`,
  );
  const showAll = pane.getByRole('button', { name: /^Show all \d+ steps$/ });
  const steps = Number(/\d+/.exec(await showAll.innerText())?.[0]);
  await showAll.click();
  expect(await pane.getByRole('region', { name: 'Working' }).getByRole('listitem').count()).toBe(steps);
  expect(steps).toBeGreaterThan(6);
}

/** Makes a copy after its preview; gives what the preview said, and the file. */
async function copyOf(kind: 'shop' | 'customer'): Promise<{ preview: string; bytes: Uint8Array }> {
  await pane.getByRole('button', { name: 'Preview the copy' }).first().click();
  const make = pane.getByRole('button', { name: 'Make values copy' }).last();
  await pane
    .getByText('every value the cells show')
    .nth(kind === 'shop' ? 0 : 1)
    .waitFor();
  const preview = await pane.getByRole('region', { name: 'Copies' }).innerText();
  const download = page.waitForEvent('download');
  await make.click();
  const file = await download;
  expect(file.suggestedFilename()).toBe(`takeoff ${kind} copy.xlsx`);
  return { preview, bytes: new Uint8Array(readFileSync(await file.path())) };
}

/** Every formula by its cell. */
function formulasOf(bytes: Uint8Array): Record<string, string> {
  return Object.fromEntries(
    openWorkbook(bytes).sheets.flatMap(({ name, cells }) =>
      (cells?.formulas ?? []).flatMap((formula, at) =>
        formula
          ? [[`${name}!${cellAddress(cells?.rows[at] ?? 0, cells?.columns[at] ?? 0)}`, formula.text]]
          : [],
      ),
    ),
  );
}

const isOurs = (formula: string) => /_xldudf_|TONROW/i.test(formula);
const sheetsOf = (bytes: Uint8Array) => openWorkbook(bytes).sheets.map(({ name }) => name);

function expectNumbers(ours: Uint8Array): void {
  const [, ...rows] = readSheetValues(ours, 'Takeoff').filter(
    ([mark]) => mark !== null && mark !== undefined,
  );
  expect(rows).toHaveLength(rowCount);
  const wrong = rows.filter(([verdict, mark]) => {
    const kind = String(mark).split('-')[0] as Kind;
    return verdict !== (kind === 'clip' ? 'OK' : verdictOf[kind]);
  });
  expect(wrong).toEqual([]);
  expect(rows[2]?.[13]).toBeCloseTo(thickShare, 12);
}

function expectShopCopy(ours: Uint8Array, copy: Uint8Array): void {
  for (const name of sheetsOf(ours)) expect(readSheetValues(copy, name)).toEqual(readSheetValues(ours, name));
  const others = Object.entries(formulasOf(ours)).filter(([, formula]) => !isOurs(formula));
  expect(others).toHaveLength(3 * rowCount);
  expect(Object.entries(formulasOf(copy))).toEqual(others);
  expect(formulasOf(bringFormulasBack(copy).bytes)).toEqual(formulasOf(ours));
}

function expectCustomerCopy(ours: Uint8Array, copy: Uint8Array): void {
  expect(sheetsOf(copy)).toEqual(['Takeoff', 'List check']);
  for (const name of sheetsOf(copy)) expect(readSheetValues(copy, name)).toEqual(readSheetValues(ours, name));
  expect(formulasOf(copy)).toEqual({});
  const parts = Object.entries(unzipSync(copy)).map(([name, part]) => `${name}\n${strFromU8(part)}`);
  for (const secret of [
    hourlyRate,
    margin,
    'Hourly rate',
    'ShopStamp',
    '_xldudf_',
    'TONROW.',
    'webextension',
  ])
    expect(parts.filter((part) => part.toLowerCase().includes(secret.toLowerCase()))).toEqual([]);
}

async function bringBack(copy: Uint8Array): Promise<Uint8Array> {
  await page.locator('#file').setInputFiles(workbookFile('takeoff shop copy.xlsx', copy));
  await page.locator('#file-name', { hasText: 'takeoff shop copy.xlsx' }).waitFor();
  await tab('Hand-off');
  await click('Bring formulas back');
  expect(await confirm('Bring formulas back')).toContain('2 formulas come back into their cells.');
  await says('All 2 formulas are back, each identical to the list.');
  return savedFile(page);
}

it('from an empty workbook to both copies and back, in the one hour of an estimator', async () => {
  const { page: opened, troubles } = await openPage(bench);
  page = opened;
  pane = page.locator('#pane');
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await pasteList();
  await click('Add shop sheet');
  await confirm('Add shop sheet');
  await addPress('Bay C', '70', '9', '1-1/2', '5/8');
  await says('in · 3 presses');
  await click(/^Flat shear:/);
  await pane.getByLabel('On this press').last().selectOption('yes');
  await pane.getByLabel('Blade length, in', { exact: true }).fill('16');
  await page.keyboard.press('Enter');
  await confirm('Change Bay C');
  await click('All presses');
  await addPress('Bay D', '40', '6', '1-1/8', '1/2');
  await says('in · 4 presses');
  await typeMoney();
  await matchAndCheck();
  await fixDates();
  await addChecks();
  await setPress();
  await openWorking();
  const ours = await savedFile(page);
  expectNumbers(ours);
  await tab('Hand-off');
  const shop = await copyOf('shop');
  expect(shop.preview).toContain('2 formulas: their values stay');
  expectShopCopy(ours, shop.bytes);
  const customer = await copyOf('customer');
  for (const text of ['6,001 formulas: their values stay', 'the sheet Shop', 'the name ShopStamp'])
    expect(customer.preview).toContain(text);
  expectCustomerCopy(ours, customer.bytes);
  const back = await bringBack(shop.bytes);
  expect(formulasOf(back)).toEqual(formulasOf(ours));
  for (const name of sheetsOf(ours)) expect(readSheetValues(back, name)).toEqual(readSheetValues(ours, name));
  expect(troubles).toEqual([]);
});
