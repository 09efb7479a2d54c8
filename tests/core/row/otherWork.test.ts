// Notches, corner clips, bends and the route of a row on the sample press: 60 US ton, 50 ksi on the plate, notcher
// 4 × 4 × 3/8 in, bends to 18 in. A36 has τ = 0.75 · 80 = 60 ksi. Shares worked out by hand in kip and inches.
import { describe, expect, it } from 'vitest';
import type { ShareFinding } from '../../../src/core/check/finding.js';
import { checkedRow, governsEach, type Row } from '../../support/checkedRow.js';
import { type PressCells, settingTable, shopWith } from '../../support/sampleShop.js';

function checked(row: Row, press: PressCells = {}, settings: Row = {}) {
  const whole: Row = {
    Mark: 'P1',
    Qty: 1,
    Section: 'PL1/4X4',
    Grade: 'A36',
    Length: 12,
    Press: 'Bay A',
    ...row,
  };
  return checkedRow(whole, shopWith(press, { settings: settingTable(settings) }));
}

const useOf = (row: Row, operation: ShareFinding['operation']) =>
  checked(row).findings.flatMap((each) =>
    each.rule === 'share' && each.operation === operation ? [each.use] : [],
  )[0];

describe('a notch in a row', () => {
  const notch = { 'Notch width': 2, 'Notch depth': 1, Notches: 2 };

  it('takes the share of the plate’s own notch', () => {
    // (2 · 1 + 2) · 1/4 · 60 = 60 kip; the plate (2 · 4 + 4) · 3/8 · 50 = 225 kip
    expect(useOf(notch, 'notcher')).toBeCloseTo(60 / 225, 6);
    expect(checked(notch).note).toContain('2 notches 2 in wide, 1 in deep, taken at an edge');
  });

  it('is Too big over the thickness of the notcher and within it at the thickness itself', () => {
    expect(checked({ ...notch, Section: 'PL3/8X4' }).verdict).not.toBe('Too big');
    expect(checked({ ...notch, Section: 'PL1/2X4' }).verdict).toBe('Too big');
  });

  it('is No station on a press without a notcher, Not checked where its size is blank', () => {
    expect(checked(notch, { Notcher: 'no' }).verdict).toBe('No station');
    expect(checked(notch, { 'Notcher width': null }).verdict).toBe('Not checked');
    expect(checked(notch, { 'Notcher narrowest notch': null }).verdict).toBe('Not checked');
    expect(checked({ ...notch, Section: 'C8X11.5' }).verdict).toBe('No station');
  });

  it('is No tool in an edge where the tool is wider, not at a corner; where its place is not given it is not checked', () => {
    const fixed = { 'Notcher narrowest notch': 4 };
    const one = { 'Notch width': 2, 'Notch depth': 1 };
    const inEdge = checked({ ...one, 'Notch at': 'top edge 6' }, fixed);
    expect(inEdge.verdict).toBe('No tool');
    expect(inEdge.note).toContain(
      'A notch 2 in wide is narrower than Bay A makes in an edge, 4 in. Use a narrower tool, or saw or burn it.',
    );
    expect(checked({ ...one, 'Notch at': 'top left' }, fixed).verdict).toBe('OK');
    // In the top edge, and as far as the left end.
    expect(checked({ ...one, 'Notch at': 'top edge 1' }, fixed).verdict).toBe('OK');
    const anywhere = checked(one, fixed);
    expect(anywhere.verdict).toBe('Not checked');
    expect(anywhere.note).toContain('It depends on Notch at: fill it in.');
  });

  it('is Check input where only one of its sizes is given', () => {
    const half = checked({ 'Notch width': 2 });
    expect(half.verdict).toBe('Check input');
    expect(half.note).toContain('Notch: a notch needs its width and its depth.');
  });
});

