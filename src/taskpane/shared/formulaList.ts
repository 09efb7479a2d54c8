import {
  areListHeadings,
  isListName,
  listCells,
  listHeadings,
  listSheetName,
  readListRow,
} from '../../sheet/keptFormulas/formulaList.js';
import { freeName } from '../../sheet/names.js';
import { hostFormula } from '../../sheet/formula/hostFormula.js';
import type { Anchor } from '../../sheet/keptFormulas/anchor.js';
import type { CellValue } from '../../core/quantity/cellValue.js';
import { type Area, cellAddress, cellOf, readAddresses } from '../../workbook/area.js';
import type { Content } from '../../workbook/content.js';
import type { Workbook } from '../../workbook/port.js';
import type { Sheet } from '../../workbook/reading.js';
import { WorkbookError } from '../../workbook/workbookError.js';

/** A formula of the list: where it goes, the cells its result filled, and what it showed. */
export interface ListedFormula {
  area: Area;
  formula: string;
  value: CellValue;
  /** By what its place is found again. */
  anchor: Anchor;
}

/** A formula that is to become a value. */
export interface FoundFormula {
  /** The cell, or the cells its result fills. */
  area: Area;
  formula: string;
  values: CellValue[][];
}

/** The name of the sheet with a list that still holds formulas; undefined where there is none. */
export async function listIn(workbook: Workbook): Promise<string | undefined> {
  const names = (await workbook.sheets()).map(({ name }) => name).filter(isListName);
  if (names.length === 0) return undefined;
  const read = await workbook.read(
    names.map((usedOf) => ({ usedOf })),
    ['values'],
  );
  return names.find((_, at) => (read[at]?.values.length ?? 0) > 1);
}

/** A name for a new list that no sheet has. */
export function freeListName(sheets: readonly Sheet[]): string {
  return freeName(
    listSheetName,
    sheets.map(({ name }) => name),
  );
}

/** The rows of a list, with its headings. */
export function listRows(formulas: readonly FoundFormula[], anchors: readonly Anchor[]): Content[][] {
  const rows = formulas.map(({ area, formula, values }, at): Content[] =>
    listCells<CellValue>({
      sheet: area.sheet,
      cell: cellAddress(cellOf(area, 0, 0)),
      formula,
      stored: area.rows * area.columns > 1 ? `t="array" ref="${cellAddress(area)}"` : '',
      value: values[0]?.[0] ?? null,
      anchor: anchors[at] ?? { row: '', sizes: '' },
    }),
  );
  return [[...listHeadings], ...rows];
}

/** The formulas of a list. Throws where the cells are no list, or a row names no cell. */
export function readList(values: readonly (readonly CellValue[])[]): ListedFormula[] {
  const [headings = [], ...rows] = values;
  if (!areListHeadings(headings))
    throw new WorkbookError('missing', `The sheet ${listSheetName} holds no list of formulas.`);
  return rows
    .filter((row) => row.some((cell) => cell !== null && cell !== ''))
    .map((row, at) => listed(row) ?? refuse(at + 2));
}

function listed(cells: readonly CellValue[]): ListedFormula | undefined {
  const row = readListRow(cells);
  if (!row) return undefined;
  const { sheet, cell, formula, stored, value, anchor } = row;
  const spilled = /ref="([A-Z]{1,3}\d{1,7}(?::[A-Z]{1,3}\d{1,7})?)"/.exec(stored)?.[1];
  const [area] = readAddresses(spilled ?? cell, sheet);
  return area && { area, formula: hostFormula(formula), value, anchor };
}

function refuse(row: number): never {
  throw new WorkbookError(
    'failed',
    `Row ${row} of the sheet ${listSheetName} names no cell and formula. Nothing was brought back.`,
  );
}
