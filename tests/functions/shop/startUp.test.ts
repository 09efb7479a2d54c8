// @vitest-environment node
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { readShop } from '../../../src/core/shop/readShop.js';
import { readShopFromWorkbook } from '../../../src/functions/shop/readShopFromWorkbook.js';
import type { StartUpState } from '../../../src/core/shop/startUpState.js';
import { StartUp } from '../../../src/functions/shop/startUp.js';
import { startUp as startUpShown } from '../../../src/workbook/startUp.js';
import { bayA, pressTable, settingTable } from '../../support/sampleShop.js';
import { OfficeHost } from '../../workbook/support/officeHost.js';

const formula = '=TONROW.SHOP(Presses[[#Headers],[#Data]],,,Settings[[#Headers],[#Data]])';
const presses = pressTable({ 'Bay A': bayA });
const settings = settingTable({ Units: 'in' });

let host: OfficeHost;

/** A shop sheet: the stamp in A1, the tables below. */
function shopSheet(tables: Record<string, readonly (readonly unknown[])[]>, stamp = formula): void {
  const sheet = host.book.addSheet('Shop');
  sheet.put(0, 0, { value: 'stamp', format: 'General', formula: stamp });
  host.book.addName('ShopStamp', { sheet: 'Shop', row: 0, column: 0, rows: 1, columns: 1 });
  let row = 2;
  for (const [name, rows] of Object.entries(tables)) {
    rows.forEach((cells, down) =>
      cells.forEach((cell, column) =>
        sheet.put(row + down, column, { value: (cell ?? '') as string | number, format: 'General' }),
      ),
    );
    const area = { sheet: 'Shop', row, column: 0, rows: rows.length, columns: rows[0]?.length ?? 0 };
    host.book.rename(host.book.addTable(area), name);
    row += rows.length + 2;
  }
}

async function startedUp(): Promise<StartUpState> {
  const startUp = new StartUp(readShopFromWorkbook);
  await startUp.readTables().catch(() => undefined);
  return startUp.state;
}

beforeEach(() => {
  host = new OfficeHost();
  host.book.addSheet('Parts');
});
afterEach(() => vi.unstubAllGlobals());

describe('start-up', () => {
  it('is reading until it has read', () => {
    expect(new StartUp(readShopFromWorkbook).state).toEqual({ state: 'reading' });
  });

  it('is well with the stamp of a shop that can be read, in two round trips', async () => {
    shopSheet({ Presses: presses, Settings: settings });
    expect(await startedUp()).toEqual({ state: 'ok', stamp: readShop({ presses, settings }).stamp });
    expect(host.requests).toBe(2);
  });

  it('reads a table without its total row, as the formula does', async () => {
    shopSheet({ Presses: [...presses, ['Total', '', 3]], Settings: settings });
    const table = host.book.findTable('Presses');
    if (table) table.showTotals = true;
    expect(await startedUp()).toEqual({ state: 'ok', stamp: readShop({ presses, settings }).stamp });
  });

  it('says that there is no cell named ShopStamp', async () => {
    expect(await startedUp()).toEqual({
      state: 'no ShopStamp',
      messages: [expect.stringMatching(/^The workbook has no cell named ShopStamp: add the shop sheet/)],
    });
  });

  it('says that ShopStamp holds another formula', async () => {
    shopSheet({ Presses: presses }, '=SUM(A1:A3)');
    expect(await startedUp()).toMatchObject({
      state: 'no SHOP formula',
      messages: [expect.stringContaining('holds no SHOP formula')],
    });
  });

  it.each([
    ['Presses', { Settings: settings }],
    ['Settings', { Presses: presses }],
  ])('names the table %s where it is missing', async (name, tables) => {
    shopSheet(tables);
    expect(await startedUp()).toMatchObject({
      state: 'table missing',
      messages: [expect.stringContaining(`names "${name}", which is not in the workbook`)],
    });
    expect(host.requests).toBe(3);
  });

  it.each([
    ['Gone', '=TONROW.SHOP(Gone!A1:C9)'],
    ['Tooling', '=TONROW.SHOP(Tooling)'],
  ])('names the place %s where it is missing', async (name, stamp) => {
    shopSheet({ Presses: presses }, stamp);
    expect(await startedUp()).toMatchObject({
      state: 'table missing',
      messages: [expect.stringContaining(`"${name}"`)],
    });
  });

  it('says what is wrong with tables that are no shop', async () => {
    shopSheet({
      Presses: [
        ['a', 'b'],
        ['c', 'd'],
      ],
      Settings: settings,
    });
    expect(await startedUp()).toMatchObject({
      state: 'data unreadable',
      messages: [expect.stringContaining('Presses: there is no column "Item"')],
    });
  });

  it('names each cell that cannot be read, with the stamp of the rest', async () => {
    const typo = presses.map((row) => (row[0] === 'Punch throat' ? ['Punch throat', '', 'abc'] : row));
    shopSheet({ Presses: typo, Settings: settings });
    expect(await startedUp()).toMatchObject({
      state: 'incomplete',
      stamp: expect.stringContaining('Bay A incomplete'),
      messages: [expect.stringContaining("'abc'")],
    });
  });

  it('says so where the host does not answer', async () => {
    shopSheet({ Presses: presses });
    host.editing = true;
    expect(await startedUp()).toEqual({ state: 'editing' });
  });

  it('says so where there is no workbook', async () => {
    vi.stubGlobal('Excel', undefined);
    expect(await startedUp()).toEqual({ state: 'no workbook', messages: ['this runtime has no workbook'] });
  });
});

describe('what the pane is shown', () => {
  it('is the state the functions keep, in the same words', async () => {
    shopSheet({ Presses: presses, Settings: settings });
    const startUp = new StartUp(readShopFromWorkbook);
    vi.stubGlobal('tonrowStartUp', startUp);
    await startUp.readTables();
    expect(startUpShown()?.state).toBe(startUp.state);
  });

  it('is told of every change, and what asking for a calculation came to', async () => {
    shopSheet({ Presses: presses, Settings: settings });
    const startUp = new StartUp(readShopFromWorkbook, () => Promise.resolve('manual'));
    const listener = vi.fn();
    const stop = startUp.listen(listener);
    await startUp.readTables();
    expect(listener).toHaveBeenCalledTimes(1);
    await startUp.recalculate();
    expect(startUp.recalculation).toBe('manual');
    expect(listener).toHaveBeenCalledTimes(2);
    stop();
    await startUp.readTables();
    expect(listener).toHaveBeenCalledTimes(2);
  });

  it('is nothing where the functions are not loaded', () => {
    expect(startUpShown()).toBeUndefined();
  });
});
