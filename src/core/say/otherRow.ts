import type { LengthUnit } from '../quantity/units.js';
import type { CheckItem } from '../row/rowItem.js';
import type { OtherRow } from '../row/rowKind.js';
import type { RowResult } from '../row/rowResult.js';
import { governs, say } from './say.js';

type NoPart = Extract<RowResult, { blank: true }>;

const notes: Partial<Record<OtherRow, string>> = {
  title: 'Not checked: taken as a subhead or note.',
  headings: 'Not checked: repeats the headings.',
  units: 'Not checked: units are read in the headings.',
};

/** The note of a row that is no part; blank where the row itself says what it is, or nothing. */
export function otherRowNote(row: NoPart, unit: LengthUnit): string {
  if (row.is === 'work') return say(row.finding, unit);
  return (row.is && notes[row.is]) ?? '';
}

/** An item of a row that is no part: only one that names work has a word. */
export function otherRowItem(row: NoPart, item: CheckItem, unit: LengthUnit): string {
  if (item === 'note') return otherRowNote(row, unit);
  if (row.is !== 'work') return '';
  if (item === 'verdict') return row.finding.verdict;
  if (item === 'open') return say(row.finding, unit);
  return item === 'governs' ? governs(row.finding, unit) : '';
}
