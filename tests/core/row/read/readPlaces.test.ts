import { describe, expect, it } from 'vitest';
import { type PlacedWork, readPlaces } from '../../../../src/core/row/read/readPlaces.js';
import { refusalText } from '../../../support/refusal.js';
import { inInches, lengthsIn, sectionOf } from './support.js';

function read(text: string, work: PlacedWork = 'notch', section = 'PL1/4X4', count?: number) {
  const unit = 'in';
  const length = (size: string) => lengthsIn(unit)(size);
  return readPlaces(text, { work, argument: 'At', section: sectionOf(section), unit, length, count });
}
const refused = (...call: Parameters<typeof read>) => refusalText(() => read(...call));
const corner = (side: string, end: string, leg?: string) => ({
  at: 'corner',
  end,
  side,
  ...(leg ? { leg } : {}),
});
const corners = [
  corner('bottom', 'left'),
  corner('top', 'left'),
  corner('bottom', 'right'),
  corner('top', 'right'),
];

describe('places on a plate', () => {
  it.each<[string, unknown[]]>([
    ['bottom left', [corner('bottom', 'left')]],
    ['left bottom corner', [corner('bottom', 'left')]],
    ['Bottom-Left', [corner('bottom', 'left')]],
    ['btm L', [corner('bottom', 'left')]],
    ['lower left', [corner('bottom', 'left')]],
    ['TR', [corner('top', 'right')]],
    ['BL, TR', [corner('bottom', 'left'), corner('top', 'right')]],
    ['bottom left & top right', [corner('bottom', 'left'), corner('top', 'right')]],
    ['bottom left; top right', [corner('bottom', 'left'), corner('top', 'right')]],
    ['left corners', [corner('bottom', 'left'), corner('top', 'left')]],
    ['2 top corners', [corner('top', 'left'), corner('top', 'right')]],
    ['all corners', corners],
    ['4 corners', corners],
    ['all four corners', corners],
    ['each corner', corners],
    ['left end', [{ at: 'end', end: 'left' }]],
    ['left hand end', [{ at: 'end', end: 'left' }]],
    ['RH end', [{ at: 'end', end: 'right' }]],
    ['left end 2', [{ at: 'end', end: 'left', from: 2 }]],
    ['left end @ 2', [{ at: 'end', end: 'left', from: 2 }]],
    ['left end 2 from bottom', [{ at: 'end', end: 'left', from: 2 }]],
    [
      'both ends',
      [
        { at: 'end', end: 'left' },
        { at: 'end', end: 'right' },
      ],
    ],
    [
      'each end 1-1/2',
      [
        { at: 'end', end: 'left', from: 1.5 },
        { at: 'end', end: 'right', from: 1.5 },
      ],
    ],
    ['bottom edge 6', [{ at: 'edge', side: 'bottom', from: 6 }]],
    ['top edge', [{ at: 'edge', side: 'top' }]],
    ['top 6', [{ at: 'edge', side: 'top', from: 6 }]],
    ["top edge 2'-6", [{ at: 'edge', side: 'top', from: 30 }]],
    ['top edge (6)', [{ at: 'edge', side: 'top', from: 6 }]],
    ['bottom edge 6 from left', [{ at: 'edge', side: 'bottom', from: 6 }]],
    ['bottom edge 6 from the left end', [{ at: 'edge', side: 'bottom', from: 6 }]],
    [
      'top edge 6, 18',
      [
        { at: 'edge', side: 'top', from: 6 },
        { at: 'edge', side: 'top', from: 18 },
      ],
    ],
    [
      'top edge 6; 18 1/2',
      [
        { at: 'edge', side: 'top', from: 6 },
        { at: 'edge', side: 'top', from: 18.5 },
      ],
    ],
    [
      'both edges 6',
      [
        { at: 'edge', side: 'bottom', from: 6 },
        { at: 'edge', side: 'top', from: 6 },
      ],
    ],
  ])('%s', (text, places) => {
    expect(inInches(read(text))).toEqual(places);
  });

  it.each([
    ['left', 'a corner or an end'],
    ['top', 'a corner or an edge'],
    ['corner', 'which'],
    ['end 2', 'which end'],
    ['left edge', 'a corner or an end'],
    ['top edge at left', 'a corner, or anywhere'],
    ['left top edge', 'a corner, or an edge'],
    ['left end top', 'a corner, or an end'],
    ['top left 2', 'a distance from a corner'],
    ['2 left end', 'how far, or how many'],
    ['2 both ends', 'how far, or how many'],
    ['left 6', 'along the part, in no edge'],
    ['6 from left end', 'along the part, in no edge'],
    ['bottom edge, 6 from left end', 'one place parted by a comma'],
    ['bottom edge 6, from left end', 'one place parted by a comma'],
    ['top edge 6, R 18', 'a side with a distance'],
    ['top left, top left', 'twice'],
    ['top edge 6 from right', 'from the wrong end'],
    ['left end 2 from top', 'from the wrong edge'],
    ['top edge 6-', 'an unfinished fraction'],
    ['top edge 6/', 'an unfinished fraction'],
    ['left end 1/', 'an unfinished fraction'],
    ['top edge -6', 'below zero'],
    ['top edge 6 12', 'two sizes without a comma'],
    ['heel left', 'a plate has no heel'],
    ['long leg left end', 'a plate has no legs'],
    ['near side', 'no word of a place'],
    [', ;', 'nothing'],
  ])('%s is refused: %s', (text) => {
    expect(refused(text)).toMatch(/^(?:At|Cell): .+\. .+\.$/);
  });

  it('a comma between two digits is named with both readings, unless one place is asked for', () => {
    expect(refused('top edge 6,5')).toBe(
      "At: 'top edge 6,5' may be one place or two. Write a point for the comma, or top edge 6; 5.",
    );
    expect(refused('top edge 6,5', 'notch', 'PL1/4X4', 2)).toContain('may be one place or two');
    expect(inInches(read('top edge 6,5', 'notch', 'PL1/4X4', 1))).toEqual([
      { at: 'edge', side: 'top', from: 6.5 },
    ]);
  });
});

