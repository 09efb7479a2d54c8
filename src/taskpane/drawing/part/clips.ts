import { formatLength } from '../../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import type { RowJob } from '../../../core/row/rowJob.js';
import type { Section } from '../../../core/section/section.js';
import {
  type ClippedCorner,
  edgeAcrossMm,
  endAlongMm,
  type Ends,
} from '../../../core/row/outline/contour.js';
import { cornersCutOff } from '../../../core/row/outline/cornersCutOff.js';
import type { Side } from '../../../core/row/outline/place.js';
import { counted, noWork, type Work } from './work.js';

const cornersOfPart = 4;

const name = ['clipped corner', 'clipped corners'] as const;
const corner = ['corner', 'corners'] as const;

/** The corners cut off, and why some are not drawn. */
export interface Clipped {
  corners: ClippedCorner[];
  said: string[];
}

/** The corners that are cut off, in words where they are not drawn or not all of them. */
export function clippedCorners(job: RowJob, section: Section, ends: Ends): Clipped {
  const { clips } = job;
  if (!clips) return { corners: [], said: [] };
  if (section.kind !== 'flat' && section.kind !== 'angle')
    return { corners: [], said: ['corner clips not drawn: no press station makes them in this section'] };
  const corners = cornersCutOff(job, section, ends);
  if (corners.length === 0) return { corners, said: ['corner clips not drawn: they do not fit on the part'] };
  return { corners, said: tooMany(clips.count, corners.length, section.kind === 'angle') };
}

function tooMany(count: number, drawn: number, angle: boolean): string[] {
  if (count > cornersOfPart) return [`${count} corners clipped, of which ${drawn} can be drawn`];
  if (angle && count > drawn) return [`${counted(count - drawn, corner)} of the other leg not drawn`];
  return [];
}

export function clipWork(
  { clips }: RowJob,
  section: Section,
  ends: Ends,
  { corners: drawn, said }: Clipped,
  unit: LengthUnit,
): Work {
  if (!clips) return noWork(name);
  const size = `${formatLength(clips.alongMm, unit)} × ${formatLength(clips.acrossMm, unit)} ${unit}`;
  const where = drawn.length === cornersOfPart ? '' : placesOf(section, drawn);
  const assumed = where === '' ? [] : [`corners assumed ${where}`];
  return {
    name,
    words: [`${counted(clips.count, corner)} clipped ${size}`],
    said: drawn.length === 0 ? said : [...assumed, ...said],
    facts: [
      {
        work: 'Corner clip',
        size,
        count: clips.count,
        drawnAs: [...(drawn.length === 0 ? [] : assumed), ...said].join('; ') || 'given',
      },
    ],
    marks: drawn.map((corner, at) => ({
      ...middleOf(ends, corner),
      label: `Corner clip, ${at + 1} of ${clips.count}, ${size}: ${cornerText(section, corner)}${where === '' ? '' : '; which corner is assumed'}.`,
    })),
  };
}

function sideText(section: Section, side: Side): string {
  if (section.kind === 'angle') return 'toe';
  return side === 'throat' ? 'fence' : "operator's edge";
}

function cornerText(section: Section, { end, side }: ClippedCorner): string {
  return `at the ${sideText(section, side)}, ${end === 'stop' ? 'end at the stop' : 'far end'}`;
}

function placesOf(section: Section, drawn: readonly ClippedCorner[]): string {
  const [first, second, third] = drawn;
  if (!first) return '';
  if (second && !third && second.side === first.side)
    return `at the ${sideText(section, first.side)}, both ends`;
  return drawn.map((corner) => cornerText(section, corner)).join(' and ');
}

/** Half way along the cut. */
function middleOf(ends: Ends, { end, side, alongMm, acrossMm }: ClippedCorner) {
  const edgeMm = edgeAcrossMm(ends, side);
  const cutMm = side === 'throat' ? acrossMm : ends.widthMm - acrossMm;
  const onEdgeMm = endAlongMm(ends, end, edgeMm) + (end === 'stop' ? alongMm : -alongMm);
  return { alongMm: (onEdgeMm + endAlongMm(ends, end, cutMm)) / 2, acrossMm: (edgeMm + cutMm) / 2 };
}
