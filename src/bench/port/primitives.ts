import { sameName } from '../../sheet/names.js';
import type { ActionOf, Primitives } from '../../workbook/writeHost.js';
import { WorkbookError } from '../../workbook/workbookError.js';
import type { GridBook } from '../book/gridBook.js';
import { engineSheetName } from '../book/translate.js';
import type { Dispatch } from '../engine/oneCommand.js';
import { tableConfig } from '../open/workbookData.js';
import { refuseFailed } from './refuseFailed.js';
import { addColumn, dropColumn } from './columns.js';
import { growSheet } from './growSheet.js';
import { areaOf, sheetIdFor, tableFor, where, zoneOf } from './gridPlaces.js';
import { merge, unmerge } from './merges.js';
import { writeCells } from './writeCells.js';

/** How the grid does each kind of action. */
export function primitivesOf(book: GridBook, dispatch: Dispatch): Primitives {
  return {
    cells: (action) => writeCells(action, book, dispatch),
    sheet: (action) => makeSheet(action, book, dispatch),
    table: (action) => makeTable(action, book, dispatch),
    column: (action) => addColumn(action, book, dispatch),
    resize: (action) => resize(action, book, dispatch),
    name: (action) => makeName(action, book, dispatch),
    'drop sheet'({ name }) {
      const sheetId = sheetIdFor(book, name);
      const sheetName = book.getters.getSheetName(sheetId);
      refuseFailed(dispatch('DELETE_SHEET', { sheetId, sheetName }), `The sheet "${name}" was not removed.`);
    },
    'drop table'({ name }) {
      const { sheetId, zone } = tableFor(book, name);
      refuseFailed(
        dispatch('REMOVE_TABLE', { sheetId, target: [zone] }),
        `The table "${name}" was not removed.`,
      );
    },
    unmerge: (action) => unmerge(action, book, dispatch),
    merge: (action) => merge(action, book, dispatch),
    'drop column': (action) => dropColumn(action, book, dispatch),
    'drop name': ({ name }) =>
      refuseFailed(dispatch('DELETE_NAMED_RANGE', { name }), `The name "${name}" was not removed.`),
  };
}

function makeSheet({ name }: ActionOf<'sheet'>, book: GridBook, dispatch: Dispatch): void {
  const sheetId = book.model.uuidGenerator.smallUuid();
  const position = book.getters.getSheetIds().length;
  refuseFailed(
    dispatch('CREATE_SHEET', { sheetId, position, name: engineSheetName(name) }),
    `The sheet "${name}" was not made.`,
    book.sheetIdOf(name) === undefined ? 'failed' : 'exists',
  );
  book.nameSheet(sheetId, name);
}

/** A table whose cells keep their look. */
const quietConfig = { ...tableConfig(1, false), styleId: 'TableStyleLight1', bandedRows: false };

function makeTable({ name, area, keepsLook }: ActionOf<'table'>, book: GridBook, dispatch: Dispatch): void {
  const { getters } = book;
  if (book.tables.find(name))
    throw new WorkbookError('exists', `There is a table "${name}" already: choose another name.`);
  const sheetId = sheetIdFor(book, area.sheet);
  const zone = zoneOf(area);
  refuseFailed(
    dispatch('CREATE_TABLE', {
      sheetId,
      ranges: [getters.getRangeDataFromZone(sheetId, zone)],
      tableType: 'static',
      config: keepsLook ? quietConfig : tableConfig(1, false),
    }),
    `${where(area)} was not made a table: it meets another table or merged cells.`,
    'not allowed',
  );
  book.tables.give(sheetId, zone, name);
}

function resize({ table, area }: ActionOf<'resize'>, book: GridBook, dispatch: Dispatch): void {
  const { sheetId, zone } = tableFor(book, table);
  growSheet(area, book, dispatch);
  const newTableRange = book.getters.getRangeDataFromZone(sheetId, zoneOf(area));
  refuseFailed(
    dispatch('UPDATE_TABLE', { sheetId, zone, newTableRange }),
    `The table "${table}" cannot span ${where(areaOf(area.sheet, zoneOf(area)))}.`,
    'not allowed',
  );
}

function makeName({ name, area }: ActionOf<'name'>, book: GridBook, dispatch: Dispatch): void {
  if (book.names().some((each) => sameName(each.name, name)))
    throw new WorkbookError('exists', `There is a name "${name}" already: choose another name.`);
  const ranges = [book.getters.getRangeDataFromZone(sheetIdFor(book, area.sheet), zoneOf(area))];
  refuseFailed(dispatch('CREATE_NAMED_RANGE', { name, ranges }), `The name "${name}" was not made.`);
}
