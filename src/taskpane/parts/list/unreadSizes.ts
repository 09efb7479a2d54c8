import { looksLikeSize } from '../../../core/notation/looksLikeSize.js';
import { isBlank, type CellValue } from '../../../core/quantity/cellValue.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import { columnLetters } from '../../../sheet/address.js';
import { shortText } from '../../shared/shortText.js';
import type { ColumnMatch } from './columnMatch.js';

const sampleSize = 40;
const mostOf = 0.5;

/** The columns that hold sizes and are not read: what they say is not checked. */
export function unreadSizes(
  matches: readonly ColumnMatch[],
  rows: readonly (readonly CellValue[])[],
  unit: LengthUnit,
): ColumnMatch[] {
  return matches.filter(({ at, field }) => {
    if (field !== undefined) return false;
    const filled = rows.map((row) => row[at] ?? null).filter((cell) => !isBlank(cell));
    const sample = filled.slice(0, sampleSize);
    const sizes = sample.filter((cell) => looksLikeSize(cell, unit));
    return sizes.length > 0 && sizes.length >= mostOf * sample.length;
  });
}

/** A sentence that names them; undefined where there are none. */
export function unreadSizesSentence(
  columns: readonly ColumnMatch[],
  firstColumn: number,
): string | undefined {
  const names = columns.map(
    ({ at, heading }) => `${columnLetters(firstColumn + at)} (${shortText(heading, 30)})`,
  );
  if (names.length === 0) return undefined;
  const what =
    names.length === 1
      ? `Column ${names[0]} holds sizes and is`
      : `Columns ${names.join(', ')} hold sizes and are`;
  return `${what} not read, so nothing in ${names.length === 1 ? 'it' : 'them'} is checked. Say above what ${names.length === 1 ? 'it is' : 'they are'}.`;
}
