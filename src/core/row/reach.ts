import type { Finding, Outcome } from '../check/finding.js';
import type { Sized } from '../check/pressFact.js';
import type { Range } from '../check/range.js';
import type { OpenCell } from '../check/rowFact.js';
import { heelDistance } from '../part/heelDistance.js';
import type { PlacedHole } from '../part/part.js';
import { limitOf, limitStep, roundingShare, withinLimit } from '../press/limit.js';
import type { Press } from '../press/press.js';
import type { PressItemKey } from '../press/pressItem.js';
import { legRootMm } from '../section/legRoot.js';
import type { AnySection } from '../section/section.js';
import type { Working } from '../working/working.js';
import type { FaceSize } from './layout/faces.js';
import type { LaidGroup } from './layout/layGroup.js';

const unreachable = "Can't reach";
/** Room between the fillet and the die holder. Common practice, no source. */
const fitClearanceMm = 25.4 / 16;

/** The holes of a group in a face, on a press. */
export interface HolesOnPress {
  press: Press;
  section: AnySection;
  face: FaceSize;
  laid: LaidGroup;
  /** Of a plate whose ends are square: it may be turned, and go in from an end. */
  lengthMm?: number;
}

/** Whether the punch gets to the holes: throat, standing legs and flanges, die holder against the fillet. */
export function reachFindings(holes: HolesOnPress, working?: Working): Finding[] {
  const { face, press, section } = holes;
  if (face.id === 'plate') return [throat(holes, working)];
  if (face.id === 'web') {
    // A flange with a fillet about as large as it is thick. From memory: no table built in has the radius.
    const flangeMm = section.kind === 'channel' ? 2 * section.flangeThicknessMm : 0;
    return [throat(holes, working), dieHolder(holes, 'flange', flangeMm, working)];
  }
  const hanging = {
    item: 'punchClearUnderDie',
    sized: { is: 'part below the die' },
    given: hangingMm(section, face),
    over: unreachable,
  } as const;
  return [
    withinLimit(press, hanging, working),
    heldBetween(holes, 'punchThroat', { is: 'hole to toe' }, fromToe(holes), working),
    dieHolder(holes, 'fillet', filletMm(section) + fitClearanceMm, working),
  ];
}

/** Work goes in from any side: across from either edge, and turned around from the nearer end where its place is known. */
function throat(holes: HolesOnPress, working?: Working): Finding {
  const { widthMm } = holes.face;
  const given = rangeOver(holes, (centers, alongMm) => {
    const { least, most } = fromNearerEdge(centers, widthMm);
    return { least: Math.min(least, alongMm), most: Math.min(most, alongMm) };
  });
  return heldBetween(holes, 'punchThroat', { is: 'hole to nearer edge' }, given, working);
}

/** How far centers that lie in a range across are from the nearer edge: at most half the width. */
function fromNearerEdge({ least, most }: Range, widthMm: number): Range {
  const nearer = (mm: number) => Math.min(mm, widthMm - mm);
  const middle = least <= widthMm / 2 && most >= widthMm / 2 ? widthMm / 2 : 0;
  return {
    least: Math.min(nearer(least), nearer(most)),
    most: Math.max(nearer(least), nearer(most), middle),
  };
}

/** Legs and flanges lie on the die, the other leg or the web hanging down; the far side goes into the throat. */
function fromToe(holes: HolesOnPress): Range {
  const { widthMm } = holes.face;
  return rangeOver(holes, ({ least, most }) => ({ least: widthMm - most, most: widthMm - least }));
}

/** The worst of all holes at their worst, and the worst of all at their best. */
function rangeOver(
  { laid, lengthMm = 0 }: HolesOnPress,
  of: (centers: Range, fromEndMm: number) => Range,
): Range {
  const ranges = laid.holes.map((hole) => {
    const { center, free } = hole;
    const placed = lengthMm > 0 && (!free || free.x0 === free.x1);
    return of(
      heelDistance(hole).center,
      placed ? Math.min(center.x, Math.abs(lengthMm - center.x)) : Infinity,
    );
  });
  return {
    least: Math.max(...ranges.map(({ least }) => least)),
    most: Math.max(...ranges.map(({ most }) => most)),
  };
}

/** One hole of each line: the others of a line lie as far across. */
function distinct(holes: readonly PlacedHole[]): PlacedHole[] {
  const kept: PlacedHole[] = [];
  const seen = new Set<string>();
  for (const hole of holes) {
    // Holes of a line follow each other.
    const last = kept.at(-1);
    if (last && isAsFarAcross(hole, last)) continue;
    const key = `${hole.center.y} ${hole.free?.y0 ?? 0} ${hole.free?.y1 ?? 0}`;
    if (!seen.has(key)) kept.push(hole);
    seen.add(key);
  }
  return kept;
}

