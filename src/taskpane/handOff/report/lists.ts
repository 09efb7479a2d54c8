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
import type { OtherRow, OtherRowAt } from '../../../core/row/rowKind.js';
import { hiddenRowSentences } from '../../../core/say/hiddenRows.js';
import { otherRowSentences } from '../../../core/say/otherRows.js';
import { toldByList } from '../../../core/say/toldByList.js';
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
  /** The length as it is typed; blank where it is not known. */
  length: string;
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

/** The rows of a report, and what is to be known of the others, in sentences. */
export interface RowsOfReport {
  rows: ReportRow[];
  told: string[];
}

/** Every row of every parts list that is a table, checked with the shop as it is now; hidden ones where asked for. */
export async function reportRows(
  workbook: Workbook,
  state: Ready,
  work: LongWork,
  { withHidden = true } = {},
): Promise<RowsOfReport> {
  const lists = await partsLists(workbook, state, work.signal);
  const unseen = new Map(lists.map(({ name, hidden }) => [name, new Set(hidden)]));
  const others: (OtherRowAt & { list: string })[] = [];
  const all = await ofEveryRow(
    lists,
    ({ name: list, headings }, cells, row) => {
      const made = rowOf(list, row + 1, cells, headings, state.shop);
      if (!('is' in made)) return [made];
      if (made.is) others.push({ list, row: row + 1, is: made.is });
      return [];
    },
    work,
  );
  const isHidden = ({ list, row }: ReportRow) => unseen.get(list)?.has(row - 1) === true;
  const told = toldByList(lists, ({ name }) => {
    const hidden = all.filter((row) => row.list === name && isHidden(row)).map(({ row }) => row);
    return [
      ...hiddenRowSentences(hidden, withHidden ? 'in the report' : 'left out'),
      ...otherRowSentences(others.filter(({ list }) => list === name)),
    ];
  });
  return { rows: withHidden ? all : all.filter((row) => !isHidden(row)), told };
}

function rowOf(
  list: string,
  row: number,
  cells: readonly CellValue[],
  headings: readonly CellValue[],
  shop: Shop,
): ReportRow | { is: OtherRow | undefined } {
  const read = readHeadings(headings);
  const result = checkRow(cells, read, shop);
  if (result.blank) return { is: result.is };
  const job = readRow(cells, read, shop);
  return {
    ...{ list, row, result, qty: job.qty },
    mark: plainText(String(cells[read.fields.mark?.at ?? -1] ?? '')),
    section: job.section?.designation ?? '',
    grade: job.grade?.name ?? '',
    length: lengthAsTyped(cells, read, job.lengthMm, shop.unit),
    ...(isDrawn(result) ? { job } : {}),
  };
}

/** Rows that fail, and those near a limit. */
function isDrawn({ verdict }: Extract<RowResult, { blank: false }>): boolean {
  return verdictKind(verdict) === 'fails' || verdict === 'Near limit';
}
