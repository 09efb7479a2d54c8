import type { Edge } from '../../part/outline.js';
import type { AnySection } from '../../section/section.js';
import type { FaceSize } from '../job/faces.js';

/**
 * The thickness of what stands up from a face at an edge, in mm: the other leg at a heel, the web at the back of a
 * flange, a flange at either edge of a web. A hole that reaches into it is cut into the other side of the section. 0 at a
 * free edge. Source: geometry.
 */
export function adjoiningMm(section: AnySection, face: FaceSize, { cause }: Edge): number {
  if (section.kind === 'angle') return cause.is === 'heel' ? section.thicknessMm : 0;
  if (section.kind !== 'channel') return 0;
  if (face.id === 'web') {
    return cause.is === 'bottom edge' || cause.is === 'top edge' ? section.flangeThicknessMm : 0;
  }
  return cause.is === 'heel' ? section.webThicknessMm : 0;
}
