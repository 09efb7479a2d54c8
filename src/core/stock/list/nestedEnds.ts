import { facesOfLeg } from '../../row/layout/facesOfLeg.js';
import type { ReadyRow } from '../../row/job/readyRow.js';
import type { PartEnd } from '../../row/job/rowJob.js';
import type { LengthUnit } from '../../quantity/units.js';
import type { AnySection } from '../../section/section.js';
import type { Turning } from '../stockProblem.js';
import type { NotNested } from './stockJob.js';

/** The leans of a part's ends, and its width in the plane of its miters. */
export type Ends = { leanLeftRad: number; leanRightRad: number; widthMm: number };

/** How a piece of a section may be turned and come off as the same piece. */
export function turningOf(section: AnySection): Turning {
  switch (section.kind) {
    case 'angle':
      return 'none';
    case 'channel':
    case 'tee':
      return 'round';
    case 'beam':
      return section.form === 'I' ? 'over and round' : 'round';
    default:
      return 'over and round';
  }
}

/**
 * How the ends of a row's pieces lean as the bar lies, heel or bottom edge at the fence, or why that is not known.
 * A left end with its long point at the fence leans above 0, a right one below.
 */
export function nestedEnds(row: ReadyRow, unit: LengthUnit): Ends | { notNested: NotNested } {
  const { section, miterLeftRad, miterRightRad } = row;
  if (miterLeftRad === 0 && miterRightRad === 0) return { leanLeftRad: 0, leanRightRad: 0, widthMm: 0 };
  const widthMm = widthInPlane(row, unit);
  if (typeof widthMm === 'string') return { notNested: widthMm };
  const left = longPoint(row, 'left');
  const right = longPoint(row, 'right');
  // A piece that may be turned over has one mitered end either way.
  const isEither = turningOf(section) === 'over and round' && (miterLeftRad === 0 || miterRightRad === 0);
  if (!isEither && (left === undefined || right === undefined)) return { notNested: 'Long side' };
  return {
    leanLeftRad: miterLeftRad * (left === 'far' ? -1 : 1),
    leanRightRad: miterRightRad * (right === 'far' ? 1 : -1) || 0,
    widthMm,
  };
}

/** Of a square end, both sides are long. */
function longPoint(
  { longSide, miterLeftRad, miterRightRad }: ReadyRow,
  end: PartEnd,
): 'fence' | 'far' | undefined {
  if ((end === 'left' ? miterLeftRad : miterRightRad) === 0) return 'fence';
  const side = longSide?.[end];
  if (side === undefined) return undefined;
  return side === 'bottom' || side === 'heel' ? 'fence' : 'far';
}

function widthInPlane({ section, miterLeg }: ReadyRow, unit: LengthUnit): number | NotNested {
  switch (section.kind) {
    case 'flat':
      return section.widthMm;
    case 'angle': {
      if (miterLeg === 'both') return 'both legs';
      const [width, ...others] = facesOfLeg(section, miterLeg, unit).map((face) => face.widthMm);
      return width === undefined || others.some((each) => each !== width) ? 'Miter leg' : width;
    }
    case 'round':
    case 'round tube':
      return section.diameterMm;
    case 'square':
      return section.sideMm;
    case 'tube':
      return section.depthMm === section.widthMm ? section.depthMm : 'how it lies';
    case 'channel':
    case 'tee':
    case 'beam':
      return 'how it lies';
  }
}
