import type { DefinedName } from '../sheet/formula/scope.js';
import type { Table } from '../sheet/table.js';
import type { CellContext } from './cell.js';
import { Package, type Relationship } from './package.js';
import { limits } from './refusal/limits.js';
import { refuseWorkbook } from './refusal/refusal.js';
import { atOnce, type Pausing } from './pausing.js';
import { readSharedStrings } from './sharedStrings.js';
import { readTable } from './tables.js';
import { scanWorksheet } from './worksheet.js';
import type { Worksheet } from './storedCells.js';
import { portableCodec, type Codec } from './zip/codec.js';
import { XmlReader } from './xml/reader.js';

/*
 * Workbook files. `zip` and `xml` read and edit packages, `freeze` makes copies that hold values only,
 * `refusal` says what is not opened; this file knows what a recalculation reads.
 */

export interface Sheet {
  name: string;
  /** The part it is stored in. */
  part: string;
  visibility: 'visible' | 'hidden' | 'veryHidden';
  /** Undefined for a chart sheet or another kind without cells. */
  cells: Worksheet | undefined;
}

/** An opened workbook: everything a recalculation reads. */
export interface Workbook {
  package: Package;
  /** The part that lists the sheets. */
  part: string;
  sheets: Sheet[];
  names: DefinedName[];
  tables: Table[];
  date1904: boolean;
  /** The workbook allows circular references and settles them by repeating. */
  iterates: boolean;
}

interface WorkbookPart {
  sheets: { name: string; id: string; state: string }[];
  names: DefinedName[];
  date1904: boolean;
  iterates: boolean;
}

/** Opens an .xlsx workbook, or refuses it in one sentence. */
export function openWorkbook(bytes: Uint8Array, codec: Codec = portableCodec): Workbook {
  return atOnce(openingWorkbook(bytes, codec));
}

/** The same, with rests. */
export function* openingWorkbook(bytes: Uint8Array, codec: Codec = portableCodec): Pausing<Workbook> {
  const opened = new Package(bytes, codec);
  const part = workbookPart(opened);
  const xml = opened.xml(part);
  if (xml === undefined) return refuseWorkbook('The file is damaged: its workbook part is missing.');
  const head = readWorkbookPart(xml);
  const relationships = opened.relationships(part);
  const byId = new Map(relationships.map((link) => [link.id, link]));
  const context = yield* cellContext(opened, relationships, head.date1904);
  const tables: Table[] = [];
  const sheets: Sheet[] = [];
  for (const [position, { name, id, state }] of head.sheets.entries()) {
    const link = byId.get(id);
    if (!link) return refuseWorkbook(`The file is damaged: the sheet ${JSON.stringify(name)} is missing.`);
    const visibility = state === 'hidden' || state === 'veryHidden' ? state : 'visible';
    const sheetXml = link.type === 'worksheet' ? yield* opened.read(link.target) : undefined;
    if (sheetXml !== undefined)
      for (const table of readTables(opened, link.target, position)) tables.push(table);
    const cells = sheetXml === undefined ? undefined : yield* scanWorksheet(sheetXml, context);
    sheets.push({ name, part: link.target, visibility, cells });
  }
  return {
    package: opened,
    part,
    sheets,
    names: head.names,
    tables,
    date1904: head.date1904,
    iterates: head.iterates,
  };
}

function workbookPart(opened: Package): string {
  const link = opened.relationships('').find((relationship) => relationship.type === 'officeDocument');
  if (link && opened.entry(link.target)) {
    if (link.target.toLowerCase().endsWith('.bin')) {
      refuseWorkbook('The file is in the binary .xlsb format: save it as .xlsx and try again.');
    }
    if (/(?:^|\/)(?:word|ppt)\//i.test(link.target))
      refuseWorkbook('The file is an office document, but not a workbook.');
    return link.target;
  }
  if (opened.entry('xl/workbook.xml')) return 'xl/workbook.xml';
  if (opened.entry('content.xml')) {
    refuseWorkbook('The file is in the OpenDocument format (.ods): save it as .xlsx and try again.');
  }
  return refuseWorkbook('The file is a zip archive, but not an .xlsx workbook.');
}

function readWorkbookPart(xml: string): WorkbookPart {
  const part: WorkbookPart = { sheets: [], names: [], date1904: false, iterates: false };
  const reader = new XmlReader(xml);
  while (reader.next()) {
    if (reader.closing) continue;
    if (reader.name === 'sheet') {
      if (part.sheets.length === limits.sheets)
        refuseWorkbook('The file is refused: it lists more than 10,000 sheets.');
      part.sheets.push({
        name: reader.attribute('name') ?? '',
        id: reader.attribute('id') ?? '',
        state: reader.attribute('state') ?? 'visible',
      });
    } else if (reader.name === 'workbookPr') part.date1904 = isTrue(reader.attribute('date1904'));
    else if (reader.name === 'calcPr') part.iterates = isTrue(reader.attribute('iterate'));
    else if (reader.name === 'definedName') {
      const local = reader.attribute('localSheetId');
      const name = reader.attribute('name') ?? '';
      part.names.push({
        name,
        sheet: local === undefined ? undefined : Number(local),
        text: reader.text().trim(),
      });
    }
  }
  if (part.sheets.length === 0) refuseWorkbook('The file is damaged: its workbook lists no sheets.');
  return part;
}

const isTrue = (text: string | undefined) => text === '1' || text === 'true' || text === 'on';

function* cellContext(
  opened: Package,
  relationships: Relationship[],
  date1904: boolean,
): Pausing<CellContext> {
  const partOf = (type: string) => relationships.find((relationship) => relationship.type === type)?.target;
  const stringsPart = partOf('sharedStrings');
  const metadataPart = partOf('sheetMetadata');
  return {
    strings: yield* readSharedStrings(
      stringsPart === undefined ? undefined : yield* opened.read(stringsPart),
    ),
    date1904,
    dynamicMetadata: readDynamicMetadata(metadataPart === undefined ? undefined : opened.xml(metadataPart)),
  };
}

/** The numbers, from 1, of cell metadata records of the dynamic array kind. */
function readDynamicMetadata(xml: string | undefined): Set<string> {
  const dynamic = new Set<string>();
  if (xml === undefined) return dynamic;
  const reader = new XmlReader(xml);
  const types: string[] = [];
  let inCells = false;
  let record = 0;
  while (reader.next()) {
    if (reader.name === 'cellMetadata') inCells = !reader.closing;
    else if (reader.closing) continue;
    else if (reader.name === 'metadataType') types.push(reader.attribute('name') ?? '');
    else if (inCells && reader.name === 'bk') record++;
    else if (inCells && reader.name === 'rc') {
      if (types[Number(reader.attribute('t')) - 1] === 'XLDAPR') dynamic.add(String(record));
    }
  }
  return dynamic;
}

function readTables(opened: Package, part: string, sheet: number): Table[] {
  const tables: Table[] = [];
  for (const link of opened.relationships(part)) {
    if (link.type !== 'table' || link.external) continue;
    const xml = opened.xml(link.target);
    const table = xml === undefined ? undefined : readTable(xml, sheet);
    if (table) tables.push(table);
  }
  return tables;
}
