import type { CellPosition, UID } from '@odoo/o-spreadsheet';
import { cellKey, MAX_COLUMNS, sameZone, type Zone } from '../../sheet/address.js';
import type { CellChange } from '../../xlsx/patchCell.js';
import type { Worksheet } from '../../xlsx/storedCells.js';
import type { GridBook } from '../book/gridBook.js';
import { same, sameResult } from '../open/openBook.js';
import type { OpenedFormula } from '../open/workbookData.js';
import type { CellMark } from './parts/cellMarks.js';
import { storedFormula } from './storedFormula.js';
import type { CellStyles } from './styles/cellStyles.js';

/** What a sheet's part needs, pass by pass. */
export interface SheetChanges {
  /** Formulas that go, because others come. */
  removed: CellChange[];
  values: CellChange[];
  /** By cell. */
  finishes: Map<number, CellMark>;
}

/** A sheet in the grid and in the file. */
export interface Sides {
  book: GridBook;
  sheetId: UID;
  file: Worksheet;
  /** The file's formulas by cell. */
  formulas: ReadonlyMap<number, OpenedFormula>;
  styles: CellStyles;
  /** Rows or columns came or went: formulas stored with others are written by themselves. */
  moved: boolean;
  /** A formula of the file as it reads now, where the grid does not keep it. */
  adapt: (formula: string) => string;
  namespace: string;
}

/** Compares a sheet of the grid with the file, cell by cell. */
export function sheetChanges(sides: Sides): SheetChanges {
  const changes: SheetChanges = { removed: [], values: [], finishes: new Map() };
  const rewritten = sharedAndChanged(sides);
  for (const key of everyCell(sides)) {
    const position = { sheetId: sides.sheetId, row: Math.floor(key / MAX_COLUMNS), col: key % MAX_COLUMNS };
    const before = changes.values.length;
    if (!isCovered(position, sides)) compare(position, key, sides, rewritten, changes);
    restyle(position, key, sides, changes, changes.values.length > before);
  }
  return changes;
}

/** Inside a merged area of the file, which the grid shows without what the file has there. */
function isCovered(position: CellPosition, { book, file }: Sides): boolean {
  const merge = book.getters.getMerge(position);
  if (!merge || (merge.top === position.row && merge.left === position.col)) return false;
  return file.merged.some((zone) => sameZone(zone, merge));
}

function restyle(
  position: CellPosition,
  key: number,
  { styles, file }: Sides,
  changes: SheetChanges,
  comes: boolean,
): void {
  const style = styles.wanted(position, key);
  if (file.index.has(key)) {
    if (style !== styles.before(key)) finish(position, { style }, changes);
    return;
  }
  const [row, column] = [position.row, position.col];
  if (comes && style !== 0) finish(position, { style }, changes);
  if (comes || style === styles.usual(row, column)) return;
  changes.values.push({ row, column, value: '' });
  finish(position, { style, blank: true }, changes);
}

function everyCell({ book: { getters }, sheetId, file }: Sides): Set<number> {
  const keys = new Set(file.index.keys());
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

function compare(
  position: CellPosition,
  key: number,
  sides: Sides,
  rewritten: ReadonlySet<number>,
  changes: SheetChanges,
): void {
  const { book, file } = sides;
  const before = sides.formulas.get(key);
  const formula = book.formula(position);
  const unchanged = before?.display === formula && !rewritten.has(key);
  if (before && formula !== undefined && book.isKept(position) && (unchanged || formula === before.display))
    return keptFormula(position, formula, before, unchanged, sides, changes);
  if (formula !== undefined && !unchanged) return newFormula(position, formula, before, sides, changes);
  const [row, column] = [position.row, position.col];
  const value = book.storedValue(position);
  const was = file.values[file.index.get(key) ?? -1] ?? null;
  const goes = before !== undefined && formula === undefined;
  const ref = formula === undefined ? undefined : movedSpill(book, before, position);
  const constant = formula === undefined && book.getters.getArrayFormulaSpreadingOn(position) === undefined;
  if (!goes && !ref && (constant ? same(was, value) : sameResult(was, value))) return;
  changes.values.push({
    row,
    column,
    value,
    ...(ref && { ref }),
    ...(constant && { replacesFormula: true }),
  });
  if (goes && before.stored.kind !== 'plain') finish(position, { losesMark: true }, changes);
}

/** A formula that is not calculated here stays as it is stored, but for what moved. */
function keptFormula(
  position: CellPosition,
  formula: string,
  before: OpenedFormula,
  asStored: boolean,
  { book, namespace, adapt }: Sides,
  changes: SheetChanges,
): void {
  const { name } = book.tables.tableOf(position) ?? {};
  const text = adapt(asStored ? before.stored.text : storedFormula(formula, namespace, name));
  if (asStored && text === before.stored.text) return;
  const [row, column] = [position.row, position.col];
  changes.removed.push({ row, column, value: null, replacesFormula: true });
  changes.values.push({ row, column, value: book.storedValue(position) ?? '' });
  const { ref } = before.stored;
  finish(position, { formula: text, ...(ref && { fills: ref }), keepsMark: true }, changes);
}

function newFormula(
  position: CellPosition,
  formula: string,
  before: OpenedFormula | undefined,
  { book, namespace }: Sides,
  changes: SheetChanges,
): void {
  const [row, column] = [position.row, position.col];
  const zone = book.getters.getSpreadZone(position);
  const fills = zone && (zone.top !== zone.bottom || zone.left !== zone.right) ? zone : undefined;
  if (before) changes.removed.push({ row, column, value: null, replacesFormula: true });
  changes.values.push({ row, column, value: book.storedValue(position) ?? '' });
  const text = storedFormula(formula, namespace, book.tables.tableOf(position)?.name);
  const losesMark = before !== undefined && before.stored.kind !== 'plain';
  finish(position, { formula: text, ...(fills && { fills }), losesMark }, changes);
}

function finish(
  { row, col: column }: CellPosition,
  more: Omit<CellMark, 'row' | 'column'>,
  { finishes }: SheetChanges,
): void {
  const key = cellKey(row, column);
  finishes.set(key, { row, column, ...finishes.get(key), ...more });
}

function movedSpill(
  book: GridBook,
  before: OpenedFormula | undefined,
  position: CellPosition,
): Zone | undefined {
  if (before?.stored.kind !== 'dynamic' || !before.stored.ref) return undefined;
  const { row, col } = position;
  const zone = book.getters.getSpreadZone(position) ?? { top: row, bottom: row, left: col, right: col };
  return sameZone(zone, before.stored.ref) ? undefined : zone;
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
    const now = book.formula({ sheetId, row: stored.baseRow, col: stored.baseColumn });
    if (moved || now !== formulas.get(first)?.display) written.add(key);
  }
  return written;
}
