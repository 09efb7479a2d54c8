import { FormulaSyntaxError, tokenize, type Token } from '../../sheet/formula/tokens.js';
import type { Place } from '../../sheet/formula/referenceReader.js';
import { findName, sheetPosition, type Scope } from '../../sheet/formula/scope.js';
import { readCorner, type Corner } from '../../sheet/formula/corner.js';
import { columnLetters, parseZone, zoneHolds, type Zone } from '../../sheet/address.js';
import { sheetPrefix } from '../../sheet/names.js';
import { displayFunctionName } from '../../sheet/formula/functionNames.js';
import {
  parseStructured,
  resolveStructured,
  type StructuredReference,
} from '../../sheet/formula/tableReference.js';
import type { Table } from '../../sheet/table.js';
import { engineText } from '../engine/kept.js';

/** Thrown where the grid's engine has no way to write a formula. */
export class NotWritten extends Error {}

/**
 * A formula (without its equals sign) as the grid's engine takes it: functions by the names people use,
 * structured references and names that are no plain range as addresses.
 */
export function translateFormula(text: string, place: Place, scope: Scope): string {
  try {
    return new Translator(tokensOf(text), place, scope).translate();
  } catch (error) {
    if (error instanceof FormulaSyntaxError) throw new NotWritten(error.message);
    throw error;
  }
}

const knownTokens = new Map<string, readonly Token[]>();
const tokensKept = 500;

/** The formulas of a column are the same text, thousands of times. */
function tokensOf(text: string): readonly Token[] {
  const known = knownTokens.get(text);
  if (known) return known;
  if (knownTokens.size >= tokensKept) knownTokens.clear();
  const tokens = tokenize(text);
  knownTokens.set(text, tokens);
  return tokens;
}

/** A sheet's name as the engine takes it: it knows no apostrophes in them. */
export const engineSheetName = (name: string): string => name.replaceAll("'", '’');

/** A sheet in front of a reference in the engine's form. */
const enginePrefix = (name: string): string => `${sheetPrefix(engineSheetName(name))}!`;

/** The range a name stands for when it stands for nothing else: `Shop!$B$4`. */
export function rangeOfName(text: string): { sheet: string; zone: Zone } | undefined {
  const match = /^=?(?:'((?:[^']|'')*)'|([\p{L}\p{N}_.]+))!(\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?)$/iu.exec(
    text,
  );
  const zone = match && parseZone(match[3] as string);
  return zone ? { sheet: (match[1]?.replaceAll("''", "'") ?? match[2]) as string, zone } : undefined;
}

/** A stored formula as people write it: only the names of functions, and addresses of shared formulas, change. */
export function displayFormula(text: string, place: Place, scope: Scope): string {
  try {
    return new Translator(tokenize(text), place, scope, true).translate();
  } catch (error) {
    if (error instanceof FormulaSyntaxError) return text;
    throw error;
  }
}

class Translator {
  private at = 0;
  private out = '';

  constructor(
    private readonly tokens: readonly Token[],
    private readonly place: Place,
    private readonly scope: Scope,
    /** Structured references, names and texts stay as they are written. */
    private readonly forDisplay = false,
  ) {}

  translate(): string {
    for (let token = this.peek(); token.kind !== 'end'; token = this.peek()) {
      if (token.spaced) this.out += ' ';
      this.at++;
      this.out += this.one(token);
    }
    return this.out;
  }

  private peek(): Token {
    return this.tokens[this.at] as Token;
  }

  private one(token: Token): string {
    return this.forDisplay ? this.shown(token) : this.written(token);
  }

  private shown({ kind, text }: Token): string {
    if (kind === 'function') return displayFunctionName(text, this.scope.namespace);
    const corner = kind === 'word' && readCorner(text, this.place.shift);
    const whole = corner && corner.row !== undefined && corner.column !== undefined;
    return whole || ((corner || kind === 'number') && this.isCorner()) ? this.corner(text) : text;
  }

