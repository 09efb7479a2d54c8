import type { LengthUnit } from '../quantity/units.js';
import type { Reading } from '../row/job/reading.js';
import { readingWords } from './readingWords.js';

/** What a reading took where the row does not say, told alike for all rows; empty for what the row does say. */
export function assumptionWords(reading: Reading, unit: LengthUnit): string[] {
  switch (reading.is) {
    case 'quantity assumed':
    case 'no mass':
    case 'cut elsewhere':
    case 'cut by saw':
      return [readingWords(reading, unit)];
    case 'holes':
      return reading.counted ? [] : ['one hole assumed'];
    case 'notches':
      return [
        ...(reading.counted ? [] : ['one notch assumed']),
        ...(reading.placed ? [] : ['notches taken at an edge']),
      ];
    case 'corners clipped':
      return reading.counted ? [] : ['one clipped corner assumed'];
    case 'bends':
      return reading.counted ? [] : ['one bend assumed'];
    case 'places':
    case 'bolt of the hole':
    case 'bolt not known':
      return [readingWords({ ...reading, group: 0 }, unit)];
    default:
      return [];
  }
}
