// @vitest-environment node
import { afterEach, describe, expect, it, vi } from 'vitest';
import { readShopFromWorkbook } from '../../../src/functions/shop/readShopFromWorkbook.js';

interface Sources {
  formula: unknown;
  tables?: Record<string, unknown[][]>;
  names?: Record<string, unknown[][]>;
  sheets?: Record<string, Record<string, unknown[][]>>;
}

/** A workbook whose cells can be read only after they were loaded and fetched, as in the host. */
function stubWorkbook({ formula, tables = {}, names = {}, sheets = {} }: Sources) {
  const counted = { syncs: 0 };
  const loaded: (() => void)[] = [];
  const range = (values: Record<string, unknown>, extra: object = {}) => {
    const shown: Record<string, unknown> = { ...extra };
    shown['load'] = (property: string) => loaded.push(() => (shown[property] = values[property]));
    return shown;
  };
  const sheet = (cells: Record<string, unknown[][]> = {}) => ({
    getRange: (address: string) => range({ values: cells[address] }),
  });
  const stamp = range({ formulas: [[formula]] }, { worksheet: sheet(sheets['']) });
  const workbook = {
    names: {
      getItem: (name: string) => ({
        getRange: () => (name === 'ShopStamp' ? stamp : range({ values: names[name] })),
      }),
    },
    tables: {
      getItem: (name: string) => ({
        getHeaderRowRange: () => range({ values: tables[name]?.slice(0, 1) }),
        getDataBodyRange: () => range({ values: tables[name]?.slice(1) }),
      }),
    },
    worksheets: { getItem: (name: string) => sheet(sheets[name]) },
  };
  const sync = () => {
    counted.syncs += 1;
    for (const fetch of loaded.splice(0)) fetch();
    return Promise.resolve();
  };
  const onReady = vi.fn(() => Promise.resolve());
  vi.stubGlobal('Office', { onReady });
  vi.stubGlobal('Excel', {
    run: (_: object, batch: (context: object) => unknown) => batch({ workbook, sync }),
  });
  return { counted, onReady };
}

afterEach(() => vi.unstubAllGlobals());

const cells = [['Item', 'Unit', 'Bay A']];

describe('readShopFromWorkbook', () => {
  it('reads the ranges the formula names, in two round trips, once the host is ready', async () => {
    const { counted, onReady } = stubWorkbook({
      formula: `=TONROW.SHOP(Presses[#All],Tooling,'My shop'!A1:C9,D1:E9)`,
      tables: { Presses: cells },
      names: { Tooling: [['Press', 'Kind', 'Size']] },
      sheets: { 'My shop': { 'A1:C9': [['Grade']] }, '': { 'D1:E9': [['Setting', 'Value']] } },
    });
    expect(await readShopFromWorkbook()).toEqual({
      presses: cells,
      tools: [['Press', 'Kind', 'Size']],
      grades: [['Grade']],
      settings: [['Setting', 'Value']],
    });
    expect(counted.syncs).toBe(2);
    expect(onReady).toHaveBeenCalledTimes(1);
  });

  it('leaves out what the formula leaves out', async () => {
    stubWorkbook({ formula: '=TONROW.SHOP(Presses[#All])', tables: { Presses: cells } });
    expect(await readShopFromWorkbook()).toEqual({ presses: cells });
  });

  it.each(['', '=SUM(A1:A3)', 42])('rejects a shop cell that holds %j', async (formula) => {
    stubWorkbook({ formula });
    await expect(readShopFromWorkbook()).rejects.toThrow(/ShopStamp: the cell holds no SHOP formula/);
  });

  it('rejects where there is no workbook', async () => {
    await expect(readShopFromWorkbook()).rejects.toThrow('this runtime has no workbook');
  });
});
