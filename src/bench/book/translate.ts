import { columnLetters, zoneHolds, type Zone } from '../../sheet/address.js';
import { cornerText, writtenCorner } from '../../sheet/formula/corner.js';
import { displayFunctionName } from '../../sheet/formula/functionNames.js';
import { type NamePiece, type Piece, readPieces } from '../../sheet/formula/pieces.js';
import { cannotBeRead } from '../../sheet/formula/tokens.js';
import type { Place } from '../../sheet/formula/referenceReader.js';
import { rewritePieces } from '../../sheet/formula/rewrite.js';
import { rangeOfName } from '../../sheet/formula/rangeOfName.js';
import { findName, sheetPosition, type Scope } from '../../sheet/formula/scope.js';
import {
  parseStructured,
  resolveStructured,
  type StructuredReference,
} from '../../sheet/formula/tableReference.js';
import { sameName, sheetPrefix } from '../../sheet/names.js';
import type { Table } from '../../sheet/table.js';
import { engineText } from '../engine/keptFormula.js';

/** Thrown where the grid's engine has no way to write a formula. */
export class NotWritten extends Error {}

const knownPieces = new Map<string, readonly Piece[]>();
const piecesKept = 500;

/** The formulas of a column are the same text, thousands of times. */
function piecesOf(text: string): readonly Piece[] {
  const known = knownPieces.get(text);
  if (known) return known;
  if (knownPieces.size >= piecesKept) knownPieces.clear();
  const pieces = readPieces(text);
  knownPieces.set(text, pieces);
  return pieces;
}

/** A sheet's name as the engine takes it: it knows no apostrophes in them. */
export const engineSheetName = (name: string): string => name.replaceAll("'", '’');

/** A sheet in front of a reference in the engine's form. */
const enginePrefix = (name: string): string => `${sheetPrefix(engineSheetName(name))}!`;

/** A stored formula as people write it: only the names of functions, and addresses of shared formulas, change. */
export function displayFormula(text: string, place: Place, { namespace }: Scope): string {
  return rewritePieces(piecesOf(text), {
    call: ({ text: stored }) => displayFunctionName(stored, namespace),
    cells: ({ prefix, first, last }) => prefix + shiftedCells(first, last, place),
  });
}

/**
 * A formula (without its equals sign) as the grid's engine takes it: functions by the names people use,
 * structured references and names that are no plain range as addresses.
 */
export function translateFormula(text: string, place: Place, scope: Scope): string {
  return new Translator(place, scope).translate(piecesOf(text));
}

class Translator {
  constructor(
    private readonly place: Place,
    private readonly scope: Scope,
  ) {}

  translate(pieces: readonly Piece[]): string {
    return rewritePieces(pieces, {
      cells: ({ sheet, first, last }) =>
        (sheet === undefined ? '' : enginePrefix(sheet)) + shiftedCells(first, last, this.place),
      table: ({ name, bracket }) =>
        this.structured(name === '' ? this.tableHere() : this.tableNamed(name), bracket),
      name: (piece) => this.name(piece),
      call: ({ text }) => this.functionName(text),
      text: ({ text }) => engineText(text.slice(1, -1).replaceAll('""', '"')),
      unreadable: ({ text }) => {
        throw new NotWritten(cannotBeRead(text).message);
      },
      other: ({ text }) => this.other(text),
    });
  }

  private other(text: string): string {
    if (text === '@' || text === '#')
      throw new NotWritten(`It uses ${text}, which this page does not evaluate.`);
    return text.trim() === '' ? ' ' : text;
  }

  private functionName(stored: string): string {
    const name = displayFunctionName(stored, this.scope.namespace);
    if (name === 'SINGLE' || name === 'ANCHORARRAY')
      throw new NotWritten('It uses the crossing with its own row, or a spill, as a reference.');
    return name;
  }

  private name({ text, sheet, name }: NamePiece): string {
    // An error stands behind a sheet that is gone.
    if (sheet !== undefined && !/^[^#]/.test(name)) return text;
    const on = sheet === undefined ? this.place.sheet : sheetPosition(this.scope, sheet);
    if (on < 0) return enginePrefix(sheet ?? '') + name;
    if (/^(?:true|false)$/i.test(name)) return name;
    const table = this.tableNamed(name);
    return table ? this.structured(table, '[]') : this.named(name, on);
  }

  private named(name: string, sheet: number): string {
    const found = findName(this.scope, name, sheet);
    if (!found) throw new NotWritten(`It uses the name ${name}, which the workbook lacks.`);
    if (found.sheet === undefined && rangeOfName(found.text)) return found.name;
    const pieces = piecesOf(found.text.replace(/^=/, ''));
    if (pieces.some((piece) => piece.kind === 'name' && sameName(piece.name, name)))
      throw new NotWritten(`The name ${name} is defined by itself.`);
    const place = { ...this.place, sheet: found.sheet ?? this.place.sheet, shift: { rows: 0, columns: 0 } };
    return `(${new Translator(place, this.scope).translate(pieces)})`;
  }

  private tableNamed(name: string): Table | undefined {
    return this.scope.tables.get(name.toLowerCase());
  }

  private tableHere(): Table | undefined {
    const { sheet, row, column } = this.place;
    return [...this.scope.tables.values()].find(
      (table) => table.sheet === sheet && zoneHolds(table.zone, row, column),
    );
  }

  private structured(table: Table | undefined, bracket: string): string {
    if (!table) throw new NotWritten('It names a table that the workbook lacks.');
    const reference = parseStructured(bracket.slice(1, -1));
    if (!reference) throw new NotWritten(`Its reference ${table.name}${bracket} cannot be read.`);
    const zone = resolveStructured(table, reference, this.place.row);
    if (!zone) throw new NotWritten(`The table ${table.name} has no such columns or rows: ${bracket}.`);
    const name = this.scope.sheets[table.sheet]?.name ?? '';
    const prefix = table.sheet === this.place.sheet ? '' : enginePrefix(name);
    return prefix + structuredAddress(zone, reference);
  }
}

/** Fixed where copying the formula down does not move what it means: `[@Mark]` moves with the row. */
function structuredAddress({ top, bottom, left, right }: Zone, { items }: StructuredReference): string {
  const row = (number: number) => (items.includes('#THIS ROW') ? `${number + 1}` : `$${number + 1}`);
  const first = `$${columnLetters(left)}${row(top)}`;
  const last = `$${columnLetters(right)}${row(bottom)}`;
  return first === last ? first : `${first}:${last}`;
}

/** Cells of a shared formula as they read from the place of the cell. */
function shiftedCells(first: string, last: string | undefined, { shift: { rows, columns } }: Place): string {
  const shifted = (written: string): string => {
    if (rows === 0 && columns === 0) return written;
    const corner = writtenCorner(written);
    if (corner.fixedColumn === '' && corner.column !== undefined) corner.column += columns;
    if (corner.fixedRow === '' && corner.row !== undefined) corner.row += rows;
    if ((corner.row ?? 0) < 0 || (corner.column ?? 0) < 0)
      throw new NotWritten('It refers beyond the edge of the sheet.');
    return cornerText(corner);
  };
  return shifted(first) + (last === undefined ? '' : `:${shifted(last)}`);
}
