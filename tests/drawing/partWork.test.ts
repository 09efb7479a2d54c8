import { describe, expect, it } from 'vitest';
import { corners, textAt } from './support.js';
import { drawnAs, inchesOf, linesOf, outlineInches, partOf, type Row, sortedInches } from './partSupport.js';

const places = (row: Row, lengthInch = 12) => sortedInches(outlineInches(partOf(row), lengthInch));

describe('corner clips', () => {
  const clip = { 'Corner clip': '1-1/2x1' };

  it('cut the corner that the row names, along and across to scale', () => {
    expect(places({ ...clip, 'Clip at': 'top right' })).toEqual([
      [0, 0],
      [0, 4],
      [10.5, 4],
      [12, 0],
      [12, 3],
    ]);
    const drawing = partOf({ ...clip, 'Clip at': 'top right' });
    // Its middle: 12 − 0.75 in, and 0.5 in from the top edge.
    expect(drawing.points[0]?.label).toBe(
      'Corner clip, 1 of 1, 1-1/2 × 1 in: its middle 11-1/4 in from the stop, 1/2 in from the edge at the fence.',
    );
    const inches = inchesOf(drawing, 12);
    expect(sortedInches(drawing.points.map(({ x, y }) => inches([x, y])))).toEqual([[11.25, 3.5]]);
    expect(drawnAs(drawing, 'Corner clip')).toEqual(['given']);
  });

  it('are dashed where the row does not say which corners, and said to be', () => {
    const open = partOf({ ...clip, Corners: 2 });
    expect(linesOf(open, 'hidden')).toHaveLength(2);
    expect(open.summary).toContain('Clip at would settle it: one of several ways is drawn, dashed');
    expect(open.points[0]?.label).toContain('; which corner is not given.');
    expect(drawnAs(open, 'Corner clip')).toEqual(['one of several: Clip at would settle it']);
  });

  it('of all four corners leave nothing to choose', () => {
    const four = partOf({ 'Corner clip': 1, Corners: 4 });
    expect(four.summary).toBe('PL1/4X4, 12 in long, with no holes, 4 corners clipped 1 × 1 in.');
    expect(drawnAs(four, 'Corner clip')).toEqual(['given']);
    expect(places({ 'Corner clip': 1, Corners: 4 })).toHaveLength(8);
  });

  it('are drawn under half the width and half the length at four corners, and not from there on', () => {
    const drawnPoints = (size: string) => partOf({ 'Corner clip': size, Corners: 4 }).points.length;
    expect([drawnPoints('1x1.99'), drawnPoints('1x2.01')]).toEqual([4, 0]);
    expect([drawnPoints('5.99x1'), drawnPoints('6.01x1')]).toEqual([4, 0]);
    const over = partOf({ 'Corner clip': '1x2.01', Corners: 4 });
    expect(over.summary).toContain('the cuts do not leave one piece, so they are not drawn');
    expect(drawnAs(over, 'Corner clip')).toEqual(['not drawn']);
  });

  it('of an angle are at the toe; those of the other leg are counted', () => {
    const angle = { Section: 'L3x3x1/4', 'Corner clip': '1/2' };
    const two = partOf({ ...angle, Corners: 2, 'Clip at': 'long leg toe left; long leg toe right' });
    expect(sortedInches(outlineInches(two, 12)).filter(([, y]) => y === 3)).toEqual([
      [0.5, 3],
      [11.5, 3],
    ]);
    const four = partOf({ ...angle, Corners: 4 });
    expect(four.points).toHaveLength(2);
    expect(four.summary).toContain('2 clipped corners in another leg or flange are not drawn');
  });
});

