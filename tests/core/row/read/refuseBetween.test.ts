// A pitch or a gage that no two holes are apart by is never passed over.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readHeadings } from '../../../../src/core/row/headings/readHeadings.js';
import { checkedPart } from '../../../../src/core/row/checkRow.js';
import { shopWith } from '../../../support/sampleShop.js';

const shop = shopWith();
const titles = [
  'Section',
  'Grade',
  'Length',
  'Qty',
  'Hole',
  'Bolt',
  'Holes',
  'Edge',
  'End',
  'Pitch',
  'Gage',
  'Leg',
  'Press',
];
const headings = readHeadings(titles);
const inch = 25.4;

const blankOr = (sizes: number[]) => fc.constantFrom<(number | null)[]>(null, ...sizes);
const row = fc.record({
  section: fc.constantFrom('FB3/8X6', 'PL3/8X8', 'C10X15.3', 'L3X3X1/4'),
  holes: fc.constantFrom<(string | number)[]>(1, 2, 3, 4, 6, '1 each end', '2 each end', '4 each end'),
  pitch: blankOr([2.5, 3, 17]),
  gage: blankOr([1.75, 2.25]),
});

describe('a pitch and a gage', () => {
  it('are between two holes of the part, or the row is not read', () => {
    const seen = new Set<boolean>();
    fc.assert(
      fc.property(row, ({ section, holes, pitch, gage }) => {
        const leg = section.startsWith('C') ? 'web' : null;
        const cells = [section, 'A36', 36, 1, '13/16', '3/4', holes, 2, 2, pitch, gage, leg, 'Bay A'];
        const { result, part } = checkedPart(cells, headings, shop);
        if (result.blank || !part) return;
        const centers =
          part.layouts.layouts[0]?.groups.flatMap((each) => each.holes.map(({ center }) => center)) ?? [];
        const isApart = (mm: number, x: number) =>
          centers.some((one) =>
            centers.some((other) => Math.abs(Math.abs(x ? one.x - other.x : one.y - other.y) - mm) < 1e-6),
          );
        const isHeld = result.verdict !== 'Check input';
        seen.add(isHeld);
        if (isHeld && pitch !== null) expect(isApart(pitch * inch, 1)).toBe(true);
        if (isHeld && gage !== null && !section.startsWith('L')) expect(isApart(gage * inch, 0)).toBe(true);
      }),
      { numRuns: 300 },
    );
    expect([...seen].sort()).toEqual([false, true]);
  });
});
