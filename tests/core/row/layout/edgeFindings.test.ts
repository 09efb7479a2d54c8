// Whether the holes of a row lie on its part, and how near its ends, edges and cuts they come. The places are added up by
// hand from end, pitch, edge and gage.
import { describe, expect, it } from 'vitest';
import { checkedRow, type Row, sayEach } from '../../../support/checkedRow.js';
import { bayAInMillimeters, settingTable, shopWith } from '../../../support/sampleShop.js';

const shop = shopWith(bayAInMillimeters, { settings: settingTable({ Units: 'mm' }) });
/** 35 + 3 · 90 = 305 mm. */
const four: Row = { Section: 'PL10x150', Hole: 18, Holes: 4, Edge: 35, End: 35, Pitch: 90 };

function checked(row: Row) {
  return checkedRow({ Qty: 1, Grade: 'S275', Length: 200, ...row }, shop);
}

/** What is refused of the places of holes. */
const offPart = (row: Row) =>
  sayEach(
    checked(row).findings.filter(({ rule }) => rule === 'hole off the part'),
    shop,
  );

/** The first sentence of the note, and the word. */
function told(row: Row): [word: string, sentence: string] {
  const { verdict, note } = checked(row);
  return [verdict, /^[^.]*(?:\.\d[^.]*)*\./.exec(note)?.[0] ?? ''];
}

const under = (from: string, to: string) =>
  `Hole: 0 mm from the rim to the ${from} is under ${to} mm (press practice: the steel left must be at least the thickness and half the hole).`;

describe('holes along a part', () => {
  it('whose centers lie beyond its length are told with what to correct', () => {
    const { verdict, governs } = checked(four);
    expect({ verdict, governs }).toEqual({ verdict: 'Check input', governs: 'Hole' });
    expect(offPart(four)).toEqual([
      'Hole: the center of a hole lies 105 mm beyond the right end; the part is 200 mm long. Correct Length, End or Pitch.',
    ]);
  });

  it('stand in two lines where a plate has a gage: half as many along it', () => {
    // 35 + 1 · 90 = 125 mm; six of them reach to 35 + 2 · 90 = 215 mm.
    expect(offPart({ ...four, Gage: 80 })).toEqual([]);
    expect(offPart({ ...four, Holes: 6, Gage: 80 })).toEqual([
      expect.stringContaining('lies 15 mm beyond the right end; the part is 200 mm long.'),
    ]);
  });

  it('are Edge short from where the rim touches the far end', () => {
    // 305 + 18 / 2 = 314 mm; press practice leaves the thickness, 10 mm: 324 mm.
    expect(told({ ...four, Length: 304.9 })[0]).toBe('Check input');
    expect(told({ ...four, Length: 313.9 })).toEqual([
      'Edge short',
      'Hole: the hole runs 0.1 mm over the right end.',
    ]);
    expect(told({ ...four, Length: 314 })).toEqual(['Edge short', under('right end', '10')]);
    expect(checked({ ...four, Length: 324, Bolt: 'none' }).verdict).toBe('OK');
  });

  it('need their pitches and the steel at each end where the row gives no end distance', () => {
    // 3 · 90 = 270 mm; with both halves of a hole 288 mm, with 10 mm of steel at either end 308 mm.
    const open = { ...four, End: null, Bolt: 'none' };
    expect(told({ ...open, Length: 250 })).toEqual([
      'Check input',
      'Hole: the center of a hole lies 10 mm beyond the left end; the part is 250 mm long.',
    ]);
    expect(told({ ...open, Length: 287 })).toEqual([
      'Edge short',
      'Hole: the hole runs 0.5 mm over the left end.',
    ]);
    expect(checked({ ...open, Length: 307 }).verdict).toBe('Edge short');
    expect(checked({ ...open, Length: 309 }).verdict).toBe('OK so far');
  });

  it('one alone, or several without a pitch, are held to the end distance', () => {
    for (const Holes of [1, 3]) {
      const row = { ...four, Holes, Pitch: null };
      expect(told({ ...row, End: 191 })).toEqual(['Edge short', under('right end', '10')]);
      expect(told({ ...row, End: 192 })[1]).toBe('Hole: the hole runs 1 mm over the right end.');
      expect(offPart({ ...row, End: 215 })).toEqual([
        'Hole: the center of a hole lies 15 mm beyond the right end; the part is 200 mm long. Correct Length or End.',
      ]);
    }
  });

  it('are told by their own columns', () => {
    const second = { Section: 'L80x80x8', 'Hole 2': 18, 'Holes 2': 4, 'End 2': 35, 'Pitch 2': 90 };
    expect(offPart(second)).toEqual([
      'Hole 2: the center of a hole lies 105 mm beyond the right end; the part is 200 mm long. Correct Length, End 2 or Pitch 2.',
    ]);
  });

  it('are not judged where the place is not certain', () => {
    expect(offPart({ ...four, Length: null })).toEqual([]);
    expect(offPart({ ...four, Pitch: null })).toEqual([]);
    // In a web the gage is between two lines; in a flange all four holes stand in one.
    const channel = { ...four, Section: 'C8X11.5', Edge: null, Gage: 33 };
    expect(offPart(channel)).toEqual([]);
    expect(checked(channel).note).toMatch(/beyond the right end; .* It depends on Leg: fill it in\./);
    expect(offPart({ ...channel, Leg: 'flange' })).toHaveLength(1);
    expect(offPart({ ...channel, Leg: 'web' })).toEqual([]);
  });

  it('of a mitered part are judged from its long point: its length is that of the long side', () => {
    // The last hole is 305 mm from the left end, and the miter takes nothing of the right one.
    const mitered = { ...four, 'Miter left': 45, 'Long side': 'bottom' };
    expect(offPart({ ...mitered, Length: 304 })).toHaveLength(1);
    expect(offPart({ ...mitered, Length: 324 })).toEqual([]);
  });
});

