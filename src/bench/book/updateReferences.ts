import { unquotedSheet } from '../../sheet/names.js';
import { FormulaSyntaxError, tokenize, type Token } from '../../sheet/formula/tokens.js';
import { readCorner, zoneBetween } from '../../sheet/formula/corner.js';
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
    return `=${new ReferenceUpdater(tokenize(typed.slice(1)), tokenize(engine.slice(1)), place, scope).follow()}`;
  } catch (error) {
    if (error instanceof FormulaSyntaxError || error instanceof NotAlike) return undefined;
    throw error;
  }
}

class NotAlike extends Error {}

/** A reference in the engine's formula. */
interface Found {
  text: string;
  sheet: number;
  zone: Zone | undefined;
}

class ReferenceUpdater {
  private at = 0;
  private engineAt = 0;

  constructor(
    private readonly typed: readonly Token[],
    private readonly engine: readonly Token[],
    private readonly place: FormulaPlace,
    private readonly scope: Scope,
  ) {}

  follow(): string {
    let out = '';
    for (let token = this.next(); token.kind !== 'end'; token = this.next())
      out += (token.spaced ? ' ' : '') + this.one(token);
    if (this.engineNext().kind !== 'end') throw new NotAlike();
    return out;
  }

  private next(): Token {
    return this.typed[this.at++] ?? end;
  }

  private peek(ahead = 0): Token {
    return this.typed[this.at + ahead] ?? end;
  }

  private engineNext(): Token {
    return this.engine[this.engineAt++] ?? end;
  }

  private one(token: Token): string {
    if (token.kind === 'bracket') return this.structured('', token.text);
    if (token.kind === 'text') return this.text(token.text);
    if (token.kind === 'sheet' || isCell(token) || isSpan(token, this.peek())) return this.reference(token);
    if (token.kind === 'word' && this.peek().kind === 'bracket')
      return this.structured(token.text, this.next().text);
    if (token.kind === 'word' && this.scope.tables.has(token.text.toLowerCase()))
      return this.structured(token.text, undefined);
    return this.alike(token, this.engineNext());
  }

  private alike(token: Token, engine: Token): string {
    if (token.kind !== engine.kind) throw new NotAlike();
    // Names of cells may have been changed.
    if (token.kind === 'word' && !/^(?:true|false)$/i.test(token.text)) return engine.text;
    const isSame =
      token.kind === 'number'
        ? Number(token.text) === Number(engine.text)
        : token.text.toLowerCase() === engine.text.toLowerCase();
    if (!isSame) throw new NotAlike();
    return token.text;
  }

  /** The engine has texts with quotation marks in pieces. */
  private text(text: string): string {
    const pieces = tokenize(engineText(text.slice(1, -1).replaceAll('""', '"'))).slice(0, -1);
    for (const piece of pieces) if (this.engineNext().text !== piece.text) throw new NotAlike();
    return text;
  }

  private reference(token: Token): string {
    const onSheet = token.kind === 'sheet';
    if (onSheet) this.at++;
    if (this.peek().text === ':') this.at += 2;
    return this.found().text;
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
  private found(): Found {
    const token = this.engineNext();
    const prefix = token.kind === 'sheet' ? token.text : '';
    const first = prefix === '' ? token : this.engineNext();
    let text = prefix + first.text;
    let last = first;
    if (this.engine[this.engineAt]?.text === ':') {
      this.engineAt++;
      last = this.engineNext();
      text += `:${last.text}`;
    }
    if (first.kind !== 'word' && first.kind !== 'number' && first.kind !== 'error') throw new NotAlike();
    const sheet = prefix === '' ? this.place.sheet : this.sheetNumber(prefix);
    return { text, sheet, zone: zoneOfWords(first.text, last.text) };
  }

  private sheetNumber(prefix: string): number {
    const name = unquotedSheet(prefix.slice(0, -1));
    const known = sheetPosition(this.scope, name);
    return known >= 0 ? known : this.scope.sheets.findIndex((sheet) => engineSheetName(sheet.name) === name);
  }
}

const end: Token = { kind: 'end', text: '', spaced: false };
const unshifted = { rows: 0, columns: 0 };

const isCell = ({ kind, text }: Token): boolean => {
  const corner = kind === 'word' ? readCorner(text, unshifted) : undefined;
  return corner?.row !== undefined && corner.column !== undefined;
};

/** Whole rows or columns: `5:7`, `A:C`. */
const isSpan = ({ kind, text }: Token, next: Token): boolean =>
  next.text === ':' && (kind === 'word' || kind === 'number') && readCorner(text, unshifted) !== undefined;

function zoneOfWords(first: string, last: string): Zone | undefined {
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
