import { describe, expect, it } from 'vitest';
import { boxed, decidingInches, partOf, type Row, sortedInches } from './partSupport.js';

const hole = { Hole: '13/16', Holes: 1, Bolt: '3/4' };

/** The ends of the heavy line, and what is boxed beside it. */
function decided(row: Row, lengthInch: number, press: Row = {}) {
  const drawing = partOf(row, { press });
  return [sortedInches(decidingInches(drawing, lengthInch)), boxed(drawing)];
}

describe('the distance that decides', () => {
  it('aslant from a miter is drawn from the hole to the nearest place of the cut', () => {
    const row = {
      Section: 'PL3/8X6',
      Length: 10,
      ...hole,
      Edge: 2,
      End: 5,
      'Miter left': 45,
      'Long side': 'top',
    };
    // The cut runs from (0, 6) to (6, 0): a hole at (5, 2) is (5 + 2 − 6) / √2 = 0.7071 in from it, at (4.5, 1.5).
    expect(decided(row, 10)).toEqual([
      [
        [4.5, 1.5],
        [5, 2],
      ],
      ['0.707 < 1-1/4'],
    ]);
  });

  it('to a notch is drawn at the notch', () => {
    const row = {
      Section: 'PL3/8X6',
      Length: 10,
      ...hole,
      Edge: 2,
      End: 5,
      'Notch width': 2,
      'Notch depth': 1,
      'Notch at': 'bottom edge 5',
    };
    expect(decided(row, 10)[1]).toEqual(['1 < 1-1/4']);
    expect(partOf(row).summary).toContain('Hole: edge distance 1 in, needs 1-1/4 in or more');
  });

  it('that is over an edge says by how much', () => {
    const row = { Section: 'PL3/8X4', ...hole, Bolt: 'none', Edge: '3/8', End: 6 };
    // 13/16 / 2 = 13/32 in; 13/32 − 3/8 = 1/32 in.
    expect(partOf(row).summary).toContain('over by 1/32 in');
    expect(boxed(partOf(row))[0]).toContain('1/32 over');
  });

  it('is not drawn where a hole is not placed: it may lie anywhere', () => {
    expect(boxed(partOf({ Section: 'PL3/8X4', ...hole, Holes: 2 }))).toEqual([]);
  });

  it('is none where a share of a rating decides', () => {
    expect(boxed(partOf({ Section: 'PL3/8X4', ...hole, Edge: 2, End: 6 }))).toEqual([]);
  });
});

describe('what cannot be reached', () => {
  it('is drawn from the nearer edge to the hole, with the throat', () => {
    const row = { Section: 'PL1/4X20', Length: 24, ...hole, Edge: 9, End: 12, 'Cut by': 'saw' };
    const press = { 'Punch throat': 8 };
    expect(decided(row, 24, press)).toEqual([
      [
        [expect.any(Number), 0],
        [expect.any(Number), 9],
      ],
      ['9 > 8'],
    ]);
    expect(partOf(row, { press }).summary).toContain('Hole: 9 in to the nearer edge, punch throat 8 in');
    // 20 − 12 = 8 in from the top edge.
    expect(decided({ ...row, Edge: 12 }, 24, { 'Punch throat': 7 })[0]).toEqual([
      [expect.any(Number), 12],
      [expect.any(Number), 20],
    ]);
  });

  it('is drawn from the nearer end where that is what was held', () => {
    const row = { Section: 'PL1/4X30', Length: 24, ...hole, Edge: 15, End: 10, 'Cut by': 'saw' };
    expect(decided(row, 24, { 'Punch throat': 8 })).toEqual([
      [
        [0, expect.any(Number)],
        [10, expect.any(Number)],
      ],
      ['10 > 8'],
    ]);
  });

  it('of a leg is drawn from the toe', () => {
    const row = { Section: 'L8x4x1/2', Length: 12, ...hole, Gage: 2, End: 6, Leg: 'long', 'Cut by': 'saw' };
    expect(decided(row, 12, { 'Punch throat': 5 })).toEqual([
      [
        [expect.any(Number), 2],
        [expect.any(Number), 8],
      ],
      ['6 > 5'],
    ]);
  });

  it('beside a fillet is drawn from there', () => {
    const row = { Section: 'L4x4x1/2', Length: 12, ...hole, Gage: '1-1/2', End: 6, Leg: 'long' };
    const [ends, texts] = decided(row, 12, { 'Punch die half width': 1 });
    expect(texts).toEqual([expect.stringMatching(/^[\d./-]+ < 1$/)]);
    expect((ends as [number, number][]).map(([, y]) => y).at(-1)).toBe(1.5);
  });
});

describe('a part that is too long for the press', () => {
  const press = { 'Longest bar': "20'-0" };

  it.each([
    ["24'-0", "24'-0 > 20'-0"],
    [`24'-0"`, `24'-0" > 20'-0"`],
    ['24 ft', "24'-0 > 20'-0"],
    ['288', '288 > 240'],
    ['7320 mm', '7320 mm > 6096 mm'],
  ])('typed %s is compared in that form: %s', (Length, text) => {
    expect(boxed(partOf({ Section: 'FB 1/4x4', Length }, { press }))).toEqual([text]);
  });
});
