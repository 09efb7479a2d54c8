import type { TableConfig, UID } from '@odoo/o-spreadsheet';
import { sameZone, zoneAddress } from '../../sheet/address.js';
import { readTable } from '../../xlsx/tables.js';
import type { PackageParts } from '../../xlsx/packageParts.js';
import type { XmlElement } from '../../xlsx/xml/element.js';
import { attributeText, unescapeString } from '../../xlsx/xml/text.js';
import type { GridBook } from '../book/gridBook.js';
import type { NamedTable } from '../book/tableChanges.js';
import type { OpenBook } from '../open/openBook.js';
import { sheetId, tableConfig } from '../open/workbookData.js';
import { storedFormula } from '../book/storedFormula.js';

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const contentType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml';
const relationships = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

/** Writes the tables that were changed or made, and takes out those that are gone. */
export function saveTables(
  { book, workbook, namespace }: OpenBook,
  parts: PackageParts,
  added: ReadonlyMap<UID, string>,
): void {
  const found = new Set<string>();
  let greatest = 0;
  workbook.sheets.forEach(({ part, cells }, position) => {
    const isGone = book.getters.tryGetSheetName(sheetId(position)) === undefined;
    for (const { id, type, target } of parts.relationships(part)) {
      const root = type === 'table' ? parts.find(target) : undefined;
      if (!root) continue;
      const name = root.attribute('displayName') ?? root.attribute('name') ?? '';
      greatest = Math.max(greatest, Number(root.attribute('id') ?? 0));
      found.add(name.toLowerCase());
      const table = book.tables.find(name);
      if (table) changeTable(root, book, table, namespace);
      else if (!isGone && cells) {
        changeTableParts(parts.root(part), (list) => list.keep((entry) => entry.attribute('id') !== id));
        parts.unrelate(part, (one) => one.id === id);
      }
    }
  });
  for (const table of book.tables.all()) {
    if (found.has(table.name.toLowerCase())) continue;
    const position = workbook.sheets.findIndex((_, at) => sheetId(at) === table.sheetId);
    const sheet = added.get(table.sheetId) ?? workbook.sheets[position]?.part;
    if (sheet === undefined) continue;
    const part = parts.freeName('xl/tables/table', '.xml');
    parts.add(part, newTable(table, ++greatest), contentType);
    changeTable(parts.root(part), book, table, namespace);
    const link = parts.relate(sheet, 'table', part);
    changeTableParts(parts.root(sheet), (list) =>
      list.insert(`<tablePart xmlns:r="${relationships}" r:id="${link}"/>`),
    );
  }
}

function changeTableParts(sheet: XmlElement, change: (list: XmlElement) => void): void {
  const list = sheet.made('tableParts');
  change(list);
  const { length } = list.children;
  list.set({ count: length });
  if (length === 0) sheet.put('tableParts', undefined);
}

/** A table without a column yet. */
const newTable = ({ zone, name, totalsRows }: NamedTable, id: number): string =>
  `<table xmlns="${main}" id="${id}" name="${attributeText(name)}" displayName="${attributeText(name)}"` +
  ` ref="${zoneAddress(zone)}" ${totalsRows > 0 ? 'totalsRowCount="1"' : 'totalsRowShown="0"'}>` +
  '<autoFilter ref="A1"/><tableColumns count="0"/><tableStyleInfo name="TableStyleLight9" showFirstColumn="0"' +
  ' showLastColumn="0" showRowStripes="1" showColumnStripes="0"/></table>';

/** A table's part with what is not as the grid was given it; new columns with their formulas. */
function changeTable(root: XmlElement, book: GridBook, table: NamedTable, namespace: string): void {
  const before = readTable(String(root), 0);
  if (!before) return;
  const { zone, columns, totalsRows } = table;
  const ref = zoneAddress({ ...zone, bottom: zone.bottom - totalsRows });
  const sameColumns =
    before.columns.length === columns.length && columns.every((name, at) => name === before.columns[at]);
  if (!sameColumns || !sameZone(before.zone, zone)) {
    root.set({ ref: zoneAddress(zone) });
    root.child('autoFilter')?.set({ ref });
  }
  if (!sameColumns) {
    const formulas = calculatedColumns(book, table, namespace);
    const list = root.made('tableColumns');
    const known = new Map(
      list.children.map((column) => [unescapeString(column.attribute('name') ?? ''), column]),
    );
    const now = columns.map((name, at) => known.get(name) ?? list.insert(newColumn(name, formulas[at])));
    now.forEach((column, at) => column.set({ id: at + 1 }));
    list.set({ count: now.length }).holds(now);
  }
  const config = book.getters.getCoreTables(table.sheetId).find(({ id }) => id === table.id)?.config;
  const given = tableConfig(before.headerRows, before.totalsRows > 0);
  changeSettings(root, config ?? tableConfig(1, false), given, ref);
}

/** Styles that every desktop program knows; styles made in the grid are known to it alone. */
const known = /^TableStyle(?:Light|Medium|Dark)\d+$/;
const switches = {
  firstColumn: 'showFirstColumn',
  lastColumn: 'showLastColumn',
  bandedRows: 'showRowStripes',
  bandedColumns: 'showColumnStripes',
} as const;

function changeSettings(
  root: XmlElement,
  now: TableConfig,
  given: ReturnType<typeof tableConfig>,
  filtered: string,
): void {
  const hasHeader = now.numberOfHeaders > 0;
  if (hasHeader !== given.numberOfHeaders > 0) root.set({ headerRowCount: hasHeader ? undefined : 0 });
  if (now.totalRow !== given.totalRow) root.set({ totalsRowCount: now.totalRow ? 1 : undefined });
  const filters = now.hasFilters && hasHeader;
  if (filters !== given.numberOfHeaders > 0 || now.totalRow !== given.totalRow)
    root.put('autoFilter', filters ? `<autoFilter ref="${filtered}"/>` : undefined);
  const style: Record<string, string | number> = {};
  if (now.styleId !== given.styleId && known.test(now.styleId)) style['name'] = now.styleId;
  for (const [name, attribute] of Object.entries(switches) as [keyof typeof switches, string][])
    if (now[name] !== given[name]) style[attribute] = now[name] ? 1 : 0;
  if (Object.keys(style).length > 0)
    root
      .made(
        'tableStyleInfo',
        '<tableStyleInfo showFirstColumn="0" showLastColumn="0" showRowStripes="1" showColumnStripes="0"/>',
      )
      .set(style);
}

function newColumn(name: string, formula: string | undefined): string {
  const tag = `<tableColumn id="0" name="${attributeText(name)}"`;
  return formula === undefined
    ? `${tag}/>`
    : `${tag}><calculatedColumnFormula>${attributeText(formula)}</calculatedColumnFormula></tableColumn>`;
}

/**
 * The formula of each column of a table as files store it, where every row of the column has the same: programs give it
 * to rows that are added. Undefined for the other columns.
 */
function calculatedColumns(
  book: GridBook,
  { sheetId, zone, headerRows, totalsRows, name }: NamedTable,
  namespace: string,
): (string | undefined)[] {
  const [first, last] = [zone.top + headerRows, zone.bottom - totalsRows];
  return Array.from({ length: zone.right - zone.left + 1 }, (_, at) => {
    const formulaIn = (row: number) => book.formula({ sheetId, row, col: zone.left + at });
    const formula = first <= last ? formulaIn(first) : undefined;
    // Only a formula that names the table says the same in every row.
    if (!formula?.includes('[')) return undefined;
    for (let row = first + 1; row <= last; row++) if (formulaIn(row) !== formula) return undefined;
    return storedFormula(formula, namespace, name);
  });
}
