// A plate of 300 × 100 mm with bends.
import { describe, expect, it } from 'vitest';
import { bendLinesOf } from '../../../../src/core/row/layout/bendLines.js';
import { bendsOnPart } from '../../../../src/core/row/layout/bendsOnPart.js';

import type { PartPlace } from '../../../../src/core/row/job/rowJob.js';
import type { OutlineInput } from '../../../../src/core/part/outlineInput.js';
import { plateFace } from '../../../support/face.js';

const left = (fromMm: number): PartPlace => ({ at: 'end', end: 'left', fromMm });
const bottom = (fromMm: number): PartPlace => ({ at: 'edge', side: 'bottom', fromMm });

function found(lengthMm: number, at: PartPlace[], changes: Partial<OutlineInput> = {}, endless = false) {
  const bends = bendLinesOf(at, { lengthMm: 300, widthMm: 100 });
  const row = { bends: { lengthMm, count: at.length, at } };
  return bendsOnPart(row, { lengthMm: 300, endless, faces: [plateFace(changes)], groups: [], bends });
}

const kind = 'sheared';

describe('bendsOnPart', () => {
  it('finds nothing where every line lies on the plate and is as long as the row says', () => {
    expect(found(100, [left(80), left(200)])).toEqual([]);
    expect(found(300, [bottom(40)])).toEqual([]);
  });

  it('refuses a line beside the plate', () => {
    expect(found(100, [left(80), left(301)])).toMatchObject([
      { rule: 'bend off the part', verdict: 'Check input', index: 1, sizeMm: 300 },
    ]);
    expect(found(300, [bottom(120)])).toMatchObject([{ index: 0, sizeMm: 100 }]);
  });

  it('takes the length of the steel or that from edge to edge of a line that a cut parts', () => {
    const place = { at: 'end', end: 'left', centerMm: 50 } as const;
    const notches = [{ shape: 'rectangle', place, widthMm: 20, depthMm: 90, kind }] as const;
    expect(found(80, [left(80)], { notches })).toEqual([]);
    expect(found(100, [left(80)], { notches })).toEqual([]);
    expect(found(60, [left(80)], { notches })).toMatchObject([
      { rule: 'bend from edge to edge', runMm: 100 },
    ]);
    expect(found(110, [left(80)], { notches })).toMatchObject([{ verdict: 'Check input' }]);
  });

  it('refuses bends that cross, unless their corner is cut out', () => {
    expect(found(300, [left(80), bottom(40)])).toMatchObject([{ rule: 'bends cross', bends: [0, 1] }]);
    const place = { at: 'corner', end: 'left', side: 'bottom' } as const;
    const notches = [{ shape: 'rectangle', place, widthMm: 80, depthMm: 40, kind }] as const;
    expect(found(220, [left(80), bottom(40)], { notches })).toEqual([]);
  });

  it('does not know how far a bend along a part runs that has no length', () => {
    expect(found(50, [bottom(40)], {}, true)).toEqual([]);
  });
});
