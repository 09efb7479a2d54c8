import type { CellValue } from '../../core/quantity/cellValue.js';
import { type Area, cellOf } from '../../workbook/area.js';
import type { LongWork } from '../../workbook/longWork.js';
import type { Workbook } from '../../workbook/port.js';
import { callArgument } from '../steps/callArgument.js';
import type { FoundFormula } from '../shared/formulaList.js';
import { callsUs, refersToSpill } from '../../sheet/formula/ourCalls.js';
import { formulaCall } from '../../sheet/formula/formulaCall.js';

interface SheetCells {
  area: Area;
  values: CellValue[][];
  formulas: (string | null)[][];
}

const defaultItems = 3;

/** Whether a formula becomes a value in a copy for the shop: it calls ours, or reads what one of ours spilled. */
export function goesForShop(formula: string): boolean {
  return callsUs(formula) || refersToSpill(formula);
}

/** The formulas of a workbook that are to become values, with what they show; sheet by sheet. */
export async function foundFormulas(
  workbook: Workbook,
  goes: (formula: string, sheet: string) => boolean,
  work: LongWork = {},
): Promise<FoundFormula[]> {
  const sheets = await workbook.sheets();
  const found: FoundFormula[] = [];
  for (const [at, { name }] of sheets.entries()) {
    work.signal?.throwIfAborted();
    const [cells] = await workbook.read([{ usedOf: name }], ['values', 'formulas'], { signal: work.signal });
    if (cells) for (const each of await ofSheet(workbook, cells, goes)) found.push(each);
    work.progress?.(at + 1, sheets.length);
  }
  return found;
}

async function ofSheet(
  workbook: Workbook,
  cells: SheetCells,
  goes: (formula: string, sheet: string) => boolean,
): Promise<FoundFormula[]> {
  const found: FoundFormula[] = [];
  for (const [row, formulas] of cells.formulas.entries()) {
    for (const [column, formula] of formulas.entries()) {
      if (formula === null || !goes(formula, cells.area.sheet)) continue;
      const { rows, columns } = await spillOf(workbook, formula, cells, row, column);
      const values = Array.from({ length: rows }, (_, down) =>
        Array.from(
          { length: columns },
          (_unused, right) => cells.values[row + down]?.[column + right] ?? null,
        ),
      );
      found.push({ area: { ...cellOf(cells.area, row, column), rows, columns }, formula, values });
    }
  }
  return found;
}

/**
 * How many cells a result fills. A list fills as many rows as it has, blank ones included; of other functions that
 * spill, the block of filled cells without formulas is theirs.
 */
async function spillOf(workbook: Workbook, formula: string, cells: SheetCells, row: number, column: number) {
  const call = formulaCall(formula);
  const single = { rows: 1, columns: 1 };
  if (!call) return single;
  const [list = '', , items = ''] = call.arguments;
  if (call.name === 'LISTCHECK') {
    const rows = await rowsOf(workbook, list, cellOf(cells.area, row, column));
    return { rows, columns: items === '' ? defaultItems : items.split(/[,;]/).length };
  }
  if (call.name === 'ROWCHECK')
    return call.arguments.length < 4 ? { rows: 1, columns: defaultItems } : single;
  return block(cells, row, column);
}

async function rowsOf(workbook: Workbook, list: string, cell: Area): Promise<number> {
  const argument = callArgument(list, cell, await workbook.tables());
  if (argument.kind === 'values') return argument.values.length;
  if (argument.kind === 'calculation') return 1;
  if ('row' in argument.place) return argument.place.rows;
  const [read] = await workbook.read([argument.place], ['values']);
  return read?.area.rows ?? 1;
}

function block(
  { values, formulas }: SheetCells,
  row: number,
  column: number,
): { rows: number; columns: number } {
  const spilled = (down: number, right: number) =>
    (values[row + down]?.[column + right] ?? null) !== null &&
    formulas[row + down]?.[column + right] === null;
  let columns = 1;
  while (spilled(0, columns)) columns += 1;
  let rows = 1;
  while (Array.from({ length: columns }, (_, right) => spilled(rows, right)).every(Boolean)) rows += 1;
  return { rows, columns };
}
