// Rows whose distances are right one by one and whose part as a whole is not; beside each the nearest row that is.
import { describe, expect, it } from 'vitest';
import { checkedRow, type Row } from '../../../support/checkedRow.js';
import { shopWith } from '../../../support/sampleShop.js';

const shop = shopWith({
  Notcher: 'yes',
  'Notcher width': 4,
  'Notcher depth': 4,
  'Notcher thickness': '1/2',
  'Angle shear': 'yes',
  'Angle shear leg square': 6,
  'Angle shear thickness square': '3/4',
  'Angle shear leg at 45°': 6,
  'Angle shear thickness at 45°': '3/4',
  'Angle shear legs mitered': 'both',
  Bend: 'yes',
  'Bend length': 30,
  'Bend V openings': '3, 4',
  'Punch throat': 12,
  'Punch largest hole': 3,
});

function checked(row: Row) {
  return checkedRow({ Grade: 'A36', Press: 'Bay A', ...row }, shop);
}

const flat: Row = { Section: 'FB 3/8x3', Length: 12, Hole: '13/16', Bolt: '3/4', End: 3 };
const angle: Row = { Section: 'L4X4X1/2', Length: 12, Hole: '13/16', Bolt: '3/4', End: 3 };
const two: Row = { ...flat, Section: 'FB 3/8x4', Edge: 2, End: 2, 'Hole 2': '13/16', 'Bolt 2': '3/4' };
const clipped: Row = { ...flat, Section: 'PL3/8X8', Edge: '1-1/4', End: '1-1/4', Corners: 4 };
const notched: Row = { Section: 'PL1/4X3', Length: 12, 'Notch width': 1 };

describe('a part that is laid out as a whole', () => {
  it.each<[string, Row, string, Row]>([
    ['a hole too near the far edge', { ...flat, Edge: '2-1/4' }, 'Edge short', { ...flat, Edge: 2 }],
    [
      'a gage that leaves too little at the toe',
      { ...angle, Gage: '3-1/4' },
      'Edge short',
      { ...angle, Gage: '2-1/2', Edge: '1-1/2' },
    ],
    [
      'two groups through each other',
      { ...two, 'Edge 2': 2, 'End 2': '2-1/4' },
      'Holes too close',
      { ...two, 'Edge 2': 2, 'End 2': 4 },
    ],
    [
      'holes at clipped corners',
      { ...clipped, 'Corner clip': 2, Holes: 1 },
      'Edge short',
      { ...clipped, 'Corner clip': '1/2', Edge: 2, End: 2, Holes: 1 },
    ],
    [
      'a notch deeper than the part is wide',
      { ...notched, 'Notch depth': '3-1/4' },
      'Check input',
      { ...notched, 'Notch depth': 1 },
    ],
    [
      'more corners than a plate has',
      { Section: 'PL3/8X8', Length: 12, 'Corner clip': 1, Corners: 9 },
      'Check input',
      { Section: 'PL3/8X8', Length: 12, 'Corner clip': 1, Corners: 4 },
    ],
    [
      'a bend longer than the part',
      { Section: 'PL1/4X6', Length: 12, 'Bend length': 20 },
      'Check input',
      { Section: 'PL1/4X6', Length: 12, 'Bend length': 12, 'Bend at': 'bottom edge 3' },
    ],
    [
      'miters that meet',
      { Section: 'L3X3X1/4', Length: 2, 'Miter left': 45, 'Miter right': 45, 'Long side': 'heel' },
      'Check input',
      { Section: 'L3X3X1/4', Length: 12, 'Miter left': 45, 'Miter right': 45, 'Long side': 'heel' },
    ],
    [
      'a bar shorter than its shear can hold',
      { Section: 'SQ 3/4', Length: '1/4' },
      "Can't reach",
      { Section: 'SQ 3/4', Length: 6 },
    ],
    [
      'more holes than have room, with no pitch given',
      { ...flat, Length: 6, End: 1.5, Edge: 1.5, Holes: 20 },
      'Holes too close',
      { ...flat, Length: 60, End: 1.5, Edge: 1.5, Holes: 20, Pitch: 3 },
    ],
  ])('finds %s', (_what, bad, word, good) => {
    expect(checked(bad)).toMatchObject({ verdict: word });
    expect(checked(good).note).not.toMatch(/is under|runs|no room|Correct/);
    expect(['OK', 'Near limit']).toContain(checked(good).verdict);
  });

  it('says what is between what, and what it must be', () => {
    expect(checked({ ...flat, Edge: '2-1/4' }).note).toContain(
      'Hole: 3/4 in from the center to the top edge is under 1 in (AISC, rolled edge, bolt 3/4 in).',
    );
    expect(checked({ ...two, 'Edge 2': 2, 'End 2': '2-1/4' }).note).toContain(
      'Hole: a hole runs 9/16 in into a hole of Hole 2.',
    );
  });

  it('does not pass like holes at one place, which may be at both ends', () => {
    const { verdict, governs, note } = checked({ ...two, 'Edge 2': 2, 'End 2': 2 });
    expect({ verdict, governs }).toEqual({ verdict: 'OK so far', governs: 'End 2' });
    expect(note).toMatch(
      /^Hole: a hole runs 13\/16 in into a hole of Hole 2\. It depends on End 2: write left or right before it\. /,
    );
    expect(checked({ ...two, 'Edge 2': 2, 'End 2': 'left 2' }).verdict).toBe('Holes too close');
    expect(checked({ ...two, 'Edge 2': 2, 'End 2': 'right 2' }).verdict).toBe('OK');
  });

  it('does not check what only one of several choices rules out, and says which cell would settle it', () => {
    const corner = { ...clipped, 'Corner clip': 2, Corners: 1, Holes: 1 };
    expect(checked(corner)).toMatchObject({ verdict: 'OK so far', governs: 'Clip at' });
    expect(checked(corner).note).toMatch(
      /^Hole: the hole runs 0\.053 in into clipped corner 1\. It depends on Clip at: fill it in\. /,
    );
    expect(checked({ ...corner, 'Clip at': 'top right' }).verdict).toBe('OK');
    expect(checked({ ...corner, 'Clip at': 'bottom left' }).verdict).toBe('Edge short');
    const legs = {
      Section: 'L5X3X1/4',
      Length: 12,
      Hole: '13/16',
      End: 2,
      Gage: 2,
      'Hole 2': '13/16',
      'End 2': 2.5,
      'Gage 2': 2,
    };
    expect(checked(legs).note).toContain('It depends on Leg and Leg 2: fill them in.');
    expect(checked({ ...legs, Leg: 'long', 'Leg 2': 'short' }).note).not.toContain('depends');
  });

  it('gives the mirror image of a plate the same word', () => {
    for (const [edge, mirrored] of [
      [2.25, 0.75],
      [2, 1],
      [1.5, 1.5],
    ]) {
      const [own, other] = [edge, mirrored].map((Edge) => checked({ ...flat, Edge: Edge ?? 0 }).verdict);
      expect(other).toBe(own);
    }
  });
});

