// What several findings leave open alike is said once: rows with blank cells, and what their notes say.
import { describe, expect, it } from 'vitest';
import { checkedRow, type Row } from '../../support/checkedRow.js';
import { shopWith } from '../../support/sampleShop.js';

const plate: Row = {
  Section: 'PL3/8X8',
  Grade: 'A36',
  Press: 'Bay A',
  Length: 12,
  Hole: '13/16',
  Edge: 4,
  End: 4,
};
const openOf = (row: Row) => checkedRow({ ...plate, ...row }, shopWith()).open;

describe('what is left open', () => {
  it('by holes that are not placed is one sentence a group', () => {
    expect(openOf({ Holes: 3, Edge: null, 'Hole 2': '13/16', 'Edge 2': 4 })).toBe(
      'Hole: Pitch, Edge and End 2 are blank, so the distances to the edges and between holes are not known. ' +
        'Hole 2: End 2 is blank, so the distances to the edges are not known.',
    );
  });

  it('by one cell is one sentence, whatever it leaves unchecked', () => {
    expect(openOf({ Length: null })).toMatch(/^Length is blank, so [^.]*, and [^.]*\. Fill it in\.$/);
  });

  it('by a gage is one sentence for all limits of the press', () => {
    const angle = { Section: 'L4X4X1/4', Edge: null, Bolt: 'none' };
    const open = checkedRow({ ...plate, ...angle }, shopWith({ 'Punch throat': 2 })).open;
    expect(open).toContain(
      'Hole: Gage is blank, so punch throat and punch die half width of Bay A were not checked.',
    );
  });

  it('is nothing where every cell is filled', () => {
    expect(openOf({ Bolt: '3/4' })).toBe('');
  });
});

describe('a hole that runs over an edge', () => {
  it('is told by that alone, not by the least distances there', () => {
    const { note } = checkedRow({ ...plate, End: '1/4', Bolt: '3/4' }, shopWith());
    expect(note).toMatch(/^Hole: the hole runs 5\/32 in over the left end\. Understood as: /);
  });
});
