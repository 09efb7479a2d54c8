import {
  absoluteAddress,
  type Area,
  cellAddress,
  overlap,
  readAddresses,
} from '../../../src/workbook/area.js';
import { MAX_COLUMNS } from '../../../src/sheet/address.js';
import { type BookModel, remove, type TableModel } from './bookModel.js';
import type { Grid } from './grid.js';
import { HostFailure } from './typedText.js';

/** An object of the host: what requests may read, set, and call. Null where there is none. */
export interface HostObject {
  properties?: Record<string, () => unknown>;
  setters?: Record<string, (value: never) => void>;
  methods?: Record<string, (...given: never[]) => unknown>;
  /** Objects reached by a property. */
  children?: Record<string, () => HostObject | null>;
  items?: () => HostObject[];
  /** Found by the brackets of a collection. */
  find?: (key: string) => HostObject | null;
  /** The cells of a range. */
  area?: Area;
}

/** What the host does besides: events and the selection. */
export interface HostEffects {
  changed(area: Area, changeType: string): void;
  selectionChanged(area: Area): void;
  sheetsChanged(kind: 'added' | 'deleted', id: string): void;
  registered(event: string, on: boolean): void;
}

export function workbookObject(book: BookModel, effects: HostEffects): HostObject {
  return {
    children: {
      Worksheets: () => worksheets(book, effects),
      Tables: () => tables(book, effects),
      Names: () => names(book, effects),
      Application: () => ({
        properties: { CalculationMode: () => book.calculationMode },
        methods: { Calculate: (kind: string) => void book.calculations.push(kind) },
      }),
    },
    methods: { GetSelectedRanges: () => selection(book) },
  };
}

function collection(all: () => HostObject[], find: (key: string) => HostObject | null): HostObject {
  const needed = (key: string) => find(key) ?? fail('ItemNotFound');
  return { items: all, find: needed, methods: { GetItem: needed, GetItemOrNullObject: find } };
}

function worksheets(book: BookModel, effects: HostEffects): HostObject {
  const find = (key: string) => {
    const found = book.findSheet(key);
    return found ? worksheet(found, book, effects) : null;
  };
  const all = collection(() => book.sheets.map((each) => worksheet(each, book, effects)), find);
  const event = (name: string, on: boolean) => () => effects.registered(name, on);
  for (const name of ['DataChanged', 'Calculated', 'SelectionChanged', 'Added', 'Deleted']) {
    Object.assign(all.methods ?? {}, {
      [`_Register${name}Event`]: event(name, true),
      [`_Unregister${name}Event`]: event(name, false),
    });
  }
  Object.assign(all.methods ?? {}, {
    Add: (name: string) => {
      const sheet = book.addSheet(name);
      effects.sheetsChanged('added', sheet.id);
      return worksheet(sheet, book, effects);
    },
  });
  return all;
}

function worksheet(sheet: Grid, book: BookModel, effects: HostEffects): HostObject {
  return {
    properties: {
      Id: () => sheet.id,
      Name: () => sheet.name,
      Visibility: () => (sheet.visible ? 'Visible' : 'Hidden'),
    },
    children: { Protection: () => ({ properties: { Protected: () => sheet.protected } }) },
    methods: {
      GetRange: (address: string) => range(sheet.area(address), book, effects),
      GetUsedRangeOrNullObject: () => {
        const area = sheet.used();
        return area ? range(area, book, effects) : null;
      },
      Activate: () => undefined,
      Delete: () => {
        book.dropSheet(sheet);
        effects.sheetsChanged('deleted', sheet.id);
      },
    },
  };
}

const typeNames = { string: 'String', number: 'Double', boolean: 'Boolean' } as Record<string, string>;

/** How wide a column is that nobody has set. */
const usualPoints = 48;

