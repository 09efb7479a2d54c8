import type { CellPosition, DispatchResult } from '@odoo/o-spreadsheet';
import { helpers } from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import type { Area } from '../../workbook/area';
import { isFormula } from '../../workbook/content';
import type { Action, CellsAction, CellState } from '../../workbook/write/host';
import { WorkbookError, type Trouble } from '../../workbook/workbookError';
import type { UID } from '@odoo/o-spreadsheet';
import type { GridBook } from '../book/gridBook';
import type { NamedTable } from '../book/tableNames';
import { renewOutgrown } from '../book/renew';
import { updateCells, type CellUpdate } from '../engine/cells';
import { doTogether, type Dispatch } from '../engine/together';
import { engineSheetName } from '../book/translate';
import { constantContent, isTextFormat, resultInText } from '../open/content';
import { tableConfig } from '../open/workbookData';
import { addColumn, dropColumn } from './columns';
import { sameName, stateOf } from './look';
import { refuseUnreadable } from './readable';
import { areaOf, sheetIdFor, tableFor, where, zoneOf } from './places';

/**
 * Does all actions, in order, as one command of the grid; gives the state of written cells right afterwards.
 * `planned`: all areas that this and further messages write.
 */
export function act(
  actions: readonly Action[],
  book: GridBook,
  planned: readonly Area[] = [],
): (CellState | undefined)[] {
  const { getters } = book;
  doTogether(book.model, (dispatch) => {
    const first = book.tables.all();
    for (const action of actions) {
      if (action.kind === 'cells') {
        refuseLocked(action.area, book);
        // Rows that come one message after the other would have everything calculated each time.
        const onSheet = planned.filter(({ sheet }) => sheet === action.area.sheet);
        for (const area of onSheet) makeRoom(area, book, dispatch);
      }
      const before = book.tables.all();
      one(action, book, dispatch);
      if (action.kind !== 'cells') continue;
      // The grid lets tables grow over what is written beside them; only a step of its own may.
      for (const { sheetId, name, zone } of before) {
        const now = book.tables.find(name)?.zone;
        if (now && !helpers.deepEquals(now, zone))
          dispatch('UPDATE_TABLE', {
            sheetId,
            zone: now,
            newTableRange: getters.getRangeDataFromZone(sheetId, zone),
          });
      }
    }
    renewFormulas(first, book, dispatch);
  });
  return actions.map((action) => (action.kind === 'cells' ? stateOf(action.area, book) : undefined));
}

/** Formulas know the cells of a table, not its name: where its size changed they are written again. */
function renewFormulas(before: readonly NamedTable[], book: GridBook, dispatch: Dispatch): void {
  const changed = before.filter(({ name, zone }) => {
    const now = book.tables.find(name)?.zone;
    return now && !helpers.deepEquals(now, zone);
  });
  if (changed.length === 0) return;
  renewOutgrown(book, dispatch);
}

function refuseLocked({ sheet }: Area, book: GridBook): void {
  if (book.getters.isSheetLocked(sheetIdFor(book, sheet)))
    throw new WorkbookError(
      'protected',
      'The sheet is protected: unprotect it under Review, then try again.',
    );
}

function one(action: Action, book: GridBook, dispatch: Dispatch): void {
  const { getters } = book;
  switch (action.kind) {
    case 'cells':
      return writeCells(action, book, dispatch);
    case 'sheet':
      return makeSheet(action.name, book, dispatch);
    case 'table':
      return makeTable(action.name, action.area, book, dispatch);
    case 'column':
      return addColumn(action, book, dispatch);
    case 'resize':
      return resize(action.table, action.area, book, dispatch);
    case 'name': {
      if (book.names().some(({ name }) => sameName(name, action.name)))
        throw new WorkbookError('exists', `There is a name "${action.name}" already: choose another name.`);
      const ranges = [getters.getRangeDataFromZone(sheetIdFor(book, action.area.sheet), zoneOf(action.area))];
      return check(
        dispatch('CREATE_NAMED_RANGE', { name: action.name, ranges }),
        `The name "${action.name}" was not made.`,
      );
    }
    case 'drop sheet': {
      const sheetId = sheetIdFor(book, action.name);
      return check(
        dispatch('DELETE_SHEET', { sheetId, sheetName: getters.getSheetName(sheetId) }),
        `The sheet "${action.name}" was not removed.`,
      );
    }
    case 'drop table': {
      const { sheetId, zone } = tableFor(book, action.name);
      return check(
        dispatch('REMOVE_TABLE', { sheetId, target: [zone] }),
        `The table "${action.name}" was not removed.`,
      );
    }
    case 'drop column':
      return dropColumn(action, book, dispatch);
    case 'drop name':
      return check(
        dispatch('DELETE_NAMED_RANGE', { name: action.name }),
        `The name "${action.name}" was not removed.`,
      );
  }
}

