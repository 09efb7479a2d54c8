import { helpers } from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import type { Area } from '../../workbook/area.js';
import type { Action, CellState } from '../../workbook/write/host.js';
import { WorkbookError } from '../../workbook/workbookError.js';
import type { GridBook } from '../book/gridBook.js';
import type { NamedTable } from '../book/tableNames.js';
import { rewriteOutgrown } from '../book/repairTables.js';
import { asOneCommand, type Dispatch } from '../engine/oneCommand.js';
import { engineSheetName } from '../book/translate.js';
import { tableConfig } from '../open/workbookData.js';
import { check } from './check.js';
import { addColumn, dropColumn } from './columns.js';
import { sameName } from '../../sheet/names.js';
import { stateOf } from './lookAt.js';
import { areaOf, sheetIdFor, tableFor, where, zoneOf } from './places.js';
import { growSheet } from './growSheet.js';
import { writeCells } from './writeCells.js';

/**
 * Does all actions, in order, as one command of the grid; gives the state of written cells right afterwards.
 * `planned`: all areas that this and further messages write.
 */
export function performActions(
  actions: readonly Action[],
  book: GridBook,
  planned: readonly Area[] = [],
): (CellState | undefined)[] {
  const { getters } = book;
  asOneCommand(book.model, (dispatch) => {
    const first = book.tables.all();
    for (const action of actions) {
      if (action.kind === 'cells') {
        refuseLocked(action.area, book);
        // Rows that come one message after the other would have everything calculated each time.
        const onSheet = planned.filter(({ sheet }) => sheet === action.area.sheet);
        for (const area of onSheet) growSheet(area, book, dispatch);
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
  rewriteOutgrown(book, dispatch);
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
  growSheet(area, book, dispatch);
  const newTableRange = book.getters.getRangeDataFromZone(sheetId, zoneOf(area));
  check(
    dispatch('UPDATE_TABLE', { sheetId, zone, newTableRange }),
    `The table "${name}" cannot span ${where(areaOf(area.sheet, zoneOf(area)))}.`,
    'not allowed',
  );
}
