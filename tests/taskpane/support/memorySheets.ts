import { sameName } from '../../../src/sheet/names.js';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { absoluteAddress, type Area, overlap, sameArea } from '../../../src/workbook/area.js';
import { type Content, isErrorConstant, isFormula } from '../../../src/workbook/content.js';
import type { Sheet, Table } from '../../../src/workbook/reading.js';
import { WorkbookError } from '../../../src/workbook/workbookError.js';
import {
  type Action,
  type ActionOf,
  type CellState,
  doAction,
  type Look,
  type Primitives,
  type Seen,
} from '../../../src/workbook/writeHost.js';

export interface MemoryCell {
  content: Content;
  format: string;
  /** The result of a formula, or the content itself. */
  value: CellValue;
}

/** Sheets, tables and names in memory, with the actions that the port's writer asks for. */
export class MemorySheets {
  readonly sheets = new Map<string, Map<string, MemoryCell>>();
  readonly tables: (Omit<Table, 'headings'> & { headings?: never })[] = [];
  readonly names: { name: string; area: Area }[] = [];
  readonly merged: Area[] = [];
  /** Rows from 0, by sheet. */
  readonly hidden = new Map<string, number[]>();
  readonly protectedSheets = new Set<string>();
  /** In characters, by sheet and column; those that were never set are as usual. */
  readonly widths = new Map<string, number>();

  cell(sheet: string, row: number, column: number): MemoryCell {
    const found = this.cellsOf(sheet).get(`${row},${column}`);
    return found ?? { content: null, format: 'General', value: null };
  }

  set(sheet: string, row: number, column: number, cell: Partial<MemoryCell>): void {
    const { content, format, value } = { ...this.cell(sheet, row, column), ...cell };
    const shown = isFormula(content) ? value : isErrorConstant(content) ? content.error : content;
    this.cellsOf(sheet).set(`${row},${column}`, { content, format, value: shown });
  }

  cellsOf(sheet: string): Map<string, MemoryCell> {
    const cells = this.sheets.get(sheet);
    return cells ?? missing('sheet', sheet);
  }

  rows<Item>(area: Area, item: (cell: MemoryCell) => Item): Item[][] {
    return Array.from({ length: area.rows }, (_, row) =>
      Array.from({ length: area.columns }, (_unused, column) =>
        item(this.cell(area.sheet, area.row + row, area.column + column)),
      ),
    );
  }

  used(sheet: string): Area {
    let [row, column, last, end] = [Infinity, Infinity, -1, -1];
    for (const [key, { content }] of this.cellsOf(sheet)) {
      if (content === null) continue;
      const [at = 0, across = 0] = key.split(',').map(Number);
      [row, last] = [Math.min(row, at), Math.max(last, at)];
      [column, end] = [Math.min(column, across), Math.max(end, across)];
    }
    if (last < 0) return { sheet, row: 0, column: 0, rows: 0, columns: 0 };
    return { sheet, row, column, rows: last - row + 1, columns: end - column + 1 };
  }

  table(name: string): Table | undefined {
    const table = this.tables.find((each) => each.name.toLowerCase() === name.toLowerCase());
    if (!table) return undefined;
    const [headings = []] = this.rows({ ...table.area, rows: 1 }, ({ value }) => String(value ?? ''));
    return { ...table, headings };
  }

  sheet(name: string): Sheet | undefined {
    const known = [...this.sheets.keys()].find((each) => sameName(each, name));
    if (known === undefined) return undefined;
    return { name: known, visible: true, protected: this.protectedSheets.has(known) };
  }

  named(name: string) {
    return this.names.find((each) => sameName(each.name, name));
  }

  see(look: Look): Seen<Look> | undefined {
    switch (look.look) {
      case 'cells':
        return this.state(look.area);
      case 'used':
        return { area: this.used(look.sheet), ...this.state(this.used(look.sheet)) };
      case 'merged': {
        const isMerged = this.merged.some((each) => sameArea(each, look.area));
        return { ...this.state(look.area), isMerged, isCentered: false };
      }
      case 'sheet':
        return this.sheet(look.name);
      case 'table': {
        const table = this.table(look.name);
        return table ?? missing('table', look.name);
      }
      case 'is table':
        return this.table(look.name) !== undefined;
      case 'name': {
        const named = this.named(look.name);
        return named && { name: named.name, refersTo: `=${absoluteAddress(named.area)}` };
      }
    }
  }

