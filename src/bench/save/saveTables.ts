import type { TableConfig, UID } from '@odoo/o-spreadsheet';
import { readTable } from '../../xlsx/tables.js';
import { XmlReader } from '../../xlsx/xml/reader.js';
import type { OpenBook } from '../open/openBook.js';
import { sheetId, tableConfig } from '../open/workbookData.js';
import type { GridBook } from '../book/gridBook.js';
import type { NamedTable } from '../book/tableNames.js';
import { calculatedColumns } from './calculatedColumns.js';
import type { PackageParts } from '../../xlsx/packageParts.js';
import { addTable, changedTable, withoutTablePart } from './tables.js';
import { withTableSettings } from './tableSettings.js';

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
    for (const { id: link, type, target } of parts.relationships(part)) {
      const xml = type === 'table' ? parts.xml(target) : undefined;
      if (xml === undefined) continue;
      const { name, id } = tableHead(xml);
      greatest = Math.max(greatest, id);
      const table = book.tables.find(name);
      found.add(name.toLowerCase());
      const before = table && readTable(xml, position);
      if (table && before) {
        const given = tableConfig(before.headerRows, before.totalsRows > 0);
        const changed = changedTable(xml, table, () => calculatedColumns(book, table, namespace));
        parts.set(target, withTableSettings(changed, table.zone, configOf(book, table), given));
      }
      if (!table && !isGone && cells) {
        parts.set(part, withoutTablePart(parts.xml(part) ?? '', link));
        parts.unrelate(part, (one) => one.id === link);
      }
    }
  });
  for (const table of book.tables.all()) {
    if (found.has(table.name.toLowerCase())) continue;
    const position = workbook.sheets.findIndex((_, at) => sheetId(at) === table.sheetId);
    const part = added.get(table.sheetId) ?? workbook.sheets[position]?.part;
    if (part !== undefined) {
      const formulas = calculatedColumns(book, table, namespace);
      addTable(parts, part, table, configOf(book, table), ++greatest, formulas);
    }
  }
}

function configOf({ getters }: GridBook, { sheetId: id, id: table }: NamedTable): TableConfig {
  const found = getters.getCoreTables(id).find((one) => one.id === table);
  return found?.config ?? tableConfig(1, false);
}

function tableHead(xml: string): { name: string; id: number } {
  const reader = new XmlReader(xml);
  while (reader.next())
    if (reader.name === 'table')
      return {
        name: reader.attribute('displayName') ?? reader.attribute('name') ?? '',
        id: Number(reader.attribute('id') ?? 0),
      };
  return { name: '', id: 0 };
}
