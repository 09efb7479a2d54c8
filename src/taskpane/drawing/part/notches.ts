import { formatLength } from '../../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import type { RowJob } from '../../../core/row/rowJob.js';
import type { Section } from '../../../core/section/section.js';
import {
  type ClippedCorner,
  contourOf,
  edgeAcrossMm,
  type Ends,
  type PlacedNotch,
} from '../../../core/row/outline/contour.js';
import { crossesItself } from '../../../core/row/outline/crossing.js';
import type { Side } from '../../../core/row/outline/place.js';
import { counted, noWork, type Work } from './work.js';

const name = ['notch', 'notches'] as const;

/** The notches as placed, and why there are none. */
export interface Notched {
  notches: PlacedNotch[];
  said: string[];
}

/** Notches spread evenly between the corners of one long edge: the operator's of a plate, the toe of a leg. */
export function placedNotches(
  { notches }: RowJob,
  section: Section,
  ends: Ends,
  corners: readonly ClippedCorner[],
): Notched {
  if (!notches) return { notches: [], said: [] };
  if (section.kind !== 'flat' && section.kind !== 'angle')
    return { notches: [], said: ['notches not drawn: no press station makes them in this section'] };
  const { widthMm, depthMm, count } = notches;
  const side: Side = section.kind === 'angle' ? 'throat' : 'operator';
  const edgeMm = edgeAcrossMm(ends, side);
  const onEdge = contourOf(ends, corners, [])
    [side].filter(({ acrossMm }) => acrossMm === edgeMm)
    .map(({ alongMm }) => alongMm);
  const [fromMm, toMm] = [Math.min(...onEdge), Math.max(...onEdge)];
  const steelMm = (toMm - fromMm - count * widthMm) / (count + 1);
  const placed = Array.from({ length: count }, (_, at) => ({
    side,
    centreMm: fromMm + (at + 1) * steelMm + (at + 0.5) * widthMm,
    widthMm,
    depthMm,
  }));
  const greatestMm = ends.widthMm - (section.kind === 'angle' ? section.thicknessMm : 0);
  const fits = steelMm > 0 && depthMm < greatestMm && !crossesItself(contourOf(ends, corners, placed));
  return fits
    ? { notches: placed, said: [] }
    : { notches: [], said: ['notches not drawn: they do not fit on the part'] };
}

export function notchWork(
  { notches }: RowJob,
  section: Section,
  ends: Ends,
  { notches: placed, said }: Notched,
  unit: LengthUnit,
): Work {
  if (!notches) return noWork(name);
  const { widthMm, depthMm, count } = notches;
  const size = (mm: number) => formatLength(mm, unit);
  const both = `${size(widthMm)} × ${size(depthMm)} ${unit}`;
  const edge = section.kind === 'angle' ? 'the toe' : "the operator's edge";
  const spread = count === 1 ? 'in the middle of' : 'spread evenly along';
  const drawn = said.length === 0 ? [`places of the notches assumed: ${spread} ${edge}`] : said;
  return {
    name,
    words: [`${counted(count, name)} ${both}`],
    said: drawn,
    facts: [{ work: 'Notch', size: both, count, drawnAs: drawn.join('; ') }],
    marks: placed.map(({ centreMm }, at) => ({
      alongMm: centreMm,
      acrossMm: section.kind === 'angle' ? depthMm : ends.widthMm - depthMm,
      label: `Notch, ${at + 1} of ${count}, ${size(widthMm)} ${unit} wide, ${size(depthMm)} ${unit} deep: middle ${size(centreMm)} ${unit} from the stop, in ${edge}; the place is assumed.`,
    })),
  };
}
