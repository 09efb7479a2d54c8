import { freeName } from '../../../sheet/names.js';
import { type CellValue, isBlank } from '../../../core/quantity/cellValue.js';
import type { RowItem } from '../../../core/row/rowItem.js';
import { type Area, cellAddress, cellOf, overlap } from '../../../workbook/area.js';
import { columnLetters } from '../../../sheet/address.js';
import type { Content } from '../../../workbook/content.js';
import type { Workbook } from '../../../workbook/port.js';
import type { Table } from '../../../workbook/reading.js';
import type { Step } from '../../../workbook/step.js';
import type { Proposal } from '../../shared/change/proposal.js';
import { checkHeading, formatOf, itemsWith, widthOf } from './checkColumn.js';
import { textFormats } from './textFormats.js';
import {
  type CheckedColumns,
  listCheckFormula,
  listCheckRow,
  lookUpFormula,
  rowCheckFormula,
} from './checkFormulas.js';
import type { ColumnMatch } from './columnMatch.js';
import { inputSpan, type ListRead } from './listRead.js';
import { mergedRemarks, subheadRows, unmergeSteps } from './mergedCells.js';

/** From so many rows on, one call for the whole list stands on a sheet of its own. */
export const listCheckFrom = 500;

/** What adding checks to a list writes, or why it cannot be done; `chosen` are columns beside the usual ones. */
export async function addChecks(
  workbook: Workbook,
  list: ListRead,
  matches: readonly ColumnMatch[],
  chosen: readonly RowItem[] = [],
): Promise<Proposal | string> {
  const span = inputSpan(matches, list.checks);
  if (!span) return 'No column of this list is read.';
  const [sheets, tables, names, [arrangement], [look]] = await Promise.all([
    workbook.sheets(),
    workbook.tables(),
    workbook.names(),
    workbook.arrangement([list.area]),
    workbook.read([list.area], ['formats']),
  ]);
  const merged = arrangement?.merged ?? [];
  const taken = [...tables, ...names].map(({ name }) => name);
  const table = list.source.table?.name ?? freeName('Parts', taken);
  const sheet = freeName(
    'List check',
    sheets.map(({ name }) => name),
    { joint: ' ' },
  );
  const hasPress = matches.some(({ field }) => field === 'Press');
  const last = hasPress ? (span.last.rename ?? span.last.heading) : 'Press';
  const first = span.first.rename ?? span.first.heading;
  const whole = list.rows.length >= listCheckFrom;
  const items = itemsWith(chosen);
  const plan: ChecksPlan = {
    list,
    matches,
    items,
    table,
    columns: { table, first, last },
    lastRead: span.last.heading,
    hasPress,
    sheet: whole ? sheet : undefined,
    merged,
    formats: look?.formats.slice(1) ?? [],
    unchecked: subheadRows(list, matches, merged),
  };
  // The verdict moves the list by a column; the others stand right of it.
  const columns = items.length + (hasPress ? 0 : 1);
  const filled = list.source.table ? undefined : await filledBeside(workbook, list, columns, tables);
  if (filled !== undefined)
    return `The cells right of the list are filled: ${filled}. Make room for ${columns} columns, or make the list a table on the sheet.`;
  return {
    title: 'Add check columns',
    remarks: remarks(plan),
    steps: stepsOf(plan),
  };
}

interface ChecksPlan {
  list: ListRead;
  matches: readonly ColumnMatch[];
  items: readonly RowItem[];
  table: string;
  columns: CheckedColumns;
  /** The heading of the last column that is read, as it is now. */
  lastRead: string;
  hasPress: boolean;
  /** The sheet of LISTCHECK; undefined where each row has its own ROWCHECK. */
  sheet: string | undefined;
  /** Merged cells of the list, which no table holds. */
  merged: readonly Area[];
  /** The number formats of its rows. */
  formats: readonly (readonly string[])[];
  /** Rows of merged titles, from 0 below the headings: nothing is written there. */
  unchecked: ReadonlySet<number>;
}

