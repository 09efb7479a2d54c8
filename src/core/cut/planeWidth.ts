import { refuse } from '../inputError.js';
import type { AnySection, SectionText } from '../section/section.js';

/** The kinds of section whose width in the plane of a miter depends on how they lie. */
const ways: Partial<Record<AnySection['kind'], string>> = {
  channel: 'its web or its flanges',
  tee: 'its flange or its stem',
  beam: 'its flanges or its web',
  tube: 'either side',
};

/**
 * The width of a section in the plane of its miters: of a flat its width, of an angle the leg written first, of round
 * and square bars and tubes their size.
 *
 * Formula: as designated
 * @param read a section as it was read
 * @param argument what it is, for the refusal
 * @returns length in mm
 * Valid for what has one such width. Throws `invalid` for channels, tees, beams and tubes of two sides.
 * @example planeWidthMm(readAnySection('L3X4X1/4', 'Section', 'in'), 'Section') // 76.2
 * Source: the designation; that the first leg lies in the plane is a convention of this library.
 */
export function planeWidthMm(read: SectionText<AnySection>, argument: string): number {
  const { section, shortLegFirst } = read;
  switch (section.kind) {
    case 'flat':
      return section.widthMm;
    case 'angle':
      return shortLegFirst ? section.legBMm : section.legAMm;
    case 'round':
    case 'round tube':
      return section.diameterMm;
    case 'square':
      return section.sideMm;
    case 'tube':
      if (section.depthMm === section.widthMm) return section.depthMm;
  }
  const { designation } = section;
  return refuse(
    argument,
    designation,
    `${designation} may be mitered across ${ways[section.kind] ?? 'either side'}.`,
    'Give a flat of that width in its place.',
  );
}
