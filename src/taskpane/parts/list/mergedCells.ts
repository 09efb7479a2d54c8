import { readHeadings } from '../../../core/row/headings/readHeadings.js';
import { rowKindOf } from '../../../core/row/rowKind.js';
import { type Area, cellAddress } from '../../../workbook/area.js';
import type { Step } from '../../../workbook/step.js';
import { counted, where } from '../../shared/change/describeStep.js';
import { type ColumnMatch, headingsOf } from './columnMatch.js';
import type { ListRead } from './listRead.js';

/** Steps that take merged cells apart, since no table holds any. */
export function unmergeSteps(merged: readonly Area[]): Step[] {
  return merged.map((area) => ({ kind: 'unmerge', area }));
}

/** Rows whose title is merged over columns, from 0 below the headings. */
export function subheadRows(
  { area, rows }: ListRead,
  matches: readonly ColumnMatch[],
  merged: readonly Area[],
): Set<number> {
  const headings = readHeadings(headingsOf(matches));
  const across = merged.filter((each) => each.rows === 1 && each.columns > 1);
  const tried = across.map(({ row }) => row - area.row - 1).filter((row) => row >= 0);
  return new Set(tried.filter((row) => rowKindOf(rows[row] ?? [], headings) !== 'part'));
}

const fewest = 4;

/** What becomes of merged cells, and whose value stands for several rows. */
export function mergedRemarks({ area }: ListRead, merged: readonly Area[]): string[] {
  const [first, ...others] = merged;
  if (!first) return [];
  const more =
    others.length > 0 ? ` and ${counted(others.length, 'more merged area', 'more merged areas')}` : '';
  return [
    `A table cannot hold merged cells, so ${where(first)}${more} ${others.length > 0 ? 'are' : 'is'} unmerged. The text stays in the first cell; Undo merges the cells again.`,
    ...downSentences(merged.filter(({ row, rows }) => rows > 1 && row > area.row)),
  ];
}

/** Cells merged over rows: what the first row says is not known of the others. */
export function downSentences(merged: readonly Area[]): string[] {
  const down = merged.filter(({ rows }) => rows > 1);
  const named = down.slice(0, fewest).map(cellAddress).join(', ');
  if (named === '') return [];
  const more = down.length > fewest ? ` and ${down.length - fewest} more` : '';
  return [
    `Merged over several rows: ${named}${more}. The value is read in the first row only; the rows below it are blank there. Where it holds for them too, fill it in.`,
  ];
}
