import type { Grade } from '../../material/grade.js';
import { gradeKey } from '../../material/gradeKey.js';
import type { AnySection } from '../../section/section.js';

/** Sizes that are one but for rounding: 1/4 in and 6.35 mm. */
const decimals = 3;

/**
 * The same text for sections that are one piece of steel, however they are written: `L3X3X1/4` and `L 3 x 3 x .25`, a
 * flat bar and a plate of its width.
 */
export function sectionKey(section: AnySection): string {
  const sizes = (...mm: number[]) => [section.kind, ...mm.map((each) => each.toFixed(decimals))].join(' ');
  switch (section.kind) {
    case 'flat':
      return sizes(section.widthMm, section.thicknessMm);
    case 'angle':
      return sizes(section.legAMm, section.legBMm, section.thicknessMm);
    case 'round':
      return sizes(section.diameterMm);
    case 'square':
      return sizes(section.sideMm);
    case 'tube':
      return sizes(section.depthMm, section.widthMm, section.thicknessMm);
    case 'round tube':
      return sizes(section.diameterMm, section.thicknessMm);
    case 'tee':
      return sizes(section.flangeWidthMm, section.depthMm, section.thicknessMm);
    case 'channel':
    case 'beam':
      return `${section.kind} ${section.name}`;
  }
}

/** The same for grades that are one: `A36` and `ASTM A36`. */
export function jobKey(section: AnySection, grade: Pick<Grade, 'name'>): string {
  return `${sectionKey(section)} | ${gradeKey(grade.name)}`;
}