  state(area: Area): CellState {
    return {
      contents: this.rows(area, ({ content }) => content),
      formats: this.rows(area, ({ format }) => format),
    };
  }

  private readonly primitives: Primitives<CellState | void> = {
    cells: (action) => this.write(action),
    sheet: ({ name }) => void this.sheets.set(name, new Map()),
    table: ({ name, area }) => {
      if (this.tables.some((other) => overlap(other.area, area))) throw new Error('tables overlap');
      if (this.merged.some((each) => overlap(each, area))) throw new Error('merged cells in a table');
      this.tables.push({ name, area, hasTotals: false });
    },
    name: ({ name, area }) => void this.names.push({ name, area }),
    resize: ({ table, area }) => void (this.own(table).area = area),
    column: ({ table, position, heading }) => {
      const own = this.own(table);
      this.shift(own, position, 1);
      const { sheet, row, column } = own.area;
      this.set(sheet, row, column + position, { content: heading });
    },
    'drop column': ({ table, heading }) =>
      this.shift(this.own(table), this.table(table)?.headings.indexOf(heading) ?? -1, -1),
    unmerge: ({ area }) =>
      void this.merged.splice(
        this.merged.findIndex((each) => sameArea(each, area)),
        1,
      ),
    merge: ({ area }) => void this.merged.push(area),
    'drop sheet': ({ name }) => void this.sheets.delete(name),
    'drop table': ({ name }) => void this.tables.splice(this.tables.indexOf(this.own(name)), 1),
    'drop name': (action) =>
      void this.names.splice(
        this.names.findIndex(({ name }) => name === action.name),
        1,
      ),
  };

  act(action: Action): CellState | undefined {
    return doAction(this.primitives, action) ?? undefined;
  }

  private refuseProtected(sheet: string): void {
    if (this.protectedSheets.has(sheet))
      throw new WorkbookError(
        'protected',
        'The sheet is protected: unprotect it under Review, then try again.',
      );
  }

  private own(name: string) {
    const found = this.tables.find((table) => table.name.toLowerCase() === name.toLowerCase());
    return found ?? missing('table', name);
  }

  private write({ area, contents, formats, widths }: ActionOf<'cells'>): CellState {
    this.refuseProtected(area.sheet);
    widths?.forEach((width, at) => {
      if (width !== undefined) this.widths.set(`${area.sheet},${area.column + at}`, width);
    });
    for (let row = 0; row < area.rows; row++)
      for (let column = 0; column < area.columns; column++) {
        const content = contents[row]?.[column];
        const format = formats[row]?.[column];
        if (isFormula(content)) refuseUnbalanced(content.formula);
        const change = {
          ...(content === undefined ? {} : { content }),
          ...(format === undefined ? {} : { format }),
        };
        this.set(area.sheet, area.row + row, area.column + column, change);
      }
    return this.state(area);
  }

  /** Makes or closes the gap of one column in the rows of a table. */
  private shift(table: { area: Area }, position: number, by: 1 | -1): void {
    const { area } = table;
    const cells = this.cellsOf(area.sheet);
    const from = area.column + position;
    const moving = [...cells].flatMap(([key, cell]) => {
      const [row = 0, column = 0] = key.split(',').map(Number);
      const beside = row >= area.row && row < area.row + area.rows && column >= from;
      return beside ? [{ key, row, column, cell }] : [];
    });
    for (const { key } of moving) cells.delete(key);
    for (const { row, column, cell } of moving)
      if (by === 1 || column > from) cells.set(`${row},${column + by}`, cell);
    table.area = { ...area, columns: area.columns + by };
    this.shiftWidths(area.sheet, from, area.column + area.columns, by);
  }

  /** Widths go with the cells of the table. */
  private shiftWidths(sheet: string, from: number, end: number, by: 1 | -1): void {
    const held = Array.from({ length: end - from }, (_, at) => this.widths.get(`${sheet},${from + at}`));
    const moved = by === 1 ? held : held.slice(1);
    moved.forEach((width, at) => {
      const key = `${sheet},${from + at + (by === 1 ? 1 : 0)}`;
      if (width === undefined) this.widths.delete(key);
      else this.widths.set(key, width);
    });
  }
}

export function missing(kind: 'sheet' | 'table' | 'name', name: string): never {
  throw new WorkbookError('missing', `There is no ${kind} "${name}".`);
}

function refuseUnbalanced(formula: string): void {
  if (formula.split('(').length !== formula.split(')').length)
    throw new WorkbookError('not allowed', `The formula ${formula} has a parenthesis too many or too few.`);
}
