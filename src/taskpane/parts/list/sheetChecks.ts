import type { CellValue } from '../../../core/quantity/cellValue.js';
import type { Area } from '../../../workbook/area.js';
import type { Workbook } from '../../../workbook/port.js';
import { hasVerdicts } from '../../shared/checkedLists.js';

/** A column of a list whose cells check its rows. */
export interface CheckColumn {
  /** Its place in the list, from 0. */
  at: number;
  /** The formula of the first row that has one. */
  model: string;
  /** The number format of that cell. */
  format: string;
  /** Of each row below the headings; null where there is none. */
  formulas: (string | null)[];
}

/** The checks that stand on the sheet beside a list. */
export interface SheetChecks {
  columns: CheckColumn[];
  /** The cell that checks the whole list, where the columns look into one. */
  whole?: { area: Area; formula: string };
}

/** A column that looks into the checks of a whole list: the sheet, its column, the row of the formula there. */
export const lookUp =
  /^=INDEX\((?:'((?:[^']|'')*)'|([\p{L}\p{N}_.]+))!\$?([A-Z]+):\$?[A-Z]+,ROW\(\)-ROW\(.*\)\+(\d+)\)$/iu;
const rowCheck = /TONROW\.ROWCHECK\(/i;
const listCheck = /TONROW\.LISTCHECK\(/i;

/** Reads the check columns of a list; undefined where it has none, or values only. */
export async function readSheetChecks(
  workbook: Workbook,
  list: Area,
  headings: readonly CellValue[],
): Promise<SheetChecks | undefined> {
  const column = (at: number): Area => ({
    ...list,
    row: list.row + 1,
    rows: list.rows - 1,
    column: list.column + at,
    columns: 1,
  });
  const verdict = verdictColumn(headings);
  if (verdict < 0 || list.rows < 2) return undefined;
  const [verdicts] = await workbook.read([column(verdict)], ['formulas']);
  const row = verdicts?.formulas.findIndex(([formula]) => isCheck(formula)) ?? -1;
  if (row < 0) return undefined;
  const [models] = await workbook.read(
    [{ ...list, row: list.row + 1 + row, rows: 1 }],
    ['formulas', 'formats'],
  );
  const formats = models?.formats[0] ?? [];
  const found = (models?.formulas[0] ?? []).flatMap((model, at) =>
    isCheck(model) ? { at, model, format: formats[at] ?? 'General' } : [],
  );
  const read = await workbook.read(
    found.map(({ at }) => column(at)),
    ['formulas'],
  );
  const columns = found.map((each, at) => ({
    ...each,
    formulas: (read[at]?.formulas ?? []).map(([formula]) => formula ?? null),
  }));
  const whole = await wholeCheck(workbook, columns);
  return whole === 'missing' ? undefined : { columns, ...(whole && { whole }) };
}

/** The column of verdicts; one that is ours beside a column of the same name is called Check verdict. */
function verdictColumn(headings: readonly CellValue[]): number {
  const names = headings.map((heading) =>
    String(heading ?? '')
      .trim()
      .toLowerCase(),
  );
  const beside = names.indexOf('check verdict');
  return beside >= 0 || !hasVerdicts(headings) ? beside : names.indexOf('verdict');
}

function isCheck(formula: string | null | undefined): formula is string {
  return typeof formula === 'string' && (rowCheck.test(formula) || lookUp.test(formula));
}

async function wholeCheck(workbook: Workbook, columns: readonly CheckColumn[]) {
  const place = columns.map(({ model }) => lookUp.exec(model)).find((match) => match !== null);
  if (!place) return undefined;
  const [, quotedSheet, sheet = quotedSheet?.replaceAll("''", "'") ?? '', , row] = place;
  if (!(await workbook.sheets()).some(({ name }) => name.toLowerCase() === sheet.toLowerCase()))
    return 'missing';
  const area = { sheet, row: Number(row) - 1, column: 0, rows: 1, columns: 1 };
  const [cell] = await workbook.read([area], ['formulas']);
  const formula = cell?.formulas[0]?.[0];
  return typeof formula === 'string' && listCheck.test(formula) ? { area, formula } : 'missing';
}