function isAsFarAcross(a: PlacedHole, b: PlacedHole): boolean {
  if (a.center.y !== b.center.y) return false;
  return (a.free?.y0 ?? 0) === (b.free?.y0 ?? 0) && (a.free?.y1 ?? 0) === (b.free?.y1 ?? 0);
}

/** A size that may be several, within a limit of the press: by all of them, by none, or by some. */
function heldBetween(
  { press, laid }: HolesOnPress,
  item: PressItemKey,
  sized: Sized,
  given: Range,
  working?: Working,
): Finding {
  const limit = limitOf(press, item);
  const isOpen =
    typeof limit === 'number' &&
    given.least <= limit * (1 + roundingShare) &&
    given.most > limit * (1 + roundingShare);
  if (!isOpen) {
    const worst =
      typeof limit === 'number' && given.least > limit * (1 + roundingShare) ? given.least : given.most;
    return withinLimit(press, { item, sized, given: worst, over: unreachable }, working);
  }
  return openReach(press, laid, item, given, limit);
}

function openReach(
  press: Press,
  { index, missing }: LaidGroup,
  item: PressItemKey,
  given: Range,
  limit: number,
): Finding {
  const acrossCells = missing.filter((cell) => cell === 'Edge' || cell === 'Gage');
  const cells: OpenCell[] = (acrossCells.length > 0 ? acrossCells : missing).map((cell) => ({
    cell,
    group: index,
  }));
  return {
    rule: 'reach open',
    outcome: 'open',
    verdict: 'Not checked',
    press: press.name,
    item,
    given,
    limit,
    missing: cells,
  };
}

function hangingMm(section: AnySection, { id }: FaceSize): number {
  if (section.kind === 'channel') return section.depthMm;
  if (section.kind !== 'angle') return 0;
  return id === 'leg A' ? section.legBMm : section.legAMm;
}

/** From the heel of a leg, or the back of a flange, to where its flat begins; a channel's fillet as large as its flange. */
function filletMm(section: AnySection): number {
  if (section.kind === 'channel') {
    return section.webThicknessMm + Math.max(section.webThicknessMm, section.flangeThicknessMm);
  }
  return section.kind === 'angle' ? legRootMm(section) : 0;
}

/** Whether the die holder fits between the holes and the fillet or flange beside them. */
function dieHolder(
  holes: HolesOnPress,
  beside: 'fillet' | 'flange',
  takenMm: number,
  working?: Working,
): Finding {
  const { press, laid } = holes;
  const item = 'punchDieHalfWidth';
  const room = roomBeside(holes, beside, takenMm);
  const half = limitOf(press, item);
  if (typeof half !== 'number') {
    limitStep(
      working,
      press,
      item,
      { kind: 'length', value: room.most, meaning: meaningOf(beside) },
      '≥',
      half.verdict,
    );
    return half;
  }
  const needMm = half * (1 - roundingShare);
  const outcome: Outcome =
    !Number.isFinite(half) || room.least >= needMm ? 'held' : room.most >= needMm ? 'open' : 'failed';
  const given = outcome === 'failed' ? room.most : room.least;
  const verdict = outcome === 'held' ? 'OK' : unreachable;
  limitStep(working, press, item, { kind: 'length', value: given, meaning: meaningOf(beside) }, '≥', verdict);
  if (outcome === 'open') return openReach(press, laid, item, room, half);
  return {
    rule: 'die holder',
    outcome,
    verdict,
    press: press.name,
    beside,
    given,
    ...(Number.isFinite(half) ? { limit: half } : {}),
  };
}

function meaningOf(beside: 'fillet' | 'flange'): string {
  return `from the hole to the ${beside}`;
}

/** From the holes to what stands up beside them: the fillet of a leg; the nearer flange of a web. */
function roomBeside({ laid, face }: HolesOnPress, beside: 'fillet' | 'flange', takenMm: number): Range {
  const ranges = distinct(laid.holes).map((hole): Range => {
    const { center } = heelDistance(hole);
    return beside === 'fillet' ? center : fromNearerEdge(center, face.widthMm);
  });
  return {
    least: Math.min(...ranges.map(({ least }) => least)) - takenMm,
    most: Math.min(...ranges.map(({ most }) => most)) - takenMm,
  };
}
