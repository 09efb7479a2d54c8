import type { RowResult } from '../../core/row/rowResult.js';
import type { Shop } from '../../core/shop/readShop.js';
import type { Area } from '../../workbook/area.js';
import type { Workbook } from '../../workbook/port.js';
import { checkRows } from '../parts/list/checkRows.js';
import { isPartsList } from '../shared/isPartsList.js';
import type { ShopProblem } from '../shared/shopState.js';

type Refused = NonNullable<ShopProblem['refused']>;

/** How many rows of lists wait on a cell of the shop that cannot be read; rows that another press runs do not. */
export async function waitingRows(
  workbook: Workbook,
  shop: Shop,
  lists: readonly { area: Area }[],
  refused: Refused,
): Promise<number> {
  const read = await workbook.read(
    lists.map(({ area }) => area),
    ['values'],
  );
  let waiting = 0;
  for (const { values } of read) {
    const [headings = [], ...rows] = values;
    if (!isPartsList(headings)) continue;
    const results = (await checkRows(headings.map(String), rows, shop, {})) ?? [];
    waiting += results.filter((result) => waitsOn(result, refused)).length;
  }
  return waiting;
}

function waitsOn(row: RowResult, { problem, argument }: Refused): boolean {
  if (row.blank) return false;
  return row.findings.some(
    (finding) =>
      finding.rule === 'refusal' &&
      finding.failure.problem === problem &&
      (argument === undefined || finding.failure.argument === argument),
  );
}
