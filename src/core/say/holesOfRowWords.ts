import type { LengthUnit } from '../quantity/units.js';
import type { HoleInRow, HolesOfRow } from '../setup/holesOfRow.js';
import { blankWords } from './cellWords.js';
import { problemWords } from './problemWords.js';
import { readingWords } from './readingWords.js';
import { asSentences, sentencesOf } from './sentencesOf.js';

/** Why a row has no holes to show, in a sentence; empty for a blank row. */
export function noHolesSentence(row: Exclude<HolesOfRow, { is: 'holes' }>, unit: LengthUnit): string {
  switch (row.is) {
    case 'blank':
      return '';
    case 'no holes':
      return 'The row has no holes.';
    case 'no flat side':
      return `${row.designation} has no flat side to lay holes out on: take their places from the drawing.`;
    case 'outline':
      return asSentences([problemWords(row.problem, unit)]).join(' ');
    case 'problems':
      return sentencesOf(row.findings, unit)[0] ?? '';
  }
}

/** How the place of a hole was read, and what would give it: `read as one in each corner: Pitch and Gage are blank`. */
export function placeOfHole({ readings, missing }: HoleInRow, unit: LengthUnit): string {
  const read = readings
    .filter((reading) => reading !== 'usual gage')
    .map((reading) => readingWords({ is: 'places', group: 0, reading }, unit));
  const gage = readings.includes('usual gage') ? ['usual gage taken'] : [];
  const blank = missing.length > 0 ? [blankWords(missing)] : [];
  return [[...read, ...gage].join(', '), ...blank].filter((text) => text !== '').join(': ');
}
