import { ifRead } from '../inputError.js';
import { type CellValue, meant, plainText } from '../quantity/cellValue.js';
import { readLength } from '../quantity/readLength.js';
import { readAnySection } from '../section/readAnySection.js';
import { groupFields, type RowField } from './headings/heading.js';
import type { Column, Headings } from './headings/readHeadings.js';
import { workText } from './headings/workText.js';
import type { WorkKind } from './headings/workWords.js';

/** Columns of work: what they hold belongs to a part, and is none. */
const ofWork: ReadonlySet<string> = new Set<string>([
  ...groupFields.map(({ key }) => key),
  ...['miter', 'miterLeft', 'miterRight', 'cornerClip', 'corners', 'notchWidth', 'notchDepth', 'notches'],
  ...['bendLength', 'bends', 'notchAt', 'clipAt', 'bendAt', 'longSide', 'miterLeg', 'cutBy', 'finish'],
] satisfies (RowField | string)[]);
const ofLength: readonly RowField[] = ['length', 'feet', 'inches', 'thickness', 'width'];
/** What stands where a mark would, and is none: `w/`, `+`, `Note:`. */
const noMark = /^(?:w\/?|with|and|notes?|n\.?b|see|do|ditto|[^\p{L}\d]*)[.:]?$/iu;

/**
 * What a row says of work where it has no part, so that the work belongs to another row: `w/ cope both ends`, a second
 * line of holes. Undefined for a part, even one that lacks much, and for what parts are called: `Punched plates`.
 * @param texts the texts of the row, in their order
 */
export function strayWork(
  cells: readonly CellValue[],
  { fields, groups }: Headings,
  texts: readonly string[],
): string | undefined {
  const at = (column: Column | undefined) => meant(cells[column?.at ?? -1]);
  if (givesPart(fields, at)) return undefined;
  const told = texts.filter(namesWork);
  if (told.length > 0)
    return (texts.some((text) => noMark.test(text)) ? texts : told).map(plainText).join(' ');
  const filled = [fields, ...groups].flatMap((each) =>
    Object.entries(each).filter(([, column]) => at(column) !== null),
  );
  const isWork = filled.length > 0 && filled.every(([field]) => ofWork.has(field));
  return isWork ? filled.map(([, column]) => plainText(String(at(column)))).join(' ') : undefined;
}

function namesWork(text: string): boolean {
  const told = workText(text);
  return told !== undefined && !told.isName && !isOnlyState(told.kinds);
}

/** `DELETED` alone says nothing that a press does. */
const isOnlyState = (kinds: readonly WorkKind[]) =>
  kinds.length > 0 && kinds.every((kind) => kind === 'state');

/** Whether a cell can only be of a part: its mark, a section, a grade, a length. */
function givesPart(fields: Headings['fields'], at: (column: Column | undefined) => CellValue): boolean {
  const says = (field: RowField) => {
    const cell = at(fields[field]);
    return cell !== null && !(typeof cell === 'string' && namesWork(cell)) ? cell : undefined;
  };
  const mark = says('mark');
  if (mark !== undefined && !noMark.test(String(mark))) return true;
  const section = at(fields.section);
  if (
    section !== null &&
    (says('section') !== undefined || isRead(() => readAnySection(section, 'Section', 'in')))
  )
    return true;
  if (says('grade') !== undefined) return true;
  return ofLength.some((field) => {
    const cell = at(fields[field]);
    return cell !== null && isRead(() => readLength(cell, 'Length', 'in'));
  });
}

const isRead = (read: () => unknown): boolean => ifRead(read) !== undefined;