describe('the far end', () => {
  // M16: 28 mm at a sheared end (AISC 360-10 Table J3.4M); 125 + 28 = 153.
  const two: Row = { ...four, Holes: 2, Bolt: 'M16', 'End kind': 'sheared' };

  it('is held to the least end distance where it is nearer than the end the row gives', () => {
    expect(checked({ ...two, Length: 153 }).verdict).toBe('OK');
    expect(checked({ ...two, Length: 152 })).toMatchObject({
      verdict: 'Edge short',
      governs: 'end distance',
    });
    expect(told({ ...two, Length: 152 })[1]).toBe(
      'Hole: 27 mm from the center to the right end is under 28 mm (AISC, sheared edge, bolt M16).',
    );
  });

  it('is not told again where both ends are the same', () => {
    const short = checked({ ...two, End: 27, Length: 27 + 90 + 27 });
    expect(short.findings.filter(({ verdict }) => verdict === 'Edge short')).toHaveLength(1);
  });

  it('is open where it is not known', () => {
    for (const open of [{ End: null }, { Pitch: null }])
      expect(checked({ ...two, Length: 152, ...open }).verdict).toBe('OK so far');
    expect(checked({ ...two, Length: null }).open).toContain('nothing was checked against the far end');
  });
});

describe('holes across a part', () => {
  it('are Edge short where the second line runs over the far edge, Check input where it lies beyond', () => {
    // 150 − 18 / 2 = 141 mm.
    const row = { ...four, Length: 400, Edge: 70 };
    expect(told({ ...row, Gage: 71 })).toEqual(['Edge short', under('top edge', '10')]);
    expect(told({ ...row, Gage: 80 })).toEqual(['Edge short', 'Hole: the hole runs 9 mm over the top edge.']);
    expect(checked({ ...row, Gage: 80 }).note).not.toContain('is under');
    expect(offPart({ ...row, Gage: 82 })).toEqual([
      'Hole: the center of a hole lies 2 mm beyond the top edge; the part is 150 mm wide. Correct Edge or Gage.',
    ]);
  });

  it.each<[string, Row, string]>([
    [
      'an edge distance',
      { Edge: 160 },
      'Hole: the center of a hole lies 10 mm beyond the top edge; the part is 150 mm wide. Correct Edge.',
    ],
    [
      'a gage of a leg',
      { Section: 'L80x80x8', Edge: null, Gage: 82 },
      'Hole: the center of a hole lies 2 mm beyond the toe; the leg is 80 mm wide. Correct Gage.',
    ],
    [
      'a gage of a flange',
      { Section: 'C8X11.5', Leg: 'flange', Edge: null, Gage: 60 },
      'Hole: the center of a hole lies 2.6 mm beyond the toe; the flange is 57.4 mm wide. Correct Gage.',
    ],
  ])('are told where %s alone is beyond it', (_what, row, text) => {
    expect(offPart({ ...four, Holes: 1, Pitch: null, ...row })).toEqual([text]);
  });

  it('may not reach into what stands up beside a face', () => {
    // The rim is 16 − 9 = 7 mm from the heel, the other leg 8 mm thick.
    const leg = { ...four, Section: 'L80x80x8', Holes: 1, Pitch: null, Edge: null, Gage: 16 };
    expect(checked(leg).note).toContain(
      'Hole: 7 mm from the rim to the heel is under 8 mm (or the hole cuts into the other leg).',
    );
    expect(checked({ ...leg, Gage: 17 }).note).not.toContain('cuts into');
  });
});

