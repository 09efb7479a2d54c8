import type { AnySection } from './section.js';

/** The greatest width of a section's sides, in mm: no hole across it is as large. Source: geometry. */
export function greatestSideMm(section: AnySection): number {
  switch (section.kind) {
    case 'flat':
      return section.widthMm;
    case 'angle':
      return section.legAMm;
    case 'round':
    case 'round tube':
      return section.diameterMm;
    case 'square':
      return section.sideMm;
    case 'tube':
      return section.depthMm;
    default:
      return Math.max(section.depthMm, section.flangeWidthMm);
  }
}
