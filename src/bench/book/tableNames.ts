import { sameName } from '../../sheet/names.js';
import type { CellPosition, Model } from '@odoo/o-spreadsheet';
import type { Zone } from '../../sheet/address.js';
import { constantOf } from '../engine/cellContent.js';
import { TableChanges, type Command, type NamedTable } from './tableChanges.js';

/** Names for the engine's tables, by its own numbers for them, which survive moving and undo. */
export class TableNames {
  private readonly names = new Map<string, string>();
  private readonly changes = new TableChanges();
  private known: { revision: number; tables: NamedTable[] } | undefined;

  constructor(private readonly model: Model) {
    // The engine tells of every command, of its own parts' and of others' too.
    model.on('command-dispatched', this, (command: unknown) => this.note(command as Command));
  }

  /** Counts up whenever tables, headings, sheets or names may have changed. */
  get revision(): number {
    return this.changes.revision;
  }

  note(command: Command): void {
    this.changes.note(command, this.known?.tables ?? []);
  }

  /** Gives the table at a place its name. */
  give(sheetId: string, zone: Zone, name: string): void {
    const table = this.model.getters
      .getCoreTables(sheetId)
      .find(({ range }) => range.zone.top === zone.top && range.zone.left === zone.left);
    if (!table) return;
    this.names.set(`${sheetId} ${table.id}`, name);
    this.changes.revision++;
  }

  all(): readonly NamedTable[] {
    const { revision } = this;
    if (this.known?.revision !== revision) this.known = { revision, tables: this.read() };
    return this.known.tables;
  }

  find(name: string): NamedTable | undefined {
    return this.all().find((table) => sameName(table.name, name));
  }

  /** How large the tables are, as one text. */
  sizes(): string {
    const size = ({ id, zone: { top, bottom, left, right } }: NamedTable) =>
      `${id}:${bottom - top}x${right - left}`;
    return this.all().map(size).join();
  }

  /** The table a cell stands in. */
  tableOf({ sheetId, row, col }: CellPosition): NamedTable | undefined {
    return this.all().find(
      ({ sheetId: on, zone: { top, bottom, left, right } }) =>
        on === sheetId && row >= top && row <= bottom && col >= left && col <= right,
    );
  }

  /** What a file holds in a heading cell of a table: text, filled and unlike the other headings. */
  heading({ sheetId, row, col }: CellPosition): string | undefined {
    const table = this.all().find(
      ({ sheetId: on, headerRows, zone: { top, left, right } }) =>
        on === sheetId && headerRows > 0 && row === top && col >= left && col <= right,
    );
    return table?.columns[col - table.zone.left];
  }

  private read(): NamedTable[] {
    const { getters } = this.model;
    return getters
      .getSheetIds()
      .flatMap((sheetId, sheet) =>
        getters
          .getCoreTables(sheetId)
          .map(({ id, range, config }) => this.named(id, sheetId, sheet, range.zone, config)),
      );
  }

  private named(
    id: string,
    sheetId: string,
    sheet: number,
    zone: Zone,
    config: { numberOfHeaders: number; totalRow: boolean },
  ): NamedTable {
    const key = `${sheetId} ${id}`;
    if (!this.names.has(key)) this.names.set(key, this.freeName());
    return {
      id,
      sheetId,
      sheet,
      zone,
      name: this.names.get(key) as string,
      headerRows: config.numberOfHeaders > 0 ? 1 : 0,
      totalsRows: config.totalRow ? 1 : 0,
      columns: distinct(this.headings(sheetId, zone)),
    };
  }

  private headings(sheetId: string, { top, left, right }: Zone): string[] {
    return Array.from({ length: right - left + 1 }, (_, at) => {
      const position = { sheetId, row: top, col: left + at };
      const cell = this.model.getters.getCell(position);
      // Inside a command nothing is calculated yet: what was shown here may have moved on.
      if (!cell?.isFormula) return String((cell && constantOf(cell)) ?? '');
      return this.model.getters.getEvaluatedCell(position).formattedValue;
    });
  }

  /** A table that somebody made in the grid itself. */
  private freeName(): string {
    const numbered = Array.from({ length: this.names.size + 1 }, (_, at) => `Table${at + 1}`);
    const taken = [...this.names.values()];
    return numbered.find((name) => !taken.some((each) => sameName(each, name))) ?? 'Table';
  }
}

/** Headings as tables have them: none is blank, none is there twice. */
function distinct(headings: readonly string[]): string[] {
  const taken = new Set(headings.map((heading) => heading.toLowerCase()));
  const seen = new Set<string>();
  return headings.map((heading, at) => {
    let name = heading === '' ? `Column${at + 1}` : heading;
    const isFree = () =>
      !seen.has(name.toLowerCase()) && (name === heading || !taken.has(name.toLowerCase()));
    for (let number = heading === '' ? at + 2 : 2; !isFree(); number++)
      name = `${heading || 'Column'}${number}`;
    seen.add(name.toLowerCase());
    return name;
  });
}
