import type { Finding } from '../check/finding.js';
import type { Range } from '../check/range.js';
import type { OpenCell } from '../check/rowFact.js';
import type { Press } from '../press/press.js';
import type { PressItemKey } from '../press/item/pressItem.js';
import type { FaceSize } from './job/faces.js';
import type { LaidGroup } from './layout/layGroup.js';
import type { AnySection } from '../section/section.js';

/** The word for holes that the punch does not get to. */
export const unreachable = "Can't reach";

/** The holes of a group in a face, on a press. */
export interface HolesOnPress {
  press: Press;
  section: AnySection;
  face: FaceSize;
  laid: LaidGroup;
  /** Of a plate whose ends are square: it may be turned, and go in from an end. */
  lengthMm?: number;
}

/** A limit of the press that holds by some of the places a hole may have: open, with the cells that would place it. */
export function openReach(
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

/** How far centers that lie in a range across are from the nearer edge: at most half the width. */
export function fromNearerEdge({ least, most }: Range, widthMm: number): Range {
  const nearer = (mm: number) => Math.min(mm, widthMm - mm);
  const middle = least <= widthMm / 2 && most >= widthMm / 2 ? widthMm / 2 : 0;
  return {
    least: Math.min(nearer(least), nearer(most)),
    most: Math.max(nearer(least), nearer(most), middle),
  };
}
