import { describe, expect, it } from 'vitest';
import { corners, textAt } from './support.js';
import { drawnAs, linesOf, outlineInches, partOf, type Row } from './partSupport.js';

const places = (row: Row, lengthInch = 12) =>
  outlineInches(partOf(row), lengthInch).map(([x, y]) => [Number(x.toFixed(1)), Number(y.toFixed(1))]);

describe('corner clips', () => {
  it('cut the corner along and across to scale, at the operator and the far end where the row does not say', () => {
    expect(places({ 'Corner clip': '1-1/2x1' })).toEqual([
      [0, 0],
      [12, 0],
      [12, 3],
      [10.5, 4],
      [0, 4],
    ]);
    const drawing = partOf({ 'Corner clip': '1-1/2x1' });
    expect(drawing.summary).toContain("corners assumed at the operator's edge, far end");
    expect(drawing.points[0]?.label).toBe(
      "Corner clip, 1 of 1, 1-1/2 × 1 in: at the operator's edge, far end; which corner is assumed.",
    );
  });

  it('take as many corners as the row counts; all four leave nothing to assume', () => {
    const count = (corner: number) => places({ 'Corner clip': 1, Corners: corner }).length - 4;
    expect([1, 2, 3, 4, 5].map(count)).toEqual([1, 2, 3, 4, 4]);
    const four = partOf({ 'Corner clip': 1, Corners: 4 });
    expect(four.summary).toBe('PL1/4X4, 12 in long, with no holes, 4 corners clipped 1 × 1 in.');
    expect(drawnAs(four, 'Corner clip')).toEqual(['given']);
    expect(partOf({ 'Corner clip': 1, Corners: 5 }).summary).toContain(
      '5 corners clipped, of which 4 can be drawn',
    );
  });

  it('take square ends before mitred ones', () => {
    const [end] = partOf({ 'Corner clip': '1/2', 'Miter right': 30 })
      .points.map(({ label }) => label)
      .slice(-1);
    expect(end).toContain('end at the stop');
  });

  it('are drawn up to half the width and half the length at four corners, and not over', () => {
    const drawnPoints = (clip: string) => partOf({ 'Corner clip': clip, Corners: 4 }).points.length;
    expect([drawnPoints('1x2'), drawnPoints('1x2.01')]).toEqual([4, 0]);
    expect([drawnPoints('6x1'), drawnPoints('6.01x1')]).toEqual([4, 0]);
    const over = partOf({ 'Corner clip': '1x2.01', Corners: 4 });
    expect(over.summary).toContain('corner clips not drawn: they do not fit on the part');
    expect(drawnAs(over, 'Corner clip')).toEqual(['corner clips not drawn: they do not fit on the part']);
  });

  it('of an angle are at the toe; further ones are in the other leg', () => {
    const angle = { Section: 'L3x3x1/4', 'Corner clip': '1/2' };
    expect(partOf({ ...angle, Corners: 2 }).summary).toContain('corners assumed at the toe, both ends.');
    const four = partOf({ ...angle, Corners: 4 });
    expect(four.points).toHaveLength(2);
    expect(four.summary).toContain('2 corners of the other leg not drawn');
  });
});

