import type { CellValue } from '../../quantity/cellValue.js';
import { visibleText } from '../../quantity/visibleText.js';
import type { GroupField, RowField } from './heading.js';
import type { Column, Headings } from './readHeadings.js';

/** `-`, `—`, `./.`: nothing is entered. */
const dash = /^(?:[-\u2010-\u2015\u2212]{1,5}|\.\/\.|-\/-|\/)$/;
const notApplicable = new Set([
  ...['n/a', 'n.a.', 'n.a', 'n. a.', 'na', 'not applicable', 'not req', "not req'd", 'not required'],
  ...['entfällt', 'entf.', 'entf', 'nvt', 'n.v.t.', 'n.v.t', 's/o'],
]);
const none = new Set([
  ...['none', 'no', 'nil', 'null', 'nothing', 'without', 'no bolt', 'no bolts'],
  ...['keine', 'kein', 'keiner', 'keins', 'ohne', 'nein', 'nichts'],
  ...['geen', 'nee', 'neen', 'zonder', 'niets'],
  ...['aucun', 'aucune', 'sans', 'non', 'ninguno', 'ninguna', 'ningún', 'sin'],
]);
const square = new Set([
  ...['square', 'sq', 'sq.', 'square cut', 'straight', 'gerade', 'rechtwinklig', 'haaks', 'recht'],
]);
const longestText = 20;

type Field = RowField | GroupField;
type Row = (field: Field) => CellValue;

/** Which words of a column say that there is none of it: what cannot be none of its rows, such as a grade, has no word. */
type Says = (word: string, row: Row) => boolean;

const dashOnly: Says = (word) => dash.test(word);
const notEntered: Says = (word) => dash.test(word) || notApplicable.has(word);
const anyWord: Says = (word) => notEntered(word, () => null) || none.has(word);

/** A word for none contradicts the cells beside it that give the thing: only a dash is blank then. */
function noneBeside(...fields: readonly Field[]): Says {
  return (word, row) =>
    notEntered(word, row) || (none.has(word) && fields.every((field) => saysNothing(row(field))));
}

const columns: Partial<Record<Field, Says>> = {
  length: notEntered,
  size: dashOnly,
  thickness: dashOnly,
  width: dashOnly,
  feet: dashOnly,
  inches: dashOnly,
  miter: (word, row) => anyWord(word, row) || square.has(word),
  miterLeft: (word, row) => anyWord(word, row) || square.has(word),
  miterRight: (word, row) => anyWord(word, row) || square.has(word),
  cornerClip: anyWord,
  corners: noneBeside('cornerClip'),
  notchWidth: anyWord,
  notchDepth: anyWord,
  notches: noneBeside('notchWidth', 'notchDepth'),
  bendLength: anyWord,
  bends: noneBeside('bendLength'),
  notchAt: anyWord,
  clipAt: anyWord,
  bendAt: anyWord,
  longSide: anyWord,
  miterLeg: anyWord,
  finish: anyWord,
  cutBy: dashOnly,
  press: dashOnly,
  hole: noneBeside('bolt', 'holes'),
  holes: noneBeside('hole', 'bolt'),
  bolt: dashOnly,
  edge: anyWord,
  end: anyWord,
  edgeKind: notEntered,
  endKind: notEntered,
  pitch: anyWord,
  p2: anyWord,
  p3: anyWord,
  p4: anyWord,
  gage: anyWord,
  leg: anyWord,
  slot: (word, row) => notEntered(word, row) || (none.has(word) && !hasTwoSizes(row('hole'))),
  holesAt: anyWord,
  holesBy: dashOnly,
};

/** Words of a bolt cell that say that the holes are no bolt holes. */
export function saysNoBolt(cell: CellValue): boolean {
  const word = wordOf(cell);
  return word !== undefined && (none.has(word) || notApplicable.has(word));
}

/**
 * The cells of a row, blank where a word says that there is none: `-`, `n/a`, `none`, `keine`, `geen` of a hole, a notch,
 * a miter, a distance. A blank cell there asks for no more than the word does. Others keep their text: a quantity, a
 * section or a grade cannot be none, and `none` under Holes beside a size contradicts it.
 */
export function withoutNothings(cells: readonly CellValue[], headings: Headings): readonly CellValue[] {
  if (!cells.some((cell) => wordOf(cell) !== undefined)) return cells;
  const out = [...cells];
  const blank = (of: Partial<Record<string, Column>>) => {
    const row = (field: Field) => cells[of[field]?.at ?? -1] ?? null;
    for (const [field, column] of Object.entries(of)) {
      const word = column && wordOf(cells[column.at]);
      if (column && word !== undefined && columns[field as Field]?.(word, row)) out[column.at] = null;
    }
  };
  blank(headings.fields);
  headings.groups.forEach(blank);
  return out;
}

function saysNothing(cell: CellValue): boolean {
  if (cell === null || cell === '' || cell === 0) return true;
  const word = wordOf(cell);
  return word !== undefined && anyWord(word, () => null);
}

function hasTwoSizes(cell: CellValue): boolean {
  return typeof cell === 'string' && /[x×*]/i.test(cell);
}

/** The text of a cell where it is one of these words. */
function wordOf(cell: CellValue | undefined): string | undefined {
  if (typeof cell !== 'string' || cell === '' || cell.length > longestText || /^\d/.test(cell))
    return undefined;
  const word = visibleText(cell).trim().toLowerCase().replace(/\s+/g, ' ');
  return dash.test(word) || [notApplicable, none, square].some((words) => words.has(word)) ? word : undefined;
}
