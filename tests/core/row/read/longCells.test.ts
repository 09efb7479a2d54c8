import { describe, expect, it } from 'vitest';
import { InputError } from '../../../../src/core/inputError.js';
import { readClip } from '../../../../src/core/row/read/readClip.js';
import { readEdgeKind } from '../../../../src/core/row/read/readEdgeKind.js';
import { readFinish } from '../../../../src/core/row/read/readFinish.js';
import { readFinishedHole } from '../../../../src/core/row/read/readFinishedHole.js';
import { readHoleCount } from '../../../../src/core/row/read/readHoleCount.js';
import { readHolesAt } from '../../../../src/core/row/read/readHolesAt.js';
import { readLongSide, readMiterLeg } from '../../../../src/core/row/read/readMiterSides.js';
import { anyLine } from '../../../../src/core/row/read/holeLines.js';
import { readPitch } from '../../../../src/core/row/read/readPitch.js';
import { readPlaces } from '../../../../src/core/row/read/readPlaces.js';
import { readQty } from '../../../../src/core/row/read/readQty.js';
import { readEdge, readEnd } from '../../../../src/core/row/read/readSided.js';
import { lengthsIn, sectionOf } from './support.js';

const longest = 32_767;
/** Far above what one pass over the text takes on a busy machine, far below what a square of its length takes. */
const allowedMs = 150;
const length = lengthsIn('in');
const section = sectionOf('PL1/4X4');
const mitered = { section, ends: ['left', 'right'] as const };
const places = { argument: 'At', section, unit: 'in', length, count: undefined } as const;

const readers: Record<string, (text: string) => unknown> = {
  notch: (text) => readPlaces(text, { ...places, work: 'notch' }),
  bend: (text) => readPlaces(text, { ...places, work: 'bend' }),
  holesAt: (text) => readHolesAt(text, 'At', length),
  edge: (text) => readEdge(text, 'Edge', length, undefined),
  end: (text) => readEnd(text, 'End', length),
  pitch: (text) =>
    readPitch(text, { argument: 'Pitch', unit: 'in', length, lines: anyLine, leastApartMm: 20 }),
  holes: (text) => readHoleCount(text, 'Holes'),
  qty: (text) => readQty(text, 'Qty'),
  hole: (text) => readFinishedHole(text, 'Hole', 'in'),
  clip: (text) => readClip(text, 'Clip', 'in'),
  edgeKind: (text) => readEdgeKind(text, 'Edge kind'),
  longSide: (text) => readLongSide(text, 'Long side', mitered),
  miterLeg: (text) => readMiterLeg(text, 'Miter leg', mitered, 'in'),
  finish: readFinish,
};
const pieces = [
  ...[
    'a',
    '1',
    ' ',
    '-',
    '/',
    '1/',
    ',',
    ';',
    '1,',
    '1;',
    '1, ',
    ' from ',
    'left ',
    'top 1, ',
    'x1 y2;',
    '1@1,',
    '=',
    '(',
    '()',
  ],
  ...[
    'csk ',
    'tap, ',
    '2R ',
    'r1 ',
    'e.e.',
    'each end ',
    'galv ',
    'no ',
    'hot dip ',
    'x',
    '1x',
    ' 45',
    '@ ',
    'typ ',
    'o.c. ',
    'leg ',
    '\n',
    '½',
    '\u200B',
  ],
];

describe('a cell as long as it can be', () => {
  it.each(Object.keys(readers))('holds up the reader of %s for no longer than an instant', (name) => {
    for (const piece of pieces) {
      const text = `1 ${piece.repeat(longest)}`.slice(0, longest);
      const times = Array.from({ length: 3 }, () => {
        const started = performance.now();
        try {
          readers[name]?.(text);
        } catch (error) {
          if (!(error instanceof InputError)) throw error;
        }
        return performance.now() - started;
      });
      expect(Math.min(...times), `${name} of ${JSON.stringify(piece)}`).toBeLessThan(allowedMs);
    }
  });
});
