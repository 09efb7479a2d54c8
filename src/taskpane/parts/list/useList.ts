import { useEffect, useRef, useState } from 'react';
import type { CellValue } from '../../../core/quantity/cellValue.js';
import { type Area, overlap } from '../../../workbook/area.js';
import type { Workbook } from '../../../workbook/port.js';
import type { Arrangement } from '../../../workbook/reading.js';
import type { ShopState } from '../../shared/shopState.js';
import { useLatest } from '../../shared/useLatest.js';
import { useWatch } from '../../shared/useShop.js';
import { headingRowsTried } from './headingRow.js';
import { type ListSource, listSources } from './listSource.js';
import { readSheetChecks, type SheetChecks } from './sheetChecks.js';

export interface ListOnSheet {
  sources: readonly ListSource[];
  source: ListSource | undefined;
  area: Area | undefined;
  values: CellValue[][];
  /** What the first rows show, where one of them is to be picked. */
  shown: string[][];
  checks: SheetChecks | undefined;
  arrangement: Arrangement;
}

/** The lists of the workbook and the cells of the chosen one, read again when they change. */
export function useList(workbook: Workbook, shop: ShopState) {
  const [chosen, setChosen] = useState<string>();
  const [list, setList] = useState<ListOnSheet>();
  const [refusal, setRefusal] = useState<string>();
  /** A list in cells is kept while the user selects other cells. */
  const [cells, setCells] = useState<ListSource>();
  /** The selection was asked for: it goes before what is shown. */
  const taking = useRef(false);
  const read = useLatest(
    async () => {
      const found = await listSources(workbook, shop);
      const anew = taking.current && found.refusal === undefined;
      const { all, source } = chooseFrom(found, anew ? undefined : cells, anew ? undefined : chosen);
      return { ...(await readList(workbook, source)), sources: all, source, refusal: found.refusal };
    },
    ({ refusal: why, ...answer }) => {
      setList(answer);
      setChosen(answer.source?.key);
      if (answer.source && !answer.source.table) setCells(answer.source);
      if (taking.current) setRefusal(why);
      taking.current = false;
    },
  );
  useEffect(() => read(), [read, workbook]);
  useWatch(workbook, (change) => {
    // Nothing is written by what was read before columns of the list were moved.
    if (change.kind === 'moved' && change.ours) setList(undefined);
    if (['sheets', 'moved', 'shown'].includes(change.kind)) read();
    else if (
      change.kind === 'cells' &&
      (!list?.area || change.areas.some((area) => overlaps(area, list.area)))
    )
      read();
  });
  const takeSelection = () => {
    taking.current = true;
    read();
  };
  const choose = (key: string) => {
    setRefusal(undefined);
    setChosen(key);
    read();
  };
  return { list, refusal, choose, takeSelection };
}

function chooseFrom(
  { sources, first }: { sources: readonly ListSource[]; first: string },
  kept: ListSource | undefined,
  chosen: string | undefined,
) {
  const become = kept && sources.find(({ table, area }) => table && overlap(area, kept.area));
  const all = kept && !become ? [...sources.filter(({ key }) => key !== kept.key), kept] : sources;
  const source = all.find(({ key }) => key === (chosen ?? first)) ?? become ?? all[0];
  return { all, source };
}

const asUsual: Arrangement = { merged: [], hidden: [] };

async function readList(workbook: Workbook, source: ListSource | undefined) {
  if (!source) return { area: undefined, values: [], shown: [], checks: undefined, arrangement: asUsual };
  const { area } = source;
  const top = { ...area, rows: Math.min(area.rows, headingRowsTried) };
  const [[held], [first], [arrangement]] = await Promise.all([
    workbook.read([area], ['values']),
    source.table ? [] : workbook.read([top], ['text']),
    workbook.arrangement([area]),
  ]);
  const values = held?.values ?? [];
  const checks = source.table && (await readSheetChecks(workbook, area, values[0] ?? []));
  return {
    ...{ area: held?.area, values, shown: first?.text ?? [], checks },
    arrangement: arrangement ?? asUsual,
  };
}

/** A change right of a list may be a new column of its table. */
function overlaps(area: Area, list: Area | undefined): boolean {
  return list !== undefined && overlap(area, { ...list, columns: list.columns + 1, rows: list.rows + 1 });
}
