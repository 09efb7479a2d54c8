import { expect, it } from 'vitest';
import { Work } from '../../src/headless/engine/work.js';
import { CellReader } from '../../src/headless/recalculate/cellReader.js';
import { MAX_COLUMNS, MAX_ROWS } from '../../src/sheet/address.js';

const facts = { spillZone: () => ({ top: 0, bottom: 0, left: 0, right: 0 }), isSubtotal: () => false };

it('whole columns and rows of a sheet without cells have one cell each, as those of any sheet end with its cells', () => {
  const work = new Work(0);
  work.begin();
  const reader = new CellReader([undefined], 'now', facts, work);
  const sizeOf = (top: number, bottom: number, left: number, right: number) => {
    const columns = reader.range(0, { top, bottom, left, right });
    return [columns.length, columns[0]?.length];
  };
  expect(sizeOf(0, MAX_ROWS - 1, 0, 0)).toEqual([1, 1]);
  expect(sizeOf(0, 2, 0, MAX_COLUMNS - 1)).toEqual([1, 3]);
  expect(sizeOf(4, 9, 1, 2)).toEqual([2, 6]);
});

it('a list of 250,000 rows is read, and a range of more than eight million cells is not', () => {
  const work = new Work(0);
  work.begin();
  const reader = new CellReader([undefined], 'now', facts, work);
  expect(reader.range(0, { top: 0, bottom: 250_000, left: 0, right: 16 })).toHaveLength(17);
  expect(() => reader.range(0, { top: 0, bottom: 1_000_000, left: 0, right: 7 })).toThrow(
    'It reads a range of more than eight million cells.',
  );
});