describe('places on legs, webs and flanges', () => {
  it.each<[string, string, unknown[]]>([
    ['L4X3X1/4', 'long leg heel left', [corner('heel', 'left', 'long')]],
    ['L4X3X1/4', 'heel left', [corner('heel', 'left')]],
    ['L4X3X1/4', 'short leg toe right', [corner('toe', 'right', 'short')]],
    ['L4X3X1/4', 'leg 3 toe left', [corner('toe', 'left', '3')]],
    ['L4X3X1/4', '3 leg toe left', [corner('toe', 'left', '3')]],
    ['L4X3X1/4', 'long leg left end', [{ at: 'end', end: 'left', leg: 'long' }]],
    ['L4X3X1/4', 'long leg left end 2', [{ at: 'end', end: 'left', from: 2, leg: 'long' }]],
    ['L4X3X1/4', 'leg 3 left end 2', [{ at: 'end', end: 'left', from: 2, leg: '3' }]],
    ['L4X3X1/4', 'long leg toe edge 6', [{ at: 'edge', side: 'toe', from: 6, leg: 'long' }]],
    ['C8X11.5', 'web bottom left', [corner('bottom', 'left', 'web')]],
    ['C8X11.5', 'top flange toe left', [corner('toe', 'left', 'top flange')]],
    ['C8X11.5', 'bottom flange left end', [{ at: 'end', end: 'left', leg: 'bottom flange' }]],
  ])('of %s: %s', (section, text, places) => {
    expect(inInches(read(text, 'notch', section))).toEqual(places);
  });

  it.each([
    ['L4X3X1/4', 'bottom left'],
    ['L4X3X1/4', 'leg 5 toe left'],
    ['L4X3X1/4', 'each leg toe left'],
    ['L4X3X1/4', 'web left end'],
    ['C8X11.5', 'long leg left end'],
    ['C8X11.5', 'top flange left'],
  ])('of %s: %s is refused', (section, text) => {
    expect(refused(text, 'notch', section)).toMatch(/^(?:At|Cell): .+\. .+\.$/);
  });
});

describe('clips and bends', () => {
  it('clips are at corners, all of them where the cell says all', () => {
    expect(inInches(read('all', 'clip'))).toEqual(corners);
    expect(inInches(read('TL, TR', 'clip'))).toEqual([corner('top', 'left'), corner('top', 'right')]);
    for (const text of ['left end', 'top edge 6', '4', 'left']) {
      expect(refused(text, 'clip')).toContain('Write bottom left; top right.');
    }
    expect(refused('all')).toContain("'all' is not the place of a notch");
  });

  it.each<[string, unknown[]]>([
    ['left end 4', [{ at: 'end', end: 'left', from: 4 }]],
    ['4 from left', [{ at: 'end', end: 'left', from: 4 }]],
    ['4 from the left end', [{ at: 'end', end: 'left', from: 4 }]],
    [
      'left 4, 8',
      [
        { at: 'end', end: 'left', from: 4 },
        { at: 'end', end: 'left', from: 8 },
      ],
    ],
    [
      '4 left, 4 right',
      [
        { at: 'end', end: 'left', from: 4 },
        { at: 'end', end: 'right', from: 4 },
      ],
    ],
    ['bottom edge 2', [{ at: 'edge', side: 'bottom', from: 2 }]],
  ])('a bend at %s', (text, places) => {
    expect(inInches(read(text, 'bend'))).toEqual(places);
  });

  it('a bend without an end or an edge is refused', () => {
    for (const text of ['4', 'middle', '4, 8', 'top left 2']) expect(refused(text, 'bend')).toContain('At: ');
  });
});