describe('a cell that is blank', () => {
  const plate: Row = { Section: 'PL3/8X8', Length: 12, Hole: '13/16', Edge: 4, End: 4 };

  it('fails nothing by the bolt that the hole is read for', () => {
    // AISC 360-05 Table J3.4 at a sheared end, bolt 3/4: 1-1/4 in; press practice: 3/8 + 13/32 in from the center.
    const near = { ...plate, End: '1-3/16', 'End kind': 'sheared' };
    expect(checked(near)).toMatchObject({ verdict: 'OK so far', governs: 'end distance' });
    expect(checked(near).open).toBe(
      'Hole: 1-3/16 in from the center to the left end is under 1-1/4 in (AISC, sheared edge, bolt 3/4 in taken from the hole). Fill in Bolt to settle it.',
    );
    expect(checked({ ...near, Bolt: '3/4' }).verdict).toBe('Edge short');
    expect(checked({ ...near, Bolt: '5/8' }).verdict).toBe('OK');
    expect(checked({ ...near, Bolt: 'none' }).verdict).toBe('OK');
  });

  it('fails nothing by the kind of edge that is taken, but what every kind asks for', () => {
    // Bolt 3/4: 1-1/4 in sheared, 1 in else.
    const near = { ...plate, Bolt: '3/4', Edge: '1-1/8' };
    expect(checked(near)).toMatchObject({ verdict: 'OK so far', governs: 'edge distance' });
    expect(checked(near).open).toContain('Fill in Edge kind to settle it.');
    expect(checked({ ...near, 'Edge kind': 'sheared' }).verdict).toBe('Edge short');
    expect(checked({ ...near, 'Edge kind': 'rolled' }).verdict).toBe('OK');
    expect(checked({ ...near, Edge: '15/16' }).verdict).toBe('Edge short');
    // The long edges of a bar are rolled: nothing is open.
    expect(checked({ ...near, Section: 'FB 3/8x8' }).verdict).toBe('OK');
  });

  it('leaves one sentence for all that no bolt leaves open', () => {
    // Ø1-3/8 is no standard hole of a bolt; press practice is held.
    const odd = { ...plate, Hole: '1-3/8', Holes: 2, Pitch: 3, Edge: 2, End: 2 };
    expect(checked(odd)).toMatchObject({ verdict: 'OK so far' });
    expect(checked(odd).open).toBe(
      'Hole: no bolt is given, and AISC goes by the bolt, so the distances to the edges and between holes are not checked by it. Fill in Bolt, or write none where it is no bolt hole.',
    );
    expect(['OK', 'Near limit']).toContain(checked({ ...odd, Bolt: 'none' }).verdict);
  });

  it('under Length leaves the far end and the shortest piece open, in one sentence', () => {
    const endless = checked({ ...plate, Length: null });
    expect(endless).toMatchObject({ verdict: 'Not checked', governs: 'Length' });
    expect(endless.note).toMatch(
      /^Length is blank, so the shortest piece the press can hold was not checked, the length and mass that the press carries were not checked, and nothing was checked against the far end\. Fill it in\. Understood as: /,
    );
  });

  it('under Edge, Pitch or End is OK so far where all else holds', () => {
    expect(checked({ ...plate, Edge: null }).open).toBe(
      'Hole: Edge is blank, so the distances to the edges are not known.',
    );
    for (const row of [
      { ...plate, Edge: null },
      { ...plate, End: null },
      { ...plate, Holes: 2 },
      { ...plate, Holes: 2, End: null, Edge: null },
    ]) {
      expect(checked(row).verdict, JSON.stringify(row)).toBe('OK so far');
    }
  });

  it('under Long side leaves a short mitered piece open, which a parallelogram would pass', () => {
    // 45° takes 4 in of either end: 9 − 8 = 1 in on one side, or 9 − 4 = 5 in on both; the shear holds from 2 in.
    const mitered = { Section: 'FB 3/8x4', Length: 9, 'Miter left': 45, 'Miter right': 45 };
    expect(checked(mitered)).toMatchObject({ verdict: 'Not checked', governs: 'Long side' });
    expect(checked({ ...mitered, 'Long side': 'bottom' }).verdict).toBe("Can't reach");
    expect(checked({ ...mitered, 'Long side': 'left bottom, right top' }).verdict).toBe('OK');
  });

  it('under Hole leaves the group of Hole 2 its own name', () => {
    const second = {
      Section: 'PL3/8X8',
      Length: 12,
      'Hole 2': '13/16',
      'Edge 2': '1/4',
      'End 2': 4,
      'Holes 2': 2,
    };
    expect(checked(second).note).toMatch(
      /^Hole 2: the hole runs 5\/32 in over the bottom edge\. Hole 2: Pitch 2 is blank, so the distances [^.]* are not known\. Understood as: /,
    );
  });
});