describe('notches', () => {
  const three = { Section: 'PL1/4X6', Length: 18, 'Notch width': 2, 'Notch depth': 1, Notches: 3 };

  it('are spread evenly along the edge at the operator, to scale, and said to be', () => {
    // (18 − 3 · 2) / 4 = 3 in of steel between: middles at 4, 9, 14
    const bottoms = places(three, 18).filter(([, y]) => y === 5);
    expect(bottoms.map(([x]) => x).sort((a = 0, b = 0) => a - b)).toEqual([3, 5, 8, 10, 13, 15]);
    const { points, summary } = partOf(three);
    expect(points.map(({ label }) => label)[1]).toBe(
      "Notch, 2 of 3, 2 in wide, 1 in deep: middle 9 in from the stop, in the operator's edge; the place is assumed.",
    );
    expect(summary).toContain(
      "3 notches 2 × 1 in; places of the notches assumed: spread evenly along the operator's edge",
    );
  });

  it('lie between the corners that are cut off', () => {
    // 18 − 2 · 1 = 16 in of edge, (16 − 2) / 2 = 7 in at each side
    const one = partOf({ ...three, Notches: 1, 'Corner clip': 1, Corners: 1 });
    // 17 in of edge: (17 − 2) / 2 = 7.5, so the middle is at 8.5
    expect(one.points.at(-1)?.label).toContain('middle 8-1/2 in from the stop');
  });

  it('are drawn under the whole width and not at it', () => {
    const drawnPoints = (row: Row) => partOf({ ...three, Notches: 1, ...row }).points.length;
    expect([drawnPoints({ 'Notch depth': 5.9 }), drawnPoints({ 'Notch depth': 6 })]).toEqual([1, 0]);
    const angle = { Section: 'L3x3x1/4', Length: 10 };
    expect([
      drawnPoints({ ...angle, 'Notch depth': 2.7 }),
      drawnPoints({ ...angle, 'Notch depth': 2.75 }),
    ]).toEqual([1, 0]);
    expect(partOf({ ...three, 'Notch depth': 6 }).summary).toContain(
      'notches not drawn: they do not fit on the part',
    );
  });

  it('are drawn while steel is left between them', () => {
    expect(partOf({ ...three, Notches: 8 }).points).toHaveLength(8);
    expect(partOf({ ...three, Notches: 9 }).points).toHaveLength(0);
  });

  it('of an angle are in the toe', () => {
    const drawing = partOf({ ...three, Section: 'L3x3x1/4', Length: 10, Notches: 1 });
    expect(outlineInches(drawing, 10).filter(([, y]) => Math.abs(y - 1) < 0.05)).toHaveLength(2);
    expect(drawing.summary).toContain('in the middle of the toe');
  });
});

describe('bends', () => {
  it('are chain lines across the part, spread evenly, with their name', () => {
    const drawing = partOf({ 'Bend length': 4, Bends: 2 });
    const lines = linesOf(drawing, 'centre').map(corners);
    const [outline = []] = linesOf(drawing, 'outline').map(corners);
    const left = outline[0]?.[0] ?? 0;
    const pixelPerInch = ((outline[1]?.[0] ?? 0) - left) / 12;
    // 12 · 1/3 and 12 · 2/3
    expect(lines.map(([[x = 0] = []]) => Number(((x - left) / pixelPerInch).toFixed(1)))).toEqual([4, 8]);
    expect(textAt(drawing, 'bend').y).toBeGreaterThan(outline[2]?.[1] ?? 0);
    expect(drawing.summary).toContain(
      '2 bends 4 in long; place of the bends assumed: across the part, spread evenly',
    );
    expect(drawing.points.map(({ label }) => label)[0]).toBe(
      'Bend, 1 of 2, 4 in long, across the part: 4 in from the stop; the place is assumed.',
    );
  });

  it('lie across up to the width of the part, along up to its length, and are not drawn beyond', () => {
    const said = (length: number) => drawnAs(partOf({ 'Bend length': length }), 'Bend')[0];
    expect(said(4)).toBe('place of the bend assumed: across the part, in the middle');
    expect(said(4.1)).toBe('place of the bend assumed: along the part, in the middle');
    expect(said(12)).toBe('place of the bend assumed: along the part, in the middle');
    expect(said(12.1)).toBe('bends not drawn: they are longer than the part');
  });

  it('have one name for all where they lie close', () => {
    expect(textAt(partOf({ 'Bend length': 4, Bends: 12 }), '12 bends')).toBeDefined();
  });
});

describe('work no press station makes in a section', () => {
  it('is not drawn in a channel, and said', () => {
    const { summary, points } = partOf({
      Section: 'C6x8.2',
      'Corner clip': 1,
      'Notch width': 1,
      'Notch depth': 1,
      'Bend length': 6,
    });
    for (const work of ['corner clips', 'notches', 'bends'])
      expect(summary).toContain(`${work} not drawn: no press station makes them in this section`);
    expect(points).toEqual([]);
  });

  it('is not a bend in an angle, which has corner clips and notches', () => {
    const { summary, points } = partOf({
      Section: 'L3x3x1/4',
      'Notch width': 1,
      'Notch depth': 1,
      'Bend length': 3,
    });
    expect(summary).toContain('bends not drawn');
    expect(points).toHaveLength(1);
  });
});
