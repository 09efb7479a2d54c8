import { strToU8, zipSync } from 'fflate';
import { stylesPart } from './styles.mjs';
import { escapeAttribute, mainSpace, packageSpace, part, relationshipSpace } from './xml.mjs';

const spreadsheet = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
const dynamicArray = 'http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray';
/** Local time, as a zip archive keeps it: the same bytes in every time zone. */
const modified = new Date(2024, 0, 1, 0, 0, 0);

/**
 * The bytes of a workbook, the same for the same content: `sheets` are `{ sheet, xml }`, `names` are pairs of a name
 * and what it stands for.
 */
export function packedWorkbook({ sheets, strings, names = [] }) {
  const parts = {
    '[Content_Types].xml': contentTypes(sheets),
    '_rels/.rels': relationships([['officeDocument', 'xl/workbook.xml']]),
    'xl/workbook.xml': workbookPart(sheets, names),
    'xl/_rels/workbook.xml.rels': relationships([
      ...sheets.map((_, index) => ['worksheet', `worksheets/sheet${index + 1}.xml`]),
      ['styles', 'styles.xml'],
      ['sharedStrings', 'sharedStrings.xml'],
      ['sheetMetadata', 'metadata.xml'],
    ]),
    'xl/styles.xml': stylesPart(),
    'xl/sharedStrings.xml': strings.part(),
    'xl/metadata.xml': metadataPart,
  };
  sheets.forEach(({ sheet, xml }, index) => {
    parts[`xl/worksheets/sheet${index + 1}.xml`] = xml;
    if (sheet.tables.length === 0) return;
    parts[`xl/worksheets/_rels/sheet${index + 1}.xml.rels`] = relationships(
      sheet.tables.map(({ id }) => ['table', `../tables/table${id}.xml`]),
    );
    for (const { id, xml: table } of sheet.tables) parts[`xl/tables/table${id}.xml`] = table;
  });
  const entries = Object.entries(parts).map(([name, xml]) => [name, strToU8(xml)]);
  return zipSync(Object.fromEntries(entries), { level: 9, mtime: modified });
}

/** Relationships by their short type. */
function relationships(links) {
  const entries = links.map(
    ([type, target], index) =>
      `<Relationship Id="rId${index + 1}" Type="${relationshipSpace}/${type}" Target="${target}"/>`,
  );
  return part(`<Relationships xmlns="${packageSpace}">${entries.join('')}</Relationships>`);
}

function contentTypes(sheets) {
  const override = (name, type) =>
    `<Override PartName="/xl/${name}.xml" ContentType="${spreadsheet}.${type}+xml"/>`;
  return part(
    '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">' +
      '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>' +
      '<Default Extension="xml" ContentType="application/xml"/>' +
      override('workbook', 'sheet.main') +
      sheets.map((_, index) => override(`worksheets/sheet${index + 1}`, 'worksheet')).join('') +
      sheets
        .flatMap(({ sheet }) => sheet.tables.map(({ id }) => override(`tables/table${id}`, 'table')))
        .join('') +
      override('styles', 'styles') +
      override('sharedStrings', 'sharedStrings') +
      override('metadata', 'sheetMetadata') +
      '</Types>',
  );
}

function workbookPart(sheets, names) {
  const entries = sheets.map(
    ({ sheet }, index) =>
      `<sheet name="${escapeAttribute(sheet.name)}" sheetId="${index + 1}" r:id="rId${index + 1}"/>`,
  );
  return part(
    `<workbook xmlns="${mainSpace}" xmlns:r="${relationshipSpace}"><workbookPr/>` +
      '<bookViews><workbookView xWindow="0" yWindow="0" windowWidth="28800" windowHeight="15000"/></bookViews>' +
      `<sheets>${entries.join('')}</sheets>` +
      definedNames(names) +
      '<calcPr calcId="191029"/></workbook>',
  );
}

function definedNames(names) {
  const entries = names.map(([name, text]) => `<definedName name="${name}">${text}</definedName>`);
  return entries.length === 0 ? '' : `<definedNames>${entries.join('')}</definedNames>`;
}

/** The record that marks a cell's formula as one that may spill. */
const metadataPart = part(
  `<metadata xmlns="${mainSpace}" xmlns:xda="${dynamicArray}">` +
    '<metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes>' +
    '<futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>' +
    '<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>',
);
