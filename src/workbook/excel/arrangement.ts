import { type Area, cellAddress, overlap, readAddresses } from '../area.js';
import type { Arrangement } from '../reading.js';
import { cellsPerTrip } from '../slices.js';
import { namingWhatIsMissing } from './missing.js';
import type { RoundTrips } from './roundTrips.js';

/** What is merged and hidden in areas: one round trip, one more for each many rows. */
export function arrangementOf(areas: readonly Area[], trips: RoundTrips): Promise<Arrangement[]> {
  return namingWhatIsMissing(
    areas.map(({ sheet }) => ({ kind: 'sheet', name: sheet })),
    trips,
    async () => {
      const merged = await mergedIn(areas, trips);
      return Promise.all(
        areas.map(async (area, at) => ({ merged: merged[at] ?? [], hidden: await hiddenIn(area, trips) })),
      );
    },
  );
}

function mergedIn(areas: readonly Area[], trips: RoundTrips): Promise<Area[][]> {
  return trips.run(async ({ workbook }, sync) => {
    const asked = areas.map((area) => {
      const range = workbook.worksheets.getItem(area.sheet).getRange(cellAddress(area));
      return range.getMergedAreasOrNullObject().load('address');
    });
    await sync();
    return asked.map((found, at) => {
      const area = areas[at];
      if (!area || found.isNullObject) return [];
      return readAddresses(found.address, area.sheet).filter((each) => overlap(each, area));
    });
  });
}

/** The host answers with an object for each row. */
async function hiddenIn(area: Area, trips: RoundTrips): Promise<number[]> {
  const hidden: number[] = [];
  for (let from = 0; from < area.rows; from += cellsPerTrip) {
    const slice = {
      ...area,
      row: area.row + from,
      rows: Math.min(cellsPerTrip, area.rows - from),
      columns: 1,
    };
    for (const row of await hiddenOf(slice, trips)) hidden.push(row);
  }
  return hidden;
}

function hiddenOf(area: Area, trips: RoundTrips): Promise<number[]> {
  return trips.run(async ({ workbook }, sync) => {
    const range = workbook.worksheets.getItem(area.sheet).getRange(cellAddress(area));
    const rows = range.getRowProperties({ rowHidden: true });
    await sync();
    return rows.value.flatMap(({ rowHidden }, at) => (rowHidden === true ? area.row + at : []));
  });
}
