// Holes whose leg the row does not name, where they lie on one face only. C6X8.2: web 6 in, flanges 1.92 in.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkedRow, type Row } from '../../support/checkedRow.js';
import { shopWith } from '../../support/sampleShop.js';

const shop = shopWith();
const check = (row: Row) =>
  checkedRow(
    { Grade: 'A36', Press: 'Bay A', Length: 24, Hole: '13/16', Bolt: '3/4', End: 2, Pitch: 3, ...row },
    shop,
  );

describe('holes of which the row does not say in which face they are', () => {
  it.each<[string, Row, string]>([
    ['C6X8.2', { Holes: 3, Edge: 3 }, 'Hole taken in the web, the only face wide enough'],
    ['C6X8.2', { Holes: 4, Gage: 3 }, 'Hole taken in the web, the only face wide enough'],
    ['L5X3X1/4', { Holes: 3, Gage: '3-1/2' }, 'Hole taken in the longer leg, the only face wide enough'],
  ])('in %s are taken in the only face they lie on', (Section, row, note) => {
    expect(check({ Section, ...row }).note).toContain(note);
    expect(check({ Section, ...row }).note).not.toContain('depends on Leg');
  });

  it('are what they are with the leg written', () => {
    fc.assert(
      fc.property(fc.integer({ min: 32, max: 64 }), (sixteenths) => {
        const row = { Section: 'C6X8.2', Holes: 3, Edge: sixteenths / 16 };
        expect(check(row).verdict).toBe(check({ ...row, Leg: 'web' }).verdict);
      }),
      { numRuns: 30 },
    );
  });

  it('still depend on the leg where they lie on either', () => {
    expect(check({ Section: 'C6X8.2', Holes: 3, Edge: '1-1/2' }).note).toContain('depends on Leg');
    expect(check({ Section: 'L3X3X1/4', Holes: 3, Gage: '1-3/4' }).note).not.toContain('taken in');
  });
});
