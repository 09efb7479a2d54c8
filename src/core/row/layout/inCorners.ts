import { holeShape } from '../../part/holeShape.js';
import type { Point } from '../../part/point.js';
import type { Box } from '../../part/shape.js';
import { leastDimensionMm } from '../../tooling/hole.js';
import type { HoleGroup } from '../job/rowJob.js';
import type { Bar } from './along.js';
import type { Picked } from './alternatives.js';
import type { LaidGroup } from './layGroup.js';

export type PickedGroup = Picked['groups'][number];

/** The place of a hole, and where else it may lie. */
export interface Spot {
  center: Point;
  free?: Box;
}

/** The places of the holes of a group, and how they were read. */
export type Spots = { spots: Spot[] } & Pick<LaidGroup, 'rigid' | 'readings' | 'missing'>;

/** Four holes of a plate with one End and one Edge stand one in each corner, unless the lines would run into each other. */
export function inCorners(
  group: HoleGroup,
  { face, direction, endFrom }: PickedGroup,
  bar: Bar,
): Spots | undefined {
  const { endMm, edgeMm, pitchMm, pitchesMm, gageMm, count, eachEnd, hole } = group;
  if (face.id !== 'plate' || count !== 4 || eachEnd || endMm === undefined || edgeMm === undefined) return;
  if (pitchMm !== undefined || pitchesMm || gageMm !== undefined) return;
  const shape = holeShape(hole, { x: 0, y: 0 }, direction);
  const tallMm = 2 * (Math.max(...shape.core.map(({ y }) => y)) + shape.radius);
  const wideMm = 2 * (Math.max(...shape.core.map(({ x }) => x)) + shape.radius);
  const [acrossMm, alongMm] = [face.widthMm - 2 * edgeMm, bar.lengthMm - 2 * endMm];
  if (acrossMm <= tallMm || alongMm <= wideMm) return;
  const marginMm = leastDimensionMm(hole) / 2;
  const [rightMm, upMm] = [bar.lengthMm - endMm - marginMm, face.widthMm - edgeMm - marginMm];
  const corner = (x: number, y: number): Spot => {
    const center = { x, y };
    if (bar.even) return { center };
    return { center, free: { x0: endMm - x, x1: rightMm - x, y0: edgeMm - y, y1: upMm - y } };
  };
  const [right, top] = [bar.lengthMm - endMm, face.widthMm - edgeMm];
  const spots = [
    { center: { x: endMm, y: edgeMm } },
    corner(right, edgeMm),
    corner(endMm, top),
    corner(right, top),
  ];
  const turned = { right: endFrom === 'right', top: group.edgeFrom === 'top' };
  return {
    spots: spots.map((spot) => mirrored(spot, turned, bar.lengthMm, face.widthMm)),
    rigid: bar.even,
    readings: ['in each corner'],
    missing: ['Pitch', 'Gage'],
  };
}

/** A spot as seen from the right end, from the top edge, or both. */
function mirrored(
  spot: Spot,
  from: { right: boolean; top: boolean },
  lengthMm: number,
  widthMm: number,
): Spot {
  const { center, free } = spot;
  const turned = {
    x: from.right ? lengthMm - center.x : center.x,
    y: from.top ? widthMm - center.y : center.y,
  };
  if (!free) return { center: turned };
  const [x0, x1] = from.right ? [-free.x1, -free.x0] : [free.x0, free.x1];
  const [y0, y1] = from.top ? [-free.y1, -free.y0] : [free.y0, free.y1];
  return { center: turned, free: { x0, x1, y0, y1 } };
}
