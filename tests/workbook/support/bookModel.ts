import { absoluteAddress, type Area, overlap } from '../../../src/workbook/area.js';
import { Grid } from './grid.js';
import { HostFailure } from './typedText.js';

export interface TableModel {
  id: string;
  name: string;
  area: Area;
  showTotals: boolean;
  style?: string;
  isBanded?: boolean;
}

/** A workbook as a host keeps it, with the rules a host enforces. */
export class BookModel {
  readonly sheets: Grid[] = [];
  readonly tables: TableModel[] = [];
  readonly names: { name: string; formula: string }[] = [];
  calculationMode: 'Automatic' | 'Manual' = 'Automatic';
  /** The calculations somebody asked for. */
  readonly calculations: string[] = [];
  /** Undefined while a chart is selected. */
  selected: Area[] | undefined;
  private nextId = 1;

  addSheet(name: string): Grid {
    if (this.findSheet(name)) throw new HostFailure('ItemAlreadyExists');
    const sheet = new Grid(`{sheet-${this.nextId++}}`, name);
    this.sheets.push(sheet);
    return sheet;
  }

  /** By name or id, as hosts find sheets. */
  findSheet(key: string): Grid | undefined {
    return this.sheets.find(({ id, name }) => id === key || same(name, key));
  }

  sheet(key: string): Grid {
    return this.findSheet(key) ?? fail('ItemNotFound');
  }

  dropSheet(sheet: Grid): void {
    if (this.sheets.length === 1) fail('InvalidOperation');
    remove(this.sheets, sheet);
    for (const table of this.tables.filter(({ area }) => area.sheet === sheet.name))
      remove(this.tables, table);
  }

  findTable(key: string): TableModel | undefined {
    return this.tables.find(({ id, name }) => id === key || same(name, key));
  }

  addTable(area: Area): TableModel {
    const sheet = this.sheet(area.sheet);
    sheet.refuseWhenProtected();
    if (this.tables.some((table) => overlap(table.area, area))) fail('InvalidArgument');
    if (sheet.merged.some((each) => overlap(each, area))) fail('MergedRangeConflict');
    const table = { id: `${this.nextId++}`, name: `Table${this.nextId}`, area, showTotals: false };
    this.tables.push(table);
    for (let column = area.column; column < area.column + area.columns; column += 1) {
      const cell = sheet.at(area.row, column);
      const text = cell.value === '' ? `Column${column - area.column + 1}` : String(cell.value);
      sheet.put(area.row, column, { value: text, format: cell.format });
    }
    return table;
  }

  rename(table: TableModel, name: string): void {
    const taken = this.findTable(name) ?? this.findName(name);
    if (taken && taken !== table) fail('InvalidArgument');
    table.name = name;
  }

  headings({ area }: TableModel): string[] {
    return this.sheet(area.sheet)
      .rows({ ...area, rows: 1 }, ({ value }) => String(value))
      .flat();
  }

  addColumn(table: TableModel, index: number, heading: string): void {
    const { area } = table;
    const sheet = this.sheet(area.sheet);
    sheet.refuseWhenProtected();
    if (index > area.columns || this.headings(table).some((each) => same(each, heading)))
      fail('InvalidArgument');
    sheet.shift(area.row, area.rows, area.column + index, 1);
    for (let row = area.row; row < area.row + area.rows; row += 1) {
      // A column before all others looks like the one it pushes away.
      const { format } = sheet.at(row, area.column + (index === 0 ? 1 : index - 1));
      sheet.put(row, area.column + index, { value: row === area.row ? heading : '', format });
    }
    table.area = { ...area, columns: area.columns + 1 };
  }

  dropColumn(table: TableModel, heading: string): void {
    const { area } = table;
    const sheet = this.sheet(area.sheet);
    sheet.refuseWhenProtected();
    const index = this.headings(table).findIndex((each) => same(each, heading));
    if (index < 0) fail('ItemNotFound');
    sheet.shift(area.row, area.rows, area.column + index, -1);
    table.area = { ...area, columns: area.columns - 1 };
  }

  findName(key: string): { name: string; formula: string } | undefined {
    return this.names.find(({ name }) => same(name, key));
  }

  addName(name: string, area: Area): void {
    if (this.findName(name) || this.findTable(name)) fail('InvalidArgument');
    // Hosts write the reference in their own way, without needless quotes.
    const quoted = absoluteAddress(area);
    this.names.push({ name, formula: `=${/^'\w+'!/.test(quoted) ? quoted.replaceAll("'", '') : quoted}` });
  }
}

export function remove<Item>(items: Item[], item: Item): void {
  items.splice(items.indexOf(item), 1);
}

function same(a: string, b: string): boolean {
  return a.toLowerCase() === b.toLowerCase();
}

function fail(code: string): never {
  throw new HostFailure(code);
}
