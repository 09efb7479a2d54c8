import { polygonArea, polygonHull, polygonLength } from 'd3-polygon';
import { describe, expect, it } from 'vitest';
import { cutPerimeterMm } from '../../../src/core/tooling/cutPerimeter.js';
import {
  describeHole,
  type Hole,
  leastDimensionMm,
  nameHole,
  punchDiagonalMm,
} from '../../../src/core/tooling/hole.js';
import { expectWorking } from '../../support/working.js';

type Point = [number, number];

const corners = (count: number, radius: number, turn = 0): Point[] =>
  Array.from({ length: count }, (_, at) => {
    const angle = turn + (2 * Math.PI * at) / count;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });
const smooth = 20_000;

/** The outline of a hole as a polygon. */
function outline(hole: Hole): Point[] {
  switch (hole.shape) {
    case 'round':
      return corners(smooth, hole.diameterMm / 2);
    case 'square':
      return corners(4, hole.sideMm / Math.SQRT2, Math.PI / 4);
    case 'hexagon':
      return corners(6, hole.acrossFlatsMm / Math.sqrt(3));
    case 'rectangle': {
      const [x, y] = [hole.lengthMm / 2, hole.widthMm / 2];
      return [
        [x, y],
        [-x, y],
        [-x, -y],
        [x, -y],
      ];
    }
    case 'slot': {
      const shift = (hole.lengthMm - hole.widthMm) / 2;
      const circle = corners(smooth, hole.widthMm / 2);
      const shifted = circle.map(([x, y]): Point => [x + Math.sign(x) * shift, y]);
      return polygonHull(shifted) ?? [];
    }
  }
}

const farthest = (points: Point[]) => 2 * Math.max(...points.map(([x, y]) => Math.hypot(x, y)));
const narrowest = (points: Point[]) => 2 * Math.max(...points.map(([, y]) => Math.abs(y)));

const holes: Hole[] = [
  { shape: 'round', diameterMm: 22 },
  { shape: 'slot', widthMm: 22, lengthMm: 48 },
  { shape: 'square', sideMm: 20 },
  { shape: 'rectangle', widthMm: 20, lengthMm: 45 },
  { shape: 'hexagon', acrossFlatsMm: 24 },
];

describe.each(holes)('a hole that is $shape', (hole) => {
  const points = outline(hole);

  it('has the cut perimeter of its outline (geometry library)', () => {
    expect(polygonArea(points)).not.toBe(0);
    expect(cutPerimeterMm(hole) / polygonLength(points)).toBeCloseTo(1, 6);
  });

  it('has the largest and least dimension of its outline', () => {
    expect(punchDiagonalMm(hole)).toBeCloseTo(farthest(points), 5);
    expect(leastDimensionMm(hole)).toBeCloseTo(narrowest(points), 4);
  });

  it('shows the working of its perimeter', () => {
    const [step] = expectWorking((working) => cutPerimeterMm(hole, working));
    expect(step?.values.length).toBe(hole.shape === 'slot' || hole.shape === 'rectangle' ? 2 : 1);
  });
});

describe('describeHole and its edge', () => {
  it.each([
    ['Ø22', 'Ø22 mm'],
    ['slot 22 × 48', 'slot 22 × 48 mm'],
    ['square 20', 'square 20 mm'],
    ['rectangle 20 × 45', 'rectangle 20 × 45 mm'],
    ['hexagon 24', 'hexagon 24 mm'],
  ])('says %s in a mm shop and %s in an inch shop', (inMm, inInches) => {
    const hole = holes.find((each) => describeHole(each, 'mm') === inMm);
    expect(hole && describeHole(hole, 'in')).toBe(inInches);
  });

  it.each([
    ['Ø22', 'Ø22 mm hole', 'Ø22 mm hole'],
    ['slot 22 × 48', 'slot 22 × 48 mm', 'slot 22 × 48 mm'],
    ['square 20', 'square 20 mm hole', 'square 20 mm hole'],
  ])('names %s with its unit in either shop: %s', (inMm, named, inInches) => {
    const hole = holes.find((each) => describeHole(each, 'mm') === inMm);
    expect(hole && nameHole(hole, 'mm')).toBe(named);
    expect(hole && nameHole(hole, 'in')).toBe(inInches);
    expect(nameHole({ shape: 'round', diameterMm: 25.4 * (9 / 16) }, 'in')).toBe('Ø9/16 in hole');
  });

  it('takes a slot as long as it is wide for a round hole', () => {
    expect(cutPerimeterMm({ shape: 'slot', widthMm: 10, lengthMm: 10 })).toBeCloseTo(Math.PI * 10, 12);
  });
});
