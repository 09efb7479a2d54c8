// Compares the values of two workbooks cell by cell: numbers to nine digits.
const tolerance = 1e-9;
const isSame = (a, b) =>
  typeof a === 'number' && typeof b === 'number'
    ? Math.abs(a - b) <= tolerance * Math.max(Math.abs(a), Math.abs(b))
    : a === b;

/** How many cells the two first sheets have in common, and which of them differ, as sentences. */
export async function differences(ours, theirs) {
  const { readSheetValues } = await import('../../dist/headless.mjs');
  const [a, b] = [ours, theirs].map((bytes) => readSheetValues(bytes, 'Parts'));
  if (a.length !== b.length)
    throw new Error(`${a.length} rows by our functions, ${b.length} by native formulas`);
  let compared = 0;
  const cells = [];
  a.forEach((row, at) =>
    row.forEach((value, column) => {
      compared++;
      const other = b[at][column];
      if (!isSame(value, other)) cells.push(`row ${at + 1}, column ${column + 1}: ${value} and ${other}`);
    }),
  );
  return { compared, cells };
}
