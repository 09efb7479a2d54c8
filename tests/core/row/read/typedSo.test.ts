import { describe, expect, it } from 'vitest';
import type { Hole } from '../../../../src/core/tooling/hole.js';
import { saysHole } from '../../../../src/core/row/read/typedSo.js';

const round = (inches: number): Hole => ({ shape: 'round', diameterMm: inches * 25.4 });
const says = (cell: string | number, hole: Hole, count = 4) => saysHole(cell, hole, count, 'in');

describe('saysHole', () => {
  it.each(['13/16', '4 @ 13/16', '(4) 13/16', '13/16"', 'Ø13/16 x 4', '13/16 TYP'])('knows %s', (cell) => {
    expect(says(cell, round(13 / 16))).toBe(true);
  });

  it.each(['0.8125', '20.6375 mm', 0.8125, '2 @ 13/16', '3/4'])('tells %s from what is shown', (cell) => {
    expect(says(cell, round(13 / 16))).toBe(false);
  });

  it('compares both sizes of a slot', () => {
    const slot: Hole = { shape: 'slot', widthMm: 25.4 * (13 / 16), lengthMm: 25.4 };
    expect(says('13/16x1', slot)).toBe(true);
    expect(says('13/16x1-1/4', slot)).toBe(false);
  });

  it('reads a number in the unit of the shop', () => {
    expect(saysHole(22, { shape: 'round', diameterMm: 22 }, 1, 'mm')).toBe(true);
    expect(saysHole(null, { shape: 'round', diameterMm: 22 }, 1, 'mm')).toBe(false);
  });
});
