import { describe, expect, it } from 'vitest';
import { gridHoles } from '../../../src/core/layout/gridHoles.js';
import { refusalText } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const plate = { lengthMm: 300, widthMm: 200, fromEndMm: 50, fromSideMm: 40, unit: 'mm' as const };

describe('gridHoles: arguments', () => {
  it('refuses distances that reach the middle, by the name of each', () => {
    expect(refusalText(() => gridHoles({ ...plate, columns: 2, rows: 2, fromSideMm: 100 }))).toBe(
      'From side: 100 mm from both sides of 200 mm leaves nothing between the first hole and the last. ' +
        'Give less than half of Width (100 mm).',
    );
    expect(refusalText(() => gridHoles({ ...plate, columns: 1, rows: 2 }))).toMatch(/^From end: one hole/);
  });

  it('refuses more than 10,000 holes', () => {
    expect(gridHoles({ ...plate, columns: 100, rows: 100 })).toHaveLength(10_000);
    expect(refusalText(() => gridHoles({ ...plate, columns: 100, rows: 101 }))).toBe(
      'Columns: 100 columns of 101 are 10100 holes. Give at most 10000 holes in all.',
    );
  });
});

describe('gridHoles: values', () => {
  it('are row by row from the bottom', () => {
    expect(gridHoles({ ...plate, columns: 3, rows: 2 })).toEqual([
      { x: 50, y: 40 },
      { x: 150, y: 40 },
      { x: 250, y: 40 },
      { x: 50, y: 160 },
      { x: 150, y: 160 },
      { x: 250, y: 160 },
    ]);
    expect(gridHoles({ ...plate, columns: 1, rows: 1, fromEndMm: 150, fromSideMm: 100 })).toEqual([
      { x: 150, y: 100 },
    ]);
  });

  it('show their working', () => {
    const steps = expectWorking((working) => gridHoles({ ...plate, columns: 3, rows: 2 }, working).length);
    expect(steps.map(({ title, result }) => [title, result.value])).toEqual([
      ['Pitch along', 100],
      ['Pitch across', 120],
      ['Holes', 6],
    ]);
  });
});
