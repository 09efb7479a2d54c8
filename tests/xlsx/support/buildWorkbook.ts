import { strToU8, zipSync } from 'fflate';
import { cellAddress, columnLetters } from '../../../src/sheet/address.js';

export interface BuiltTable {
  name: string;
  ref: string;
  columns: string[];
  totals?: boolean;
}

export interface BuiltSheet {
  name: string;
  /** Rows of cells: a value, or a cell's XML with its address left out as `@`. Undefined: no cell. */
  rows?: (string | number | boolean | null | undefined | RawCell)[][];
  /** The sheetData content, when `rows` is not enough. */
  sheetData?: string;
  tables?: BuiltTable[];
  /** What follows the sheetData. */
  after?: string;
  state?: string;
}

/** Cell content written as given. */
export interface RawCell {
  attributes?: string;
  inner: string;
}

export const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006/relationships';
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

const escape = (text: string) => text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
const quoted = (text: string) => escape(text).replace(/"/g, '&quot;');

type Value = number | string | boolean;

function stored(value: Value | undefined): { type: string; v: string } {
  if (value === undefined) return { type: '', v: '' };
  if (typeof value === 'number') return { type: '', v: `<v>${value}</v>` };
  if (typeof value === 'boolean') return { type: ' t="b"', v: `<v>${Number(value)}</v>` };
  if (/^#[A-Z/0]+[!?A]$/.test(value)) return { type: ' t="e"', v: `<v>${value}</v>` };
  return { type: ' t="str"', v: `<v>${escape(value)}</v>` };
}

/** A cell with a formula that holds one value, and its stored value. */
export function formula(text: string, value?: Value): RawCell {
  const { type, v } = stored(value);
  return { attributes: type, inner: `<f>${escape(text)}</f>${v}` };
}

/** A cell with a formula that spills over `ref`. */
export function spilling(text: string, ref: string, value?: Value): RawCell {
  const { type, v } = stored(value);
  return { attributes: `${type} cm="1"`, inner: `<f t="array" ref="${ref}">${escape(text)}</f>${v}` };
}

/** A cell with a value that a spill put there. */
export function spilled(value: Value): RawCell {
  const { type, v } = stored(value);
  return { attributes: type, inner: v };
}

function cellXml(cell: NonNullable<BuiltSheet['rows']>[number][number], row: number, column: number): string {
  if (cell === undefined) return '';
  const r = cellAddress(row, column);
  if (cell === null) return `<c r="${r}"/>`;
  if (typeof cell === 'number') return `<c r="${r}"><v>${cell}</v></c>`;
  if (typeof cell === 'boolean') return `<c r="${r}" t="b"><v>${Number(cell)}</v></c>`;
  if (typeof cell === 'string') {
    return `<c r="${r}" t="inlineStr"><is><t xml:space="preserve">${escape(cell)}</t></is></c>`;
  }
  return `<c r="${r}"${cell.attributes ?? ''}>${cell.inner}</c>`;
}

export function sheetXml(sheet: BuiltSheet): string {
  const rows = sheet.rows ?? [];
  const data =
    sheet.sheetData ??
    rows
      .map((row, r) => `<row r="${r + 1}">${row.map((cell, c) => cellXml(cell, r, c)).join('')}</row>`)
      .join('');
  const width = Math.max(1, ...rows.map((row) => row.length));
  const dimension = rows.length > 0 ? `<dimension ref="A1:${columnLetters(width - 1)}${rows.length}"/>` : '';
  const tables = (sheet.tables ?? []).map((_, i) => `<tablePart r:id="rId${i + 1}"/>`).join('');
  const parts = tables ? `<tableParts count="${sheet.tables?.length}">${tables}</tableParts>` : '';
  return `${HEAD}<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}">${dimension}<sheetData>${data}</sheetData>${sheet.after ?? ''}${parts}</worksheet>`;
}

function tableXml(table: BuiltTable, id: number): string {
  const columns = table.columns
    .map((name, i) => `<tableColumn id="${i + 1}" name="${quoted(name)}"/>`)
    .join('');
  const totals = table.totals ? ' totalsRowCount="1"' : '';
  return `${HEAD}<table xmlns="${MAIN}" id="${id}" name="${table.name}" displayName="${table.name}" ref="${table.ref}"${totals}><autoFilter ref="${table.ref}"/><tableColumns count="${table.columns.length}">${columns}</tableColumns></table>`;
}

const relationships = (list: [string, string, string][]) =>
  `${HEAD}<Relationships xmlns="${PACKAGE}">${list.map(([id, type, target]) => `<Relationship Id="${id}" Type="${OFFICE}/${type}" Target="${target}"/>`).join('')}</Relationships>`;

const METADATA = `${HEAD}<metadata xmlns="${MAIN}"><metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" cellMeta="1"/></metadataTypes><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>`;

/** The parts of a workbook as the host stores it: no styles, no theme, inline strings. */
export function workbookParts(
  sheets: BuiltSheet[],
  extra: { names?: Record<string, string>; workbook?: string } = {},
): Record<string, string> {
  const parts: Record<string, string> = {};
  const names = Object.entries(extra.names ?? {}).map(
    ([name, text]) => `<definedName name="${name}">${escape(text)}</definedName>`,
  );
  const list = sheets.map(
    ({ name, state }, i) =>
      `<sheet name="${quoted(name)}" sheetId="${i + 1}"${state ? ` state="${state}"` : ''} r:id="rId${i + 1}"/>`,
  );
  parts['[Content_Types].xml'] =
    `${HEAD}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/>${sheets.map((_, i) => `<Override PartName="/xl/worksheets/sheet${i + 1}.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/>`).join('')}</Types>`;
  parts['_rels/.rels'] = relationships([['rId1', 'officeDocument', 'xl/workbook.xml']]);
  parts['xl/workbook.xml'] =
    `${HEAD}<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}">${extra.workbook ?? ''}<sheets>${list.join('')}</sheets>${names.length ? `<definedNames>${names.join('')}</definedNames>` : ''}</workbook>`;
  parts['xl/_rels/workbook.xml.rels'] = relationships([
    ...sheets.map((_, i): [string, string, string] => [
      `rId${i + 1}`,
      'worksheet',
      `worksheets/sheet${i + 1}.xml`,
    ]),
    ['rIdMeta', 'sheetMetadata', 'metadata.xml'],
  ]);
  parts['xl/metadata.xml'] = METADATA;
  let tables = 0;
  sheets.forEach((sheet, i) => {
    parts[`xl/worksheets/sheet${i + 1}.xml`] = sheetXml(sheet);
    const links = (sheet.tables ?? []).map((table, t): [string, string, string] => {
      parts[`xl/tables/table${++tables}.xml`] = tableXml(table, tables);
      return [`rId${t + 1}`, 'table', `../tables/table${tables}.xml`];
    });
    if (links.length > 0) parts[`xl/worksheets/_rels/sheet${i + 1}.xml.rels`] = relationships(links);
  });
  return parts;
}

export const zipParts = (parts: Record<string, string>): Uint8Array =>
  zipSync(Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])), {
    level: 6,
    // The same bytes for the same parts, whenever they are packed.
    mtime: new Date(2026, 2, 15, 8, 30),
  });

export const buildWorkbook = (...args: Parameters<typeof workbookParts>): Uint8Array =>
  zipParts(workbookParts(...args));
