import { freeName } from '../../sheet/names.js';
import { refuseWorkbook } from '../refusal/refusal.js';
import type { Workbook } from '../workbook.js';
import { applyEdits } from '../xml/cutElements.js';
import { encodeString } from '../xml/text.js';
import { XmlReader } from '../xml/reader.js';
import { anchorsOf } from '../../sheet/keptFormulas/anchor.js';
import { type ListedFormula, listSheetXml } from './formulaList.js';
import { listSheetName } from '../../sheet/keptFormulas/formulaList.js';
import { filledCells, formulaCuts, type FrozenFormula } from './frozenSheet.js';
import { appendedTo, contentTypes, type Parts, relationshipsPart } from './parts.js';
import { sheetCellsOf } from './sheetCells.js';

const sheetType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml';
const linkType = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet';

/** Turns our formulas into values and keeps them on a sheet of their own. */
export function makeShopCopy(
  parts: Parts,
  workbook: Workbook,
  formulas: readonly FrozenFormula[],
  goes: (formula: string) => boolean,
): void {
  for (const { cells, part } of workbook.sheets) {
    if (cells) parts.put(part, applyEdits(cells.xml, formulaCuts(cells, goes)));
  }
  parts.dropRelationships(parts.workbookPart(), ({ type, target }) => {
    if (type === 'calcChain') parts.remove(target);
    return type === 'calcChain';
  });
  if (formulas.length > 0) addListSheet(parts, workbook, listSheetXml(anchored(workbook, formulas)));
  parts.removeContentTypes();
}

function anchored(workbook: Workbook, formulas: readonly FrozenFormula[]): ListedFormula[] {
  const sheets = sheetCellsOf(workbook);
  return sheets.flatMap((sheet) => {
    const own = formulas.filter(({ sheet: name }) => name === sheet.name);
    const filled = own.map((formula) => ({ ...filledCells(formula), formula: formula.text }));
    const anchors = anchorsOf(sheet, filled, sheets);
    return own.map((formula, at) => ({ ...formula, anchor: anchors[at] ?? { row: '', sizes: '' } }));
  });
}

function addListSheet(parts: Parts, workbook: Workbook, xml: string): void {
  const workbookPart = parts.workbookPart();
  const folder = workbookPart.slice(0, workbookPart.lastIndexOf('/') + 1);
  const file = freePart(parts, folder);
  const id = freeName(
    'rIdTonrow',
    parts.relationships(workbookPart).map((relationship) => relationship.id),
  );
  const name = freeName(
    listSheetName,
    workbook.sheets.map((sheet) => sheet.name),
  );
  const list = parts.needed(workbookPart);
  parts.put(folder + file, xml);
  parts.put(
    workbookPart,
    appendedTo(
      list,
      'sheets',
      (prefix) =>
        `<${prefix}sheet name="${encodeString(name)}" sheetId="${freeSheetId(list)}" ${idAttribute(list)}="${id}"/>`,
    ),
  );
  parts.put(
    relationshipsPart(workbookPart),
    appendedTo(
      parts.needed(relationshipsPart(workbookPart)),
      'Relationships',
      (prefix) => `<${prefix}Relationship Id="${id}" Type="${linkType}" Target="${file}"/>`,
    ),
  );
  parts.put(
    contentTypes,
    appendedTo(
      parts.needed(contentTypes),
      'Types',
      (prefix) => `<${prefix}Override PartName="/${folder}${file}" ContentType="${sheetType}"/>`,
    ),
  );
}

function freePart(parts: Parts, folder: string): string {
  for (let number = 1; ; number += 1) {
    const file = `worksheets/tonrowFormulas${number === 1 ? '' : number}.xml`;
    if (parts.named(folder + file) === undefined) return file;
  }
}

function freeSheetId(xml: string): number {
  const reader = new XmlReader(xml);
  let greatest = 0;
  while (reader.next()) {
    if (!reader.closing && reader.name === 'sheet')
      greatest = Math.max(greatest, Number(reader.attribute('sheetId') ?? 0));
  }
  return greatest + 1;
}

/** How this file writes the attribute that leads to a sheet's part: `r:id` in most. */
function idAttribute(xml: string): string {
  const reader = new XmlReader(xml);
  while (reader.next()) {
    if (reader.closing || reader.name !== 'sheet') continue;
    const written = /\s([\w.-]+:id)\s*=/.exec(xml.slice(reader.tagStart, reader.tagEnd));
    if (written?.[1]) return written[1];
  }
  return refuseWorkbook('The file is damaged: its workbook lists no sheets.');
}
