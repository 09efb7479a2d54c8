import type { Point } from '../../core/part/point.js';
import { formatLength } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { RowJob } from '../../core/row/job/rowJob.js';
import { cutsOf, middleOf, notDrawn } from './cuts.js';
import type { DrawnFace } from './drawnFace.js';
import { counted, noWork, type Work } from './work.js';

const name = ['notch', 'notches'] as const;

export function notchWork(
  { notches }: RowJob,
  { face, faces, problem }: DrawnFace,
  place: (point: Point) => string,
  unit: LengthUnit,
): Work {
  if (!notches) return noWork(name);
  const { widthMm, depthMm, count } = notches;
  const size = (mm: number) => formatLength(mm, unit);
  const both = `${size(widthMm)} × ${size(depthMm)} ${unit}`;
  const here = cutsOf(face, 'notch');
  const anywhere = faces.reduce((sum, each) => sum + cutsOf(each, 'notch').length, 0);
  const said = problem ? [] : notDrawn(name, 'Notch at', { asked: count, here: here.length, anywhere });
  return {
    name,
    words: [`${counted(count, name)} ${both}`],
    said,
    facts: [
      { work: 'Notch', size: both, count, drawnAs: problem ? 'not drawn' : said.join('; ') || 'given' },
    ],
    marks: here.map((cut, at) => ({
      ...middleOf(cut),
      label: `Notch, ${at + 1} of ${count}, ${size(widthMm)} ${unit} wide, ${size(depthMm)} ${unit} deep: its bottom ${place(middleOf(cut))}.`,
    })),
  };
}