function remarks({ list, hasPress, sheet, merged }: ChecksPlan): string[] {
  const rows = list.rows.length.toLocaleString('en');
  return [
    ...mergedRemarks(list, merged),
    sheet
      ? `The list has ${rows} rows, so one formula on the sheet ${sheet} checks them all; the columns beside the list look into it. They sort and filter as usual.`
      : 'One formula in each row and check column. They sort and filter as usual.',
    ...(hasPress
      ? []
      : ['A blank column Press is added: while it is blank, every press is tried for a row.']),
    'The columns that are read become text, so that 3/8 stays 3/8 and is not turned into a date. Counts, totals and numbers with a format of their own keep theirs.',
  ];
}

/** What stands where new columns go, beside a list in plain cells; undefined where nothing does. */
async function filledBeside(
  workbook: Workbook,
  { area }: ListRead,
  columns: number,
  tables: readonly Table[],
): Promise<string | undefined> {
  const beside = { ...area, column: area.column + area.columns, columns };
  const table = tables.find((each) => overlap(each.area, beside));
  if (table) return `the table ${table.name}`;
  const [read] = await workbook.read([beside], ['values']);
  for (const [row, cells] of (read?.values ?? []).entries()) {
    const column = cells.findIndex((cell) => !isBlank(cell));
    if (column >= 0) return cellAddress(cellOf(beside, row, column));
  }
  return undefined;
}

/**
 * The verdict goes left of the first column that is read, where the first view shows it; the others go right. Below a second
 * row of headings all go right. A list in plain cells becomes a table first, its merged cells come apart.
 */
function stepsOf(plan: ChecksPlan): Step[] {
  const { list, matches, items, table, columns, lastRead, hasPress, merged, formats, unchecked } = plan;
  // Another row of headings stands above the list: no column may move away from below it.
  const isFixed = list.written !== undefined;
  const headings = list.headings.map((heading) => String(heading ?? ''));
  const renamed = headings.map((heading, at) => matches.find((each) => each.at === at)?.rename ?? heading);
  const toTable: Step = { kind: 'table', name: table, area: list.area, headings: renamed, keepsLook: true };
  const press: Step = {
    kind: 'column',
    table,
    ...(isFixed ? {} : { rightOf: lastRead }),
    heading: 'Press',
    contents: list.rows.map(() => null),
    format: '@',
  };
  const checks = items.map(
    (item): Step => ({
      kind: 'column',
      table,
      ...(item === 'verdict' && !isFixed ? { leftOf: columns.first } : {}),
      heading: checkHeading(item, headings),
      contents: list.rows.map((_, row) => (unchecked.has(row) ? null : formulaOf(item, plan))),
      format: formatOf(item),
      width: widthOf(item),
    }),
  );
  return [
    ...unmergeSteps(merged),
    ...renames(plan),
    ...textFormats(list, matches, formats),
    ...(list.source.table ? [] : [toTable]),
    ...(hasPress ? [] : [press]),
    ...checks,
    ...listSheet(plan),
  ];
}

function renames({ list, matches }: ChecksPlan): Step[] {
  return renameSteps(list, matches);
}

/** Steps that give columns the headings they were matched to. */
export function renameSteps({ area }: ListRead, matches: readonly ColumnMatch[]): Step[] {
  return matches.flatMap(({ at, rename }): Step[] =>
    rename === undefined ? [] : [{ kind: 'cells', area: cellOf(area, 0, at), contents: [[rename]] }],
  );
}

function formulaOf(item: RowItem, { items, columns, sheet }: ChecksPlan): Content {
  if (sheet === undefined) return { formula: rowCheckFormula(columns, item) };
  const letter = columnLetters(items.indexOf(item));
  return { formula: lookUpFormula(columns, { sheet, letter, row: listCheckRow }) };
}

function listSheet({ items, table, columns, sheet }: ChecksPlan): Step[] {
  if (sheet === undefined) return [];
  const cell = (row: number): Area => ({ sheet, row: row - 1, column: 0, rows: 1, columns: 1 });
  const formula = listCheckFormula(columns, items.join(', '));
  const title: CellValue = `The checks of the table ${table}: one formula for the whole list`;
  return [
    { kind: 'sheet', name: sheet },
    { kind: 'cells', area: cell(1), contents: [[title]] },
    { kind: 'cells', area: cell(listCheckRow), contents: [[{ formula }]] },
  ];
}
