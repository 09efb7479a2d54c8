import { readFileSync } from 'node:fs';
import path from 'node:path';
import {
  builtFunctions,
  type CellValue,
  type InputChange,
  type LoadedFunctions,
  readSheetValues,
  recalculateWorkbook,
} from '../../src/headless/index.js';
import { isCellError } from '../../src/sheet/cellValue.js';

const root = path.resolve(import.meta.dirname, '../..');
const built = process.env.TONROW_DIST ?? path.join(root, 'dist');
export const sources = path.join(root, 'examples/quote');
export const workbookFile = path.join(root, 'examples/quote.xlsx');

/** The rows of a source as text, by heading. */
export function source(name: string): Record<string, string>[] {
  const lines = readFileSync(path.join(sources, `${name}.tsv`), 'utf8')
    .replace(/\n$/, '')
    .split('\n')
    .map((line) => line.split('\t'));
  const [headings = [], ...rows] = lines;
  return rows.map((row) => Object.fromEntries(headings.map((heading, at) => [heading, row[at] ?? ''])));
}

export type Row = Record<string, CellValue>;

export interface Quote {
  bytes: Uint8Array;
  /** Checked rows by mark; the blank row's mark is ''. */
  rows: Map<string, Row>;
  report: Awaited<ReturnType<typeof recalculateWorkbook>>['report'];
}

let functions: ReturnType<typeof builtFunctions> | undefined;

/** A workbook, recalculated through the built functions. */
export async function recalculated(
  original: Uint8Array,
  changes: InputChange[] = [],
  blank: LoadedFunctions['blank'] = null,
) {
  functions ??= builtFunctions(built);
  return recalculateWorkbook(original, { ...(await functions), blank }, { changes });
}

/** The example, recalculated through the built functions after some cells were changed. */
export async function recalculatedQuote(
  changes: InputChange[] = [],
  blank: LoadedFunctions['blank'] = null,
): Promise<Quote> {
  const original = new Uint8Array(readFileSync(workbookFile));
  const { bytes, report } = await recalculated(original, changes, blank);
  return { bytes, report, rows: quoteRows(bytes) };
}

const headingRow = 5;

function quoteRows(bytes: Uint8Array): Map<string, Row> {
  const values = readSheetValues(bytes, 'Quote').slice(headingRow - 1);
  const [headings = [], ...rows] = values;
  return new Map(
    rows.map((cells) => {
      const row = Object.fromEntries(headings.map((heading, at) => [String(heading), cells[at] ?? '']));
      return [String(row.Mark), row];
    }),
  );
}

/** A change of one value of a press in the Shop sheet. */
export function pressChange(item: string, press: string, value: CellValue): InputChange {
  const shop = readSheetValues(new Uint8Array(readFileSync(workbookFile)), 'Shop');
  const headings = shop.findIndex((cells) => cells[0] === 'Item');
  const column = (shop[headings] ?? []).indexOf(press);
  const row = shop.findIndex((cells, at) => at > headings && cells[0] === item);
  if (headings < 0 || column < 0 || row < 0)
    throw new Error(`The Shop sheet has no ${item} of ${press} to change.`);
  return { sheet: 'Shop', cell: `${String.fromCharCode(65 + column)}${row + 1}`, value };
}

export function shown(value: CellValue | undefined): string {
  return isCellError(value) ? `${value.error} ${value.message ?? ''}`.trim() : String(value ?? '');
}

/** The marks whose row shows something else than before in one of the columns, in the order of the list. */
export function changedMarks(before: Quote, after: Quote, columns: string[]): string[] {
  return [...before.rows]
    .filter(([mark, row]) =>
      columns.some((column) => shown(row[column]) !== shown(after.rows.get(mark)?.[column])),
    )
    .map(([mark]) => mark);
}
