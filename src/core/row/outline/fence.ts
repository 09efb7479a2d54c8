import type { AnySection } from '../../section/section.js';
import type { HolePlace } from '../holePlace.js';
import type { Side } from './place.js';

/** Where the fence is, and what of the part lies along it. */
export interface Fence {
  side: Side;
  edge: 'edge' | 'heel' | 'back of the web';
}

/** Legs and flanges lie heel to the fence and go toe first into the throat; the rest has the fence at its far edge. */
export function fenceOf(section: AnySection, element: HolePlace['element'] | undefined): Fence {
  if (section.kind === 'angle') return { side: 'operator', edge: 'heel' };
  if (element === 'flange') return { side: 'operator', edge: 'back of the web' };
  return { side: 'throat', edge: 'edge' };
}
