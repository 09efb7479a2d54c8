import { sameName } from '../../sheet/names.js';
import { isFormula, type Content } from '../../workbook/content.js';
import type { DefinedName, Sheet, Table } from '../../workbook/reading.js';
import type { AllSeen, CellState, Look } from '../../workbook/writeHost.js';
import type { GridBook } from '../book/gridBook.js';
import type { NamedTable } from '../book/tableChanges.js';
import { areaOf, areaOfPlace, eachCell, tableFor } from './gridPlaces.js';
import { mergeStateOf } from './merges.js';
import type { Area } from '../../workbook/area.js';
import type { CellPosition } from '@odoo/o-spreadsheet';

/** Answers questions about the grid. */
export function lookAt<const L extends readonly Look[]>(looks: L, book: GridBook): AllSeen<L> {
  return looks.map((look) => answer(look, book)) as AllSeen<L>;
}

function answer(look: Look, book: GridBook): unknown {
  switch (look.look) {
    case 'cells':
      return stateOf(look.area, book);
    case 'used': {
      const area = areaOfPlace({ usedOf: look.sheet }, book);
      return { area, ...stateOf(area, book) };
    }
    case 'merged':
      return { ...stateOf(look.area, book), ...mergeStateOf(look.area, book) };
    case 'sheet':
      return sheetsOf(book).find(({ name }) => sameName(name, look.name));
    case 'table':
      return tableOf(tableFor(book, look.name), book);
    case 'is table':
      return book.tables.find(look.name) !== undefined;
    case 'name':
      return namesOf(book).find(({ name }) => sameName(name, look.name));
  }
}

export function stateOf(area: Area, book: GridBook): CellState {
  return {
    contents: eachCell(book, area, (position) => contentOf(position, book)),
    formats: eachCell(book, area, (position) => book.format(position)),
  };
}

function contentOf(position: CellPosition, book: GridBook): Content {
  const formula = book.formula(position);
  if (formula !== undefined) return { formula };
  // What another cell's formula spills here is not this cell's own content.
  return book.getters.getCell(position) ? book.value(position) : null;
}

export function sheetsOf(book: GridBook): Sheet[] {
  const { getters } = book;
  return getters.getSheetIds().map((id) => ({
    name: book.sheetName(id) ?? '',
    visible: getters.isSheetVisible(id),
    protected: getters.isSheetLocked(id),
  }));
}

export function tableOf({ sheetId, zone, name, columns, totalsRows }: NamedTable, book: GridBook): Table {
  const area = areaOf(book.sheetName(sheetId) ?? '', zone);
  return { name, area, headings: columns, hasTotals: totalsRows > 0 };
}

export const namesOf = (book: GridBook): DefinedName[] =>
  book.names().map(({ name, text }) => ({ name, refersTo: `=${text.replace(/^=/, '')}` }));

export const formulaOf = (content: Content): string | null => (isFormula(content) ? content.formula : null);
