import type { CellPosition, UID } from '@odoo/o-spreadsheet';
import { cellKey, MAX_COLUMNS, sameZone, type Zone } from '../../../sheet/address.js';
import { entriesInTurn, type Pausing } from '../../../xlsx/pausing.js';
import type { PartCells } from '../../../xlsx/partCells.js';
import type { Worksheet } from '../../../xlsx/storedCells.js';
import { writeCell, type CellChange } from '../../../xlsx/writeCell.js';
import { sameResult } from '../../../sheet/cellValue.js';
import { same, type OpenBook } from '../../open/openBook.js';
import type { OpenedFormula } from '../../open/workbookData.js';
import type { SheetMove } from '../moved/sheetMove.js';
import { storedFormula } from '../../book/storedFormula.js';
import type { AddedStyles } from '../styles/addedStyles.js';
import { wantedStyle } from '../styles/wantedStyle.js';

/** A sheet in the grid and in the file. */
export interface Sides {
  open: OpenBook;
  sheetId: UID;
  /** As the file has it, before rows and columns moved. */
  file: Worksheet;
  formulas: readonly OpenedFormula[];
  move: SheetMove;
  cells: PartCells;
  added: AddedStyles;
  /** A formula of the file as it reads now, where the grid does not keep it. */
  adapt: (formula: string) => string;
  /** The number that marks formulas that spill. */
  mark: string | undefined;
}

interface Content extends Omit<CellChange, 'row' | 'column'> {
  /** What becomes of the mark of a formula that spills; it is set right where nothing is said. */
  mark?: 'stays' | 'goes';
}

/** Compares a sheet of the grid with the file, cell by cell, and writes what differs. Tells whether formulas went. */
export function* saveCells(sides: Sides): Pausing<boolean> {
  const { open, sheetId, file, move, cells, added } = sides;
  const formulas = new Map(sides.formulas.map((one) => [cellKey(one.row, one.column), one]));
  yield;
  const rewritten = yield* sharedAndChanged(sides, formulas);
  const usualStyle = cells.usualStyles();
  let formulasWent = false;
  let looked = 0;
  for (const key of yield* everyCell(sides)) {
    if (++looked % entriesInTurn === 0) yield;
    const [row, column] = [Math.floor(key / MAX_COLUMNS), key % MAX_COLUMNS];
    const position = { sheetId, row, col: column };
    const origin = move.origin(row, column);
    const before = formulas.get(origin);
    const content = isCovered(position, sides)
      ? undefined
      : contentOf(position, origin, before, rewritten.has(origin), sides);
    if (content?.replacesFormula || (before && content?.formula !== undefined)) formulasWent = true;
    const isNew = !file.index.has(origin);
    const given = open.looks.get(sheetId)?.get(origin);
    const usual = usualStyle(row, column);
    const style = wantedStyle(open, position, given, usual, added);
    const had = isNew ? (content ? 0 : usual) : given?.style;
    if (content ? isNew && content.value === null : style === had) continue;
    const cell = cells.cell(row, column);
    if (content) writeCell(cell, { row, column, ...content }, isNew);
    if (content?.mark === 'goes') cell.set({ cm: undefined });
    if (style !== had) cell.set({ s: style });
    const spills = content?.formula !== undefined && content.ref && content.mark !== 'stays';
    if (spills && sides.mark !== undefined) cell.set({ cm: sides.mark });
  }
  return formulasWent;
}

/** The cells that the grid has, those that formulas fill among them, and those that the file has. */
function* everyCell({ open, sheetId, file, move }: Sides): Pausing<Set<number>> {
  const { getters } = open.book;
  const keys = new Set<number>();
  for (const [i, row] of file.rows.entries()) {
    const place = move.place(row, file.columns[i] as number);
    if (place) keys.add(cellKey(place.row, place.col));
    if (i % entriesInTurn === 0) yield;
  }
  for (const [i, { id, isFormula }] of getters.getCells(sheetId).entries()) {
    const position = getters.getCellPosition(id);
    keys.add(cellKey(position.row, position.col));
    const spread = isFormula ? getters.getSpreadZone(position) : undefined;
    if (spread) for (const key of keysOf(spread)) keys.add(key);
    if (i % entriesInTurn === 0) yield;
  }
  if (getters.getBordersColors(sheetId).length === 0) return keys;
  const { numberOfRows, numberOfCols } = getters.getSheetSize(sheetId);
  for (let row = 0; row < numberOfRows; row++)
    for (let col = 0; col < numberOfCols; col++)
      if (getters.getCellBorder({ sheetId, row, col })) keys.add(cellKey(row, col));
  return keys;
}

function* keysOf({ top, bottom, left, right }: Zone): Generator<number> {
  for (let row = top; row <= bottom; row++)
    for (let column = left; column <= right; column++) yield cellKey(row, column);
}

/** Inside a merged area of the file, which the grid shows without what the file has there. */
function isCovered(position: CellPosition, { open, file, move }: Sides): boolean {
  const merge = open.book.getters.getMerge(position);
  if (!merge || (merge.top === position.row && merge.left === position.col)) return false;
  return file.merged.some((zone) => {
    const now = move.zone(zone);
    return now !== undefined && sameZone(now, merge);
  });
}

/** What a cell is to hold where that is not what it holds. */
function contentOf(
  position: CellPosition,
  origin: number,
  before: OpenedFormula | undefined,
  isRewritten: boolean,
  { open: { book, namespace }, file, adapt, move }: Sides,
): Content | undefined {
  const formula = book.formula(position);
  const value = book.storedValue(position);
  const asStored = before?.display === formula && !isRewritten;
  const table = book.tables.tableOf(position)?.name;
  const spread = book.getters.getSpreadZone(position);
  const spill = before?.stored.ref && move.zone(before.stored.ref);
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
  const was = file.values[file.index.get(origin) ?? -1] ?? null;
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
function* sharedAndChanged(
  { open: { book }, sheetId, move: { moved } }: Sides,
  formulas: ReadonlyMap<number, OpenedFormula>,
): Pausing<Set<number>> {
  const written = new Set<number>();
  let looked = 0;
  for (const [key, { stored }] of formulas) {
    if (++looked % entriesInTurn === 0) yield;
    const first = cellKey(stored.baseRow, stored.baseColumn);
    if (first === key) continue;
    const now = moved ? undefined : book.formula({ sheetId, row: stored.baseRow, col: stored.baseColumn });
    if (moved || now !== formulas.get(first)?.display) written.add(key);
  }
  return written;
}
