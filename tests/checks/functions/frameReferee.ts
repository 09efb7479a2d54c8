// The pieces of a frame laid out as polygons by a general-purpose geometry library.
import Flatten from '@flatten-js/core';
import { expect } from 'vitest';

const { Box, Matrix, Point, Polygon, Segment } = Flatten;
const close = 1e-6;

export interface AskedFrame {
  wide: number;
  high: number;
  bar: number;
  toes: 'flat' | 'in' | 'out';
  kerf: number;
}

interface Piece {
  polygon: Flatten.Polygon;
  /** From the outside of the frame to its opening. */
  inward: Flatten.Vector;
  leg: string;
}

/** Every piece of the answer as a trapezoid, in its place in the frame, seen with the standing legs up. */
function laidOut(cells: readonly (readonly unknown[])[], { wide, high, bar }: AskedFrame): Piece[] {
  const [headings = [], ...rows] = cells;
  const value = (row: readonly unknown[], heading: string) => row[headings.indexOf(heading)];
  const lengths = (name: string) => {
    const row = rows.find((each) => [name, 'all sides'].includes(String(value(each, 'Piece'))));
    if (!row) throw new Error(`no ${name}`);
    return { long: Number(value(row, 'Long')), short: Number(value(row, 'Short')), row };
  };
  // Each place: how often it is turned by a right angle, and where the left long point then lies.
  const places = [
    { name: 'top and bottom', turns: 0, at: [0, 0] },
    { name: 'sides', turns: 1, at: [wide, 0] },
    { name: 'top and bottom', turns: 2, at: [wide, high] },
    { name: 'sides', turns: 3, at: [0, high] },
  ] as const;
  return places.map(({ name, turns, at: [x, y] }) => {
    const { long, short, row } = lengths(name);
    const inset = bar * Math.tan((Number(value(row, 'Miter left')) * Math.PI) / 180);
    const corners = [
      new Point(0, 0),
      new Point(long, 0),
      new Point(inset + short, bar),
      new Point(inset, bar),
    ];
    const matrix = new Matrix().translate(x, y).rotate((turns * Math.PI) / 2);
    const moved = corners.map((corner) => corner.transform(matrix));
    const inward = new Flatten.Vector(0, 1).rotate((turns * Math.PI) / 2);
    return { polygon: new Polygon(moved), inward, leg: String(value(row, 'Leg')) };
  });
}

/** No overlap, no gap, the sizes asked for, and each cut of the hand that its leg is laid for. */
export function expectFrameCloses(cells: readonly (readonly unknown[])[], asked: AskedFrame): void {
  const { wide, high, bar, toes, kerf } = asked;
  const pieces = laidOut(cells, asked);
  const [headings = [], ...rows] = cells;
  const column = (heading: string) => rows.map((row) => Number(row[headings.indexOf(heading)]));
  expect(column('Qty').reduce((sum, qty) => sum + qty, 0)).toBe(4);
  const long = column('Long');
  column('Push').forEach((push, at) => expect(push - (long[at] ?? 0)).toBeCloseTo(kerf * Math.SQRT2, 9));

  // The outside: the box around all. The clear size: the box that no piece reaches into, touched by every piece.
  const around = pieces.reduce((box, { polygon }) => box.merge(polygon.box), new Box(0, 0, 0, 0));
  [around.xmin, around.ymin].forEach((edge) => expect(Math.abs(edge)).toBeLessThan(close));
  expect(Math.abs(around.xmax - wide)).toBeLessThan(close);
  expect(Math.abs(around.ymax - high)).toBeLessThan(close);
  const clear = rectangle(bar, bar, wide - bar, high - bar);

  // Every two neighbors have a whole cut in common, and the areas add up: so there is no gap and no overlap.
  pieces.forEach(({ polygon }, at) => {
    const next = pieces[(at + 1) % 4]?.polygon;
    if (!next) throw new Error('no neighbor');
    expect(commonSides(polygon, next)).toBe(1);
    expect(commonSides(polygon, clear)).toBe(1);
  });
  const area = pieces.reduce((sum, { polygon }) => sum + Math.abs(polygon.area()), 0);
  expect(Math.abs(area + Math.abs(clear.area()) - wide * high)).toBeLessThan(close * wide * high);

  for (const piece of pieces) {
    if (toes === 'flat') expect(piece.leg).toBe('none');
    else expect(piece.leg).toBe(legsSeen(piece, toes));
  }
}

function rectangle(x1: number, y1: number, x2: number, y2: number): Flatten.Polygon {
  return new Polygon([new Point(x1, y1), new Point(x2, y1), new Point(x2, y2), new Point(x1, y2)]);
}

/** How many sides of one polygon are sides of another. */
function commonSides(a: Flatten.Polygon, b: Flatten.Polygon): number {
  const sides = (polygon: Flatten.Polygon) =>
    polygon.toArray().flatMap((each) => [...each.edges].map((edge) => (edge as Flatten.Edge).shape));
  const isSame = (one: Flatten.Segment, other: Flatten.Segment) =>
    [one.start, one.end].every((point) => point.distanceTo(other)[0] < close) &&
    Math.abs(one.length - other.length) < close;
  let count = 0;
  for (const one of sides(a)) {
    for (const other of sides(b)) {
      if (one instanceof Segment && other instanceof Segment && isSame(one, other)) count++;
    }
  }
  return count;
}

/**
 * How the legs lie, from the drawing alone: the sheared line is checked against the heel and the axis of the piece. With
 * the heel at the bottom of the picture, a line like / needs the standing leg up, one like \ needs it down.
 */
function legsSeen({ polygon, inward }: Piece, toes: 'in' | 'out'): string {
  const up = toes === 'in' ? inward : inward.invert();
  const along = up.rotate90CW();
  const cuts = [...polygon.edges]
    .map((edge) => (edge as Flatten.Edge).shape as Flatten.Segment)
    .map(({ start, end }) => new Flatten.Vector(start, end))
    .map((line, at) => ({ slope: line.dot(up) * line.dot(along), at }))
    .filter(({ slope }) => Math.abs(slope) > close);
  const middle = (at: number) => {
    const shape = ([...polygon.edges][at] as Flatten.Edge).shape as Flatten.Segment;
    return new Flatten.Vector(new Point(0, 0), shape.middle()).dot(along);
  };
  const sorted = cuts.sort((a, b) => middle(a.at) - middle(b.at));
  const [left, right] = sorted.map(({ slope }) => (slope > 0 ? 'up' : 'down'));
  return `left end ${left}, right end ${right}`;
}
