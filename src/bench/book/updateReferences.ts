import { readCorner, zoneBetween } from '../../sheet/formula/corner.js';
import { type Piece, readPieces } from '../../sheet/formula/pieces.js';
import { sheetPosition, type Scope } from '../../sheet/formula/scope.js';
import {
  parseStructured,
  resolveStructured,
  type StructuredReference,
} from '../../sheet/formula/tableReference.js';
import { sameZone, zoneHolds, type Zone } from '../../sheet/address.js';
import type { Table } from '../../sheet/table.js';
import { columnReference as escaped } from '../../sheet/formula/columnReference.js';
import { engineText } from '../engine/keptFormula.js';
import { engineSheetName } from './translate.js';

/** A cell by numbers. */
export interface FormulaPlace {
  sheet: number;
  row: number;
  column: number;
}

/**
 * A formula as it was typed, written for the cells that the grid's engine has for it now: structured references
 * take the headings their columns have now and become plain ranges where their table is gone, other references
 * are as the engine has them. Undefined where the two formulas are not the same but for their references.
 */
export function updateReferences(
  typed: string,
  engine: string,
  place: FormulaPlace,
  scope: Scope,
): string | undefined {
  try {
    return `=${new ReferenceUpdater(wholePieces(engine.slice(1)), place, scope).updated(readPieces(typed.slice(1)))}`;
  } catch (error) {
    if (error instanceof NotAlike) return undefined;
    throw error;
  }
}

class NotAlike extends Error {}

const isSpace = ({ kind, text }: Piece): boolean => kind === 'other' && text.trim() === '';
const wholePieces = (formula: string): Piece[] => readPieces(formula).filter((piece) => !isSpace(piece));

class ReferenceUpdater {
  private at = 0;

  constructor(
    private readonly engine: readonly Piece[],
    private readonly place: FormulaPlace,
    private readonly scope: Scope,
  ) {}

  updated(typed: readonly Piece[]): string {
    const text = typed.map((piece) => (isSpace(piece) ? piece.text : this.one(piece))).join('');
    if (this.at < this.engine.length) throw new NotAlike();
    return text;
  }

  private next(): Piece {
    const piece = this.engine[this.at++];
    if (!piece || piece.kind === 'unreadable') throw new NotAlike();
    return piece;
  }

  private one(piece: Piece): string {
    if (piece.kind === 'table') return this.structured(piece.name, piece.bracket);
    if (piece.kind === 'text') return this.text(piece.text);
    if (piece.kind === 'cells') return this.found().text;
    if (piece.kind === 'name' && piece.sheet !== undefined) return this.found().text;
    if (piece.kind === 'name' && this.scope.tables.has(piece.name.toLowerCase()))
      return this.structured(piece.name, undefined);
    return alike(piece, this.next());
  }

  /** The engine has texts with quotation marks in pieces. */
  private text(text: string): string {
    for (const piece of wholePieces(engineText(text.slice(1, -1).replaceAll('""', '"'))))
      if (this.next().text !== piece.text) throw new NotAlike();
    return text;
  }

  private structured(name: string, bracket: string | undefined): string {
    const { text, sheet, zone } = this.found();
    const written = name + (bracket ?? '');
    const reference = parseStructured(bracket?.slice(1, -1) ?? '');
    if (!zone || !reference) return text;
    const named = name === '' ? this.tableAround(this.place) : this.scope.tables.get(name.toLowerCase());
    if (named && this.stillNames(named, reference, sheet, zone)) return written;
    const table =
      named?.sheet === sheet && holds(named.zone, zone)
        ? named
        : this.tableAround({ sheet, row: zone.top, column: zone.left });
    return (table && this.renamed(table, name, bracket ?? '[]', reference, zone)) ?? text;
  }

  /** The columns are those the engine has; rows come and go with the table. */
  private stillNames(table: Table, reference: StructuredReference, sheet: number, zone: Zone): boolean {
    const now = resolveStructured(table, reference, this.place.row);
    if (!now || table.sheet !== sheet) return false;
    if (reference.items.includes('#THIS ROW') && zone.top !== this.place.row) return false;
    const rowsMeet = zone.top <= table.zone.bottom && zone.bottom >= table.zone.top;
    // The whole of a table takes in the columns it gets and lets go of those it loses.
    if (reference.first === undefined) return rowsMeet && zone.left <= now.right && zone.right >= now.left;
    return rowsMeet && now.left === zone.left && now.right === zone.right;
  }

  private renamed(
    table: Table,
    name: string,
    bracket: string,
    reference: StructuredReference,
    zone: Zone,
  ): string | undefined {
    const [first, last] = [zone.left, zone.right].map((column) => table.columns[column - table.zone.left]);
    const now = { ...reference, first, last };
    const there = resolveStructured(table, now, this.place.row);
    if (first === undefined || last === undefined || !there || !sameZone(there, zone)) return undefined;
    return (name === '' ? '' : table.name) + withColumns(bracket, first, last);
  }

  private tableAround({ sheet, row, column }: FormulaPlace): Table | undefined {
    return [...this.scope.tables.values()].find(
      (table) => table.sheet === sheet && zoneHolds(table.zone, row, column),
    );
  }

  /** The reference that the engine has here. */
  private found(): { text: string; sheet: number; zone: Zone | undefined } {
    const piece = this.next();
    const { kind, text } = piece;
    if (kind !== 'cells' && kind !== 'name' && !text.startsWith('#')) throw new NotAlike();
    const sheet =
      'sheet' in piece && piece.sheet !== undefined ? this.sheetNumber(piece.sheet) : this.place.sheet;
    return { text, sheet, zone: kind === 'cells' ? zoneOf(piece.first, piece.last) : undefined };
  }

  private sheetNumber(name: string): number {
    const known = sheetPosition(this.scope, name);
    return known >= 0 ? known : this.scope.sheets.findIndex((sheet) => engineSheetName(sheet.name) === name);
  }
}

/** What is no reference is as it was typed; names of cells may have been changed. */
function alike(typed: Piece, { kind, text }: Piece): string {
  if (typed.kind !== kind || kind === 'unreadable') throw new NotAlike();
  const isValue = /^(?:true|false)$/i.test(typed.text);
  if (kind === 'name' && !isValue) return text;
  const isSame = typed.text.toLowerCase() === text.toLowerCase() || Number(typed.text) === Number(text);
  if (!isSame) throw new NotAlike();
  return typed.text;
}

const unshifted = { rows: 0, columns: 0 };

function zoneOf(first: string, last = first): Zone | undefined {
  const [a, b] = [readCorner(first, unshifted), readCorner(last, unshifted)];
  return a && b && zoneBetween(a, b);
}

const holds = (outer: Zone, { top, bottom, left, right }: Zone): boolean =>
  zoneHolds(outer, top, left) && zoneHolds(outer, bottom, right);

/** The same bracket with other columns: `[@Mark]`, `[[#Headers],[Mark]:[Press]]`. */
function withColumns(bracket: string, first: string, last: string): string {
  const inner = bracket.slice(1, -1).trim();
  const span = first === last ? `[${escaped(first)}]` : `[${escaped(first)}]:[${escaped(last)}]`;
  const items = inner.match(/\[#[^\]]*\]/g) ?? (inner.startsWith('#') ? [`[${inner}]`] : []);
  if (items.length > 0) return `[${items.join(',')},${span}]`;
  const thisRow = inner.startsWith('@') ? '@' : '';
  const isPlain = first === last && (thisRow === '' || /^[\p{L}\p{N}_]+$/u.test(first));
  return isPlain ? `[${thisRow}${escaped(first)}]` : `[${thisRow}${span}]`;
}
