import { type Piece, readPieces } from '../../sheet/formula/pieces.js';
import type { CellPosition } from '@odoo/o-spreadsheet';
import { cellAddress } from '../../sheet/address.js';
import { sheetPrefix } from '../../sheet/names.js';
import { entriesInTurn, type Pausing } from '../../xlsx/pausing.js';
import { WorkbookRefused } from '../../xlsx/refusal/refusal.js';
import type { NamedTable } from '../book/tableChanges.js';
import type { OpenBook } from '../open/openBook.js';
import { storedFormula } from '../book/storedFormula.js';

const longestSheetName = 31;
const longestText = 32_767;
const longestFormula = 8_192;
const longestHeading = 255;

/** Refuses, in one sentence that names the place, what the file format has no room for and a program would call damage. */
export function* refuseUnsavable({ book, namespace }: OpenBook): Pausing<void> {
  const { getters } = book;
  let looked = 0;
  for (const sheetId of getters.getSheetIds()) {
    refuseSheetName(book.sheetName(sheetId) ?? '');
    for (const { id } of getters.getCells(sheetId)) {
      const position = getters.getCellPosition(id);
      if (++looked % entriesInTurn === 0) yield;
      const formula = book.formula(position);
      if (formula === undefined) refuseText(book.storedValue(position), () => placeOf(book, position));
      else
        refuseFormula(formula, book.tables.tableOf(position)?.name, namespace, () => placeOf(book, position));
    }
  }
  for (const table of book.tables.all()) refuseTable(book, table);
}

function refuseSheetName(name: string): void {
  if (name.length > longestSheetName)
    refuse(
      `the name of the sheet "${name.slice(0, longestSheetName)}…" has ${name.length} letters, and a file takes ${longestSheetName}. Shorten it.`,
    );
  if (name.toLowerCase() === 'history')
    refuse('no sheet of a file may be called History. Give it another name.');
  if (name === '' || /[\\/?*[\]:]|^'|'$/.test(name))
    refuse(`"${name}" is no name for a sheet of a file. Leave out \\ / ? * [ ] : and quotes at its ends.`);
}

function refuseText(value: unknown, place: () => string): void {
  if (typeof value === 'string' && value.length > longestText)
    refuse(
      `${place()} holds ${value.length.toLocaleString('en')} letters, and a cell of a file takes 32,767. Shorten it.`,
    );
}

function refuseFormula(
  formula: string,
  table: string | undefined,
  namespace: string,
  place: () => string,
): void {
  const saysThisRow = (piece: Piece) =>
    piece.kind === 'table' && piece.name === '' && piece.bracket.startsWith('[@');
  if (table === undefined && formula.includes('[@') && readPieces(formula).some(saysThisRow))
    refuse(`the formula of ${place()} says [@…] outside a table. Write the cell's address.`);
  const mayBeLong = formula.length > longestFormula / 2;
  if (mayBeLong && storedFormula(formula, namespace, table).length > longestFormula)
    refuse(`the formula of ${place()} is longer than the 8,192 letters that a file takes. Shorten it.`);
}

function refuseTable(
  book: OpenBook['book'],
  { name, zone, headerRows, totalsRows, sheetId, columns }: NamedTable,
): void {
  if (zone.bottom - zone.top + 1 < headerRows + totalsRows + 1)
    refuse(`the table ${name} has no row below its headings, and a file needs one. Put a row in.`);
  if (headerRows === 0) return;
  columns.forEach((heading, at) => {
    const position = { sheetId, row: zone.top, col: zone.left + at };
    if (book.formula(position) !== undefined)
      refuse(
        `the heading ${placeOf(book, position)} of the table ${name} holds a formula. Type its text instead.`,
      );
    if (heading === '' || heading.length > longestHeading)
      refuse(
        `the heading ${placeOf(book, position)} of the table ${name} must have 1 to ${longestHeading} letters.`,
      );
  });
}

const placeOf = (book: OpenBook['book'], { sheetId, row, col }: CellPosition) =>
  `${sheetPrefix(book.sheetName(sheetId) ?? '')}!${cellAddress(row, col)}`;

function refuse(sentence: string): never {
  throw new WorkbookRefused(sentence);
}