describe('notches', () => {
  const plate = { Section: 'PL1/4X6', Length: 18, 'Notch width': 2, 'Notch depth': 1 };

  it('stand where the row puts them: in an edge, at a corner, in an end', () => {
    const three = partOf({ ...plate, Notches: 3, 'Notch at': 'bottom edge 5; top right; left end' });
    expect(sortedInches(outlineInches(three, 18))).toEqual([
      [0, 0],
      [0, 2],
      [0, 4],
      [0, 6],
      [1, 2],
      [1, 4],
      [4, 0],
      [4, 1],
      [6, 0],
      [6, 1],
      [16, 5],
      [16, 6],
      [18, 0],
      [18, 5],
    ]);
    const inches = inchesOf(three, 18);
    expect(sortedInches(three.points.map(({ x, y }) => inches([x, y])))).toEqual([
      [1, 3],
      [5, 1],
      [16, 5],
    ]);
    expect(three.points[0]?.label).toBe(
      'Notch, 1 of 3, 2 in wide, 1 in deep: its bottom 5 in from the stop, 5 in from the edge at the fence.',
    );
    expect(drawnAs(three, 'Notch')).toEqual(['given']);
  });

  it('without a place are not drawn, and counted', () => {
    const { summary, points } = partOf({ ...plate, Notches: 3 });
    expect(summary).toContain('3 notches 2 × 1 in; Notch at gives no place, so 3 notches are not drawn');
    expect(points).toEqual([]);
  });

  it('are drawn under the whole width and not at it', () => {
    const drawnPoints = (depth: number) =>
      partOf({ ...plate, 'Notch depth': depth, 'Notch at': 'top edge 9' }).points.length;
    expect([drawnPoints(5.9), drawnPoints(6)]).toEqual([1, 0]);
  });

  it('of an angle are in the leg that the row names; the other leg is not drawn', () => {
    const angle = { ...plate, Section: 'L4x3x1/4', Length: 10 };
    const long = partOf({ ...angle, 'Notch at': 'long leg toe edge 5' });
    expect(sortedInches(outlineInches(long, 10)).filter(([, y]) => y === 3)).toEqual([
      [4, 3],
      [6, 3],
    ]);
    const short = partOf({ ...angle, 'Notch at': 'short leg toe edge 5' });
    expect(short.points).toEqual([]);
    expect(short.summary).toContain('1 notch in another leg or flange is not drawn');
  });
});

describe('bends', () => {
  const bent = { 'Bend length': 4, Bends: 2, 'Bend at': 'left end 4; right end 3' };

  it('are chain lines where the row puts them, with their name', () => {
    const drawing = partOf(bent);
    const inches = inchesOf(drawing, 12);
    const xs = linesOf(drawing, 'center').map((path) => inches(corners(path)[0] ?? [0, 0])[0]);
    expect(xs.map((x) => Number(x.toFixed(1)))).toEqual([4, 9]);
    for (const text of ['4 bend', '9 bend', '2 bends 4 in long']) expect(textAt(drawing, text)).toBeDefined();
    expect(drawing.summary).toContain('2 bends 4 in long');
    expect(drawing.points.map(({ label }) => label)[0]).toBe(
      'Bend, 1 of 2, 4 in long, across the part: 4 in from the stop, 2 in from the edge at the fence.',
    );
  });

  it('lie along the part where they are given from an edge', () => {
    const drawing = partOf({ 'Bend length': 12, 'Bend at': 'bottom edge 1' });
    const [line = ''] = linesOf(drawing, 'center');
    const ys = corners(line).map((place) => Number(inchesOf(drawing, 12)(place)[1].toFixed(2)));
    expect(ys).toEqual([1, 1]);
    expect(drawing.points[0]?.label).toContain('along the part');
  });

  it('without a place are not drawn, and counted', () => {
    const drawing = partOf({ 'Bend length': 4, Bends: 2 });
    expect(linesOf(drawing, 'center')).toEqual([]);
    expect(drawnAs(drawing, 'Bend')).toEqual(['Bend at gives no place, so 2 bends are not drawn']);
  });

  it('have labels that stand upright where they lie close', () => {
    const at = Array.from({ length: 6 }, (_, each) => `left end ${each + 3}`).join('; ');
    expect(textAt(partOf({ 'Bend length': 4, Bends: 6, 'Bend at': at }), '3 bend').turned).toBe(true);
  });
});
