import type { Finding } from '../check/finding.js';
import type { Sized } from '../check/pressFact.js';
import type { Range } from '../check/range.js';
import { heelDistance } from '../part/heelDistance.js';
import { limitOf, roundingShare, withinLimit } from '../press/limit.js';
import type { PressItemKey } from '../press/item/pressItem.js';
import { legRootMm } from '../section/legRoot.js';
import type { AnySection } from '../section/section.js';
import type { Working } from '../working/working.js';
import { dieHolder } from './dieHolder.js';
import type { FaceSize } from './job/faces.js';
import { fromNearerEdge, type HolesOnPress, openReach, unreachable } from './holesOnPress.js';

/** Room between the fillet and the die holder. Common practice, no source. */
const fitClearanceMm = 25.4 / 16;

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
