import { type Area, overlap } from './area.js';
import type { Author, Change } from './change.js';
import { type FieldMerge, type Fields, mergeFields } from './mergeFields.js';
import type { Stop, Workbook } from './port.js';

/** The cells that fields are edited from: names in one column, values in another, row by row. */
export interface FieldCells {
  names: Area;
  values: Area;
}

/** What somebody else's change, or one made in the cells, means for the fields being edited. */
export interface FieldsChanged extends FieldMerge {
  author: Author;
}

/**
 * Watches the cells of a form while it is open. A change made in them, by anybody, is read at once and
 * merged into what the user has typed so far; the merged fields then are what further changes meet.
 */
export class OpenFields {
  private base: Fields = {};
  private mine: Fields = {};

  private constructor(
    private readonly workbook: Pick<Workbook, 'read' | 'watch'>,
    private readonly cells: FieldCells,
    private readonly listener: (changed: FieldsChanged) => void,
  ) {}

  static async open(
    workbook: Pick<Workbook, 'read' | 'watch'>,
    cells: FieldCells,
    listener: (changed: FieldsChanged) => void,
    failed: (error: unknown) => void,
  ): Promise<{ fields: OpenFields; stop: Stop }> {
    const fields = new OpenFields(workbook, cells, listener);
    fields.base = fields.mine = await fields.read();
    const stop = await workbook.watch((change) => void fields.see(change).catch(failed));
    return { fields, stop };
  }

  /** The fields as the user has them. */
  get current(): Fields {
    return this.mine;
  }

  type(field: string, value: Fields[string]): void {
    this.mine = { ...this.mine, [field]: value };
  }

  private async see(change: Change): Promise<void> {
    if (change.kind !== 'cells' || change.ours) return;
    const { names, values } = this.cells;
    if (!change.areas.some((area) => overlap(area, names) || overlap(area, values))) return;
    const theirs = await this.read();
    const merge = mergeFields(this.base, this.mine, theirs);
    this.base = theirs;
    this.mine = merge.merged;
    if (merge.taken.length + merge.conflicts.length > 0) this.listener({ ...merge, author: change.author });
  }

  private async read(): Promise<Fields> {
    const [names, values] = await this.workbook.read([this.cells.names, this.cells.values], ['values']);
    const entries = (names?.values ?? []).map(([name], row) => [
      String(name ?? '').trim(),
      values?.values[row]?.[0] ?? null,
    ]);
    return Object.fromEntries(entries.filter(([name]) => name !== ''));
  }
}
