import { refuse } from '../../inputError.js';
import { type CellValue, isBlank, plainText, quoted } from '../../quantity/cellValue.js';
import { memo } from '../../quantity/memo.js';
import { nameKey, shortNames } from '../../shop/table.js';
import { groupFields, type GroupField, type RowField, rowFields } from './heading.js';
import { foreignHeadings, lettersBesideSymbols, plateLetters, symbols } from './headingWords.js';
import { type Join, withJoins } from './joinedColumns.js';
import { holdsLengths } from './headingUnits.js';
import { headingName, type HeadingName } from './headingName.js';
import { namedByUnread, type UnreadColumn } from './unreadWork.js';

/** A column of the list: where it is, its heading as typed, and the unit its heading states. */
export interface Column {
  at: number;
  heading: string;
  unit?: string;
  /** The columns of the list that are read as this one in a row. */
  of?: readonly Column[];
}

export interface Headings {
  fields: Partial<Record<RowField, Column>>;
  groups: Partial<Record<GroupField, Column>>[];
  /** Columns that are read as one: thickness and width, feet and inches. */
  joins?: readonly Join[];
  /** Columns that none of the inputs has: with a heading, or without one between those that are read. */
  unread: UnreadColumn[];
  /** The first and the last column that is read: what a check is given of a row. */
  span: { first: number; last: number };
}

interface Known {
  field: RowField | GroupField;
  grouped: boolean;
  name: string;
  canonical: boolean;
}

const known = new Map<string, Known>();
const byField = new Map<string, Known>();
for (const [fields, grouped] of [
  [rowFields, false],
  [groupFields, true],
] as const) {
  for (const { key, name, synonyms } of fields) {
    const others = [...synonyms, ...(foreignHeadings[key] ?? [])];
    const synonym = { field: key, grouped, name, canonical: false };
    for (const other of others) known.set(other, synonym);
    byField.set(key, synonym);
    known.set(nameKey(name), { field: key, grouped, name, canonical: true });
  }
}

const remembered = memo<Headings>();

/**
 * Where each input of a row stands, by the headings: any order, usual synonyms, extra columns ignored.
 * `Hole 2` opens a second hole group; `Length (mm)` states the unit of bare numbers below it.
 * Throws where there is no Section column or one input has two columns.
 */
export function readHeadings(cells: readonly CellValue[]): Headings {
  return remembered(JSON.stringify(cells), () => parse(cells));
}

function parse(cells: readonly CellValue[]): Headings {
  const taken = new Map<string, { column: Column; canonical: boolean }>();
  const all = headingsOf(cells);
  const places = all.flatMap((read, at) => (read ? at : []));
  const span = { first: places[0] ?? 0, last: places.at(-1) ?? 0 };
  const headings: Headings = { fields: {}, groups: [], unread: [], span };
  for (const [at, read] of all.entries()) {
    if (!read) {
      const cell = cells[at] ?? null;
      const isBetween = span.first < at && at < span.last;
      const heading = isBlank(cell) || isMadeUp(cell) ? '' : plainText(String(cell));
      if (heading !== '') headings.unread.push({ at, heading, names: namedByUnread(heading) });
      else if (isBetween) headings.unread.push({ at, heading: '' });
      continue;
    }
    const { entry, group, column } = read;
    const slot = `${entry.field} ${group}`;
    const before = taken.get(slot);
    const isMark = entry.field === 'mark';
    if (before?.canonical && !entry.canonical) {
      if (!isMark) headings.unread.push({ at, heading: column.heading, beside: before.column.at });
      continue;
    }
    if (before && before.canonical === entry.canonical && !isMark) {
      const fix = `Keep one, or call the right one ${entry.name}.`;
      refuse(
        'Headings',
        column.heading,
        `${quoted(before.column.heading)} and ${quoted(column.heading)} both mean ${entry.name}.`,
        fix,
      );
    }
    if (before && before.canonical === entry.canonical) continue;
    if (before && !isMark)
      headings.unread.push({ at: before.column.at, heading: before.column.heading, beside: at });
    taken.set(slot, { column, canonical: entry.canonical });
    place(headings, entry, group, column);
  }
  const joined = withJoins(headings, cells.length);
  if (!joined.fields.section) {
    const read = shortNames(cells.filter((cell) => !isBlank(cell)).map(String));
    refuse(
      'Headings',
      read,
      `there is no Section column (read: ${read || 'nothing'}).`,
      'Give the row of headings; one must be Section.',
    );
  }
  return joined;
}

/** A table has no blank heading: its host makes one up. */
const isMadeUp = (cell: CellValue) => /^(?:column|spalte|kolom|colonne|columna) ?\d+$/i.test(String(cell));

