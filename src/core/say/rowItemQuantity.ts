import type { LengthUnit } from '../quantity/units.js';
import type { CheckItem } from '../row/rowItem.js';
import type { RowResult } from '../row/rowResult.js';
import type { NamedValue, QuantityKind } from '../working/working.js';
import { noteOf } from './noteOf.js';
import { otherRowItem } from './otherRow.js';
import { openText } from './openText.js';
import { handOf, shortOf } from './pieceWords.js';
import { governs } from './say.js';

/**
 * One item of a row, numbers in the core's unit; empty text where there is nothing to show, never a zero.
 * @param unit of the lengths in texts
 */
export function rowItemQuantity(
  row: RowResult,
  item: CheckItem,
  unit: LengthUnit,
): Pick<NamedValue, 'kind' | 'value'> {
  if (row.blank) return { kind: 'text', value: otherRowItem(row, item, unit) };
  const text = (value: string) => ({ kind: 'text' as const, value });
  const quantity = (kind: QuantityKind, value: number | undefined) =>
    value === undefined ? text('') : { kind, value };
  switch (item) {
    case 'verdict':
      return text(row.verdict);
    case 'governs':
      return text(row.deciding ? governs(row.deciding, unit) : '');
    case 'note':
      return text(noteOf(row, unit));
    case 'open':
      return text(openText(row, unit));
    case 'route':
      return text(row.route.join(', '));
    case 'press':
      return text(row.press ?? '');
    case 'use':
      return quantity('ratio', row.use);
    case 'force':
      return quantity('force', row.forceN);
    case 'mass':
      return quantity('mass', row.massKg);
    case 'hits':
      return quantity('count', row.hits);
    case 'long':
      return quantity('length', row.piece?.longMm);
    case 'short': {
      const short = shortOf(row.piece);
      return typeof short === 'string' ? text(short) : quantity('length', short);
    }
    case 'hand':
      return text(handOf(row.piece));
  }
}
