import type { Anchor } from './anchor.js';
import type { CellValue } from '../cellValue.js';
import type { FilledCells } from './sheetCells.js';

/** A formula of a list: where it stood, and by what its place is found again. */
export interface ListedPlace extends FilledCells {
  sheet: string;
  formula: string;
  value: CellValue;
  anchor: Anchor;
}

/** Why formulas cannot be brought back: one sentence that names what is missing. */
export class PlaceNotFound extends Error {}

export function quotedRow(row: string): string {
  const text = row.replace(/(?: \|)+ ?/g, ' ').trim();
  return text === '' ? 'nothing' : `"${text.length > 60 ? `${text.slice(0, 60)}…` : text}"`;
}
