import { useEffect, useState } from 'react';
import type { CellValue } from '../../../core/quantity/cellValue.js';
import { type Area, overlap } from '../../../workbook/area.js';
import type { Workbook } from '../../../workbook/port.js';
import type { ShopState } from '../../shared/shopState.js';
import { useLatest } from '../../shared/useLatest.js';
import { useWatch } from '../../shared/useShop.js';
import { type ListSource, listSources } from './listSource.js';

export interface ListOnSheet {
  sources: readonly ListSource[];
  source: ListSource | undefined;
  area: Area | undefined;
  values: CellValue[][];
}

/** The lists of the workbook and the cells of the chosen one, read again when they change. */
export function useList(workbook: Workbook, shop: ShopState) {
  const [chosen, setChosen] = useState<string>();
  const [list, setList] = useState<ListOnSheet>();
  /** A list in cells is kept while the user selects other cells. */
  const [cells, setCells] = useState<ListSource>();
  const taken = (answer: ListOnSheet) => {
    setList(answer);
    setChosen(answer.source?.key);
    if (answer.source && !answer.source.table) setCells(answer.source);
  };
  const read = useLatest(async () => {
    const { sources, first } = await listSources(workbook, shop);
    const become = cells && sources.find(({ table, area }) => table && overlap(area, cells.area));
    const all = cells && !become ? [...sources.filter(({ key }) => key !== cells.key), cells] : sources;
    const source = all.find(({ key }) => key === (chosen ?? first)) ?? become ?? all[0];
    const [held] = source ? await workbook.read([source.area], ['values']) : [];
    return { sources: all, source, area: held?.area, values: held?.values ?? [] };
  }, taken);
  useEffect(() => read(), [read, workbook, chosen]);
  useWatch(workbook, (change) => {
    if (change.kind === 'sheets' || change.kind === 'moved') read();
    else if (
      change.kind === 'cells' &&
      (!list?.area || change.areas.some((area) => overlaps(area, list.area)))
    )
      read();
  });
  const takeSelection = () => {
    setChosen(undefined);
    setCells(undefined);
    read();
  };
  return { list, choose: setChosen, takeSelection };
}

/** A change right of a list may be a new column of its table. */
function overlaps(area: Area, list: Area | undefined): boolean {
  return list !== undefined && overlap(area, { ...list, columns: list.columns + 1, rows: list.rows + 1 });
}