describe('a corner clip in a row', () => {
  it('takes the share of the straight cut', () => {
    // √(3² + 4²) = 5; 5 · 1/4 · 60 = 75 kip of 225 kip
    expect(useOf({ 'Corner clip': '3x4', Corners: 2 }, 'corner clip')).toBeCloseTo(75 / 225, 6);
    // 1 × 1: √2 · 1/4 · 60 kip
    expect(useOf({ 'Corner clip': 1 }, 'corner clip')).toBeCloseTo((Math.SQRT2 * 0.25 * 60) / 225, 6);
  });

  it('is Too big over the notcher, Check input where the size is missing or has three sides', () => {
    expect(checked({ 'Corner clip': '5x2' }).verdict).toBe('Too big');
    expect(checked({ Corners: 4 }).verdict).toBe('Check input');
    expect(checked({ 'Corner clip': '1x1x1' }).note).toContain('is not a corner clip');
  });
});

describe('a bend in a row', () => {
  it('takes the smallest opening that is wide enough, and the share of the punch force', () => {
    // V ≥ 10 · 1/4, so 3; 1.33 · 80 · 12 · (1/4)² / 3 = 26.6 kip of 120 kip
    expect(useOf({ 'Bend length': 12, Bends: 1 }, 'bend force')).toBeCloseTo(26.6 / 120, 4);
  });

  it('is Too big over the bend length, No tool without an opening, No station without the attachment', () => {
    expect(checked({ 'Bend length': 19, Length: 20 }).verdict).toBe('Too big');
    expect(checked({ 'Bend length': 12, Section: 'PL1/2X4' }).verdict).toBe('No tool');
    expect(checked({ 'Bend length': 12 }, { Bend: 'no' }).verdict).toBe('No station');
    expect(checked({ 'Bend length': 12, Section: 'L3X3X1/4' }).verdict).toBe('No station');
  });

  it('is Check input where bends are counted without a length', () => {
    expect(checked({ Bends: 2 }).note).toContain('bends are counted but their length is blank');
  });
});

describe('the route of a row', () => {
  const holes = { Hole: '13/16', Holes: 2, Edge: 2, End: 2, Pitch: 3 };

  it.each<[string, Row, string]>([
    ['a cut flat with holes', holes, 'shear, punch'],
    ['a piece too small to hold, punched first', { ...holes, Holes: 1, Length: 3.5 }, 'punch, shear'],
    ['a piece just long enough to hold', { ...holes, Holes: 1, Length: '100 mm' }, 'shear, punch'],
    ['a channel', { ...holes, Section: 'C8X11.5', Edge: 4 }, 'saw, punch'],
    ['a mitered round bar', { Section: 'RB 3/4', 'Miter left': 45 }, 'saw'],
    ['a round bar with a hole', { ...holes, Section: 'RB 1' }, 'shear, drill'],
    ['a hole smaller than the thickness', { ...holes, Section: 'PL1/2X4', Hole: '7/16' }, 'shear, drill'],
    [
      'notches and bends',
      { ...holes, 'Notch width': 1, 'Notch depth': 1, 'Bend length': 4 },
      'shear, punch, notch, bend',
    ],
    [
      'one group too small, the other not',
      { ...holes, Section: 'PL1/2X4', 'Hole 2': '7/16', 'Edge 2': 2, 'End 2': 4 },
      'shear, punch, drill',
    ],
  ])('of %s', (_, row, route) => {
    expect(checked(row).route).toBe(route);
  });

  it('is drill where the job allows no punched holes, and the note says why', () => {
    const drilled = checked(holes, {}, { 'Job spec': 'seismic or fatigue' });
    expect(drilled).toMatchObject({ route: 'shear, drill', verdict: 'OK', hits: 0 });
    expect(drilled.note).toContain(
      'Hole: drill it; seismic or fatigue work: ask the engineer; drill or ream.',
    );
  });

  it('is punch and ream in EXC3 over 3 mm, the punch 2 mm smaller', () => {
    const reamed = checked({ ...holes, Hole: '22 mm' }, {}, { 'Job spec': 'EN 1090-2 EXC3' });
    expect(reamed.route).toBe('shear, punch, ream');
    expect(reamed.hits).toBe(2);
    expect(governsEach(reamed.findings, shopWith())).toContain('punch force, Ø20 mm');
  });

  it('is empty for a row that cannot be read', () => {
    expect(checked({ Grade: null })).toMatchObject({ route: '', verdict: 'Check input' });
  });
});

