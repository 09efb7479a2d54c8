// Punch hits of a row: what the press makes. A36 of 1/2 in takes holes from 1/2 in, its thickness.
import { describe, expect, it } from 'vitest';
import { checkedRow, type Row } from '../../support/checkedRow.js';
import { shopWith } from '../../support/sampleShop.js';

function checked(row: Row) {
  const whole = {
    Qty: 3,
    Section: 'FB 1/2x4',
    Grade: 'A36',
    Length: 24,
    Edge: 2,
    End: 2,
    Press: 'Bay A',
    ...row,
  };
  return checkedRow(whole, shopWith());
}

describe('the hits of a row', () => {
  it('are the pieces times the holes', () => {
    expect(checked({ Hole: '13/16', Holes: 2 })).toMatchObject({ hits: 6, route: 'shear, punch' });
  });

  it('count a hole as wide as the thickness, and none that the route says to drill', () => {
    expect(checked({ Hole: '1/2', Holes: 2 })).toMatchObject({ hits: 6, route: 'shear, punch' });
    expect(checked({ Hole: '7/16', Holes: 2 })).toMatchObject({ hits: 0, route: 'shear, drill' });
  });

  it('count the other holes of a row in which some are too small', () => {
    const mixed = { Hole: '7/16', Holes: 4, 'Hole 2': '13/16', 'Holes 2': 2, 'Edge 2': 2, 'End 2': 6 };
    expect(checked(mixed)).toMatchObject({ hits: 6, route: 'shear, punch, drill' });
  });

  it('count none of two groups of the same hole that is too small', () => {
    const twice = { Hole: '7/16', Holes: 4, 'Hole 2': '7/16', 'Holes 2': 2, 'Edge 2': 2, 'End 2': 6 };
    expect(checked(twice)).toMatchObject({ hits: 0, route: 'shear, drill' });
  });
});
