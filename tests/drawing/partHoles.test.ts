import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxed, drawnAs, inchesOf, partOf, type Row, sortedInches } from './partSupport.js';
import { corners, pathsOf } from './support.js';

describe('holes that are not punched', () => {
  it('of a round bar are on its axis and said to be drilled', () => {
    const drawing = partOf({ Section: 'RD 2', Length: 6, Hole: '7/16', Holes: 2, End: 1, Pitch: 4 });
    expect(drawing.points.map(({ label }) => label)).toEqual([
      'Hole, 1 of 2, Ø7/16, drilled: 1 in from the stop, 1 in from the edge at the fence, as read.',
      'Hole, 2 of 2, Ø7/16, drilled: 5 in from the stop, 1 in from the edge at the fence, as read.',
    ]);
    expect(drawing.summary).toContain('with 2 × Ø7/16, drilled');
    expect(drawnAs(drawing, 'Hole')[0]).toContain('drilled');
  });

  it('by the job’s specification are said to be: a hole under the thickness is, one of the thickness is not', () => {
    // EN 1090-2: the hole at least the thickness.
    const row = { Section: 'PL3/4X4', Hole: '11/16', Holes: 1, Edge: 2, End: 2 };
    const settings = { 'Job spec': 'EN 1090-2 EXC2' };
    expect(partOf(row, { settings }).summary).toContain('1 × Ø11/16, drilled');
    expect(partOf({ ...row, Hole: '3/4' }, { settings }).summary).not.toContain('drilled');
    expect(partOf(row).summary).not.toContain('drilled');
    const reamed = partOf({ ...row, Hole: '15/16' }, { settings: { 'Job spec': 'EN 1090-2 EXC3' } });
    expect(reamed.points[0]?.label).toContain('punched 2 mm under and reamed');
  });

  it('are not called drilled where the setting cannot be read', () => {
    const settings = { 'Job spec': 'no such specification' };
    expect(partOf({ Hole: '13/16', Holes: 1 }, { settings }).summary).not.toContain('drilled');
  });
});

describe('a slot', () => {
  const row = { Section: 'PL3/8X6', Length: 8, Hole: '13/16x1-7/8', Holes: 1, Bolt: '3/4', Edge: 3, End: 4 };

  /** From side to side of the hole's path, in inches along and across the part. */
  function extent(slot: Row): [number, number] {
    const drawing = partOf(slot);
    const [path = ''] = pathsOf(drawing, (shape) => shape.kind === 'area' && shape.fill === 'paper');
    const inches = [...path.matchAll(/([\d.]+) ([\d.]+)(?=[LAZ])/g)]
      .map(([, x, y]): [number, number] => [Number(x), Number(y)])
      .map(inchesOf(drawing, 8));
    const spread = (at: 0 | 1) =>
      Math.max(...inches.map((place) => place[at])) - Math.min(...inches.map((place) => place[at]));
    return [spread(0), spread(1)];
  }

  it('lies as the row says: its straight sides so long, so far apart', () => {
    // 1-7/8 − 13/16 = 1.0625 in long, 13/16 = 0.8125 in apart.
    expect(extent({ ...row, Slot: 'along' })).toEqual([expect.closeTo(1.0625, 1), expect.closeTo(0.8125, 1)]);
    expect(extent({ ...row, Slot: 'across' })).toEqual([
      expect.closeTo(0.8125, 1),
      expect.closeTo(1.0625, 1),
    ]);
  });

  it('is dashed where the row does not say, and said to be', () => {
    const said = 'Slot would settle it: one of several ways is drawn, dashed';
    expect(partOf(row).summary).toContain(said);
    expect(drawnAs(partOf(row), 'Hole')).toEqual([said]);
    const dashed = (slot: Row) =>
      pathsOf(partOf(slot), (shape) => shape.kind === 'area' && shape.line === 'hidden').length;
    expect([dashed(row), dashed({ ...row, Slot: 'along' }), dashed({ ...row, Hole: '13/16' })]).toEqual([
      1, 0, 0,
    ]);
    expect(partOf({ ...row, Slot: 'along' }).summary).not.toContain('Slot');
  });
});