  private written(token: Token): string {
    switch (token.kind) {
      case 'text':
        return engineText(token.text.slice(1, -1).replaceAll('""', '"'));
      case 'function':
        return this.functionName(token.text);
      case 'sheet':
        return this.onSheet(token.text);
      case 'bracket':
        return this.structured(this.tableHere(), token.text);
      case 'word':
        return this.word(token.text, undefined);
      case 'number':
        return this.isCorner() ? this.corner(token.text) : token.text;
      case 'operator':
        if (token.text === '@' || token.text === '#')
          throw new NotWritten(`It uses ${token.text}, which this page does not evaluate.`);
        return token.text;
      default:
        return token.text;
    }
  }

  private functionName(stored: string): string {
    const name = displayFunctionName(stored, this.scope.namespace);
    if (name === 'SINGLE' || name === 'ANCHORARRAY')
      throw new NotWritten('It uses the crossing with its own row, or a spill, as a reference.');
    return name;
  }

  private onSheet(prefix: string): string {
    const quoted = prefix.startsWith("'");
    const name = quoted ? prefix.slice(1, -2).replaceAll("''", "'") : prefix.slice(0, -1);
    const next = this.peek();
    if (next.kind !== 'word' && next.kind !== 'number') return prefix;
    this.at++;
    const sheet = sheetPosition(this.scope, name);
    return next.kind === 'word' && sheet >= 0
      ? this.word(next.text, { name, sheet })
      : enginePrefix(name) + this.corner(next.text);
  }

  /** A number beside a colon is a row. */
  private isCorner(): boolean {
    return this.peek().text === ':' || this.tokens[this.at - 2]?.text === ':';
  }

  private word(text: string, on: { name: string; sheet: number } | undefined): string {
    const prefix = on ? enginePrefix(on.name) : '';
    const corner = readCorner(text, this.place.shift);
    const whole = corner !== undefined && corner.row !== undefined && corner.column !== undefined;
    if (whole || (corner && this.isCorner())) return prefix + this.corner(text);
    if (/^(?:true|false)$/i.test(text)) return text;
    const table = this.scope.tables.get(text.toLowerCase());
    if (this.peek().kind === 'bracket') return this.structured(table, (this.tokens[this.at++] as Token).text);
    if (table) return this.structured(table, '[]');
    return this.named(text, on?.sheet ?? this.place.sheet);
  }

  private corner(text: string): string {
    const { shift } = this.place;
    if (shift.rows === 0 && shift.columns === 0) return text;
    const corner = readCorner(text, shift);
    if (!corner) return text;
    return cornerText(corner, text);
  }

  private named(name: string, sheet: number): string {
    const found = findName(this.scope, name, sheet);
    if (!found) throw new NotWritten(`It uses the name ${name}, which the workbook lacks.`);
    if (found.sheet === undefined && rangeOfName(found.text)) return found.name;
    const place = { ...this.place, sheet: found.sheet ?? this.place.sheet, shift: { rows: 0, columns: 0 } };
    const tokens = tokenize(found.text.replace(/^=/, ''));
    if (tokens.some(({ kind, text }) => kind === 'word' && text.toLowerCase() === name.toLowerCase()))
      throw new NotWritten(`The name ${name} is defined by itself.`);
    return `(${new Translator(tokens, place, this.scope).translate()})`;
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

function cornerText({ row, column }: Corner, written: string): string {
  const [, fixedColumn = '', , fixedRow = ''] = /^(\$?)([A-Z]*)(\$?)(\d*)$/i.exec(written) ?? [];
  const letters = column === undefined ? '' : fixedColumn + columnLetters(column);
  const fixed = column === undefined ? fixedColumn : fixedRow;
  if ((row ?? 0) < 0 || (column ?? 0) < 0) throw new NotWritten('It refers beyond the edge of the sheet.');
  return letters + (row === undefined ? '' : `${fixed}${row + 1}`);
}
