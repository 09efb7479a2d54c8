import type { ShopTables } from '../../core/shop/readShop.js';
import { plainMatrix } from '../hostValue.js';
import { type ShopRange, shopRanges } from './shopFormula.js';

const stampName = 'ShopStamp';

/**
 * Reads the formula of the cell named ShopStamp and the ranges it names: two round trips to the host.
 * Rejects where there is no workbook to read, or it has no such cell.
 */
export async function readShopFromWorkbook(): Promise<ShopTables> {
  // The script library brings the workbook API only when it has met its host.
  if (typeof Office !== 'undefined') await Office.onReady();
  if (typeof Excel === 'undefined') throw new Error('this runtime has no workbook');
  return Excel.run(async (context) => {
    const stamp = context.workbook.names.getItem(stampName).getRange();
    stamp.load('formulas');
    await context.sync();
    const formula: unknown = stamp.formulas[0]?.[0];
    const ranges = shopRanges(String(formula)).map((named) =>
      named ? rangeOf(named, context, stamp) : undefined,
    );
    for (const range of ranges) range?.load('values');
    await context.sync();
    const [presses, tools, grades, settings] = ranges.map((range) =>
      range ? plainMatrix(range.values) : undefined,
    );
    return { presses: presses ?? [], tools, grades, settings };
  });
}

function rangeOf(named: ShopRange, context: Excel.RequestContext, stamp: Excel.Range): Excel.Range {
  const { workbook } = context;
  switch (named.kind) {
    case 'table':
      return workbook.tables.getItem(named.name).getRange();
    case 'name':
      return workbook.names.getItem(named.name).getRange();
    case 'cells': {
      const sheet = named.sheet === undefined ? stamp.worksheet : workbook.worksheets.getItem(named.sheet);
      return sheet.getRange(named.address);
    }
  }
}
