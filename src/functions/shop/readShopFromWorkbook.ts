import type { CellValue } from '../../core/quantity/cellValue.js';
import type { ShopTables } from '../../core/shop/readShop.js';
import { plainMatrix } from '../descriptor/hostValue.js';
import { type ShopRange, shopRanges } from '../../core/shop/shopFormula.js';
import { StartUpFailure } from './startUp.js';

const stampName = 'ShopStamp';
const longestMeetingMs = 5000;

/**
 * Reads the formula of the cell named ShopStamp and the ranges it names: two round trips to the host.
 * Rejects where there is no workbook to read, or it has no such cell.
 */
export async function readShopFromWorkbook(): Promise<ShopTables> {
  await hostMet();
  if (typeof Excel === 'undefined') throw new StartUpFailure('no workbook', 'this runtime has no workbook');
  return Excel.run({ delayForCellEdit: true }, async (context) => {
    const stamp = context.workbook.names.getItem(stampName).getRange();
    stamp.load('formulas');
    await context.sync().catch(explainStamp);
    const formula: unknown = stamp.formulas[0]?.[0];
    const named = shopRanges(String(formula));
    const read = named.map((range) => (range ? rangesOf(range, context, stamp) : undefined));
    for (const parts of read) for (const range of parts ?? []) range.load('values');
    await context.sync().catch((error: unknown) => explainMissing(error, named, context));
    const [presses, tools, grades, settings] = read.map((parts) => parts && cellsOf(parts));
    return { presses: presses ?? [], tools, grades, settings };
  });
}

/** The script library brings the workbook API only when it has met its host; without one it waits for ever. */
async function hostMet(): Promise<void> {
  if (typeof Office === 'undefined') return;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const limit = new Promise((resolve) => (timer = setTimeout(resolve, longestMeetingMs)));
  await Promise.race([Office.onReady(), limit]);
  clearTimeout(timer);
}

/** What SHOP is given of a table, its headings and its data, is not all of it where it has a total row. */
function rangesOf(named: ShopRange, context: Excel.RequestContext, stamp: Excel.Range): Excel.Range[] {
  const { workbook } = context;
  switch (named.kind) {
    case 'table': {
      const table = workbook.tables.getItem(named.name);
      return [table.getHeaderRowRange(), table.getDataBodyRange()];
    }
    case 'name':
      return [workbook.names.getItem(named.name).getRange()];
    case 'cells': {
      const sheet = named.sheet === undefined ? stamp.worksheet : workbook.worksheets.getItem(named.sheet);
      return [sheet.getRange(named.address)];
    }
  }
}

function cellsOf(parts: readonly Excel.Range[]): CellValue[][] {
  return parts.flatMap((range) => plainMatrix(range.values));
}

function isMissing(error: unknown): boolean {
  const { code } = (error ?? {}) as { code?: unknown };
  return code === 'ItemNotFound' || code === 'InvalidReference';
}

function explainStamp(error: unknown): never {
  if (!isMissing(error)) throw error;
  throw new StartUpFailure(
    'no ShopStamp',
    'The workbook has no cell named ShopStamp: add the shop sheet, or give that name to the cell with the SHOP formula.',
    { cause: error },
  );
}

/** One more round trip, only after a failure, finds out which of the ranges is not there. */
async function explainMissing(
  error: unknown,
  named: readonly (ShopRange | undefined)[],
  context: Excel.RequestContext,
): Promise<never> {
  if (!isMissing(error)) throw error;
  const { tables, names, worksheets } = context.workbook;
  const asked = named.flatMap((range) => {
    if (range?.kind === 'table') return { name: range.name, found: tables.getItemOrNullObject(range.name) };
    if (range?.kind === 'name') return { name: range.name, found: names.getItemOrNullObject(range.name) };
    return range?.sheet === undefined
      ? []
      : { name: range.sheet, found: worksheets.getItemOrNullObject(range.sheet) };
  });
  for (const { found } of asked) found.load('name');
  await context.sync();
  const missing = asked.find(({ found }) => found.isNullObject)?.name;
  throw new StartUpFailure(
    'table missing',
    missing === undefined
      ? 'The formula in ShopStamp names cells that are not there: give SHOP whole tables with their headings.'
      : `The formula in ShopStamp names "${missing}", which is not in the workbook: bring it back or correct the formula.`,
    { cause: error },
  );
}
