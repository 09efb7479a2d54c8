// A cell that cannot be read is not blank: nothing that hangs on it is held or fails, and no sentence calls it blank.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/check/finding.js';
import { checkRow } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { noteOf } from '../../../src/core/say/noteOf.js';
import { checkedRow, type Row } from '../../support/checkedRow.js';
import { shopWith } from '../../support/sampleShop.js';
import { type Cells, wholeRow } from './support/randomRow.js';

const shop = shopWith({
  'Angle shear leg square': 6,
  'Angle shear thickness square': '3/4',
  'Bend length': 30,
  'Bend V openings': '1, 2, 3',
  'Punch largest hole': 3,
});

const plate: Row = {
  Qty: 2,
  Section: 'PL3/8X6',
  Grade: 'A36',
  Length: 12,
  Hole: '13/16',
  Holes: 4,
  Bolt: '3/4',
  Edge: '1-1/2',
  End: '1-1/2',
  Pitch: 3,
  Gage: 3,
  'Miter left': null,
  'Corner clip': null,
  'Bend length': null,
  'Cut by': null,
  Press: 'Bay A',
};

const told = (more: Row) => checkedRow({ ...plate, ...more }, shop);

describe('a cell that cannot be read', () => {
  it.each(['Length', 'Hole', 'Holes', 'Bolt', 'Edge', 'End', 'Pitch', 'Gage'])(
    '%s is told once, and nothing of it is called blank or fails',
    (heading) => {
      const row = told({ [heading]: '?' });
      expect(row.verdict).toBe('Check input');
      expect(row.findings.filter(({ outcome }) => outcome === 'failed')).toEqual([]);
      expect(row.findings.filter(({ verdict }) => verdict !== 'OK')).toHaveLength(1);
      expect(row.note).not.toMatch(/blank|assumed|taken from|no length given/);
    },
  );

  it.each(['Miter left', 'Cut by'])('%s leaves the cut and the holes at it unchecked', (heading) => {
    const row = told({ [heading]: '?' });
    expect(row.findings.filter(({ rule }) => rule === 'distance')).toEqual([]);
    expect(
      row.findings.some((finding) => finding.rule === 'share' && finding.operation !== 'punch force'),
    ).toBe(false);
    expect(row.route).toBe('');
  });

  it('is no reason to ask what a pitch means that hangs on it', () => {
    for (const pitch of ['2,5', '2x3', '3, 3'])
      expect(
        told({ Holes: '?', Pitch: pitch }).findings.filter(({ rule }) => rule === 'refusal'),
      ).toHaveLength(1);
  });

  it('still has checked what does not hang on it', () => {
    const row = told({ Edge: '?', Hole: '1-3/4' });
    expect(row.note).toContain("Edge: '?' is not a length.");
    expect(row.note).toContain("Punch force is 103% of Bay A's rating");
  });

  it('leaves neither hits nor mass that it would change', () => {
    expect(told({})).toMatchObject({ hits: 8 });
    expect(told({ Holes: '?' }).hits).toBeUndefined();
    expect(told({ Hole: '?' }).hits).toBeUndefined();
    expect(told({ Qty: '?' })).not.toHaveProperty('massKg');
    expect(told({ Qty: '?' }).hits).toBeUndefined();
    expect(told({ Edge: '?' })).toMatchObject({ hits: 8 });
  });

  it('is not known where another cell contradicts it', () => {
    const row = told({ Hole: '2 @ 13/16', Holes: 4, Pitch: '1' });
    expect(row.findings.filter(({ outcome }) => outcome === 'failed')).toEqual([]);
    expect(row.note).toMatch(/^Holes: it says 4, Hole says 2\. Make them agree\. (?!.*under)/);
  });
});

describe('a row with a cell that cannot be read', () => {
  it('fails in nothing that the same row does not fail in, whatever stands in the cell', () => {
    let failed = 0;
    fc.assert(
      fc.property(wholeRow, wholeRow, fc.nat(), (row, other, at) => {
        const cells: Cells = { ...row.given, ...row.places };
        const headings = Object.keys(cells).filter(
          (heading) => cells[heading] !== null && !['Press', 'Finish'].includes(heading),
        );
        const heading = headings[at % headings.length] ?? 'Length';
        const unread = check({ ...cells, [heading]: '?' });
        expect(unread.verdict).toBe('Check input');
        expect(unread.note).not.toContain(`${heading} is blank`);
        const failing = unread.findings.filter(({ outcome }) => outcome === 'failed').map(keyOf);
        failed += failing.length;
        const fillings = [cells[heading] ?? null, { ...other.given, ...other.places }[heading] ?? null];
        for (const filling of fillings) {
          if (filling === null) continue;
          const whole = check({ ...cells, [heading]: filling });
          if (whole.verdict === 'Check input') continue;
          // Of a row with more possible parts than are tried, nothing is sure to fail.
          if (whole.findings.some(({ rule }) => rule === 'too many choices')) continue;
          const keys = whole.findings.filter(({ outcome }) => outcome !== 'held').map(keyOf);
          for (const key of failing) {
            expect(keys, `${JSON.stringify(cells)} with ${heading} ? or ${String(filling)}`).toContain(key);
          }
        }
      }),
      { numRuns: 250 },
    );
    expect(failed).toBeGreaterThan(25);
  });
});

function check(cells: Cells) {
  const result = checkRow(Object.values(cells), readHeadings(Object.keys(cells)), shop);
  if (result.blank) throw new Error('the row is blank');
  return { ...result, note: noteOf(result, 'in') };
}

/** What a finding is of, whatever its sizes. */
function keyOf(finding: Finding): string {
  const { rule, press, group } = finding;
  const kind = 'kind' in finding ? finding.kind : 'item' in finding ? finding.item : '';
  return [rule, press, group, kind].join(' ');
}
