import { type CellValue, meant, plainText } from '../quantity/cellValue.js';
import { formatSizes } from '../quantity/formatLength.js';
import type { LengthUnit } from '../quantity/units.js';
import { rowCells } from './headings/joinedColumns.js';
import type { Headings } from './headings/readHeadings.js';

/**
 * The length of a row as its cell has it, with a unit; from the section where it has no cell.
 * @param cells the cells of the row
 * @param headings where its columns are
 * @param lengthMm the length as it was read, in mm; undefined where the row gives none
 * @param unit the unit of the shop, which a bare number has
 * @returns `24'-0`, `12 in`, `200 mm`; empty where there is no length
 * @example lengthAsTyped(["24'-0"], readHeadings(['Length']), 7315.2, 'in') // "24'-0", not 288 in
 * Source: common practice, no source.
 */
export function lengthAsTyped(
  cells: readonly CellValue[],
  headings: Headings,
  lengthMm: number | undefined,
  unit: LengthUnit,
): string {
  const cell = meant(rowCells(cells, headings)[headings.fields.length?.at ?? -1]);
  if (cell === null) return lengthMm === undefined ? '' : withUnit(formatSizes([lengthMm], unit), unit);
  return withUnit(plainText(String(cell)), headings.fields.length?.unit ?? unit);
}

/** A size that ends in a digit says no unit of its own. */
function withUnit(text: string, unit: string): string {
  return /^[\d\s./-]+$/.test(text) ? `${text} ${unit}` : text;
}
