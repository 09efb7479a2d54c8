import type { Anchor } from '../../sheet/anchor.js';
import type { CellValue } from '../../core/quantity/cellValue.js';
import { type Area, cellAddress, cellOf, readAddresses } from '../../workbook/area.js';
import type { Content } from '../../workbook/content.js';
import type { Workbook } from '../../workbook/port.js';
import type { Sheet } from '../../workbook/reading.js';
import { WorkbookError } from '../../workbook/workbookError.js';

/** The sheet that keeps formulas that became values; the same sheet a values copy of the file has. */
export const listSheetName = 'Tonrow formulas';
export const listHeadings = [
  'Sheet',
  'Cell',
  'Formula',
  'Stored as',
  'Value',
  'Table',
  'Heading',
  'Row',
  'Sizes',
];
/** The one column of a list that is not text. */
export const valueColumn = 4;
const longestText = 32_767;

/** A formula of the list: where it goes, the cells its result filled, and what it showed. */
export interface ListedFormula {
  area: Area;
  formula: string;
  value: CellValue;
  /** By what its place is found again. */
  anchor: Anchor;
}

/** A formula that is to become a value. */
export interface FoundFormula {
  /** The cell, or the cells its result fills. */
  area: Area;
  formula: string;
  values: CellValue[][];
}

export function isListName(name: string): boolean {
  return name.toLowerCase().startsWith(listSheetName.toLowerCase());
}

/** The name of the sheet with a list that still holds formulas; undefined where there is none. */
export async function listIn(workbook: Workbook): Promise<string | undefined> {
  const names = (await workbook.sheets()).map(({ name }) => name).filter(isListName);
  if (names.length === 0) return undefined;
  const read = await workbook.read(
    names.map((usedOf) => ({ usedOf })),
    ['values'],
  );
  return names.find((_, at) => (read[at]?.values.length ?? 0) > 1);
}

/** A name for a new list that no sheet has. */
export function freeListName(sheets: readonly Sheet[]): string {
  const taken = new Set(sheets.map(({ name }) => name.toLowerCase()));
  let number = 1;
  const name = () => (number === 1 ? listSheetName : `${listSheetName}${number}`);
  while (taken.has(name().toLowerCase())) number += 1;
  return name();
}

/** The rows of a list, with its headings. */
export function listRows(formulas: readonly FoundFormula[], anchors: readonly Anchor[]): Content[][] {
  const rows = formulas.map(({ area, formula, values }, at): Content[] => [
    area.sheet,
    cellAddress(cellOf(area, 0, 0)),
    formula,
    area.rows * area.columns > 1 ? `t="array" ref="${cellAddress(area)}"` : null,
    values[0]?.[0] ?? null,
    anchors[at]?.table ?? null,
    anchors[at]?.heading ?? null,
    anchors[at]?.row.slice(0, longestText) ?? null,
    anchors[at]?.sizes.slice(0, longestText) ?? null,
  ]);
  return [[...listHeadings], ...rows];
}

/** The formulas of a list. Throws where the cells are no list, or a row names no cell. */
export function readList(values: readonly (readonly CellValue[])[]): ListedFormula[] {
  const [headings = [], ...rows] = values;
  if (!listHeadings.every((heading, at) => headings[at] === heading))
    throw new WorkbookError('missing', `The sheet ${listSheetName} holds no list of formulas.`);
  return rows
    .filter((row) => row.some((cell) => cell !== null && cell !== ''))
    .map((row, at) => listed(row) ?? refuse(at + 2));
}

function listed([sheet, cell, formula, stored, value, table, heading, row, sizes]: readonly CellValue[]):
  | ListedFormula
  | undefined {
  if (typeof sheet !== 'string' || typeof cell !== 'string' || typeof formula !== 'string') return undefined;
  if (!/^[A-Z]{1,3}\d{1,7}$/.test(cell) || !formula.startsWith('=')) return undefined;
  const spilled =
    typeof stored === 'string'
      ? /ref="([A-Z]{1,3}\d{1,7}(?::[A-Z]{1,3}\d{1,7})?)"/.exec(stored)?.[1]
      : undefined;
  const [area] = readAddresses(spilled ?? cell, sheet);
  if (!area) return undefined;
  const anchor = {
    ...(textOf(table) === '' ? {} : { table: textOf(table), heading: textOf(heading) }),
    row: textOf(row),
    sizes: textOf(sizes),
  };
  return { area, formula: hostFormula(formula), value: value ?? null, anchor };
}

const textOf = (value: CellValue | undefined) => String(value ?? '');

function refuse(row: number): never {
  throw new WorkbookError(
    'failed',
    `Row ${row} of the sheet ${listSheetName} names no cell and formula. Nothing was brought back.`,
  );
}

/** A formula as hosts take it, from the way files store it: `_xlfn.ANCHORARRAY(A2)` is `A2#`. */
export function hostFormula(formula: string): string {
  return formula
    .split(/("(?:[^"]|"")*")/)
    .map((piece, at) =>
      at % 2 === 1
        ? piece
        : piece
            .replaceAll(/_xlfn\.ANCHORARRAY\(([^()]+)\)/gi, '$1#')
            .replaceAll(/_xl(?:fn|ws)\./gi, '')
            .replaceAll(/_xldudf_TONROW_(?=[A-Z]+\()/gi, 'TONROW.'),
    )
    .join('');
}

/** A formula for comparing: hosts give back `[@Mark]` for `[[#This Row],[Mark]]`, and their own spaces. */
export function sameFormula(a: string, b: string): boolean {
  return normal(a) === normal(b);
}

function normal(formula: string): string {
  return hostFormula(formula)
    .replaceAll(/\[\[#This Row\],(\[[^\]]*\])\]/gi, '[@$1]')
    .replaceAll(/\[#This Row\],\s*/gi, '@')
    .replaceAll(/\[@\[([\p{L}\p{N}_ ]+)\]\]/gu, '[@$1]')
    .replaceAll(/,\s+/g, ',')
    .toUpperCase();
}