function writeCells(action: CellsAction, book: GridBook, dispatch: Dispatch): void {
  const { area, contents, formats } = action;
  const sheetId = sheetIdFor(book, area.sheet);
  makeRoom(area, book, dispatch);
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
  check(updateCells(dispatch, sheetId, cells), `${where(area)} was not written.`);
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

/** Seven pixels a character, and five around them. */
const pixelsOf = (characters: number) => Math.round(characters * 7 + 5);

function widen({ area, widths = [] }: CellsAction, sheetId: UID, dispatch: Dispatch): void {
  widths.forEach((width, column) => {
    if (width === undefined) return;
    const elements = [area.column + column];
    check(
      dispatch('RESIZE_COLUMNS_ROWS', { dimension: 'COL', sheetId, elements, size: pixelsOf(width) }),
      `${where(area)} was not made wider.`,
    );
  });
}

function makeSheet(name: string, book: GridBook, dispatch: Dispatch): void {
  const sheetId = book.model.uuidGenerator.smallUuid();
  const position = book.getters.getSheetIds().length;
  check(
    dispatch('CREATE_SHEET', { sheetId, position, name: engineSheetName(name) }),
    `The sheet "${name}" was not made.`,
    book.sheetIdOf(name) === undefined ? 'failed' : 'exists',
  );
  book.nameSheet(sheetId, name);
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
  const holds = content === undefined ? book.value(position) : content;
  if (content === undefined && book.formula(position) !== undefined) return ofFormula;
  const written = constantContent(holds, known);
  return { content: written.content, format: written.format ?? '' };
}

/** Rows left free below what is written. */
const spareRows = 100;

/**
 * Cells beyond the grid's last row or column: the grid grows. All sheets get the rows, so that a formula on
 * another sheet finds room to spill.
 */
function makeRoom({ sheet, row, column, rows, columns }: Area, book: GridBook, dispatch: Dispatch): void {
  const { getters } = book;
  const sheetId = sheetIdFor(book, sheet);
  if (row + rows > getters.getNumberRows(sheetId))
    for (const id of getters.getSheetIds())
      addAtEnd(id, 'ROW', row + rows + spareRows - getters.getNumberRows(id), book, dispatch);
  addAtEnd(sheetId, 'COL', column + columns - getters.getNumberCols(sheetId), book, dispatch);
}

function addAtEnd(
  sheetId: string,
  dimension: 'ROW' | 'COL',
  quantity: number,
  { getters }: GridBook,
  dispatch: Dispatch,
): void {
  if (quantity <= 0) return;
  const has = dimension === 'ROW' ? getters.getNumberRows(sheetId) : getters.getNumberCols(sheetId);
  const sheetName = getters.getSheetName(sheetId);
  dispatch('ADD_COLUMNS_ROWS', { sheetId, sheetName, dimension, base: has - 1, position: 'after', quantity });
}

function makeTable(name: string, area: Area, book: GridBook, dispatch: Dispatch): void {
  const { getters } = book;
  if (book.tables.find(name))
    throw new WorkbookError('exists', `There is a table "${name}" already: choose another name.`);
  const sheetId = sheetIdFor(book, area.sheet);
  const zone = zoneOf(area);
  check(
    dispatch('CREATE_TABLE', {
      sheetId,
      ranges: [getters.getRangeDataFromZone(sheetId, zone)],
      tableType: 'static',
      config: tableConfig(1, false),
    }),
    `${where(area)} was not made a table: it meets another table or merged cells.`,
    'not allowed',
  );
  book.tables.give(sheetId, zone, name);
}

function resize(name: string, area: Area, book: GridBook, dispatch: Dispatch): void {
  const { sheetId, zone } = tableFor(book, name);
  makeRoom(area, book, dispatch);
  const newTableRange = book.getters.getRangeDataFromZone(sheetId, zoneOf(area));
  check(
    dispatch('UPDATE_TABLE', { sheetId, zone, newTableRange }),
    `The table "${name}" cannot span ${where(areaOf(area.sheet, zoneOf(area)))}.`,
    'not allowed',
  );
}

export function check(result: DispatchResult, sentence: string, trouble: Trouble = 'failed'): void {
  const reasons: readonly string[] = result.reasons;
  if (result.isSuccessful || reasons.every((reason) => reason === 'NoChanges')) return;
  throw new WorkbookError(reasons.includes('SheetLocked') ? 'protected' : trouble, sentence);
}
