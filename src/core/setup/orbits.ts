import type { Point } from '../part/point.js';
import { apartMm, sameMm } from './samePosition.js';
import { type Plate, type Position, positionOf, type Turns, waysOf } from './way.js';

/** Holes, by their place in the list, in sets that the allowed turns bring onto each other. */
export function orbitsOf(holes: readonly Point[], turns: Turns, plate: Plate): number[][] {
  const ways = waysOf(turns).filter(({ stop }) => stop === 'left');
  const orbits: { holes: number[]; positions: Position[] }[] = [];
  for (const [hole, center] of holes.entries()) {
    const lies = { stopMm: center.x, fenceMm: center.y };
    const found = orbits.find(({ positions }) => positions.some((each) => apartMm(each, lies) < sameMm));
    if (found) found.holes.push(hole);
    else orbits.push({ holes: [hole], positions: ways.map((way) => positionOf(center, way, plate)) });
  }
  return orbits.map((orbit) => orbit.holes);
}
