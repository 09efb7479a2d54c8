import { describe, expect, it } from 'vitest';
import type { Reading } from '../../../src/core/row/job/reading.js';
import { assumptionWords } from '../../../src/core/say/assumptionWords.js';

const hole = { shape: 'round', diameterMm: 20.6375 } as const;

describe('what a row assumes', () => {
  it.each<[Reading, string[]]>([
    [{ is: 'quantity assumed' }, ['quantity 1 assumed']],
    [{ is: 'holes', group: 0, count: 1, hole, counted: false }, ['one hole assumed']],
    [
      { is: 'notches', count: 1, counted: false, widthMm: 25, depthMm: 25, placed: false },
      ['one notch assumed', 'notches taken at an edge'],
    ],
    [{ is: 'bolt of the hole', group: 0, bolt: '3/4 in' }, ['bolt 3/4 in taken from the hole']],
    [{ is: 'places', group: 0, reading: 'in each corner' }, ['read as one in each corner']],
    [{ is: 'no mass' }, ['no length given, so no mass']],
  ])('%j', (reading, words) => {
    expect(assumptionWords(reading, 'in')).toEqual(words);
  });

  it('is told alike for every group of holes', () => {
    const of = (group: number) => assumptionWords({ is: 'places', group, reading: 'centered' }, 'in');
    expect(of(2)).toEqual(of(0));
  });

  it('is nothing where the row says it', () => {
    const readings: Reading[] = [
      { is: 'holes', group: 0, count: 4, hole, counted: true },
      { is: 'notches', count: 1, counted: true, widthMm: 25, depthMm: 25, placed: true },
      { is: 'miter', rad: 0.5 },
      { is: 'edges', group: 0, edge: 'rolled', end: 'sheared' },
    ];
    expect(readings.flatMap((reading) => assumptionWords(reading, 'mm'))).toEqual([]);
  });
});
