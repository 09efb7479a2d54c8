import { type Area, matrix, overlap, sameArea } from '../../area.js';
import type { Content } from '../../content.js';
import type { Table } from '../../reading.js';
import type { Step } from '../../step.js';
import { WorkbookError } from '../../workbookError.js';
import type { CellsAction, UnmergeAction } from '../../writeHost.js';

type ColumnStep = Extract<Step, { kind: 'column' }>;

interface Widened {
  /** As the steps so far leave it. */
  table: Table;
  /** Where its columns were inserted on the sheet, one after the other. */
  inserted: readonly number[];
  columns: readonly ColumnStep[];
}

/** Tables that get columns, as the steps of a plan so far leave them. */
export class WidenedTables {
  private readonly tables = new Map<string, Widened>();

  /** A table that the plan makes. */
  make({ name, area, headings = [] }: Extract<Step, { kind: 'table' }>): void {
    this.tables.set(key(name), {
      table: { name, area, headings: [...headings], hasTotals: false },
      inserted: [],
      columns: [],
    });
  }

  /** A table seen before the plan, or made by it, as the steps so far have left it. */
  asLeft(name: string, seen: Table | undefined): Table {
    const table = this.tables.get(key(name))?.table ?? seen;
    if (!table) throw new WorkbookError('missing', `There is no table "${name}".`);
    return table;
  }

  widen(table: Table, step: ColumnStep, position: number): void {
    const known = this.tables.get(key(table.name));
    const { area, headings } = table;
    this.tables.set(key(table.name), {
      table: {
        ...table,
        area: { ...area, columns: area.columns + 1 },
        headings: [...headings.slice(0, position), step.heading, ...headings.slice(position)],
      },
      inserted: [...(known?.inserted ?? []), area.column + position],
      columns: [...(known?.columns ?? []), step],
    });
  }

  /** A later column may move an earlier one, so the cells of all are written when all are there. */
  bodies(): CellsAction[] {
    return [...this.tables.values()].flatMap(({ table, columns }) =>
      columns.flatMap((column) => body(table, column)),
    );
  }

  /**
   * Where cells that are written before all columns stand when these are there. Refuses cells that move and are
   * written later, or are outside the table: what was seen of them is no longer where it was.
   */
  private moved(area: Area, { beforeColumns }: { beforeColumns: boolean }): Area {
    let stands = area;
    for (const { table, inserted } of this.tables.values()) {
      const { row, rows, sheet, column, columns } = table.area;
      if (area.sheet !== sheet || area.row >= row + rows || row >= area.row + area.rows) continue;
      const start = movedBy(inserted, area.column);
      const end = movedBy(inserted, area.column + area.columns - 1);
      if (start === area.column && end === area.column + area.columns - 1) continue;
      const inside = area.row >= row && area.row + area.rows <= row + rows && end < column + columns;
      if (!beforeColumns || !inside || end - start !== area.columns - 1)
        throw new WorkbookError(
          'failed',
          `The table "${table.name}" gets a column: write the cells right of it afterwards.`,
        );
      stands = { ...area, column: start };
    }
    return stands;
  }

  /** Cells that were merged, with where they stand when all columns are there: new columns may stand between them. */
  withSpan(action: UnmergeAction): UnmergeAction {
    const { area } = action;
    const widened = [...this.tables.values()].find(({ table }) => overlap(table.area, area));
    if (!widened) return action;
    const [first, last] = [area.column, area.column + area.columns - 1].map((column) =>
      movedBy(widened.inserted, column),
    ) as [number, number];
    const standsAt = { ...area, column: first, columns: last - first + 1 };
    return sameArea(standsAt, area) ? action : { ...action, standsAt };
  }

  /** Cells with where they stand when all columns are there. */
  withPlace(action: CellsAction, place: { beforeColumns: boolean }): CellsAction {
    const standsAt = this.moved(action.area, place);
    return sameArea(standsAt, action.area) ? action : { ...action, standsAt };
  }
}

/** Where a column of the sheet goes when others are inserted, one after the other. */
function movedBy(inserted: readonly number[], column: number): number {
  return inserted.reduce((at, from) => (at >= from ? at + 1 : at), column);
}

const key = (name: string) => name.toLowerCase();

function body(
  { area, headings }: Table,
  { heading, contents, format = 'General', width }: ColumnStep,
): CellsAction[] {
  if (contents.length === 0) return [];
  const column = area.column + headings.indexOf(heading);
  const cells = { ...area, row: area.row + 1, column, rows: contents.length, columns: 1 };
  return [
    {
      kind: 'cells',
      area: cells,
      contents: contents.map((content) => [content]),
      formats: matrix(cells, format),
      // A new column takes the formats of its neighbor, so none is known and each is set.
      before: { contents: matrix<Content>(cells, null), formats: matrix(cells, '') },
      ...(width === undefined ? {} : { widths: [width] }),
      fresh: true,
    },
  ];
}
