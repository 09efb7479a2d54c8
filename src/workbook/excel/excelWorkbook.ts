import { type Area, cellAddress, readAddresses } from '../area.js';
import type { Change } from '../change.js';
import type { LongWork } from '../longWork.js';
import type { Stop, Workbook } from '../port.js';
import type { Arrangement, Aspect, CellsRead, DefinedName, Place, Sheet, Table } from '../reading.js';
import type { Revert, Step, WriteOptions, WritePlan } from '../step.js';
import { Writer } from '../write/writer.js';
import { arrangementOf } from './arrangement.js';
import { performActions } from './performActions.js';
import { askTable, lookAt } from './lookAt.js';
import { namingWhatIsMissing } from './missing.js';
import { readCells } from './read.js';
import { RoundTrips } from './roundTrips.js';
import { watch } from './watch.js';

/*
 * The port by the platform's script library. `roundTrips` sends and retries messages, `hostErrors` says in a
 * sentence what the host refused.
 */

/** The workbook the add-in was opened in. */
export class ExcelWorkbook implements Workbook {
  private readonly writer: Writer;

  constructor(readonly trips = new RoundTrips()) {
    this.writer = new Writer({
      look: (looks) => lookAt(looks, trips),
      perform: (actions) => performActions(actions, trips),
    });
  }

  sheets(): Promise<Sheet[]> {
    return this.trips.run(async ({ workbook: { worksheets } }, sync) => {
      worksheets.load('items/name,items/visibility,items/protection/protected');
      await sync();
      return worksheets.items.map(({ name, visibility, protection }) => ({
        name,
        visible: visibility === 'Visible',
        protected: protection.protected,
      }));
    });
  }

  tables(): Promise<Table[]> {
    return this.trips.run(async ({ workbook: { tables } }, sync) => {
      tables.load('items/name');
      await sync();
      const asked = tables.items.map(askTable);
      if (asked.length > 0) await sync();
      return asked.map((answer) => answer());
    });
  }

  names(): Promise<DefinedName[]> {
    return this.trips.run(async ({ workbook: { names } }, sync) => {
      names.load('items/name,items/formula');
      await sync();
      return names.items.map(({ name, formula }) => ({ name, refersTo: String(formula) }));
    });
  }

  read<A extends Aspect>(
    places: readonly Place[],
    aspects: readonly A[],
    work: LongWork = {},
  ): Promise<CellsRead<A>[]> {
    return readCells(places, aspects, work, this.trips);
  }

  arrangement(areas: readonly Area[]): Promise<Arrangement[]> {
    return arrangementOf(areas, this.trips);
  }

  plan(steps: readonly Step[]): Promise<WritePlan> {
    return this.writer.plan(steps);
  }

  write(plan: WritePlan, options: WriteOptions = {}): Promise<Revert> {
    return this.writer.write(plan, options);
  }

  selection(): Promise<Area[]> {
    return this.trips.run(async ({ workbook }, sync) => {
      const ranges = workbook.getSelectedRanges().load('address,worksheet/name');
      await sync();
      return readAddresses(ranges.address, ranges.worksheet.name);
    });
  }

  goTo(area: Area): Promise<void> {
    return namingWhatIsMissing([{ kind: 'sheet', name: area.sheet }], this.trips, () =>
      this.trips.run(async ({ workbook }, sync) => {
        const sheet = workbook.worksheets.getItem(area.sheet);
        sheet.activate();
        sheet.getRange(cellAddress(area)).select();
        await sync();
      }),
    );
  }

  watch(listener: (change: Change) => void): Promise<Stop> {
    return watch(listener, this.trips);
  }
}
