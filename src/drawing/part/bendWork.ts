import type { Point } from '../../core/part/point.js';
import { formatLength } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { RowJob } from '../../core/row/job/rowJob.js';
import { notDrawn } from './cuts.js';
import type { DrawnFace } from './drawnFace.js';
import { counted, noWork, type Work } from './work.js';

const name = ['bend', 'bends'] as const;

export function bendWork(
  { bends }: RowJob,
  { bends: placed, face }: DrawnFace,
  place: (point: Point) => string,
  unit: LengthUnit,
): Work {
  if (!bends) return noWork(name);
  const { count, lengthMm } = bends;
  const size = `${formatLength(lengthMm, unit)} ${unit}`;
  const said = notDrawn(name, 'Bend at', { asked: count, here: placed.length, anywhere: placed.length });
  return {
    name,
    words: [`${counted(count, name)} ${size} long`],
    said,
    facts: [{ work: 'Bend', size, count, drawnAs: said.join('; ') || 'given' }],
    marks: placed.map(({ from, to, runs }, at) => {
      const middle = {
        x: runs === 'across' ? from.x : markAlong(from, to, face.widthMm),
        y: (from.y + to.y) / 2,
      };
      return {
        ...middle,
        label: `Bend, ${at + 1} of ${count}, ${size} long, ${runs} the part: ${place(middle)}.`,
      };
    }),
  };
}

/** A bend along the part is pointed at near its end, which is shown of a long one. */
function markAlong(from: Point, to: Point, widthMm: number): number {
  return from.x + Math.min(widthMm, (to.x - from.x) / 4);
}
