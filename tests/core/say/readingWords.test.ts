import { describe, expect, it } from 'vitest';
import type { PlaceReading } from '../../../src/core/row/job/placeReading.js';
import type { Reading } from '../../../src/core/row/job/reading.js';
import { readingSentence, readingWords } from '../../../src/core/say/readingWords.js';

const inch = 25.4;
const hole = { shape: 'round', diameterMm: 0.8125 * inch } as const;

/** Each kind of reading, as words of the note or as a sentence of its own. */
const words: Record<Reading['is'], [Reading, string]> = {
  'ignored mark': [{ is: 'ignored mark', mark: 'LLV' }, 'LLV of the section changes nothing here'],
  'quantity assumed': [{ is: 'quantity assumed' }, 'quantity 1 assumed'],
  'tensile as typed': [
    { is: 'tensile as typed', typed: 'tensile 65 ksi' },
    'tensile 65 ksi taken as the highest',
  ],
  hands: [{ is: 'hands', right: 2, left: 3 }, '2 right-hand and 3 left-hand'],
  miter: [{ is: 'miter', rad: Math.PI / 6 }, 'miter 30° from square'],
  holes: [
    { is: 'holes', group: 0, count: 1, hole, counted: false, fitOfBolt: { fit: 'standard', bolt: '3/4 in' } },
    '1 × Ø13/16 (one assumed), standard for bolt 3/4 in',
  ],
  notches: [
    { is: 'notches', count: 2, counted: true, widthMm: 2 * inch, depthMm: inch, placed: false },
    '2 notches 2 in wide, 1 in deep, taken at an edge',
  ],
  'corners clipped': [
    { is: 'corners clipped', count: 1, counted: true, alongMm: inch, acrossMm: 2 * inch },
    '1 corner clipped 1 × 2 in',
  ],
  bends: [
    { is: 'bends', count: 1, counted: false, lengthMm: 4 * inch },
    '1 bend (one assumed) 4 in long, given as a flat blank',
  ],
  'sharp corners': [
    { is: 'sharp corners' },
    'the notcher leaves inside corners sharp: drill them first where they must not crack',
  ],
  'face of the holes': [
    { is: 'face of the holes', group: 1, face: 'web' },
    'Hole 2 taken in the web, the only face wide enough',
  ],
  'rolling not known': [
    { is: 'rolling not known' },
    'rolling direction of the plate not known: a bend along it needs half as much inside radius again',
  ],
  'unknown finish': [
    { is: 'unknown finish', typed: 'paint' },
    "finish 'paint' is not known here, so nothing was checked for it",
  ],
  'no mass': [{ is: 'no mass' }, 'no length given, so no mass'],
  'cut elsewhere': [
    { is: 'cut elsewhere', by: 'bought' },
    'bought cut to length, as the row says; the cut was not checked on a press',
  ],
  'cut by saw': [{ is: 'cut by saw' }, 'cut by saw: no press station cuts this section'],
  'no tools': [{ is: 'no tools' }, 'the shop has no list of tools, so none were checked'],
  'bolt of the hole': [{ is: 'bolt of the hole', group: 1, bolt: '3/4 in' }, 'bolt 3/4 in taken from Hole 2'],
  'bolt not known': [{ is: 'bolt not known', group: 0 }, 'no bolt given'],
  'no bolt': [
    { is: 'no bolt', group: 1 },
    'Hole 2 no bolt, so the distances were checked by press practice only',
  ],
  edges: [{ is: 'edges', group: 0, edge: 'rolled', end: 'sheared' }, 'edge rolled, end sheared'],
  places: [{ is: 'places', group: 0, reading: 'at each end' }, 'read as one at each end'],
  'greatest edge distance': [
    { is: 'greatest edge distance', group: 0, givenMm: 5 * inch, greatestMm: 4.5 * inch, code: 'AISC' },
    'caution: 5 in from bolt to nearest edge is over 4-1/2 in, the most AISC allows',
  ],
  'made otherwise': [
    { is: 'made otherwise', group: 1, how: { by: 'row', process: 'burn' } },
    'Hole 2: burned, as the row says; not checked on a press.',
  ],
  'narrow strip': [
    { is: 'narrow strip', givenMm: inch, leastMm: 2 * inch },
    'caution: a strip 1 in wide, under 2 in, may twist as it is sheared',
  ],
};

describe('what was read or taken', () => {
  it.each(Object.entries(words))('of the kind %s is told once, as words or as a sentence', (_, each) => {
    const [reading, told] = each;
    const both = [readingWords(reading, 'in'), readingSentence(reading)];
    expect(both.filter((text) => text !== '')).toEqual([told]);
  });

  it('because of the job specification says why', () => {
    const how = { by: 'job specification', process: 'drill', because: 'ask the engineer' } as const;
    expect(readingSentence({ is: 'made otherwise', group: 0, how })).toBe(
      'Hole: drill it; ask the engineer.',
    );
  });

  it('of places names the group and each way to read them', () => {
    const readings: Record<PlaceReading, string> = {
      'usual gage': 'Hole 2 usual gage 1-3/4 in taken',
      'evenly spaced': 'Hole 2 read as evenly spaced',
      'at each end': 'Hole 2 read as one at each end',
      'in each corner': 'Hole 2 read as one in each corner',
      centered: 'Hole 2 read as centered',
      'in the middle of the width': 'Hole 2 read as in the middle of the width',
      'from the right end': 'Hole 2 read as from the right end',
    };
    for (const [reading, told] of Object.entries(readings)) {
      const place = { is: 'places', group: 1, reading: reading as PlaceReading, mm: 1.75 * inch } as const;
      expect(readingWords(place, 'in')).toBe(told);
    }
  });
});
