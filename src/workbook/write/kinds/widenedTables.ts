import { type Area, matrix } from '../../area.js';
import type { Content } from '../../content.js';
import type { Table } from '../../reading.js';
import type { Step } from '../../step.js';
import { WorkbookError } from '../../workbookError.js';
import type { CellsAction } from '../../writeHost.js';

type ColumnStep = Extract<Step, { kind: 'column' }>;

interface Widened {
  /** As the steps so far leave it. */
  table: Table;
  /** The leftmost column that is inserted. */
  from: number;
  columns: readonly ColumnStep[];
}

/** Tables that get columns, as the steps of a plan so far leave them. */
export class WidenedTables {
  private readonly tables = new Map<string, Widened>();

  /** A table seen before the plan, as the steps so far have left it. */
  asLeft(seen: Table): Table {
    return this.find(seen)?.table ?? seen;
  }

  widen(seen: Table, step: ColumnStep, position: number): void {
    const known = this.find(seen);
    const { area, headings } = this.asLeft(seen);
    this.tables.set(seen.name.toLowerCase(), {
      table: {
        ...seen,
        area: { ...area, columns: area.columns + 1 },
        headings: [...headings.slice(0, position), step.heading, ...headings.slice(position)],
      },
      from: Math.min(known?.from ?? Infinity, area.column + position),
      columns: [...(known?.columns ?? []), step],
    });
  }

  private find({ name }: Table): Widened | undefined {
    return this.tables.get(name.toLowerCase());
  }

  /** A later column may move an earlier one, so the cells of all are written when all are there. */
  bodies(): CellsAction[] {
    return [...this.tables.values()].flatMap(({ table, columns }) =>
      columns.flatMap((column) => body(table, column)),
    );
  }

  /** Cells right of a new column move with it: what was seen of them is no longer where it was. */
  refuseMoved(area: Area): void {
    for (const { table, from } of this.tables.values()) {
      const { row, rows, sheet } = table.area;
      const beside = area.sheet === sheet && area.row < row + rows && row < area.row + area.rows;
      if (beside && area.column + area.columns > from)
        throw new WorkbookError(
          'failed',
          `The table "${table.name}" gets a column: write the cells right of it afterwards.`,
        );
    }
  }
}

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
      // A new column takes the formats of its neighbour, so none is known and each is set.
      before: { contents: matrix<Content>(cells, null), formats: matrix(cells, '') },
      ...(width === undefined ? {} : { widths: [width] }),
      fresh: true,
    },
  ];
}
