import { useEffect, useState } from 'react';
import { overlap } from '../../workbook/area.js';
import type { Workbook } from '../../workbook/port.js';
import { type PartsList, partsLists } from '../shared/partsLists.js';
import type { ShopTable } from '../shared/shopState.js';
import { useLatest } from '../shared/useLatest.js';
import { useWatch } from '../shared/useShop.js';
import type { ReadyShop } from '../shop/sheet/readyShop.js';
import { readStockTable } from './stockTable.js';

/** What plans are made from: the parts lists of the workbook and its Stock table. */
export interface StockSource {
  lists: readonly PartsList[];
  stock: ShopTable | undefined;
}

/** The lists and the Stock table, read again when they change; undefined until they are read. */
export function useStockSource(workbook: Workbook, shop: ReadyShop): StockSource | undefined {
  const [source, setSource] = useState<StockSource>();
  const read = useLatest(async (): Promise<StockSource> => {
    const [lists, stock] = await Promise.all([
      partsLists(workbook, shop, undefined),
      readStockTable(workbook),
    ]);
    return { lists, stock };
  }, setSource);
  useEffect(() => read(), [read, workbook, shop]);
  useWatch(workbook, (change) => {
    if (['sheets', 'moved', 'shown'].includes(change.kind)) read();
    if (change.kind !== 'cells') return;
    const ours = [...(source?.lists ?? []), ...(source?.stock ? [source.stock] : [])].map(({ area }) => area);
    const beside = ours.map((area) => ({ ...area, rows: area.rows + 1, columns: area.columns + 1 }));
    if (ours.length === 0 || change.areas.some((area) => beside.some((each) => overlap(area, each)))) read();
  });
  return source;
}
