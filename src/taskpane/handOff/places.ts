import { type Anchor, anchorsOf } from '../../sheet/keptFormulas/anchor.js';
import { findPlaces } from '../../sheet/keptFormulas/findPlaces.js';
import { PlaceNotFound } from '../../sheet/keptFormulas/listedPlace.js';
import { sameName } from '../../sheet/names.js';
import type { SheetCells } from '../../sheet/keptFormulas/sheetCells.js';
import { cellAddress, cellOf } from '../../workbook/area.js';
import type { LongWork } from '../../workbook/longWork.js';
import type { Workbook } from '../../workbook/port.js';
import { WorkbookError } from '../../workbook/workbookError.js';
import type { FoundFormula, ListedFormula } from '../shared/formulaList.js';
import { isListName } from '../../sheet/keptFormulas/formulaList.js';

/** By what the places of formulas are found again, in their order. */
export async function anchorsFor(
  workbook: Workbook,
  formulas: readonly FoundFormula[],
  work: LongWork = {},
): Promise<Anchor[]> {
  const sheets = await sheetCellsOf(workbook, work);
  const anchors = new Map<FoundFormula, Anchor>();
  for (const sheet of sheets) {
    const own = formulas.filter(({ area }) => sameName(area.sheet, sheet.name));
    const filled = own.map(({ area, formula }) => ({ ...area, formula }));
    anchorsOf(sheet, filled, sheets).forEach((anchor, at) => {
      const formula = own[at];
      if (formula) anchors.set(formula, anchor);
    });
  }
  return formulas.map((formula) => anchors.get(formula) ?? { row: '', sizes: '' });
}

export interface PlacedFormulas {
  /** At the cells they go to. */
  formulas: ListedFormula[];
  /** How many go to another cell than they came from. */
  moved: number;
  /** Cells whose row was deleted. */
  gone: string[];
}

/** The formulas of a list where they belong now. Throws where that cannot be told. */
export async function placedFormulas(
  workbook: Workbook,
  listed: readonly ListedFormula[],
  work: LongWork,
): Promise<PlacedFormulas> {
  const places = placesOf(listed, await sheetCellsOf(workbook, work));
  const placed: PlacedFormulas = { formulas: [], moved: 0, gone: [] };
  listed.forEach((each, at) => {
    const place = places[at];
    const { area } = each;
    if (!place) {
      placed.gone.push(`${area.sheet}!${cellAddress(cellOf(area, 0, 0))}`);
      return;
    }
    const { row, column, formula } = place;
    if (row !== area.row || column !== area.column) placed.moved += 1;
    placed.formulas.push({ ...each, formula, area: { ...area, row, column } });
  });
  return placed;
}

function placesOf(listed: readonly ListedFormula[], sheets: readonly SheetCells[]) {
  try {
    return findPlaces(
      listed.map(({ area, ...more }) => ({ ...area, ...more })),
      sheets,
    );
  } catch (error) {
    if (!(error instanceof PlaceNotFound)) throw error;
    throw new WorkbookError('missing', `Nothing was brought back: ${error.message}`, { cause: error });
  }
}

/** The sheets of the workbook as the placing of formulas sees them, without a list of formulas. */
async function sheetCellsOf(workbook: Workbook, work: LongWork): Promise<SheetCells[]> {
  const names = (await workbook.sheets()).map(({ name }) => name).filter((name) => !isListName(name));
  const tables = await workbook.tables();
  const read = await workbook.read(
    names.map((usedOf) => ({ usedOf })),
    ['values', 'formulas'],
    { signal: work.signal },
  );
  return read.map(({ area, values, formulas }, at): SheetCells => {
    const name = names[at] ?? '';
    const filled = values.flatMap((row, down) =>
      row.flatMap((value, right) => (value === null || value === '' ? [] : { down, right })),
    );
    return {
      name,
      rows: filled.reduce((most, { down }) => Math.max(most, area.row + down + 1), 0),
      columns: filled.reduce((most, { right }) => Math.max(most, area.column + right + 1), 0),
      value: (row, column) => values[row - area.row]?.[column - area.column] ?? null,
      hasFormula: (row, column) => (formulas[row - area.row]?.[column - area.column] ?? null) !== null,
      tables: tables
        .filter(({ area: own }) => sameName(own.sheet, name))
        .map(({ name: table, area: own, headings, hasTotals }) => ({
          name: table,
          top: own.row + 1,
          bottom: own.row + own.rows - 1 - (hasTotals ? 1 : 0),
          left: own.column,
          headings,
        })),
    };
  });
}
