import { refuse } from '../inputError.js';
import { quoted } from '../quantity/cellValue.js';
import { formatLength } from '../quantity/formatLength.js';
import { readDimensions, requireBelievable, type SectionSource } from './dimension.js';
import type { AnySection, SectionText } from './section.js';

const example = 'Write flange x stem x thickness: T3X3X3/8 or T50x50x6.';

/** Equal tees by their size, thickness in mm. Source: EN 10055 (from memory). */
const equalTees = new Map([
  [30, 4],
  [35, 4.5],
  [40, 5],
  [50, 6],
  [60, 7],
  [70, 8],
  [80, 9],
  [100, 11],
  [120, 13],
  [140, 15],
]);

/** `T 50`, an equal tee of the table, or `T3X3X3/8`: flange width, depth of the stem over all, thickness. */
export function readTee(parts: string[], source: SectionSource): SectionText<AnySection> {
  const tabled = parts.length === 1 ? equalTees.get(Number(parts[0])) : undefined;
  if (tabled !== undefined)
    return readTee([parts[0] ?? '', parts[0] ?? '', String(tabled)], { ...source, unit: 'mm' });
  if (parts.length < 3) {
    const problem = `${quoted(source.text)} lacks a dimension of the tee.`;
    return refuse(source.argument, source.text, problem, example);
  }
  const dimensions = readDimensions(parts, 3, source);
  const { valuesMm, unit, lengthMm } = dimensions;
  const [flangeWidthMm = 0, depthMm = 0, thicknessMm = 0] = valuesMm;
  requireBelievable(flangeWidthMm, 'leg', dimensions, source);
  requireBelievable(depthMm, 'leg', dimensions, source);
  requireBelievable(thicknessMm, 'thickness', dimensions, source);
  if (thicknessMm >= Math.min(flangeWidthMm, depthMm)) {
    const problem = `${quoted(source.text)} has a thickness that is not less than its flange and stem.`;
    return refuse(source.argument, source.text, problem, example);
  }
  const names = [flangeWidthMm, depthMm, thicknessMm].map((mm) => formatLength(mm, unit));
  const section = {
    kind: 'tee',
    designation: `T${names.join('X')}`,
    flangeWidthMm,
    depthMm,
    thicknessMm,
  } as const;
  return lengthMm === undefined ? { section } : { section, lengthMm };
}
