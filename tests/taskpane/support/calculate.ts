import { InputError } from '../../../src/core/inputError.js';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { readRowItems, rowItems } from '../../../src/core/row/rowItem.js';
import { readShop, type Shop } from '../../../src/core/shop/readShop.js';
import { shownItem } from '../../../src/functions/row/shownItem.js';
import { ShownRow } from '../../../src/functions/row/shownRow.js';
import { isFormula } from '../../../src/workbook/content.js';
import { shopPlaces } from '../../../src/taskpane/shared/shopPlaces.js';
import type { MemorySheets } from './memorySheets.js';

const quotedText = /"([^"]*)"\)$/;

/** Calculates plain sums and the formulas that the pane writes: SHOP first, then the lists, then what looks into them. */
export function calculate(memory: MemorySheets): void {
  let shop: Shop | undefined;
  const formulas = [...memory.sheets.keys()].flatMap((sheet) =>
    [...memory.cellsOf(sheet)].flatMap(([key, { content }]) => {
      const [row = 0, column = 0] = key.split(',').map(Number);
      return isFormula(content) ? [{ sheet, row, column, formula: content.formula }] : [];
    }),
  );
  const each = (start: string, value: (at: (typeof formulas)[number]) => CellValue) => {
    for (const at of formulas)
      if (at.formula.startsWith(start)) memory.set(at.sheet, at.row, at.column, { value: value(at) });
  };
  for (const { sheet, row, column, formula } of formulas) {
    const [, a, b] = /^=(\d+)\+(\d+)$/.exec(formula) ?? [];
    if (a !== undefined) memory.set(sheet, row, column, { value: Number(a) + Number(b) });
  }
  each('=TONROW.SHOP(', ({ formula }) => {
    try {
      const tables = shopPlaces(formula, '').map((place) =>
        place && 'table' in place ? all(memory, place.table) : undefined,
      );
      const [presses = [], tools, grades, settings] = tables;
      shop = readShop({ presses, tools, grades, settings });
      return shop.stamp;
    } catch (error) {
      return error instanceof InputError ? '#VALUE!' : '#N/A';
    }
  });
  each('=TONROW.ROWCHECK(', ({ formula, row }) => {
    const list = listOf(formula, memory);
    const cells = list?.rows[row - (list?.row ?? 0) - 1];
    return shop && list && cells
      ? item(cells, list.headings, shop, quotedText.exec(formula)?.[1] ?? '')
      : '#N/A';
  });
  each('=TONROW.LISTCHECK(', ({ formula, sheet, row, column }) => {
    const list = listOf(formula, memory);
    const items = readRowItems(quotedText.exec(formula)?.[1] ?? '', 'Items');
    const titles = items.map((name) => rowItems.find((known) => known.item === name)?.heading ?? name);
    list?.rows.forEach((cells, at) =>
      items.forEach((name, right) => {
        const value = shop ? item(cells, list.headings, shop, name) : '#N/A';
        memory.set(sheet, row + 1 + at, column + right, { content: value });
      }),
    );
    titles.slice(1).forEach((title, at) => memory.set(sheet, row, column + 1 + at, { content: title }));
    return titles[0] ?? '';
  });
  each('=INDEX(', ({ formula, row }) => {
    const [, sheet = '', letter = 'A', table = '', more = '0'] =
      /^=INDEX\('([^']+)'!\$([A-Z]):\$[A-Z],ROW\(\)-ROW\((\w+)\[\[#Headers\],\[.*\]\]\)\+(\d+)\)$/.exec(
        formula,
      ) ?? [];
    const top = memory.table(table)?.area.row ?? 0;
    return memory.cell(sheet, row - top + Number(more) - 1, letter.charCodeAt(0) - 65).value;
  });
}

function all(memory: MemorySheets, name: string): CellValue[][] {
  const table = memory.table(name);
  return table ? memory.rows(table.area, ({ value }) => value) : [];
}

function listOf(formula: string, memory: MemorySheets) {
  const [, name = '', from = '', to = ''] =
    /\((\w+)\[\[#(?:Headers|All)\],\[(.+?)\]:\[(.+?)\]\]/.exec(formula) ?? [];
  const table = memory.table(name);
  if (!table) return undefined;
  const plain = (text: string) => table.headings.indexOf(text.replaceAll(/'(.)/g, '$1'));
  const cut = (cells: CellValue[]) => cells.slice(plain(from), plain(to) + 1);
  const [headings = [], ...rows] = all(memory, name).map(cut);
  return { headings, rows, row: table.area.row };
}

function item(cells: CellValue[], headings: CellValue[], shop: Shop, name: string): CellValue {
  const [only] = readRowItems(name, 'Item');
  const row = { cells, headings: readHeadings(headings), shop, unit: shop.unit };
  return only ? shownItem(new ShownRow(row), only, shop.unit) : '';
}
