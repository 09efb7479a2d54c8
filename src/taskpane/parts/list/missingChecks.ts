import { isBlankRow } from '../../../core/row/blankRow.js';
import type { Headings } from '../../../core/row/headings/readHeadings.js';
import type { Step } from '../../../workbook/step.js';
import { counted } from '../../shared/change/describeStep.js';
import type { Proposal } from '../../shared/change/proposal.js';
import { type CheckedColumns, listCheckFormula, lookUpFormula, rowCheckFormula } from './checkFormulas.js';
import { runsOf } from './failGroups.js';
import type { ListRead } from './listRead.js';
import { type CheckColumn, lookUp, type SheetChecks } from './sheetChecks.js';

const quotedItem = /"([^"]*)"\)$/;

/** The rows that have something to check and lack the formula of a check column. */
export function rowsWithoutChecks(
  { rows }: ListRead,
  { columns }: SheetChecks,
  headings: Headings,
): number[] {
  return rows.flatMap((cells, row) =>
    columns.some(({ formulas }) => formulas[row] == null) && !isBlankRow(cells, headings) ? row : [],
  );
}

/** Writes the formulas of the check columns into rows that lack them. */
export function fillChecks(
  { area }: ListRead,
  checks: SheetChecks,
  read: CheckedColumns,
  rows: readonly number[],
): Proposal {
  const steps = lackingTogether(checks.columns, rows).flatMap(({ columns, lacking }) => {
    const formulas = columns.map((column) => ({ formula: formulaLike(column, read) }));
    const formats = columns.map(({ format }) => format);
    const column = area.column + (columns[0]?.at ?? 0);
    return runsOf(lacking).map(
      ({ row, count }): Step => ({
        kind: 'cells',
        area: { ...area, row: area.row + 1 + row, rows: count, column, columns: columns.length },
        contents: Array.from({ length: count }, () => formulas),
        formats: Array.from({ length: count }, () => formats),
      }),
    );
  });
  return {
    title: `Fill the checks of ${counted(rows.length, 'row')}`,
    steps: [...wholeList(checks, read), ...steps],
  };
}

/** Columns that adjoin and lack their formula in the same rows. */
function lackingTogether(columns: readonly CheckColumn[], rows: readonly number[]) {
  const together: { columns: CheckColumn[]; lacking: number[] }[] = [];
  for (const column of columns) {
    const lacking = rows.filter((row) => column.formulas[row] == null);
    const last = together.at(-1);
    const adjoins = last?.columns.at(-1)?.at === column.at - 1;
    if (last && adjoins && last.lacking.join() === lacking.join()) last.columns.push(column);
    else together.push({ columns: [column], lacking });
  }
  return together;
}

/** A formula that names the table is the same in every row; one that names cells is written anew. */
function formulaLike({ model }: CheckColumn, read: CheckedColumns): string {
  if (names(model, read)) return model;
  const place = lookUp.exec(model);
  if (!place) return rowCheckFormula(read, quotedItem.exec(model)?.[1]);
  const [, quotedSheet, sheet = quotedSheet?.replaceAll("''", "'") ?? '', letter = 'A', row] = place;
  return lookUpFormula(read, { sheet, letter, row: Number(row) });
}

/** The check of the whole list is written anew where it names cells, which do not grow with the table. */
function wholeList({ whole }: SheetChecks, read: CheckedColumns): Step[] {
  if (!whole || names(whole.formula, read)) return [];
  const items = quotedItem.exec(whole.formula)?.[1] ?? 'verdict, use, note';
  return [{ kind: 'cells', area: whole.area, contents: [[{ formula: listCheckFormula(read, items) }]] }];
}

function names(formula: string, { table }: CheckedColumns): boolean {
  return formula.toLowerCase().includes(`${table.toLowerCase()}[`);
}
