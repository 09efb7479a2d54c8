// A plate of 300 × 100 mm.
import { describe, expect, it } from 'vitest';
import { bentSpans } from '../../../src/core/part/bentSpans.js';
import { outlineFor } from '../../support/face.js';

const across = (atMm: number) => ({ runs: 'across', atMm }) as const;
const along = (atMm: number) => ({ runs: 'along', atMm }) as const;
const kind = 'sheared';

describe('bentSpans', () => {
  it('runs from edge to edge of a plate without cuts', () => {
    expect(bentSpans(outlineFor(), across(50))).toEqual([{ fromMm: 0, toMm: 100 }]);
    expect(bentSpans(outlineFor(), along(40))).toEqual([{ fromMm: 0, toMm: 300 }]);
  });

  it('has none on a line beside the plate or along its edge', () => {
    for (const atMm of [-1, 0, 300, 301]) expect(bentSpans(outlineFor(), across(atMm))).toEqual([]);
    for (const atMm of [-1, 0, 100, 101]) expect(bentSpans(outlineFor(), along(atMm))).toEqual([]);
  });

  it('takes a line nearer to an edge than the tolerance for one along it', () => {
    for (const atMm of [5e-7, -5e-7, 300 - 5e-7]) expect(bentSpans(outlineFor(), across(atMm))).toEqual([]);
    expect(bentSpans(outlineFor(), across(5e-6))).toEqual([{ fromMm: 0, toMm: 100 }]);
  });

  it('is parted by a notch that crosses the line', () => {
    const place = { at: 'end', end: 'left', centerMm: 50 } as const;
    const notch = { shape: 'rectangle', place, widthMm: 20, depthMm: 60, kind } as const;
    const parted = [
      { fromMm: 0, toMm: 40 },
      { fromMm: 60, toMm: 100 },
    ];
    expect(bentSpans(outlineFor({ notches: [notch] }), across(50))).toEqual(parted);
    // On the floor of the notch there is nothing to bend; beyond it the line is whole.
    expect(bentSpans(outlineFor({ notches: [notch] }), across(60))).toEqual(parted);
    expect(bentSpans(outlineFor({ notches: [notch] }), across(60.1))).toEqual([{ fromMm: 0, toMm: 100 }]);
  });

  it('ends at a clip and at a miter', () => {
    const clip = { end: 'left', side: 'top', alongMm: 60, acrossMm: 60, kind } as const;
    const [clipped] = bentSpans(outlineFor({ clips: [clip] }), across(30));
    expect(clipped?.fromMm).toBe(0);
    expect(clipped?.toMm).toBeCloseTo(70, 9);
    const right = { kind, miter: { rad: Math.PI / 4, long: 'bottom' } } as const;
    const [mitered] = bentSpans(outlineFor({ right }), along(40));
    expect(mitered?.toMm).toBeCloseTo(260, 9);
  });
});