/** What each heading of a list is read as, `Hole 2`; undefined for one that is not read. */
export function headingNames(cells: readonly CellValue[]): (string | undefined)[] {
  const read = headingsOf(cells);
  const hasSection = read.some((each) => each?.entry.field === 'section');
  return read.map((each) => {
    if (!each) return undefined;
    const { entry, group } = each;
    // A size without a section beside it is all of the section.
    const name = entry.field === 'size' && !hasSection ? 'Section' : entry.name;
    return group === 1 ? name : `${name} ${group}`;
  });
}

function place(headings: Headings, entry: Known, group: number, column: Column): void {
  if (!entry.grouped) {
    headings.fields[entry.field as RowField] = column;
    return;
  }
  while (headings.groups.length < group) headings.groups.push({});
  const columns = headings.groups[group - 1];
  if (columns) columns[entry.field as GroupField] = column;
}

function headingsOf(cells: readonly CellValue[]): (Heading | undefined)[] {
  const read = cells.map(headingName);
  const letters = lettersOf(read.flatMap((name) => name?.bare ?? []));
  return read.map((name, at) => name && readHeading(name, cells[at] ?? null, at, letters));
}

const longestSymbol = 'e1 (2)'.length;

const isSymbol = (name: string) => name in symbols || /^p[2-4]$/.test(name);

/** What single letters mean in a list: `n` beside `e1`, `b` beside `t`. */
function lettersOf(texts: readonly string[]): ReadonlyMap<string, Known> {
  const names = new Set(texts.filter((text) => text.length <= longestSymbol));
  const hasSymbols = [...names].some((name) => isSymbol(name) || isSymbol(name.replace(/ ?\(?\d\)?$/, '')));
  const hasPlate = names.has('t') && (names.has('b') || names.has('w'));
  if (!hasSymbols && !hasPlate) return aloneLetters;
  const fields: Record<string, RowField | GroupField> = {
    ...symbols,
    ...(hasSymbols ? lettersBesideSymbols : {}),
    ...(hasPlate ? plateLettersOf(names, hasSymbols) : {}),
  };
  return entriesOf(fields);
}

function entriesOf(fields: Readonly<Record<string, RowField | GroupField>>): ReadonlyMap<string, Known> {
  return new Map(
    Object.entries(fields).flatMap(([letter, field]) => {
      const entry = byField.get(field);
      return entry ? [[letter, entry] as const] : [];
    }),
  );
}

const aloneLetters = entriesOf(symbols);

/** `w` is the width of a plate only where no `b` is, and no symbols, beside which it is a gage. */
function plateLettersOf(names: ReadonlySet<string>, hasSymbols: boolean): Record<string, RowField> {
  const { t, b, w } = plateLetters;
  return names.has('b') || hasSymbols ? { t, b } : { t, w };
}

const numbered = /^(e[12]|p[1-4]|d0|w1|\D+?) ?\(?([1-9])\)?$/;

interface Heading {
  entry: Known;
  group: number;
  column: Column;
}

function readHeading(
  name: HeadingName,
  cell: CellValue,
  at: number,
  letters: ReadonlyMap<string, Known>,
): Heading | undefined {
  const heading = plainText(String(cell));
  const said = namedColumn(name.whole, letters);
  if (said) return { ...said, column: { at, heading } };
  const { unit, bare, isLoose } = name;
  const measured = unit === undefined ? undefined : namedColumn(bare, letters);
  if (unit === undefined || !measured || (isLoose && !holdsLengths(measured.entry.field))) return undefined;
  return { ...measured, column: { at, heading, unit } };
}

/** What a name means, and of which group: `hole 2`. */
function namedColumn(name: string, letters: ReadonlyMap<string, Known>): Omit<Heading, 'column'> | undefined {
  const whole = entryOf(name, letters);
  if (whole) return { entry: whole, group: 1 };
  const [, base = '', number] = numbered.exec(name) ?? [];
  const entry = entryOf(base, letters);
  return entry?.grouped ? { entry, group: Number(number) } : undefined;
}

function entryOf(name: string, letters: ReadonlyMap<string, Known>): Known | undefined {
  return known.get(name) ?? letters.get(name) ?? known.get(plainName(name)) ?? ofDiameter(name);
}

/** Without points, and with a space for a hyphen: `Anz. Löcher`, `Loch-Abstand`. */
function plainName(name: string): string {
  return /[.-]/.test(name) ? name.replaceAll('.', '').replaceAll('-', ' ').trim() : name;
}

/** `Bohrung Ø`, `Ø Bolt`: a hole or a bolt with the mark of its diameter. */
function ofDiameter(name: string): Known | undefined {
  if (!/[ø⌀]/.test(name)) return undefined;
  const entry = known.get(plainName(name.replace(/[ø⌀]/g, ' ')).trim());
  return entry?.field === 'hole' || entry?.field === 'bolt' ? entry : undefined;
}
