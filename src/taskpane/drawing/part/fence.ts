import type { HolePlace } from '../../../core/row/holePlace.js';
import type { Section } from '../../../core/section/section.js';
import type { Side } from './work.js';

/** Where the fence is, and what of the part lies along it. */
export interface Fence {
  side: Side;
  edge: 'edge' | 'heel' | 'back of the web';
}

/** Legs and flanges lie heel to the fence and go toe first into the throat; the rest has the fence at its far edge. */
export function fenceOf(section: Section, element: HolePlace['element'] | undefined): Fence {
  if (section.kind === 'angle') return { side: 'operator', edge: 'heel' };
  if (element === 'flange') return { side: 'operator', edge: 'back of the web' };
  return { side: 'throat', edge: 'edge' };
}

/** How a leg or a flange lies; nothing to say of an edge. */
export function lyingWords({ side, edge }: Fence): string[] {
  return side === 'operator' ? [`${edge} at the fence, toe into the throat`] : [];
}
