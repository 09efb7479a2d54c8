import type { Finding } from '../check/finding.js';
import { isCutBySaw } from '../press/shearStation.js';
import { isNotchedOnPress } from './job/needsPress.js';
import type { PlacedHoles, ReadyRow } from './job/readyRow.js';

/** The steps a part can take through the shop. */
export type RouteStep =
  | 'saw'
  | 'burn'
  | 'shear'
  | 'punch'
  | 'ream'
  | 'notch'
  | 'bend'
  | 'drill'
  | 'tap'
  | 'countersink';

/** A cut piece shorter than this is hard to hold under the punch. Common practice, no source. */
const easyToHoldMm = 100;

/**
 * The order of work: cut, punch, notch, bend, drill, tap, countersink. A piece that is too small to hold is punched before it is
 * cut. Holes that may not be punched, or are too small for a punch, are drilled. Common practice, no source.
 */
export function routeOf(row: ReadyRow, findings: readonly Finding[]): RouteStep[] {
  const { section, lengthMm, miterRad, places } = row;
  const miteredBar = (section.kind === 'round' || section.kind === 'square') && miterRad > 0;
  const cut = cutStep(row, isCutBySaw(section) || miteredBar);
  const punched = places.filter((placed) => isPunched(placed, findings));
  const first: RouteStep[] = punched.length > 0 ? ['punch'] : [];
  const small = lengthMm !== undefined && lengthMm < easyToHoldMm && cut === 'shear';
  const cuts: RouteStep[] = cut === undefined ? [] : [cut];
  const route: RouteStep[] = small ? [...first, ...cuts] : [...cuts, ...first];
  if (punched.some(({ faces }) => faces.some(({ process }) => process.made === 'ream'))) route.push('ream');
  if (isNotchedOnPress(row)) route.push('notch');
  if (row.bends) route.push('bend');
  if (punched.length < places.length) route.push('drill');
  const finishing = places.flatMap(({ group }) => group.finishing ?? []);
  for (const step of ['tap', 'countersink'] as const) if (finishing.includes(step)) route.push(step);
  return route;
}

/** How the part is cut: as the row says; else sawn where no shear cuts it. What is bought to length is not cut. */
function cutStep({ cutBy }: ReadyRow, sawn: boolean): RouteStep | undefined {
  if (cutBy === 'bought') return undefined;
  if (cutBy === 'saw' || cutBy === 'burn') return cutBy;
  return sawn ? 'saw' : 'shear';
}

/** Whether the press makes the holes: not where the job's specification has them drilled, nor where they are too small. */
export function isPunched({ index, faces }: PlacedHoles, findings: readonly Finding[]): boolean {
  if (!faces.some(({ process }) => process.made !== 'drill')) return false;
  return !findings.some(({ verdict, group }) => verdict === 'Hole too small' && group === index);
}
