import { unquotedSheet } from '../names.js';
import { parseStructured, resolveStructured } from './tableReference.js';
import type { Table } from '../table.js';
import { type Zone, zoneHolds } from '../address.js';
import { FormulaSyntaxError, type Token } from './tokens.js';
import type { Formula, Node } from './nodes.js';
import { findName, sheetPosition, spendWork, type Scope } from './scope.js';
import { readCorner, zoneBetween, type Corner, type Shift } from './corner.js';
import { movesBetween, type Moves } from './moves.js';

/** Where a formula stands. */
export interface Place {
  sheet: number;
  row: number;
  column: number;
  /** From the cell its text was written for. */
  shift: Shift;
  /** The text is a defined name's. */
  inName?: boolean;
}

const refError: Node = { kind: 'error', code: '#REF!' };
const nameError: Node = { kind: 'error', code: '#NAME?' };

/** Reads references, names and structured references, and keeps what the formula depends on. */
export class ReferenceReader {
  constructor(
    private readonly place: Place,
    private readonly scope: Scope,
    private readonly formula: Formula,
    private readonly inlineName: (text: string, sheet: number) => Node,
  ) {}

  read(first: Token, take: () => Token, peek: () => Token): Node {
    if (first.kind === 'sheet') return this.onSheets(first.text, take, peek);
    if (first.kind === 'bracket') return this.structured(this.tableHere(), first.text);
    return this.word(first, this.place.sheet, take, peek, false);
  }

  /** The reference to everything a cell's formula spilled. */
  spillOf(node: Node & { kind: 'reference' }): Node {
    const { sheet, zone, moves } = node;
    const spill = { sheet, row: zone.top, column: zone.left, moves };
    this.formula.spills.push(spill);
    return { kind: 'spill', ...spill };
  }

  private cannot(reason: string): Node {
    this.formula.unsupported ??= reason;
    return refError;
  }

  private refer(sheet: number, zone: Zone, moves: Moves | undefined): Node {
    this.formula.references.push({ sheet, zone, moves });
    return { kind: 'reference', sheet, zone, moves };
  }

  /** What hangs on where the cell stands can be something else in the next one. */
  private here(node: Node): Node {
    this.formula.alone = true;
    return node;
  }

  private onSheets(prefix: string, take: () => Token, peek: () => Token): Node {
    const name = unquotedSheet(prefix.slice(0, -1));
    if (name.includes('[')) {
      this.skipReference(take, peek);
      return this.cannot('It reads another workbook.');
    }
    if (name.includes(':')) return this.acrossSheets(name, take, peek);
    const sheet = sheetPosition(this.scope, name);
    const next = take();
    if (next.kind === 'error') return refError;
    if (next.kind !== 'word' && next.kind !== 'number')
      throw new FormulaSyntaxError(`No reference follows ${prefix}`);
    if (sheet < 0) {
      this.word(next, this.place.sheet, take, peek, true);
      return this.cannot(`It names the sheet ${JSON.stringify(name)}, which the workbook lacks.`);
    }
    return this.word(next, sheet, take, peek, true);
  }

  /** `First:Last!A1`: not evaluated, but what it depends on is kept. */
  private acrossSheets(name: string, take: () => Token, peek: () => Token): Node {
    const [from, to] = name.split(':').map((one) => sheetPosition(this.scope, one)) as [number, number];
    const node = this.word(take(), this.place.sheet, take, peek, true);
    if (node.kind === 'reference') {
      this.formula.references.pop();
      for (let sheet = Math.min(from, to); sheet <= Math.max(from, to); sheet++) {
        if (sheet >= 0) this.refer(sheet, node.zone, node.moves);
      }
    }
    return this.cannot('It reads one reference across several sheets.');
  }

  private skipReference(take: () => Token, peek: () => Token): void {
    take();
    while (peek().text === ':') {
      take();
      take();
    }
  }

  private word(token: Token, sheet: number, take: () => Token, peek: () => Token, qualified: boolean): Node {
    const corner = readCorner(token.text, this.place.shift);
    if (peek().text === ':') {
      take();
      return this.range(corner, this.secondCorner(take(), take), sheet, peek);
    }
    if (corner && corner.row !== undefined && corner.column !== undefined)
      return this.zone(corner, corner, sheet);
    const upper = token.text.toUpperCase();
    if (!qualified && (upper === 'TRUE' || upper === 'FALSE'))
      return { kind: 'boolean', value: upper === 'TRUE' };
    const table = this.scope.tables.get(token.text.toLowerCase());
    if (peek().kind === 'bracket') return this.structured(table, take().text);
    if (table) return this.structured(table, '[]');
    return this.named(token.text, sheet, qualified);
  }

  private secondCorner(token: Token, take: () => Token): Corner | undefined {
    // A sheet may be named again before the second corner.
    return readCorner((token.kind === 'sheet' ? take() : token).text, this.place.shift);
  }

  private range(first: Corner | undefined, last: Corner | undefined, sheet: number, peek: () => Token): Node {
    const node = first && last ? this.zone(first, last, sheet) : undefined;
    if (!node || peek().text === ':') {
      this.formula.dynamic = true;
      throw new FormulaSyntaxError('It joins references in a way that is not evaluated here.');
    }
    return node;
  }

  private zone(first: Corner, last: Corner, sheet: number): Node {
    const moves = movesBetween(first, last);
    const { inName } = this.place;
    if (inName && moves) {
      this.formula.dynamic = true;
      this.cannot('It uses a defined name that is relative to the cell.');
    }
    if (!inName && first.movesRow) this.formula.movingRows++;
    if (!inName && last !== first && last.movesRow) this.formula.movingRows++;
    const zone = zoneBetween(first, last);
    return zone ? this.refer(sheet, zone, inName ? undefined : moves) : this.here(refError);
  }

  private named(name: string, sheet: number, qualified: boolean): Node {
    const found = findName(this.scope, name, sheet);
    if (!found) {
      if (/^_xlpm\./i.test(name)) return nameError;
      this.cannot(`It uses the name ${name}, which the workbook lacks.`);
      return nameError;
    }
    const home = found.sheet ?? (qualified ? sheet : this.place.sheet);
    return this.inlineName(found.text.replace(/^=/, ''), home);
  }

  private tableHere(): Table | undefined {
    const { sheet, row, column } = this.place;
    this.formula.alone = true;
    spendWork(this.scope, this.scope.tables.size);
    for (const table of this.scope.tables.values()) {
      if (table.sheet === sheet && zoneHolds(table.zone, row, column)) return table;
    }
    return undefined;
  }

  private structured(table: Table | undefined, bracket: string): Node {
    if (!table) return this.cannot('It names a table that the workbook lacks.');
    const reference = parseStructured(bracket.slice(1, -1));
    if (!reference) return this.cannot(`Its reference ${table.name}${bracket} cannot be read.`);
    const zone = resolveStructured(table, reference, this.place.row);
    const thisRow = reference.items.includes('#THIS ROW');
    if (thisRow) this.formula.ownRow = true;
    if (!zone) return thisRow ? this.here({ kind: 'error', code: '#VALUE!' }) : refError;
    // With other rows beside its own, what it spans hangs on which of them come first.
    if (thisRow && reference.items.length > 1) this.formula.alone = true;
    return this.refer(table.sheet, zone, thisRow ? withinTable(table) : undefined);
  }
}

/** The row of the cell, as long as it is one of the table's. */
const withinTable = ({ zone, headerRows, totalsRows }: Table): Moves => ({
  ...{ top: true, bottom: true, left: false, right: false },
  rows: { first: zone.top + headerRows, last: zone.bottom - totalsRows },
});
