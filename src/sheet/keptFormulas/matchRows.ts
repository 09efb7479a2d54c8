import { markOf, rowText } from './anchor.js';
import { type ListedPlace, PlaceNotFound, quotedRow } from './listedPlace.js';
import { moveFormula } from '../formula/moveFormula.js';
import { sameName } from '../names.js';
import type { SheetCells, TablePlace } from './sheetCells.js';

interface Places {
  rows: Map<ListedPlace, number | undefined>;
  columns: Map<ListedPlace, number>;
}

/** Finds the rows and columns of the formulas of one table. */
export function rowsOfTable(
  sheet: SheetCells,
  name: string,
  listed: readonly ListedPlace[],
  { rows, columns }: Places,
): void {
  const table = sheet.tables.find((each) => sameName(each.name, name));
  if (!table) throw new PlaceNotFound(`there is no table ${name} on the sheet "${sheet.name}".`);
  const known = columnsByHeading(table, listed);
  const groups = [...grouped(listed, ({ row }) => row).values()];
  const matched = matchRows(sheet, table, groups, known);
  for (const each of listed) {
    rows.set(each, matched.get(each.row));
    columns.set(each, known.get(each.anchor.heading ?? '') ?? each.column);
  }
  refuseWrongColumns(sheet, table, listed, { rows, columns }, known);
}

/** The columns whose headings are still there, and those that were renamed in their place. */
function columnsByHeading(table: TablePlace, listed: readonly ListedPlace[]): Map<string, number> {
  const found = new Map<string, number>();
  const headings = new Map(listed.map(({ anchor, column }) => [anchor.heading ?? '', column]));
  for (const heading of headings.keys()) {
    const at = table.headings.findIndex((each) => sameName(each, heading));
    if (at >= 0) found.set(heading, table.left + at);
  }
  const taken = new Set(found.values());
  for (const [heading, column] of headings) {
    if (found.has(heading)) continue;
    const inside = column >= table.left && column < table.left + table.headings.length;
    if (!inside || taken.has(column)) throw noColumn(heading, table);
    found.set(heading, column);
  }
  return found;
}

const noColumn = (heading: string, { name }: TablePlace) =>
  new PlaceNotFound(`there is no column "${heading}" in the table ${name}: give it its heading back.`);

/** A column under another heading must hold what the formulas showed, in every row. */
function refuseWrongColumns(
  sheet: SheetCells,
  table: TablePlace,
  listed: readonly ListedPlace[],
  { rows, columns }: Places,
  known: ReadonlyMap<string, number>,
): void {
  for (const [heading, column] of known) {
    if (sameName(table.headings[column - table.left] ?? '', heading)) continue;
    const shows = listed.every((each) => {
      const row = rows.get(each);
      const isOther = each.anchor.heading !== heading || columns.get(each) !== column || row === undefined;
      return isOther || (sheet.value(row, column) ?? '') === (each.value ?? '');
    });
    if (!shows) throw noColumn(heading, table);
  }
}

/**
 * The row of today for each row of the list: first by all that is typed in it and what its formulas showed, then by what is
 * typed, then by its mark.
 */
function matchRows(
  sheet: SheetCells,
  table: TablePlace,
  groups: readonly ListedPlace[][],
  known: ReadonlyMap<string, number>,
): Map<number, number> {
  const without = new Set(known.values());
  const texts = new Map<number, string>();
  for (let row = table.top; row <= table.bottom; row += 1)
    texts.set(row, rowText(sheet, row, without, table));
  const matched = new Map<number, number>();
  const wanted = () => groups.filter(([first]) => first && !matched.has(first.row));
  const pair = (
    keyNow: (row: number, text: string) => string,
    keyThen: (group: ListedPlace[]) => string,
    alike: Alike,
  ) => {
    const now = grouped(texts.keys(), (row) => keyNow(row, texts.get(row) ?? ''));
    for (const [key, lost] of grouped(wanted(), keyThen)) {
      const found = now.get(key) ?? [];
      if (alike === 'mark' && (key === '' || found.length !== 1 || lost.length !== 1)) continue;
      if (found.length > 0) refuseMixed(lost, found, alike);
      lost.forEach(([first], at) => {
        const row = found[at];
        if (first === undefined || row === undefined) return;
        matched.set(first.row, row);
        texts.delete(row);
      });
    }
  };
  const columns = [...known].sort(([, one], [, other]) => one - other);
  const shownNow = (row: number) => columns.map(([, column]) => String(sheet.value(row, column) ?? ''));
  const shownThen = (group: ListedPlace[]) =>
    columns.map(([heading]) => String(group.find(({ anchor }) => anchor.heading === heading)?.value ?? ''));
  const typedThen = ([first]: ListedPlace[]) => first?.anchor.row ?? '';
  pair(
    (row, text) => JSON.stringify([text, ...shownNow(row)]),
    (group) => JSON.stringify([typedThen(group), ...shownThen(group)]),
    'all',
  );
  pair((_, text) => text, typedThen, 'typed');
  pair(
    (_, text) => markOf(text),
    (group) => markOf(typedThen(group)),
    'mark',
  );
  const [lost] = wanted();
  const [left] = texts.keys();
  // Rows that are left are new where every row was found, and rows that are lost are gone where none is left.
  if (lost && left !== undefined)
    throw new PlaceNotFound(
      `the row of ${table.name} that held ${quotedRow(lost[0]?.anchor.row ?? '')} is not found, and row ${left + 1} of the sheet "${sheet.name}" holds ${quotedRow(texts.get(left) ?? '')}: put its mark back.`,
    );
  return matched;
}

/** What is the same in a row of the list and one of today. */
type Alike = 'all' | 'typed' | 'mark';

/** Rows that hold the same and have different formulas: whose stands where cannot be told once they may have moved. */
function refuseMixed(lost: readonly ListedPlace[][], found: readonly number[], alike: Alike): void {
  const stay = alike === 'all' && lost.every(([first], at) => first?.row === found[at]);
  if (lost.length < 2 || stay || new Set(lost.map(formulasOf)).size === 1) return;
  const [first] = lost[0] ?? [];
  throw new PlaceNotFound(
    `${lost.length} rows held ${quotedRow(first?.anchor.row ?? '')} with different formulas, and which is which cannot be told: put them back in the order they had, with the results that stood there.`,
  );
}

/** The formulas of a row, as they would read in the first row of the sheet. */
const formulasOf = (group: readonly ListedPlace[]) =>
  JSON.stringify(group.map(({ column, row, formula }) => [column, moveFormula(formula, -row, 0)]));

function grouped<Item, Key>(items: Iterable<Item>, key: (item: Item) => Key): Map<Key, Item[]> {
  const groups = new Map<Key, Item[]>();
  for (const item of items) groups.set(key(item), [...(groups.get(key(item)) ?? []), item]);
  return groups;
}
