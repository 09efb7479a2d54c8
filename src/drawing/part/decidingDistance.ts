import type { Finding, FindingOf } from '../../core/check/finding.js';
import type { PlacedHole } from '../../core/part/part.js';
import type { Point } from '../../core/part/point.js';
import { toleranceMm } from '../../core/part/tolerance.js';
import { withUnit } from '../../core/quantity/sizeAsTyped.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { RowJob } from '../../core/row/job/rowJob.js';
import { governs } from '../../core/say/say.js';
import { comparedSizes } from './comparedSizes.js';
import { decidingSize } from './decidingSize.js';
import type { DrawnGroup } from './drawnGroup.js';

/** The distance that decides a row, between its two places. */
export interface DecidingDistance {
  from: Point;
  to: Point;
  /** The places that are no edge, and so have an extension line. */
  open: ('from' | 'to')[];
  /** `1 < 1-1/4`. */
  text: string;
  /** `Hole: end distance 1 in, must be 1-1/4 in`. */
  words: string;
}

export interface Drawn {
  job: RowJob;
  groups: readonly DrawnGroup[];
  lengthMm: number;
  /** The length as it is typed; empty where the row gives none. */
  length: string;
  widthMm: number;
  unit: LengthUnit;
}

/** The distance of the finding that decides, where it is about one that can be drawn: of the drawing, or of the reach. */
export function decidingDistance(finding: Finding | undefined, drawn: Drawn): DecidingDistance | undefined {
  switch (finding?.rule) {
    case 'distance':
      return ofTheDrawing(finding, drawn);
    case 'press limit':
      return finding.verdict === "Can't reach" ? ofTheThroat(finding, drawn) : decidingSize(finding, drawn);
    case 'widest bar':
    case 'shear minimum':
    case 'smallest hole':
      return decidingSize(finding, drawn);
    case 'die holder':
      return finding.verdict === "Can't reach" ? ofTheDieHolder(finding, drawn) : undefined;
    default:
      return undefined;
  }
}

function ofTheDrawing(finding: FindingOf<'distance'>, drawn: Drawn): DecidingDistance | undefined {
  const { unit, groups } = drawn;
  const { given, limit, at, between, outcome } = finding;
  if (given.least !== given.most || outcome === 'held') return undefined;
  const leastMm = Number.isFinite(limit.most) ? limit.most : limit.least;
  const size = comparedSizes(finding, given.most, drawn);
  const least = Number.isFinite(leastMm) && leastMm > 0 ? size(leastMm) : undefined;
  const isOver = given.most < -toleranceMm;
  const is = isOver ? `${size(-given.most)} over` : size(Math.max(0, given.most));
  const asked = least === undefined ? 'the least is not known' : `needs ${withUnit(least, unit)} or more`;
  const [first, other] = between;
  return {
    from: at[0],
    to: at[1],
    open: [
      ...(first.is === 'hole' ? ['from' as const] : []),
      ...(other.is === 'hole' ? ['to' as const] : []),
    ],
    text: least === undefined ? `${is} < ?` : `${is} < ${least}`,
    words: `${whoseWords(finding, groups)}${governs(finding, unit)} ${withUnit(isOver ? `over by ${size(-given.most)}` : is, unit)}, ${asked}`,
  };
}

/** From the edge that goes into the throat, or that is nearer, to the hole that lies deepest. */
function ofTheThroat(finding: FindingOf<'press limit'>, drawn: Drawn): DecidingDistance | undefined {
  const { sized, limit, given } = finding;
  const { widthMm, unit } = drawn;
  if (sized.is !== 'hole to nearer edge' && sized.is !== 'hole to toe') return undefined;
  const isToe = sized.is === 'hole to toe';
  const edgeOf = ({ y }: Point) => (isToe || y > widthMm / 2 ? widthMm : 0);
  /** Across, or from an end where the plate goes in turned around: whichever is the distance that was held. */
  const footOf = (each: Point): Point => {
    const across = { x: each.x, y: edgeOf(each) };
    const feet = isToe ? [across] : [across, { x: 0, y: each.y }, { x: drawn.lengthMm, y: each.y }];
    return feet.reduce((best, foot) =>
      Math.abs(reachOf(each, foot) - given) < Math.abs(reachOf(each, best) - given) ? foot : best,
    );
  };
  const center = farthest(holesOf(finding, drawn), (each) => -Math.abs(reachOf(each, footOf(each)) - given));
  if (!center || limit === undefined) return undefined;
  const size = comparedSizes(finding, given, drawn);
  const edge = isToe ? 'the toe' : 'the nearer edge';
  return {
    from: footOf(center),
    to: center,
    open: ['to'],
    text: `${size(given)} > ${size(limit)}`,
    words: `${whoseWords(finding, drawn.groups)}${withUnit(size(given), unit)} to ${edge}, ${governs(finding, unit)} ${withUnit(size(limit), unit)}`,
  };
}

function reachOf(hole: Point, foot: Point): number {
  return Math.hypot(hole.x - foot.x, hole.y - foot.y);
}

/** From the fillet or flange to the hole that lies nearest to it. */
function ofTheDieHolder(finding: FindingOf<'die holder'>, drawn: Drawn): DecidingDistance | undefined {
  const { beside, given, limit } = finding;
  const { widthMm, unit } = drawn;
  const fromHeel = ({ y }: Point) => (beside === 'fillet' ? y : Math.min(y, widthMm - y));
  const center = farthest(holesOf(finding, drawn), (each) => -fromHeel(each));
  if (!center || limit === undefined) return undefined;
  const sized = comparedSizes(finding, given, drawn);
  const size = (mm: number) => sized(Math.max(0, mm));
  const isUp = beside === 'flange' && center.y > widthMm / 2;
  return {
    from: { x: center.x, y: isUp ? center.y + given : center.y - given },
    to: center,
    open: ['from', 'to'],
    text: `${size(given)} < ${size(limit)}`,
    words: `${whoseWords(finding, drawn.groups)}${withUnit(size(given), unit)} beside the ${beside}, ${governs(finding, unit)} ${withUnit(size(limit), unit)}`,
  };
}

function holesOf({ group }: Finding, { groups }: Drawn): readonly PlacedHole[] {
  return groups.flatMap(({ holes }) => holes).filter((hole) => hole.group === group);
}

function farthest(holes: readonly PlacedHole[], of: (center: Point) => number): Point | undefined {
  return holes
    .map(({ center }) => center)
    .reduce<Point | undefined>((most, each) => (most && of(most) >= of(each) ? most : each), undefined);
}

function whoseWords({ group }: Finding, groups: readonly DrawnGroup[]): string {
  const own = groups.find(({ holes }) => holes[0]?.group === group);
  return own ? `${own.group.title}: ` : '';
}
