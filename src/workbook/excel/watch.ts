import { type Area, readAddresses } from '../area.js';
import type { Change } from '../change.js';
import type { Stop } from '../port.js';
import type { RoundTrips } from './roundTrips.js';

/** Tells of every change, in the order they happened: one round trip to begin, one to stop. */
export async function watch(listener: (change: Change) => void, trips: RoundTrips): Promise<Stop> {
  const names = new SheetNames(trips);
  const teller = new Teller(listener, names);
  const handlers = await trips.run(async ({ workbook }, sync) => {
    const { worksheets } = workbook;
    const added = [
      worksheets.onChanged.add((event) => teller.tellOfCells(event)),
      worksheets.onCalculated.add((event) => teller.tellOfPlace('calculated', event)),
      worksheets.onSelectionChanged.add((event) => teller.tellOfPlace('selected', event)),
      worksheets.onAdded.add(() => teller.tellOfSheets()),
      worksheets.onDeleted.add(() => teller.tellOfSheets()),
    ];
    names.load(worksheets);
    if (canTell('1.11')) added.push(worksheets.onRowHiddenChanged.add(() => teller.tellOfRows()));
    if (canTell('1.17')) added.push(worksheets.onNameChanged.add(() => teller.tellOfSheets()));
    await sync();
    names.keep(worksheets);
    return added;
  });
  return async () => {
    teller.stop();
    const [first] = handlers;
    if (!first) return;
    await Excel.run(first.context, async (context) => {
      for (const handler of handlers) handler.remove();
      await trips.sync(context as Excel.RequestContext);
    });
  };
}

function canTell(since: string): boolean {
  return typeof Office !== 'undefined' && Office.context?.requirements?.isSetSupported('ExcelApi', since);
}

/** Events name sheets by an id that outlives renaming; the port by their names. */
class SheetNames {
  private readonly names = new Map<string, string>();

  constructor(private readonly trips: RoundTrips) {}

  load(worksheets: Excel.WorksheetCollection): void {
    worksheets.load('items/id,items/name');
  }

  keep(worksheets: Excel.WorksheetCollection): void {
    this.names.clear();
    for (const { id, name } of worksheets.items) this.names.set(id, name);
  }

  forget(): void {
    this.names.clear();
  }

  /** Undefined for a sheet that is gone. */
  async nameOf(id: string): Promise<string | undefined> {
    if (!this.names.has(id))
      await this.trips.run(async ({ workbook: { worksheets } }, sync) => {
        this.load(worksheets);
        await sync();
        this.keep(worksheets);
      });
    return this.names.get(id);
  }
}

interface PlacedEvent {
  worksheetId: string;
  address: string;
}

class Teller {
  private stopped = false;
  private last: Promise<void> = Promise.resolve();

  constructor(
    private readonly listener: (change: Change) => void,
    private readonly names: SheetNames,
  ) {}

  stop(): void {
    this.stopped = true;
  }

  tellOfCells(event: Excel.WorksheetChangedEventArgs): Promise<void> {
    const author = event.source === 'Remote' ? 'elsewhere' : 'here';
    const ours = event.triggerSource === 'ThisLocalAddin';
    const kind = event.changeType === 'RangeEdited' ? 'cells' : 'moved';
    return this.tell(event, (areas) => ({ kind, areas, author, ours }));
  }

  tellOfPlace(kind: 'calculated' | 'selected', event: PlacedEvent): Promise<void> {
    return this.tell(event, (areas) => ({ kind, areas }));
  }

  tellOfRows(): Promise<void> {
    return this.inOrder(() => this.listener({ kind: 'shown' }));
  }

  tellOfSheets(): Promise<void> {
    this.names.forget();
    return this.inOrder(() => this.listener({ kind: 'sheets' }));
  }

  private tell({ worksheetId, address }: PlacedEvent, change: (areas: Area[]) => Change): Promise<void> {
    return this.inOrder(async () => {
      const sheet = await this.names.nameOf(worksheetId);
      if (sheet !== undefined && !this.stopped) this.listener(change(readAddresses(address, sheet)));
    });
  }

  /** A name that must be looked up may not let a later change overtake; one that fails stops no other. */
  private inOrder(task: () => void | Promise<void>): Promise<void> {
    const mine = this.last.then(() => (this.stopped ? undefined : task()));
    this.last = mine.catch(() => undefined);
    return mine;
  }
}