describe('what a row says of its places and its work', () => {
  const plate: Row = { Section: 'PL3/8X8', Length: 12, Hole: '13/16', Bolt: '3/4' };

  it('takes sawn ends and slots along the length at their own distances', () => {
    const sawn = { ...plate, Edge: 4, End: '1-1/8' };
    expect(checked({ ...sawn, 'End kind': 'sheared' }).verdict).toBe('Edge short');
    expect(checked({ ...sawn, 'End kind': 'sawn' }).verdict).toBe('OK');
    expect(checked({ ...sawn, 'Cut by': 'saw' }).verdict).toBe('OK');
    const slot = { ...plate, Hole: '13/16x1-7/8', Edge: '1-1/2', End: 4 };
    expect(checked({ ...slot, Slot: 'across' }).verdict).toBe('Edge short');
    expect(checked({ ...slot, Slot: 'along' }).verdict).toBe('Near limit');
  });

  it('holds holes given one by one, in chains, at both ends and from the right end against the part', () => {
    expect(checked({ ...plate, 'Holes at': 'x2 y2; x10 y6' })).toMatchObject({ verdict: 'OK', hits: 2 });
    expect(checked({ ...plate, 'Holes at': 'x2 y2; x11-1/2 y6' }).verdict).toBe('Edge short');
    expect(checked({ ...plate, 'Holes at': 'x2 y2; x3 y2' }).verdict).toBe('Holes too close');
    const chain = { ...plate, Holes: 4, Edge: 4, End: 2 };
    expect(checked({ ...chain, Pitch: '2@3, 2' }).verdict).toBe('OK');
    expect(checked({ ...chain, Pitch: '2@3, 3-1/2' }).verdict).toBe('Edge short');
    const ends = { ...plate, Holes: '2 each end', Edge: 4, Pitch: 3 };
    expect(checked({ ...ends, End: 1.5 }).verdict).toBe('OK');
    expect(checked({ ...ends, End: 2.5 }).verdict).toBe('Holes too close');
    const other = { ...two, 'Edge 2': 2, 'End 2': 'right 2' };
    expect(checked(other).verdict).toBe('OK');
  });

  it('holds notches at their places against the holes', () => {
    const notch = { ...plate, Edge: 2, End: 2, 'Notch width': 2, 'Notch depth': 2 };
    expect(checked({ ...notch, 'Notch at': 'bottom left' }).verdict).toBe('Edge short');
    expect(checked({ ...notch, 'Notch at': 'top right' }).verdict).toBe('OK');
  });

  it('does not ask a press for what is sawn or drilled, and says so', () => {
    const drilled = checked({ ...plate, Hole: '1/4', Bolt: null, Edge: 4, End: 4, 'Holes by': 'drill' });
    expect(drilled).toMatchObject({ verdict: 'OK', route: 'shear, drill', hits: 0 });
    expect(drilled.note).toContain('Hole: drilled, as the row says; not checked on a press.');
    const sawn = checked({ Section: 'PL2X12', Length: 12, 'Cut by': 'saw' });
    expect(sawn).toMatchObject({ verdict: 'Off press', route: 'saw' });
    expect(sawn.note).toContain('sawn, as the row says; the cut was not checked on a press');
  });
});
