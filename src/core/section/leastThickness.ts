import type { Section } from './section.js';

/** The thickness of a section in mm that decides its tensile strength: of a solid bar its size, of a channel its web. */
export function leastThicknessMm(section: Section): number {
  switch (section.kind) {
    case 'round':
      return section.diameterMm;
    case 'square':
      return section.sideMm;
    case 'channel':
      return section.webThicknessMm;
    default:
      return section.thicknessMm;
  }
}
