import { refuse } from '../../inputError.js';
import { type CellValue, quoted } from '../../quantity/cellValue.js';
import { readAngle } from '../../quantity/readAngle.js';
import { tradeText } from '../../quantity/tradeText.js';
import type { Headings } from '../headings/readHeadings.js';
import type { PartEnd } from '../job/rowJob.js';
import type { RowReader } from '../headings/rowReader.js';
import { wordTable } from '../../quantity/wordTable.js';

/** The miter at each end, in rad from square; undefined where the row gives none that can be read. */
export type Miters = Partial<Record<PartEnd, number>>;

const greatestMiterDegree = 60;
const allowed = 'Write left 45, both 45, or 45/30 for left and right.';
const endOf: Record<string, PartEnd> = wordTable({
  ...{ left: 'left', l: 'left', lh: 'left', links: 'left', li: 'left' },
  ...{ right: 'right', r: 'right', rh: 'right', rechts: 'right', re: 'right' },
});
const both = String.raw`both(?: ends)?|each(?: end)?|ea|b\.?e\.?|beide(?:n enden|rseits|rzijds)?|beidseitig|2 ?x`;
const bothFirst = new RegExp(`^(?:${both}) ?(\\d.*)$`);
const bothLast = new RegExp(`^(\\d[^a-z]*?) ?(?:deg )?(?:${both})$`);
const twoEnds = /^([^/a-z]+|none|sq|square) ?\/ ?([^/a-z]+|none|sq|square)$/;
const square = /^(?:-|none|sq|square)$/;
const sided = /^(?:([a-z]+)[ .:]*(\d[^a-z]*)|(\d[^a-z]*)(?:deg)? ?([a-z]+))$/;

/** Reads the miters of a row: a column for each end, or one for both. */
export function readMiters(reader: RowReader, { fields }: Headings): Miters {
  const one = reader.read(fields.miter, readBothMiters);
  const left = reader.read(fields.miterLeft, readMiter);
  const right = reader.read(fields.miterRight, readMiter);
  const apart = [fields.miterLeft, fields.miterRight].find((column) => reader.isFilled(column));
  if (apart && fields.miter && reader.isFilled(fields.miter)) {
    const { heading } = fields.miter;
    const problem = `${apart.heading} says how the end is cut, too. Keep one of them.`;
    reader.contradiction(fields.miter, { about: heading, argument: heading, problem });
  }
  return { ...one, ...(left === undefined ? {} : { left }), ...(right === undefined ? {} : { right }) };
}

/** A bare number under 1 is most likely a share or an angle in rad: `0.7854` for 45°. */
const bareUnderOne = /^0?[.,](?!0*$)\d+$/;

function readMiter(value: CellValue, argument: string): number {
  if (bareUnderOne.test(String(value).trim())) {
    const problem = `${quoted(value)} is less than one degree.`;
    return refuse(argument, String(value), problem, "Write degrees, such as 45, or 0°30' for half of one.");
  }
  return readAngle(value, argument, 0, greatestMiterDegree);
}

/**
 * The miters of both ends in one cell: `left 45`, `both 45`, `45/30`, `45/-`. Throws `invalid` for an angle alone, which
 * does not say at which end, and for what is no angle. Common practice, no source.
 */
export function readBothMiters(value: CellValue, argument: string): Miters {
  const text = typeof value === 'string' ? tradeText(value) : '';
  const atBoth = bothFirst.exec(text)?.[1] ?? bothLast.exec(text)?.[1];
  if (atBoth !== undefined) {
    const rad = readMiter(atBoth, argument);
    return { left: rad, right: rad };
  }
  const [, first, second] = isBevelOrFraction(text) ? [] : (twoEnds.exec(text) ?? []);
  if (first !== undefined && second !== undefined) {
    return { left: endMiter(first.trim(), argument), right: endMiter(second.trim(), argument) };
  }
  const items = text.split(/[,;+&]| and /).map((item) => sided.exec(item.trim()));
  const miters: Miters = {};
  for (const match of items) {
    const end = endOf[match?.[1] ?? match?.[4] ?? ''];
    const angle = match?.[2] ?? match?.[3];
    if (end === undefined || angle === undefined || miters[end] !== undefined)
      return refuseEnds(value, argument);
    miters[end] = readMiter(angle.trim(), argument);
  }
  return miters;
}

/** `22-1/2` has a stroke and one angle. */
function isBevelOrFraction(text: string): boolean {
  return /\d[ -]\d\/\d/.test(text);
}

function endMiter(text: string, argument: string): number {
  return square.test(text) ? 0 : readMiter(text, argument);
}

function refuseEnds(value: CellValue, argument: string): never {
  const rad = readMiter(value, argument);
  if (rad === 0) return refuse(argument, String(value), `${quoted(value)} is no miter.`, 'Clear the cell.');
  const problem = `${quoted(value)} does not say at which end.`;
  return refuse(argument, String(value), problem, allowed);
}
