import { type Area, cellAddress } from '../area.js';
import type { Action, ActionOf } from '../writeHost.js';
import type { Sync } from './roundTrips.js';

/*
 * A column that comes into a table moves cells, not columns of the sheet: each width would then stand over the next
 * column. The widths are asked for before, and set again where their cells have gone.
 */

type ColumnAction = ActionOf<'column'> | ActionOf<'drop column'>;

const isColumn = (action: Action): action is ColumnAction =>
  action.kind === 'column' || action.kind === 'drop column';

/** The widths that go with the cells of tables, as the actions are done in their order. */
export class ColumnWidths {
  private readonly points = new Map<string, number>();

  /** Asks for the widths of all columns that the actions move: one round trip, none where nothing moves. */
  static async before(
    actions: readonly Action[],
    worksheets: Excel.WorksheetCollection,
    sync: Sync,
  ): Promise<ColumnWidths> {
    const widths = new ColumnWidths();
    const asked = new Map<string, { of: Area; format: Excel.RangeFormat }>();
    for (const { area, position } of actions.filter(isColumn).filter(movesOthers))
      for (let at = position; at < area.columns; at++) {
        const of = { ...area, column: area.column + at, rows: 1, columns: 1 };
        if (asked.has(key(of))) continue;
        const cell = worksheets.getItem(of.sheet).getRange(cellAddress(of));
        asked.set(key(of), { of, format: cell.format.load('columnWidth') });
      }
    if (asked.size === 0) return widths;
    await sync();
    for (const { of, format } of asked.values()) widths.points.set(key(of), format.columnWidth);
    return widths;
  }

  /** Sets the widths of what an action has moved. */
  follow(action: ColumnAction, worksheets: Excel.WorksheetCollection): void {
    if (!movesOthers(action)) return;
    const { area, position, kind } = action;
    const held = Array.from({ length: area.columns - position }, (_, at) =>
      this.points.get(key({ ...area, column: area.column + position + at })),
    );
    const [from, left] = kind === 'column' ? [position + 1, held] : [position, held.slice(1)];
    left.forEach((points, at) => {
      if (points === undefined) return;
      const cell = { ...area, column: area.column + from + at, rows: 1, columns: 1 };
      worksheets.getItem(area.sheet).getRange(cellAddress(cell)).format.columnWidth = points;
      this.points.set(key(cell), points);
    });
  }
}

/** A column at the right end moves no other. */
function movesOthers({ kind, area, position }: ColumnAction): boolean {
  return position < area.columns - (kind === 'column' ? 0 : 1);
}

const key = ({ sheet, column }: Pick<Area, 'sheet' | 'column'>) => `${sheet.toLowerCase()}!${column}`;
