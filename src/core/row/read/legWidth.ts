import { formatLength } from '../../quantity/formatLength.js';
import type { LengthUnit } from '../../quantity/units.js';
import type { AnySection } from '../../section/section.js';
import { facesOfLeg, isAsWide } from '../layout/facesOfLeg.js';

/**
 * The gage from the heel and the distance from the toe add up to the leg or flange; a sentence where they do not, in any
 * leg that the row may mean. Undefined for plates and webs, where they are independent. Source: geometry.
 */
export function legWidthProblem(
  section: AnySection,
  leg: string | undefined,
  edgeMm: number,
  gageMm: number,
  unit: LengthUnit,
): string | undefined {
  const widths = widthsOf(section, leg, unit);
  const sumMm = edgeMm + gageMm;
  if (widths.length === 0 || widths.some((each) => isAsWide(each, sumMm, unit))) {
    return undefined;
  }
  const size = (mm: number) => `${formatLength(mm, unit)} ${unit}`;
  const part = section.kind === 'channel' ? 'flange' : 'leg';
  const wide = [...new Set(widths)].map(size).join(' or ');
  return `${size(edgeMm)} from the toe and Gage ${size(gageMm)} from the heel add up to ${size(sumMm)}; the ${part} is ${wide} wide. Correct one of them.`;
}

function widthsOf(section: AnySection, leg: string | undefined, unit: LengthUnit): readonly number[] {
  const faces = facesOfLeg(section, leg, unit);
  return faces.every(({ heel }) => heel) ? faces.map(({ widthMm }) => widthMm) : [];
}
