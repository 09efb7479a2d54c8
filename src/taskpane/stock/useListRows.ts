import { useEffect, useMemo, useRef, useState } from 'react';
import { InputError } from '../../core/inputError.js';
import { readHeadings } from '../../core/row/headings/readHeadings.js';
import type { Shop } from '../../core/shop/readShop.js';
import { type ListRow, listRow, type OtherListRow } from '../../core/stock/list/listRow.js';
import type { LongWork } from '../../workbook/longWork.js';
import { inSlices } from '../shared/inSlices.js';
import type { PartsList } from '../shared/partsLists.js';
import { useLatest } from '../shared/useLatest.js';
import type { StockSource } from './useStockSource.js';

type ListRows = readonly (ListRow | OtherListRow)[] | { problem: string };

/**
 * The checked rows of the list of that name, or of all; checked in slices, so that the pane stays alive. Those of before
 * stay until the new ones are there; undefined until the first are.
 */
export function useListRows(source: StockSource | undefined, list: string, shop: Shop): ListRows | undefined {
  const lists = useMemo(() => {
    const chosen = source?.lists.filter(({ name }) => name === list) ?? [];
    return chosen.length > 0 ? chosen : source?.lists;
  }, [source, list]);
  const [rows, setRows] = useState<ListRows>();
  const aborter = useRef<AbortController>(undefined);
  const read = useLatest(
    async () => {
      const own = new AbortController();
      aborter.current = own;
      return lists && rowsOf(lists, shop, own);
    },
    (answer) => answer && setRows(answer),
  );
  useEffect(() => {
    read();
    return () => aborter.current?.abort();
  }, [read, lists, shop]);
  return rows;
}

async function rowsOf(
  lists: readonly PartsList[],
  shop: Shop,
  { signal }: Required<Pick<LongWork, 'signal'>>,
): Promise<ListRows | undefined> {
  try {
    const rows: (ListRow | OtherListRow)[] = [];
    for (const { name, headings: names, values, area, hidden } of lists) {
      const headings = readHeadings(names);
      const unseen = new Set(hidden);
      const places = values.map((cells, index) => {
        const isHidden = unseen.has(area.row + index);
        return { cells, place: { list: name, row: index + 1, onSheet: area.row + index + 1, isHidden } };
      });
      const made = await inSlices(places, ({ cells, place }) => listRow(cells, headings, place, shop), {
        signal,
      });
      if (!made) return undefined;
      for (const row of made) if (row) rows.push(row);
    }
    return rows;
  } catch (error) {
    if (error instanceof InputError) return { problem: error.message };
    throw error;
  }
}
