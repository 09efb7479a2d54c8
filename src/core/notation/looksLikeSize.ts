import { InputError } from '../inputError.js';
import type { CellValue } from '../quantity/cellValue.js';
import type { LengthUnit } from '../quantity/units.js';
import { readHole } from '../tooling/readHole.js';

/** Marks that no count, price or name has: a fraction, a diameter, two sizes, inches, mm. */
const tellsSize = /\d ?\/ ?\d|[½¼¾⅛⅜⅝⅞ø⌀]|\d ?(?:mm\b|["″”]|in\b)|\d ?[x×] ?\d/i;
const longestText = 60;

/**
 * True for text that can only be the size of something: `13/16`, `Ø22`, `4 @ 13/16`, `22x50`. A bare number may be
 * anything. Common practice, no source.
 */
export function looksLikeSize(cell: CellValue, unit: LengthUnit): boolean {
  if (typeof cell !== 'string' || cell.length > longestText || !tellsSize.test(cell)) return false;
  try {
    readHole(cell, 'Size', unit);
    return true;
  } catch (error) {
    if (error instanceof InputError) return error.failure.problem.includes(' may be ');
    throw error;
  }
}
