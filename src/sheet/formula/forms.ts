import { MAX_COLUMNS } from '../address.js';
import { writtenCorner } from './corner.js';
import { notAway, reachOf, type Away, type Reach } from './moves.js';
import type { Formula } from './nodes.js';
import { parseFormula, type Place } from './parse.js';
import { readPieces } from './pieces.js';
import type { Scope } from './scope.js';

/** A formula that was read once for many cells. */
export interface FormulaForm {
  formula: Formula;
  /** Its text, and the cell that the text is written for. */
  text: string;
  row: number;
  column: number;
}

/** A formula as a cell has it. */
export interface PlacedFormula {
  form: FormulaForm;
  away: Away;
}

interface Pattern extends FormulaForm {
  /** Its text in pieces; made when another text is compared with it. */
  pieces: readonly Piece[] | undefined;
  reach: Reach;
}

/** A text that is the same in each cell, and then the number of a row, counted from the cell's own. */
interface Piece {
  text: string;
  row: number | undefined;
}

interface Column {
  forms: Pattern[];
  /** How many more texts of the column were read than were known. */
  misses: number;
}

/** So many forms are kept for a column; more than a few in turns are rare. */
const mostOfColumn = 8;
/** A column whose texts are of no form that comes again is not compared any more. */
const mostMisses = 50;

/**
 * Formulas of a workbook, each form read once: down a column, texts differ by the rows they name. A text is compared with
 * the forms of its column, and only a new one is read.
 */
export class FormulaForms {
  private readonly columns = new Map<number, Column>();
  private lastAway = notAway;
  /** How many texts were read. */
  parses = 0;

  constructor(private readonly scope: Scope) {}

  read(text: string, place: Place): PlacedFormula {
    const { sheet, shift } = place;
    const [row, column] = [place.row - shift.rows, place.column - shift.columns];
    const key = sheet * MAX_COLUMNS + column;
    const known = this.columns.get(key) ?? { forms: [], misses: 0 };
    this.columns.set(key, known);
    const again = known.forms.find((form) => form.text === text && isAnywhere(form));
    if (again && shift.rows === 0 && shift.columns === 0)
      return { form: { formula: again.formula, text, row, column }, away: notAway };
    if (known.misses > mostMisses) return this.alone(text, place);
    const at = known.forms.findIndex((form) => reaches(form, place) && matches(form, text, row));
    known.misses += at < 0 ? 1 : -1;
    const form = known.forms[at] ?? this.pattern(text, { ...place, row, column, shift: noShift });
    if (at !== 0) keepFirst(known.forms, at, form);
    if (!reaches(form, place)) return this.alone(text, place);
    return { form, away: this.awayBy(place.row - form.row, place.column - form.column) };
  }

  /** Formulas of a row stand mostly as far away as each other. */
  private awayBy(down: number, right: number): Away {
    if (this.lastAway.down !== down || this.lastAway.right !== right) this.lastAway = { down, right };
    return this.lastAway;
  }

  private alone(text: string, place: Place): PlacedFormula {
    const { shift } = place;
    const [row, column] = [place.row - shift.rows, place.column - shift.columns];
    return { form: { formula: this.parse(text, place), text, row, column }, away: notAway };
  }

  private parse(text: string, place: Place): Formula {
    this.parses++;
    return parseFormula(text, place, this.scope);
  }

  /** The form of a text, as the cell has it that the text is written for. */
  private pattern(text: string, home: Place): Pattern {
    const formula = this.parse(text, home);
    const spills = formula.spills.map(({ row, column, moves }) => ({
      zone: { top: row, bottom: row, left: column, right: column },
      moves,
    }));
    const reach = formula.alone ? nowhere : reachOf([...formula.references, ...spills]);
    return { formula, text, row: home.row, column: home.column, pieces: undefined, reach };
  }
}

function keepFirst(forms: Pattern[], at: number, form: Pattern): void {
  if (at > 0) forms.splice(at, 1);
  forms.unshift(form);
  if (forms.length > mostOfColumn) forms.pop();
}

/** Whether a text means the same in every cell: nothing in it hangs on where it stands. */
const isAnywhere = ({ formula }: Pattern) => !formula.alone && !formula.ownRow;

const noShift = { rows: 0, columns: 0 };
const nowhere: Reach = { up: 0, down: 0, left: 0, right: 0 };

function reaches({ row, column, reach }: Pattern, place: Place): boolean {
  const [down, right] = [place.row - row, place.column - column];
  return down >= -reach.up && down <= reach.down && right >= -reach.left && right <= reach.right;
}

/** A text between the numbers of the rows that move; nothing matches where they are not those that were read. */
function piecesOf({ text, row: home, formula }: FormulaForm): Piece[] {
  const pieces: Piece[] = [];
  let before = '';
  const put = (word: string) => {
    const { row, fixedRow } = writtenCorner(word);
    if (row === undefined || fixedRow !== '') before += word;
    else {
      const digits = String(row + 1);
      // Zeros before a number are compared as they are written.
      pieces.push({ text: before + word.slice(0, word.length - digits.length), row: row - home });
      before = '';
    }
  };
  for (const piece of readPieces(text)) {
    if (piece.kind !== 'cells') before += piece.text;
    else {
      before += piece.prefix;
      put(piece.first);
      if (piece.last !== undefined) {
        before += ':';
        put(piece.last);
      }
    }
  }
  return pieces.length === formula.movingRows ? [...pieces, { text: before, row: undefined }] : [];
}

/** Whether a text in a row has the form of a pattern. */
function matches(form: Pattern, text: string, home: number): boolean {
  const { formula, row } = form;
  if (home === row || formula.movingRows === 0) return text === form.text;
  if (text === form.text || text[0] !== form.text[0]) return false;
  form.pieces ??= piecesOf(form);
  let at = 0;
  for (const piece of form.pieces) {
    if (!text.startsWith(piece.text, at)) return false;
    at += piece.text.length;
    if (piece.row === undefined) return at === text.length;
    at = numberEnd(text, at, home + piece.row + 1);
    if (at < 0) return false;
  }
  return false;
}

/** Where a number ends that is written here; -1 where another one is. */
function numberEnd(text: string, start: number, wanted: number): number {
  let number = 0;
  let at = start;
  for (; at < text.length; at++) {
    const digit = text.charCodeAt(at) - 48;
    if (digit < 0 || digit > 9) break;
    if (number === 0 && at > start) return -1;
    number = number * 10 + digit;
  }
  return at > start && number === wanted ? at : -1;
}