describe('holes in an angle without a gage', () => {
  const holes = { Hole: '11/16', Holes: 2, End: 2, Pitch: 2, Length: 6 };

  it('are read on the usual gage, and the note says so', () => {
    // AISC Manual Table 1-7A: leg 3, gage 1-3/4 (from memory)
    const angle = checked({ Section: 'L3X3X1/4', ...holes });
    expect(angle.note).toContain('usual gage 1-3/4 in taken');
    expect(checked({ Section: 'L4-1/2X3X1/4', ...holes }).note).toContain(
      'read as in the middle of the width',
    );
  });

  it('are Not checked for the die holder, since they may as well lie at the heel', () => {
    const angle = checked({ Section: 'L3X3X1/4', ...holes });
    expect(angle).toMatchObject({ verdict: 'Not checked', governs: 'punch die half width' });
    expect(angle.note).toMatch(
      /^Hole: Gage is blank, so punch die half width of Bay A was not checked\. Hole: Gage is blank, so the distances to the edges are not known\. Understood as: /,
    );
    expect(checked({ Section: 'L3X3X1/4', ...holes, Gage: '1-3/4' }).verdict).toBe('OK');
  });

  it('are OK so far where the press has no such limits: only the drawing is open', () => {
    const press = { 'Punch die half width': 'none', 'Punch throat': 'none' };
    expect(checked({ Section: 'L3X3X1/4', ...holes }, press).verdict).toBe('OK so far');
  });
});

describe('the notches and corner clips of a burned part', () => {
  const cuts = {
    'Notch width': 2,
    'Notch depth': 1,
    'Notch at': 'top edge 6',
    'Corner clip': 1,
    'Clip at': 'top left',
  };

  it('are burned with it: no notcher is asked', () => {
    const burned = checked({ Section: 'PL1/2X4', ...cuts, 'Cut by': 'burn' }, { Notcher: 'no' });
    expect(burned).toMatchObject({ verdict: 'Off press', route: 'burn' });
    expect(burned.note).toContain('burned with its notches and corner clips, as the row says');
    for (const by of ['saw', 'bought', 'press']) {
      const sawn = checked({ Section: 'PL1/2X4', ...cuts, 'Cut by': by }, { Notcher: 'no' });
      expect(sawn.verdict, by).toBe('No station');
      expect(sawn.route, by).toContain('notch');
    }
  });

  it('are machine cut edges to the holes beside them', () => {
    // AISC, bolt 3/4: 1-1/4 in to a sheared edge, 1 in to one that is burned.
    const holed = {
      ...cuts,
      Section: 'PL1/4X6',
      Hole: '13/16',
      Bolt: '3/4',
      'Edge kind': 'rolled',
      End: 6,
      Edge: 3.9,
    };
    expect(checked({ ...holed, 'Cut by': 'burn' }).verdict).toBe('OK');
    expect(checked({ ...holed, 'Cut by': 'saw' }).verdict).toBe('Edge short');
  });
});

describe('a tube or tee in a row', () => {
  it('is sawn: its mass is known and no press is asked', () => {
    const post = checked({ Section: 'HSS4X4X1/4', Length: 12, Qty: 2 });
    expect(post).toMatchObject({ verdict: 'Off press', route: 'saw', hits: 0 });
    expect(post.note).toContain('cut by saw');
    // 12.21 lb/ft, AISC Manual Part 1 (from memory); 2 pieces of 1 ft, 0.4536 kg a pound
    expect(post.massKg).toBeCloseTo(2 * 12.21 * 0.453_592, 1);
  });

  it('is Off press with its holes, too, which are drilled', () => {
    const post = checked({ Section: 'HSS4X4X1/4', Hole: '13/16' });
    expect(post).toMatchObject({ verdict: 'Off press', route: 'saw, drill', hits: 0 });
    expect(post.note).toMatch(/^Hole: drilled; no press station punches holes in HSS4X4X1\/4/);
  });
});