function format({ row, column, rows, columns }: Area, sheet: Grid): HostObject {
  return {
    properties: {
      ColumnWidth: () => sheet.widths.get(column) ?? usualPoints,
      HorizontalAlignment: () => sheet.alignments.get(`${row},${column}`) ?? 'General',
    },
    setters: {
      HorizontalAlignment: (alignment: string) => {
        for (let down = row; down < row + rows; down += 1)
          for (let at = column; at < column + columns; at += 1)
            sheet.alignments.set(`${down},${at}`, alignment);
      },
      ColumnWidth: (points: number) => {
        for (let at = column; at < column + columns; at += 1) sheet.widths.set(at, points);
      },
    },
  };
}

function range(area: Area, book: BookModel, effects: HostEffects): HostObject {
  const sheet = () => book.sheet(area.sheet);
  if (area.column + area.columns > MAX_COLUMNS) fail('InvalidArgument');
  const each = <Value>(
    values: readonly (readonly (Value | null)[])[],
    set: (row: number, column: number, value: Value) => void,
  ) => {
    sheet().refuseWhenProtected(area);
    if (values.length !== area.rows || values.some((row) => row.length !== area.columns))
      fail('InvalidArgument');
    values.forEach((row, down) =>
      row.forEach((value, right) => {
        if (value !== null) set(area.row + down, area.column + right, value);
      }),
    );
    effects.changed(area, 'RangeEdited');
  };
  const enter = (values: (string | number | boolean | null)[][]) =>
    each(values, (row, column, value) => sheet().enter(row, column, value));
  return {
    properties: {
      Address: () => hostAddress(area),
      Values: () => sheet().rows(area, ({ value }) => value),
      Formulas: () => sheet().rows(area, ({ value, formula }) => formula ?? value),
      NumberFormat: () => sheet().rows(area, ({ format }) => format),
      Text: () => sheet().rows(area, ({ value }) => String(value)),
      ValueTypes: () =>
        sheet().rows(area, ({ value, error }) =>
          error ? 'Error' : value === '' ? 'Empty' : typeNames[typeof value],
        ),
    },
    setters: {
      Values: enter,
      Formulas: enter,
      NumberFormat: (formats: (string | null)[][]) =>
        each(formats, (row, column, format) =>
          sheet().put(row, column, { ...sheet().at(row, column), format }),
        ),
    },
    children: { Worksheet: () => worksheet(sheet(), book, effects), Format: () => format(area, sheet()) },
    area,
    methods: {
      _ValidateArraySize: (rows: number, columns: number) => {
        if (rows !== area.rows || columns !== area.columns) fail('InvalidArgument');
      },
      GetColumn: (column: number) =>
        range({ ...area, column: area.column + column, columns: 1 }, book, effects),
      GetRow: (row: number) => range({ ...area, row: area.row + row, rows: 1 }, book, effects),
      GetBoundingRect: ({ area: other }: HostObject) =>
        other ? range(bounding(area, other), book, effects) : fail('InvalidArgument'),
      GetMergedAreasOrNullObject: () => {
        const merged = sheet().merged.filter((each) => overlap(each, area));
        return merged.length === 0
          ? null
          : { properties: { Address: () => merged.map(hostAddress).join(',') } };
      },
      GetRowProperties: () =>
        Array.from({ length: area.rows }, (_, at) => ({ rowHidden: sheet().hiddenRows.has(area.row + at) })),
      Merge: () => void sheet().merged.push(area),
      Unmerge: () => {
        const left = sheet().merged.filter((each) => !overlap(each, area));
        sheet().merged.splice(0, Infinity, ...left);
      },
      Select: () => {
        book.selected = [area];
        effects.selectionChanged(area);
      },
    },
  };
}

function bounding(a: Area, b: Area): Area {
  const row = Math.min(a.row, b.row);
  const column = Math.min(a.column, b.column);
  return {
    sheet: a.sheet,
    row,
    column,
    rows: Math.max(a.row + a.rows, b.row + b.rows) - row,
    columns: Math.max(a.column + a.columns, b.column + b.columns) - column,
  };
}

function hostAddress(area: Area): string {
  const absolute = absoluteAddress(area);
  const quoted = absolute.slice(0, absolute.lastIndexOf('!'));
  const plain = /^'[a-z]\w*'$/i.test(quoted) ? quoted.slice(1, -1) : quoted;
  return `${plain}!${cellAddress(area)}`;
}

