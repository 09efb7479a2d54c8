import type { Finding } from '../press/finding.js';
import { isCutBySaw } from '../press/shearStation.js';
import type { ReadyRow } from './checkOnPress.js';

/** The steps a part can take through the shop. */
export type RouteStep = 'saw' | 'shear' | 'punch' | 'ream' | 'notch' | 'bend' | 'drill';

/** A cut piece shorter than this is hard to hold under the punch. Common practice, no source. */
const easyToHoldMm = 100;

/**
 * The order of work: cut, punch, notch, bend, drill. A piece that is too small to hold is punched before it is
 * cut. Holes that may not be punched, or are too small for a punch, are drilled. Common practice, no source.
 */
export function routeOf(row: ReadyRow, findings: readonly Finding[]): RouteStep[] {
  const { section, lengthMm, miterRad, places, drilledInBar } = row;
  const mitredBar = (section.kind === 'round' || section.kind === 'square') && miterRad > 0;
  const cut: RouteStep = isCutBySaw(section) || mitredBar ? 'saw' : 'shear';
  const tooSmall = findings.filter(({ verdict }) => verdict === 'Hole too small').length;
  const punched = places.filter(({ process }) => process.made !== 'drill').length > tooSmall;
  const first: RouteStep[] = punched ? ['punch'] : [];
  const small = lengthMm !== undefined && lengthMm < easyToHoldMm && cut === 'shear';
  const route: RouteStep[] = small ? [...first, cut] : [cut, ...first];
  if (places.some(({ process }) => process.made === 'ream')) route.push('ream');
  if (row.notches || row.clips) route.push('notch');
  if (row.bends) route.push('bend');
  if (tooSmall > 0 || drilledInBar || places.some(({ process }) => process.made === 'drill'))
    route.push('drill');
  return route;
}
