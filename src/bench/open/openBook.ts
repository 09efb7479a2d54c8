import type { CellPosition, UID } from '@odoo/o-spreadsheet';
import { cellKey } from '../../sheet/address.js';
import { workbookScope } from '../../sheet/formula/scope.js';
import { atOnce, entriesInTurn, type Pausing } from '../../xlsx/pausing.js';
import { openingWorkbook, type Workbook } from '../../xlsx/workbook.js';
import { sameResult, type StoredValue } from '../../sheet/cellValue.js';
import { GridBook } from '../book/gridBook.js';
import { keptFormula } from '../engine/keptFormula.js';
import { asOneCommand } from '../engine/oneCommand.js';
import { engineFormat } from '../engine/cellContent.js';
import { sheetNow, type GivenSheet } from './givenSheet.js';
import type { PostponedCalls, StoredResult } from '../engine/postponedCalls.js';
import { followHeaders } from './headerOrigins.js';
import { lookOf, type CellLook, type FileStyle } from './cellLook.js';
import { sheetId, workbookData, type OpenedFormula } from './workbookData.js';

/*
 * A file becomes the grid's own form of a workbook, and is remembered as it was, so that saving changes
 * nothing else.
 */

/** How a book is opened where nothing may hold up the page. */
export interface Unhurried {
  /** Takes the calls that are too many for one task. */
  postponed?: PostponedCalls | undefined;
  /** Told before the grid makes its own part, in one piece. */
  beforeGrid?: ((workbook: Workbook) => void) | undefined;
}

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
export function openBook(bytes: Uint8Array, functions: KnownFunctions): OpenBook {
  return atOnce(openingBook(bytes, functions));
}

/** The same, with rests; only the grid makes its own part in one piece. */
export function* openingBook(
  bytes: Uint8Array,
  { namespace, byName }: KnownFunctions,
  { postponed, beforeGrid }: Unhurried = {},
): Pausing<OpenBook> {
  const workbook = yield* openingWorkbook(bytes);
  const ours = new Set(byName.keys());
  const scope = workbookScope(workbook, namespace, ours);
  const { data, formulas, styles, styleNumbers } = yield* workbookData(workbook, scope);
  followHeaders();
  beforeGrid?.(workbook);
  yield;
  if (postponed) {
    postponed.forget();
    postponed.storedResult = storedResults(workbook, formulas);
  }
  const book = new GridBook({
    data,
    sheets: workbook.sheets.map(({ name }, position) => ({ sheetId: sheetId(position), name })),
    tables: workbook.tables.map(({ sheet, zone, name }) => ({ sheetId: sheetId(sheet), zone, name })),
    names: workbook.names,
    namespace,
    ours,
  });
  if (postponed) postponed.storedResult = undefined;
  yield;
  for (const [i, { sheet, row, column, display }] of formulas.entries()) {
    book.typed(display, { sheetId: sheetId(sheet), row, col: column });
    if (i % entriesInTurn === 0) yield;
  }
  keepWhatComesOutOtherwise(book, workbook, formulas);
  yield;
  return {
    book,
    workbook,
    formulas,
    looks: yield* looksOf(book, workbook, styleNumbers),
    sheets: new Map(book.getters.getSheetIds().map((id) => [id, sheetNow(book.model, id)])),
    styles: styles.cells.map(shownLook),
    namespace,
  };
}

/** What the file has for cells that are one call of ours, each asked once. */
function storedResults({ sheets }: Workbook, formulas: readonly OpenedFormula[]): StoredResult {
  const stored = new Map<string, StoredValue>();
  const keyOf = (sheet: string, row: number, column: number) => `${sheet} ${cellKey(row, column)}`;
  for (const { sheet, row, column, stored: formula, isOneCall, kept } of formulas) {
    const cells = sheets[sheet]?.cells;
    if (!cells || !isOneCall || kept !== undefined || !formula.cached || formula.kind !== 'plain') continue;
    stored.set(
      keyOf(sheetId(sheet), row, column),
      cells.values[cells.index.get(cellKey(row, column)) ?? -1] ?? null,
    );
  }
  return ({ sheetId, row, col }) => {
    const key = keyOf(sheetId, row, col);
    const value = stored.get(key);
    stored.delete(key);
    return value;
  };
}

function* looksOf(
  book: GridBook,
  { sheets }: Workbook,
  styleNumbers: readonly (readonly number[])[],
): Pausing<OpenBook['looks']> {
  const all: OpenBook['looks'] = new Map();
  for (const [position, { cells }] of sheets.entries()) {
    const id = sheetId(position);
    const looks = new Map<number, GivenLook>();
    all.set(id, looks);
    if (!cells) continue;
    for (const [key, i] of cells.index) {
      const place = { sheetId: id, row: cells.rows[i] ?? 0, col: cells.columns[i] ?? 0 };
      const { shown, look } = cellLook(book, place);
      looks.set(key, { style: styleNumbers[position]?.[i] ?? 0, shown, look });
      if (looks.size % entriesInTurn === 0) yield;
    }
  }
  return all;
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

/** The same, where an empty text and a blank cell are no difference. */
export function same(a: StoredValue, b: StoredValue): boolean {
  const blank = (value: StoredValue) => (value === '' ? null : value);
  return sameResult(blank(a), blank(b));
}
