// Rows whose holes have room wherever they lie, or nowhere. Press practice leaves 10 mm beside a hole of 18 mm in 10 mm.
import { describe, expect, it } from 'vitest';
import { checkedRow, type Row, sayEach } from '../../../support/checkedRow.js';
import { bayAInMillimeters, settingTable, shopWith } from '../../../support/sampleShop.js';

const shop = shopWith(bayAInMillimeters, { settings: settingTable({ Units: 'mm', 'Edge code': 'EN' }) });
const bar: Row = { Section: 'FB 10x60', Grade: 'S275', Press: 'Bay A', Hole: 18, Bolt: 'none' };

const checked = (row: Row) => checkedRow({ ...bar, ...row }, shop);
const roomOf = (row: Row) => checked(row).findings.filter(({ rule }) => rule === 'room');

describe('holes whose spaces are not given', () => {
  const leg: Row = { Section: 'L80x80x10', Length: 250, Edge: null, Gage: 45 };

  it('are checked against the greatest number that has room', () => {
    // Centers 18 + 10 = 28 mm apart, and 9 + 10 = 19 mm from either end: 212 / 28 + 1 = 8.6.
    expect(roomOf({ ...leg, Holes: 8 })).toMatchObject([{ outcome: 'held', count: 8, most: 8 }]);
    const many = checked({ ...leg, Holes: 9 });
    expect(many).toMatchObject({ verdict: 'Holes too close', governs: 'spacing' });
    expect(many.note).toMatch(
      /^Hole: 9 holes have no room on the part: at 28 mm from center to center \(press practice\), at most 8 fit\. /,
    );
  });

  it('keep the pitch and the end distance of the code where the bolt is given', () => {
    // EN, M16: 2.2 · 18 = 39.6 mm from center to center, 1.2 · 18 = 21.6 from either end: 206.8 / 39.6 + 1 = 6.2.
    const bolted = { ...leg, Bolt: 'M16' };
    expect(roomOf({ ...bolted, Holes: 6 })).toMatchObject([{ outcome: 'held', most: 6 }]);
    const many = checked({ ...bolted, Holes: 7 });
    expect(many.verdict).toBe('Holes too close');
    expect(many.note).toMatch(
      /^Hole: 7 holes have no room on the part: at 39\.6 mm from center to center \(EN\), at most 6 fit\. /,
    );
    // Where the row does not give the bolt, these may be no bolt holes.
    expect(roomOf({ ...bolted, Bolt: null, Holes: 8 })).toMatchObject([{ outcome: 'held', most: 8 }]);
  });

  it('begin where End says', () => {
    // From 80 to 250 − 19: 151 / 28 + 1 = 6.4; from 150: 81 / 28 + 1 = 3.9.
    expect(roomOf({ ...leg, End: 80, Holes: 6 })).toMatchObject([{ outcome: 'held', most: 6 }]);
    expect(roomOf({ ...leg, End: 80, Holes: 7 })).toMatchObject([{ outcome: 'failed', most: 6 }]);
    expect(roomOf({ ...leg, End: 'right 150', Holes: 4 })).toMatchObject([{ outcome: 'failed', most: 3 }]);
  });

  it('have less room the farther the first hole is from its end', () => {
    const most = (endMm: number) => {
      const [room] = roomOf({ ...leg, End: endMm, Holes: 2 });
      return room?.rule === 'room' ? room.most : NaN;
    };
    for (let endMm = 20; endMm < 220; endMm += 10) expect(most(endMm + 10)).toBeLessThanOrEqual(most(endMm));
  });

  it('may lie anywhere across a plate, so that more have room there', () => {
    // 212 by 60 − 2 · 19 = 22 mm, 28 mm apart: 2/√3 · 7.571 · 0.786 + 7.571 + 0.786 + 1 = 16.2.
    expect(roomOf({ Length: 250, Holes: 16 })).toMatchObject([{ outcome: 'held', most: 16 }]);
    expect(roomOf({ Length: 250, Holes: 17 })).toMatchObject([{ outcome: 'failed', most: 16 }]);
  });

  it('are not counted where the pitch is given', () => {
    expect(roomOf({ Length: 250, Holes: 3, Pitch: 40 })).toEqual([]);
  });
});

describe('holes that slide between two edges', () => {
  it('need the steel on both sides at once, which no place gives that lacks it on one', () => {
    // 30 mm from line to line, 2 · 9 of the holes and 2 · 10 beside them: 68 mm.
    const lines = { Length: 250, Holes: 4, Pitch: 40, End: 40, Edge: null };
    expect(checked({ ...lines, Gage: 30, Section: 'FB 10x68' }).verdict).toBe('OK so far');
    const tight = checked({ ...lines, Gage: 30, Section: 'FB 10x67' });
    expect(tight).toMatchObject({ verdict: 'Edge short', governs: 'edge distance' });
    expect(
      sayEach(
        tight.findings.filter(({ rule }) => rule === 'room at the edges'),
        shop,
      ),
    ).toEqual([
      'Hole: wherever it lies, 1 mm is missing between the bottom edge and the top edge. Correct the part or the holes.',
    ]);
  });

  it('need it at both ends, too', () => {
    // 100 + 18 + 2 · 10 = 138 mm.
    const slides = { Holes: 2, Pitch: 100, Edge: 30 };
    expect(checked({ ...slides, Length: 138.1 }).verdict).toBe('OK so far');
    expect(checked({ ...slides, Length: 137 })).toMatchObject({ verdict: 'Edge short' });
    expect(checked({ ...slides, Length: 137 }).note).toContain(
      '1 mm is missing between the left end and the right end',
    );
  });
});
