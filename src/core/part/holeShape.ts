import type { Hole } from '../tooling/hole.js';
import type { Point } from './point.js';
import type { Shape } from './shape.js';

/** How the length of a hole lies: along the length of the part or across it. */
export type Direction = 'along' | 'across';

/**
 * The shape of a hole at its place.
 *
 * Formula: round = point + d/2; slot = segment of l − w, + w/2; square, rectangle and hexagon = polygon + 0.
 * @param hole dimensions in mm
 * @param center in mm
 * @param direction how the length of a slot or rectangle lies; a hexagon `along` has two flats parallel to the length
 *   of the part, and two points on the line along its center. It changes nothing for a round or square hole.
 * @returns the shape in mm, its core counter-clockwise
 * Valid for holes with positive dimensions; a slot not longer than wide is round. Throws nothing.
 * @example holeShape({ shape: 'slot', widthMm: 20, lengthMm: 50 }, { x: 100, y: 40 }, 'along').radius // 10
 * Source: plane geometry.
 */
export function holeShape(hole: Hole, center: Point, direction: Direction): Shape {
  switch (hole.shape) {
    case 'round':
      return { core: [center], radius: hole.diameterMm / 2 };
    case 'slot':
      return slotShape(hole.widthMm, hole.lengthMm, center, direction);
    case 'square':
      return rectangleShape(hole.sideMm, hole.sideMm, center, direction);
    case 'rectangle':
      return rectangleShape(hole.widthMm, hole.lengthMm, center, direction);
    case 'hexagon':
      return hexagonShape(hole.acrossFlatsMm, center, direction);
  }
}

function slotShape(widthMm: number, lengthMm: number, center: Point, direction: Direction): Shape {
  const radius = widthMm / 2;
  const half = lengthMm / 2 - radius;
  if (half <= 0) return { core: [center], radius };
  const core = [
    { x: -half, y: 0 },
    { x: half, y: 0 },
  ];
  return { core: placed(core, center, direction), radius };
}

function rectangleShape(widthMm: number, lengthMm: number, center: Point, direction: Direction): Shape {
  const [x, y] = [lengthMm / 2, widthMm / 2];
  const core = [
    { x: -x, y: -y },
    { x, y: -y },
    { x, y },
    { x: -x, y },
  ];
  return { core: placed(core, center, direction), radius: 0 };
}

function hexagonShape(acrossFlatsMm: number, center: Point, direction: Direction): Shape {
  const y = acrossFlatsMm / 2;
  const side = acrossFlatsMm / Math.sqrt(3);
  const core = [
    { x: side, y: 0 },
    { x: side / 2, y },
    { x: -side / 2, y },
    { x: -side, y: 0 },
    { x: -side / 2, y: -y },
    { x: side / 2, y: -y },
  ];
  return { core: placed(core, center, direction), radius: 0 };
}

/** A core around 0 moved to its center; across, it is turned by 90° first. */
function placed(core: readonly Point[], center: Point, direction: Direction): Point[] {
  return core.map(({ x, y }) =>
    direction === 'along' ? { x: center.x + x, y: center.y + y } : { x: center.x - y, y: center.y + x },
  );
}
