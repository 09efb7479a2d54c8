import { type Content, type Contents, isErrorConstant, isFormula } from '../content.js';

/** What is set on a range, in this order; null leaves a cell as it is, undefined leaves the property alone. */
export interface EncodedCells {
  /** Formats that let the contents arrive as they are meant. */
  formatsBefore?: (string | null)[][] | undefined;
  contents?: (string | number | boolean | null)[][] | undefined;
  formatsAfter?: (string | null)[][] | undefined;
}

const text = '@';
const general = 'General';

/**
 * How contents are handed to the host, which reads text as if it were typed: in a cell with the text format
 * everything stays text, formulas included; elsewhere `=…`, `-2`, `3/8` and `1e3` become formulas, numbers
 * and dates unless an apostrophe stands before them.
 */
export function encodeCells(
  contents: Contents,
  formats: readonly (readonly (string | undefined)[])[],
  held: readonly (readonly string[])[],
): EncodedCells {
  const cells = contents.map((row, at) =>
    row.map((content, column) => encodeCell(content, formats[at]?.[column], held[at]?.[column] ?? '')),
  );
  return {
    formatsBefore: unlessAllNull(cells, (cell) => cell.before),
    contents: unlessAllNull(cells, (cell) => cell.content),
    formatsAfter: unlessAllNull(cells, (cell) => cell.after),
  };
}

interface EncodedCell {
  before: string | null;
  content: string | number | boolean | null;
  after: string | null;
}

function encodeCell(content: Content | undefined, format: string | undefined, held: string): EncodedCell {
  if (content === undefined) return { before: null, content: null, after: format ?? null };
  const target = format ?? held;
  const isText = typeof content === 'string';
  const writing = target === text && !isText ? general : target;
  return {
    before: format !== undefined || writing !== held ? writing : null,
    content: plain(content, writing === text),
    after: format !== undefined || writing !== target ? target : null,
  };
}

function plain(content: Content, inTextCell: boolean): string | number | boolean {
  if (content === null || content === '') return '';
  if (isFormula(content)) return content.formula;
  if (isErrorConstant(content)) return content.error;
  return typeof content !== 'string' || inTextCell ? content : `'${content}`;
}

function unlessAllNull<Value>(
  cells: readonly (readonly EncodedCell[])[],
  of: (cell: EncodedCell) => Value | null,
): (Value | null)[][] | undefined {
  const rows = cells.map((row) => row.map(of));
  return rows.some((row) => row.some((value) => value !== null)) ? rows : undefined;
}
