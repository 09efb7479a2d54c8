import { describe, expect, it } from 'vitest';
import { corners, pathsOf, textAt } from './support.js';
import { drawnAs, linesOf, outlineInches, partOf, type Row } from './partSupport.js';

/** Digits of a picture: a hundredth of an inch. */
const close = (inches: readonly (readonly [number, number])[]) =>
  inches.map(([x, y]) => [expect.closeTo(x, 2) as number, expect.closeTo(y, 2) as number]);

describe('a miter on a plate', () => {
  const both = { 'Miter left': 45, 'Miter right': 30 };

  it('moves the corners of the short side by width times tan of the angle', () => {
    // 4 · tan 45° = 4; 4 · tan 30° = 4 · 0.57735 = 2.3094; 12 − 2.3094 = 9.6906
    expect(outlineInches(partOf(both), 12)).toEqual(
      close([
        [0, 0],
        [12, 0],
        [9.6906, 4],
        [4, 4],
      ]),
    );
  });

  it('has the angle at each cut, a line from its square end and an arc', () => {
    const drawing = partOf(both);
    expect(textAt(drawing, 'miter 45°').x).toBeLessThan(textAt(drawing, 'miter 30°').x);
    const thin = linesOf(drawing, 'thin').map(corners);
    expect(thin.filter((line) => line.length === 2)).toHaveLength(2);
    const [arc = []] = thin.filter((line) => line.length === 9);
    const [[x = 0, y = 0] = [], last = [0, 0]] = [arc[0], arc.at(-1)];
    // From straight down to 45° from it: as far to the right as it is still down.
    const radius = y - (last[1] - (last[0] - x));
    expect(last[0] - x).toBeCloseTo(radius * Math.SQRT1_2, 0);
  });

  it('says what it assumed and what the short side is then', () => {
    const { summary } = partOf(both);
    expect(summary).toContain('miter 45° left, 30° right');
    expect(summary).toContain('assumed that the left end lies at the stop and the long side at the fence');
    // 12 − 4 − 2.3094 = 5.6906
    expect(summary).toContain('the short side is then 5.691 in');
  });

  it('is a point of the arrow keys in the middle of the cut and a row of the table', () => {
    const drawing = partOf(both);
    expect(drawing.points.map(({ label }) => label)).toEqual([
      'Miter left, 45° from square: takes 4 in off the short side; the long side at the fence assumed.',
      'Miter right, 30° from square: takes 2.309 in off the short side; the long side at the fence assumed.',
    ]);
    const [[left = 0] = []] = corners(linesOf(drawing, 'outline')[0] ?? '');
    const right = corners(linesOf(drawing, 'outline')[0] ?? '')[1]?.[0] ?? 0;
    expect(((drawing.points[0]?.x ?? 0) - left) / (right - left)).toBeCloseTo(2 / 12, 2);
    expect(drawing.table.headings).toEqual(['Work', 'Size', 'Count', 'Drawn as']);
    expect(drawing.table.rows.map(([work, size]) => [work, size])).toEqual([
      ['Piece', 'PL1/4X4, 12 in long'],
      ['Miter left', '45°'],
      ['Miter right', '30°'],
    ]);
    expect(drawnAs(drawing, 'Miter left')).toEqual([
      'angle given; left end at the stop and long side at the fence assumed',
    ]);
  });

  it('is drawn until both meet in a point, and square beyond, said so', () => {
    // 2 · 4 · tan 45° = 8
    const meeting = { 'Miter left': 45, 'Miter right': 45 };
    const point = partOf({ ...meeting, Length: 8 });
    expect(outlineInches(point, 8)).toEqual(
      close([
        [0, 0],
        [8, 0],
        [4, 4],
        [4, 4],
      ]),
    );
    const over = partOf({ ...meeting, Length: 7.9 });
    expect(outlineInches(over, 7.9).map(([x]) => x)).toEqual(
      [0, 7.9, 7.9, 0].map((x) => expect.closeTo(x, 1) as number),
    );
    expect(over.summary).toContain('the miters meet within the length, so the ends are drawn square');
    expect(drawnAs(over, 'Miter right')).toEqual(['not drawn: the miters meet within the length']);
    expect(over.points).toEqual([]);
  });

  it('touches the stop with its point, a square end with its middle', () => {
    const stopInch = (row: Row, widthInch: number) => {
      const drawing = partOf(row);
      const ys = (linesOf(drawing, 'outline').map(corners)[0] ?? []).map(([, y]) => y);
      const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
      const [stop = ''] = pathsOf(drawing, (shape) => shape.kind === 'area' && shape.fill === 'solid');
      return (((corners(stop)[0]?.[1] ?? 0) - top) / (bottom - top)) * widthInch;
    };
    expect(stopInch({}, 4)).toBeCloseTo(2, 2);
    expect(stopInch(both, 4)).toBeLessThan(0.25);
    const atHeel = stopInch({ ...both, Section: 'L3x3x1/4' }, 3);
    expect(atHeel).toBeGreaterThan(2.75);
    expect(atHeel).toBeLessThan(3);
  });

  it('leaves a square end square and unsaid', () => {
    const one = partOf({ 'Miter right': 20 });
    // 4 · tan 20° = 4 · 0.36397 = 1.4559; 12 − 1.4559 = 10.5441
    expect(outlineInches(one, 12)[2]).toEqual([expect.closeTo(10.5441, 1), expect.closeTo(4, 1)]);
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
  it('of an angle keeps the heel, which lies at the operator', () => {
    const drawing = partOf({ Section: 'L3x3x1/4', Length: 10, 'Miter left': 45, 'Miter right': 22.5 });
    // 3 · tan 45° = 3; 3 · tan 22.5° = 3 · 0.414214 = 1.24264; 10 − 1.24264 = 8.75736
    expect(outlineInches(drawing, 10)).toEqual(
      close([
        [3, 0],
        [8.75736, 0],
        [10, 3],
        [0, 3],
      ]),
    );
    expect(drawing.summary).toContain(
      'assumed that the left end lies at the stop and the long side (the heel) at the fence',
    );
    expect(drawing.points[0]?.label).toBe(
      'Miter left, 45° from square: takes 3 in off the short side; the long side (the heel) at the fence assumed.',
    );
    expect(drawnAs(drawing, 'Miter left')).toEqual([
      'angle given; left end at the stop and long side (the heel) at the fence assumed',
    ]);
    // The double line ends on the cuts: 2.75 in from the toe, 0.25 in · tan 45° from the stop.
    const [outline = [], inner = []] = linesOf(drawing, 'outline').map(corners);
    const left = Math.min(...outline.map(([x]) => x));
    const pixelPerInch = (Math.max(...outline.map(([x]) => x)) - left) / 10;
    expect(((inner[0]?.[0] ?? 0) - left) / pixelPerInch).toBeCloseTo(0.25, 1);
  });

  it('of a channel on its flange keeps the back of the web, on its web the far edge', () => {
    const row = { Section: 'C6x8.2', Hole: '9/16', Holes: 1, Length: 6, 'Miter left': 30 };
    const flange = partOf({ ...row, Leg: 'flange', Gage: '1-1/8' });
    // 1.92 · tan 30° = 1.92 · 0.57735 = 1.1085 off the toe
    expect(outlineInches(flange, 6)[0]).toEqual([expect.closeTo(1.1085, 1), 0]);
    expect(flange.summary).toContain('the long side (the back of the web) at the fence');
    const web = partOf({ ...row, Leg: 'web', Edge: 2 });
    expect(outlineInches(web, 6)[0]).toEqual([0, 0]);
    expect(web.summary).toContain('the long side at the fence');
  });

  it('is true in the ends of a broken part', () => {
    const drawing = partOf({ Section: 'L3x3x1/4', Length: 60, 'Miter left': 45, 'Miter right': 22.5 });
    const [near = [], far = []] = linesOf(drawing, 'outline')
      .map(corners)
      .filter((line) => line.length === 4);
    const ys = near.map(([, y]) => y);
    const pixelPerInch = (Math.max(...ys) - Math.min(...ys)) / 3;
    expect(((near[1]?.[0] ?? 0) - (near[2]?.[0] ?? 0)) / pixelPerInch).toBeCloseTo(3, 1);
    expect(((far[2]?.[0] ?? 0) - (far[1]?.[0] ?? 0)) / pixelPerInch).toBeCloseTo(1.24264, 1);
  });
});
