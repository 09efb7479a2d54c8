import { type Area, cellAddress, readAddresses } from '../area.js';
import { type LongWork, refuseWhenCanceled } from '../longWork.js';
import type { Aspect, Cells, CellsRead, Place } from '../reading.js';
import { cellsPerTrip } from '../slices.js';
import { WorkbookError } from '../workbookError.js';
import { decodeFormulas, decodeValues } from './decodeCells.js';
import { namingWhatIsMissing } from './missing.js';
import { readInSlices } from './readInSlices.js';
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
    refuseWhenCanceled(work, 'Stopped: nothing was read.');
    const size = places.reduce((sum, place) => sum + ('row' in place ? place.rows * place.columns : 0), 0);
    if (size * aspects.length <= cellsPerTrip) {
      try {
        return await readTogether(places, aspects, trips);
      } catch (error) {
        if (!(error instanceof WorkbookError) || error.trouble !== 'too large') throw error;
      }
    }
    const areas = await areasOf(places, trips);
    return readInSlices(areas, aspects, work, (area) => readTogether([area], aspects, trips));
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
