import type { CellPosition } from '@odoo/o-spreadsheet';
import type { Table } from '../../sheet/table.js';

/** A table of the grid with the name that the engine does not know. */
export interface NamedTable extends Table {
  id: string;
  sheetId: string;
}

export type Command = { type: string } & Partial<CellPosition>;

/** Commands that leave tables, headings, sheets and names alone. */
const harmless = new Set([
  'UPDATE_CELL_POSITION',
  'EVALUATE_CELLS',
  'EVALUATE_CHARTS',
  'RESIZE_COLUMNS_ROWS',
  'SET_VIEWPORT_OFFSET',
  'SHIFT_VIEWPORT_DOWN',
  'SHIFT_VIEWPORT_UP',
  'RESIZE_SHEETVIEW',
  'SCROLL_TO_CELL',
  'ACTIVATE_SHEET',
]);

/** Tells by the commands of the grid whether what is known of its tables still holds. */
export class TableChanges {
  revision = 0;

  note({ type, sheetId, row, col }: Command, tables: readonly NamedTable[]): void {
    if (harmless.has(type)) return;
    if (type === 'UPDATE_CELL' && row !== undefined && col !== undefined) {
      const isConcerned = tables.some(
        ({ sheetId: on, zone }) => on === sheetId && (row === zone.top || isBeside(row, col, zone)),
      );
      if (!isConcerned) return;
    }
    this.revision++;
  }
}

/** Below or right of a table, where the grid lets it grow. */
const isBeside = (row: number, col: number, { bottom, right }: NamedTable['zone']): boolean =>
  row === bottom + 1 || col === right + 1;
