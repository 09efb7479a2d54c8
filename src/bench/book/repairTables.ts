import type { Model } from '@odoo/o-spreadsheet';
import type { Dispatch } from '../engine/oneCommand.js';
import { constantContent, constantOf } from '../engine/cellContent.js';
import type { TableNames } from './tableNames.js';
import type { TypedFormulas } from './typedFormulas.js';

/** The engine knows the cells of a table, not its name: formulas over a table that grew are written again. */
export function rewriteOutgrown(formulas: TypedFormulas, dispatch: Dispatch): void {
  for (const { display, engine, position } of formulas.outgrown()) {
    dispatch('UPDATE_CELL', { ...position, content: engine });
    formulas.set(display, position);
  }
}

/** Headings that are blank, or there twice, get the names that a table has for them. */
export function fillHeadings(tables: TableNames, { getters }: Model, dispatch: Dispatch): void {
  for (const { sheetId, zone, headerRows, columns } of tables.all()) {
    if (headerRows === 0) continue;
    columns.forEach((heading, at) => {
      const position = { sheetId, row: zone.top, col: zone.left + at };
      const cell = getters.getCell(position);
      if (cell?.isFormula || String((cell && constantOf(cell)) ?? '') === heading) return;
      dispatch('UPDATE_CELL', { ...position, content: constantContent(heading, cell?.format).content });
    });
  }
}
