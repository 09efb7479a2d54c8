import type { LongWork } from '../../workbook/longWork.js';

/** Rows that are worked on in one task: about 20 ms. */
const sliceRows = 50;

/** Makes something of each row in slices, so that the pane stays alive and can be told to stop; undefined when it was. */
export async function inSlices<Row, Made>(
  rows: readonly Row[],
  make: (row: Row) => Made,
  { signal, progress }: LongWork,
): Promise<Made[] | undefined> {
  const made: Made[] = [];
  for (let from = 0; from < rows.length; from += sliceRows) {
    if (signal?.aborted) return undefined;
    for (const row of rows.slice(from, from + sliceRows)) made.push(make(row));
    progress?.(made.length, rows.length);
    await new Promise((resolve) => setTimeout(resolve));
  }
  return made;
}
