import { isBlank, type CellValue } from '../../../core/quantity/cellValue.js';
import { InputError } from '../../../core/inputError.js';
import { groupFields, rowFields } from '../../../core/row/headings/heading.js';
import { holdsLengths } from '../../../core/row/headings/headingUnits.js';
import { headingNames } from '../../../core/row/headings/readHeadings.js';
import { namedByUnread } from '../../../core/row/headings/unreadWork.js';
import { workText } from '../../../core/row/headings/workText.js';
import { looksLikeSize } from '../../../core/notation/looksLikeSize.js';
import { readSection } from '../../../core/section/readSection.js';
import { gradeOfShop } from '../../../core/shop/gradeOfShop.js';
import type { Shop } from '../../../core/shop/readShop.js';
import { nameKey } from '../../../core/shop/table.js';
import { checkHeadings } from '../../shared/checkedLists.js';
import { isUnitsRow, unitToTell } from './unitsRow.js';
import { usualHeading } from './usualHeadings.js';

/** What a column of a list is taken for. */
export interface ColumnMatch {
  at: number;
  heading: string;
  /** The input it is read as: `Section`, `Hole 2`; undefined for a column that is not read. */
  field: string | undefined;
  /** The heading to give it, so that every formula reads it so; undefined where its own will do. */
  rename: string | undefined;
  /** By its content or the start of a name: to be looked at. */
  guessed: boolean;
  /** Two rows of headings say it together: it is written into the lower one, where formulas read it. */
  isJoined?: boolean;
  /** Not read, with sizes or words of work below it. */
  holdsWork?: boolean;
}

const furtherGroups = [2, 3];
/** What a column can be taken for, in the order of a list. */
export const fieldNames: readonly string[] = [
  ...rowFields.map(({ name }) => name),
  ...groupFields.map(({ name }) => name),
  ...furtherGroups.flatMap((group) => groupFields.map(({ name }) => `${name} ${group}`)),
];
const lengthNames = new Set<string>(
  [...rowFields, ...groupFields].filter(({ key }) => holdsLengths(key)).map(({ name }) => name),
);
const notRead = ' (not read)';
const unitAtEnd = /[([,] ?(?:mm|cm|m|in|inch|inches|ft|feet)\.? ?[)\]]?$/i;
/** Headings that may be two things, which their cells tell: a miter or a material. */
const doubtful = new Set(['mtr', 'mtr.', 'mat', 'mat.']);
const checkNames = new Set(Object.values(checkHeadings).map(nameKey));
const sampleSize = 40;
const mostOf = 0.8;
/** Texts of more rows than this are not looked at for words of work: reading them takes its time. */
const mostRowsOfTexts = 2000;

/** What the columns of a list are, by their headings; what no heading says, by the cells below. */
export function matchColumns(
  headings: readonly CellValue[],
  rows: readonly CellValue[][],
  shop: Shop,
  written: readonly CellValue[] = headings,
): ColumnMatch[] {
  const names = headingNames(headings);
  const known = headings.map((cell, at): ColumnMatch => {
    const heading = String(cell ?? '');
    const field = names[at];
    // Formulas read one row of headings: what two rows say together is written into it.
    const isJoined = String(written[at] ?? '') !== heading;
    return {
      at,
      heading,
      field,
      rename: isJoined ? heading : undefined,
      guessed: false,
      ...(isJoined && { isJoined }),
    };
  });
  const matches = known.reduce<ColumnMatch[]>((matches, match) => {
    const isDoubtful = doubtful.has(nameKey(match.heading));
    const isKnown = match.field !== undefined && !isDoubtful;
    if (isKnown || match.heading.trim() === '' || isNeverRead(match.heading)) return matches;
    const taken = new Set(matches.flatMap(({ field }) => field ?? []));
    const cells = rows.map((row) => row[match.at] ?? null);
    const byCells = isDoubtful ? guessByCells(cells, shop, taken) : undefined;
    if (match.field !== undefined && byCells === undefined) return matches;
    const field =
      byCells ??
      guessByUse(match.heading, taken) ??
      guessByStart(match.heading, taken) ??
      guessByCells(cells, shop, taken);
    return field === undefined
      ? matches
      : matches.map((each) => (each.at === match.at ? matchedTo(each, field, true) : each));
  }, known);
  const [first] = rows;
  const told = isUnitsRow(first) ? matches.map((match) => withUnit(match, first?.[match.at], shop)) : matches;
  return told.map((match) => {
    const holdsWork =
      match.field === undefined &&
      (rows.some((row) => looksLikeSize(row[match.at] ?? null, shop.unit)) ||
        rows.slice(0, mostRowsOfTexts).some((row) => tellsOfWork(row[match.at] ?? null)));
    return holdsWork ? { ...match, holdsWork } : match;
  });
}