describe('holes that are read, not given', () => {
  const dashed = (row: Row) =>
    pathsOf(partOf(row), (shape) => shape.kind === 'area' && shape.line === 'hidden').length;
  const four = { Section: 'PL3/8X6', Length: 10, Hole: '13/16', Holes: 4, Bolt: '3/4', Edge: 1.5, End: 1.5 };

  it('are dashed, the one that the row places is not', () => {
    expect(dashed(four)).toBe(3);
    expect(dashed({ ...four, Pitch: 7, Gage: 3 })).toBe(0);
    expect(partOf(four).points.map(({ label }) => label.endsWith(', as read.'))).toEqual([
      false,
      true,
      true,
      true,
    ]);
    expect(partOf(four).summary).toContain('read as one in each corner; Pitch and Gage would place them');
  });

  it('are given where the shop spreads what has no pitch', () => {
    const drawing = partOf(four, { settings: { 'Holes without pitch': 'even' } });
    expect(drawing.points.filter(({ label }) => label.endsWith('as read.'))).toEqual([]);
  });
});

describe('every hole', () => {
  it('of every group of the face is drawn where it lies, with its own shape', () => {
    const drawing = partOf({
      Section: 'PL3/8X6',
      Length: 10,
      Hole: '13/16',
      Holes: '2 each end',
      Edge: 2,
      End: 1.5,
      Gage: 2,
      'Hole 2': 'sq 1/2',
      'Holes 2': 3,
      'Holes at 2': 'x4 y1; x5 y3; x6 y5',
    });
    const inches = inchesOf(drawing, 10);
    expect(sortedInches(drawing.points.map(({ x, y }) => inches([x, y])))).toEqual([
      [1.5, 2],
      [1.5, 4],
      [4, 1],
      [5, 3],
      [6, 5],
      [8.5, 2],
      [8.5, 4],
    ]);
    const holes = pathsOf(drawing, (shape) => shape.kind === 'area' && shape.fill === 'paper');
    expect(holes.filter((path) => path.includes('a'))).toHaveLength(4);
    expect(holes.filter((path) => corners(path).length === 4)).toHaveLength(3);
  });

  it('is drawn on its own face: the one that decides, else that of the first holes', () => {
    const legs = {
      Section: 'L4x3x1/4',
      Length: 10,
      Hole: '13/16',
      Holes: 2,
      Bolt: '3/4',
      End: 3,
      Pitch: 4,
      Gage: 2,
      Leg: 'long',
      'Hole 2': '13/16',
      'Holes 2': 1,
      'Bolt 2': '3/4',
      'End 2': 5,
      'Gage 2': '1-3/4',
      'Leg 2': 'short',
    };
    expect(partOf(legs).points).toHaveLength(2);
    expect(partOf(legs).summary).toContain('holes in another leg or flange are not drawn');
    const short = partOf({ ...legs, 'End 2': '1/2' });
    expect(short.points.map(({ label }) => label.slice(0, 6))).toEqual(['Hole 2']);
    expect(boxed(short)).toHaveLength(1);
  });

  it('of any layout is a point where it lies, or counted among what is left out', () => {
    fc.assert(
      fc.property(
        fc.record({
          Length: fc.integer({ min: 6, max: 90 }),
          Holes: fc.integer({ min: 1, max: 8 }),
          Edge: fc.constantFrom(null, 1, 2),
          End: fc.constantFrom(null, 1.5, 3),
          Pitch: fc.constantFrom(null, 3, 5),
        }),
        (given) => {
          const drawing = partOf({ Hole: '9/16', ...given });
          const out = Number(/(\d+) holes? (?:lie|lies) in what is left out/.exec(drawing.summary)?.[1] ?? 0);
          expect(drawing.points.length + out).toBe(given.Holes);
          if (out > 0 || (drawing.notes ?? []).length > 0 || drawing.summary.includes('left out')) return;
          const inches = inchesOf(drawing, given.Length);
          const [first] = drawing.points.map(({ x, y }) => inches([x, y]));
          if (given.End !== null) expect(first?.[0]).toBeCloseTo(given.End, 1);
          if (given.Edge !== null) expect(first?.[1]).toBeCloseTo(given.Edge, 1);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('holes beside other work', () => {
  it('have their distances in the table, other work has none', () => {
    const { table } = partOf({
      Hole: '13/16',
      Holes: 1,
      End: 2,
      Edge: 2,
      'Notch width': 1,
      'Notch depth': 1,
    });
    expect(table.headings).toEqual([
      'Work',
      'Size',
      'Count',
      'End, in',
      'Edge, in',
      'Pitch, in',
      'Gage, in',
      'Drawn as',
    ]);
    expect(table.rows.map((cells) => cells.slice(0, 7))).toEqual([
      ['Piece', 'PL1/4X4, 12 in long', '1', '–', '–', '–', '–'],
      ['Hole', 'Ø13/16', '1', '2', '2', 'not given', 'not given'],
      ['Notch', '1 × 1 in', '1', '–', '–', '–', '–'],
    ]);
  });

  it.each([
    [`24'-0`, {}],
    ['200 mm', {}],
    ['50 mm', { Hole: '13/16', Holes: 1, End: '50 mm', Edge: 2 }],
  ])('have sizes as typed: %s', (typed, row) => {
    const length = 'Hole' in row ? 12 : typed;
    const { shapes, summary, table, points } = partOf({ Length: length, ...row });
    const texts = shapes.flatMap((shape) => (shape.kind === 'text' ? shape.text : []));
    expect(texts.join(' | ')).toContain(typed);
    const all = [...texts, summary, ...table.rows.flat(), ...points.map(({ label }) => label)].join(' | ');
    expect(all).not.toMatch(/288|7\.874|1\.969/);
  });
});

describe('the break of a long part', () => {
  it('cuts through no hole, notch or bend', () => {
    // Usually 2 widths, 8 in, are shown of each end: a hole and a bend lie just there.
    const drawing = partOf({
      Length: 40,
      Hole: '13/16',
      Holes: 2,
      End: 8,
      Pitch: 24,
      'Bend length': 4,
      'Bend at': 'left end 8; left end 32',
      Bends: 2,
    });
    expect(drawing.points.map(({ label }) => label.slice(0, 6))).toEqual([
      'Hole, ',
      'Hole, ',
      'Bend, ',
      'Bend, ',
    ]);
    const at8 = drawing.points[0]?.x ?? 0;
    const breaks = pathsOf(drawing, (shape) => shape.kind === 'line' && shape.line === 'thin')
      .map(corners)
      .filter((line) => line.length === 6)
      .map(([[x] = [0]]) => x);
    expect(breaks).toHaveLength(2);
    for (const x of breaks) expect(Math.abs(x - at8)).toBeGreaterThan(6);
  });

  it('cuts through no hole of the end at the stop, nor of the far end', () => {
    // 45 − 2 · 8 = 29 in are left out where nothing is in the way: 8 and 37 in are the breaks.
    const notes = (end: number) => partOf({ Length: 45, Hole: '13/16', Holes: 1, End: end }).notes;
    expect(notes(3)).toEqual(['Ends to scale, 29 in left out.']);
    expect(notes(20)).toEqual(['Length not to scale.']);
    for (const end of [8, 37]) expect(notes(end)).not.toEqual(['Ends to scale, 29 in left out.']);
  });

  it('is none where work lies in the middle: the part is drawn whole, its length not to scale', () => {
    const notch = { 'Notch width': 1, 'Notch depth': 1, 'Notch at': 'bottom edge 30' };
    for (const work of [notch, { 'Bend length': 4, 'Bend at': 'left end 30' }]) {
      const drawing = partOf({ Length: 60, ...work });
      expect(drawing.notes).toEqual(['Length not to scale.']);
      expect(drawing.points).toHaveLength(1);
    }
  });
});
