import { describe, expect, it } from 'vitest';
import { corners, pathsOf, textAt } from './support.js';
import { drawnAs, inchesOf, linesOf, outlineInches, partOf, type Row, sortedInches } from './partSupport.js';

describe('a miter on a plate', () => {
  const both = { 'Miter left': 45, 'Miter right': 30, 'Long side': 'bottom' };

  it('moves the corners of the short side by width times tan of the angle', () => {
    // 4 · tan 45° = 4; 4 · tan 30° = 4 · 0.57735 = 2.3094; 12 − 2.3094 = 9.6906
    const bottom = [
      [0, 0],
      [4, 4],
      [9.69, 4],
      [12, 0],
    ];
    expect(sortedInches(outlineInches(partOf(both), 12))).toEqual(bottom);
    const top = partOf({ ...both, 'Long side': 'top' });
    expect(sortedInches(outlineInches(top, 12))).toEqual(bottom.map(([x, y = 0]) => [x, 4 - y]));
  });

  it('may lean the same way at both ends', () => {
    const parallel = partOf({ ...both, 'Miter right': 45, 'Long side': 'left top, right bottom' });
    expect(sortedInches(outlineInches(parallel, 12))).toEqual([
      [0, 4],
      [4, 0],
      [8, 4],
      [12, 0],
    ]);
    expect(parallel.summary).not.toContain('short side');
  });

  it('has the angle at each cut, a line from its square end and an arc', () => {
    const drawing = partOf(both);
    expect(textAt(drawing, 'miter 45°').x).toBeLessThan(textAt(drawing, 'miter 30°').x);
    const thin = linesOf(drawing, 'thin').map(corners);
    const [arc = []] = thin.filter((line) => line.length === 9);
    const [[x = 0, y = 0] = [], last = [0, 0]] = [arc[0], arc.at(-1)];
    // From r straight up to r at 45° from there: r · sin 45° to the right and r · (1 − cos 45°) lower.
    expect((last[1] - y) / (last[0] - x)).toBeCloseTo((1 - Math.SQRT1_2) / Math.SQRT1_2, 1);
  });

  it('says its angles and what the short side is', () => {
    const { summary } = partOf(both);
    expect(summary).toContain('miter 45° left, 30° right');
    // 12 − 4 − 2.3094 = 5.6906
    expect(summary).toContain('the short side is then 5.691 in');
  });

  it('is dashed where the row does not say which side is long, and said to be', () => {
    const open = partOf({ 'Miter left': 45, 'Miter right': 30 });
    expect(open.summary).toContain('Long side would settle it: one of several ways is drawn, dashed');
    expect(linesOf(open, 'hidden')).toHaveLength(2);
    expect(linesOf(partOf(both), 'hidden')).toHaveLength(0);
    expect(drawnAs(open, 'Miter left')).toEqual(['long point at the bottom edge, one of several ways']);
  });

  it('is a point of the arrow keys in the middle of the cut and a row of the table', () => {
    const drawing = partOf(both);
    expect(drawing.points.map(({ label }) => label)).toEqual([
      'Miter left, 45° from square: takes 4 in off the short side; the long point at the bottom edge.',
      'Miter right, 30° from square: takes 2.309 in off the short side; the long point at the bottom edge.',
    ]);
    const inches = inchesOf(drawing, 12);
    expect(sortedInches(drawing.points.slice(0, 1).map(({ x, y }) => inches([x, y])))).toEqual([[2, 2]]);
    expect(drawing.table.headings).toEqual(['Work', 'Size', 'Count', 'Drawn as']);
    expect(drawing.table.rows.map(([work, size]) => [work, size])).toEqual([
      ['Piece', 'PL1/4X4, 12 in long'],
      ['Miter left', '45°'],
      ['Miter right', '30°'],
    ]);
    expect(drawnAs(drawing, 'Miter left')).toEqual(['long point at the bottom edge']);
  });

  it('is drawn until both meet in a point, and square beyond, said so', () => {
    // 2 · 4 · tan 45° = 8
    const meeting = { 'Miter left': 45, 'Miter right': 45, 'Long side': 'bottom' };
    const point = partOf({ ...meeting, Length: 8 });
    expect(sortedInches(outlineInches(point, 8))).toEqual([
      [0, 0],
      [4, 4],
      [8, 0],
    ]);
    const over = partOf({ ...meeting, Length: 7.9 });
    expect(sortedInches(outlineInches(over, 7.9))).toEqual([
      [0, 0],
      [0, 4],
      [7.9, 0],
      [7.9, 4],
    ]);
    expect(over.summary).toContain('the cuts do not leave one piece, so they are not drawn');
    expect(drawnAs(over, 'Miter right')).toEqual(['not drawn']);
    expect(over.points).toEqual([]);
  });

  it('touches the stop with its point, a square end with its middle', () => {
    const stopInch = (row: Row) => {
      const drawing = partOf(row);
      const [stop = ''] = pathsOf(drawing, (shape) => shape.kind === 'area' && shape.fill === 'solid');
      return inchesOf(drawing, 12)(corners(stop)[0] ?? [0, 0])[1];
    };
    expect(stopInch({})).toBeCloseTo(2, 2);
    expect(stopInch(both)).toBeLessThan(0.25);
    expect(stopInch({ ...both, 'Long side': 'top' })).toBeGreaterThan(3.75);
    const atHeel = stopInch({ ...both, Section: 'L3x3x1/4', 'Long side': 'heel', 'Miter leg': 'both' });
    expect(atHeel).toBeGreaterThan(0);
    expect(atHeel).toBeLessThan(0.25);
  });

  it('leaves a square end square and unsaid', () => {
    const one = partOf({ 'Miter right': 20, 'Long side': 'bottom' });
    // 4 · tan 20° = 4 · 0.36397 = 1.4559; 12 − 1.4559 = 10.5441
    expect(sortedInches(outlineInches(one, 12))).toEqual([
      [0, 0],
      [0, 4],
      [10.54, 4],
      [12, 0],
    ]);
    expect(one.points).toHaveLength(1);
    expect(partOf({ 'Miter left': 0 }).summary).toBe('PL1/4X4, 12 in long, with no holes or other work.');
  });

  it('has room for both without a length in the row, and no short side', () => {
    const drawing = partOf({ Length: null, 'Miter left': 60, 'Miter right': 60 });
    expect(drawing.points).toHaveLength(2);
    expect(drawing.summary).toContain('the row gives no length, drawn 4 widths long');
    expect(drawing.summary).not.toContain('left out');
    expect(drawing.summary).not.toContain('short side');
  });
});

