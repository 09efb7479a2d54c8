import { cellAddress } from '../sheet/address.js';
import { freeName, sameName } from '../sheet/names.js';
import { requestFullCalculation } from './fullCalculation.js';
import { PackageParts } from './packageParts.js';
import { refuseWorkbook } from './refusal/refusal.js';
import { addListedSheet } from './sheetList.js';
import type { Workbook } from './workbook.js';
import { attributeText, encodeString } from './xml/text.js';

/** A cell of a new sheet; text stays text, whatever it looks like. */
export type NewCell = number | string | { bold: string } | null;

/** A sheet to be added. */
export interface NewSheet {
  name: string;
  rows: readonly (readonly NewCell[])[];
  /** Widths of the columns in characters. */
  widths: readonly number[];
}

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const sheetType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml';
const longestName = 31;

/**
 * The workbook's file with one more sheet, behind the others; every part but the list of sheets keeps its bytes. Where
 * the name is taken a number follows it. `replace`: the sheet of that name is replaced instead, and the program that
 * opens the file calculates what reads it.
 */
export function addSheet(
  workbook: Workbook,
  sheet: NewSheet,
  { replace = false } = {},
): { bytes: Uint8Array; name: string } {
  const parts = new PackageParts(workbook.package);
  const list = parts.workbookPart();
  const old = replace ? workbook.sheets.find(({ name }) => sameName(name, sheet.name)) : undefined;
  if (old) {
    if (!old.cells) refuseWorkbook(`The sheet ${JSON.stringify(old.name)} has no cells to replace.`);
    parts.unrelate(old.part, () => true);
    parts.set(old.part, sheetXml(sheet));
    requestFullCalculation(parts.root(list));
    return { bytes: parts.toBytes(), name: old.name };
  }
  const taken = workbook.sheets.map(({ name }) => name);
  const name = freeName(sheet.name, taken, { joint: ' ', longest: longestName });
  const part = parts.freeName('xl/worksheets/sheet', '.xml');
  parts.add(part, sheetXml(sheet), sheetType);
  addListedSheet(parts.root(list), name, parts.relate(list, 'worksheet', part));
  return { bytes: parts.toBytes(), name };
}

function sheetXml({ rows, widths }: NewSheet): string {
  const cols = widths
    .map((width, at) => `<col min="${at + 1}" max="${at + 1}" width="${width}" customWidth="1"/>`)
    .join('');
  const data = rows.map((cells, row) => {
    const filled = cells.map((cell, column) => cellXml(cell, cellAddress(row, column))).join('');
    return filled === '' ? '' : `<row r="${row + 1}">${filled}</row>`;
  });
  return (
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
    `<worksheet xmlns="${main}"><sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>` +
    `${cols === '' ? '' : `<cols>${cols}</cols>`}<sheetData>${data.join('')}</sheetData>` +
    '<pageSetup orientation="landscape" fitToHeight="0"/></worksheet>'
  );
}

function cellXml(cell: NewCell, address: string): string {
  if (cell === null) return '';
  const at = attributeText(address);
  if (typeof cell === 'number') return `<c r="${at}"><v>${cell}</v></c>`;
  const [text, isBold] = typeof cell === 'string' ? [cell, false] : [cell.bold, true];
  if (text === '') return '';
  // Bold as a run of the text: the styles of the workbook stay as they are.
  const written = `<t xml:space="preserve">${encodeString(text)}</t>`;
  const run = isBold ? `<r><rPr><b/></rPr>${written}</r>` : written;
  return `<c r="${at}" t="inlineStr"><is>${run}</is></c>`;
}
