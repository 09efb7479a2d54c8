import type { CellPosition, UID } from '@odoo/o-spreadsheet';
import { cellKey, MAX_COLUMNS, sameZone } from '../../../sheet/address.js';
import type { PartCells } from '../../../xlsx/partCells.js';
import type { Worksheet } from '../../../xlsx/storedCells.js';
import { writeCell, type CellChange } from '../../../xlsx/writeCell.js';
import type { GridBook } from '../../book/gridBook.js';
import { same, sameResult } from '../../open/openBook.js';
import type { OpenedFormula } from '../../open/workbookData.js';
import { movedZone, type SheetMove } from '../moved/sheetMoves.js';
import { storedFormula } from '../../book/storedFormula.js';
import type { CellStyles } from '../styles/cellStyles.js';

/** A sheet in the grid and in the file. */
export interface Sides {
  book: GridBook;
  sheetId: UID;
  /** As the file has it, before rows and columns moved. */
  file: Worksheet | undefined;
  /** The file's formulas by cell. */
  formulas: ReadonlyMap<number, OpenedFormula>;
  move: SheetMove | undefined;
  /** Rows or columns came or went: formulas stored with others are written by themselves. */
  moved: boolean;
  styles: CellStyles;
  cells: PartCells;
  /** A formula of the file as it reads now, where the grid does not keep it. */
  adapt: (formula: string) => string;
  namespace: string;
  /** The number that marks formulas that spill. */
  mark: string | undefined;
}

interface Content extends Omit<CellChange, 'row' | 'column'> {
  /** What becomes of the mark of a formula that spills; it is set right where nothing is said. */
  mark?: 'stays' | 'goes';
}

/** Compares a sheet of the grid with the file, cell by cell, and writes what differs. Tells whether formulas went. */
export function saveCells(sides: Sides): boolean {
  const rewritten = sharedAndChanged(sides);
  let formulasWent = false;
  for (const key of everyCell(sides)) {
    const position = { sheetId: sides.sheetId, row: Math.floor(key / MAX_COLUMNS), col: key % MAX_COLUMNS };
    const origin = originOf(position, sides.move);
    const content = isCovered(position, sides) ? undefined : contentOf(position, origin, rewritten, sides);
    const isThere = sides.file?.index.has(origin) ?? false;
    const before = sides.formulas.get(origin);
    if (content?.replacesFormula || (before && content?.formula !== undefined)) formulasWent = true;
    const style = sides.styles.wanted(position, origin);
    const had = isThere
      ? sides.styles.before(origin)
      : content
        ? 0
        : sides.styles.usual(position.row, position.col);
    if ((!content || (content.value === null && !isThere)) && (style === had || content)) continue;
    const cell = sides.cells.cell(position.row, position.col);
    if (content) writeCell(cell, { row: position.row, column: position.col, ...content }, !isThere);
    if (content?.mark === 'goes') cell.set({ cm: undefined });
    if (style !== had) cell.set({ s: style });
    const spills = content?.formula !== undefined && content.ref && content.mark !== 'stays';
    if (spills && sides.mark !== undefined) cell.set({ cm: sides.mark });
  }
  return formulasWent;
}

/** The cell as the file had it; -1 for a new one. */
function originOf({ row, col }: CellPosition, move: SheetMove | undefined): number {
  const [r, c] = move ? [move.rows.origin(row), move.columns.origin(col)] : [row, col];
  return r === undefined || c === undefined ? -1 : cellKey(r, c);
}

function everyCell({ book: { getters }, sheetId, file, move }: Sides): Set<number> {
  const keys = new Set<number>();
  file?.rows.forEach((row, i) => {
    const column = file.columns[i] as number;
    const [r, c] = move ? [move.rows.place(row), move.columns.place(column)] : [row, column];
    if (r !== undefined && c !== undefined) keys.add(cellKey(r, c));
  });
  for (const { row, col } of getters.getEvaluatedCellsPositions(sheetId)) keys.add(cellKey(row, col));
  for (const { id } of getters.getCells(sheetId)) {
    const { row, col } = getters.getCellPosition(id);
    keys.add(cellKey(row, col));
  }
  if (getters.getBordersColors(sheetId).length === 0) return keys;
  const { numberOfRows, numberOfCols } = getters.getSheetSize(sheetId);
  for (let row = 0; row < numberOfRows; row++)
    for (let col = 0; col < numberOfCols; col++)
      if (getters.getCellBorder({ sheetId, row, col })) keys.add(cellKey(row, col));
  return keys;
}

/** Inside a merged area of the file, which the grid shows without what the file has there. */
function isCovered(position: CellPosition, { book, file, move }: Sides): boolean {
  const merge = book.getters.getMerge(position);
  if (!merge || (merge.top === position.row && merge.left === position.col)) return false;
  return (
    file?.merged.some((zone) => {
      const now = move ? movedZone(zone, move) : zone;
      return now && sameZone(now, merge);
    }) ?? false
  );
}

/** What a cell is to hold where that is not what it holds. */
function contentOf(
  position: CellPosition,
  origin: number,
  rewritten: ReadonlySet<number>,
  { book, file, formulas, adapt, namespace, move }: Sides,
): Content | undefined {
  const before = formulas.get(origin);
  const formula = book.formula(position);
  const value = book.storedValue(position);
  const asStored = before?.display === formula && !rewritten.has(origin);
  const table = book.tables.tableOf(position)?.name;
  const spread = book.getters.getSpreadZone(position);
  const spill = before?.stored.ref && (move ? movedZone(before.stored.ref, move) : before.stored.ref);
  if (before && formula !== undefined && book.isKept(position) && before.display === formula) {
    // A formula that is not calculated here stays as it is stored, but for what moved.
    const { text } = before.stored;
    const now = adapt(asStored ? text : storedFormula(formula, namespace, table));
    if (asStored && now === text) return undefined;
    return { value: value ?? '', formula: now, ref: spill, mark: 'stays' };
  }
  const one = { top: position.row, bottom: position.row, left: position.col, right: position.col };
  const losesMark = before !== undefined && before.stored.kind !== 'plain' && { mark: 'goes' as const };
  if (formula !== undefined && !asStored) {
    const ref = spread && !sameZone(spread, one) ? spread : undefined;
    return { value: value ?? '', formula: storedFormula(formula, namespace, table), ref, ...losesMark };
  }
  const was = file?.values[file.index.get(origin) ?? -1] ?? null;
  const constant = formula === undefined && book.getters.getArrayFormulaSpreadingOn(position) === undefined;
  if (before && formula === undefined) return { value, replacesFormula: constant, ...losesMark };
  const zone = spread ?? one;
  const ref = before?.stored.kind === 'dynamic' && spill && !sameZone(zone, spill) ? zone : undefined;
  if (!ref && (constant ? same(was, value) : sameResult(was, value))) return undefined;
  return { value, replacesFormula: constant, ref };
}

/**
 * Formulas stored together lose the one that holds their text when that one is changed: the others are then
 * written out.
 */
function sharedAndChanged({ book, sheetId, formulas, moved }: Sides): Set<number> {
  const written = new Set<number>();
  for (const [key, { stored }] of formulas) {
    const first = cellKey(stored.baseRow, stored.baseColumn);
    if (first === key) continue;
    const now = moved ? undefined : book.formula({ sheetId, row: stored.baseRow, col: stored.baseColumn });
    if (moved || now !== formulas.get(first)?.display) written.add(key);
  }
  return written;
}
