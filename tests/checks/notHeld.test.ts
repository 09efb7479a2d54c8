// What is never OK although nothing fails: common practice, no source.
import { describe, expect, it } from 'vitest';
import { checkedRow, type Row } from '../support/checkedRow.js';
import { shopWith } from '../support/sampleShop.js';

const shop = shopWith({
  'Bend length': 30,
  'Bend V openings': '3',
  'Punch force': 400,
  'Punch largest hole thickness': 2,
});

function open(row: Row): string[] {
  const cells = { Grade: 'A36', Press: 'Bay A', Length: 24, Qty: 1, 'Cut by': 'burn', ...row };
  return checkedRow(cells, shop).findings.flatMap((each) => (each.rule === 'not held' ? each.why : []));
}

describe('Galvanized steel from 3/4 in that is punched or bent: ask the engineer (common practice, no source)', () => {
  const holed = { Hole: '13/16', Bolt: '3/4', Holes: 1, Edge: 3, End: 3, Finish: 'HDG' };

  it.each([
    ['PL11/16X6', []],
    ['PL3/4X6', ['galvanized and thick']],
    ['PL1X6', ['galvanized and thick']],
  ])('%s, punched', (Section, found) => {
    expect(open({ Section, ...holed })).toEqual(found);
    expect(open({ Section, ...holed, 'Holes by': 'drill' })).toEqual([]);
    expect(open({ Section, ...holed, Finish: 'paint' })).toEqual([]);
  });
});

describe('A bent plate has a bend (common practice, no source)', () => {
  it.each(['BENT PL1/4X6', 'Bent Pl 1/4 x 6', ' bent pl1/4x6'])('%s', (Section) => {
    expect(open({ Section })).toEqual(['bend missing']);
    expect(open({ Section, 'Bend length': 6 })).toEqual([]);
    expect(open({ Section: Section.replace(/bent/i, '') })).toEqual([]);
  });
});

describe('Holes in two lines are as many in each (common practice, no source)', () => {
  it.each([
    [2, []],
    [3, ['uneven lines']],
    [4, []],
    [5, ['uneven lines']],
  ])('%d holes', (Holes, found) => {
    expect(
      open({
        ...{ Section: 'PL3/8X8', Hole: '13/16', Bolt: '3/4', Edge: 2, End: 3, Gage: 3, Holes },
        ...(Holes > 2 ? { Pitch: 3 } : {}),
      }),
    ).toEqual(found);
  });
});

describe('A bolt is put in no hole wider than that of an anchor rod (AISC Design Guide 1, Table 2.3, and 360-22 Table J3.3, from memory)', () => {
  it.each([
    ['1-5/16', '3/4', []],
    ['1-3/8', '3/4', ['loose bolt']],
    ['13/16', '5/8', []],
    ['1-3/16', '1/2', ['loose bolt']],
    ['1-3/16', 'none', []],
  ])('hole %s, bolt %s', (Hole, Bolt, found) => {
    expect(open({ Section: 'PL3/8X8', Hole, Bolt, Holes: 1, Edge: 3, End: 3 })).toEqual(found);
  });
});

describe('Flanges that stand on two sides of a corner leave the punch less room (common practice, no source)', () => {
  const tray = {
    Section: 'PL1/4X12',
    'Notch width': 4,
    'Notch depth': 4,
    'Notch at': 'bottom left',
    Bends: 2,
  };

  it('bends of two directions', () => {
    expect(open({ ...tray, 'Bend length': 20, 'Bend at': 'left end 4, bottom edge 4' })).toEqual([
      'bends across each other',
    ]);
    expect(open({ ...tray, 'Bend length': 8, 'Bend at': 'left end 4', Bends: 1 })).toEqual([]);
  });
});
