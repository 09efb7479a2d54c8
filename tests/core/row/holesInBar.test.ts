// Holes in sections without a flat side, and holes where there is no steel.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkedRow, type Row } from '../../support/checkedRow.js';
import { shopWith } from '../../support/sampleShop.js';

const shop = shopWith();
const check = (row: Row) => checkedRow({ Grade: 'A36', Press: 'Bay A', Length: 12, Qty: 1, ...row }, shop);

describe('a hole in a bar or tube', () => {
  it.each([
    ['RB1', 'Ø1', 'Ø15/16'],
    ['SQ1', 'Ø1', 'Ø15/16'],
    ['HSS4X2X1/4', 'Ø4', 'Ø3'],
    ['PIPE 2 STD', 'Ø2-1/2', 'Ø2'],
    ['W8X10', 'Ø8', 'Ø2'],
  ])('%s fails with %s, which leaves nothing of it, and not with %s', (Section, over, within) => {
    const failed = check({ Section, Hole: over, Holes: 1 });
    expect(failed.verdict, failed.note).toBe('Edge short');
    expect(failed.note).toContain('leaves nothing of');
    expect(['OK so far', 'Off press']).toContain(check({ Section, Hole: within, Holes: 1 }).verdict);
  });

  it('fails where the piece is shorter than the hole', () => {
    expect(check({ Section: 'HSS4X2X1/4', Length: 1, Hole: 'Ø1', Holes: 1 }).verdict).toBe('Edge short');
  });
});

describe('a hole where a cut has taken the steel', () => {
  const plate: Row = { Section: 'PL1/4X6', Length: 20, Hole: '9/16', Bolt: '1/2', Holes: 1 };
  const notched: Row = { ...plate, 'Notch width': 4, 'Notch depth': 3, 'Notch at': 'top edge 8' };

  it('is Check input, half in it Edge short', () => {
    const inside = check({ ...notched, End: 8, Edge: 4.5 });
    expect(inside.verdict).toBe('Check input');
    expect(inside.note).toMatch(
      /^Hole: a hole lies in notch 1, where there is no steel\. Correct End, Edge or Notch at\./,
    );
    expect(check({ ...notched, End: 8, Edge: 3 }).verdict).toBe('Edge short');
    const clipped = check({ ...plate, 'Corner clip': '3x3', 'Clip at': 'top left', End: 0.8, Edge: 5.2 });
    expect(clipped.note).toMatch(/^Hole: a hole lies in clipped corner 1, where there is no steel\./);
  });

  it('is never better the deeper it lies in the notch', () => {
    const rankOf = { OK: 0, 'Edge short': 1, 'Check input': 2 } as const;
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 88 }), fc.integer({ min: 1, max: 8 }), (sixteenths, more) => {
        const rank = (edge: number) => {
          const { verdict } = check({ ...notched, End: 8, Edge: edge });
          return rankOf[verdict as keyof typeof rankOf] ?? NaN;
        };
        const [edge, deeper] = [sixteenths / 16, (sixteenths + more) / 16];
        if (edge >= 1.5) expect(rank(deeper)).toBeGreaterThanOrEqual(rank(edge));
      }),
      { numRuns: 60 },
    );
  });
});

describe('the body of a punch in a shop without a list of tools', () => {
  const plate: Row = { Section: 'PL1/4X6', Hole: 'SQ 3/4', Holes: 1, Edge: 3, End: 6, Bolt: 'none' };
  const body = (size: string | null) =>
    checkedRow(
      { Grade: 'A36', Press: 'Bay A', Length: 12, Qty: 1, ...plate },
      shopWith({ 'Punch body': size }),
    );

  it('is not known, so a press that takes bodies to a size is not checked', () => {
    const { verdict, note } = body('1-1/2');
    expect(verdict).toBe('Not checked');
    expect(note).toContain(
      'Punch body of Bay A was not checked: no list of tools says which bodies the punches have. Add the Tools table, or write none.',
    );
    expect(body('none').verdict).toBe('OK');
  });

  it('is no smaller than the punch itself', () => {
    // Across corners 3/4 · √2 = 1.06 in.
    const { verdict, note } = body('1');
    expect(verdict).toBe('No tool');
    expect(note).toContain('over the largest body the station takes, 1 in');
  });

  it('is held where there is one', () => {
    const tools = [
      ['Press', 'Kind', 'Shape', 'Size', 'Body'],
      ['Bay A', 'punch', 'square', '3/4', '1-1/4'],
      ['Bay A', 'die', 'square', '25/32', null],
    ];
    const listed = shopWith({ 'Punch body': '1-1/2' }, { tools });
    const { verdict, note } = checkedRow(
      { Grade: 'A36', Press: 'Bay A', Length: 12, Qty: 1, ...plate },
      listed,
    );
    expect(verdict, note).toBe('OK');
  });
});
