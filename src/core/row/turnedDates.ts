import { InputError } from '../inputError.js';
import type { CellValue } from '../quantity/cellValue.js';
import { type TurnedDate, turnedDate } from '../quantity/dateTrap.js';
import type { LengthUnit } from '../quantity/units.js';
import { readHole } from '../tooling/readHole.js';
import { isBlankRow } from './blankRow.js';
import type { GroupField, RowField } from './headings/heading.js';
import type { Column, Headings } from './headings/readHeadings.js';
import { isInShopUnit } from './headings/rowReader.js';

/** A cell of a row in which a size became a date. */
export interface TurnedCell extends TurnedDate {
  /** The column of the cell, from 0. */
  at: number;
}

const sizeFields: readonly RowField[] = ['cornerClip', 'notchWidth', 'notchDepth'];
const groupSizeFields: readonly GroupField[] = ['hole', 'bolt', 'edge', 'end', 'pitch', 'gage', 'leg'];

/**
 * The cells of a row in which a size became a date: every size that is read but lengths of bars and bends, in an inch
 * shop, under a heading that does not state another unit. Empty for blank rows. Common practice, no source.
 */
export function turnedDatesOfRow(
  cells: readonly CellValue[],
  headings: Headings,
  unit: LengthUnit,
): TurnedCell[] {
  if (unit !== 'in' || isBlankRow(cells, headings)) return [];
  const columns: (Column | undefined)[] = [
    ...sizeFields.map((field) => headings.fields[field]),
    ...headings.groups.flatMap((group) => groupSizeFields.map((field) => group[field])),
  ];
  const holes = new Set(headings.groups.map(({ hole }) => hole?.at));
  return columns.flatMap((column) => {
    if (!column || !isInShopUnit(column, unit)) return [];
    const { at } = column;
    const turned = turnedDate(numberOf(cells[at]));
    if (!turned) return [];
    const readings = holes.has(at) ? turned.readings.flatMap(asHoles) : turned.readings;
    return [{ at, ...turned, readings }];
  });
}

/** A mixed number that in a hole cell may as well be a count and a size comes as both: `Ø2-1/4` and `2 @ 1/4`. */
function asHoles(reading: string): string[] {
  try {
    readHole(reading, 'Hole', 'in');
    return [reading];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    // A fraction that is too small for a hole is still what was typed.
    if (!reading.includes('-')) return [reading];
    return [`Ø${reading}`, reading.replace('-', ' @ ')];
  }
}

/** A number, also one that stands in the cell as text. */
function numberOf(cell: CellValue | undefined): number {
  if (typeof cell === 'number') return cell;
  return typeof cell === 'string' && /^\s*\d{5}\s*$/.test(cell) ? Number(cell) : Number.NaN;
}
