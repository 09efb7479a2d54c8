import { helpers } from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import type { Area } from '../../workbook/area.js';
import { type Action, type CellState, doAction } from '../../workbook/writeHost.js';
import { WorkbookError } from '../../workbook/workbookError.js';
import type { GridBook } from '../book/gridBook.js';
import type { NamedTable } from '../book/tableChanges.js';
import { asOneCommand, type Dispatch } from '../engine/oneCommand.js';
import { stateOf } from './lookAt.js';
import { sheetIdFor } from './gridPlaces.js';
import { primitivesOf } from './primitives.js';
import { growSheet } from './growSheet.js';

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
    const primitives = primitivesOf(book, dispatch);
    for (const action of actions) {
      if (action.kind === 'cells') {
        refuseLocked(action.area, book);
        // Rows that come one message after the other would have everything calculated each time.
        const onSheet = planned.filter(({ sheet }) => sheet === action.area.sheet);
        for (const area of onSheet) growSheet(area, book, dispatch);
      }
      const before = book.tables.all();
      doAction(primitives, action);
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
  // Columns of the same message have moved cells that were written before them.
  const moved = actions.some(({ kind }) => kind === 'column');
  return actions.map((action) => {
    if (action.kind !== 'cells') return undefined;
    return stateOf(moved ? (action.standsAt ?? action.area) : action.area, book);
  });
}

/** Formulas know the cells of a table, not its name: where its size changed they are written again. */
function renewFormulas(before: readonly NamedTable[], book: GridBook, dispatch: Dispatch): void {
  const changed = before.filter(({ name, zone }) => {
    const now = book.tables.find(name)?.zone;
    return now && !helpers.deepEquals(now, zone);
  });
  if (changed.length === 0) return;
  book.rewriteOutgrown(dispatch);
}

function refuseLocked({ sheet }: Area, book: GridBook): void {
  if (book.getters.isSheetLocked(sheetIdFor(book, sheet)))
    throw new WorkbookError(
      'protected',
      'The sheet is protected: unprotect it under Review, then try again.',
    );
}
