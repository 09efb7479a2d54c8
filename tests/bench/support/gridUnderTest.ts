import './engineOnNode.js';
import type { CellPosition, Model } from '@odoo/o-spreadsheet';
import * as engine from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import { GridBook } from '../../../src/bench/book/gridBook.js';
import { engineSheetName } from '../../../src/bench/book/translate.js';
import { columnCharacters } from '../../../src/bench/open/layoutData.js';
import { tableConfig } from '../../../src/bench/open/workbookData.js';
import { GridWorkbook } from '../../../src/bench/port/gridWorkbook.js';
import { areaOf, zoneOf } from '../../../src/bench/port/gridPlaces.js';
import type { Area } from '../../../src/workbook/area.js';
import type { Hands, UnderTest } from '../../workbook/contract/underTest.js';

const { LocalTransportService } = engine as unknown as {
  LocalTransportService: new () => NonNullable<ConstructorParameters<typeof GridBook>[1]>;
};

/** The port over the grid: one empty sheet, Parts. Somebody else has the same workbook open in a grid of theirs. */
export async function openGrid(): Promise<UnderTest & { book: GridBook }> {
  const transport = new LocalTransportService();
  const open = () =>
    new GridBook(
      {
        data: { sheets: [{ id: 'parts', name: 'Parts' }] },
        sheets: [{ sheetId: 'parts', name: 'Parts' }],
        tables: [],
        names: [],
        namespace: 'TONROW',
        ours: new Set(),
      },
      transport,
    );
  const [book, others] = [open(), open()];
  return { workbook: new GridWorkbook(book), hands: handsOn(book, others), book };
}

function handsOn(book: GridBook, others: GridBook): Hands {
  const { model, getters } = book;
  const idOf = (sheet: string) => book.sheetIdOf(sheet) as string;
  const positions = ({ sheet, row, column, rows, columns }: Area): CellPosition[] =>
    Array.from({ length: rows * columns }, (_, at) => ({
      sheetId: idOf(sheet),
      row: row + Math.floor(at / columns),
      col: column + (at % columns),
    }));
  const type = (into: Model, position: CellPosition, input: string | number | null) =>
    into.dispatch('UPDATE_CELL', { ...position, content: input === null ? '' : String(input) });
  return {
    addSheet: async (name) => {
      const sheetId = `sheet of ${name}`;
      const position = getters.getSheetIds().length;
      model.dispatch('CREATE_SHEET', { sheetId, position, name: engineSheetName(name) });
      book.nameSheet(sheetId, name);
    },
    type: async (area, rows) =>
      positions(area).forEach((position, at) => type(model, position, rows.flat()[at] ?? null)),
    format: async (area, format) => {
      const workbook = new GridWorkbook(book);
      const row = Array.from({ length: area.columns }, () => format);
      const formats = Array.from({ length: area.rows }, () => row);
      await workbook.write(await workbook.plan([{ kind: 'cells', area, formats }]), { confirmed: true });
    },
    addTable: async (name, area) => {
      const sheetId = idOf(area.sheet);
      const ranges = [getters.getRangeDataFromZone(sheetId, zoneOf(area))];
      model.dispatch('CREATE_TABLE', { sheetId, ranges, tableType: 'static', config: tableConfig(1, false) });
      book.tables.give(sheetId, zoneOf(area), name);
    },
    addName: async (name, area) =>
      void model.dispatch('CREATE_NAMED_RANGE', {
        name,
        ranges: [getters.getRangeDataFromZone(idOf(area.sheet), zoneOf(area))],
      }),
    merge: async (area) =>
      void model.dispatch('ADD_MERGE', { sheetId: idOf(area.sheet), target: [zoneOf(area)] }),
    hide: async (sheet, rows) =>
      void model.dispatch('HIDE_COLUMNS_ROWS', {
        sheetId: idOf(sheet),
        dimension: 'ROW',
        elements: [...rows],
      }),
    merged: (sheet) => getters.getMerges(idOf(sheet)).map((zone) => areaOf(sheet, zone)),
    protect: async (sheet) => void model.dispatch('LOCK_SHEET', { sheetId: idOf(sheet) }),
    unprotect: async (sheet) => void model.dispatch('UNLOCK_SHEET', { sheetId: idOf(sheet) }),
    select: async (area) => {
      const zone = zoneOf(area);
      model.selection.selectZone({ cell: { col: zone.left, row: zone.top }, zone });
      await nextTurn();
    },
    edit: async (area, input, author) => {
      const [position] = positions(area);
      type(author === 'here' ? model : others.model, position as CellPosition, input);
      await nextTurn();
    },
    calculate: async (area) => {
      // Cells without anything in them do not exist in the grid.
      const cells = positions(area).map((position) => {
        model.dispatch('UPDATE_CELL', { ...position, style: { bold: true } });
        return getters.getCell(position)?.id as number;
      });
      model.dispatch('EVALUATE_CELLS', { cellIds: cells });
      await nextTurn();
    },
    width: (sheet, column) => {
      const pixels = getters.getColSize(idOf(sheet), column);
      return pixels === usualPixels ? undefined : Number(columnCharacters(pixels).toFixed(1));
    },
    look: (sheet, row, column) => {
      const position = { sheetId: idOf(sheet), row, col: column };
      const formula = book.formula(position);
      return {
        value: book.value(position) ?? '',
        format: book.format(position),
        ...(formula !== undefined && { formula }),
      };
    },
  };
}

/** The grid's own width of a column. */
const usualPixels = 96;

const nextTurn = () => new Promise((resolve) => setTimeout(resolve, 0));
