import { nameKey } from '../../core/shop/table.js';
import { verdictKind, verdicts } from '../../core/check/verdict.js';
import { type CellValue, isBlank } from '../../core/quantity/cellValue.js';
import { type RowItem, rowItems } from '../../core/row/rowItem.js';
import type { Area } from '../../workbook/area.js';
import type { Workbook } from '../../workbook/port.js';
import type { Table } from '../../workbook/reading.js';

/** The headings of the check columns. */
export const checkHeadings = Object.fromEntries(
  rowItems.map(({ item, heading }) => [item, heading]),
) as Record<RowItem, string>;

/** A table of the workbook that has check columns, with what they show. */
export interface CheckedList {
  table: string;
  area: Area;
  rows: number;
  failing: number;
  /** Rows that are not fully checked: something is missing, cannot be read, or is open. */
  unknown: number;
  /** Cells that show an error instead of a verdict. */
  errors: number;
}

/** The lists of the workbook that are checked on the sheet. */
export async function readCheckedLists(workbook: Workbook): Promise<CheckedList[]> {
  const tables = (await workbook.tables()).filter(
    ({ headings }) => columnOf(headings, checkHeadings.verdict) >= 0,
  );
  const places = tables.flatMap((table) =>
    [checkHeadings.verdict, checkHeadings.open].map((heading) => columnArea(table, heading)),
  );
  const read = places.length > 0 ? await workbook.read(places, ['values']) : [];
  return tables.map((table, at) =>
    summary(table, read[2 * at]?.values ?? [], read[2 * at + 1]?.values ?? []),
  );
}

function summary({ name, area, headings }: Table, words: CellValue[][], opens: CellValue[][]): CheckedList {
  const hasOpen = columnOf(headings, checkHeadings.open) >= 0;
  const kinds = words.map(([word]) => {
    const verdict = verdicts.find((each) => each === word);
    return verdict && verdictKind(verdict);
  });
  const isOpen = (at: number) => hasOpen && !isBlank(opens[at]?.[0]);
  return {
    table: name,
    area,
    rows: kinds.filter((kind) => kind !== undefined).length,
    failing: kinds.filter((kind) => kind === 'fails').length,
    unknown: kinds.filter(
      (kind, at) => kind === 'open' || kind === 'unknown' || (kind !== undefined && isOpen(at)),
    ).length,
    errors: words.filter(([word]) => typeof word === 'string' && word.startsWith('#')).length,
  };
}

/** A column that the user had before keeps its name, and ours is called Check note. */
function columnOf(headings: readonly string[], heading: string): number {
  const names = headings.map((each) => each.trim().toLowerCase());
  const besideOwn = names.indexOf(`check ${heading.toLowerCase()}`);
  return besideOwn >= 0 ? besideOwn : names.indexOf(heading.toLowerCase());
}

/** The data cells of a check column; of the verdicts where a table has no such column. */
function columnArea({ area, headings, hasTotals }: Table, heading: string): Area {
  const found = columnOf(headings, heading);
  const at = found < 0 ? columnOf(headings, checkHeadings.verdict) : found;
  const rows = Math.max(1, area.rows - 1 - (hasTotals ? 1 : 0));
  return { ...area, row: area.row + 1, rows, column: area.column + at, columns: 1 };
}

/** Whether a list has a column of verdicts. */
export function hasVerdicts(headings: readonly CellValue[]): boolean {
  return headings.some((heading) => nameKey(heading) === nameKey(checkHeadings.verdict));
}
