import { isBlank } from '../../../core/quantity/cellValue.js';
import { readHeadings } from '../../../core/row/headings/readHeadings.js';
import { rowKindOf } from '../../../core/row/rowKind.js';
import { rowRuns } from '../../../core/say/rowRuns.js';
import type { PartsList } from '../../shared/partsLists.js';

/**
 * What to say of parts whose quantity is text, `4` typed as text or `2R 2L`: the sums of a spreadsheet pass over text, so that
 * their pieces would be left out without a word. Nothing where all are numbers.
 */
export function textQuantities({ headings, values, area }: PartsList): string[] {
  const read = readHeadings(headings);
  const { qty } = read.fields;
  if (!qty) return [];
  const isText = (cells: PartsList['values'][number]) =>
    typeof cells[qty.at] === 'string' && !isBlank(cells[qty.at]) && rowKindOf(cells, read) === 'part';
  const rows = values.flatMap((cells, down) => (isText(cells) ? area.row + down + 1 : []));
  if (rows.length === 0) return [];
  const where = `${rows.length === 1 ? 'row' : 'rows'} ${rowRuns(rows)}`;
  return [`Pieces leave out ${where}, where ${qty.heading} is text. Type numbers there.`];
}
