import { describe, expect, it } from 'vitest';
import { requireHoles } from '../../../src/core/setup/requireHoles.js';
import type { ReadContext } from '../../../src/functions/argument/argument.js';
import { holesArgument } from '../../../src/functions/argument/holes.js';
import { refusalText } from '../../support/refusal.js';

const context: ReadContext = { argument: 'Holes', unit: 'in', shop: undefined, grades: [] };
const holes = holesArgument('');
const read = (cells: (string | number | null)[][] | null) => holes.read(cells, context);
const twoColumns = 'Give two columns without headings, x and y of one hole in each row.';

describe('holes as a range', () => {
  it('are x and y in each row; blank rows are left out, and keep their number', () => {
    expect(
      read([
        [2, '1-1/2'],
        [null, ''],
        ['50.8 mm', 3],
      ]),
    ).toEqual([
      { x: 50.8, y: 38.099999999999994, row: 1 },
      { x: 50.8, y: 76.19999999999999, row: 3 },
    ]);
  });

  it.each([
    [null, `Holes: no holes were given. ${twoColumns}`],
    [[[null, null]], `Holes: no holes were given. ${twoColumns}`],
    [[[2]], `Holes: 1 column was given. ${twoColumns}`],
    [[[2, 3, 4]], `Holes: 3 columns were given. ${twoColumns}`],
    [
      [
        [2, 3],
        [2, null],
      ],
      `Holes: row 2 has no y (0 is read as a blank cell). ${twoColumns}`,
    ],
    [[[null, 3]], `Holes: row 1 has no x (0 is read as a blank cell). ${twoColumns}`],
    [[['x', 'y']], "Holes, row 1, x: 'x' is not a length. Write 3/8, 9.5 mm or 0.375."],
    [[[-3, 1]], 'Holes, row 1, x: -3 is not above zero. Allowed: 1/16 to 4000 in.'],
    [[[3, 46_000]], 'Holes, row 1, y: 46000 is a date'],
  ])('%j is refused', (cells, message) => {
    expect(refusalText(() => read(cells as (string | number | null)[][] | null))).toContain(message);
  });

  it('are at most 1000', () => {
    const many = Array.from({ length: 1001 }, (_, at) => [at + 1, 1]);
    expect(read(many.slice(1))).toHaveLength(1000);
    expect(refusalText(() => read(many))).toBe('Holes: 1001 holes were given. Give at most 1000.');
  });
});

describe('holes of a plate', () => {
  const plate = { lengthMm: 12 * 25.4, widthMm: 10 * 25.4 };
  const row = (x: number, y: number, number: number) => ({ x: x * 25.4, y: y * 25.4, row: number });

  it('are on it', () => {
    requireHoles([row(11.9, 9.9, 1)], plate, 'in');
    expect(refusalText(() => requireHoles([row(12, 2, 4)], plate, 'in'))).toBe(
      'Holes: row 4, x 12 in and y 2 in, is not on the plate, 12 in by 10 in. ' +
        'Write x from the end and y from the edge of the plate, or correct its size.',
    );
    expect(refusalText(() => requireHoles([row(2, 11, 4)], plate, 'in'))).toMatch(/is not on the plate/);
  });

  it('are each at a place of its own', () => {
    expect(refusalText(() => requireHoles([row(2, 3, 1), row(2, 3.0001, 5)], plate, 'in'))).toBe(
      'Holes: row 5, x 2 in and y 3 in, is the same hole as row 1. Leave one of them out.',
    );
  });
});
