import type { FaceId } from '../part/part.js';
import type { AnySection } from '../section/section.js';

/** A face as a list names it: `plate`, `long leg`, `web`. */
export function faceName(face: FaceId, section: AnySection): string {
  if (section.kind !== 'angle' || section.legAMm === section.legBMm) return face;
  return face === 'leg A' ? 'long leg' : 'short leg';
}
