// Rows whose holes have room wherever they lie, or nowhere. Press practice leaves 10 mm beside a hole of 18 mm in 10 mm.
import { describe, expect, it } from 'vitest';
import { checkedRow, type Row, sayEach } from '../../../support/checkedRow.js';
import { bayAInMillimeters, settingTable, shopWith } from '../../../support/sampleShop.js';

const shop = shopWith(bayAInMillimeters, { settings: settingTable({ Units: 'mm' }) });
const bar: Row = { Section: 'FB 10x60', Grade: 'S275', Press: 'Bay A', Hole: 18, Bolt: 'none' };

const checked = (row: Row) => checkedRow({ ...bar, ...row }, shop);
const roomOf = (row: Row) => checked(row).findings.filter(({ rule }) => rule === 'room');

describe('holes whose spaces are not given', () => {
  it('are held against the greatest number that has room', () => {
    // Centers 18 + 10 = 28 mm apart, in a length of 250 − 18 = 232 mm on one line: 232 / 28 + 1 = 9.3.
    const line = { Length: 250, Edge: 30, Gage: null };
    expect(roomOf({ ...line, Section: 'L80x80x10', Edge: null, Gage: 45, Holes: 9 })).toMatchObject([
      { outcome: 'held', count: 9, most: 9 },
    ]);
    const many = checked({ ...line, Section: 'L80x80x10', Edge: null, Gage: 45, Holes: 10 });
    expect(many).toMatchObject({ verdict: 'Holes too close', governs: 'spacing' });
    expect(many.note).toMatch(/^Hole: 10 holes have no room on the part, at most 9 with the steel /);
  });

  it('may lie anywhere across a plate, so that more have room there', () => {
    // 232 by 60 − 18 = 42 mm, 28 mm apart: 2/√3 · 8.286 · 1.5 + 8.286 + 1.5 + 1 = 25.1.
    expect(roomOf({ Length: 250, Holes: 25 })).toMatchObject([{ outcome: 'held', most: 25 }]);
    expect(roomOf({ Length: 250, Holes: 26 })).toMatchObject([{ outcome: 'failed', most: 25 }]);
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
