import { describe, expect, it } from 'vitest';
import { drawnAs, linesOf, partOf } from './partSupport.js';
import { corners, pathsOf } from './support.js';

describe('holes that are not punched', () => {
  it('of a round bar are on its axis and said to be drilled', () => {
    const drawing = partOf({ Section: 'RD 2', Length: 6, Hole: '7/16', Holes: 2, End: 1, Pitch: 4 });
    expect(drawing.points.map(({ label }) => label)).toEqual([
      'Hole, 1 of 2, Ø7/16, drilled: 1 in from the stop, 1 in from the edge at the fence.',
      'Hole, 2 of 2, Ø7/16, drilled: 5 in from the stop, 1 in from the edge at the fence.',
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

  it('lies across the part, its length towards the edge, as its edge distance is checked', () => {
    const drawing = partOf(row);
    const [path = ''] = pathsOf(drawing, (shape) => shape.kind === 'area' && shape.fill === 'paper');
    // The straight side at the right: 1-7/8 − 13/16 = 1.0625 in of the width of 6 in; then a half circle of 13/16 in.
    const [, x = '', y = '', straight = '', radius = ''] =
      /^M([\d.]+) ([\d.]+)v([\d.]+)a([\d.]+) /.exec(path) ?? [];
    const outline = corners(linesOf(drawing, 'outline')[0] ?? '').map(([, each]) => each);
    const pixelPerInch = (Math.max(...outline) - Math.min(...outline)) / 6;
    const [point] = drawing.points;
    expect(Number(straight) / pixelPerInch).toBeCloseTo(1.0625, 1);
    expect(Number(radius) / pixelPerInch).toBeCloseTo(13 / 32, 1);
    expect(Number(x) - (point?.x ?? 0)).toBeCloseTo(Number(radius), 1);
    expect(Number(y) + Number(straight) / 2).toBeCloseTo(point?.y ?? 0, 1);
  });

  it('is said to be taken so, in the sentence and in the table', () => {
    const said = 'slot drawn with its length towards the edge';
    expect(partOf(row).summary).toContain(said);
    expect(drawnAs(partOf(row), 'Hole')).toEqual([said]);
    expect(partOf({ ...row, Hole: '13/16' }).summary).not.toContain('slot');
  });
});

describe('holes beside other work', () => {
  it('that run over a cut as drawn are counted, those that touch it are not', () => {
    // The cut of 45° at 2 in across lies 2 in from the stop; a hole of 1 in touches it at 2 + 0.5 · √2 = 2.7071 in.
    const row = { 'Miter left': 45, Hole: 1, Holes: 1, Edge: 2 };
    expect(partOf({ ...row, End: 2.71 }).summary).not.toContain('over a cut');
    expect(partOf({ ...row, End: 2.7 }).summary).toContain('1 hole runs over a cut as drawn');
  });

  it('are counted where they lie wholly on what is cut off', () => {
    expect(partOf({ 'Miter left': 45, Hole: 1, Holes: 1, Edge: 3, End: 1 }).summary).toContain(
      '1 hole runs over a cut',
    );
  });

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

  it('and the whole length are dimensioned on request, the length also without holes', () => {
    const texts = (all: boolean) =>
      partOf({}, { all }).shapes.flatMap((shape) => (shape.kind === 'text' ? shape.text : []));
    expect(texts(true)).toContain('12');
    expect(texts(false)).not.toContain('12');
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
      Bends: 4,
    });
    expect(drawing.points.map(({ label }) => label.slice(0, 6))).toEqual([
      'Hole, ',
      'Hole, ',
      'Bend, ',
      'Bend, ',
    ]);
    expect(drawing.summary).toContain('2 bends lie in what is left out');
    const at8 = drawing.points[0]?.x ?? 0;
    const breaks = drawing.shapes.flatMap((shape) =>
      shape.kind === 'line' && shape.line === 'thin' ? Number(/M([\d.]+)/.exec(shape.path)?.[1]) : [],
    );
    expect(breaks).toHaveLength(2);
    for (const x of breaks) expect(Math.abs(x - at8)).toBeGreaterThan(6);
  });

  it('cuts through no hole of the end at the stop, nor of the far end', () => {
    // 45 − 2 · 8 = 29 in are left out where nothing is in the way: 8 and 37 in are the breaks.
    const leftOut = (end: number) =>
      partOf({ Length: 45, Hole: '13/16', Holes: 1, End: end }).shapes.flatMap((shape) =>
        shape.kind === 'text' && shape.text.includes('left out') ? shape.text : [],
      );
    expect(leftOut(20)).toEqual(['ends to scale, 29 in left out']);
    for (const end of [8, 37]) expect(leftOut(end)).not.toEqual(['ends to scale, 29 in left out']);
  });

  it('says what lies in what is left out', () => {
    const drawing = partOf({
      Length: 60,
      Hole: '13/16',
      Holes: 1,
      End: 30,
      'Notch width': 1,
      'Notch depth': 1,
    });
    expect(drawing.summary).toContain('1 hole, 1 notch lie in what is left out');
    const one = partOf({ Length: 60, 'Bend length': 4 });
    expect(one.summary).toContain('1 bend lies in what is left out');
    expect(one.points).toEqual([]);
  });
});
