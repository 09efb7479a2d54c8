import type { Area } from '../../workbook/area.js';
import type { Change } from '../../workbook/change.js';
import { type LongWork, refuseWhenCanceled } from '../../workbook/longWork.js';
import type { Stop, Workbook } from '../../workbook/port.js';
import type {
  Arrangement,
  Aspect,
  Cells,
  CellsRead,
  DefinedName,
  Place,
  Sheet,
  Table,
} from '../../workbook/reading.js';
import type { Revert, Step, WriteOptions, WritePlan } from '../../workbook/step.js';
import { rowSlices } from '../../workbook/slices.js';
import { WorkbookError } from '../../workbook/workbookError.js';
import { Writer } from '../../workbook/write/writer.js';
import type { GridBook } from '../book/gridBook.js';
import { plainCode } from '../engine/errors.js';
import { pauseEvaluation } from '../engine/pauseEvaluation.js';
import { asOneCommand } from '../engine/oneCommand.js';
import { arrangementOf } from './merges.js';
import { performActions } from './performActions.js';
import { lookAt, namesOf, sheetsOf, tableOf } from './lookAt.js';
import { areaOfPlace, eachCell, sheetIdFor, zoneOf } from './gridPlaces.js';
import { Teller } from './watch.js';

/*
 * The port's second implementation: the pane reads, writes and watches the grid as it does a host.
 */

/** So much is written at a time that the page can show how far it is, and be stopped. */
const sliceBytes = 1_000_000;

/** Cells that are read in one task: some 10 ms. */
const sliceCells = 20_000;

const nextPaint = () => new Promise((resolve) => setTimeout(resolve));

/** The workbook in the grid. */
export class GridWorkbook implements Workbook {
  private readonly writer: Writer;
  private readonly teller: Teller;
  /** What the grid can undo of the write that is going on. */
  private steps: string[] = [];
  private goOn: (() => void) | undefined;
  private planned: readonly Area[] = [];

  constructor(
    private readonly book: GridBook,
    messageBytes = sliceBytes,
  ) {
    this.teller = new Teller(book);
    this.writer = new Writer(
      {
        look: async (looks) => lookAt(looks, book),
        perform: async (actions) => {
          if (this.steps.length > 0) {
            this.goOn ??= pauseEvaluation(book.model);
            await nextPaint();
          }
          this.teller.ours = true;
          try {
            return performActions(actions, book, this.planned);
          } finally {
            this.teller.ours = false;
            if (book.steps.last !== undefined) this.steps.push(book.steps.last);
          }
        },
      },
      messageBytes,
    );
  }

  async sheets(): Promise<Sheet[]> {
    return sheetsOf(this.book);
  }

  async tables(): Promise<Table[]> {
    return this.book.tables.all().map((table) => tableOf(table, this.book));
  }

  async names(): Promise<DefinedName[]> {
    return namesOf(this.book);
  }

  async read<A extends Aspect>(
    places: readonly Place[],
    aspects: readonly A[],
    work: LongWork = {},
  ): Promise<CellsRead<A>[]> {
    refuseWhenCanceled(work, 'Stopped: nothing was read.');
    const areas = places.map((place) => areaOfPlace(place, this.book));
    const total = areas.reduce((sum, { rows, columns }) => sum + rows * columns, 0);
    let done = 0;
    const read: CellsRead<A>[] = [];
    for (const area of areas) {
      const cells = Object.fromEntries(aspects.map((aspect) => [aspect, [] as unknown[][]]));
      for (const { area: slice } of rowSlices(area, 0, sliceCells)) {
        for (const aspect of aspects) for (const row of this.aspect(slice, aspect)) cells[aspect]?.push(row);
        done += slice.rows * slice.columns;
        work.progress?.(done, total);
        if (total <= sliceCells) continue;
        await nextPaint();
        refuseWhenCanceled(work, 'Stopped: not all was read.');
      }
      read.push({ area, ...(cells as unknown as Pick<Cells, A>) });
    }
    return read;
  }

  private aspect(area: Area, aspect: Aspect): Cells[Aspect] {
    const { book } = this;
    switch (aspect) {
      case 'values':
        return eachCell(book, area, (position) => book.value(position));
      case 'formulas':
        return eachCell(book, area, (position) => book.formula(position) ?? null);
      case 'formats':
        return eachCell(book, area, (position) => book.format(position));
      case 'text':
        return eachCell(book, area, (position) =>
          plainCode(book.getters.getEvaluatedCell(position).formattedValue),
        );
    }
  }

  async arrangement(areas: readonly Area[]): Promise<Arrangement[]> {
    return areas.map((area) => arrangementOf(area, this.book));
  }

  plan(steps: readonly Step[]): Promise<WritePlan> {
    return this.writer.plan(steps);
  }

  async write(plan: WritePlan, options: WriteOptions = {}): Promise<Revert> {
    this.planned = plan.steps.flatMap((step) => (step.kind === 'cells' ? step.area : []));
    const { steps, done: revert } = await this.inOneStep(() => this.writer.write(plan, options));
    const run = async (work?: LongWork) => {
      if (steps.length > 0 && steps.every((step) => this.book.steps.isUndone(step)))
        throw new WorkbookError('undone', 'This change is undone already.');
      await this.inOneStep(() => revert.run(work));
    };
    return { plan: revert.plan, run };
  }

  /** What takes several messages is one step to undo. */
  private async inOneStep<Done>(job: () => Promise<Done>): Promise<{ steps: readonly string[]; done: Done }> {
    const steps: string[] = (this.steps = []);
    try {
      const done = await job();
      return { steps: steps.slice(-1), done };
    } finally {
      this.book.steps.join(steps);
      this.evaluate();
    }
  }

  /** Whoever watches is told that everything was calculated, when the command that comes is done. */
  calculatesAll(): void {
    this.teller.evaluated();
  }

  /** What was written in several messages is evaluated when all of it is there. */
  private evaluate(): void {
    if (!this.goOn) return;
    this.goOn();
    this.goOn = undefined;
    this.teller.evaluated();
    asOneCommand(this.book.model, () => undefined);
  }

  async selection(): Promise<Area[]> {
    return this.teller.selection();
  }

  async goTo(area: Area): Promise<void> {
    const { model, getters } = this.book;
    const sheetIdTo = sheetIdFor(this.book, area.sheet);
    const sheetIdFrom = getters.getActiveSheetId();
    if (sheetIdFrom !== sheetIdTo) model.dispatch('ACTIVATE_SHEET', { sheetIdFrom, sheetIdTo });
    const zone = zoneOf(area);
    const first = { col: zone.left, row: zone.top };
    model.selection.selectZone({ cell: first, zone }, { scrollIntoView: false });
    // All of it where there is room, its first cell in any case.
    model.dispatch('SCROLL_TO_CELL', { col: zone.right, row: zone.bottom });
    // Frozen cells are always in view: what counts is the first cell beside them.
    const { xSplit, ySplit } = getters.getPaneDivisions(sheetIdTo);
    model.dispatch('SCROLL_TO_CELL', {
      col: Math.min(zone.right, Math.max(zone.left, xSplit)),
      row: Math.min(zone.bottom, Math.max(zone.top, ySplit)),
    });
  }

  async watch(listener: (change: Change) => void): Promise<Stop> {
    const stop = this.teller.listen(listener);
    return async () => stop();
  }
}
