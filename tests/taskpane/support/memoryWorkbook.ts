import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { absoluteAddress, type Area, overlap } from '../../../src/workbook/area.js';
import type { Change } from '../../../src/workbook/change.js';
import { type Content, isFormula } from '../../../src/workbook/content.js';
import { type LongWork, refuseWhenCanceled } from '../../../src/workbook/longWork.js';
import type { Stop, Workbook } from '../../../src/workbook/port.js';
import type {
  Arrangement,
  Aspect,
  Cells,
  CellsRead,
  DefinedName,
  Place,
  Sheet,
  Table,
} from '../../../src/workbook/reading.js';
import type { AllSeen, Look } from '../../../src/workbook/writeHost.js';
import type { Revert, Step, WriteOptions, WritePlan } from '../../../src/workbook/step.js';
import { Writer } from '../../../src/workbook/write/writer.js';
import { calculate } from './calculate.js';
import { MemorySheets, missing } from './memorySheets.js';

/** A workbook in memory: the port over plain cells, with our functions calculated after every write. */
export class MemoryWorkbook implements Workbook {
  /** Some hosts tell an add-in nothing of what it wrote itself: the usual one here is like that. */
  static readonly tellsOwnWrites =
    typeof process !== 'undefined' && process.env['HOST_TELLS_OWN_WRITES'] !== undefined;
  readonly memory = new MemorySheets();
  selected: Area[] = [];
  /** Where the pane went, newest last. */
  readonly visited: Area[] = [];
  private readonly listeners = new Set<(change: Change) => void>();
  private readonly writer: Writer;

  constructor(...sheets: string[]) {
    for (const name of sheets) this.memory.sheets.set(name, new Map());
    this.writer = new Writer({
      look: async <const L extends readonly Look[]>(looks: L) =>
        looks.map((look) => this.memory.see(look)) as unknown as AllSeen<L>,
      perform: async (actions) => {
        const after = actions.map((action) => this.memory.act(action));
        calculate(this.memory);
        if (!MemoryWorkbook.tellsOwnWrites) return after;
        const areas = actions.flatMap((action) => (action.kind === 'cells' ? action.area : []));
        if (areas.length > 0) this.tell({ kind: 'cells', areas, author: 'here', ours: true });
        if (actions.some(({ kind }) => kind.includes('sheet'))) this.tell({ kind: 'sheets' });
        return after;
      },
    });
  }

  /** Types cells as somebody would, and tells of it. */
  type(sheet: string, row: number, column: number, contents: readonly (readonly Content[])[]): this {
    contents.forEach((cells, at) =>
      cells.forEach((content, right) => this.memory.set(sheet, row + at, column + right, { content })),
    );
    calculate(this.memory);
    const area = { sheet, row, column, rows: contents.length, columns: contents[0]?.length ?? 0 };
    this.tell({ kind: 'cells', areas: [area], author: 'elsewhere', ours: false });
    return this;
  }

  select(area: Area): void {
    this.selected = [area];
    this.tell({ kind: 'selected', areas: [area] });
  }

  /** What a table shows, its headings first. */
  shown(table: string): CellValue[][] {
    const found = this.memory.table(table);
    return found ? this.memory.rows(found.area, ({ value }) => value) : [];
  }

  async sheets(): Promise<Sheet[]> {
    return [...this.memory.sheets.keys()].flatMap((name) => this.memory.sheet(name) ?? []);
  }

  async tables(): Promise<Table[]> {
    return this.memory.tables.flatMap(({ name }) => this.memory.table(name) ?? []);
  }

  async names(): Promise<DefinedName[]> {
    return this.memory.names.map(({ name, area }) => ({ name, refersTo: `=${absoluteAddress(area)}` }));
  }

  async read<A extends Aspect>(
    places: readonly Place[],
    aspects: readonly A[],
    work: LongWork = {},
  ): Promise<CellsRead<A>[]> {
    refuseWhenCanceled(work, 'Stopped: nothing was read.');
    return places.map((place) => {
      const area = this.areaOf(place);
      const cells: Cells = {
        values: this.memory.rows(area, ({ value }) => value),
        formulas: this.memory.rows(area, ({ content }) => (isFormula(content) ? content.formula : null)),
        formats: this.memory.rows(area, ({ format }) => format),
        text: this.memory.rows(area, ({ value }) => String(value ?? '')),
      };
      const asked = Object.fromEntries(aspects.map((aspect) => [aspect, cells[aspect]]));
      return { area, ...(asked as unknown as Pick<Cells, A>) };
    });
  }

  async arrangement(areas: readonly Area[]): Promise<Arrangement[]> {
    return areas.map((area) => ({
      merged: this.memory.merged.filter((each) => overlap(each, area)),
      hidden: (this.memory.hidden.get(area.sheet) ?? []).filter(
        (row) => row >= area.row && row < area.row + area.rows,
      ),
    }));
  }

  plan(steps: readonly Step[]): Promise<WritePlan> {
    return this.writer.plan(steps);
  }

  write(plan: WritePlan, options: WriteOptions = {}): Promise<Revert> {
    return this.writer.write(plan, options);
  }

  async selection(): Promise<Area[]> {
    return this.selected;
  }

  async goTo(area: Area): Promise<void> {
    this.memory.cellsOf(area.sheet);
    this.visited.push(area);
    this.select(area);
  }

  async watch(listener: (change: Change) => void): Promise<Stop> {
    this.listeners.add(listener);
    return async () => void this.listeners.delete(listener);
  }

  tell(change: Change): void {
    for (const listener of this.listeners) listener(change);
  }

  private areaOf(place: Place): Area {
    if ('row' in place) return this.memory.cellsOf(place.sheet) && place;
    if ('usedOf' in place) return this.memory.used(place.usedOf);
    if ('name' in place) return this.memory.named(place.name)?.area ?? missing('name', place.name);
    const { area, hasTotals } = this.memory.table(place.table) ?? missing('table', place.table);
    if (place.part === 'headings') return { ...area, rows: 1 };
    return place.part === 'data'
      ? { ...area, row: area.row + 1, rows: area.rows - 1 - (hasTotals ? 1 : 0) }
      : area;
  }
}
