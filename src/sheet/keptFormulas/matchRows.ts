import { markOf, rowText } from './anchor.js';
import { type ListedPlace, PlaceNotFound, quotedRow } from './listedPlace.js';
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
  const matched = matchRows(sheet, table, groups, new Set(known.values()));
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

/** The row of today for each row of the list: first by all that is typed in it, then by its mark. */
function matchRows(
  sheet: SheetCells,
  table: TablePlace,
  groups: readonly ListedPlace[][],
  without: ReadonlySet<number>,
): Map<number, number> {
  const texts = new Map<number, string>();
  for (let row = table.top; row <= table.bottom; row += 1)
    texts.set(row, rowText(sheet, row, without, table));
  const matched = new Map<number, number>();
  const wanted = () => groups.filter(([first]) => first && !matched.has(first.row));
  const pair = (key: (text: string) => string, once: boolean) => {
    const now = grouped(texts.keys(), (row) => key(texts.get(row) ?? ''));
    const then = grouped(wanted(), ([first]) => key(first?.anchor.row ?? ''));
    for (const [text, lost] of then) {
      const found = now.get(text) ?? [];
      if (once && (text === '' || found.length !== 1 || lost.length !== 1)) continue;
      lost.forEach(([first], at) => {
        const row = found[at];
        if (first === undefined || row === undefined) return;
        matched.set(first.row, row);
        texts.delete(row);
      });
    }
  };
  pair((text) => text, false);
  pair(markOf, true);
  const [lost] = wanted();
  const [left] = texts.keys();
  // Rows that are left are new where every row was found, and rows that are lost are gone where none is left.
  if (lost && left !== undefined)
    throw new PlaceNotFound(
      `the row of ${table.name} that held ${quotedRow(lost[0]?.anchor.row ?? '')} is not found, and row ${left + 1} of the sheet "${sheet.name}" holds ${quotedRow(texts.get(left) ?? '')}: put its mark back.`,
    );
  return matched;
}

function grouped<Item, Key>(items: Iterable<Item>, key: (item: Item) => Key): Map<Key, Item[]> {
  const groups = new Map<Key, Item[]>();
  for (const item of items) groups.set(key(item), [...(groups.get(key(item)) ?? []), item]);
  return groups;
}
