import type { TableConfig } from '@odoo/o-spreadsheet';
import { sameZone, zoneAddress } from '../../sheet/address.js';
import type { Table } from '../../sheet/table.js';
import { readTable } from '../../xlsx/tables.js';
import { XmlReader } from '../../xlsx/xml/reader.js';
import type { NamedTable } from '../book/tableNames.js';
import { tableConfig } from '../open/workbookData.js';
import { childElements } from './parts/childElements.js';
import { withAttribute } from './parts/cellMarks.js';
import { attributeText } from '../../xlsx/xml/text.js';
import { appendedTo } from '../../xlsx/xml/appendedTo.js';
import { withoutElement } from '../../xlsx/xml/withoutElement.js';
import type { PackageParts } from '../../xlsx/packageParts.js';
import { withTableSettings } from './tableSettings.js';

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const contentType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml';
const relationships = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

/** A table's part with the cells and columns that the table has now; new columns with their formulas. */
export function changedTable(
  xml: string,
  table: NamedTable,
  formulas: () => readonly (string | undefined)[],
): string {
  const before = readTable(xml, 0);
  if (!before || (sameZone(before.zone, table.zone) && sameColumns(before, table))) return xml;
  const reader = new XmlReader(xml);
  const edits: { start: number; end: number; text: string }[] = [];
  while (reader.next()) {
    if (reader.closing) continue;
    const bounds = ['table', 'autoFilter'].includes(reader.name) ? reader.attributeBounds('ref') : undefined;
    if (bounds) {
      const { zone, totalsRows } = table;
      const bottom = reader.name === 'autoFilter' ? zone.bottom - totalsRows : zone.bottom;
      edits.push({ ...bounds, text: zoneAddress({ ...zone, bottom }) });
    } else if (reader.name === 'tableColumns' && !sameColumns(before, table)) {
      const start = reader.tagStart;
      const columns = columnElements(reader);
      edits.push({
        start,
        end: reader.position,
        text: newColumns(columns, table.columns, formulas(), reader.prefix),
      });
    }
  }
  return edits.reduceRight(
    (text, { start, end, text: put }) => text.slice(0, start) + put + text.slice(end),
    xml,
  );
}

const sameColumns = (a: Table, b: Table): boolean =>
  a.columns.length === b.columns.length && a.columns.every((column, at) => column === b.columns[at]);

/** The column elements by name; moves past the last. */
function columnElements(reader: XmlReader): Map<string, string> {
  const columns = new Map<string, string>();
  while (reader.next() && !(reader.closing && reader.name === 'tableColumns')) {
    if (reader.closing || reader.name !== 'tableColumn') continue;
    const { tagStart } = reader;
    const name = reader.attribute('name') ?? '';
    reader.skipElement();
    columns.set(name, reader.xml.slice(tagStart, reader.position));
  }
  return columns;
}

function newColumns(
  known: Map<string, string>,
  wanted: readonly string[],
  formulas: readonly (string | undefined)[],
  prefix: string,
): string {
  const elements = wanted.map((name, at) =>
    withAttribute(known.get(name) ?? newColumn(name, formulas[at], prefix), 'id', String(at + 1)),
  );
  return `<${prefix}tableColumns count="${wanted.length}">${elements.join('')}</${prefix}tableColumns>`;
}

function newColumn(name: string, formula: string | undefined, prefix: string): string {
  const open = `<${prefix}tableColumn id="0" name="${attributeText(name)}"`;
  if (formula === undefined) return `${open}/>`;
  const calculated = `<${prefix}calculatedColumnFormula>${attributeText(formula)}</${prefix}calculatedColumnFormula>`;
  return `${open}>${calculated}</${prefix}tableColumn>`;
}

/** Adds a table to a sheet's part. */
export function addTable(
  parts: PackageParts,
  sheetPart: string,
  table: NamedTable,
  config: TableConfig,
  id: number,
  formulas: readonly (string | undefined)[],
): void {
  const part = parts.freeName('xl/tables/table', '.xml');
  const { zone, name, columns, totalsRows } = table;
  const ref = zoneAddress(zone);
  const filter = zoneAddress({ ...zone, bottom: zone.bottom - totalsRows });
  const list = newColumns(new Map(), columns, formulas, '');
  const totals = totalsRows > 0 ? 'totalsRowCount="1"' : 'totalsRowShown="0"';
  const xml =
    `<table xmlns="${main}" id="${id}" name="${attributeText(name)}" displayName="${attributeText(name)}" ref="${ref}" ${totals}>` +
    `<autoFilter ref="${filter}"/>${list}` +
    `<tableStyleInfo name="TableStyleLight9" showFirstColumn="0" showLastColumn="0" showRowStripes="1" showColumnStripes="0"/></table>`;
  const given = tableConfig(1, totalsRows > 0);
  parts.add(part, withTableSettings(xml, zone, config, given), contentType);
  const link = parts.relate(sheetPart, 'table', part);
  parts.set(sheetPart, withTablePart(parts.xml(sheetPart) ?? '', link));
}

function withTablePart(xml: string, link: string): string {
  const reader = new XmlReader(xml);
  let before = -1;
  while (reader.next()) {
    const { prefix } = reader;
    const entry = `<${prefix}tablePart xmlns:r="${relationships}" r:id="${link}"/>`;
    if (reader.name === 'tableParts' && !reader.closing) {
      const count = Number(reader.attribute('count') ?? 0) + 1;
      const grown = withAttribute(xml.slice(reader.tagStart), 'count', String(count));
      return appendedTo(xml.slice(0, reader.tagStart) + grown, 'tableParts', () => entry);
    }
    const last = reader.name === 'worksheet' && reader.closing;
    if (reader.name === 'extLst' && !reader.closing && before < 0) before = reader.tagStart;
    if (!last) continue;
    const at = before < 0 ? reader.tagStart : before;
    return `${xml.slice(0, at)}<${prefix}tableParts count="1">${entry}</${prefix}tableParts>${xml.slice(at)}`;
  }
  return xml;
}

/** A sheet's part without the entry of a table. */
export function withoutTablePart(xml: string, link: string): string {
  const left = withoutElement(xml, 'tablePart', 'id', link);
  const list = childElements(left).find(({ name }) => name === 'tableParts');
  if (!list) return left;
  const count = childElements(list.text).length;
  const text = count === 0 ? '' : withAttribute(list.text, 'count', String(count));
  return left.slice(0, list.start) + text + left.slice(list.end);
}
