import { refuse } from '../inputError.js';
import type { AnySection, SectionText } from './section.js';

/**
 * The widths a section may have in the plane of its miters, by how it lies: of an angle its legs, of a flat its width.
 */
export function planeWidthsMm(section: AnySection): readonly [number, ...number[]] {
  switch (section.kind) {
    case 'flat':
      return [section.widthMm];
    case 'angle':
      return [section.legAMm, section.legBMm];
    case 'round':
    case 'round tube':
      return [section.diameterMm];
    case 'square':
      return [section.sideMm];
    case 'tube':
      return [section.depthMm, section.widthMm];
    case 'channel':
    case 'tee':
    case 'beam':
      return [section.depthMm, section.flangeWidthMm];
  }
}

/**
 * The width of a section in the plane of its miters: of a flat its width, of an angle the leg written first, of round
 * and square bars and tubes their size.
 *
 * Formula: as designated
 * @param read a section as it was read
 * @param argument what it is, for the refusal
 * @returns length in mm
 * Valid for what has one such width. Throws `invalid` for sections that may lie in two ways, such as channels.
 * @example planeWidthMm(readAnySection('L3X4X1/4', 'Section', 'in'), 'Section') // 76.2
 * Source: the designation; that the first leg lies in the plane is a convention of this library.
 */
export function planeWidthMm({ section, shortLegFirst }: SectionText<AnySection>, argument: string): number {
  const [first, ...others] = planeWidthsMm(section);
  if (section.kind === 'angle') return shortLegFirst ? section.legBMm : first;
  if (others.every((each) => each === first)) return first;
  const { designation } = section;
  const problem = `${designation} has two widths, by how it lies in the plane of the miter.`;
  return refuse(
    argument,
    designation,
    problem,
    'Write a flat as wide as it is in that plane, such as FB 1/4x4.',
  );
}
