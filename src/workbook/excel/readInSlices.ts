import type { Area } from '../area.js';
import { type LongWork, refuseWhenCanceled } from '../longWork.js';
import type { Aspect, Cells, CellsRead } from '../reading.js';
import { cellsPerTrip, rowSlices, type Slice } from '../slices.js';
import { WorkbookError } from '../workbookError.js';

/** Reads one area in one round trip. */
type ReadArea<A extends Aspect> = (area: Area) => Promise<CellsRead<A>[]>;

/** Reads areas in slices of rows, each in one round trip; those the host finds too large in halves. */
export async function readInSlices<A extends Aspect>(
  areas: readonly Area[],
  aspects: readonly A[],
  work: LongWork,
  readArea: ReadArea<A>,
): Promise<CellsRead<A>[]> {
  const blocks = areas.map((area) => ({ area, ...emptyCells(aspects) }));
  const slices = areas.flatMap((area, at) => rowSlices(area, at, cellsPerTrip / aspects.length));
  const total = areas.reduce((sum, { rows, columns }) => sum + rows * columns, 0);
  let done = 0;
  for (let next = slices.shift(); next; next = slices.shift()) {
    refuseWhenCanceled(work, 'Stopped: nothing was read.');
    const read = await readSlice(next, readArea);
    if (Array.isArray(read)) {
      slices.unshift(...read);
      continue;
    }
    const block = blocks[next.of];
    for (const aspect of aspects)
      for (const row of read[aspect] as unknown[][]) (block?.[aspect] as unknown[][]).push(row);
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
  readArea: ReadArea<A>,
): Promise<CellsRead<A> | Slice[]> {
  try {
    const [read] = await readArea(slice.area);
    return read as CellsRead<A>;
  } catch (error) {
    const halves = rowSlices(slice.area, slice.of, (slice.area.rows * slice.area.columns) / 2);
    if (!(error instanceof WorkbookError) || error.trouble !== 'too large' || halves.length < 2) throw error;
    return halves;
  }
}
