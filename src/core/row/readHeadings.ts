import { refuse } from '../inputError.js';
import { type CellValue, isBlank, plainText, quoted } from '../quantity/cellValue.js';
import { memo } from '../quantity/memo.js';
import { nameKey, shortNames } from '../shop/table.js';
import { groupFields, type GroupField, type RowField, rowFields } from './heading.js';

/** A column of the list: where it is, its heading as typed, and the unit its heading states. */
export interface Column {
  at: number;
  heading: string;
  unit?: string;
}

export interface Headings {
  fields: Partial<Record<RowField, Column>>;
  groups: Partial<Record<GroupField, Column>>[];
}

interface Known {
  field: RowField | GroupField;
  grouped: boolean;
  name: string;
  canonical: boolean;
}

const known = new Map<string, Known>();
for (const [fields, grouped] of [
  [rowFields, false],
  [groupFields, true],
] as const) {
  for (const { key, name, synonyms } of fields) {
    for (const synonym of synonyms) known.set(synonym, { field: key, grouped, name, canonical: false });
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
  const headings: Headings = { fields: {}, groups: [] };
  cells.forEach((cell, at) => {
    const read = readHeading(cell, at);
    if (!read) return;
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
  if (!headings.fields.section) {
    const read = shortNames(cells.filter((cell) => !isBlank(cell)).map(String));
    refuse(
      'Headings',
      read,
      `there is no Section column (read: ${read || 'nothing'}).`,
      'Give the row of headings; one must be Section.',
    );
  }
  return headings;
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

function readHeading(
  cell: CellValue,
  at: number,
): { entry: Known; group: number; column: Column } | undefined {
  if (typeof cell !== 'string' || cell.length > 60) return undefined;
  const heading = plainText(cell);
  const withUnit = /^([^([,]+?) ?[([,] ?(mm|cm|m|in|inch|inches|ft|feet)\.? ?[)\]]?$/i.exec(heading);
  const text = nameKey(withUnit?.[1] ?? heading);
  const numbered = /^(\D+?) ?([1-9])$/.exec(text);
  const name = numbered?.[1] ?? text;
  const group = Number(numbered?.[2] ?? 1);
  const entry = known.get(name) ?? known.get(name.replaceAll('.', ''));
  if (!entry || (numbered && !entry.grouped)) return undefined;
  const unit = withUnit?.[2]?.toLowerCase();
  return { entry, group, column: unit ? { at, heading, unit } : { at, heading } };
}
