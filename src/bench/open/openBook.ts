import type { CellPosition, UID } from '@odoo/o-spreadsheet';
import { workbookScope } from '../../sheet/formula/scope.js';
import { openWorkbook, type Workbook } from '../../xlsx/workbook.js';
import { sameStored, type StoredValue } from '../../sheet/cellValue.js';
import { GridBook } from '../book/gridBook.js';
import { keptFormula } from '../engine/keptFormula.js';
import { asOneCommand } from '../engine/oneCommand.js';
import { engineFormat } from '../engine/cellContent.js';
import { sheetNow, type GivenSheet } from './givenSheet.js';
import { followHeaders } from './headerOrigins.js';
import { lookOf, type CellLook, type FileStyle } from './cellLook.js';
import { sheetId, styleNumbers, workbookData, type OpenedFormula } from './workbookData.js';

/*
 * A file becomes the grid's own form of a workbook, and is remembered as it was, so that saving changes
 * nothing else.
 */

/** The functions a workbook is opened with. */
export interface KnownFunctions {
  namespace: string;
  byName: ReadonlyMap<string, unknown>;
}

/** A workbook file open in the grid. */
export interface OpenBook {
  book: GridBook;
  /** The file it came from. */
  workbook: Workbook;
  formulas: readonly OpenedFormula[];
  /** What the grid was given for the cells of the file, by sheet and cell. */
  looks: Map<UID, Map<number, GivenLook>>;
  /** What the grid was given for each sheet of the file. */
  sheets: ReadonlyMap<UID, GivenSheet>;
  /** How cells of each style of the file look in the grid. */
  styles: readonly CellLook[];
  namespace: string;
}

/** A cell of the file when it was opened. */
export interface GivenLook {
  /** The number of its style in the file. */
  style: number;
  /** The number of the style it has in the grid: inside a merged area, that of the area. */
  shown: number | undefined;
  look: CellLook;
}

/** Opens a workbook file, or refuses it in one sentence. */
export function openBook(bytes: Uint8Array, { namespace, byName }: KnownFunctions): OpenBook {
  const workbook = openWorkbook(bytes);
  const ours = new Set(byName.keys());
  const scope = workbookScope(workbook, namespace, ours);
  const { data, formulas, styles } = workbookData(workbook, scope);
  followHeaders();
  const book = new GridBook({
    data,
    sheets: workbook.sheets.map(({ name }, position) => ({ sheetId: sheetId(position), name })),
    tables: workbook.tables.map(({ sheet, zone, name }) => ({ sheetId: sheetId(sheet), zone, name })),
    names: workbook.names,
    formulas: formulas.map(({ sheet, row, column, display }) => ({
      sheetId: sheetId(sheet),
      row,
      column,
      display,
    })),
    namespace,
    ours,
  });
  keepWhatComesOutOtherwise(book, workbook, formulas);
  return {
    book,
    workbook,
    formulas,
    looks: looksOf(book, workbook),
    sheets: new Map(book.getters.getSheetIds().map((id) => [id, sheetNow(book.model, id)])),
    styles: styles.cells.map(shownLook),
    namespace,
  };
}

function looksOf(book: GridBook, { sheets }: Workbook): OpenBook['looks'] {
  return new Map(
    sheets.map(({ cells }, position) => {
      const id = sheetId(position);
      const numbers = cells ? styleNumbers(cells) : [];
      const looks = [...(cells?.index ?? [])].map(([key, i]) => {
        const position = { sheetId: id, row: cells?.rows[i] ?? 0, col: cells?.columns[i] ?? 0 };
        const { shown, look } = cellLook(book, position);
        return [key, { style: numbers[i] ?? 0, shown, look }] as const;
      });
      return [id, new Map(looks)];
    }),
  );
}

/** How a cell looks in the grid, and which style of the file it came with. */
export function cellLook(
  book: GridBook,
  position: CellPosition,
): { shown: number | undefined; look: CellLook } {
  const cell = book.getters.getCell(position);
  const style: FileStyle | undefined = cell?.style;
  return {
    shown: style?.fileStyle,
    look: lookOf(style, cell?.format, book.getters.getCellBorder(position)),
  };
}

/** Number formats that the engine cannot show are left out. */
function shownLook({ format, ...look }: CellLook): CellLook {
  const shown = engineFormat(format);
  return { ...look, ...(shown !== undefined && { format: shown }) };
}

/**
 * A native formula that comes out otherwise here than in the file, though everything it reads is as in the
 * file, keeps the file's value from then on.
 */
function keepWhatComesOutOtherwise(book: GridBook, workbook: Workbook, formulas: OpenedFormula[]): void {
  const fileValue = (sheet: number, row: number, column: number): StoredValue => {
    const cells = workbook.sheets[sheet]?.cells;
    return cells?.values[cells.index.get(row * 16_384 + column) ?? -1] ?? null;
  };
  const asInFile = (sheet: number, row: number, column: number) =>
    same(book.storedValue({ sheetId: sheetId(sheet), row, col: column }), fileValue(sheet, row, column));
  const others = formulas.filter(
    ({ sheet, row, column, stored, kept, ours, references }) =>
      kept === undefined &&
      !ours &&
      stored.cached &&
      !asInFile(sheet, row, column) &&
      references.every(({ sheet: on, zone }) => {
        const { bottom, right } = usedPart(workbook, on, zone);
        for (let r = zone.top; r <= bottom; r++)
          for (let c = zone.left; c <= right; c++) if (!asInFile(on, r, c)) return false;
        return true;
      }),
  );
  if (others.length === 0) return;
  asOneCommand(book.model, (dispatch) => {
    for (const formula of others) {
      const { sheet, row, column, display } = formula;
      const value = fileValue(sheet, row, column);
      const content = keptFormula(
        display,
        typeof value === 'object' && value !== null ? { error: value.error } : value,
      );
      dispatch('UPDATE_CELL', { sheetId: sheetId(sheet), row, col: column, content });
    }
  });
  for (const formula of others) {
    formula.kept = 'With the same inputs it comes out otherwise here than in the file.';
    const { sheet, row, column, display } = formula;
    book.typed(display, { sheetId: sheetId(sheet), row, col: column });
  }
}

function usedPart({ sheets }: Workbook, sheet: number, { bottom, right }: { bottom: number; right: number }) {
  const cells = sheets[sheet]?.cells;
  return {
    bottom: Math.min(bottom, (cells?.height ?? 1) - 1),
    right: Math.min(right, (cells?.width ?? 1) - 1),
  };
}

/** Equal, numbers up to the last digits. */
export function sameResult(a: StoredValue, b: StoredValue): boolean {
  if (typeof a !== 'number' || typeof b !== 'number') return sameStored(a, b);
  return Math.abs(a - b) <= 1e-12 * Math.max(Math.abs(a), Math.abs(b));
}

/** The same, where an empty text and a blank cell are no difference. */
export function same(a: StoredValue, b: StoredValue): boolean {
  const blank = (value: StoredValue) => (value === '' ? null : value);
  return sameResult(blank(a), blank(b));
}
