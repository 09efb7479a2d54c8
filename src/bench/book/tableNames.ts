import type { Model } from '@odoo/o-spreadsheet';
import type { Table, Zone } from '../../xlsx';
import { constantOf } from '../open/content';

/** A table of the grid with the name that the engine does not know. */
export interface NamedTable extends Table {
  id: string;
  sheetId: string;
}

/** Names for the engine's tables, by its own numbers for them, which survive moving and undo. */
export class TableNames {
  private readonly names = new Map<string, string>();

  constructor(private readonly model: Model) {}

  /** Gives the table at a place its name. */
  give(sheetId: string, zone: Zone, name: string): void {
    const table = this.model.getters
      .getCoreTables(sheetId)
      .find(({ range }) => range.zone.top === zone.top && range.zone.left === zone.left);
    if (table) this.names.set(`${sheetId} ${table.id}`, name);
  }

  all(): NamedTable[] {
    return this.model.getters
      .getSheetIds()
      .flatMap((sheetId, sheet) =>
        this.model.getters
          .getCoreTables(sheetId)
          .map(({ id, range, config }) => this.named(id, sheetId, sheet, range.zone, config)),
      );
  }

  find(name: string): NamedTable | undefined {
    const wanted = name.toLowerCase();
    return this.all().find((table) => table.name.toLowerCase() === wanted);
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
      columns: this.headings(sheetId, zone),
    };
  }

  private headings(sheetId: string, { top, left, right }: Zone): string[] {
    return Array.from({ length: right - left + 1 }, (_, at) => {
      const position = { sheetId, row: top, col: left + at };
      const cell = this.model.getters.getCell(position);
      // Inside a command nothing is calculated yet, and headings are constants.
      const shown =
        cell && !cell.isFormula
          ? String(constantOf(cell) ?? '')
          : this.model.getters.getEvaluatedCell(position).formattedValue;
      return shown === '' ? `Column${at + 1}` : shown;
    });
  }

  /** A table that somebody made in the grid itself. */
  private freeName(): string {
    const taken = new Set([...this.names.values()].map((name) => name.toLowerCase()));
    for (let number = 1; ; number++) if (!taken.has(`table${number}`)) return `Table${number}`;
  }
}
