import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../src/core/quantity/cellValue.js';
import type { Drawing } from '../../src/drawing/drawing.js';
import { partDrawing } from '../../src/drawing/part/partDrawing.js';
import { shopWith } from '../support/sampleShop.js';
import { boxed } from './partSupport.js';
import { corners, drawingOfRow, pathsOf, textAt } from './support.js';

const shop = shopWith();
const plate = ['BP1', 'PL1/2X10', 'A36', 10, '13/16', 4, '3/4', 2, 1.75, 6.5, 6, null, null];
const angle = ['A1', 'L3x3x1/4', 'A36', 72, '13/16', 2, '3/4', null, 1, 70, '1-3/4', null, null];

const flange = ['C1', 'C6x8.2', 'A36', 10, '9/16', 2, '1/2', null, 1.5, 6, '1-1/8', 'flange', null];

/** The ends of the fence. */
const fenceBar = (drawing: Drawing) =>
  corners(pathsOf(drawing, (shape) => shape.kind === 'line' && shape.line === 'heavy')[0] ?? '');

/** The left, top, right and bottom of the outline of an unbroken part. */
function frame(drawing: Drawing): [number, number, number, number] {
  const [outline = ''] = pathsOf(drawing, (shape) => shape.kind === 'line' && shape.line === 'outline');
  const places = corners(outline);
  const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

describe('a plate on the press', () => {
  it('has its holes where the row puts them: from the left end and from the bottom edge', () => {
    const drawing = drawingOfRow(plate, shop);
    const [left, top, right, bottom] = frame(drawing);
    const inches = drawing.points.map(({ x, y }) => [
      Number((((x - left) / (right - left)) * 10).toFixed(2)),
      Number((((bottom - y) / (bottom - top)) * 10).toFixed(2)),
    ]);
    expect(inches).toEqual([
      [1.75, 2],
      [8.25, 2],
      [1.75, 8],
      [8.25, 8],
    ]);
  });

  it('has the fence above, a heavy bar, the stop at the left, solid, and the operator below', () => {
    const drawing = drawingOfRow(plate, shop);
    const [left, top, , bottom] = frame(drawing);
    expect(fenceBar(drawing).every(([, y]) => y < top)).toBe(true);
    const [stop = ''] = pathsOf(drawing, (shape) => shape.kind === 'area' && shape.fill === 'solid');
    expect(Math.max(...corners(stop).map(([x]) => x))).toBeLessThan(left);
    expect(textAt(drawing, 'operator').y).toBeGreaterThan(bottom);
  });

  it('gives every hole two center lines', () => {
    const centers = pathsOf(
      drawingOfRow(plate, shop),
      (shape) => shape.kind === 'line' && shape.line === 'center',
    );
    expect(centers).toHaveLength(8);
  });

  it('is measured from the stop and from the fence, its hole size told once with its count', () => {
    const drawing = drawingOfRow(plate, shop);
    const texts = drawing.shapes.flatMap((shape) => (shape.kind === 'text' ? shape.text : []));
    // 4 holes, End 2, Pitch 6, Edge 1-3/4 and Gage 6-1/2 on 10 × 10.
    const wanted = ['2', '8', '10 in long', '1-3/4', '8-1/4', '10 wide', '4 × Ø13/16'];
    expect(texts.sort()).toEqual([...wanted, 'fence', 'operator', 'stop'].sort());
    expect(boxed(drawing)).toEqual([]);
  });

  it('dimensions the distance that decides, heavy, boxed, with what it must be', () => {
    const drawing = drawingOfRow(
      ['P', 'PL3/8X4', 'A36', 6, '13/16', 2, '3/4', 2, 2.25, 1.5, null, null, null],
      shop,
    );
    expect(boxed(drawing)).toEqual(['1-1/2 < 2']);
    const [first, second] = drawing.points;
    const heavy = pathsOf(drawing, (shape) => shape.kind === 'line' && shape.line === 'heavy').at(-1) ?? '';
    expect(corners(heavy).map(([x]) => x)).toEqual(
      [first?.x, second?.x].map((x) => expect.closeTo(x ?? 0, 1) as number),
    );
    expect(drawing.summary).toContain('Hole: spacing 1-1/2 in, needs 2 in or more');
  });

  it('dimensions the far edge where a gage leaves too little there', () => {
    const drawing = drawingOfRow(
      ['P', 'PL3/8X8', 'A36', 10, '13/16', 4, '3/4', 2, 2, 6, 5.25, null, null],
      shop,
    );
    expect(boxed(drawing)).toEqual(['3/4 < 1-1/4']);
  });

  it('dimensions the far end, from the last hole, where that is too near', () => {
    // 2 + 4 = 6 in, so 1 in is left of 7.
    const drawing = drawingOfRow(
      ['P', 'PL3/8X4', 'A36', 7, '13/16', 2, '3/4', 2, 2, 4, null, null, null],
      shop,
    );
    expect(boxed(drawing)).toEqual(['1 < 1-1/4']);
    const heavy = pathsOf(drawing, (shape) => shape.kind === 'line' && shape.line === 'heavy').at(-1) ?? '';
    const right = frame(drawing)[2];
    expect(corners(heavy).map(([x]) => x)).toEqual(
      [drawing.points[1]?.x, right].map((x) => expect.closeTo(x ?? 0, 1) as number),
    );
  });

  it('draws what the row leaves open as it is read, and says so', () => {
    const drawing = drawingOfRow(
      ['P', 'PL3/8X4', 'A36', 9, '13/16', 2, null, null, null, null, null, null, null],
      shop,
    );
    const [left, top, right, bottom] = frame(drawing);
    expect(
      drawing.points.map(({ x }) => ((x - left) / (right - left)) * 9).map((mm) => Number(mm.toFixed(2))),
    ).toEqual([3, 6]);
    expect(drawing.points.map(({ y }) => y)).toEqual(
      [0, 1].map(() => expect.closeTo((top + bottom) / 2, 1) as number),
    );
    const said =
      'read as evenly spaced; read as in the middle of the width; End, Pitch and Edge would place them';
    expect(drawing.summary).toContain(said);
    expect(drawing.table.rows[1]?.at(-1)).toBe(said);
  });
});

describe('a part longer than 4 to 1', () => {
  it('is broken in the middle, its ends to one scale, and says so', () => {
    const drawing = drawingOfRow(angle, shop);
    expect(drawing.notes).toEqual(['Ends to scale, 60 in left out.']);
    expect(drawing.summary).toContain('the middle is left out, the ends are to scale');
    const [near, far] = drawing.points;
    const outlines = pathsOf(drawing, (shape) => shape.kind === 'line' && shape.line === 'outline');
    const xs = outlines.flatMap(corners).map(([x]) => x);
    const [left, right] = [Math.min(...xs), Math.max(...xs)];
    // 1 in from the stop; 71 of 72 in, so 1 in from the far end.
    expect((near?.x ?? 0) - left).toBeCloseTo(right - (far?.x ?? 0), 1);
    const zigzags = pathsOf(drawing, (shape) => shape.kind === 'line' && shape.line === 'thin').filter(
      (path) => corners(path).length === 6,
    );
    expect(zigzags).toHaveLength(2);
  });

  it('is drawn whole, its length not to scale, where holes lie all along it', () => {
    const drawing = drawingOfRow(
      ['A', 'L3x3x1/4', 'A36', 72, '13/16', 6, '3/4', null, 2, 3, '1-3/4', null, null],
      shop,
    );
    expect(drawing.points).toHaveLength(6);
    expect(drawing.notes).toEqual(['Length not to scale.']);
  });

  it('is whole at exactly 4 to 1', () => {
    expect(
      drawingOfRow(['P', 'PL1/4X3', 'A36', 12, null, null, null, null, null, null, null, null, null], shop)
        .summary,
    ).not.toContain('left out');
  });
});

describe('other sections on the press', () => {
  it('draws the heel of an angle as a double line at the operator, its toe at the throat', () => {
    const drawing = drawingOfRow(angle, shop);
    const outlines = pathsOf(drawing, (shape) => shape.kind === 'line' && shape.line === 'outline');
    const ys = outlines.flatMap(corners).map(([, y]) => y);
    const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
    const inner = outlines.filter((path) => corners(path).every(([, y]) => y > top && y < bottom));
    expect(inner).toHaveLength(2);
    for (const path of inner) expect(bottom - (corners(path)[0]?.[1] ?? 0)).toBeLessThan((bottom - top) / 6);
    // The gage 1-3/4 leaves 1-1/4 to the toe of a 3 in leg.
    expect(((drawing.points[0]?.y ?? 0) - top) / (bottom - top)).toBeCloseTo(1.25 / 3, 2);
  });

  it.each([
    ['an angle', angle, 'heel'],
    ['a channel on its flange', flange, 'back of the web'],
  ])('has the fence along the heel of %s: a bar below it, distances from there', (_, row, edge) => {
    const drawing = drawingOfRow(row, shop);
    const bar = fenceBar(drawing);
    const outlines = pathsOf(drawing, (shape) => shape.kind === 'line' && shape.line === 'outline');
    const ys = outlines.flatMap(corners).map(([, y]) => y);
    const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
    expect(bar.every(([, y]) => y > bottom && y < bottom + 10)).toBe(true);
    expect(textAt(drawing, 'fence').y).toBeGreaterThan(bottom);
    expect(textAt(drawing, 'operator').y).toBeGreaterThan(bar[0]?.[1] ?? 0);
    expect(textAt(drawing, 'toe, into the throat').y).toBeLessThan(top);
    expect(drawing.points[0]?.label).toContain(`from the ${edge} at the fence.`);
    expect(drawing.summary).toContain(`; ${edge} at the fence, toe into the throat;`);
    expect(drawing.table.rows[0]?.at(-1)).toBe(`given; ${edge} at the fence, toe into the throat`);
  });

  it('says how far holes are from the heel: the gage, not the distance to the toe', () => {
    expect(drawingOfRow(angle, shop).points.map(({ label }) => label)).toEqual([
      'Hole, 1 of 2, Ø13/16: 1 in from the stop, 1-3/4 in from the heel at the fence.',
      'Hole, 2 of 2, Ø13/16: 71 in from the stop, 1-3/4 in from the heel at the fence.',
    ]);
    // Without a gage: 3 − 1 = 2 in, and 1.92 − 0.72 = 1.2 in of the flange of a C6x8.2.
    const edge = (row: CellValue[], distance: number) =>
      row.map((cell, at) => (at === 7 ? distance : at === 10 ? null : cell));
    expect(drawingOfRow(edge(angle, 1), shop).points[0]?.label).toContain('2 in from the heel');
    expect(drawingOfRow(edge(flange, 0.72), shop).points[0]?.label).toContain(
      '1.2 in from the back of the web',
    );
  });

  it('measures the gage of an angle from the heel at the fence, and shows in its end view which leg is down', () => {
    const drawing = drawingOfRow(angle, shop);
    expect(textAt(drawing, '1-3/4').y).toBeCloseTo((drawing.points[0]?.y ?? 0) + 4, 0);
    expect(drawing.end?.words).toBe('leg 3 down');
    expect(drawingOfRow(plate, shop).end).toBeUndefined();
  });

  it('leaves the fence at the far edge of a channel on its web, of a plate and of a bar', () => {
    const web = flange.map((cell, at) => (at === 11 ? 'web' : at === 10 ? null : at === 7 ? 2 : cell));
    const bar = ['R', 'RD 2', 'A36', 8, '7/16', 1, null, null, 2, null, null, null, null];
    // The holes lie so far from the bottom edge: 6 − 2, 10 − 2 and 2 − 1 in from the fence.
    for (const [row, inches] of [
      [web, 4],
      [plate, 8],
      [bar, 1],
    ] as const) {
      const drawing = drawingOfRow(row, shop);
      expect(fenceBar(drawing).every(([, y]) => y < frame(drawing)[1])).toBe(true);
      expect(drawing.points[0]?.label).toContain(`${inches} in from the edge at the fence`);
      expect(drawing.summary).not.toContain('throat');
    }
  });

  it('draws the flanges of a channel hidden, and the axis of a round bar', () => {
    const channel = drawingOfRow(
      ['C', 'C6x8.2', 'A36', 20, null, null, null, null, null, null, null, null, null],
      shop,
    );
    expect(pathsOf(channel, (shape) => shape.kind === 'line' && shape.line === 'hidden')).toHaveLength(2);
    const round = drawingOfRow(
      ['R', 'RD 1', 'A36', 3, null, null, null, null, null, null, null, null, null],
      shop,
    );
    expect(pathsOf(round, (shape) => shape.kind === 'line' && shape.line === 'center')).toHaveLength(1);
  });

  it('is a sentence where the section cannot be read', () => {
    const job = {
      qty: 1,
      groups: [],
      miterLeftRad: 0,
      miterRightRad: 0,
      miterRad: 0,
      problems: [],
      readings: [],
    };
    expect(partDrawing({ job, unit: 'in', length: '' })).toEqual({
      problem: 'There is no drawing: the section of this row could not be read.',
    });
  });

  it.each(['13/16x1-7/8', 'sq 3/4', 'rect 1x2', 'hex 7/8'])('draws a hole %s about its center', (hole) => {
    const drawing = drawingOfRow(
      ['P', 'PL3/8X6', 'A36', 8, hole, 1, null, 3, 4, null, null, null, null],
      shop,
    );
    const [path = ''] = pathsOf(drawing, (shape) => shape.kind === 'area' && shape.fill === 'paper');
    const [start] = corners(path);
    expect(Math.abs((start?.[0] ?? 0) - (drawing.points[0]?.x ?? 0))).toBeLessThan(30);
    expect(path).not.toContain('NaN');
  });

  it('is drawn as before', () => {
    expect(drawingOfRow(angle, shop).shapes).toMatchSnapshot();
  });
});
