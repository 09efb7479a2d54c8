import {
  areListHeadings,
  isListName,
  listCells,
  listHeadings,
  readListRow,
} from '../../sheet/keptFormulas/formulaList.js';
import { cellAddress } from '../../sheet/address.js';
import { type StoredValue, isCellError } from '../../sheet/cellValue.js';
import type { Sheet } from '../workbook.js';
import { encodeString } from '../xml/text.js';
import type { Anchor } from '../../sheet/keptFormulas/anchor.js';
import type { FrozenFormula } from './frozenSheet.js';
import { shownFormula, storedFormula } from '../../sheet/formula/ourCalls.js';

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const metadataMark = /^cm=(\d{1,9})(?: |$)/;
const verbatim = 'verbatim ';
const attributes = /^(?:[a-z\d:]+="[^"<>&]*"(?: |$))*$/i;

export function isFormulaList({ name, cells }: Sheet): boolean {
  if (!cells || !isListName(name)) return false;
  return areListHeadings(listHeadings.map((_, column) => cells.values[cells.index.get(column) ?? -1]));
}

/** A formula of a list, and by what its place is found again. */
export type ListedFormula = FrozenFormula & { anchor: Anchor };

/**
 * The worksheet that lists formulas: where each stood, as people read it, how it was stored, its value, and by what
 * its place is found again.
 */
export function listSheetXml(formulas: readonly ListedFormula[]): string {
  const rows = formulas.map(({ sheet, cell, text, value, anchor, ...stored }) =>
    listCells<StoredValue>({
      sheet,
      cell,
      formula: `=${isReversible(text) ? shownFormula(text) : text}`,
      stored: storedText(text, stored),
      value,
      anchor,
    }),
  );
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

function rowXml(cells: readonly StoredValue[], row: number): string {
  const inner = cells.map((value, column) => cellXml(value, cellAddress(row, column))).join('');
  return `<row r="${row + 1}">${inner}</row>`;
}

function cellXml(value: StoredValue, address: string): string {
  if (value === null || value === '') return '';
  if (typeof value === 'number') return `<c r="${address}"><v>${value}</v></c>`;
  if (typeof value === 'boolean') return `<c r="${address}" t="b"><v>${Number(value)}</v></c>`;
  if (isCellError(value)) return `<c r="${address}" t="e"><v>${encodeString(value.error)}</v></c>`;
  const text = encodeString(value);
  return `<c r="${address}" t="inlineStr"><is><t xml:space="preserve">${text}</t></is></c>`;
}

/** The formulas a list keeps; rows that are no formula are reported with a sentence. */
export function readFormulaList({ cells }: Sheet): { formulas: ListedFormula[]; problems: string[] } {
  const formulas: ListedFormula[] = [];
  const problems: string[] = [];
  for (let row = 1; row < (cells?.height ?? 0); row++) {
    const at = (column: number): StoredValue => {
      const place = cells?.index.get(row * 16_384 + column);
      return place === undefined ? null : (cells?.values[place] ?? null);
    };
    const read = readRow(listHeadings.map((_, column) => at(column)));
    if (read === undefined) problems.push(`Row ${row + 1} of the list names no cell and formula.`);
    else formulas.push(read);
  }
  return { formulas, problems };
}

function readRow(cells: StoredValue[]): ListedFormula | undefined {
  const row = readListRow(cells);
  if (!row) return undefined;
  const { sheet, cell, formula, value, anchor } = row;
  const own = row.stored.startsWith(verbatim.trim());
  const stored = own ? row.stored.slice(verbatim.length) : row.stored;
  const metadata = metadataMark.exec(stored)?.[1] ?? '';
  const rest = stored.replace(metadataMark, '');
  if (!attributes.test(rest)) return undefined;
  const text = formula.slice(1);
  return { sheet, cell, text: own ? text : storedFormula(text), attributes: rest, metadata, value, anchor };
}
