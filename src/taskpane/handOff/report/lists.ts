import type { CellValue } from '../../../core/quantity/cellValue.js';
import { plainText } from '../../../core/quantity/cellValue.js';
import { checkRow } from '../../../core/row/checkRow.js';
import { readHeadings } from '../../../core/row/headings/readHeadings.js';
import type { RowJob } from '../../../core/row/job/rowJob.js';
import { verdictKind } from '../../../core/check/verdict.js';
import { lengthAsTyped } from '../../../core/row/lengthAsTyped.js';
import { readRow } from '../../../core/row/readRow.js';
import type { RowResult } from '../../../core/row/rowResult.js';
import type { Shop } from '../../../core/shop/readShop.js';
import type { LongWork } from '../../../workbook/longWork.js';
import type { Workbook } from '../../../workbook/port.js';
import { type PartsList, partsLists } from '../../shared/partsLists.js';
import type { ShopState } from '../../shared/shopState.js';

/** A row of a list with its result. */
export interface ReportRow {
  list: string;
  mark: string;
  /** Row of the sheet, from 1. */
  row: number;
  qty: number;
  /** As the row was read, blank where it could not be. */
  section: string;
  grade: string;
  result: Extract<RowResult, { blank: false }>;
  /** What was read, of a row that is drawn in the report. */
  job?: RowJob;
  /** The length as it is typed, where the row is drawn. */
  length?: string;
}

type Ready = Extract<ShopState, { kind: 'ready' }>;

const sliceRows = 200;

/** What is made of every row of some lists, in slices, so that the pane stays alive and can be told to stop. */
export async function ofEveryRow<Made>(
  lists: readonly PartsList[],
  make: (list: PartsList, cells: readonly CellValue[], row: number) => readonly Made[],
  { signal, progress }: LongWork,
): Promise<Made[]> {
  const total = lists.reduce((sum, { values }) => sum + values.length, 0);
  const made: Made[] = [];
  let done = 0;
  for (const list of lists) {
    for (let from = 0; from < list.values.length; from += sliceRows) {
      signal?.throwIfAborted();
      const slice = list.values.slice(from, from + sliceRows);
      slice.forEach((cells, down) => {
        for (const row of make(list, cells, list.area.row + from + down)) made.push(row);
      });
      done += slice.length;
      progress?.(done, total);
      await new Promise((resolve) => setTimeout(resolve));
    }
  }
  return made;
}

/** Every row of every parts list that is a table, checked with the shop as it is now. */
export async function reportRows(workbook: Workbook, state: Ready, work: LongWork): Promise<ReportRow[]> {
  const lists = await partsLists(workbook, state, work.signal);
  return ofEveryRow(
    lists,
    ({ name, headings }, cells, row) => rowOf(name, row + 1, cells, headings, state.shop),
    work,
  );
}

function rowOf(
  list: string,
  row: number,
  cells: readonly CellValue[],
  headings: readonly CellValue[],
  shop: Shop,
): ReportRow[] {
  const read = readHeadings(headings);
  const result = checkRow(cells, read, shop);
  if (result.blank) return [];
  const job = readRow(cells, read, shop);
  return [
    {
      ...{ list, row, result, qty: job.qty },
      mark: plainText(String(cells[read.fields.mark?.at ?? -1] ?? '')),
      section: job.section?.designation ?? '',
      grade: job.grade?.name ?? '',
      ...(isDrawn(result) ? { job, length: lengthAsTyped(cells, read, job.lengthMm, shop.unit) } : {}),
    },
  ];
}

/** Rows that fail, and those near a limit. */
function isDrawn({ verdict }: Extract<RowResult, { blank: false }>): boolean {
  return verdictKind(verdict) === 'fails' || verdict === 'Near limit';
}
