import { refuse } from '../../inputError.js';
import { type CellValue, quoted } from '../../quantity/cellValue.js';
import { nameKey } from '../../shop/table.js';
import type { LengthUnit } from '../../quantity/units.js';
import type { AnySection } from '../../section/section.js';
import { legProblem } from './legProblem.js';
import type { PartEnd, PartSide, RowJob } from '../job/rowJob.js';
import { cellWords, longestCell } from './cellWords.js';
import { legText } from './legText.js';
import { sidesOf } from './faces.js';
import { listItems } from './listItems.js';
import { endWords, sideWords } from './placeWords.js';

type LongSide = NonNullable<RowJob['longSide']>;

/** The miters of a row, as far as the cells about them need it. */
export interface Mitered {
  section: AnySection | undefined;
  /** The ends that are not square; undefined where a miter cannot be read. */
  ends: readonly PartEnd[] | undefined;
}

const everySide = ['bottom', 'top', 'heel', 'toe'] as const;
const fillers = new Set([
  ...['edge', 'end', 'ends', 'both', 'at', 'the', 'of', 'long', 'side', 'point', 'on', 'lp', 'hand'],
]);
const addMiter = 'Fill in the miter, or clear the cell.';

/**
 * Reads which side keeps the long point of a miter: `top` for each mitered end, or `left top, right bottom`.
 * Throws `invalid` for what is no such side, and for an end that is square.
 */
export function readLongSide(value: CellValue, argument: string, { section, ends }: Mitered): LongSide {
  const text = String(value);
  const sides = sidesOf(section, undefined) ?? everySide;
  const sample = sides.at(-1) ?? 'top';
  const allowed = `Write ${sides.join(' or ')}, or left ${sample}, right ${sides[0] ?? 'bottom'}.`;
  const items = text.length > longestCell ? [''] : listItems(text).items;
  const long: LongSide = {};
  for (const item of items) {
    const each = endAndSide(item);
    const named = each.end === undefined ? (ends ?? ['left', 'right']) : [each.end];
    const twice =
      named.some((end) => long[end] !== undefined) || (each.end === undefined && items.length > 1);
    const known = sides.find((side) => side === each.side);
    if (known === undefined || twice) {
      return refuse(argument, text, `${quoted(text)} is not a long side.`, allowed);
    }
    for (const end of named) long[end] = known;
  }
  if (ends?.length === 0) return refuse(argument, text, 'neither end is mitered.', addMiter);
  const square = ends && Object.keys(long).find((end) => !ends.some((each) => each === end));
  if (square !== undefined) return refuse(argument, text, `the ${square} end is not mitered.`, addMiter);
  return long;
}

function endAndSide(item: string): { end?: PartEnd; side?: PartSide } {
  const { words, sizes } = cellWords(item);
  const ends = words.flatMap((word) => endWords[word] ?? []);
  const sides = [...new Set(words.flatMap((word) => sideWords[word] ?? []))];
  const rest = words.filter((word) => !fillers.has(word));
  if (sizes.length > 0 || ends.length > 1 || sides.length !== 1 || rest.length !== ends.length + 1) return {};
  const [end] = ends;
  const [side] = sides;
  return { ...(end ? { end } : {}), ...(side ? { side } : {}) };
}

/** Reads which legs of an angle are mitered: `both`, `long`, `short`, or the size of one. */
export function readMiterLeg(
  value: CellValue,
  argument: string,
  { section, ends }: Mitered,
  unit: LengthUnit,
): string {
  const allowed = "Write both, long, short or the leg's size.";
  const text = legText(nameKey(value));
  if (section !== undefined && section.kind !== 'angle') {
    return refuse(argument, String(value), `${section.designation} has no legs.`, 'Clear the cell.');
  }
  if (text !== 'both' && section !== undefined && legProblem(section, text, unit) !== undefined) {
    return refuse(
      argument,
      String(value),
      `${quoted(value)} is not a leg of ${section.designation}.`,
      allowed,
    );
  }
  if (ends?.length === 0) return refuse(argument, String(value), 'neither end is mitered.', addMiter);
  return text;
}
