import { type Verdict, type VerdictKind, verdictKind, verdicts } from '../../core/check/verdict.js';
import type { CellValue } from '../../core/quantity/cellValue.js';
import type { Area } from '../../workbook/area.js';
import type { Workbook } from '../../workbook/port.js';
import type { Table } from '../../workbook/reading.js';

/** The headings of the check columns. */
export const checkHeadings = { verdict: 'Verdict', use: 'Share of rating', note: 'Note' } as const;

/** A table of the workbook that has check columns, with what they show. */
export interface CheckedList {
  table: string;
  area: Area;
  rows: number;
  failing: number;
  /** Rows of which something is not known: it is missing or cannot be read. */
  unknown: number;
  /** Cells that show an error instead of a verdict. */
  errors: number;
  notes: readonly string[];
}

/** The lists of the workbook that are checked on the sheet. */
export async function readCheckedLists(workbook: Workbook): Promise<CheckedList[]> {
  const tables = (await workbook.tables()).filter(({ headings }) => columnOf(headings, 'verdict') >= 0);
  const places = tables.flatMap((table) => [columnArea(table, 'verdict'), columnArea(table, 'note')]);
  const read = places.length > 0 ? await workbook.read(places, ['values']) : [];
  return tables.map((table, at) =>
    summary(table, read[2 * at]?.values ?? [], read[2 * at + 1]?.values ?? []),
  );
}

function summary({ name, area }: Table, words: CellValue[][], notes: CellValue[][]): CheckedList {
  const counts = new Map<Verdict, number>();
  let errors = 0;
  for (const [word] of words) {
    const verdict = verdicts.find((each) => each === word);
    if (verdict) counts.set(verdict, (counts.get(verdict) ?? 0) + 1);
    else if (typeof word === 'string' && word.startsWith('#')) errors += 1;
  }
  const ofKind = (...kinds: VerdictKind[]) =>
    [...counts].reduce((sum, [word, count]) => sum + (kinds.includes(verdictKind(word)) ? count : 0), 0);
  const texts = notes.map(([note]) => String(note ?? ''));
  return {
    table: name,
    area,
    rows: ofKind('passes', 'open', 'elsewhere', 'unknown', 'fails'),
    failing: ofKind('fails'),
    unknown: ofKind('open', 'unknown'),
    errors,
    notes: texts,
  };
}

/** A column that the user had before keeps its name, and ours is called Check note. */
function columnOf(headings: readonly string[], item: keyof typeof checkHeadings): number {
  const besideOwn = headings.findIndex(
    (heading) => heading.trim().toLowerCase() === `check ${checkHeadings[item].toLowerCase()}`,
  );
  if (besideOwn >= 0) return besideOwn;
  return headings.findIndex((heading) => heading.trim().toLowerCase() === checkHeadings[item].toLowerCase());
}

/** The data cells of a check column; of the verdicts where a table has no notes. */
function columnArea({ area, headings, hasTotals }: Table, item: keyof typeof checkHeadings): Area {
  const found = columnOf(headings, item);
  const at = found < 0 ? columnOf(headings, 'verdict') : found;
  const rows = Math.max(1, area.rows - 1 - (hasTotals ? 1 : 0));
  return { ...area, row: area.row + 1, rows, column: area.column + at, columns: 1 };
}
