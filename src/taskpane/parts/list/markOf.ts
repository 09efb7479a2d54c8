import { shortText } from '../../shared/shortText.js';
import type { ColumnMatch } from './columnMatch.js';
import type { ListRead } from './listRead.js';

/** The mark of a row of a list; empty where it has none. */
export function markOf(list: ListRead, matches: readonly ColumnMatch[], row: number): string {
  const column = matches.find(({ field }) => field === 'Mark')?.at ?? -1;
  return shortText(String(list.rows[row]?.[column] ?? '').trim(), 30);
}
