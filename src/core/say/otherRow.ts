import type { OtherRow } from '../row/rowKind.js';

const notes: Partial<Record<OtherRow, string>> = {
  title: 'Not checked: taken as a subhead or note.',
  headings: 'Not checked: repeats the headings.',
  units: 'Not checked: units are read in the headings.',
};

/** The note of a row that is no part; blank where the row itself says what it is, or nothing. */
export function otherRowNote(is: OtherRow | undefined): string {
  return (is && notes[is]) ?? '';
}
