import type { PlaceReading } from '../row/job/placeReading.js';
import type { LengthUnit } from '../quantity/units.js';
import type { HoleInRow, HolesOfRow } from '../setup/holesOfRow.js';
import { blankWords, cellName } from './cellWords.js';
import { otherRowWords } from './otherRows.js';
import { problemWords } from './problemWords.js';
import { asSentences, sentencesOf } from './sentencesOf.js';

/** Why a row has no holes to show, in a sentence; empty for a blank row. */
export function noHolesSentence(row: Exclude<HolesOfRow, { is: 'holes' }>, unit: LengthUnit): string {
  switch (row.is) {
    case 'blank':
      return '';
    case 'no part':
      return `The row ${otherRowWords(row.kind)}: it is no part and has no holes.`;
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
export function placeOfHole({ group, readings, missing, eitherEnd, off }: HoleInRow): string {
  const read = readings.map((reading) => (reading === 'usual gage' ? 'usual gage taken' : readAs(reading)));
  const end = eitherEnd ? [`${cellName({ cell: 'End', group })} may be from either end`] : [];
  const blank = missing.length > 0 ? [blankWords(missing)] : [];
  const why = [...(off ? ['off the part'] : []), ...end, ...blank].join(', ');
  return [read.join(', '), why].filter((text) => text !== '').join(': ');
}

function readAs(reading: PlaceReading): string {
  return reading === 'at each end' || reading === 'in each corner'
    ? `read as one ${reading}`
    : `read as ${reading}`;
}