function selection(book: BookModel): HostObject {
  const { selected } = book;
  if (!selected) return fail('InvalidSelection');
  return {
    properties: { Address: () => selected.map(hostAddress).join(',') },
    children: { Worksheet: () => ({ properties: { Name: () => selected[0]?.sheet } }) },
  };
}

function tables(book: BookModel, effects: HostEffects): HostObject {
  const find = (key: string) => {
    const found = book.findTable(key);
    return found ? table(found, book, effects) : null;
  };
  const all = collection(() => book.tables.map((each) => table(each, book, effects)), find);
  Object.assign(all.methods ?? {}, {
    Add: (address: string, hasHeaders: boolean) => {
      const [area] = readAddresses(address, '');
      if (!area || !hasHeaders) return fail('InvalidArgument');
      return table(book.addTable(area), book, effects);
    },
  });
  return all;
}

function table(model: TableModel, book: BookModel, effects: HostEffects): HostObject {
  const part = (area: Area) => range(area, book, effects);
  const body = (): Area => ({
    ...model.area,
    row: model.area.row + 1,
    rows: model.area.rows - 1 - (model.showTotals ? 1 : 0),
  });
  return {
    properties: { Id: () => model.id, Name: () => model.name, ShowTotals: () => model.showTotals },
    setters: {
      Name: (name: string) => book.rename(model, name),
      Style: (style: string) => void (model.style = style),
      ShowBandedRows: (shown: boolean) => void (model.isBanded = shown),
    },
    children: {
      Worksheet: () => worksheet(book.sheet(model.area.sheet), book, effects),
      Columns: () => columns(model, book, effects),
    },
    methods: {
      GetRange: () => part(model.area),
      GetHeaderRowRange: () => part({ ...model.area, rows: 1 }),
      GetDataBodyRange: () => part(body()),
      ConvertToRange: () => {
        book.sheet(model.area.sheet).refuseWhenProtected();
        remove(book.tables, model);
        return part(model.area);
      },
      Resize: (address: string) => {
        const sheet = book.sheet(model.area.sheet);
        sheet.refuseWhenProtected();
        const area = sheet.area(address);
        if (area.row !== model.area.row) fail('InvalidArgument');
        model.area = area;
      },
    },
  };
}

function columns(model: TableModel, book: BookModel, effects: HostEffects): HostObject {
  const column = (heading: string): HostObject => ({
    properties: { Name: () => heading },
    methods: {
      Delete: () => {
        book.dropColumn(model, heading);
        effects.changed(model.area, 'CellDeleted');
      },
    },
  });
  const find = (key: string) => (book.headings(model).includes(key) ? column(key) : null);
  const all = collection(() => book.headings(model).map(column), find);
  Object.assign(all.methods ?? {}, {
    Add: (index: number, _values: unknown, name: string) => {
      book.addColumn(model, index, name);
      effects.changed(model.area, 'CellInserted');
      return column(name);
    },
  });
  return all;
}

function names(book: BookModel, effects: HostEffects): HostObject {
  const named = (model: { name: string; formula: string }): HostObject => ({
    properties: { Name: () => model.name, Formula: () => model.formula },
    methods: {
      GetRange: () => {
        const [area] = readAddresses(model.formula.slice(1), '');
        return area ? range(area, book, effects) : fail('InvalidReference');
      },
      Delete: () => remove(book.names, model),
    },
  });
  const find = (key: string) => {
    const found = book.findName(key);
    return found ? named(found) : null;
  };
  const all = collection(() => book.names.map(named), find);
  Object.assign(all.methods ?? {}, {
    Add: (name: string, reference: string) => {
      const [area] = readAddresses(reference.slice(1), '');
      if (!area) return fail('InvalidArgument');
      book.addName(name, area);
      return find(name);
    },
  });
  return all;
}

function fail(code: string): never {
  throw new HostFailure(code);
}
