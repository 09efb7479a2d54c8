import { formatLength, formatNumber } from '../../../core/quantity/formatLength.js';
import { type LengthUnit, radianPerDegree } from '../../../core/quantity/units.js';
import type { RowJob } from '../../../core/row/rowJob.js';
import { type End, endAlongMm, type Ends } from '../../../core/row/outline/contour.js';
import type { Fence } from '../../../core/row/outline/fence.js';
import { noWork, type Work } from './work.js';

const names: Record<End, string> = { stop: 'left', far: 'right' };

const name = ['miter', 'miters'] as const;

export function miterText(miterRad: number): string {
  return `${formatNumber(miterRad / radianPerDegree, 1)}°`;
}

/** The angle of each end that is not square. */
export function mitersOf({ stopRad, farRad }: Ends): { end: End; miterRad: number }[] {
  const both: { end: End; miterRad: number }[] = [
    { end: 'stop', miterRad: stopRad },
    { end: 'far', miterRad: farRad },
  ];
  return both.filter(({ miterRad }) => miterRad > 0);
}

/** The miters as drawn; the row says neither which edge is long nor which end lies at the stop. */
export function miterWork(job: RowJob, ends: Ends, { edge }: Fence, unit: LengthUnit): Work {
  const asked = mitersOf({ ...ends, stopRad: job.miterLeftRad, farRad: job.miterRightRad });
  if (asked.length === 0) return noWork(name);
  const drawn = mitersOf(ends);
  const longSide = `long side${edge === 'edge' ? '' : ` (the ${edge})`} at the fence`;
  const drawnAs =
    drawn.length === 0
      ? 'not drawn: the miters meet within the length'
      : `angle given; left end at the stop and ${longSide} assumed`;
  const shortMm = endAlongMm(ends, 'far', shortAcross(ends)) - endAlongMm(ends, 'stop', shortAcross(ends));
  const short =
    job.lengthMm === undefined ? [] : [`the short side is then ${formatLength(shortMm, unit)} ${unit}`];
  return {
    name,
    words: [`miter ${asked.map(({ end, miterRad }) => `${miterText(miterRad)} ${names[end]}`).join(', ')}`],
    said:
      drawn.length === 0
        ? ['the miters meet within the length, so the ends are drawn square']
        : [`assumed that the left end lies at the stop and the ${longSide}`, ...short],
    facts: asked.map(({ end, miterRad }) => ({
      work: `Miter ${names[end]}`,
      size: miterText(miterRad),
      count: 1,
      drawnAs,
    })),
    marks: drawn.map(({ end, miterRad }) => ({
      alongMm: endAlongMm(ends, end, ends.widthMm / 2),
      acrossMm: ends.widthMm / 2,
      label: `Miter ${names[end]}, ${miterText(miterRad)} from square: takes ${formatLength(ends.widthMm * Math.tan(miterRad), unit)} ${unit} off the short side; the ${longSide} assumed.`,
    })),
  };
}

const shortAcross = ({ long, widthMm }: Ends) => (long === 'throat' ? widthMm : 0);