function tellsOfWork(cell: CellValue): boolean {
  const told = typeof cell === 'string' ? workText(cell) : undefined;
  return told !== undefined && !told.isName;
}

/** Whether a column is not read and may hold work: the check of a row is given it, to say so. */
export function mayHoldWork(
  { field, heading, rename = heading, holdsWork }: ColumnMatch,
  isCounted: boolean,
): boolean {
  if (field !== undefined) return false;
  const names = namedByUnread(rename);
  return holdsWork === true || (names === 'number' ? !isCounted : names !== undefined);
}

/** A unit in the row below the headings is written into the heading, where the formulas read it. */
function withUnit(match: ColumnMatch, cell: CellValue | undefined, { unit }: Shop): ColumnMatch {
  const name = match.rename ?? match.heading.trim();
  const told = unitToTell(cell, unit);
  const isLength = match.field !== undefined && lengthNames.has(match.field.replace(/ \d$/, ''));
  if (!isLength || told === undefined || unitAtEnd.test(name)) return match;
  return { ...match, rename: `${name} (${told})`, guessed: true };
}

/** The match with another field chosen for it. */
export function matchedTo(match: ColumnMatch, field: string | undefined, guessed = false): ColumnMatch {
  const own = fieldOf(match.heading);
  if (own === field) return { ...match, field, rename: match.isJoined ? match.heading : undefined, guessed };
  const unit = unitAtEnd.exec(match.heading.trim())?.[0];
  const rename =
    field === undefined ? `${match.heading.trim()}${notRead}` : unit ? `${field} ${unit}` : field;
  return { ...match, field, rename, guessed };
}

/** A heading that somebody chose not to have read is never guessed again; one of a check column never at all. */
function isNeverRead(heading: string): boolean {
  return heading.trim().endsWith(notRead.trim()) || checkNames.has(nameKey(heading));
}

/** The match as the heading has it now, for formulas that read headings and guess nothing. */
export function asItStands(match: ColumnMatch): ColumnMatch {
  return match.rename === undefined
    ? match
    : { ...match, field: fieldOf(match.heading), rename: undefined, guessed: false };
}

/** The headings as they will read. */
export function headingsOf(matches: readonly ColumnMatch[]): string[] {
  return matches.map(({ heading, rename }) => rename ?? heading);
}

/** The input that a heading names by itself. */
export function fieldOf(heading: string): string | undefined {
  return headingNames([heading])[0];
}

function guessByUse(heading: string, taken: ReadonlySet<string>): string | undefined {
  const [, name = heading, number] =
    /^(.*\D) ?([2-9])$/.exec(heading.trim().replace(unitAtEnd, '').trim()) ?? [];
  const usual = usualHeading(name.trim().replace(unitAtEnd, ''));
  const grouped = groupFields.some((each) => each.name === usual);
  if (usual === undefined || (number !== undefined && !grouped)) return undefined;
  const field = number === undefined ? usual : `${usual} ${number}`;
  return taken.has(field) ? undefined : field;
}

const startNames = [...rowFields, ...groupFields].flatMap(({ name, synonyms }) =>
  [nameKey(name), ...synonyms].map((text) => ({ name, text })),
);

/** A heading that begins as a known one does, or ends in one: `Sect`, `Section of bar`, `Pc mark`. */
function guessByStart(heading: string, taken: ReadonlySet<string>): string | undefined {
  const key = nameKey(heading).replaceAll('.', '');
  if (key.length < 3) return undefined;
  const found = startNames.find(
    ({ text, name }) =>
      !taken.has(name) &&
      (text.startsWith(key) || key.startsWith(`${text} `) || key.endsWith(` ${nameKey(name)}`)),
  );
  return found?.name;
}

function guessByCells(
  cells: readonly CellValue[],
  shop: Shop,
  taken: ReadonlySet<string>,
): string | undefined {
  const filled = cells.filter((cell) => !isBlank(cell)).slice(0, sampleSize);
  const texts = filled.filter((cell) => typeof cell === 'string');
  if (texts.length < mostOf * filled.length || texts.length === 0) return undefined;
  const read = (reader: (cell: CellValue) => unknown) =>
    texts.filter((cell) => isRead(() => reader(cell))).length;
  if (
    !taken.has('Section') &&
    read((cell) => readSection(cell, 'Section', shop.unit)) >= mostOf * texts.length
  )
    return 'Section';
  if (!taken.has('Grade') && read((cell) => gradeOfShop(cell, 'Grade', shop)) >= mostOf * texts.length)
    return 'Grade';
  return undefined;
}

function isRead(read: () => unknown): boolean {
  try {
    read();
    return true;
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
}
