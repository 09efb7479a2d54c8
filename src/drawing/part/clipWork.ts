import type { Point } from '../../core/part/point.js';
import { formatLength } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { RowJob } from '../../core/row/job/rowJob.js';
import { cutsOf, middleOf, notDrawn } from './cuts.js';
import type { DrawnFace } from './drawnFace.js';
import { counted, noWork, type Work } from './work.js';

const name = ['clipped corner', 'clipped corners'] as const;
const corner = ['corner', 'corners'] as const;

export function clipWork(
  { clips }: RowJob,
  { face, faces, choices, problem }: DrawnFace,
  place: (point: Point) => string,
  unit: LengthUnit,
): Work {
  if (!clips) return noWork(name);
  const { alongMm, acrossMm, count } = clips;
  const size = `${formatLength(alongMm, unit)} × ${formatLength(acrossMm, unit)} ${unit}`;
  const here = cutsOf(face, 'clip');
  const anywhere = faces.reduce((sum, each) => sum + cutsOf(each, 'clip').length, 0);
  const said = problem ? [] : notDrawn(name, 'Clip at', { asked: count, here: here.length, anywhere });
  const isChosen = choices.some(({ cell }) => cell === 'Clip at');
  const drawnAs = [...(isChosen ? ['one of several: Clip at would settle it'] : []), ...said].join('; ');
  return {
    name,
    words: [`${counted(count, corner)} clipped ${size}`],
    said,
    facts: [{ work: 'Corner clip', size, count, drawnAs: problem ? 'not drawn' : drawnAs || 'given' }],
    marks: here.map((cut, at) => ({
      ...middleOf(cut),
      label: `Corner clip, ${at + 1} of ${count}, ${size}: its middle ${place(middleOf(cut))}${isChosen ? '; which corner is not given' : ''}.`,
    })),
  };
}
