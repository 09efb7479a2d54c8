import { refuse } from '../inputError.js';
import { type CellValue, isBlank, plainText, quoted } from '../quantity/cellValue.js';
import { memo } from '../quantity/memo.js';
import { nameKey, shortNames } from '../shop/table.js';
import { groupFields, type GroupField, type RowField, rowFields } from './heading.js';
import { foreignHeadings, lettersBesideSymbols, plateLetters, symbols } from './headingWords.js';
import { type Join, withJoins } from './joinedColumns.js';

/** A column of the list: where it is, its heading as typed, and the unit its heading states. */
export interface Column {
  at: number;
  heading: string;
  unit?: string;
}

export interface Headings {
  fields: Partial<Record<RowField, Column>>;
  groups: Partial<Record<GroupField, Column>>[];
  /** Columns that are read as one: thickness and width, feet and inches. */
  joins?: readonly Join[];
  /** Columns with a heading that none of the inputs has. */
  unread: Column[];
}

const longestHeading = 60;

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
  const headings: Headings = { fields: {}, groups: [], unread: [] };
  const letters = lettersOf(cells.map(headingText));
  cells.forEach((cell, at) => {
    const read = readHeading(cell, at, letters);
    if (!read) {
      if (!isBlank(cell)) headings.unread.push({ at, heading: plainText(String(cell)) });
      return;
    }
    const { entry, group, column } = read;
    const slot = `${entry.field} ${group}`;
    const before = taken.get(slot);
    if (before?.canonical && !entry.canonical) return;
    if (before && before.canonical === entry.canonical && entry.field !== 'mark') {
      const fix = `Keep one, or call the right one ${entry.name}.`;
      refuse(
        'Headings',
        column.heading,
        `${quoted(before.column.heading)} and ${quoted(column.heading)} both mean ${entry.name}.`,
        fix,
      );
    }
    if (before && before.canonical === entry.canonical) return;
    taken.set(slot, { column, canonical: entry.canonical });
    place(headings, entry, group, column);
  });
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

/** What each heading of a list is read as, `Hole 2`; undefined for one that is not read. */
export function headingNames(cells: readonly CellValue[]): (string | undefined)[] {
  const letters = lettersOf(cells.map(headingText));
  return cells.map((cell, at) => {
    const read = readHeading(cell, at, letters);
    return read && (read.group === 1 ? read.entry.name : `${read.entry.name} ${read.group}`);
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

/** The heading as names are compared, `d₀`, `d_0` and `d 0` as `d0`. */
function headingText(cell: CellValue): string {
  if (typeof cell !== 'string' || cell.length > longestHeading) return '';
  return nameKey(cell)
    .replace(/[₀₁₂]/g, (digit) => String('₀₁₂'.indexOf(digit)))
    .replace(/^([depw]) ?([012])\b/, '$1$2');
}

/** What single letters mean in a list: `n` beside `e1`, `b` beside `t`. */
function lettersOf(texts: readonly string[]): ReadonlyMap<string, Known> {
  const names = new Set(texts.map((text) => withUnit.exec(text)?.[1] ?? text));
  const hasSymbols = [...names].some((name) => symbols[name.replace(/ ?\(?\d\)?$/, '')] ?? symbols[name]);
  const hasPlate = names.has('t') && (names.has('b') || names.has('w'));
  const fields: Record<string, RowField | GroupField> = {
    ...symbols,
    ...(hasSymbols ? lettersBesideSymbols : {}),
    ...(hasPlate ? plateLettersOf(names, hasSymbols) : {}),
  };
  return new Map(
    Object.entries(fields).flatMap(([letter, field]) => {
      const entry = byField.get(field);
      return entry ? [[letter, entry] as const] : [];
    }),
  );
}

/** `w` is the width of a plate only where no `b` is, and no symbols, beside which it is a gage. */
function plateLettersOf(names: ReadonlySet<string>, hasSymbols: boolean): Record<string, RowField> {
  const { t, b, w } = plateLetters;
  return names.has('b') || hasSymbols ? { t, b } : { t, w };
}

const withUnit = /^([^([,]+?) ?[([,] ?(mm|cm|m|in|inch|inches|ft|feet)\.? ?[)\]]?$/;
const numbered = /^(e[12]|p[12]|d0|w1|\D+?) ?\(?([1-9])\)?$/;

function readHeading(
  cell: CellValue,
  at: number,
  letters: ReadonlyMap<string, Known>,
): { entry: Known; group: number; column: Column } | undefined {
  const text = headingText(cell);
  if (text === '') return undefined;
  const heading = plainText(String(cell));
  const [, bare = text, unit] = withUnit.exec(text) ?? [];
  const whole = entryOf(bare, letters);
  const [, name = '', number] = whole ? [] : (numbered.exec(bare) ?? []);
  const entry = whole ?? entryOf(name, letters);
  if (!entry || (!whole && !entry.grouped)) return undefined;
  const column = unit ? { at, heading, unit } : { at, heading };
  return { entry, group: Number(number ?? 1), column };
}

function entryOf(name: string, letters: ReadonlyMap<string, Known>): Known | undefined {
  return known.get(name) ?? known.get(name.replaceAll('.', '').trim()) ?? letters.get(name);
}
