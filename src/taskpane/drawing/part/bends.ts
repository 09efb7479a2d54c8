import { formatLength } from '../../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import type { RowJob } from '../../../core/row/rowJob.js';
import type { Section } from '../../../core/section/section.js';
import type { Place } from '../../../core/row/outline/place.js';
import { counted, noWork, type Work } from './work.js';

const roundingMm = 0.5;

const name = ['bend', 'bends'] as const;

/** Bend lines, all one way, and why there are none. */
export interface Bent {
  direction: 'across' | 'along';
  lines: { from: Place; to: Place }[];
  said: string[];
}

/** Bend lines spread evenly: across the part where one fits there, else along it. */
export function bendLines(
  { bends }: RowJob,
  section: Section,
  { lengthMm, widthMm }: { lengthMm: number; widthMm: number },
): Bent {
  const none = (...said: string[]): Bent => ({ direction: 'across', lines: [], said });
  if (!bends) return none();
  if (section.kind !== 'flat') return none('bends not drawn: no press station makes them in this section');
  const across = bends.lengthMm <= widthMm + roundingMm;
  if (!across && bends.lengthMm > lengthMm + roundingMm)
    return none('bends not drawn: they are longer than the part');
  const [spreadMm, sizeMm] = across ? [lengthMm, widthMm] : [widthMm, lengthMm];
  const halfMm = Math.min(bends.lengthMm, sizeMm) / 2;
  const lines = Array.from({ length: bends.count }, (_, at) => {
    const placeMm = (spreadMm * (at + 1)) / (bends.count + 1);
    const [fromMm, toMm] = [sizeMm / 2 - halfMm, sizeMm / 2 + halfMm];
    const place = (mm: number): Place =>
      across ? { alongMm: placeMm, acrossMm: mm } : { alongMm: mm, acrossMm: placeMm };
    return { from: place(fromMm), to: place(toMm) };
  });
  return { direction: across ? 'across' : 'along', lines, said: [] };
}

export function bendWork(
  { bends }: RowJob,
  { direction, lines, said }: Bent,
  widthMm: number,
  unit: LengthUnit,
): Work {
  if (!bends) return noWork(name);
  const size = (mm: number) => `${formatLength(mm, unit)} ${unit}`;
  const { count } = bends;
  const spread = count === 1 ? 'in the middle' : 'spread evenly';
  const drawn =
    said.length === 0
      ? [`place of the ${count === 1 ? 'bend' : 'bends'} assumed: ${direction} the part, ${spread}`]
      : said;
  return {
    name,
    words: [`${counted(count, name)} ${size(bends.lengthMm)} long`],
    said: drawn,
    facts: [{ work: 'Bend', size: size(bends.lengthMm), count, drawnAs: drawn.join('; ') }],
    marks: lines.map(({ from, to }, at) => {
      const place =
        direction === 'across'
          ? `${size(from.alongMm)} from the stop`
          : `${size(from.acrossMm)} from the fence`;
      return {
        alongMm:
          direction === 'across'
            ? from.alongMm
            : from.alongMm + Math.min(widthMm, (to.alongMm - from.alongMm) / 4),
        acrossMm: (from.acrossMm + to.acrossMm) / 2,
        label: `Bend, ${at + 1} of ${count}, ${size(bends.lengthMm)} long, ${direction} the part: ${place}; the place is assumed.`,
      };
    }),
  };
}
