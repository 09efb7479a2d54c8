import { cellAddress, cellKey, columnLetters } from '../../sheet/address.js';
import { type Piece, readPieces } from '../../sheet/formula/pieces.js';
import { sameName } from '../../sheet/names.js';
import type { StoredValue } from '../../sheet/cellValue.js';
import type { PackageParts } from '../packageParts.js';
import { PartCells } from '../partCells.js';
import type { Sheet } from '../workbook.js';
import { filledCells, frozenFormulas } from './frozenSheet.js';

/** A column of a sheet whose checks are not in a copy. */
export interface LeftOut {
  sheet: string;
  /** From 0. */
  column: number;
  /** What heads it, or its letters where nothing does. */
  heading: string;
  cells: { row: number; value: StoredValue }[];
}

/** What a row check shows where no items are asked for. */
const usualItems = ['verdict', 'use', 'note'];

/**
 * The cells of checks that show some items: those of a row's formula, those a list's formula filled, and those that
 * look into such a list. By what the formulas ask for, never by a heading: a column of the user's stays.
 */
export function leftOutColumns(sheets: readonly Sheet[], items: ReadonlySet<string>): LeftOut[] {
  if (items.size === 0) return [];
  const found = new Map<Sheet, Set<number>>(sheets.map((sheet) => [sheet, new Set()]));
  const lists = new Map<string, Set<number>>();
  for (const sheet of sheets)
    for (const formula of frozenFormulas(sheet, () => true)) {
      const asked = shownItems(formula.text);
      if (!asked) continue;
      const { row, column, rows, columns } = filledCells(formula);
      asked.forEach((item, at) => {
        if (!items.has(item) || at >= columns) return;
        for (let down = 0; down < rows; down += 1) found.get(sheet)?.add(cellKey(row + down, column + at));
        const letters = lists.get(sheet.name.toLowerCase()) ?? new Set();
        if (rows > 1) lists.set(sheet.name.toLowerCase(), letters.add(column + at));
      });
    }
  for (const sheet of sheets)
    for (const formula of frozenFormulas(sheet, (text) => /^INDEX\(/i.test(text))) {
      const { row, column } = filledCells(formula);
      if (readPieces(formula.text).some((piece) => looksInto(piece, lists)))
        found.get(sheet)?.add(cellKey(row, column));
    }
  return [...found].flatMap(([sheet, keys]) => columnsOf(sheet, keys));
}

/** What a formula of a row or a list shows, in the order of its columns; undefined for any other. */
export function shownItems(text: string): string[] | undefined {
  const pieces = readPieces(text);
  if (!pieces.some(({ kind, text: name }) => kind === 'call' && /TONROW[_.](?:ROW|LIST)CHECK$/i.test(name)))
    return undefined;
  const known = pieces.flatMap((piece) =>
    piece.kind === 'text' ? [piece.text.slice(1, -1).toLowerCase()] : [],
  );
  const asked = known.find((each) => each.split(/[,;]/).every((word) => /^\s*[a-z]+\s*$/.test(word)));
  return asked === undefined ? usualItems : asked.split(/[,;]/).map((word) => word.trim());
}

function looksInto(piece: Piece, lists: ReadonlyMap<string, ReadonlySet<number>>): boolean {
  if (piece.kind !== 'cells' || piece.sheet === undefined) return false;
  const columns = [...lists].find(([name]) => sameName(name, piece.sheet ?? ''))?.[1] ?? new Set<number>();
  const first = piece.first.replaceAll('$', '').replace(/\d+$/, '').toUpperCase();
  return [...columns].some((column) => columnLetters(column) === first);
}

function columnsOf({ name, cells }: Sheet, keys: ReadonlySet<number>): LeftOut[] {
  const columns = new Map<number, LeftOut>();
  cells?.rows.forEach((row, at) => {
    const column = cells.columns[at] ?? 0;
    if (!keys.has(cellKey(row, column))) return;
    const own = columns.get(column) ?? { sheet: name, column, heading: '', cells: [] };
    own.cells.push({ row, value: cells.values[at] ?? null });
    columns.set(column, own);
  });
  return [...columns.values()].map((own) => {
    const top = own.cells.reduce((least, { row }) => Math.min(least, row), Infinity);
    const above = cells?.values[cells.index.get(cellKey(top - 1, own.column)) ?? -1];
    return { ...own, heading: typeof above === 'string' && above !== '' ? above : columnLetters(own.column) };
  });
}

/** Empties the cells of the columns; what heads them stays. */
export function takeOut(parts: PackageParts, sheet: Sheet, left: readonly LeftOut[]): void {
  const cells = new PartCells(parts.root(sheet.part));
  for (const { column, cells: own } of left)
    for (const { row } of own)
      cells
        .cell(row, column)
        .set({ t: undefined, cm: undefined })
        .keep(() => false);
}

/** What cells of a sheet are left out, by their keys. */
export function keysOf(left: readonly LeftOut[], sheet: string): Set<number> {
  return new Set(
    left
      .filter((each) => each.sheet === sheet)
      .flatMap(({ column, cells }) => cells.map(({ row }) => cellKey(row, column))),
  );
}

/** A shorter text, such as OK, may well stand somewhere for a reason of its own. */
const tellingLength = 16;

/** Where texts of left-out cells still stand in a copy: in a cell that was calculated from them, or typed again. */
export function stillTold(left: readonly LeftOut[], copy: readonly Sheet[]): string[] {
  const texts = left
    .flatMap(({ cells }) => cells.map(({ value }) => value))
    .filter((value): value is string => typeof value === 'string' && value.length >= tellingLength);
  const told = new Set(texts);
  if (told.size === 0) return [];
  return copy.flatMap(({ name, cells }) =>
    (cells?.values ?? []).flatMap((value, at) =>
      typeof value === 'string' && (told.has(value) || texts.some((text) => value.includes(text)))
        ? [`${name}!${cellAddress(cells?.rows[at] ?? 0, cells?.columns[at] ?? 0)}`]
        : [],
    ),
  );
}

/** The sheets with formulas that take left-out columns of a table: `SUMIF(Parts[Verdict],…)`. */
export function calculatingSheets(left: readonly LeftOut[], sheets: readonly Sheet[]): string[] {
  const headings = left.map(({ heading }) => heading);
  const takes = (text: string) =>
    readPieces(text).some(
      (piece) => piece.kind === 'table' && headings.some((heading) => piece.bracket.includes(`[${heading}]`)),
    );
  const calculates = ({ cells }: Sheet) =>
    cells?.formulas.some(
      (formula) => formula && shownItems(formula.text) === undefined && takes(formula.text),
    );
  return sheets.filter(calculates).map(({ name }) => name);
}
