import type { Finding } from '../check/finding.js';
import type { FaceId, PlacedHole } from '../part/part.js';
import { notchBitesOnPress } from '../press/notchStation.js';
import type { Press } from '../press/press.js';
import type { Layout } from '../row/layout/layoutOf.js';
import type { PlacedHoles, ReadyRow } from '../row/job/readyRow.js';
import { isPunched, routeOf, type RouteStep } from '../row/route.js';
import type { Hole } from '../tooling/hole.js';

export type ShearStation = 'flat shear' | 'angle shear' | 'bar shear';

/** What is done to every piece of a row, in the order of work. */
export type Operation =
  | { is: 'cut'; station: ShearStation; cutsPerPiece: number; thicknessMm: number }
  | Punching
  | Notching<'notch'>
  | Notching<'clip'>
  | { is: 'bend'; bends: number; thicknessMm: number }
  | { is: 'elsewhere'; step: RouteStep };

/** Notches or clipped corners, each in so many strokes. */
export interface Notching<Is extends 'notch' | 'clip'> {
  is: Is;
  places: number;
  strokesEach: number;
  thicknessMm: number;
}

/** Holes of one group in one face. */
export interface Punching {
  is: 'punch';
  group: number;
  face: FaceId;
  hole: Hole;
  thicknessMm: number;
  holes: readonly PlacedHole[];
  /** The row gives every place; nothing of it is read. */
  given: boolean;
}

/** The work on a part that a press can run, in the order of its route. */
export function operationsOf(
  row: ReadyRow,
  layout: Layout | undefined,
  findings: readonly Finding[],
  press: Press,
): Operation[] {
  return routeOf(row, findings).flatMap((step): Operation[] => {
    switch (step) {
      case 'shear':
        return [cutOf(row)];
      case 'punch':
        return row.places
          .filter((placed) => isPunched(placed, findings))
          .flatMap((placed) => punchingOf(placed, layout));
      case 'notch':
        return [...notchingOf(row, press), ...clippingOf(row)];
      case 'bend':
        return row.bends ? [{ is: 'bend', bends: row.bends.count, thicknessMm: thicknessOf(row) }] : [];
      default:
        return [{ is: 'elsewhere', step }];
    }
  });
}

function cutOf(row: ReadyRow): Operation {
  return {
    is: 'cut',
    station: stationOf(row),
    cutsPerPiece: nests(row) ? 1 : 2,
    thicknessMm: thicknessOf(row),
  };
}

/**
 * Whether one cut parts two pieces. Ends mitered alike lie against each other where every second piece is turned over,
 * or where the long points are on opposite edges. An angle cannot be turned over: its heel would change sides.
 */
function nests({ section, miterLeftRad, miterRightRad, longSide }: ReadyRow): boolean {
  const alike = Math.abs(miterLeftRad - miterRightRad) < 1e-9;
  if (!alike || miterLeftRad === 0 || section.kind !== 'angle') return alike;
  const { left, right } = longSide ?? {};
  return left !== undefined && right !== undefined && left !== right;
}

function stationOf({ section }: ReadyRow): ShearStation {
  if (section.kind === 'angle') return 'angle shear';
  return section.kind === 'flat' ? 'flat shear' : 'bar shear';
}

function thicknessOf({ section }: ReadyRow): number {
  if ('thicknessMm' in section) return section.thicknessMm;
  if (section.kind === 'round') return section.diameterMm;
  return section.kind === 'square' ? section.sideMm : 0;
}

function punchingOf({ index, group, faces }: PlacedHoles, layout: Layout | undefined): Punching[] {
  const laid = layout?.groups.find((each) => each.index === index);
  const face = laid?.holes[0]?.face ?? faces[0]?.face.id;
  const own = faces.find((each) => each.face.id === face) ?? faces[0];
  if (!own || face === undefined) return [];
  const holes = laid?.holes ?? [];
  const given = laid?.readings.length === 0 && holes.every(({ free }) => free === undefined);
  const { punched } = own.process;
  return [
    {
      is: 'punch',
      group: index,
      face,
      hole: own.process.made === 'drill' ? group.hole : punched,
      thicknessMm: own.thicknessMm,
      holes,
      given,
    },
  ];
}

function notchingOf(row: ReadyRow, press: Press): Operation[] {
  const { notches } = row;
  if (!notches) return [];
  const { widthMm, depthMm, count: places } = notches;
  const thicknessMm = thicknessOf(row);
  const bites = notchBitesOnPress(press, {
    widthMm,
    depthMm,
    where: 'edge',
    thicknessMm,
    shearStrengthMPa: 1,
  });
  return [{ is: 'notch', places, strokesEach: Array.isArray(bites) ? 1 : bites.count, thicknessMm }];
}

function clippingOf(row: ReadyRow): Operation[] {
  const { clips } = row;
  if (!clips) return [];
  return [{ is: 'clip', places: clips.count, strokesEach: 1, thicknessMm: thicknessOf(row) }];
}