describe('a bend along the rolling direction', () => {
  // A36, 1/2 in: 1.5 t across the rolling direction, 2.25 t along it: V ≥ 6 · 1.5 · 1/2 = 4.5 or 6 · 2.25 · 1/2 = 6.75 in;
  // 10 t is 5 in. ASTM A6 Table X4.2.
  const bar = {
    Section: 'FB 1/2x12',
    'Cut by': 'saw',
    Length: 14,
    'Bend length': 12,
    'Bend at': 'left end 7',
  };
  const along = { ...bar, 'Bend length': 14, 'Bend at': 'bottom edge 6' };
  const press = { 'Bend V openings': '5, 7', 'Punch force': 400 };
  const wanted = (row: Row) =>
    checked(row, press).findings.flatMap((each) =>
      each.rule === 'vee opening' ? each.wantedMm / 25.4 : [],
    )[0];

  it('asks for half as much radius again in a bar, which is rolled along its length', () => {
    expect(wanted(bar)).toBeCloseTo(5, 6);
    expect(wanted(along)).toBeCloseTo(6.75, 6);
    expect(checked(along, { ...press, 'Bend V openings': '5' }).verdict).toBe('No tool');
  });

  it('is told of a plate, whose rolling direction is not known', () => {
    const plate = checked({ ...along, Section: 'PL1/2X12' }, press);
    expect(plate.note).toContain(
      'rolling direction of the plate not known: a bend along it needs half as much inside radius again',
    );
    expect(wanted({ ...along, Section: 'PL1/2X12' })).toBeCloseTo(5, 6);
    expect(checked(along, press).note).not.toContain('rolling direction');
  });
});

describe('holes and a bend in one row', () => {
  const bent = { Hole: '13/16', Edge: 2, End: 2, 'Bend length': 4 };

  it('are OK so far where the row does not say where the bend is', () => {
    expect(checked(bent)).toMatchObject({ verdict: 'OK so far', governs: 'Bend at' });
    expect(checked(bent).note).toMatch(
      /^Bend at is blank, so flanges, and holes beside the bends, were not checked\. Fill it in\. /,
    );
  });

  it('stay away from the bend by twice the thickness and the inside radius', () => {
    // The V on hand from 10 · 1/4 = 2-1/2 is 3 in: R = 3 / 6 = 1/2, 2 · 1/4 + 1/2 = 1 in from the rim, and the rim is
    // at 2 + 13/32 in.
    expect(checked({ ...bent, 'Bend at': 'left end 3-13/32' }).verdict).toBe('OK');
    const near = checked({ ...bent, 'Bend at': 'left end 3-3/8' });
    expect(near).toMatchObject({ verdict: 'Edge short', governs: 'hole to bend' });
    expect(near.note).toMatch(/^Hole: 31\/32 in from the rim to the bend is under 1 in \(press practice: /);
  });

  it('leave a flange that reaches over the V opening', () => {
    // 0.77 · 3 = 2.31 in
    expect(checked({ 'Bend length': 4, 'Bend at': 'right end 2.31' }).verdict).toBe('OK');
    const short = checked({ 'Bend length': 4, 'Bend at': 'right end 2.3' });
    expect(short).toMatchObject({ verdict: 'Edge short', governs: 'flange' });
    expect(short.note).toMatch(/^Bend: 2\.3 in from the line to the right end is under 2\.31 in /);
    const second = checked({ Length: 24, 'Bend length': 4, Bends: 2, 'Bend at': 'left end 6, right end 2' });
    expect(second.note).toMatch(/^Bend 2: 2 in from the line to the right end is under 2\.31 in /);
  });
});
