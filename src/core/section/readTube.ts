import { refuse } from '../inputError.js';
import { quoted } from '../quantity/cellValue.js';
import { formatLength } from '../quantity/formatLength.js';
import { type Dimensions, readDimensions, requireBelievable, type SectionSource } from './dimension.js';
import type { AnySection, SectionText } from './section.js';

type Written = { sizes: number[]; round: boolean };

/**
 * `HSS4X4X1/4`, `RHS100x50x5`, `SHS50x3` by sides and wall; `HSS4.000X0.250`, `CHS60.3x3.2`, `PIPE60.3x3.2` by outside
 * diameter and wall. A word that says neither form is told by its numbers: three make sides and wall, two a diameter
 * and wall, whatever trails that is too thick for a wall is the length.
 */
export function readTube(word: string, parts: string[], source: SectionSource): SectionText<AnySection> {
  if (parts.length < 2) return lacking(source);
  const round = word === 'chs';
  const equal = word === 'shs' && !threeSizes(parts, source);
  if (round || equal || !threeSizes(parts, source)) {
    if (word === 'tube' || word === 'rhs') return lacking(source);
    const dimensions = readDimensions(parts, 2, source);
    const [outside = 0, wall = 0] = dimensions.valuesMm;
    const sizes = equal ? [outside, outside, wall] : [outside, wall];
    return section({ sizes, round: !equal }, dimensions, source);
  }
  const dimensions = readDimensions(parts, 3, source);
  return section({ sizes: dimensions.valuesMm, round: false }, dimensions, source);
}

/** Whether the third number can be a wall of the first two; if not, it is a length behind two. */
function threeSizes(parts: string[], source: SectionSource): boolean {
  if (parts.length < 3) return false;
  if (parts.length > 3) return true;
  const [a = 0, b = 0, wall = 0] = readDimensions(parts, 3, source).valuesMm;
  return wall < Math.min(a, b) / 2;
}

function section(
  { sizes, round }: Written,
  dimensions: Dimensions,
  source: SectionSource,
): SectionText<AnySection> {
  const { unit, lengthMm } = dimensions;
  const outside = sizes.slice(0, -1);
  const thicknessMm = sizes.at(-1) ?? 0;
  for (const mm of outside) requireBelievable(mm, 'tube', dimensions, source);
  requireBelievable(thicknessMm, 'thickness', dimensions, source);
  const [depthMm, widthMm] = [Math.max(...outside), Math.min(...outside)];
  if (thicknessMm >= widthMm / 2) {
    const problem = `${quoted(source.text)} has a wall that is not under half the tube.`;
    return refuse(source.argument, source.text, problem, examples);
  }
  const names = round ? [depthMm, thicknessMm] : [depthMm, widthMm, thicknessMm];
  const family = unit === 'in' ? 'HSS' : round ? 'CHS' : depthMm === widthMm ? 'SHS' : 'RHS';
  const designation = `${family}${names.map((mm) => formatLength(mm, unit)).join('X')}`;
  const found: AnySection = round
    ? { kind: 'round tube', designation, diameterMm: depthMm, thicknessMm }
    : { kind: 'tube', designation, depthMm, widthMm, thicknessMm };
  return lengthMm === undefined ? { section: found } : { section: found, lengthMm };
}

const examples = 'Write HSS4X4X1/4, RHS100x50x5, or a round one as HSS4.000X0.250, CHS60.3x3.2.';

function lacking({ argument, text }: SectionSource): never {
  return refuse(argument, text, `${quoted(text)} lacks a dimension of the tube.`, examples);
}
