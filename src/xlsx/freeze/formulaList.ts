import { cellAddress } from '../address';
import { type CellValue, isCellError } from '../cellValue';
import type { Sheet } from '../workbook';
import { encodeString } from '../xml/text';
import type { FrozenFormula } from './frozenSheet';
import { shownFormula, storedFormula } from './ourFormula';

/** The sheet that keeps the formulas of a values copy; a number follows where the name is taken. */
export const listSheetName = 'Tonrow formulas';
export const listHeadings = ['Sheet', 'Cell', 'Formula', 'Stored as', 'Value'];

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const metadataMark = /^cm=(\d{1,9})(?: |$)/;
const verbatim = 'verbatim ';
const attributes = /^(?:[a-z\d:]+="[^"<>&]*"(?: |$))*$/i;

export function isFormulaList({ name, cells }: Sheet): boolean {
  if (!cells || !name.toLowerCase().startsWith(listSheetName.toLowerCase())) return false;
  return listHeadings.every((heading, column) => cells.values[cells.index.get(column) ?? -1] === heading);
}

/** The worksheet that lists formulas: where each stood, as people read it, how it was stored, and its value. */
export function listSheetXml(formulas: readonly FrozenFormula[]): string {
  const rows: CellValue[][] = formulas.map(({ sheet, cell, text, value, ...stored }) => [
    sheet,
    cell,
    `=${isReversible(text) ? shownFormula(text) : text}`,
    storedText(text, stored),
    value,
  ]);
  const xml = [listHeadings, ...rows].map((cells, row) => rowXml(cells, row)).join('');
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<worksheet xmlns="${main}"><sheetData>${xml}</sheetData></worksheet>`;
}

const isReversible = (text: string) => storedFormula(shownFormula(text)) === text;

function storedText(
  text: string,
  { attributes: own, metadata }: Pick<FrozenFormula, 'attributes' | 'metadata'>,
): string {
  const mark = metadata === '' ? '' : `cm=${metadata} `;
  return `${isReversible(text) ? '' : verbatim}${mark}${own}`.trim();
}

function rowXml(cells: readonly CellValue[], row: number): string {
  const inner = cells.map((value, column) => cellXml(value, cellAddress(row, column))).join('');
  return `<row r="${row + 1}">${inner}</row>`;
}

function cellXml(value: CellValue, address: string): string {
  if (value === null || value === '') return '';
  if (typeof value === 'number') return `<c r="${address}"><v>${value}</v></c>`;
  if (typeof value === 'boolean') return `<c r="${address}" t="b"><v>${Number(value)}</v></c>`;
  if (isCellError(value)) return `<c r="${address}" t="e"><v>${encodeString(value.error)}</v></c>`;
  const text = encodeString(value);
  return `<c r="${address}" t="inlineStr"><is><t xml:space="preserve">${text}</t></is></c>`;
}

/** The formulas a list keeps; rows that are no formula are reported with a sentence. */
export function readFormulaList({ cells }: Sheet): { formulas: FrozenFormula[]; problems: string[] } {
  const formulas: FrozenFormula[] = [];
  const problems: string[] = [];
  for (let row = 1; row < (cells?.height ?? 0); row++) {
    const at = (column: number): CellValue => {
      const place = cells?.index.get(row * 16_384 + column);
      return place === undefined ? null : (cells?.values[place] ?? null);
    };
    const read = readRow([at(0), at(1), at(2), at(3), at(4)]);
    if (read === undefined) problems.push(`Row ${row + 1} of the list names no cell and formula.`);
    else formulas.push(read);
  }
  return { formulas, problems };
}

function readRow([sheet, cell, formula, how, value]: CellValue[]): FrozenFormula | undefined {
  if (typeof sheet !== 'string' || typeof cell !== 'string' || typeof formula !== 'string') return undefined;
  if (!/^[A-Z]{1,3}\d{1,7}$/.test(cell) || !formula.startsWith('=')) return undefined;
  let stored = typeof how === 'string' ? how : '';
  const own = stored.startsWith(verbatim.trim());
  if (own) stored = stored.slice(verbatim.length);
  const metadata = metadataMark.exec(stored)?.[1] ?? '';
  const rest = stored.replace(metadataMark, '');
  if (!attributes.test(rest)) return undefined;
  const text = formula.slice(1);
  return {
    sheet,
    cell,
    text: own ? text : storedFormula(text),
    attributes: rest,
    metadata,
    value: value ?? null,
  };
}
