import type { CellPosition, UID } from '@odoo/o-spreadsheet';
import type { Area } from '../../workbook/area.js';
import { isFormula } from '../../workbook/content.js';
import type { CellsAction } from '../../workbook/writeHost.js';
import { WorkbookError } from '../../workbook/workbookError.js';
import type { GridBook } from '../book/gridBook.js';
import { updateCells, type CellUpdate } from '../engine/manyCells.js';
import type { Dispatch } from '../engine/oneCommand.js';
import { constantContent, isTextFormat, resultInText } from '../engine/cellContent.js';
import { columnPixels } from '../open/layoutData.js';
import { refuseFailed } from './refuseFailed.js';
import { sheetIdFor, where } from './gridPlaces.js';
import { refuseUnreadable } from './refuseUnreadable.js';
import { growSheet } from './growSheet.js';

/** Writes contents, number formats and widths into cells of the grid. */
export function writeCells(action: CellsAction, book: GridBook, dispatch: Dispatch): void {
  const { area, contents, formats } = action;
  const sheetId = sheetIdFor(book, area.sheet);
  growSheet(area, book, dispatch);
  widen(action, sheetId, dispatch);
  const cells: CellUpdate[] = [];
  const typed: { formula: string; position: CellPosition }[] = [];
  for (let row = 0; row < area.rows; row++)
    for (let column = 0; column < area.columns; column++) {
      const position = { sheetId, row: area.row + row, col: area.column + column };
      const content = contents[row]?.[column];
      const format = formats[row]?.[column];
      if (content === undefined && format === undefined) continue;
      cells.push({ row: position.row, col: position.col, ...newState(content, format, book, position) });
      if (isFormula(content)) typed.push({ formula: content.formula, position });
    }
  if (cells.length === 0) return;
  refuseMerged(sheetId, area, cells, book);
  refuseFailed(updateCells(dispatch, sheetId, cells), `${where(area)} was not written.`);
  for (const { formula, position } of typed) book.typed(formula, position);
}

/** Inside a merged area only the first cell holds something. */
function refuseMerged(sheetId: UID, area: Area, cells: readonly CellUpdate[], { getters }: GridBook): void {
  if (getters.getMerges(sheetId).length === 0) return;
  for (const { row, col, content } of cells) {
    const main = getters.getMainCellPosition({ sheetId, row, col });
    if (content === undefined || (main.row === row && main.col === col)) continue;
    const cell = where({ ...area, row, column: col, rows: 1, columns: 1 });
    throw new WorkbookError('not allowed', `${cell} was not written: it is part of merged cells.`);
  }
}

function widen({ area, widths = [] }: CellsAction, sheetId: UID, dispatch: Dispatch): void {
  widths.forEach((width, column) => {
    if (width === undefined) return;
    const elements = [area.column + column];
    refuseFailed(
      dispatch('RESIZE_COLUMNS_ROWS', { dimension: 'COL', sheetId, elements, size: columnPixels(width) }),
      `${where(area)} was not made wider.`,
    );
  });
}

/** What a cell is told: the engine has no general format, and keeps text by its own means. */
function newState(
  content: CellsAction['contents'][number][number],
  format: string | undefined,
  book: GridBook,
  position: { sheetId: string; row: number; col: number },
): { content?: string; format?: string } {
  const wanted = format ?? book.format(position);
  const known = wanted === 'General' || wanted === '' ? undefined : wanted;
  const ofFormula = { format: isTextFormat(known) ? resultInText : (known ?? '') };
  if (isFormula(content)) {
    refuseUnreadable(content.formula);
    return { content: book.translate(content.formula, position) ?? content.formula, ...ofFormula };
  }
  if (content === undefined && book.formula(position) !== undefined) return ofFormula;
  // What an empty cell shows may be spilled, or from before this command: only its format is written.
  const held = book.getters.getCell(position);
  if (content === undefined && (!held || (!held.isFormula && held.content === '')))
    return { format: known ?? '' };
  const holds = content === undefined ? book.value(position) : content;
  const written = constantContent(holds, known);
  return { content: written.content, format: written.format ?? '' };
}