describe('a hole at a miter', () => {
  /** A miter of 45° moves the end by as much as the hole lies from the long side: 44 mm on the line of the hole. */
  const angle: Row = {
    Section: 'L75x75x6',
    Length: 600,
    Hole: 14,
    Bolt: 'none',
    End: 44,
    Gage: 44,
    'Miter left': 45,
  };
  const known = { ...angle, 'Miter leg': 'both', 'Long side': 'heel' };

  it('that lies on the cut is open until the row says which leg is mitered, and which side is long', () => {
    expect(checked(angle)).toMatchObject({ verdict: 'OK so far' });
    expect(told(angle)[1]).toBe('Hole: the hole runs 7 mm over the miter at the left end.');
    expect(checked(angle).note).toMatch(/It depends on .*Long side.*: fill them in\./);
    expect(checked(known).verdict).toBe('Edge short');
    expect(checked({ ...angle, 'Miter left': null }).verdict).toBe('OK');
  });

  it('is measured across the cut: 1 mm along the part is 0.707 mm', () => {
    // Press practice leaves max(6, 14 / 2) = 7 mm beside the rim: 14 mm across the cut are 14 · √2 = 19.80 mm along.
    expect(checked({ ...known, End: 44 + 19.9 }).verdict).toBe('OK');
    expect(checked({ ...known, End: 44 + 19.7 }).verdict).toBe('Edge short');
    expect(told({ ...known, End: 44 + 9.9 })).toEqual(['Edge short', under('miter at the left end', '7')]);
  });

  it('is told at the right end, too', () => {
    const right = { ...known, 'Miter left': null, 'Miter right': 45, End: 'right 44' };
    expect(told(right)[1]).toBe('Hole: the hole runs 7 mm over the miter at the right end.');
  });

  it('of a plate in the middle of the width is cut whichever side is long', () => {
    const plate = { Section: 'PL10x100', Hole: 14, Bolt: 'none', Edge: 50, End: 62, 'Miter left': 45 };
    // 12 mm along the part are 8.5 across the cut. At 30 mm from the bottom edge: 32 mm, or −8 mm with the long side on top.
    expect(checked(plate).verdict).toBe('Edge short');
    expect(checked({ ...plate, Edge: 30 })).toMatchObject({ verdict: 'OK so far', governs: 'Long side' });
  });
});

describe('a hole at a clipped corner', () => {
  // The clip takes 40 mm of both edges: on the line 25 mm from the edge it ends 15 mm from the end.
  const clipped = {
    ...four,
    Section: 'PL8x150',
    Holes: 1,
    Pitch: null,
    Bolt: 'none',
    Hole: 14,
    Edge: 25,
    'Corner clip': 40,
  };
  const all = { ...clipped, Corners: 4 };

  it('is Edge short where every corner is clipped', () => {
    // Press practice leaves 8 mm beside the rim: 15 mm across the cut are 15 · √2 = 21.21 mm along: 36.21 mm.
    expect(checked({ ...all, End: 36.3 }).verdict).toBe('OK');
    expect(checked({ ...all, End: 36.1 }).verdict).toBe('Edge short');
    // (20 + 25 − 40) / √2 = 3.54 mm across the cut, less 7.
    expect(told({ ...all, End: 20 })[1]).toBe('Hole: the hole runs 3.46 mm into clipped corner 1.');
  });

  it('is open where it may be another corner that is clipped', () => {
    const one = { ...clipped, Corners: 1, End: 36 };
    expect(checked(one)).toMatchObject({ verdict: 'OK so far', governs: 'Clip at' });
    expect(checked({ ...one, 'Clip at': 'bottom left' }).verdict).toBe('Edge short');
    expect(checked({ ...one, 'Clip at': 'top left' }).verdict).toBe('OK');
    expect(checked({ ...one, Corners: null, 'Corner clip': null }).verdict).toBe('OK');
  });

  it('is not told where the clips do not fit, which is', () => {
    const { verdict, note } = checked({ ...all, 'Corner clip': 120, End: 36 });
    expect(verdict).toBe('Check input');
    expect(note).toMatch(/^Clipped corner 1 runs into clipped corner 2\. Correct their sizes or places\. /);
    expect(note).not.toContain('Hole:');
  });
});
