import type { UID } from '@odoo/o-spreadsheet';
import { cellKey } from '../../sheet/address.js';
import type { Worksheet } from '../../xlsx/storedCells.js';
import type { XmlElement } from '../../xlsx/xml/element.js';
import { sheetNow } from '../open/givenSheet.js';
import type { OpenBook } from '../open/openBook.js';
import type { OpenedFormula } from '../open/workbookData.js';
import { PartCells } from '../../xlsx/partCells.js';
import { saveCells } from './cells/saveCells.js';
import { changeHeaders } from './headers.js';
import { moveSheet } from './moved/moveSheet.js';
import { hasMoved, type SheetMove } from './moved/sheetMoves.js';
import { changeMerges, changeRules, changeTabColor, changeView, unselect } from './sheetLook.js';
import type { AddedStyles } from './styles/addedStyles.js';
import { CellStyles } from './styles/cellStyles.js';

/** A sheet of the file; a new one has no cells there and has not moved. */
export interface FileSheet {
  cells: Worksheet | undefined;
  formulas: readonly OpenedFormula[];
  move: SheetMove | undefined;
  /** A formula of the file as it reads now, where the grid does not keep it. */
  adapt: (formula: string) => string;
}

const newSheet = { frozen: { rows: 0, columns: 0 }, gridLines: true, visible: true, color: undefined };

/** Changes a sheet's part to what the grid has of the sheet now; tells whether formulas went. */
export function saveSheet(
  root: XmlElement,
  { book, namespace, styles, looks, sheets }: OpenBook,
  sheetId: UID,
  { cells: file, formulas, move, adapt }: FileSheet,
  added: AddedStyles,
  mark: string | undefined,
): boolean {
  const moved = move !== undefined && hasMoved(move);
  if (moved) moveSheet(root, move, adapt);
  const cells = new PartCells(root);
  const formulasWent = saveCells({
    book,
    sheetId,
    file,
    formulas: new Map(formulas.map((formula) => [cellKey(formula.row, formula.column), formula])),
    move,
    moved,
    styles: new CellStyles({ book, styles }, looks.get(sheetId) ?? new Map(), added, cells.usualStyles()),
    cells,
    adapt,
    namespace,
    mark,
  });
  const now = sheetNow(book.model, sheetId);
  const given = sheets.get(sheetId);
  const before = given ?? newSheet;
  changeHeaders(root, cells, now, given, move);
  if (given) changeRules(root, now.rules, given.rules, move);
  changeMerges(root, book.getters.getMerges(sheetId));
  changeView(root, now, before);
  if ((now.color || undefined) !== (before.color || undefined)) changeTabColor(root, now.color);
  if (before.visible && !now.visible) unselect(root);
  return formulasWent;
}
