import { atMost } from '../../atMost.js';
import { edgeClearance } from '../../part/edgeClearance.js';
import type { Point } from '../../part/point.js';
import { type Void, voidsOf } from '../../part/void.js';
import { greatestEdgeDistanceMm } from '../../rule/greatestEdge.js';
import type { Shop } from '../../shop/readShop.js';
import { setting } from '../../shop/setting.js';
import type { Reading } from '../job/reading.js';
import type { PlacedHoles, ReadyRow } from '../job/readyRow.js';
import { type BoltBasis, boltBasis } from './boltBasis.js';
import { endKindOf, longEdgeKindOf } from './faceOutline.js';
import type { LaidGroup } from './layGroup.js';
import type { Layout, Layouts } from './layoutOf.js';

/** What was taken of the hole groups of a row where it does not say: bolt, kinds of edges, places. */
export function groupReadings(row: ReadyRow, { layouts }: Layouts, shop: Shop): Reading[] {
  const [layout] = layouts;
  const found: Reading[] = [];
  for (const placed of row.places) {
    const laid = layout?.groups.find(({ index }) => index === placed.index);
    if (!layout || !laid) continue;
    const basis = boltBasis(placed.group, shop.unit, setting(shop, 'edgeCode'));
    found.push(...faceReadings(placed, layouts), ...boltReadings(placed, basis));
    found.push(edgesReading(row, placed), ...placeReadings(laid));
    found.push(...greatestReadings(layout, laid, placed, basis, shop));
  }
  return found;
}

/** Of several faces the only one that the holes lie on. */
function faceReadings({ group, index, faces }: PlacedHoles, layouts: readonly Layout[]): Reading[] {
  if (group.leg !== undefined) return [];
  const used = layouts.flatMap(({ groups }) => groups.filter((laid) => laid.index === index));
  const taken = faces.filter(({ face }) => used.some(({ holes }) => holes[0]?.face === face.id));
  const [only] = taken;
  if (!only || taken.length > 1) return [];
  const isLike = ({ face }: PlacedHoles['faces'][number]) =>
    face.widthMm === only.face.widthMm && face.heel === only.face.heel;
  return faces.every(isLike) ? [] : [{ is: 'face of the holes', group: index, face: only.face.id }];
}

function boltReadings({ index }: PlacedHoles, basis: BoltBasis): Reading[] {
  if (basis.is === 'read') return [{ is: 'bolt of the hole', group: index, bolt: basis.bolt.name }];
  return basis.is === 'not known' ? [{ is: 'bolt not known', group: index }] : [];
}

/** What was taken for the edges and ends that the row does not name. */
function edgesReading(row: ReadyRow, { group, index }: PlacedHoles): Reading {
  return {
    is: 'edges',
    group: index,
    ...(group.edgeKind === undefined ? { edge: longEdgeKindOf(row) } : {}),
    ...(group.endKind === undefined ? { end: endKindOf(row) } : {}),
  };
}

function placeReadings({ readings, index, holes }: LaidGroup): Reading[] {
  return readings.map((reading) => {
    const gageMm = reading === 'usual gage' ? holes[0]?.center.y : undefined;
    return { is: 'places', group: index, reading, ...(gageMm === undefined ? {} : { mm: gageMm }) };
  });
}

/** Too far from every edge is no failure: it is told beside what was read. */
function greatestReadings(
  layout: Layout,
  laid: LaidGroup,
  placed: PlacedHoles,
  basis: BoltBasis,
  shop: Shop,
): Reading[] {
  const { index } = placed;
  const code = setting(shop, 'edgeCode');
  const face = layout.faces.find(({ id }) => id === laid.holes[0]?.face);
  if (!face || face.id === 'web' || layout.endless || basis.is === 'none' || basis.is === 'not known')
    return [];
  if (laid.holes.some(({ free }) => free)) return [];
  const voids = voidsOf(face.outline);
  const givenMm = Math.max(...laid.holes.map(({ center }) => nearestEdgeMm(center, voids)));
  const greatestMm = greatestEdgeDistanceMm({
    thicknessMm: placed.faces[0]?.thicknessMm ?? face.thicknessMm,
    code,
    system: basis.bolt.system,
  });
  if (!Number.isFinite(givenMm) || atMost(givenMm, greatestMm)) return [];
  return [{ is: 'greatest edge distance', group: index, givenMm, greatestMm, code }];
}

/** From the center of a hole to the nearest free edge; Infinity where there is none. */
function nearestEdgeMm(center: Point, voids: readonly Void[]): number {
  const shape = { core: [center], radius: 0 };
  let nearestMm = Infinity;
  for (const around of voids) {
    for (const edge of around.edges) {
      if (edge.kind === 'none') continue;
      nearestMm = Math.min(nearestMm, edgeClearance(shape, edge, around).distance);
    }
  }
  return nearestMm;
}
