import { InputError, refuse } from '../../core/inputError.js';
import { gradeKey } from '../../core/material/gradeKey.js';
import { type CellValue, isBlank, plainText } from '../../core/quantity/cellValue.js';
import { headingNames, type Headings, readHeadings } from '../../core/row/headings/readHeadings.js';
import { rowCells } from '../../core/row/headings/joinedColumns.js';
import { RowReader, unitUnder } from '../../core/row/headings/rowReader.js';
import { readAnySection } from '../../core/section/readAnySection.js';
import type { AnySection, SectionText } from '../../core/section/section.js';
import { nameKey } from '../../core/shop/table.js';
import { sectionKey } from '../../core/stock/list/sectionKey.js';
import type { ReadContext } from '../argument/argument.js';

/** A row of a range, read by its headings or by the place of its columns. */
export interface ListedRow {
  /** From 1, the headings counted where there are some. */
  row: number;
  reader: RowReader;
  fields: Headings['fields'];
  /** The cell below a heading that lists of parts do not have. */
  other(...names: string[]): CellValue;
}

type FieldOrOther = keyof Headings['fields'] | 'price' | 'available';

/** How a range is written: what its columns are where it has no headings. */
export interface Layout {
  columns: readonly FieldOrOther[];
  allowed: string;
}

/** A list of bars or of parts is not longer; more rows are a slip of the range. */
const mostRows = 1000;

/** The rows of a range that are not blank. Headings may stand above them; one of them is then Length. */
export function listedRows(cells: CellValue[][] | null, layout: Layout, context: ReadContext): ListedRow[] {
  const { argument, unit } = context;
  const [first = []] = cells ?? [];
  const hasHeadings = headingNames(first).some((name) => name === 'Length' || name === 'Feet');
  const titles = hasHeadings ? first : layout.columns;
  if (!hasHeadings && first.length > layout.columns.length) {
    const problem = `${first.length} columns without headings were given.`;
    refuse(argument, '', problem, `${layout.allowed} Or put headings in the first row.`);
  }
  const headings = read(hasHeadings ? first : [], argument);
  const fields = hasHeadings ? headings.fields : placed(layout.columns);
  const rows = (cells ?? []).flatMap((row, at): ListedRow[] => {
    if ((hasHeadings && at === 0) || row.every(isBlank)) return [];
    const other = (...names: string[]) => {
      const name = names.find((each) => titles.some((title) => nameKey(title) === each));
      return row[titles.findIndex((title) => nameKey(title) === name)] ?? null;
    };
    const read = hasHeadings ? rowCells(row, headings) : row;
    return [{ row: at + 1, reader: new RowReader(read, unit), fields, other }];
  });
  if (rows.length === 0) return refuse(argument, '', 'no rows were given.', layout.allowed);
  if (rows.length <= mostRows) return rows;
  return refuse(argument, '', `${rows.length} rows were given.`, `Give at most ${mostRows}.`);
}

/** The headings of a list, which here needs no section. */
function read(titles: readonly CellValue[], argument: string): Headings {
  const hasSection = headingNames(titles).includes('Section');
  try {
    return readHeadings(hasSection ? titles : [...titles, 'Section']);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError({ ...error.failure, argument: `${argument}, headings` });
  }
}

function placed(columns: readonly FieldOrOther[]): Headings['fields'] {
  return Object.fromEntries(columns.map((heading, at) => [heading, { at, heading }]));
}

/** Refuses with the first cell of a row that could not be read. */
export function refuseUnread({ row, reader }: ListedRow, argument: string): void {
  for (const finding of reader.problems) {
    if (finding.rule !== 'refusal') continue;
    const { failure } = finding;
    throw new InputError({ ...failure, argument: `${argument}, row ${row}, ${failure.argument}` });
  }
}

/** What a range says in its column of sections or of grades: as written, and as it is compared. */
export interface Named {
  written: string;
  key: string;
}

/** Refuses a range of several sections or grades: what is planned together is one. */
export function requireOne(named: readonly Named[], argument: string, what: 'section' | 'grade'): void {
  const [first] = named;
  const other = named.find(({ key }) => key !== first?.key);
  if (!first || !other) return;
  const problem = `${first.written} and ${other.written} stand in one range.`;
  refuse(argument, other.written, problem, `Give the rows of one ${what}: each is planned by itself.`);
}

/** The section of a row; undefined where none is given. Of what cannot be read, the reader keeps the problem. */
export function sectionOf({ reader, fields }: ListedRow): (Named & SectionText<AnySection>) | undefined {
  return reader.read(fields.section, (value, name) => {
    const read = readAnySection(value, name, unitUnder(fields.section, reader.unit));
    return { written: plainText(String(value)), key: sectionKey(read.section), ...read };
  });
}

export function gradeOf({ reader, fields }: ListedRow): Named | undefined {
  if (!reader.isFilled(fields.grade)) return undefined;
  const written = plainText(String(reader.cell(fields.grade)));
  return { written, key: gradeKey(written) };
}

/** What rows name, of those that name something. */
export function namedBy<Row, Name>(rows: readonly Row[], name: (row: Row) => Name | undefined): Name[] {
  return rows.flatMap((row) => name(row) ?? []);
}
