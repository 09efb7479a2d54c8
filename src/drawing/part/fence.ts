import type { FaceId } from '../../core/part/part.js';
import type { Section } from '../../core/section/section.js';

/** The long edges of a part as it lies on the press: the far one, the near one. */
export type Side = 'throat' | 'operator';

/** Where the fence is, and what of the part lies along it. */
export interface Fence {
  side: Side;
  edge: 'edge' | 'heel' | 'back of the web';
}

/** Legs and flanges lie heel to the fence and go toe first into the throat; the rest has the fence at its far edge. */
export function fenceOf(section: Section, face: FaceId): Fence {
  if (section.kind === 'angle') return { side: 'operator', edge: 'heel' };
  if (section.kind === 'channel' && face !== 'web') return { side: 'operator', edge: 'back of the web' };
  return { side: 'throat', edge: 'edge' };
}

/** How a leg or a flange lies; nothing to say of an edge. */
export function lyingWords({ side, edge }: Fence): string[] {
  return side === 'operator' ? [`${edge} at the fence, toe into the throat`] : [];
}
