// Holes at miters and clipped corners. A miter of 45° moves the end by as much as the hole lies from the long side.
import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { checkRow } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/readHeadings.js';
import { shopWith } from '../../support/sampleShop.js';

type Row = Record<string, CellValue>;

/** The hole is 1-3/4 in from the heel: as drawn, the cut passes its line 1.75 in from the left end. */
const angle: Row = {
  Section: 'L3x3x3/16',
  Length: 24,
  Hole: '9/16',
  Holes: 1,
  End: 1.75,
  Gage: '1-3/4',
  'Miter left': 45,
};
const plate: Row = { Section: 'PL1/4x4', Length: 12, Hole: '9/16', Holes: 1, Edge: 2, End: 2 };

function checked(row: Row) {
  const whole: Row = { Qty: 1, Grade: 'A36', ...row };
  const result = checkRow(Object.values(whole), readHeadings(Object.keys(whole)), shopWith());
  if (result.blank) throw new Error('the row is blank');
  return result;
}

const caution = (row: Row) =>
  /Caution: (\d holes? may run over the cut: [^.]*)\./.exec(checked(row).note)?.[1];

describe('a hole at a miter', () => {
  it('that lies on the cut is told, and not checked until the row says which side is long', () => {
    expect(caution(angle)).toBe(
      '1 hole may run over the cut: it does if the heel is the long side and End is taken from the left end',
    );
    expect(checked(angle).verdict).toBe('Not checked');
    expect(checked(angle).note).toContain('depending on Leg and Long side and Miter leg: fill them in.');
    const heelLong = { ...angle, Leg: 'long', 'Miter leg': 'long', 'Long side': 'heel' };
    expect(checked(heelLong).verdict).toBe('Edge short');
    expect(checked({ ...heelLong, 'Miter leg': 'short' }).verdict).toBe('OK');
    expect(checked({ ...angle, 'Miter left': null }).verdict).toBe('OK');
  });

  it('that touches the cut is not told, one nearer is', () => {
    // Across the cut of 45° a radius of 9/32 in takes 0.28125 · √2 = 0.3977 in along the part: 1.75 + 0.3977 = 2.1477.
    expect(caution({ ...angle, End: 2.148 })).toBeUndefined();
    expect(caution({ ...angle, End: 2.147 })).toContain('1 hole');
  });

  it('is told at the right end, too, as many as there are', () => {
    // 24 − 1.75 = 22.25 in at the right end, 1.75 at the left: the last of 1.75 + 20.5.
    const both = { ...angle, 'Miter right': 45, Holes: 2, Pitch: 20.5 };
    expect(caution(both)).toMatch(/^2 holes may run over the cut: they do if the heel/);
    expect(caution({ ...both, 'Miter left': null })).toContain('1 hole');
  });

  it('of a plate is told by the edge its edge distance is taken from', () => {
    expect(caution({ ...plate, 'Miter left': 45 })).toContain(
      'it does if the edge that Edge is taken from is the long side',
    );
  });

  it('is not told where its place is not known, nor where there is no miter', () => {
    const open: Row[] = [
      { End: null },
      { Length: null },
      { Holes: 2 },
      { 'Miter left': null },
      { 'Miter left': 0 },
    ];
    for (const row of open) expect(caution({ ...angle, ...row }), JSON.stringify(row)).toBeUndefined();
    expect(caution({ ...plate, Edge: null, 'Miter left': 45 })).toBeUndefined();
  });

  it('too near to the long side is an edge distance that is short, no cut that is run over', () => {
    const near = { ...plate, Edge: '1/4', End: 6, 'Miter left': 45 };
    expect(checked(near).verdict).toBe('Edge short');
    expect(caution(near)).toBeUndefined();
  });
});

describe('a hole at a clipped corner', () => {
  const clipped = { ...plate, 'Corner clip': 1.5, Corners: 4, Edge: 1 };

  it('that runs over the clip is told, and fails where every corner is clipped', () => {
    // At 1 in across the cut is 1.5 − 1 = 0.5 in along; with 0.3977 in of the hole 0.8977.
    expect(caution({ ...clipped, End: 0.89 })).toBe(
      '1 hole may run over the cut: it does if the corner beside is one that is clipped',
    );
    expect(checked({ ...clipped, End: 0.89 }).verdict).toBe('Edge short');
    expect(caution({ ...clipped, End: 0.9 })).toBeUndefined();
  });

  it('is not told where no corner is clipped, or the clips do not fit', () => {
    expect(caution({ ...plate, Edge: 1, End: 0.89 })).toBeUndefined();
    expect(caution({ ...clipped, 'Corner clip': 7, End: 0.89 })).toBeUndefined();
  });
});
