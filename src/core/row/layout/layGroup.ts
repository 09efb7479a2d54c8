import { holeShape } from '../../part/holeShape.js';
import type { PlacedHole } from '../../part/part.js';
import { translate } from '../../part/shape.js';
import { leastDimensionMm } from '../../tooling/hole.js';
import type { HoleGroup, PartEnd } from '../job/rowJob.js';
import type { PlaceCell, PlaceReading } from '../job/placeReading.js';
import { acrossLines, type AcrossLines, lineCount } from './across.js';
import { alongLine, type AlongLine, type Bar } from './along.js';
import { inCorners, type PickedGroup, type Spot, type Spots } from './inCorners.js';

/** The holes of a group where they lie, or are read to lie. */
export interface LaidGroup {
  group: HoleGroup;
  /** The number of the group in the row. */
  index: number;
  holes: readonly PlacedHole[];
  /** The distances between the holes of the group are given. */
  rigid: boolean;
  readings: readonly PlaceReading[];
  /** The cells that would give their places. */
  missing: readonly PlaceCell[];
}

/** The holes of all groups. */
export function holesOf(groups: readonly LaidGroup[]): readonly PlacedHole[] {
  const [first] = groups;
  if (first && groups.length === 1) return first.holes;
  return groups.flatMap(({ holes }) => holes);
}

/** Lays the holes of a group on the face it is in. A length that is not given is one that no hole knows the end of. */
export function layGroup(group: HoleGroup, picked: PickedGroup, bar: Bar): LaidGroup {
  const { number: index } = group;
  const laid = spotsOf(group, picked, bar);
  const shape = holeShape(group.hole, { x: 0, y: 0 }, picked.direction);
  const face = picked.face.id;
  const holes = laid.spots.map(({ center, free }, at): PlacedHole => {
    const placed = translate(shape, center.x, center.y);
    const hole = { face, group: index, index: at + 1, center, shape: placed };
    return free ? { ...hole, free } : hole;
  });
  return { group, index, holes, rigid: laid.rigid, readings: laid.readings, missing: laid.missing };
}

function spotsOf(group: HoleGroup, picked: PickedGroup, bar: Bar): Spots {
  if (group.holesAt) {
    const spots = group.holesAt.map(({ xMm, yMm }): Spot => ({ center: { x: xMm, y: yMm } }));
    return { spots, rigid: true, readings: [], missing: [] };
  }
  const corners = inCorners(group, picked, bar);
  if (corners) return corners;
  const perEnd = group.eachEnd ? group.count / 2 : group.count;
  const lines = lineCount(group, picked.face);
  const columns = Math.ceil(perEnd / lines);
  const across = acrossLines(group, picked.face);
  const ends: PartEnd[] = group.eachEnd ? ['left', 'right'] : [picked.endFrom];
  const along = ends.map((end) => alongLine(group, columns, end, bar));
  const spots: Spot[] = [];
  for (const line of along) {
    for (let at = 0; at + 1 <= perEnd; at++) spots.push(spotAt(line, across, at, columns));
  }
  return { spots: freedLines(spots, group, picked, along), ...told(along, across, picked, group) };
}

function spotAt({ columns: along }: AlongLine, { lines }: AcrossLines, at: number, columns: number): Spot {
  const x = along[at % columns] ?? { xMm: 0, leftMm: 0, rightMm: 0 };
  const y = lines[Math.floor(at / columns)] ?? { yMm: 0, downMm: 0, upMm: 0 };
  const center = { x: x.xMm, y: y.yMm };
  const isFree = x.leftMm + x.rightMm + y.downMm + y.upMm > 0;
  const free = { x0: -x.leftMm, x1: x.rightMm, y0: -y.downMm, y1: y.upMm };
  return isFree ? { center, free } : { center };
}

function told(
  along: readonly AlongLine[],
  across: AcrossLines,
  { endFrom }: PickedGroup,
  group: HoleGroup,
): Pick<LaidGroup, 'rigid' | 'readings' | 'missing'> {
  const [line] = along;
  const turned = endFrom === 'right' && group.endFrom === undefined && !group.eachEnd;
  return {
    rigid: along.every(({ rigid }) => rigid) && (along.length === 1 || group.endMm !== undefined),
    readings: [
      ...(line?.reading ? [line.reading] : []),
      ...(across.reading ? [across.reading] : []),
      ...(turned ? (['from the right end'] as const) : []),
    ],
    missing: [...(line?.missing ?? []), ...across.missing],
  };
}

/** Without a pitch and a gage, only the first hole of a plate or web is known to lie on the line that Edge gives. */
function freedLines(
  spots: Spot[],
  group: HoleGroup,
  { face }: PickedGroup,
  [line]: readonly AlongLine[],
): Spot[] {
  if (face.heel || group.gageMm !== undefined || group.edgeMm === undefined || line?.rigid !== false)
    return spots;
  const marginMm = leastDimensionMm(group.hole) / 2;
  const upMm = Math.max(0, face.widthMm - group.edgeMm - marginMm);
  const [y0, y1] = group.edgeFrom === 'top' ? [-upMm, 0] : [0, upMm];
  return spots.map((spot, at) => {
    const isFirst = at === 0 || (group.eachEnd === true && at === spots.length / 2);
    return isFirst ? spot : { ...spot, free: { x0: 0, x1: 0, ...spot.free, y0, y1 } };
  });
}
