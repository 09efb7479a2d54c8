import { type Area, cellAddress, readAddresses } from '../area.js';
import { type LongWork, refuseWhenCancelled } from '../longWork.js';
import type { Aspect, Cells, CellsRead, Place } from '../reading.js';
import { cellsPerTrip, rowSlices, type Slice } from '../slices.js';
import { WorkbookError } from '../workbookError.js';
import { decodeFormulas, decodeValues } from './decodeCells.js';
import { namingWhatIsMissing } from './missing.js';
import type { RoundTrips } from './roundTrips.js';

/**
 * Reads places together in one round trip. Areas too large for one message, and places that turn out to be,
 * are read in slices of rows.
 */
export function readCells<A extends Aspect>(
  places: readonly Place[],
  aspects: readonly A[],
  work: LongWork,
  trips: RoundTrips,
): Promise<CellsRead<A>[]> {
  return namingWhatIsMissing(places.map(neededFor), trips, async () => {
    refuseWhenCancelled(work, 'Stopped: nothing was read.');
    const size = places.reduce((sum, place) => sum + ('row' in place ? place.rows * place.columns : 0), 0);
    if (size * aspects.length <= cellsPerTrip) {
      try {
        return await readTogether(places, aspects, trips);
      } catch (error) {
        if (!(error instanceof WorkbookError) || error.trouble !== 'too large') throw error;
      }
    }
    return readInSlices(await areasOf(places, trips), aspects, work, trips);
  });
}

function neededFor(place: Place): { kind: 'sheet' | 'table' | 'name'; name: string } {
  if ('table' in place) return { kind: 'table', name: place.table };
  if ('name' in place) return { kind: 'name', name: place.name };
  return { kind: 'sheet', name: 'usedOf' in place ? place.usedOf : place.sheet };
}

async function readTogether<A extends Aspect>(
  places: readonly Place[],
  aspects: readonly A[],
  trips: RoundTrips,
): Promise<CellsRead<A>[]> {
  return trips.run(async ({ workbook }, sync) => {
    const ranges = places.map((place) =>
      rangeOf(place, workbook).load(`address,worksheet/name,${loaded(aspects)}`),
    );
    await sync();
    return ranges.map((range, at) => ({
      area: areaOf(range, places[at] as Place),
      ...(cellsOf(range, aspects) as Pick<Cells, A>),
    }));
  });
}

function rangeOf(place: Place, { worksheets, tables, names }: Excel.Workbook): Excel.Range {
  if ('usedOf' in place) return worksheets.getItem(place.usedOf).getUsedRangeOrNullObject(true);
  if ('name' in place) return names.getItem(place.name).getRange();
  if (!('table' in place)) return worksheets.getItem(place.sheet).getRange(cellAddress(place));
  const table = tables.getItem(place.table);
  if (place.part === 'headings') return table.getHeaderRowRange();
  return place.part === 'data' ? table.getDataBodyRange() : table.getRange();
}

const properties: Record<Aspect, string> = {
  values: 'values',
  formulas: 'values,formulas',
  formats: 'numberFormat',
  text: 'text',
};

function loaded(aspects: readonly Aspect[]): string {
  return [...new Set(aspects.flatMap((aspect) => properties[aspect].split(',')))].join(',');
}

function cellsOf(range: Excel.Range, aspects: readonly Aspect[]): Partial<Cells> {
  const cells: Partial<Cells> = {};
  const empty = range.isNullObject;
  for (const aspect of aspects) {
    if (empty) cells[aspect] = [];
    else if (aspect === 'values') cells.values = decodeValues(range.values);
    else if (aspect === 'formulas') cells.formulas = decodeFormulas(range.formulas, range.values);
    else if (aspect === 'formats') cells.formats = range.numberFormat.map((row) => row.map(String));
    else cells.text = range.text;
  }
  return cells;
}

/** A sheet that holds nothing gives an area without rows. */
function areaOf(range: Excel.Range, place: Place): Area {
  if (range.isNullObject)
    return { sheet: 'usedOf' in place ? place.usedOf : '', row: 0, column: 0, rows: 0, columns: 0 };
  const [area] = readAddresses(range.address, range.worksheet.name);
  return area as Area;
}

function areasOf(places: readonly Place[], trips: RoundTrips): Promise<Area[]> {
  return trips.run(async ({ workbook }, sync) => {
    const ranges = places.map((place) => rangeOf(place, workbook).load('address,worksheet/name'));
    await sync();
    return ranges.map((range, at) => areaOf(range, places[at] as Place));
  });
}

async function readInSlices<A extends Aspect>(
  areas: readonly Area[],
  aspects: readonly A[],
  work: LongWork,
  trips: RoundTrips,
): Promise<CellsRead<A>[]> {
  const blocks = areas.map((area) => ({ area, ...emptyCells(aspects) }));
  const slices = areas.flatMap((area, at) => rowSlices(area, at, cellsPerTrip / aspects.length));
  const total = areas.reduce((sum, { rows, columns }) => sum + rows * columns, 0);
  let done = 0;
  for (let next = slices.shift(); next; next = slices.shift()) {
    refuseWhenCancelled(work, 'Stopped: nothing was read.');
    const read = await readSlice(next, aspects, trips);
    if (Array.isArray(read)) {
      slices.unshift(...read);
      continue;
    }
    const block = blocks[next.of];
    for (const aspect of aspects) (block?.[aspect] as unknown[][]).push(...(read[aspect] as unknown[][]));
    done += next.area.rows * next.area.columns;
    work.progress?.(done, total);
  }
  return blocks;
}

function emptyCells<A extends Aspect>(aspects: readonly A[]): Pick<Cells, A> {
  return Object.fromEntries(aspects.map((aspect) => [aspect, []])) as unknown as Pick<Cells, A>;
}

/** The cells of a slice, or the halves to read instead where it is still too large. */
async function readSlice<A extends Aspect>(
  slice: Slice,
  aspects: readonly A[],
  trips: RoundTrips,
): Promise<CellsRead<A> | Slice[]> {
  try {
    const [read] = await readTogether([slice.area], aspects, trips);
    return read as CellsRead<A>;
  } catch (error) {
    const halves = rowSlices(slice.area, slice.of, (slice.area.rows * slice.area.columns) / 2);
    if (!(error instanceof WorkbookError) || error.trouble !== 'too large' || halves.length < 2) throw error;
    return halves;
  }
}
