import { MAX_COLUMNS } from '../address.js';
import { writtenCorner } from './corner.js';
import { reachOf, type Away, type Reach } from './moves.js';
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
  pieces: readonly Piece[];
  reach: Reach;
}

/** A text that is the same in each cell, and then the number of a row, counted from the cell's own. */
interface Piece {
  text: string;
  row: number | undefined;
}

/** So many forms are kept for a column; more than a few in turns are rare. */
const mostOfColumn = 8;

/**
 * Formulas of a workbook, each form read once: down a column, texts differ by the rows they name. A text is compared with
 * the forms of its column, and only a new one is read.
 */
export class FormulaForms {
  private readonly columns = new Map<number, Pattern[]>();
  /** How many texts were read. */
  parses = 0;

  constructor(private readonly scope: Scope) {}

  read(text: string, place: Place): PlacedFormula {
    const { sheet, shift } = place;
    const [row, column] = [place.row - shift.rows, place.column - shift.columns];
    const key = sheet * MAX_COLUMNS + column;
    const known = this.columns.get(key) ?? [];
    if (known.length === 0) this.columns.set(key, known);
    const at = known.findIndex((form) => matches(form, text, row) && reaches(form, place));
    const form = known[at] ?? this.pattern(text, { ...place, row, column, shift: noShift }, place);
    if (!form) return { form: { formula: this.parse(text, place), text, row, column }, away: noAway };
    if (at !== 0) {
      if (at > 0) known.splice(at, 1);
      known.unshift(form);
      if (known.length > mostOfColumn) known.pop();
    }
    return { form, away: { down: place.row - form.row, right: place.column - form.column } };
  }

  private parse(text: string, place: Place): Formula {
    this.parses++;
    return parseFormula(text, place, this.scope);
  }

  /** The form of a text as the cell has it that the text is written for; undefined where other cells cannot share it. */
  private pattern(text: string, home: Place, place: Place): Pattern | undefined {
    const formula = this.parse(text, home);
    if (formula.alone) return isSamePlace(home, place) ? only(formula, text, home) : undefined;
    const { pieces, rows } = piecesOf(text, home.row);
    if (rows !== formula.movingRows) return isSamePlace(home, place) ? only(formula, text, home) : undefined;
    const spills = formula.spills.map(({ row, column, moves }) => ({
      zone: { top: row, bottom: row, left: column, right: column },
      moves,
    }));
    const { row, column } = home;
    const form = { formula, text, row, column, pieces, reach: reachOf([...formula.references, ...spills]) };
    return reaches(form, place) ? form : undefined;
  }
}

const noShift = { rows: 0, columns: 0 };
const noAway = { down: 0, right: 0 };
const nowhere: Reach = { up: 0, down: 0, left: 0, right: 0 };

const isSamePlace = (a: Place, b: Place): boolean => a.row === b.row && a.column === b.column;

/** A formula that only its own cell has. */
const only = (formula: Formula, text: string, { row, column }: Place): Pattern => ({
  ...{ formula, text, row, column },
  pieces: [{ text, row: undefined }],
  reach: nowhere,
});

function reaches({ row, column, reach }: Pattern, place: Place): boolean {
  const [down, right] = [place.row - row, place.column - column];
  return down >= -reach.up && down <= reach.down && right >= -reach.left && right <= reach.right;
}

/** A text between the numbers of the rows that move. */
function piecesOf(text: string, home: number): { pieces: Piece[]; rows: number } {
  const pieces: Piece[] = [];
  let before = '';
  let rows = 0;
  const put = (word: string) => {
    const { row, fixedRow } = writtenCorner(word);
    if (row === undefined || fixedRow !== '') before += word;
    else {
      const digits = String(row + 1);
      // Zeros before a number are compared as they are written.
      pieces.push({ text: before + word.slice(0, word.length - digits.length), row: row - home });
      before = '';
      rows++;
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
  return { pieces: [...pieces, { text: before, row: undefined }], rows };
}

/** Whether a text in a row has the form of a pattern. */
function matches({ pieces }: Pattern, text: string, home: number): boolean {
  let at = 0;
  for (const piece of pieces) {
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
