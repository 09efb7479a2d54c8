// What a row asks for and nothing is checked against is never OK.
import { describe, expect, it } from 'vitest';
import { checkedRow, type Row } from '../../support/checkedRow.js';
import { shopWith } from '../../support/sampleShop.js';

const shop = shopWith({
  'Bend length': 30,
  'Bend V openings': '2, 3, 5, 8',
  'Punch force': 200,
  'Flat shear thickest bar': 1,
  'Flat shear widest bar thickness': 1,
});
const checked = (row: Row) => checkedRow({ Grade: 'A36', Press: 'Bay A', ...row }, shop);

const plate: Row = { Section: 'PL1/4X6', Length: 20, Qty: 1 };
const bent: Row = { ...plate, 'Bend length': 6, 'Bend at': 'left end 6' };
const holed: Row = { ...plate, Section: 'PL3/8X8', Hole: '13/16', Bolt: '3/4', Edge: 2, End: 2 };

describe('what nothing holds', () => {
  it.each<[string, Row, RegExp, Row]>([
    [
      'bends across each other',
      {
        ...bent,
        Section: 'PL1/4X12',
        Length: 12,
        'Bend length': 8,
        Bends: 2,
        'Bend at': 'left end 4, bottom edge 4',
        'Notch width': 4,
        'Notch depth': 4,
        'Notch at': 'bottom left',
      },
      /whether the punch fits between the flanges that stand/,
      { ...bent, Section: 'PL1/4X12', Length: 12, 'Bend length': 12 },
    ],
    [
      'an odd number of holes in two lines',
      { ...holed, Holes: 5, Pitch: 3, Gage: 3 },
      /odd number of holes in two lines/,
      { ...holed, Holes: 4, Pitch: 3, Gage: 3 },
    ],
    [
      'thick steel that is punched and galvanized',
      { ...holed, Section: 'PL3/4X8', Holes: 1, 'Cut by': 'burn', Finish: 'HDG' },
      /ask the engineer/,
      { ...holed, Section: 'PL3/4X8', Holes: 1, 'Cut by': 'burn' },
    ],
    [
      'a column that names work and is not read',
      { ...holed, Holes: 1, 'Miter, both': 45 },
      /Miter, both is filled in and not read\. Rename the column, or clear it\./,
      { ...holed, Holes: 1, Color: 'red' },
    ],
  ])('%s leaves the row open', (_what, open, note, good) => {
    expect(checked(open)).toMatchObject({ verdict: 'OK so far' });
    expect(checked(open).note).toMatch(note);
    expect(['OK', 'Near limit'], checked(good).note).toContain(checked(good).verdict);
  });

  it('does not warn of what is drilled and burned', () => {
    const drilled = { ...holed, Section: 'PL3/4X8', Holes: 1, 'Cut by': 'burn', 'Holes by': 'drill' };
    expect(checked({ ...drilled, Finish: 'HDG' }).note).not.toContain('ask the engineer');
  });
});

describe('cuts of an angle', () => {
  const angle: Row = { Section: 'L3X3X1/4', Length: 24, Qty: 1, 'Notch width': 2, 'Notch depth': 1 };

  it.each<[string, Row, string, RegExp]>([
    [
      'at the heel',
      { 'Notch at': 'heel edge 6' },
      'No station',
      /at the heel of L3X3X1\/4, where the other leg stands/,
    ],
    [
      'through the root',
      { 'Notch at': 'toe edge 6', 'Notch depth': '2-7/8' },
      'No station',
      /reaches its root/,
    ],
    ['at a place that is not given', {}, 'Not checked', /say where it is/],
    ['at the toe', { 'Notch at': 'toe edge 6' }, 'OK', /^Understood as: /],
  ])('%s', (_where, cells, verdict, note) => {
    expect(checked({ ...angle, ...cells })).toMatchObject({ verdict });
    expect(checked({ ...angle, ...cells }).note).toMatch(note);
  });
});

describe('the steel that is left between cuts', () => {
  const bar: Row = { Section: 'FB 1/4X5', Length: 24, Qty: 1, 'Notch width': 2, Notches: 2 };

  it('is at least as thick as it is wide', () => {
    const across = { ...bar, 'Notch at': 'top edge 8, bottom edge 8' };
    // 5 − 2 · 2-15/32 = 1/16; 5 − 2 · 2-3/8 = 1/4.
    expect(checked({ ...across, 'Notch depth': '2-15/32' }).note).toContain(
      'Only 1/16 in of steel between notch 1 and notch 2, under 1/4 in (press practice: at least the thickness must be left).',
    );
    expect(checked({ ...across, 'Notch depth': '2-15/32' }).verdict).toBe('Edge short');
    expect(checked({ ...across, 'Notch depth': '2-3/8' }).verdict).toBe('OK');
    // Two notches 2 wide with their middles 2-1/16 and 2-1/4 apart.
    const beside = { ...bar, 'Notch depth': 1 };
    expect(checked({ ...beside, 'Notch at': 'top edge 8, top edge 10-1/16' }).verdict).toBe('Edge short');
    expect(checked({ ...beside, 'Notch at': 'top edge 8, top edge 10-1/4' }).verdict).toBe('OK');
    expect(checked({ ...beside, Notches: 1, 'Notch at': 'top edge 1-1/16' }).verdict).toBe('Edge short');
  });
});

describe('a press', () => {
  it('cuts the square end of a part with one miter, too', () => {
    const row: Row = { Section: 'L2X2X3/16', Length: 24, Qty: 1, 'Miter left': 45, 'Miter leg': 'long' };
    const blank = shopWith({ 'Angle shear leg square': null });
    expect(checkedRow({ Grade: 'A36', Press: 'Bay A', ...row }, blank).verdict).toBe('Not checked');
    expect(checked(row).verdict).toBe('OK');
  });

  it('that miters one leg makes no miter of both', () => {
    const one = shopWith({ 'Angle shear legs mitered': 'one' });
    const row: Row = { Section: 'L2X2X3/16', Length: 24, 'Miter left': 45, 'Miter leg': 'both' };
    const { verdict, note } = checkedRow({ Grade: 'A36', Press: 'Bay A', ...row }, one);
    expect(verdict).toBe('No station');
    expect(note).toContain('The angle shear of Bay A miters one leg only; saw the miter.');
  });

  it('takes a wide plate in from its nearer end', () => {
    const row: Row = { ...holed, Section: 'PL1/4X30', 'Cut by': 'burn', Holes: 1, Edge: 15 };
    expect(checked({ ...row, End: 3 }).verdict).toBe('OK');
    expect(checked({ ...row, Length: 40, End: 20 }).verdict).toBe("Can't reach");
  });

  it('cuts a notch in a corner on two sides only', () => {
    // 3/8 · (4 + 4) and 3/8 · (4 + 2 · 4) in of cut: two thirds of what the same notch takes in an edge.
    const row: Row = { ...plate, Section: 'PL3/8X10', 'Notch width': 4, 'Notch depth': 4 };
    const use = (at: string) =>
      checked({ ...row, 'Notch at': at }).findings.flatMap((finding) =>
        finding.rule === 'share' && finding.operation === 'notcher' ? finding.use : [],
      )[0];
    expect((use('bottom left') ?? 0) / (use('bottom edge 10') ?? 1)).toBeCloseTo(2 / 3, 9);
  });
});
