import type { Finding } from '../../core/check/finding.js';
import type { FaceId } from '../../core/part/part.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { RowJob } from '../../core/row/job/rowJob.js';
import type { Section } from '../../core/section/section.js';
import type { Shop } from '../../core/shop/readShop.js';
import { bendWork } from './bendWork.js';
import { clipWork } from './clipWork.js';
import { type DecidingDistance, decidingDistance } from './decidingDistance.js';
import { type DrawnFace, drawnFace } from './drawnFace.js';
import { type DrawnGroup, drawnGroups } from './drawnGroup.js';
import { type Fence, fenceOf } from './fence.js';
import { halfMm } from './holeShapes.js';
import { laidPart } from './laidPart.js';
import { type DrawnMiter, mitersOf, miterWork } from './miterWork.js';
import { notchWork } from './notchWork.js';
import type { Kept } from './partView.js';
import { placeWords } from './placeWords.js';
import type { Work } from './work.js';

/** A part as it is drawn, in mm, before it has a size on the screen. */
export interface PartPlan extends Omit<DrawnFace, 'groups'> {
  section: Section;
  fence: Fence;
  /** What the row says; undefined where it says none. */
  lengthMm: number | undefined;
  /** As drawn. */
  drawnMm: number;
  groups: DrawnGroup[];
  miters: DrawnMiter[];
  works: Work[];
  deciding?: DecidingDistance;
  /** Holes, notches and bends with a little room at each side. */
  kept: Kept[];
}

interface Asked {
  unit: LengthUnit;
  /** The length as it is typed. */
  length: string;
  shop?: Shop | undefined;
  deciding?: Finding | undefined;
  /** The face to draw. */
  face?: FaceId | undefined;
}

export function planOf(job: RowJob, section: Section, asked: Asked): PartPlan {
  const { unit } = asked;
  const laid = laidPart(job, section, asked);
  const drawn = drawnFace(laid, asked.deciding, asked.face);
  const { face } = drawn;
  const fence = fenceOf(section, face.id);
  const groups = drawnGroups(drawn, job, section, asked);
  const { lengthMm } = laid.layout;
  const { widthMm } = face;
  const deciding = decidingDistance(asked.deciding, {
    ...{ job, groups, lengthMm, widthMm, unit },
    length: asked.length,
  });
  const place = placeWords(fence, face.widthMm, unit);
  return {
    ...drawn,
    section,
    fence,
    lengthMm: job.lengthMm,
    drawnMm: laid.layout.lengthMm,
    groups,
    miters: mitersOf(job, face),
    works: [
      miterWork(job, drawn, fence, unit),
      clipWork(job, drawn, place, unit),
      notchWork(job, drawn, place, unit),
      bendWork(job, drawn, place, unit),
    ],
    ...(deciding ? { deciding } : {}),
    kept: keptOf(groups, drawn),
  };
}

function keptOf(groups: readonly DrawnGroup[], { face, bends }: DrawnFace): Kept[] {
  const roomMm = face.widthMm / 8;
  const around = (from: number, to: number): Kept => ({ fromMm: from - roomMm, toMm: to + roomMm });
  const notches = face.outline.edges.filter(({ cause }) => cause.is === 'notch');
  return [
    ...groups.flatMap(({ holes }) =>
      holes.map((hole) => around(hole.center.x - halfMm(hole).x, hole.center.x + halfMm(hole).x)),
    ),
    ...notches.map(({ from, to }) => around(Math.min(from.x, to.x), Math.max(from.x, to.x))),
    ...bends.filter(({ runs }) => runs === 'across').map(({ from }) => around(from.x, from.x)),
  ];
}
