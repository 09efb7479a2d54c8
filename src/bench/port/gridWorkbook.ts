import type { Area } from '../../workbook/area';
import type { Change } from '../../workbook/change';
import { type LongWork, refuseWhenCancelled } from '../../workbook/longWork';
import type { Stop, Workbook } from '../../workbook/port';
import type { Aspect, Cells, CellsRead, DefinedName, Place, Sheet, Table } from '../../workbook/reading';
import type { Revert, Step, WriteOptions, WritePlan } from '../../workbook/write/step';
import { Writer } from '../../workbook/write/writer';
import type { GridBook } from '../book/gridBook';
import { act } from './act';
import { lookAt, namesOf, sheetsOf, tableOf } from './look';
import { areaOfPlace, eachCell, sheetIdFor, zoneOf } from './places';
import { Teller } from './watch';

/** The workbook in the grid. */
export class GridWorkbook implements Workbook {
  private readonly writer: Writer;
  private readonly teller: Teller;

  constructor(
    private readonly book: GridBook,
    messageBytes?: number,
  ) {
    this.teller = new Teller(book);
    this.writer = new Writer(
      {
        look: async (looks) => lookAt(looks, book),
        act: async (actions) => {
          this.teller.ours = true;
          try {
            return act(actions, book);
          } finally {
            this.teller.ours = false;
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
    refuseWhenCancelled(work, 'Stopped: nothing was read.');
    const areas = places.map((place) => areaOfPlace(place, this.book));
    const total = areas.reduce((sum, { rows, columns }) => sum + rows * columns, 0);
    let done = 0;
    return areas.map((area) => {
      const cells = Object.fromEntries(aspects.map((aspect) => [aspect, this.aspect(area, aspect)]));
      done += area.rows * area.columns;
      work.progress?.(done, total);
      return { area, ...(cells as unknown as Pick<Cells, A>) };
    });
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
        return eachCell(book, area, (position) => book.getters.getEvaluatedCell(position).formattedValue);
    }
  }

  plan(steps: readonly Step[]): Promise<WritePlan> {
    return this.writer.plan(steps);
  }

  write(plan: WritePlan, options: WriteOptions = {}): Promise<Revert> {
    return this.writer.write(plan, options);
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
    model.selection.selectZone({ cell: { col: zone.left, row: zone.top }, zone }, { scrollIntoView: true });
  }

  async watch(listener: (change: Change) => void): Promise<Stop> {
    const stop = this.teller.listen(listener);
    return async () => stop();
  }
}
