import type { LengthUnit } from '../../../core/quantity/units.js';
import type { HolePlace } from '../../../core/row/holePlace.js';
import type { RowJob } from '../../../core/row/rowJob.js';
import type { Section } from '../../../core/section/section.js';
import type { Shop } from '../../../core/shop/readShop.js';
import { leastDimensionMm, punchDiagonalMm } from '../../../core/tooling/hole.js';
import { bendLines, bendWork, type Bent } from './bends.js';
import { clippedCorners, clipWork } from './clips.js';
import { type Contour, contourOf, type Ends, type PlacedNotch } from '../../../core/row/outline/contour.js';
import { liesOn } from '../../../core/row/outline/crossing.js';
import { drawnHoles } from './drawnHoles.js';
import { type Fence, fenceOf } from '../../../core/row/outline/fence.js';
import { endsOf } from '../../../core/row/outline/ends.js';
import { miterWork } from './miters.js';
import { notchWork, placedNotches } from './notches.js';
import type { Kept } from './partView.js';
import type { PlacedGroup } from './placedHoles.js';
import type { Work } from './work.js';

/** A part as it is drawn, in mm, before it has a size on the screen. */
export interface PartPlan {
  section: Section;
  element: HolePlace['element'] | undefined;
  fence: Fence;
  /** What the row says; undefined where it says none. */
  lengthMm: number | undefined;
  ends: Ends;
  contour: Contour;
  groups: PlacedGroup[];
  /** Hole groups in another leg or flange. */
  elsewhere: number;
  bent: Bent;
  works: Work[];
  /** Holes, notches and bends with a little room at each side. */
  kept: Kept[];
  /** Holes that do not lie wholly on the part as its cuts are drawn. */
  overCuts: number;
}

/** A part whose length the row does not give is drawn this many widths long; the longer one where its ends lean. */
const drawnWidths = 3;
const drawnWidthsMitred = 4;

export function planOf(job: RowJob, section: Section, unit: LengthUnit, shop?: Shop): PartPlan {
  const { element, widthMm, groups: groupsOf, elsewhere } = drawnHoles(job, section, unit, shop);
  const fence = fenceOf(section, element);
  const lengthMm = job.lengthMm ?? widthMm * (job.miterRad > 0 ? drawnWidthsMitred : drawnWidths);
  const ends = endsOf(job, { lengthMm, widthMm }, fence);
  const clipped = clippedCorners(job, section, ends);
  const notched = placedNotches(job, section, ends, clipped.corners);
  const bent = bendLines(job, section, ends);
  const contour = contourOf(ends, clipped.corners, notched.notches);
  const groups = groupsOf(lengthMm);
  return {
    section,
    element,
    fence,
    lengthMm: job.lengthMm,
    ends,
    contour,
    groups,
    elsewhere,
    bent,
    works: [
      miterWork(job, ends, fence, unit),
      clipWork(job, section, ends, clipped, unit),
      notchWork(job, section, ends, notched, unit),
      bendWork(job, bent, widthMm, unit),
    ],
    kept: keptOf(groups, notched.notches, bent, widthMm / 8),
    overCuts: overCuts(groups, ends, contour),
  };
}

function keptOf(
  groups: readonly PlacedGroup[],
  notches: readonly PlacedNotch[],
  { direction, lines }: Bent,
  roomMm: number,
): Kept[] {
  const around = (alongMm: number, sizeMm: number): Kept => ({
    fromMm: alongMm - sizeMm / 2 - roomMm,
    toMm: alongMm + sizeMm / 2 + roomMm,
  });
  return [
    ...groups.flatMap(({ group, holes }) =>
      holes.map(({ alongMm }) => around(alongMm, punchDiagonalMm(group.hole))),
    ),
    ...notches.map(({ centreMm, widthMm }) => around(centreMm, widthMm)),
    ...(direction === 'across' ? lines.map(({ from }) => around(from.alongMm, 0)) : []),
  ];
}

function overCuts(groups: readonly PlacedGroup[], ends: Ends, contour: Contour): number {
  const uncut = contourOf({ ...ends, stopRad: 0, farRad: 0 }, [], []);
  return groups
    .flatMap(({ holes }) => holes)
    .filter((hole) => {
      const radiusMm = leastDimensionMm(hole.group.hole) / 2;
      return liesOn(uncut, hole, radiusMm) && !liesOn(contour, hole, radiusMm);
    }).length;
}
