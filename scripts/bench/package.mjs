// Packages of the bench's workbooks, written by hand: what is measured has no part in making them.
import { strToU8, zipSync } from 'fflate';

export const header = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
export const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const relationships = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const packageRelationships = 'http://schemas.openxmlformats.org/package/2006/relationships';
const contentTypes = 'http://schemas.openxmlformats.org/package/2006/content-types';

/** Texts of a workbook, each once. */
export class SharedStrings {
  places = new Map();

  place(text) {
    const known = this.places.get(text);
    if (known !== undefined) return known;
    this.places.set(text, this.places.size);
    return this.places.size - 1;
  }

  toString() {
    const items = [...this.places.keys()].map((text) => `<si><t>${escaped(text)}</t></si>`);
    return `${header}<sst xmlns="${main}" uniqueCount="${items.length}">${items.join('')}</sst>`;
  }
}

export const escaped = (text) =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

/** A cell with a number, a text, or a formula; nothing for a blank one. */
export function cell(address, content, strings) {
  if (content === '') return '';
  if (typeof content === 'number') return `<c r="${address}"><v>${content}</v></c>`;
  if (typeof content === 'string') return `<c r="${address}" t="s"><v>${strings.place(content)}</v></c>`;
  const { formula, array } = content;
  return `<c r="${address}"${array ? ' cm="1"' : ''}><f${array ? ` t="array" ref="${address}"` : ''}>${escaped(formula)}</f></c>`;
}

const ofSheets = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
const dynamicArrays = `${header}<metadata xmlns="${main}" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"><metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>`;

/** A workbook of sheets, each a name and its rows of cells as XML, with texts of its own and the cells that have names. */
export function workbook(sheets, strings, names = {}) {
  const sheetFiles = sheets.map((_, at) => `xl/worksheets/sheet${at + 1}.xml`);
  const parts = [
    ['worksheet', sheetFiles, 'worksheet'],
    ['sharedStrings', ['xl/sharedStrings.xml'], 'sharedStrings'],
    ['sheetMetadata', ['xl/metadata.xml'], 'sheetMetadata'],
  ].flatMap(([type, files, kind]) => files.map((file) => ({ type, file, kind })));
  const overrides = parts.map(
    ({ file, kind }) => `<Override PartName="/${file}" ContentType="${ofSheets}.${kind}+xml"/>`,
  );
  const links = parts.map(
    ({ type, file }, at) =>
      `<Relationship Id="rId${at + 1}" Type="${relationships}/${type}" Target="${file.slice(3)}"/>`,
  );
  const listed = sheets.map(
    ({ name }, at) => `<sheet name="${name}" sheetId="${at + 1}" r:id="rId${at + 1}"/>`,
  );
  const defined = Object.entries(names).map(
    ([name, to]) => `<definedName name="${name}">${to}</definedName>`,
  );
  const files = {
    '[Content_Types].xml': `${header}<Types xmlns="${contentTypes}"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${ofSheets}.sheet.main+xml"/>${overrides.join('')}</Types>`,
    '_rels/.rels': `${header}<Relationships xmlns="${packageRelationships}"><Relationship Id="rId1" Type="${relationships}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    'xl/workbook.xml': `${header}<workbook xmlns="${main}" xmlns:r="${relationships}"><sheets>${listed.join('')}</sheets>${defined.length > 0 ? `<definedNames>${defined.join('')}</definedNames>` : ''}</workbook>`,
    'xl/_rels/workbook.xml.rels': `${header}<Relationships xmlns="${packageRelationships}">${links.join('')}</Relationships>`,
    'xl/sharedStrings.xml': String(strings),
    'xl/metadata.xml': dynamicArrays,
  };
  sheets.forEach(({ rows }, at) => {
    files[sheetFiles[at]] =
      `${header}<worksheet xmlns="${main}"><sheetData>${rows.join('')}</sheetData></worksheet>`;
  });
  const packed = Object.entries(files).map(([name, text]) => [name, [strToU8(text), { level: 1 }]]);
  return zipSync(Object.fromEntries(packed));
}
