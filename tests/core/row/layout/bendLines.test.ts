import { describe, expect, it } from 'vitest';
import { bendLinesOf } from '../../../../src/core/row/layout/bendLines.js';

const plate = { lengthMm: 300, widthMm: 100 };

describe('bendLinesOf', () => {
  it('runs across the part from either end', () => {
    const lines = bendLinesOf(
      [
        { at: 'end', end: 'left', fromMm: 40 },
        { at: 'end', end: 'right', fromMm: 40 },
      ],
      plate,
    );
    expect(lines).toMatchObject([
      { runs: 'across', atMm: 40, from: { x: 40, y: 0 }, to: { x: 40, y: 100 } },
      { runs: 'across', atMm: 260, from: { x: 260, y: 0 }, to: { x: 260, y: 100 } },
    ]);
  });

  it('runs along the part from either edge', () => {
    const lines = bendLinesOf(
      [
        { at: 'edge', side: 'bottom', fromMm: 30 },
        { at: 'edge', side: 'top', fromMm: 30 },
      ],
      plate,
    );
    expect(lines).toMatchObject([
      { runs: 'along', atMm: 30, from: { x: 0, y: 30 }, to: { x: 300, y: 30 } },
      { runs: 'along', atMm: 70, from: { x: 0, y: 70 }, to: { x: 300, y: 70 } },
    ]);
  });

  it('has no line for a corner, nor for a place without a distance', () => {
    const places = [
      { at: 'corner', end: 'left', side: 'top' },
      { at: 'edge', side: 'top' },
    ] as const;
    expect(bendLinesOf(places, plate)).toEqual([]);
  });
});