describe('a miter on other sections', () => {
  const angle = {
    Section: 'L3x3x1/4',
    Length: 10,
    'Miter left': 45,
    'Miter right': 22.5,
    'Long side': 'heel',
    'Miter leg': 'both',
  };

  it('of an angle at the heel, which lies at the operator', () => {
    const drawing = partOf(angle);
    // 3 · tan 45° = 3; 3 · tan 22.5° = 3 · 0.414214 = 1.24264; 10 − 1.24264 = 8.75736
    expect(sortedInches(outlineInches(drawing, 10))).toEqual([
      [0, 0],
      [3, 3],
      [8.76, 3],
      [10, 0],
    ]);
    expect(drawing.points[0]?.label).toBe(
      'Miter left, 45° from square: takes 3 in off the short side; the long point at the heel.',
    );
    expect(drawnAs(drawing, 'Miter left')).toEqual(['long point at the heel']);
    // The double line ends on the cuts: 0.25 in from the heel, 0.25 in · tan 45° from the stop.
    const [, inner = []] = linesOf(drawing, 'outline').map(corners);
    const [x, y] = inchesOf(drawing, 10)(inner[0] ?? [0, 0]);
    expect(x).toBeCloseTo(0.25, 1);
    expect(y).toBeCloseTo(0.25, 1);
  });

  it('of one leg leaves the other to the heel’s length, which is drawn where its holes decide', () => {
    const holes = { Hole: '13/16', Holes: 1, Bolt: '3/4', Gage: '1-3/4', End: 6, Leg: 'long' };
    const other = partOf({ ...angle, ...holes, Section: 'L4x3x1/4', 'Miter leg': 'short' });
    expect(sortedInches(outlineInches(other, 10)).map(([x]) => x)).toEqual([0, 0, 10, 10]);
    expect(other.summary).toContain('the miter is in another leg, which is not drawn');
    expect(drawnAs(other, 'Miter left')).toEqual(['not drawn']);
  });

  it('of a channel is at the side that the row names', () => {
    const row = { Section: 'C6x8.2', Hole: '9/16', Holes: 1, Length: 6, 'Miter left': 30 };
    const flange = partOf({ ...row, Leg: 'flange', Gage: '1-1/8', 'Long side': 'bottom' });
    // 1.92 · tan 30° = 1.92 · 0.57735 = 1.1085 off the toe
    expect(sortedInches(outlineInches(flange, 6))).toContainEqual([1.11, 1.92]);
    const web = partOf({ ...row, Leg: 'web', Edge: 2, 'Long side': 'top' });
    // 6 · tan 30° = 3.4641
    expect(sortedInches(outlineInches(web, 6))).toContainEqual([3.46, 0]);
  });

  it('is true in the ends of a broken part', () => {
    const drawing = partOf({ ...angle, Length: 60 });
    const [first = [], second = []] = linesOf(drawing, 'outline')
      .map(corners)
      .filter((line) => line.length === 4);
    const [near, far] = (first[0]?.[0] ?? 0) < (second[0]?.[0] ?? 0) ? [first, second] : [second, first];
    const ys = near.map(([, y]) => y);
    const pixelPerInch = (Math.max(...ys) - Math.min(...ys)) / 3;
    expect(Math.abs((near[1]?.[0] ?? 0) - (near[2]?.[0] ?? 0)) / pixelPerInch).toBeCloseTo(3, 1);
    expect(Math.abs((far[2]?.[0] ?? 0) - (far[1]?.[0] ?? 0)) / pixelPerInch).toBeCloseTo(1.24264, 1);
  });
});
