import { refuse } from '../inputError.js';
import { quoted } from '../quantity/cellValue.js';
import { formatLength } from '../quantity/formatLength.js';
import { angleRootRadiusMm } from './angleRootRadius.js';
import { readDimensions, requireBelievable, type SectionSource } from './dimension.js';
import type { AngleSection, SectionText } from './section.js';

/**
 * `L3X3X1/4`, `L80x80x8`: leg, leg, thickness; `L80x8`, of equal legs. Metric angles get the root radius of their size.
 */
export function readAngleSection(given: string[], source: SectionSource): SectionText {
  const parts = hasEqualLegs(given, source) ? [given[0] ?? '', ...given] : given;
  if (parts.length < 3) {
    const problem = `${quoted(source.text)} lacks a dimension of the angle.`;
    return refuse(
      source.argument,
      source.text,
      problem,
      'Write leg x leg x thickness: L3X3X1/4 or L80x80x8.',
    );
  }
  const dimensions = readDimensions(parts, 3, source);
  const { valuesMm, unit, lengthMm } = dimensions;
  const [first = 0, second = 0, thicknessMm = 0] = valuesMm;
  const [legAMm, legBMm] = [Math.max(first, second), Math.min(first, second)];
  requireBelievable(legAMm, 'leg', dimensions, source);
  requireBelievable(legBMm, 'leg', dimensions, source);
  requireBelievable(thicknessMm, 'thickness', dimensions, source);
  if (thicknessMm >= legBMm) {
    const problem = `${quoted(source.text)} has a thickness that is not less than its leg.`;
    return refuse(
      source.argument,
      source.text,
      problem,
      'Write leg x leg x thickness: L3X3X1/4 or L80x80x8.',
    );
  }
  const rootRadiusMm = unit === 'in' ? 0 : angleRootRadiusMm(legAMm, legBMm);
  const section: AngleSection = {
    kind: 'angle',
    designation: `L${[legAMm, legBMm, thicknessMm].map((mm) => formatLength(mm, unit)).join('X')}`,
    legAMm,
    legBMm,
    thicknessMm,
    rootRadiusMm: rootRadiusMm ?? 0,
    rootRadiusKnown: rootRadiusMm !== undefined,
  };
  return {
    section,
    ...(lengthMm === undefined ? {} : { lengthMm }),
    ...(first < second ? { shortLegFirst: true } : {}),
  };
}

const loneFraction = /^\d+\/\d+"?$/;
/** How much thinner than a leg a number must be to be a thickness beside it, and not the other leg. */
const thicknessShare = 1 / 3;

/** Two numbers, the second a thickness of the first; or three, the last of which can only be a length. */
function hasEqualLegs(parts: readonly string[], source: SectionSource): boolean {
  if (parts.length !== 2 && parts.length !== 3) return false;
  // Two legs alike, or a fraction behind them, are the usual angle: nothing else need be read.
  if (parts[0] === parts[1] || (parts[2] !== undefined && loneFraction.test(parts[2]))) return false;
  const [leg = 0, second = 0, third] = readDimensions([...parts], parts.length, source).valuesMm;
  const isThickness = second <= leg * thicknessShare;
  return isThickness && (third === undefined || third >= leg);
}
