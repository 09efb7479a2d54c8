import type { Face } from '../../core/part/part.js';
import { formatLength, formatNumber } from '../../core/quantity/formatLength.js';
import { type LengthUnit, radianPerDegree } from '../../core/quantity/units.js';
import type { PartEnd, RowJob } from '../../core/row/job/rowJob.js';
import type { DrawnFace } from './drawnFace.js';
import type { Fence } from './fence.js';
import { spanAlong } from './outlineSpan.js';
import { noWork, type Work } from './work.js';

const name = ['miter', 'miters'] as const;

/** A mitered end as it lies: where its line meets the two long edges of the face. */
export interface DrawnMiter {
  end: PartEnd;
  miterRad: number;
  /** The side that keeps the long point. */
  long: 'bottom' | 'top';
  longX: number;
  shortX: number;
}

/** The mitered ends of a face. */
export function mitersOf(job: RowJob, { outline, widthMm }: Face): DrawnMiter[] {
  return (['left', 'right'] as const).flatMap((end): DrawnMiter[] => {
    const edge = outline.edges.find(({ cause }) => cause.is === `miter ${end}`);
    const miterRad = radOf(job, end);
    if (!edge || miterRad === 0) return [];
    const { from, to } = edge;
    const xAt = (y: number) => from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x);
    const [bottom, top] = [xAt(0), xAt(widthMm)];
    const isBottomLong = end === 'left' ? bottom < top : bottom > top;
    const [longX, shortX] = isBottomLong ? [bottom, top] : [top, bottom];
    return [{ end, miterRad, long: isBottomLong ? 'bottom' : 'top', longX, shortX }];
  });
}

export function miterText(miterRad: number): string {
  return `${formatNumber(miterRad / radianPerDegree, 1)}°`;
}

/** The miters as drawn, and the side that keeps the long point. */
export function miterWork(job: RowJob, drawn: DrawnFace, { edge }: Fence, unit: LengthUnit): Work {
  const asked = (['left', 'right'] as const).filter((end) => radOf(job, end) > 0);
  if (asked.length === 0) return noWork(name);
  const { face, choices, problem } = drawn;
  const miters = mitersOf(job, face);
  const isChosen = choices.some(({ cell }) => cell === 'Long side' || cell === 'Miter leg');
  const sideOf = ({ long }: DrawnMiter) => sideWords(edge, long);
  const elsewhere =
    !problem && miters.length < asked.length ? ['the miter is in another leg, which is not drawn'] : [];
  return {
    name,
    words: [`miter ${asked.map((end) => `${miterText(radOf(job, end))} ${end}`).join(', ')}`],
    said: [...elsewhere, ...shortSide(job, face, miters, unit)],
    facts: asked.map((end) => {
      const miter = miters.find((each) => each.end === end);
      const long = miter ? `long point at ${sideOf(miter)}` : 'not drawn';
      const drawnAs = `${long}${miter && isChosen ? ', one of several ways' : ''}`;
      return { work: `Miter ${end}`, size: miterText(radOf(job, end)), count: 1, drawnAs };
    }),
    marks: miters.map((miter) => ({
      x: (miter.longX + miter.shortX) / 2,
      y: face.widthMm / 2,
      label: `Miter ${miter.end}, ${miterText(miter.miterRad)} from square: takes ${formatLength(Math.abs(miter.shortX - miter.longX), unit)} ${unit} off the short side; the long point at ${sideOf(miter)}${isChosen ? ' is not given' : ''}.`,
    })),
  };
}

/** What the side opposite to the long points measures, where both ends leave the same one short. */
function shortSide(
  { lengthMm }: RowJob,
  { outline, widthMm }: Face,
  miters: readonly DrawnMiter[],
  unit: LengthUnit,
) {
  const [first, second] = miters;
  if (!first || lengthMm === undefined || (second && second.long !== first.long)) return [];
  const span = spanAlong(outline.edges, first.long === 'bottom' ? widthMm : 0);
  return span ? [`the short side is then ${formatLength(span[1] - span[0], unit)} ${unit}`] : [];
}

function radOf({ miterLeftRad, miterRightRad }: RowJob, end: PartEnd): number {
  return end === 'left' ? miterLeftRad : miterRightRad;
}

function sideWords(edge: Fence['edge'], side: 'bottom' | 'top'): string {
  if (edge === 'edge') return `the ${side} edge`;
  return side === 'bottom' ? `the ${edge}` : 'the toe';
}
